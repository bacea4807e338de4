"""The stops of a walk: in walking order, done when decided or looked at, and what is left."""

from dataclasses import replace
from types import MappingProxyType

from enclosure_app.model.said.decision import Decision, State
from enclosure_app.model.said.site_check import Seen, SiteCheck
from enclosure_app.planning.site_list.listing import SiteList
from enclosure_app.window.walk.stops import Which, round_of
from tests.drawing import eave
from tests.window.walk.rounds import LAP, TAPE, eave_round


def keys(stops) -> list[str]:  # noqa: ANN001
    return [stop.key for stop in stops]


def looked(key: str, seen: Seen = Seen.IN_ORDER) -> SiteCheck:
    return SiteCheck(key, seen, "Ida")


def test_what_is_wrong_and_what_to_look_at_come_in_one_walking_order() -> None:
    walked = eave_round()
    assert keys(walked.stops) == [
        TAPE.key, eave.SHORT.key, eave.GAP.key, eave.STOPS.key, eave.NO_DRIP.key,
        eave.UNSEALED.key, eave.REVERSED.key, LAP.key,
    ]  # fmt: skip
    assert [stop.number for stop in walked.stops[1:3]] == [2, 1]  # as on the drawing


def test_at_one_place_what_is_wrong_comes_first() -> None:
    near = replace(LAP, along=eave.SHORT.along)
    stops = round_of(eave.result(), SiteList("", (near,))).stops
    at = keys(stops).index(eave.SHORT.key)
    assert keys(stops)[at + 1] == LAP.key


def test_a_finding_is_done_when_it_is_decided() -> None:
    decided = {eave.GAP.key: Decision(eave.GAP.key, State.MENDED, "Ida")}
    result = eave.result(decisions=MappingProxyType(decided))
    walked = round_of(result, SiteList("", ()))
    assert eave.GAP.key not in keys(walked.left)
    assert eave.SHORT.key in keys(walked.left)


def test_a_place_is_done_when_all_of_it_was_looked_at() -> None:
    (first, _), (second, _) = TAPE.items
    half = eave_round(**{first: looked(first)})
    assert TAPE.key in keys(half.left)
    whole = eave_round(**{first: looked(first), second: looked(second, Seen.HIDDEN)})
    assert TAPE.key not in keys(whole.left)


def test_an_answer_that_was_taken_back_is_none() -> None:
    (first, _), (second, _) = TAPE.items
    seen = {first: looked(first), second: looked(second, Seen.NOT_LOOKED_AT)}
    assert TAPE.key in keys(eave_round(**seen).left)


def test_what_was_seen_not_to_be_in_order_is_wrong_too() -> None:
    (first, _), _ = TAPE.items
    walked = eave_round(**{first: looked(first, Seen.NOT_IN_ORDER)})
    wrong = keys(walked.shown(Which.WRONG))
    assert TAPE.key in wrong
    assert LAP.key not in wrong
    assert keys(walked.to_be_mended) == [TAPE.key]
    assert walked.shown(Which.EVERYTHING) == walked.stops
