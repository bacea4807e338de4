"""Metal on the site list: what it is shaped like decides what it is looked at for."""

from enclosure_app.checker import check_section
from enclosure_app.model.section import Section
from enclosure_app.planning.site_list.metal import metal
from enclosure_app.planning.site_list.places import SitePlace, drawn
from tests.rules.junctions import US, box, counter_flashing, eave, head, run, section

OPEN = "self-adhered-permeable"


def on(made: Section) -> dict[str, SitePlace]:
    return {place.key: place for place in metal(drawn(check_section(made, US), US))}


def names(place: SitePlace) -> list[str]:
    return [question.name for question in place.questions]


def test_a_flashing_is_looked_at_for_its_fall_its_ends_and_its_drip() -> None:
    flashing = on(head(over=True))["metal:F"]
    assert flashing.title == "Head flashing"
    assert names(flashing) == ["fall", "end-dam", "drip", "lengths"]


def test_a_flashing_that_only_hangs_has_no_fall_to_look_at() -> None:
    assert names(on(counter_flashing(over=True))["metal:C"]) == ["drip", "lengths"]


def test_an_edge_metal_falls_as_the_roof_does_and_has_no_dams() -> None:
    assert names(on(eave(underlayment_over=True))["metal:D"]) == ["drip", "lengths", "edge-fixed"]


def test_a_coping_hangs_over_both_sides_and_is_held_without_a_hole() -> None:
    made = section(
        run("s", OPEN, (0, -500), (0, 200), (300, 200), (300, -500)),
        run("c", "coping", (-20, 120), (-20, 206), (320, 214), (320, 120)),
        outside=[(-450, 300)],
        inside=[(150, -400)],
    )
    coping = on(made)["metal:c"]
    assert names(coping) == ["fall", "drip", "lengths", "held-below"]
    assert coping.questions[0].text.startswith("Does its top fall to the side that the drawing")
    assert coping.questions[1].text.startswith("Do both its edges")


def test_a_sill_pan_is_looked_at_for_its_back() -> None:
    made = section(
        run("s", OPEN, (0, -500), (0, 0)),
        run("pan", "sill-pan", (-4, -60), (-4, 4), (60, 12), (60, 40)),
        box("w", "window-frame", (0, 20), (58, 500)),
    )
    assert "back-dam" in names(on(made)["metal:pan"])


def test_a_plan_has_no_metal_to_look_at() -> None:
    made = section(
        run("s", OPEN, (0, -500), (0, 500)),
        run("f", "base-flashing", (-4, -60), (-4, 60)),
        gravity=None,
    )
    assert on(made) == {}
