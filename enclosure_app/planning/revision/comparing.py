"""What became of everything that was found and said, now that the drawing was revised."""

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, replace

from enclosure_app.model.finding import Finding
from enclosure_app.model.project import Project
from enclosure_app.model.report import SectionResult
from enclosure_app.model.said.carried import EVERYTHING, WHOLE, Carried, Subject
from enclosure_app.model.said.question import Question
from enclosure_app.model.section import Section
from enclosure_app.model.standing.standing import new_id
from enclosure_app.model.standing.whereabouts import Said, Trail, subject_of
from enclosure_app.planning.revision.matching import spots_matched
from enclosure_app.planning.revision.pieces import PiecesMatched, pieces_matched
from enclosure_app.planning.revision.sections import Outlined, SectionPair, outlined, section_pairs
from enclosure_app.planning.revision.spots import Fate, FindingMatch, LookMatch, spot_of

Row = tuple[Outlined, tuple[Finding, ...]]

_KEPT = {True: Fate.STILL_THERE, False: Fate.GONE}
GONE = "gone:"
"""How the keys of findings begin that a revised drawing does not show any more."""


@dataclass(frozen=True, slots=True)
class SectionRevision:
    """One section, by its `old` and `new` name; one of them is "" where it has no partner.

    `pieces` tells how the pieces were matched, None where the section has no partner, or is
    `untouched`: of another drawing than the revised one. `looks` are the places of its site list
    at which somebody looked (`site_lists.looks_carried`).
    """

    old: str
    new: str
    pieces: PiecesMatched | None
    findings: tuple[FindingMatch, ...]
    untouched: bool = False
    looks: tuple[LookMatch, ...] = ()


@dataclass(frozen=True, slots=True)
class Revision:
    """A revised drawing laid over an earlier one. `project` is the later one, with what was said.

    What is certain is carried on in it. Of the rest `model.standing.questions.open_questions` knows,
    until a person says where it belongs (`edits.say_where`).
    """

    project: Project
    sections: tuple[SectionRevision, ...]

    def of(self, fate: Fate) -> tuple[FindingMatch, ...]:
        """Return the findings that this became of."""
        return tuple(m for section in self.sections for m in section.findings if m.fate is fate)


def compared(
    before: Project,
    found: Sequence[SectionResult],
    after: Project,
    anew: Sequence[SectionResult],
) -> Revision:
    """Return what became of every finding, and the later project with what was said carried on.

    Args:
        before: The project of the earlier drawing.
        found: What a check finds in each of its sections, in their order.
        after: The same project with the revised drawing (`brought_over`).
        anew: What a check with the same limits finds in that.
    """
    old, new = _rows(before, found), _rows(after, anew)
    same = [(a, b) for a in old for b in new if is_untouched(a[0].section, b[0].section)]
    old = [row for row in old if all(row is not a for a, _ in same)]
    new = [row for row in new if all(row is not b for _, b in same)]
    pairs = section_pairs([each for each, _ in old], [each for each, _ in new])
    lone_old = [row for row in old if all(pair.old is not row[0] for pair in pairs)]
    lone_new = [row for row in new if all(pair.new is not row[0] for pair in pairs)]
    free = [finding for _, findings in lone_new for finding in findings]
    lost = [_without_partner(each, findings, free) for each, findings in lone_old]
    asked = {id(finding) for each in lost for match in each.findings for finding in match.asked}
    sections = (
        *(_untouched(a, b) for a, b in same),
        *(_paired(pair, _findings(old, pair.old), _findings(new, pair.new)) for pair in pairs),
        *lost,
        *(_fresh(each, [f for f in of if id(f) not in asked]) for each, of in lone_new),
    )
    return Revision(_carried_on(before, after, sections), sections)


def _carried_on(before: Project, after: Project, sections: Sequence[SectionRevision]) -> Project:
    """Return the later project with links for what is certain, and questions for what is not."""
    links = (
        *_whole_sections(before, after, sections),
        *_carried(before, after, sections),
        *_gone_before(before, after, sections),
    )
    known = {each.id for each in after.carried}
    added = tuple(each for each in links if each.id not in known)
    questions = {each.id: each for each in (*after.questions, *_asked(before, after, sections))}
    return replace(after, carried=(*after.carried, *added), questions=tuple(questions.values()))


def _rows(project: Project, found: Sequence[SectionResult]) -> list[Row]:
    return [
        (outlined(section), result.findings)
        for section, result in zip(project.sections, found, strict=True)
    ]


def _findings(rows: Iterable[Row], wanted: Outlined) -> tuple[Finding, ...]:
    return next(findings for each, findings in rows if each is wanted)


def is_untouched(old: Section, new: Section) -> bool:
    """Whether a section of the later project is that of the earlier one, and not drawn again."""
    return old is new or (old.pieces is new.pieces and old == new)


