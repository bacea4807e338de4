"""Pieces on the sheet: areas, sheets, one line for each control."""

from dataclasses import replace

import pytest

from enclosure_app.drawing.marks import Fill, Stroke
from enclosure_app.drawing.placement import Placement, box_around
from enclosure_app.drawing.section.laps import shown_sheets
from enclosure_app.drawing.section.layer_marks import (
    area_marks,
    controls_of,
    office_marks,
    sheet_marks,
    thickness_marks,
)
from enclosure_app.drawing.section.sides import sides_of
from enclosure_app.drawing.theme import load_theme
from enclosure_app.model.place import Area, Line
from enclosure_app.model.product import Control
from enclosure_app.model.report import SectionResult
from enclosure_app.model.section import Break, Piece
from tests.drawing import eave

THEME = load_theme()
VIEW = Placement(10.0)
SECTION = eave.section()


def sheets(result: SectionResult | None = None) -> list[Stroke]:
    result = result or eave.result()
    sides = sides_of(result, VIEW)
    marks = sheet_marks(result, shown_sheets(result, VIEW, sides), sides, THEME)
    return [m for m in marks if isinstance(m, Stroke)]


def test_controls_come_in_one_order() -> None:
    assert controls_of(SECTION.by_name["w1"], SECTION) == (Control.WATER, Control.AIR)
    assert controls_of(SECTION.by_name["floor"], SECTION) == (Control.AIR, Control.VAPOUR)
    assert controls_of(SECTION.by_name["footing"], SECTION) == ()


def test_an_area_has_its_fill_its_hatch_and_its_outline() -> None:
    marks = [m for m in area_marks(SECTION, VIEW, THEME) if m.source == "wool"]
    (ground,) = (m for m in marks if isinstance(m, Fill))
    assert ground.colour == THEME.areas["insulation"].colour
    assert ground.rings[0] == VIEW.points(SECTION.by_name["wool"].shape.outer)
    pens = {m.pen for m in marks if isinstance(m, Stroke)}
    assert {THEME.pen("hatch"), THEME.pen("piece")} < pens


def test_the_edge_of_an_area_in_a_layer_has_its_line_just_inside() -> None:
    heat = THEME.control(Control.HEAT)
    (edge,) = (m for m in area_marks(SECTION, VIEW, THEME)
               if isinstance(m, Stroke) and m.source == "wool" and m.pen.dash == heat.dash)  # fmt: skip
    outer, inner = (
        box_around(VIEW.points(SECTION.by_name["wool"].shape.outer)),
        box_around(edge.points),
    )
    assert edge.pen.colour == heat.colour
    assert 0 < inner.left - outer.left < 1
    assert 0 < outer.top - inner.top < 1


def test_a_hole_keeps_its_line_in_the_material() -> None:
    ring = ((0, 0), (100, 0), (100, 100), (0, 100))
    hole = ((40, 40), (60, 40), (60, 60), (40, 60))
    piece = Piece("holed", "wool", Area(ring, (hole,)))
    section = replace(SECTION, pieces=(piece,))
    inner = [m for m in area_marks(section, VIEW, THEME) if isinstance(m, Stroke) and m.pen.dash][
        -1
    ]
    assert box_around(inner.points).left < 4.0


def test_outer_sheets_are_painted_over_inner_ones_with_clear_ground_between() -> None:
    strokes = sheets()
    order = [m.source for m in strokes]
    halos = [m for m in strokes if m.pen.colour == THEME.paper]
    assert order.index("w2") > order.index("w1")
    assert {m.source for m in halos} == {p.name for p in eave.LINES if controls_of(p, SECTION)}
    for halo in halos:
        band = next(m for m in strokes if m.source == halo.source and m is not halo)
        assert strokes.index(halo) < strokes.index(band)
        assert halo.pen.width > band.pen.width + 2 * THEME.halo - 1e-9


def test_a_sheet_without_a_control_is_one_thin_line() -> None:
    (drip,) = (m for m in sheets() if m.source == "drip")
    assert drip.pen == THEME.pen("piece")


def test_a_line_drawn_thick_shows_its_thickness_where_it_can_be_seen() -> None:
    def widths(width: float) -> list[float]:
        piece = Piece("thick", "board", Line(((0, 0), (0, 500)), width))
        section = replace(SECTION, pieces=(piece,))
        return [
            m.pen.width for m in thickness_marks(section, VIEW, THEME) if isinstance(m, Stroke)
        ]

    assert widths(18.0) == [pytest.approx(1.8)]
    assert widths(2.0) == []


def test_the_office_s_linework_the_frame_and_breaks_are_thin() -> None:
    broken = replace(SECTION, breaks=(Break(((0, 500), (100, 500)), ((0, 520), (100, 520))),))
    marks = [m for m in office_marks(broken, VIEW, THEME) if isinstance(m, Stroke)]
    assert sum(m.source == "break" for m in marks) == 2
    assert sum(m.source == "frame" for m in marks) == 1
    assert sum(m.pen == THEME.pen("office") for m in marks) == len(eave.OFFICE)
