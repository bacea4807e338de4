"""Metal and what passes through, on the site list."""

from enclosure_app.checker import check_section
from enclosure_app.model.section import Section
from enclosure_app.planning.site_list.metal import metal, passing
from enclosure_app.planning.site_list.places import SitePlace, drawn
from tests.faulty_wall import WALL
from tests.rules.junctions import US, box, head, run, section

OPEN = "self-adhered-permeable"


def on(made: Section) -> dict[str, SitePlace]:
    known = drawn(check_section(made, US), US)
    return {place.key: place for place in (*metal(known), *passing(known))}


def names(place: SitePlace) -> list[str]:
    return [question.name for question in place.questions]


def test_a_flashing_is_looked_at_for_its_fall_its_ends_and_its_drip() -> None:
    flashing = on(head(over=True))["metal:F"]
    assert flashing.title == "Head flashing"
    assert names(flashing) == ["fall", "end-dam", "drip", "lengths"]


def test_a_sill_pan_is_looked_at_for_its_back() -> None:
    made = section(
        run("s", OPEN, (0, -500), (0, 0)),
        run("pan", "sill-pan", (-4, -60), (-4, 4), (60, 12), (60, 40)),
        box("w", "window-frame", (0, 20), (58, 500)),
    )
    assert "back-dam" in names(on(made)["metal:pan"])


def test_a_pipe_is_one_place_with_its_collars() -> None:
    made = section(
        run("low", OPEN, (0, -500), (0, -20)),
        run("up", OPEN, (0, 20), (0, 500)),
        box("pipe", "pipe", (-200, -20), (200, 20)),
        run("c1", "pipe-collar", (-60, -21), (-2, -21), (-2, -90)),
        run("c2", "pipe-collar", (-60, 21), (-2, 21), (-2, 90)),
    )
    pipe = on(made)["through:pipe"]
    assert pipe.title == "Pipe through self-adhered sheet"
    assert pipe.pieces[0] == "pipe"
    assert set(pipe.pieces) == {"pipe", "c1", "c2", "low", "up"}
    assert names(pipe)[:3] == ["all-round", "collar-under", "held-firm"]
    assert "pressed-down" in names(pipe)


def test_a_pipe_without_a_collar_is_looked_at_all_round() -> None:
    assert names(on(WALL)["through:pipe"]) == ["all-round", "held-firm"]