def _untouched(old: Row, new: Row) -> SectionRevision:
    (before, findings), (_, anew) = old, new
    now = {each.key: each for each in anew}
    kept = ((each, now.get(each.key)) for each in findings)
    found = tuple(FindingMatch(_KEPT[bool(later)], each, later) for each, later in kept)
    return SectionRevision(before.section.name, before.section.name, None, found, untouched=True)


def _paired(pair: SectionPair, old: Sequence[Finding], new: Sequence[Finding]) -> SectionRevision:
    pieces = pieces_matched(pair.fit, pair.old.outlines, pair.new.outlines)
    matches = spots_matched([*map(spot_of, old)], [*map(spot_of, new)], pieces)
    olds, news = {f.key: f for f in old}, {f.key: f for f in new}
    found = tuple(
        FindingMatch(
            match.fate,
            olds.get(match.old),
            news.get(match.new),
            tuple(news[key] for key in match.asked),
        )
        for match in matches
    )
    return SectionRevision(pair.old.section.name, pair.new.section.name, pieces, found)


def _without_partner(
    each: Outlined, findings: Iterable[Finding], free: Sequence[Finding]
) -> SectionRevision:
    """Return a section that was not surely found again: all of it is asked about."""
    found = tuple(FindingMatch(Fate.NOT_SURE, f, asked=_alike(f, free)) for f in findings)
    return SectionRevision(each.section.name, "", None, found)


def _alike(finding: Finding, free: Iterable[Finding]) -> tuple[Finding, ...]:
    what = spot_of(finding).what
    return tuple(each for each in free if spot_of(each).what == what)


def _fresh(each: Outlined, findings: Iterable[Finding]) -> SectionRevision:
    found = tuple(FindingMatch(Fate.NEW, None, f) for f in findings)
    return SectionRevision("", each.section.name, None, found)


def _whole_sections(
    before: Project, after: Project, sections: Iterable[SectionRevision]
) -> Iterator[Carried]:
    """Yield which section is which, for who signed it."""
    for section in sections:
        if section.pieces or section.untouched:
            key = EVERYTHING if section.untouched else WHOLE
            earlier = Subject(before.revision, section.old, key)
            yield link(earlier, Subject(after.revision, section.new, key))


def _carried(
    before: Project, after: Project, sections: Iterable[SectionRevision]
) -> Iterator[Carried]:
    """Yield which finding is which, for all that is certain: what is said later needs it too."""
    for section in sections:
        for match in () if section.untouched else section.findings:
            if match.old and section.new and match.fate is not Fate.NOT_SURE:
                key = match.new.key if match.new else f"{GONE}{match.old.key}"
                earlier = Subject(before.revision, section.old, match.old.key)
                yield link(earlier, Subject(after.revision, section.new, key))


def _asked(
    before: Project, after: Project, sections: Iterable[SectionRevision]
) -> Iterator[Question]:
    """Yield what is to be asked, kept for whoever answers it another day."""
    for section in sections:
        for match in section.findings:
            if match.old and match.fate is Fate.NOT_SURE:
                earlier = Subject(before.revision, section.old, match.old.key)
                yield Question(
                    earlier,
                    match.old.message,
                    after.revision,
                    section.new,
                    section.pieces.ground.place(match.old.at) if section.pieces else None,
                    tuple(each.key for each in match.asked) if section.new else (),
                    new_id("question", *earlier, after.revision),
                )


def _gone_before(
    before: Project, after: Project, sections: Sequence[SectionRevision]
) -> Iterator[Carried]:
    """Yield that what the earlier drawing did not show any more is not shown by the later one."""
    partner = {each.old: each.new for each in sections if each.pieces}
    shown = {(s.old, m.old.key) for s in sections for m in s.findings if m.old}
    for subject in subjects_in(before):
        if subject.section in partner and (subject.section, subject.key) not in shown:
            key = f"{GONE}{subject.key.removeprefix(GONE)}"
            yield link(subject, Subject(after.revision, partner[subject.section], key))


def subjects_in(project: Project, *, on_list: bool = False) -> list[Subject]:
    """Return what something was said about, as it is named in the project's drawing."""
    trail = Trail(project, on_list=on_list)
    sayings: list[Said] = (
        [*project.site_checks] if on_list else [*project.decisions, *project.remarks]
    )
    now = (trail.now(subject_of(said)) for said in sayings)
    return list(dict.fromkeys(each for each in now if isinstance(each, Subject)))


def link(earlier: Subject, later: Subject, *, on_list: bool = False) -> Carried:
    """Return the program's word that two subjects are one; said twice, it is the same word."""
    name = new_id("carried", on_list, *earlier, *later)
    return Carried(earlier, later, on_list=on_list, id=name)
