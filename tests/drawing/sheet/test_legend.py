"""The legend explains what is on the sheet and nothing else."""

from dataclasses import replace

from enclosure_app.drawing.marks import Label, Stroke, points_of
from enclosure_app.drawing.placement import Box
from enclosure_app.drawing.sheet.legend import entries, layer_entries, legend_height, legend_marks
from enclosure_app.drawing.theme import load_theme
from enclosure_app.drawing.typeface import text_width
from enclosure_app.model.product import Control
from enclosure_app.model.report import Continuity, SectionResult
from enclosure_app.model.said.decision import Decision, State
from tests.drawing import eave

THEME = load_theme()


def test_every_drawn_layer_is_named_with_how_it_runs() -> None:
    assert [e.words for e in layer_entries(eave.result())] == [
        "water layer: continuous", "air layer: broken", "vapour layer: broken", "heat layer",
    ]  # fmt: skip


def test_severities_and_streams_are_named_when_they_occur() -> None:
    assert [e.words for e in entries(eave.result())] == [
        "fault", "doubt", "remark", "way of a drop", "way in, air",
    ]  # fmt: skip
    whole = {Control.AIR: replace(eave.AIR, continuity=Continuity.CONTINUOUS)}
    calm = eave.result(findings=(eave.GAP,), rain=(), layers=whole)
    assert [e.words for e in entries(calm)] == ["fault"]


def test_a_swatch_has_the_line_of_its_layer() -> None:
    box = Box(0, 0, 90, legend_height(eave.result()))
    pens = {m.pen for m in legend_marks(eave.result(), box, THEME) if isinstance(m, Stroke)}
    assert {THEME.control(c) for c in Control} <= pens


def test_the_legend_takes_the_height_it_says() -> None:
    box = Box(0, 0, 90, legend_height(eave.result()))
    for mark in legend_marks(eave.result(), box, THEME):
        if isinstance(mark, Label):
            assert all(box.holds(p) for p in points_of(mark))


def test_a_section_with_nothing_to_explain_has_no_legend() -> None:
    bare = SectionResult(replace(eave.section(), pieces=()), {})
    assert legend_height(bare) == 0.0
    assert list(legend_marks(bare, Box(0, 0, 90, 0), THEME)) == []


def test_the_verdicts_on_the_sheet_are_explained() -> None:
    decided = {
        eave.SHORT.key: Decision(eave.SHORT.key, State.MENDED),
        "gone": Decision("gone", State.NO_FAULT),
    }
    words = [entry.words for entry in entries(eave.result(decisions=decided))]
    assert "Mended" in words
    assert "Not a fault" not in words


def test_a_layer_that_has_no_room_for_all_its_words_still_says_how_it_runs() -> None:
    """As in German, where the words for a layer are longer."""
    narrow = Box(0, 0, 60, legend_height(eave.result()))
    told = [m.text for m in legend_marks(eave.result(), narrow, THEME) if isinstance(m, Label)]
    assert told[:4] == ["water: continuous", "air: broken", "vapour: broken", "heat"]
    assert not any(text.endswith("…") for text in told[:4])


def test_the_words_on_the_right_take_no_more_than_they_need() -> None:
    calm = eave.result(findings=(eave.GAP,), rain=(), layers={})
    box = Box(0, 0, 90, legend_height(calm))
    (word,) = (
        m for m in legend_marks(calm, box, THEME) if isinstance(m, Label) and m.text == "fault"
    )
    assert word.at[0] > 70.0
    assert word.at[0] + text_width("fault", THEME.small) <= 90.0
