"""Joints that a person declared sealed are marked."""

from dataclasses import replace

import pytest

from enclosure_app.drawing.marks import Overlay, Stroke
from enclosure_app.drawing.placement import Placement
from enclosure_app.drawing.section.sealed_marks import SIDE, said_sealed, sealed_mark
from enclosure_app.drawing.section.section_marks import View, section_marks
from enclosure_app.drawing.sheet.legend import entries
from enclosure_app.drawing.theme import load_theme
from enclosure_app.model.drawing import Units
from enclosure_app.model.product import Control
from enclosure_app.model.report import Joint, SectionResult
from tests.drawing import eave

THEME = load_theme()
AT_TEN = Placement(10.0, (0.0, 0.0), (100.0, 60.0))


@pytest.fixture
def joint() -> Joint:
    return next(j for layer in eave.result().layers.values() for j in layer.joints)


@pytest.fixture
def sealed(joint: Joint) -> SectionResult:
    pair = min(joint.a, joint.b), max(joint.a, joint.b)
    section = replace(eave.result().section, sealed=frozenset({pair}))
    return replace(eave.result(), section=section)


def squares(result: SectionResult, *, detail: bool = False) -> list[Stroke]:
    view = View(AT_TEN, Units.MM, THEME, detail=detail)
    pen = THEME.pen("glyph")
    found = [m for m in section_marks(result, view) if m.source == "sealed"]
    return [m for m in found if isinstance(m, Stroke) and m.closed and m.pen == pen]


def test_nothing_is_marked_where_nobody_said_anything() -> None:
    assert said_sealed(eave.result()) == {}
    assert squares(eave.result()) == []


@pytest.mark.parametrize("detail", [False, True])
def test_the_joint_has_its_square_on_the_sheet_and_in_details(
    sealed: SectionResult, joint: Joint, detail: bool
) -> None:
    x, y = AT_TEN.point(joint.at)
    middles = [
        (sum(px for px, _ in m.points) / 4, sum(py for _, py in m.points) / 4)
        for m in squares(sealed, detail=detail)
    ]
    assert (pytest.approx(x), pytest.approx(y)) in middles
    assert len(middles) == len(said_sealed(sealed))


def test_it_lies_on_the_overlays_of_the_controls_that_are_joined(sealed: SectionResult) -> None:
    wanted = {
        tuple(Overlay(control.value) for control in controls)
        for controls in said_sealed(sealed).values()
    }
    assert {m.overlays for m in squares(sealed)} == wanted


def test_it_is_two_mm_large_with_a_tick_inside() -> None:
    halo, square, tick = sealed_mark((10.0, 20.0), THEME, (Control.AIR,))
    assert halo.pen.width > square.pen.width
    assert square.points[2][0] - square.points[0][0] == pytest.approx(SIDE)
    assert all(abs(px - 10) < SIDE / 2 and abs(py - 20) < SIDE / 2 for px, py in tick.points)


def test_the_legend_says_what_it_means(sealed: SectionResult) -> None:
    words = "joint declared sealed"
    assert words in [entry.words for entry in entries(sealed)]
    assert words not in [entry.words for entry in entries(eave.result())]
