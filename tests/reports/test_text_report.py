"""The text report: how layers run, findings in walking order, lengths in the drawing's units."""

import dataclasses
import re
from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from enclosure_app.model.drawing import Note, NoteLevel, Units
from enclosure_app.model.finding import Finding, Severity
from enclosure_app.model.product import Control
from enclosure_app.model.report import (
    Continuity,
    LayerResult,
    Lift,
    Report,
    Run,
)
from enclosure_app.reports.text_report import CAUTION, write_text
from tests.reports.reported import reported

GAP = Finding(
    key="gap:2F.end+31.start",
    rule="gap",
    control=Control.AIR,
    severity=Severity.FAULT,
    at=(1270.0, 2540.0),
    pieces=("2F", "31"),
    message="Wall sheet stops short of the slab at the sill.",
    advice="Carry the sheet down and tape it to the slab.",
    measured=30.1625,
    required=0.0,
)
SHORT = Finding(
    key="short-lap:31+40",
    rule="short-lap",
    control=Control.WATER,
    severity=Severity.DOUBT,
    at=(0.0, 0.0),
    pieces=("31", "40"),
    message="Sheets lap too little at the foot of the wall.",
    advice="Lap the sheets by 6 inches.",
    measured=101.6,
    required=152.4,
    basis="A rule book, 2021 (unconfirmed)",
)
LAYERS = (
    LayerResult(Control.WATER, Continuity.CONTINUOUS, walk=(Run("31", ((0, 0), (1, 0))),)),
    LayerResult(
        Control.AIR,
        Continuity.BROKEN,
        walk=(Lift("2F", "31", (0, 0), (0, 30.1625)), Lift("31", "9", (5, 5), (5, 17.7))),
        bottleneck=30.1625,
        opening=30.1625,
    ),
    LayerResult(Control.VAPOUR, Continuity.UNSURE, why="no text says which side is inside"),
    LayerResult(Control.HEAT, Continuity.ABSENT),
)


def report(units: Units = Units.IN, findings: tuple[Finding, ...] = (GAP, SHORT)) -> Report:
    return reported(LAYERS, findings, units, "site/eave.dxf", "House at the lake")


def test_the_whole_report_in_inches() -> None:
    assert write_text(report(), width=80, colour=False) == (
        """\
site/eave.dxf
  House at the lake, drawn in inches
  guessed: Layer MEMB taken for a wall sheet.

  Eave
    water   continuous; 1 doubt
    air     broken: 2 gaps, largest 1 3/16"; widest way in 1 3/16"; 1 fault
    vapour  unsure: no text says which side is inside
    heat    absent

    1  FAULT  gap (air) at 50, 100 in
       Wall sheet stops short of the slab at the sill.
       Measured 1 3/16", required 0".
       To do: Carry the sheet down and tape it to the slab.

    2  DOUBT  short-lap (water) at 0, 0 in
       Sheets lap too little at the foot of the wall.
       Measured 4", required 6".
       To do: Lap the sheets by 6 inches.
       Figure from: A rule book, 2021 (unconfirmed)

1 fault, 1 doubt and no remarks in 1 drawing; 1 layer could not be judged.
Layers: 1 continuous, 1 broken, 1 unsure and 1 absent.

Caution: this check is an aid. Local codes, the makers' instructions and
licensed practice decide. Figures marked (unconfirmed) have not been compared
with their source by anyone here. Look at work at height only with protection
against falls.
"""
    )


def test_a_metric_drawing_reads_in_millimetres_and_its_own_coordinates() -> None:
    text = write_text(report(Units.M), width=80, colour=False)
    assert "drawn in metres" in text
    assert "gap (air) at 1.27, 2.54 m\n" in text
    assert "Measured 0.030 m, required 0.000 m." in text


@pytest.mark.parametrize(
    ("mm", "units", "words"),
    [
        (1200.0, Units.MM, "1200, 0 mm"),
        (-0.001, Units.MM, "0, 0 mm"),
        (12.34, Units.CM, "1.23, 0 cm"),
        (30.48, Units.IN, "1.2, 0 in"),
        (-304800.0, Units.IN, "-12000, 0 in"),
        (152.4, Units.FT, "0.5, 0 ft"),
    ],
)
def test_a_place_is_what_the_drawing_itself_says(mm: float, units: Units, words: str) -> None:
    there = dataclasses.replace(GAP, at=(mm, 0.0))
    assert f" at {words}\n" in write_text(report(units, findings=(there,)), width=80, colour=False)


