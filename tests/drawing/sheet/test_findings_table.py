"""The rows of the table."""

from dataclasses import replace

from enclosure_app.drawing.marks import Fill, Flag, Label, Stroke, points_of
from enclosure_app.drawing.placement import Box
from enclosure_app.drawing.sheet.findings_table import (
    gone_rows,
    head_marks,
    more_words,
    no_findings,
    row_marks,
    rows,
    title,
)
from enclosure_app.drawing.theme import load_theme
from enclosure_app.drawing.typeface import text_width
from enclosure_app.model.drawing import Units
from enclosure_app.model.finding import Severity
from enclosure_app.model.report import SectionResult
from enclosure_app.model.said.decision import Decision, State
from tests.drawing import eave

THEME = load_theme()
LOOK = (Units.MM, THEME)
FINDINGS = eave.result().findings
NUMBERS = {f.key: i for i, f in enumerate(FINDINGS, 1)}


def test_figures_stand_in_two_columns_flush_right() -> None:
    (row,) = rows((eave.SHORT,), NUMBERS, 90.0, LOOK)
    figures = {
        m.text: m.at[0] for m in row_marks(row, 0.0, 90.0, 50.0, THEME) if isinstance(m, Label)
    }
    heads = {m.text: m.at[0] for m in head_marks(Box(0, 0, 90, 60), THEME) if isinstance(m, Label)}
    assert figures["60 mm"] == heads["measured"]
    assert figures["100 mm"] == heads["required"] == 90.0


def test_figures_are_in_the_drawing_s_units() -> None:
    (row,) = rows((eave.SHORT,), NUMBERS, 90.0, (Units.IN, THEME))
    assert row.figures == ('2 3/8"', '3 15/16"')


def test_what_is_not_measured_is_a_dash() -> None:
    (row,) = rows((eave.UNSEALED,), NUMBERS, 90.0, LOOK)
    assert row.figures == ("–", "–")


def test_a_title_names_severity_fault_and_control() -> None:
    assert title(eave.SHORT) == "Fault · short lap, water"
    assert (
        title(replace(eave.SHORT, control=None, severity=Severity.REMARK)) == "Remark · short lap"
    )


def test_all_marks_of_a_row_stay_between_its_edges() -> None:
    for row in rows(FINDINGS, NUMBERS, 90.0, LOOK):
        box = Box(-1.0, 50.0 - row.height, 90.0, 50.0)
        for mark in row_marks(row, 0.0, 90.0, 50.0, THEME):
            if isinstance(mark, Label | Flag | Stroke):
                assert all(box.holds(p, 1.0) for p in points_of(mark)), row.finding.rule
            if isinstance(mark, Label) and mark.anchor == "start":
                assert mark.at[0] + text_width(mark.text, mark.size, bold=mark.bold) <= 90.01


def test_a_long_sentence_makes_a_higher_row() -> None:
    short, long = rows(
        (eave.SHORT, replace(eave.SHORT, message=eave.SHORT.message * 4)), NUMBERS, 90.0, LOOK
    )
    assert long.height > short.height + 9
    assert " ".join(long.message) == (eave.SHORT.message * 4)


def test_the_flag_in_the_row_is_the_flag_of_the_drawing() -> None:
    (row,) = rows((eave.STOPS,), NUMBERS, 90.0, LOOK)
    (flag,) = (m for m in row_marks(row, 0.0, 90.0, 50.0, THEME) if isinstance(m, Flag))
    assert flag.number == NUMBERS[eave.STOPS.key]
    assert len(flag.shape) == 6


def test_the_reader_is_sent_on() -> None:
    assert more_words(12, Box(0, 0, 90, 60), THEME).text == "12 more on the next sheet"


def test_an_empty_table_says_that_nothing_was_found() -> None:
    assert told(eave.result(findings=())) == (
        "What was found Nothing was found by the checks that were run."
    )


