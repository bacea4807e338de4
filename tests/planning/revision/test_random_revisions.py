"""Random revisions, the truth being known: no verdict is ever given to another finding.

With ENCLOSURE_MANY set thousands of them are made.
"""

import os
from collections import Counter
from collections.abc import Iterator
from functools import cache
from random import Random

import pytest

from enclosure_app.model.report import SectionResult
from enclosure_app.planning.revision import Fate, FindingMatch, Revision, compared
from tests.planning.revision.drafts import Draft
from tests.planning.revision.random_revisions import (
    ATTACKS,
    Step,
    faulty_sections,
    mixed_steps,
    random_steps,
    revised,
    sheet_of_sections,
    with_twins,
)
from tests.planning.revision.walls import found_in, project
from tests.planning.revision.writing_anew import (
    in_inches,
    mirror,
    rename,
    renumber,
    shift,
    swap_handles,
    write_anew,
)

MANY = "ENCLOSURE_MANY" in os.environ
REVISIONS, SHEETS = (3000, 1000) if MANY else (50, 15)


@cache
def faulty() -> tuple[SectionResult, ...]:
    """The sections in which something is found, checked."""
    results = map(found_in, faulty_sections())
    return tuple(result for result in results if result.findings)


def made(seed: int, *steps: Step) -> tuple[Draft, Revision, SectionResult, SectionResult]:
    random = Random(seed)  # noqa: S311  drawings, no secrets
    earlier = random.choice(faulty())
    draft = revised(earlier.section, random, steps or random_steps(random))
    later = found_in(draft.finished())
    before, after = project(earlier.section), project(later.section, revision="B")
    return draft, compared(before, [earlier], after, [later]), earlier, later


def judged(match: FindingMatch, draft: Draft, later: SectionResult) -> str:
    """Return whether what is said of a finding is right or wrong, or whether it is asked."""
    assert match.old is not None
    true = [finding for finding in later.findings if draft.is_true(match.old, finding)]
    if match.fate.certain:
        return "right" if match.new in true else "wrong"
    if match.fate is Fate.GONE:
        return "dropped" if true else "right"
    return "asked needlessly" if len(true) == 1 else "asked"


def counted(number: int, *steps: Step) -> Counter[str]:
    counts: Counter[str] = Counter()
    for seed in range(number):
        draft, revision, earlier, later = made(seed, *steps)
        matches = [match for section in revision.sections for match in section.findings]
        counts.update(judged(match, draft, later) for match in matches if match.old)
        nothing_is_lost(matches, earlier, later)
    return counts


def nothing_is_lost(
    matches: list[FindingMatch], earlier: SectionResult, later: SectionResult
) -> None:
    """Every earlier finding is spoken of once, and every later one, once or among those asked."""
    assert sorted(m.old.key for m in matches if m.old) == sorted(f.key for f in earlier.findings)
    named = [m.new.key for m in matches if m.new]
    asked = {f.key for m in matches for f in m.asked}
    assert len(named) == len({*named})
    assert asked.isdisjoint(named)
    assert {*named} | asked == {f.key for f in later.findings}


def test_no_verdict_is_given_to_another_finding_and_none_is_dropped() -> None:
    counts = counted(REVISIONS)
    assert (counts["wrong"], counts["dropped"]) == (0, 0)
    assert counts["right"] > 0.7 * counts.total()


@pytest.mark.parametrize(
    "steps", ATTACKS, ids=lambda steps: "-".join(step.__name__ for step in steps)
)
def test_nor_where_pieces_that_look_alike_change_places(steps: tuple[Step, ...]) -> None:
    counts = counted(100 if MANY else 4, *steps)
    assert (counts["wrong"], counts["dropped"]) == (0, 0)


@pytest.mark.parametrize("first", range(len(ATTACKS)))
def test_nor_where_all_of_that_comes_together(first: int) -> None:
    for n in range(200 if MANY else 2):
        seed = 1000 * first + n
        steps = mixed_steps(Random(seed), ATTACKS[first])  # noqa: S311  drawings, no secrets
        draft, revision, _, later = made(seed, *steps)
        matches = [match for section in revision.sections for match in section.findings]
        told = {judged(match, draft, later) for match in matches if match.old}
        assert told <= {"right", "asked", "asked needlessly"}


def test_nor_where_the_rest_of_the_section_stayed() -> None:
    """All sheets of a wall but one were moved on by one: three lie where others lay."""
    draft, revision, _, later = made(100_059, *ATTACKS[3])
    matches = [match for section in revision.sections for match in section.findings]
    told = [judged(match, draft, later) for match in matches if match.old]
    assert {*told} == {"right", "asked", "asked needlessly"}


def test_nor_to_a_finding_of_another_section_that_looks_alike() -> None:
    """Several sections on one sheet, one of them twice, their names given round."""
    counts: Counter[str] = Counter()
    for seed in range(SHEETS):
        counts.update(sheet_judged(seed))
    assert (counts["wrong"], counts["dropped"]) == (0, 0)
    assert counts["right"] > 0.5 * counts.total()


def sheet_judged(seed: int) -> Iterator[str]:
    random = Random(seed)  # noqa: S311  drawings, no secrets
    chosen = [random.choice(faulty()).section for _ in range(random.randrange(1, 3))]
    earlier = with_twins(chosen, random)
    drafts = sheet_of_sections(earlier, random)
    later = [draft.finished() for draft in drafts]
    partner = {a.name: (draft, b.name) for a, draft, b in zip(earlier, drafts, later, strict=True)}
    random.shuffle(later)
    old, new = [*map(found_in, earlier)], [*map(found_in, later)]
    revision = compared(project(*earlier), old, project(*later, revision="B"), new)
    for section in revision.sections:
        for match in section.findings:
            if match.old:
                draft, name = partner[section.old]
                result = next(each for each in new if each.section.name == name)
                astray = section.new not in ("", name) and match.fate is not Fate.NOT_SURE
                yield "wrong" if astray else judged(match, draft, result)


@pytest.mark.parametrize(
    "steps",
    [(renumber,), (shift,), (mirror,), (rename, swap_handles), (in_inches, shift, renumber)],
    ids=lambda steps: "-".join(step.__name__ for step in steps),
)
def test_a_plain_new_issue_asks_next_to_nothing(steps: tuple[Step, ...]) -> None:
    counts = counted(20, *steps)
    assert (counts["wrong"], counts["dropped"]) == (0, 0)
    assert counts["asked needlessly"] + counts["asked"] <= 0.03 * counts.total()


def test_written_anew_by_another_program_it_asks_little() -> None:
    """Lines are turned round and put in another order: a few findings are then named elsewhere."""
    counts = counted(20, write_anew, renumber)
    assert (counts["wrong"], counts["dropped"]) == (0, 0)
    assert counts["asked needlessly"] + counts["asked"] <= 0.1 * counts.total()
