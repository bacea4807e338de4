"""A key means what its pieces mean, in the copy where something was said."""

from dataclasses import replace

import pytest

from enclosure_app.model import edits
from enclosure_app.model.project import Project
from enclosure_app.model.said.carried import Subject
from enclosure_app.model.said.decision import Decision, State
from enclosure_app.model.said.site_check import Seen, SiteCheck
from enclosure_app.planning.merging.subjects import Version, doubtful, links_over, subjects
from tests.planning.revision.walls import BOARD, GAP, WALL, line, project, wall

TAPE = line("drawn-1", (-1.0, 780.0), (-1.0, 850.0), product="seam-tape")
BEAD = line("drawn-1", (-2.0, 1690.0), (-2.0, 1770.0), product="seam-tape")
TAPED, BEADED = wall(TAPE), wall(BEAD)


def said(key: str, before: Project) -> Project:
    return edits.set_decision(before, Decision(key, State.MENDED, "Jon", "", section="Wall"))


@pytest.mark.parametrize(
    ("key", "unsure"),
    [
        (GAP, False),
        ("gap:air:10.face+11.low#2", False),
        ("lap-cycle:10+11+12", False),
        ("wet-route:10.low+inside", False),
        ("lap:air:drawn-1.low+10.face", True),
        ("wet-route:11.low+drawn-1", True),
        ("stops-short:air:frame", True),  # names no piece: nobody can know
    ],
)
def test_what_is_said_of_pieces_that_are_the_same_in_both_is_certain(
    key: str, unsure: bool
) -> None:
    version = Version(TAPED, BEADED, said(key, project(BEADED)), project(TAPED))
    assert doubtful(version, on_list=False) == ({Subject("", "Wall", key)} if unsure else set())


def test_what_the_other_copy_knows_too_was_said_before_either_drew_on() -> None:
    spoken = said("lap:air:drawn-1.low", project(BEADED))
    assert doubtful(Version(TAPED, BEADED, spoken, spoken), on_list=False) == set()


def test_looks_at_the_site_list_are_weighed_like_verdicts() -> None:
    looked = edits.tick(
        project(BEADED), SiteCheck("bead:drawn-1:pressed", Seen.IN_ORDER, "Jon", section="Wall")
    )
    version = Version(TAPED, BEADED, looked, project(TAPED), "Wall-2")
    subject = Subject("", "Wall", "bead:drawn-1:pressed")
    assert doubtful(version, on_list=True) == {subject}
    assert doubtful(version, on_list=False) == set()
    (link,) = links_over(looked, [version], "M", on_list=True)
    assert (link.earlier, link.later, link.on_list) == (
        subject,
        Subject("M", "Wall-2", subject.key),
        True,
    )


def test_links_are_given_for_all_that_is_certain_whoever_said_it() -> None:
    both = said("lap:air:drawn-1.low", said(GAP, project(BEADED)))
    version = Version(TAPED, BEADED, both, project(TAPED))
    (link,) = links_over(both, [version], "M", on_list=False)
    assert link.later == Subject("M", "Wall", GAP)
    assert {*subjects(both, on_list=False)} == {
        Subject("", "Wall", GAP),
        Subject("", "Wall", "lap:air:drawn-1.low"),
    }


def test_a_piece_of_another_product_is_another_piece() -> None:
    other = wall(replace(BOARD, product="gypsum-board"))
    version = Version(WALL, other, said("gap:air:10.high+20.face", project(other)), project(WALL))
    assert len(doubtful(version, on_list=False)) == 1
