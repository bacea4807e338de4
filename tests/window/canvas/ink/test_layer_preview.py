"""Layers light up in the hue and pattern of what they are, or would be."""

from dataclasses import replace

from PySide6.QtCore import Qt
from PySide6.QtGui import QColor

from enclosure_app.drawing.theme import load_theme
from enclosure_app.files.maps.catalogue import load_products
from enclosure_app.model.layer import Role
from enclosure_app.model.place import Line
from enclosure_app.model.product import Control
from enclosure_app.model.section import Piece, Section, Stroke
from enclosure_app.window.canvas.ink.layer_preview import Lit, lit_pens, lit_runs

RUN, MOVED, OTHER = ((0.0, 5.0), (50.0, 5.0)), ((0.0, 6.0), (50.0, 6.0)), ((0.0, 9.0), (5.0, 9.0))
SECTION = Section(
    "s",
    ((0.0, 0.0), (100.0, 0.0), (100.0, 100.0)),
    (Piece("1", "felt", Line(MOVED), ("1",), "A"),),
    load_products(),
    strokes=(Stroke(OTHER, "A", "2"), Stroke(OTHER, "B", "3")),
    taken=(Stroke(RUN, "A", "1"), Stroke(RUN, "C", "4")),
)


def test_all_that_is_on_a_layer_lights_up_as_it_is_now_even_what_is_not_shown() -> None:
    assert sorted(lit_runs(SECTION, Lit(frozenset("A")))) == [MOVED, OTHER]
    assert lit_runs(SECTION, Lit(frozenset("C"))) == [RUN]
    assert lit_runs(SECTION, Lit()) == []


def test_what_was_drawn_of_a_product_on_no_layer_lights_up() -> None:
    drawn = replace(SECTION, pieces=(*SECTION.pieces, Piece("2", "felt", Line(RUN))))
    assert lit_runs(drawn, Lit(drawn=frozenset({"felt"}))) == [RUN]
    assert lit_runs(drawn, Lit(drawn=frozenset({"plywood"}))) == []


def test_each_control_has_its_hue_and_pattern_the_widest_below() -> None:
    theme = load_theme()
    air, water = lit_pens(Lit(frozenset("A"), (Control.AIR, Control.WATER)), theme)
    assert air.color() == QColor(theme.control(Control.AIR).colour)
    assert air.style() is Qt.PenStyle.CustomDashLine
    assert water.style() is Qt.PenStyle.SolidLine
    assert air.widthF() > water.widthF()


def test_roles_are_told_apart_without_any_controls_hue() -> None:
    theme = load_theme()
    pens = {role: lit_pens(Lit(frozenset("A"), role=role), theme)[0] for role in ("", *Role)}
    hues = {QColor(theme.control(control).colour).name() for control in Control}
    assert not hues & {pen.color().name() for pen in pens.values()}
    assert pens[Role.IGNORE].style() is Qt.PenStyle.DotLine
    assert pens[Role.FRAME].style() is Qt.PenStyle.CustomDashLine
    assert pens[Role.LINEWORK].style() is Qt.PenStyle.SolidLine
