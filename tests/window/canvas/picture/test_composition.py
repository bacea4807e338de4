"""What is to be seen of a section in the window, for one look at it."""

from dataclasses import replace

import pytest

from enclosure_app.drawing.marks import Fill, Flag, Label, Stroke
from enclosure_app.drawing.placement import Box, Placement
from enclosure_app.drawing.section.flags import FLAG_HEIGHT
from enclosure_app.drawing.section.section_marks import frame_box
from enclosure_app.model.place import Area, Line
from enclosure_app.model.product import Control
from enclosure_app.model.report import SectionResult
from enclosure_app.model.said.decision import Decision, State
from enclosure_app.model.section import Text
from enclosure_app.window.canvas.ink.look import Look
from enclosure_app.window.canvas.picture.composition import (
    composed,
    only_control,
    seen_in,
)
from tests.drawing import eave

PLACEMENT = Placement(10.0)
EVERYTHING = Box(-10000.0, -10000.0, 10000.0, 10000.0)


def layers(result: SectionResult, look: Look = Look()) -> list:  # noqa: B008  frozen
    parts = composed(result, PLACEMENT, EVERYTHING, look)
    return [*parts.layers, *parts.flags]


def sources(result: SectionResult, look: Look) -> set[str]:
    return {mark.source for mark in layers(result, look)}


def test_what_lies_under_the_office_s_lines_comes_before_the_frame() -> None:
    parts = composed(eave.result(), PLACEMENT, EVERYTHING, Look())
    assert parts.layers[0].source == "frame"
    assert parts.ground
    assert "frame" not in {mark.source for mark in parts.ground}


def test_every_finding_has_its_flag_with_the_number_of_the_sheet() -> None:
    flags = {mark.source: mark.number for mark in layers(eave.result()) if isinstance(mark, Flag)}
    assert flags == {finding.key: n for n, finding in enumerate(eave.result().findings, 1)}


@pytest.mark.parametrize("control", list(Control))
def test_a_control_alone_shows_its_own_trace_findings_and_pieces(control: Control) -> None:
    result = eave.result()
    shown = only_control(result, control)
    assert set(shown.layers) <= {control}
    assert {finding.control for finding in shown.findings} <= {control, None}
    products = shown.section.products.values()
    assert all(product.controls <= {control} for product in products)
    assert bool(shown.rain) is (control is Control.WATER)
    keys = {finding.key for finding in shown.findings}
    flags = {m.source for m in layers(result, Look(only=control)) if isinstance(m, Flag)}
    assert flags == keys


def test_a_control_alone_has_its_trace_and_its_own_way_in() -> None:
    assert "trace:air" not in sources(eave.result(), Look())
    alone = sources(eave.result(), Look(only=Control.AIR))
    assert {"trace:air", "opening:air"} <= alone
    assert "trace:water" not in alone


def test_numbers_stay_when_a_control_is_shown_alone() -> None:
    flags = [m for m in layers(eave.result(), Look(only=Control.VAPOUR)) if isinstance(m, Flag)]
    assert [flag.number for flag in flags] == [3]


def test_drops_are_left_to_whoever_moves_them() -> None:
    rain = [mark for mark in layers(eave.result()) if mark.source == "rain"]
    assert rain == [] or not any(isinstance(mark, Fill) for mark in rain)
    ground = composed(eave.result(), PLACEMENT, EVERYTHING, Look())
    every = [*ground.ground, *ground.layers]
    assert any(isinstance(m, Stroke) and m.source == "rain" for m in every)
    assert not any(isinstance(m, Fill) and m.source == "rain" for m in every)


def test_a_verdict_stands_on_the_flag_and_in_words_below_it() -> None:
    decided = {eave.GAP.key: Decision(eave.GAP.key, State.ACCEPTED, "Ida", remark="So.")}
    marks = layers(eave.result(decisions=decided))
    (flag,) = [m for m in marks if isinstance(m, Flag) and m.source == eave.GAP.key]
    assert flag.state is State.ACCEPTED
    (word,) = [m for m in marks if isinstance(m, Label) and m.text == "Accepted"]
    assert word.at[1] < flag.at[1] - FLAG_HEIGHT / 2


def test_areas_are_cut_off_outside_the_window() -> None:
    result = eave.result()
    window = Box(-1000.0, 0.0, 1000.0, 300.0)
    lean = seen_in(result, window)
    areas = [p.shape for p in lean.section.pieces if isinstance(p.shape, Area)]
    assert areas
    assert all(y <= 300.0 + 1e-6 for area in areas for _, y in area.outer)
    assert lean.section.strokes == ()


def test_a_section_without_a_frame_has_no_marks() -> None:
    from dataclasses import replace  # noqa: PLC0415

    result = eave.result()
    bare = replace(result, section=replace(result.section, frame=()))
    assert composed(bare, PLACEMENT, EVERYTHING, Look()).layers == ()


def test_everything_calm_stays_in_the_frame() -> None:
    frame = frame_box(eave.result(), PLACEMENT)
    parts = composed(eave.result(), PLACEMENT, EVERYTHING, Look())
    for mark in parts.ground:
        rings = mark.rings if isinstance(mark, Fill) else (mark.points,)
        assert all(frame.holds(point, 0.01) for ring in rings for point in ring)


def test_texts_that_are_too_small_to_be_read_are_left_out() -> None:
    section = replace(
        eave.result().section,
        texts=tuple(Text("NOTE", (100.0, 1000.0), height) for height in (2.0, 5.0, 50.0)),
    )
    result = replace(eave.result(), section=section)
    everything = Box(-1e5, -1e5, 1e5, 1e5)
    kept = seen_in(result, everything, 5.0).section.texts
    assert [text.height for text in kept] == [5.0, 50.0]


def test_a_sheet_is_left_out_that_does_not_come_near_the_window() -> None:
    """One that runs through the window without a point in it is shown."""
    section = eave.section()
    piece = next(p for p in section.pieces if isinstance(p.shape, Line))
    through = replace(piece, name="through", shape=Line(((-5000.0, 50.0), (5000.0, 50.0))))
    beyond = replace(piece, name="beyond", shape=Line(((-5000.0, 150.0), (5000.0, 150.0))))
    result = replace(eave.result(), section=replace(section, pieces=(through, beyond)))
    seen = seen_in(result, Box(0.0, 0.0, 100.0, 100.0)).section.pieces
    assert [piece.name for piece in seen] == ["through"]
