"""The words beside a section: everything that is said of a finding, in lines that do not overlap."""

import itertools
from types import MappingProxyType

from enclosure_app.drawing.placement import box_around
from enclosure_app.drawing.theme import load_theme
from enclosure_app.model.drawing import Units
from enclosure_app.model.said.decision import State
from enclosure_app.model.standing.verdicts import verdict_on
from enclosure_app.reports.dxf.layers import WORDS
from enclosure_app.reports.dxf.room import Room
from enclosure_app.reports.dxf.section import Look
from enclosure_app.reports.dxf.words import columns
from tests.drawing import eave

LOOK = Look(Units.MM, load_theme())


def test_everything_that_is_said_of_a_finding_is_written() -> None:
    decided = verdict_on(eave.GAP, State.ACCEPTED, "Ida", "2026-03-02T10:00:00+00:00", "Taped.")
    result = eave.result(findings=(eave.GAP,), decisions=MappingProxyType({eave.GAP.key: decided}))
    lines = list(columns([result], LOOK, Room()))
    text = " ".join(line.text for line in lines)
    assert text.startswith("BOATHOUSE, NORTH WALL AT THE SLIP 1  Fault - gap, air")
    for said in (eave.GAP.message, "Measured 30 mm, required 0 mm.", f"To do: {eave.GAP.advice}"):
        assert said in text
    assert "Accepted by Ida, 2026-03-02: Taped. This sheet is an aid to judgement." in text
    assert "Work at height needs fall protection." in text
    assert {line.layer for line in lines} == {WORDS}


def test_lines_stand_under_each_other_beside_the_frame() -> None:
    lines = list(columns([eave.result()], LOOK, Room()))
    frame = box_around(eave.FRAME)
    assert len({line.at[0] for line in lines}) == 1
    assert lines[0].at[0] > frame.right
    steps = [a.at[1] - b.at[1] for a, b in itertools.pairwise(lines)]
    assert min(steps) > lines[0].height * 1.5
    assert max(len(line.text) for line in lines) <= 60


def test_two_sections_do_not_write_over_each_other() -> None:
    room = Room()
    one, two = (box_around([w.at for w in columns([eave.result()], LOOK, room)]) for _ in range(2))
    assert (
        one.right < two.left
        or two.right < one.left
        or one.top < two.bottom
        or two.top < one.bottom
    )


def test_nothing_found_is_not_talked_about() -> None:
    assert list(columns([eave.result(findings=())], LOOK, Room())) == []


def test_what_is_to_be_borne_in_mind_stands_once() -> None:
    sections = [eave.result(findings=()), eave.result(), eave.result()]
    texts = [line.text for line in columns(sections, LOOK, Room())]
    assert sum(text.startswith("This sheet is an aid") for text in texts) == 1
    names = [n for n, text in enumerate(texts) if text == eave.section().name.upper()]
    caution = next(n for n, text in enumerate(texts) if text.startswith("This sheet is an aid"))
    assert names[0] < caution < names[1]
