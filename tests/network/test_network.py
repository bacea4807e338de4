"""What the rules may ask about a section."""

import pytest

from enclosure_app.model.product import Control
from enclosure_app.model.section import Section
from tests.network.sections import asked, box, section, sheet

LOW, UP = sheet("a", (0, -500), (0, 100)), sheet("b", (-10, 40), (-10, 500))


def test_every_control_has_its_own_layer() -> None:
    """The curtain keeps air only, the foil vapour only; the other sheets air and water."""
    drawn = section(
        LOW,
        UP,
        sheet("c", (50, -500), (50, 500), of="curtain"),
        sheet("d", (90, 0), (90, 9), of="foil"),
    )
    layers = asked(drawn).layers
    names = {control: [p.name for p in layer.fabric.pieces] for control, layer in layers.items()}
    assert names == {
        Control.WATER: ["a", "b"],
        Control.AIR: ["a", "b", "c"],
        Control.VAPOUR: ["d"],
        Control.HEAT: [],
    }


def test_the_layers_are_those_of_their_own_control() -> None:
    layers = asked(section(LOW, UP)).layers
    assert [layer.control for layer in layers.values()] == list(Control)
    assert [layers[c].fabric.control for c in Control] == list(Control)


def test_words_are_a_builders_words() -> None:
    network = asked(section(LOW, UP, box("c", (50, 0), (60, 9))))
    assert network.words("a") == "loose of the trial"
    assert network.words("") == "edge of the drawing"
    assert network.both("a", "b") == "two pieces of loose of the trial"
    assert network.both("a", "c") == "loose of the trial and board of the trial"
    assert network.upper_and_lower("a", "b") == ("the upper loose of the trial", "the lower one")
    assert network.upper_and_lower("a", "c") == ("loose of the trial", "board of the trial")


@pytest.mark.parametrize("points", [((0, -500), (0, 100)), ((0, 100), (0, -500))])
def test_parts_do_not_depend_on_drawing_direction(points: tuple[tuple[float, float], ...]) -> None:
    network = asked(section(sheet("a", *points), UP, box("c", (50, 0), (60, 9))))
    assert network.part("a", (0, -490)) == "a.low"
    assert network.part("a", (0, 95)) == "a.high"
    assert network.part("a", (0, 0)) == "a.face"
    assert network.part("c", (50, 0)) == "c.face"
    assert network.part("", (0, 500)) == "frame"


def test_the_order_of_building_has_the_upper_sheet_later() -> None:
    assert asked(section(UP, LOW)).order.sequence == ("a", "b")
    three = [sheet("a", (0, -500), (0, 100)), sheet("b", (-5, 40), (-5, 300))]
    third = sheet("c", (-10, 240), (-10, 500))
    assert asked(section(third, *three[::-1])).order.sequence == ("a", "b", "c")


def test_a_sheet_that_is_over_another_here_and_under_it_there_cannot_be_built() -> None:
    weaving = (
        (-8, 0),
        (-8, 100),
        (-60, 110),
        (-60, 150),
        (60, 150),
        (60, 190),
        (8, 200),
        (8, 300),
    )
    drawn = section(sheet("a", (0, -500), (0, 500)), sheet("b", *weaving))
    assert asked(drawn).order.cycles == (("a", "b"),)


def test_rain_reaches_a_gap_in_the_open() -> None:
    roof = [sheet("a", (-500, -100), (-20, -4)), sheet("b", (20, 4), (500, 100))]
    network = asked(section(*roof, outside=[(0, 300)], inside=[(0, -300)]))
    assert network.rain is not None
    assert network.rain_reaches((-20, -4), (20, 4))
    assert not network.rain_reaches((300, -300), (310, -300))


def test_a_plan_has_no_rain() -> None:
    network = asked(section(LOW, UP, gravity=None))
    assert network.rain is None
    assert not network.rain_reaches((-10, 0), (10, 0))


def test_places_are_told_along_a_layer() -> None:
    assert asked(section(sheet("a", (0, -500), (0, 500)))).along(Control.AIR, (9, 0)) == 500


def drawn_in_marks() -> Section:
    return section(LOW, UP, inside=())


def test_without_marks_the_section_can_still_be_asked() -> None:
    network = asked(drawn_in_marks())
    assert network.rain is None
    assert network.layers[Control.AIR].why != ""
