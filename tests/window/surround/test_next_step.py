"""The next sensible step, for every state that a section can be in."""

from dataclasses import replace
from types import MappingProxyType

import pytest

from enclosure_app.model.finding import Finding, Severity
from enclosure_app.model.place import Line
from enclosure_app.model.product import Bond, Control, Kind, Product
from enclosure_app.model.report import Continuity, LayerResult, SectionResult
from enclosure_app.model.said.decision import Decision, State
from enclosure_app.model.section import Piece, Section, Stroke
from enclosure_app.window.surround.next_step import next_step, stopped_step

FRAME = ((0.0, 0.0), (9.0, 0.0), (9.0, 9.0))
SHEET = Product("sheet", "Sheet", frozenset({Control.AIR}), Bond.ADHERED, Kind.SHEET)
DRAWN = Section(
    "S", FRAME, (Piece("1", "sheet", Line(((0.0, 0.0), (9.0, 9.0)))),), {"sheet": SHEET},
    inside=((1.0, 2.0),), outside=((2.0, 1.0),),
)  # fmt: skip


def found(continuity: Continuity, *severities: Severity) -> SectionResult:
    layers = MappingProxyType({Control.AIR: LayerResult(Control.AIR, continuity)})
    findings = tuple(
        Finding(f"gap:{n}", "gap", Control.AIR, severity, (0, 0), ("1",), "Open.", "Close it.")
        for n, severity in enumerate(severities)
    )
    return SectionResult(DRAWN, layers, findings=findings)


@pytest.mark.parametrize(
    ("section", "action"),
    [
        (replace(DRAWN, pieces=()), "tool_sheet"),
        (replace(DRAWN, pieces=(), strokes=(Stroke(FRAME),)), "read_notes"),
        (replace(DRAWN, outside=()), "tool_outside"),
        (replace(DRAWN, inside=()), "tool_inside"),
        (replace(DRAWN, frame=()), "tool_frame"),
        (DRAWN, ""),  # it is being judged
    ],
)
def test_what_is_still_to_be_said_comes_first(section: Section, action: str) -> None:
    assert next_step(SectionResult(section, MappingProxyType({}))).action == action


def test_faults_are_walked_through_before_doubts() -> None:
    step = next_step(found(Continuity.BROKEN, Severity.FAULT, Severity.DOUBT))
    assert (step.text, step.action) == ("One fault. Go and see it.", "next_finding")
    step = next_step(found(Continuity.BROKEN, Severity.DOUBT))
    assert step.text == "No faults, but 1 to look at by eye."


def test_a_sound_section_is_to_be_written_down() -> None:
    assert next_step(found(Continuity.CONTINUOUS)).action == "write_pdf"


def test_a_layer_that_could_not_be_judged_is_not_told_as_sound() -> None:
    step = next_step(found(Continuity.UNSURE))
    assert step.action == "only_air"
    assert step.text == (
        "Nothing was found, but a layer could not be judged: air. Look at it by eye."
    )


def test_a_layer_that_is_broken_without_a_finding_is_told() -> None:
    assert next_step(found(Continuity.BROKEN)).text.startswith("A layer is broken.")


def test_what_is_decided_is_not_walked_through_again() -> None:
    shown = found(Continuity.BROKEN, Severity.FAULT, Severity.FAULT)
    one = replace(shown, decisions={"gap:0": Decision("gap:0", State.MENDED)})
    assert next_step(one).text == "One fault. Go and see it."
    both = {key: Decision(key, State.TO_BE_MENDED) for key in ("gap:0", "gap:1")}
    step = next_step(replace(shown, decisions=both))
    assert step.action == "write_pdf"
    assert step.text.startswith("Every fault and doubt has its verdict.")


def test_a_check_that_was_stopped_can_be_made_up_for() -> None:
    known, unknown = stopped_step(known=True), stopped_step(known=False)
    assert known.action == unknown.action == "check_now"
    assert "before its last change" in known.text
    assert "nothing is known" in unknown.text
