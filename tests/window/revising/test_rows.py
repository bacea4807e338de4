"""Rows of what became of each finding: what is asked first, then what changed."""

from dataclasses import replace

from enclosure_app.model import edits
from enclosure_app.model.said.carried import Subject
from enclosure_app.model.said.decision import Decision, State
from enclosure_app.planning.revision import Fate
from enclosure_app.window.revising.laying import About, laid_over
from enclosure_app.window.revising.rows import (
    ORDER,
    fate_count,
    fate_words,
    number_in,
    rows_of,
    section_named,
    unlisted,
)
from tests.planning.revision.walls import GAP, project
from tests.window.revising.walls_laid import WHEN, decided, laid


def test_what_is_asked_about_stands_first_and_every_finding_has_a_row() -> None:
    shown = laid()
    first, *others = rows_of(shown)
    about = About(Subject("", "Wall", GAP))
    assert (first.match.fate, first.abouts, first.asks) == (Fate.NOT_SURE, (about,), True)
    assert (first.name, first.said) == ("Wall", "To be mended · Ida")
    assert first.choices("") == {about: ("Wall", "")}
    assert first.choices(None) == {}
    (asked,) = first.match.asked
    assert first.choices(asked) == {about: ("Wall", asked.key)}
    fates = [row.match.fate for row in (first, *others)]
    assert fates == sorted(fates, key=ORDER.index)
    assert not any(row.asks or row.said for row in others)
    held = {row.match.old.key for row in (first, *others) if row.match.old}
    assert held == {finding.key for finding in shown.found[0].findings}


def test_a_finding_has_its_number_of_the_revised_drawing() -> None:
    shown = laid()
    findings = shown.anew[0].findings
    assert [number_in(shown.anew, each) for each in findings] == [*range(1, len(findings) + 1)]
    assert number_in(shown.anew, shown.found[0].findings[0]) is None


def test_a_section_is_found_by_its_name() -> None:
    shown = laid()
    assert section_named(shown.anew, "Wall") is shown.anew[0]
    assert section_named(shown.anew, "Eave") is None


def test_each_fate_has_words() -> None:
    assert fate_count(Fate.STILL_THERE, 12) == "12 still there"
    assert len({fate_words(fate) for fate in Fate}) == len(Fate)


def test_what_was_said_of_what_is_found_no_more_is_counted_where_its_section_is_lost() -> None:
    said = Decision("gap:old", State.MENDED, "Ida", WHEN, "", "Wall", "A gap.")
    before = edits.set_decision(decided(), said)
    lost = laid_over(before, replace(project(), source="b.dxf"))
    assert unlisted(lost, rows_of(lost)) == 1
    assert unlisted(laid(), rows_of(laid())) == 0
