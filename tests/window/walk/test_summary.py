"""What a walk came to, in sentences."""

from dataclasses import replace
from types import MappingProxyType

from enclosure_app.model.drawing import Units
from enclosure_app.model.product import Control
from enclosure_app.model.report import Continuity, LayerResult
from enclosure_app.model.said.decision import Decision, State
from enclosure_app.model.said.site_check import Seen, SiteCheck
from enclosure_app.planning.site_list.listing import SiteList
from enclosure_app.window.walk.stops import round_of
from enclosure_app.window.walk.summary import name_of, named, open_words, summary
from tests.drawing import eave
from tests.window.walk.rounds import LAP, TAPE, eave_round

KEY = LAP.items[0][0]


def test_what_is_left_and_what_is_to_be_mended_is_named() -> None:
    seen = {KEY: SiteCheck(KEY, Seen.NOT_IN_ORDER, "Ida")}
    walked = round_of(eave.result(findings=()), SiteList("", (TAPE, LAP)), seen)
    assert summary(walked, Units.MM) == (
        "Left open: Tape on wall sheet.",
        "To be mended: Wall sheet over coating.",
    )


def test_what_could_not_be_judged_is_never_passed_over() -> None:
    walked = round_of(eave.unsure(), SiteList("", ()))
    assert summary(walked, Units.MM) == (
        "The air layer could not be judged: The two proofs differ: look at it yourself.",
    )


def test_by_how_much_the_proofs_differ_is_said_in_the_units_of_the_drawing() -> None:
    air = LayerResult(Control.AIR, Continuity.UNSURE, bottleneck=25.4, opening=50.8)
    result = eave.result(layers={Control.AIR: air}, findings=())
    (told,) = summary(round_of(result, SiteList("", ())), Units.IN)
    assert 'the widest gap is 1", the opening that it is 1" wider' in told


def test_verdicts_whose_finding_is_gone_are_told() -> None:
    gone = Decision("gap:x", State.MENDED, "Per", about="A gap at the sill.")
    result = eave.result(findings=(), decisions=MappingProxyType({"gap:x": gone}))
    told = summary(round_of(result, SiteList("", ())), Units.MM)
    assert told == ("Decided about, and no longer found: A gap at the sill.",)


def test_where_all_is_well_there_is_nothing_to_be_said() -> None:
    seen = {KEY: SiteCheck(KEY, Seen.IN_ORDER, "Ida")}
    assert summary(round_of(eave.result(findings=()), SiteList("", (LAP,)), seen), Units.MM) == ()


def test_of_many_the_first_are_named_and_the_rest_counted() -> None:
    places = [replace(LAP, key=f"k{n}", title=f"Place {n}") for n in range(9)]
    stops = round_of(eave.result(findings=()), SiteList("", tuple(places))).stops
    assert named(stops).endswith("Place 5 and 3 more")
    twice = [*stops, *stops[-1:], *stops[:1]]
    assert named(twice).endswith("Place 5 and 4 more")  # places, not names
    assert open_words(stops[:1]) == "Left open: Place 0."


def test_a_finding_is_named_by_its_number_on_the_drawing() -> None:
    assert name_of(eave_round().stops[1]) == "finding 2 (short lap)"
