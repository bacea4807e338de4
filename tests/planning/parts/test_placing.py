"""Ready-made parts that are put into a section."""

from collections.abc import Callable

import pytest

from enclosure_app.checker import check_section
from enclosure_app.files.maps.catalogue import load_products
from enclosure_app.files.maps.rule_book import load_limits
from enclosure_app.model.drawing import Units
from enclosure_app.model.edits import add_piece
from enclosure_app.model.finding import Severity
from enclosure_app.model.place import Line, Points
from enclosure_app.model.project import Project
from enclosure_app.model.report import Continuity
from enclosure_app.model.section import Section
from enclosure_app.planning.parts import PARTS, Part, part
from enclosure_app.planning.parts.placing import other_hand, put_part

PRODUCTS = load_products()
FRAME = ((0.0, 0.0), (3000.0, 0.0), (3000.0, 3000.0), (0.0, 3000.0))
EMPTY = Project("p", Units.MM, (Section("s", FRAME, (), PRODUCTS),))


def assert_sound(section: Section) -> None:
    result = check_section(section, load_limits())
    assert [f.message for f in result.findings if f.severity is Severity.FAULT] == []
    assert {layer.continuity for layer in result.layers.values()} == {Continuity.CONTINUOUS}


@pytest.mark.parametrize("each", PARTS, ids=lambda each: each.name)
@pytest.mark.parametrize("turn", [lambda part: part, other_hand], ids=["as drawn", "other hand"])
def test_a_part_is_sound_where_it_is_put(each: Part, turn: Callable[[Section], Section]) -> None:
    after = put_part(EMPTY, 0, turn(each.section(each.parameters(), PRODUCTS)), (5000.0, -700.0))
    assert after.sections[0].name == "s"
    assert_sound(after.sections[0])


def test_every_piece_goes_to_the_place() -> None:
    eave = part("eave", PRODUCTS)
    (section,) = put_part(EMPTY, 0, eave, (100.0, 50.0)).sections
    for there, here in zip(section.pieces, eave.pieces, strict=True):
        assert first(there.shape) == pytest.approx(
            (first(here.shape)[0] + 100, first(here.shape)[1] + 50)
        )
    assert section.frame[0] == (eave.frame[0][0] + 100, eave.frame[0][1] + 50)


def first(shape) -> tuple[float, float]:  # noqa: ANN001
    points: Points = shape.points if isinstance(shape, Line) else shape.outer
    return points[0]


def test_a_section_that_is_drawn_in_keeps_its_frame_and_its_marks() -> None:
    drawn = add_piece(EMPTY, 0, "felt", Line(((0.0, 0.0), (0.0, 900.0))))
    (section,) = put_part(drawn, 0, part("ridge", PRODUCTS), (500.0, 500.0)).sections
    assert section.frame == FRAME
    assert section.pieces[0] is drawn.sections[0].pieces[0]
    assert len(section.inside) == len(section.outside) == 1
    assert section.products is PRODUCTS or section.products == PRODUCTS


def test_the_same_part_can_be_put_in_twice() -> None:
    once = put_part(EMPTY, 0, part("eave", PRODUCTS), (0.0, 0.0))
    twice = put_part(once, 0, part("eave", PRODUCTS), (5000.0, 0.0))
    assert len(twice.sections[0].by_name) == 2 * len(once.sections[0].by_name)


def test_the_other_hand_has_its_outside_on_the_other_side() -> None:
    eave = part("eave", PRODUCTS)
    turned = other_hand(eave)
    assert turned.outside[0] == (-eave.outside[0][0], eave.outside[0][1])
    assert other_hand(turned) == eave