def test_an_empty_table_says_first_what_could_not_be_judged() -> None:
    assert told(eave.unsure()) == (
        "What was found The air layer could not be judged. The two proofs differ: look at it yourself. "
        "Nothing else was found by the checks that were run."
    )


def told(result: SectionResult) -> str:
    marks = no_findings(result, Box(0, 0, 90, 60), LOOK)
    return " ".join(mark.text for mark in marks if isinstance(mark, Label))


def test_a_row_says_what_was_decided_by_shape_and_by_word() -> None:
    decided = {eave.SHORT.key: Decision(eave.SHORT.key, State.MENDED, "Ida", remark="Redrawn.")}
    short, gap = rows((eave.SHORT, eave.GAP), NUMBERS, 90.0, LOOK, decided)
    assert (short.state, gap.state) == (State.MENDED, State.OPEN)
    marks = list(row_marks(short, 0.0, 90.0, 50.0, THEME))
    assert "Mended by Ida: Redrawn." in [m.text for m in marks if isinstance(m, Label)]
    assert [m.state for m in marks if isinstance(m, Flag)] == [State.MENDED]
    (plain,) = rows((eave.SHORT,), NUMBERS, 90.0, LOOK)
    assert short.height > plain.height


def test_a_verdict_that_was_taken_back_is_not_written() -> None:
    decided = {eave.SHORT.key: Decision(eave.SHORT.key, State.OPEN, "Ida")}
    assert rows((eave.SHORT,), NUMBERS, 90.0, LOOK, decided) == rows(
        (eave.SHORT,), NUMBERS, 90.0, LOOK
    )


def test_a_verdict_without_a_finding_has_a_row_without_a_flag() -> None:
    (row,) = gone_rows((Decision("gap:x", State.ACCEPTED, about="A gap."),), 90.0, THEME)
    marks = list(row_marks(row, 0.0, 90.0, 50.0, THEME))
    assert [m.text for m in marks if isinstance(m, Label)] == [
        "No longer found: A gap.",
        "Accepted",
    ]
    assert not any(isinstance(m, Flag) for m in marks)
    assert min(y for m in marks for _, y in points_of(m)) == 50.0 - row.height


def test_a_long_title_leaves_the_figures_alone() -> None:
    """On narrow paper, and in languages with long words, it takes a second line instead."""
    for width in (60.0, 74.0, 90.0, 112.0):
        (row,) = rows((replace(eave.SHORT, rule="edge-cover-short"),), NUMBERS, width, LOOK)
        marks = [m for m in row_marks(row, 0.0, width, 50.0, THEME) if isinstance(m, Label)]
        measured = next(m for m in marks if m.text == row.figures[0])
        reach = text_width(measured.text, measured.size, bold=True)
        for mark in marks:
            if mark.at[1] == measured.at[1] and mark.anchor == "start":
                right = mark.at[0] + text_width(mark.text, mark.size, bold=True)
                assert right < measured.at[0] - reach
        assert " ".join(row.title) == "Fault · edge cover short, water"


def test_a_verdict_in_a_row_stands_apart_from_what_is_to_be_done_with_its_badge_before_it() -> (
    None
):
    decided = {eave.SHORT.key: Decision(eave.SHORT.key, State.MENDED, "Ida", remark="x " * 80)}
    (row,) = rows((eave.SHORT,), NUMBERS, 90.0, LOOK, decided)
    marks = list(row_marks(row, 0.0, 90.0, 50.0, THEME))
    (advice,) = (m for m in marks if isinstance(m, Label) and m.text == row.advice[-1])
    lines = [m for m in marks if isinstance(m, Label) and m.text in row.verdict]
    assert len(lines) > 1
    assert {m.at[0] for m in lines} == {lines[0].at[0]}
    assert lines[0].at[0] > advice.at[0]
    discs = [x for m in marks if isinstance(m, Fill) for ring in m.rings for x, _ in ring]
    assert any(advice.at[0] - 0.01 <= x < lines[0].at[0] for x in discs)
    assert min(m.at[1] for m in lines) > 50.0 - row.height
