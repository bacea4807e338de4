"""What passes through a layer or stands in it, on the site list: pipes, windows and doors."""

from dataclasses import replace

from enclosure_app.checker import check_section
from enclosure_app.model.product import Control
from enclosure_app.model.section import Section
from enclosure_app.planning.site_list.listing import site_list
from enclosure_app.planning.site_list.passing import openings, passing
from enclosure_app.planning.site_list.places import SitePlace, drawn
from tests.faulty_wall import WALL
from tests.rules.junctions import US, box, run, section

OPEN = "self-adhered-permeable"
SHEETS = (
    run("low", OPEN, (0, -500), (0, -20)),
    run("up", OPEN, (0, 20), (0, 500)),
)
PIPE = box("pipe", "pipe", (-200, -20), (200, 20))
COLLARS = (
    run("c1", "pipe-collar", (-60, -21), (-2, -21), (-2, -90)),
    run("c2", "pipe-collar", (-60, 21), (-2, 21), (-2, 90)),
)
WOOL = (
    box("w1", "mineral-wool", (1, -500), (90, -20)),
    box("w2", "mineral-wool", (1, 20), (90, 500)),
)
WINDOW = (
    run("sill", OPEN, (0, -500), (0, -200), (80, -200)),
    box("w", "window-frame", (0, -199), (58, 199)),
    run("head", OPEN, (80, 200), (0, 200), (0, 500)),
    run("B", "sealant", (30, -200), (30, -198)),
)


def on(made: Section) -> dict[str, SitePlace]:
    known = drawn(check_section(made, US), US)
    return {place.key: place for place in (*passing(known), *openings(known))}


def _sleeved(made: Section) -> Section:
    """Return a section whose pipes come with insulation of their own round them."""
    pipe = made.products["pipe"]
    sleeved = replace(pipe, controls=pipe.controls | {Control.HEAT})
    return replace(made, products={**made.products, "pipe": sleeved})


def names(place: SitePlace) -> list[str]:
    return [question.name for question in place.questions]


def test_a_pipe_is_one_place_with_its_collars() -> None:
    pipe = on(section(*SHEETS, PIPE, *COLLARS))["through:pipe"]
    assert pipe.title == "Pipe through self-adhered sheet"
    assert pipe.pieces[0] == "pipe"
    assert set(pipe.pieces) == {"pipe", "c1", "c2", "low", "up"}
    assert names(pipe)[:3] == ["all-round", "collar-under", "held-firm"]
    assert "pressed-down" in names(pipe)
    assert "tight-round" not in names(pipe)


def test_a_pipe_without_a_collar_is_looked_at_all_round() -> None:
    assert names(on(WALL)["through:pipe"]) == ["all-round", "held-firm"]


def test_insulation_round_a_pipe_is_looked_at_with_the_pipe_and_nowhere_else() -> None:
    made = _sleeved(section(*SHEETS, PIPE, *COLLARS, *WOOL))
    listed = site_list(check_section(made, US), US)
    about = [place.key for place in listed.places if "pipe" in place.pieces]
    assert about == ["through:pipe"]
    pipe = on(made)["through:pipe"]
    assert names(pipe)[-1] == "tight-round"
    assert {"w1", "w2"} <= set(pipe.pieces)
    assert pipe.title == "Pipe through self-adhered sheet"


def test_a_window_is_looked_at_round_its_corners_and_at_its_sill() -> None:
    window = on(section(*WINDOW))["opening:w"]
    assert window.title == "Window frame: its corners"
    assert names(window) == ["round-corners", "set-firm", "drains"]


def test_at_its_head_a_window_stands_on_nothing() -> None:
    made = section(
        box("w", "window-frame", (0, -500), (58, -1)),
        run("head", OPEN, (80, 0), (0, 0), (0, 500)),
    )
    assert names(on(made)["opening:w"]) == ["round-corners"]