def test_thousands_stay_together_at_the_end_of_a_line() -> None:
    far = dataclasses.replace(GAP, measured=12345.0)
    text = write_text(report(Units.MM, findings=(far,)), width=80, colour=False)
    assert "Measured 12\u202f345 mm" in text


def test_a_finding_that_measures_nothing_gives_no_figures() -> None:
    cycle = dataclasses.replace(GAP, rule="lap-cycle", control=None, measured=None, required=None)
    text = write_text(report(findings=(cycle,)), width=80, colour=False)
    assert "FAULT  lap-cycle at 50, 100 in" in text
    assert "Measured" not in text


def sure(judged: Report) -> Report:
    """Return the same report without the layers that could not be judged."""
    (drawing,) = judged.drawings
    sections = tuple(
        replace(
            section,
            layers={
                c: la for c, la in section.layers.items() if la.continuity != Continuity.UNSURE
            },
        )
        for section in drawing.sections
    )
    return Report((replace(drawing, sections=sections),))


def test_nothing_found_is_said() -> None:
    text = write_text(sure(report(findings=())), width=80, colour=False)
    assert "\nNothing found in 1 drawing.\n" in text


def test_a_layer_that_could_not_be_judged_never_reads_as_clean() -> None:
    text = write_text(report(findings=()), width=80, colour=False)
    assert "Nothing found in" not in text
    assert "\n1 layer in 1 drawing could not be judged; nothing else found.\n" in text


def test_numbers_start_again_with_each_section() -> None:
    """A sheet shows one section, and its flags carry the same numbers."""
    (drawing,) = report().drawings
    two = dataclasses.replace(drawing, sections=drawing.sections * 2)
    text = write_text(Report((two, drawing)), width=80, colour=False)
    assert re.findall(r"^ +(\d+)  [A-Z]+  ", text, re.MULTILINE) == ["1", "2"] * 3
    assert text.count(CAUTION[:30]) == 1


def test_many_notes_are_cut_short_and_counted() -> None:
    (drawing,) = report().drawings
    notes = tuple(Note(NoteLevel.IGNORED, f"Layer L{i} is linework.") for i in range(5000))
    many = dataclasses.replace(drawing.drawing, notes=notes)
    text = write_text(
        Report((dataclasses.replace(drawing, drawing=many),)), width=80, colour=False
    )
    assert (
        "  ignored: Layer L7 is linework.\n  ignored: 4992 more, all in the JSON report\n" in text
    )
    assert "Layer L8 " not in text


def test_colour_changes_no_word() -> None:
    coloured = write_text(report(), width=80, colour=True)
    assert "\x1b[" in coloured
    plain = re.sub(r"\x1b\[[0-9;]*m", "", coloured)
    assert plain == write_text(report(), width=80, colour=False)


@pytest.mark.parametrize("width", [60, 80, 120])
def test_every_width_is_kept_and_nothing_is_lost(width: int) -> None:
    text = write_text(report(), width=width, colour=False)
    assert max(len(line) for line in text.splitlines()) <= width
    assert text.split() == write_text(report(), width=500, colour=False).split()


@given(
    st.text(st.characters(codec="ascii", exclude_categories=["Cc"]), min_size=1, max_size=300),
    st.integers(40, 120),
)
def test_no_message_outgrows_the_line_unless_one_word_does(message: str, width: int) -> None:
    told = dataclasses.replace(GAP, message=message)
    text = write_text(report(findings=(told,)), width=width, colour=False)
    for line in text.splitlines():
        assert len(line) <= width or len(line.split()) == 1


def test_plain_text_needs_nothing_but_ascii() -> None:
    assert write_text(report(), width=80, colour=False).isascii()


def test_a_name_cannot_play_with_the_terminal() -> None:
    told = dataclasses.replace(GAP, message="Layer \x1b[2JMEMB\x07 stops.")
    text = write_text(report(findings=(told,)), width=80, colour=False)
    assert "Layer [2JMEMB stops." in text


def test_by_how_much_the_two_proofs_differ_is_said_in_the_units_of_the_drawing() -> None:
    air = LayerResult(Control.AIR, Continuity.UNSURE, bottleneck=25.4, opening=57.15)
    text = write_text(reported([air], ()), width=500, colour=False)
    assert (
        'unsure: The trace says that the widest gap is 1", the opening that it is 1 1/4" wider:'
        in text
    )
    assert " mm" not in text
