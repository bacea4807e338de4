"""Which of a project's drawings a revised one takes the place of; the others stay as they are."""

from collections import Counter
from collections.abc import Iterable, Mapping
from dataclasses import dataclass

from enclosure_app.model.drawing import Drawing
from enclosure_app.model.project import Project
from enclosure_app.model.section import Section
from enclosure_app.planning.revision.names import issue_name
from enclosure_app.planning.revision.sections import outlined, section_pairs

_CLEAR = 0.5  # of the pieces known again: another drawing that has fewer is no rival


@dataclass(frozen=True, slots=True)
class TakenPlace:
    """What a revised drawing takes the place of: the earlier `file`, "" where it is none of them.

    `sure` says that both what is drawn and the name speak for it, or nothing against it.
    """

    file: str
    sure: bool


def file_of(project: Project, section: Section) -> str:
    """Return the drawing that a section was read from, "" where it was sketched from nothing."""
    return section.file or project.source


def files_of(project: Project) -> tuple[str, ...]:
    """Return the drawings whose sections a project holds, in the order of the sections."""
    return tuple(dict.fromkeys(file_of(project, each) for each in project.sections))


def taken_place(before: Project, drawing: Drawing) -> Mapping[str, TakenPlace]:
    """Return what each revised drawing takes the place of, by its file.

    Args:
        before: The project of the earlier drawings.
        drawing: The revised one; or several as one, whose sections know their files.
    """
    files = files_of(before)
    news = dict.fromkeys(each.file or drawing.file for each in drawing.sections) or [drawing.file]
    if len(files) < 2:
        return {new: TakenPlace(files[0] if files else "", sure=True) for new in news}
    shown: dict[str, Counter[str]] = {new: Counter() for new in news}
    pairs = section_pairs([*map(outlined, before.sections)], [*map(outlined, drawing.sections)])
    for pair in pairs:
        old, new = file_of(before, pair.old.section), pair.new.section.file or drawing.file
        shown[new][old] += pair.fit.count
    return {new: _weighed(new, files, shown[new]) for new in news}


def _weighed(new: str, files: Iterable[str], shown: Counter[str]) -> TakenPlace:
    """Return the earlier drawing of which most is known again; where none is, that of its name."""
    named = [file for file in files if issue_name(file) == issue_name(new)]
    if not shown:
        return TakenPlace(named[0], sure=True) if len(named) == 1 else TakenPlace("", sure=False)
    (file, most), *others = shown.most_common()
    rivalled = any(count > _CLEAR * most for _, count in others)
    return TakenPlace(file, sure=not rivalled and (not named or file in named))


def left_as_they_are(before: Project, files: Iterable[str]) -> frozenset[str]:
    """Return the names of the sections of all drawings but those whose place is taken."""
    taken = {*files}
    return frozenset(each.name for each in before.sections if file_of(before, each) not in taken)
