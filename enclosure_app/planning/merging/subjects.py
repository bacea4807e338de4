"""Which findings are still what somebody spoke of, where two drew on in one section.

Both may have drawn a "drawn-1", and not the same one. What is said about a finding is kept for it
where its pieces are the same in both copies; where not, a person is asked.
"""

import re
from collections.abc import Iterable, Iterator
from dataclasses import dataclass

from enclosure_app.model.project import Project
from enclosure_app.model.said.carried import Carried, Subject
from enclosure_app.model.said.decision import Decision
from enclosure_app.model.said.remark import Remark
from enclosure_app.model.said.site_check import SiteCheck
from enclosure_app.model.section import Section
from enclosure_app.model.standing.standing import new_id
from enclosure_app.model.standing.whereabouts import Said, Trail, subject_of

_STEPS = re.compile(r"[:+]")
_COUNT = re.compile(r"#\d+$")


@dataclass(frozen=True, slots=True)
class Version:
    """A section that is drawn otherwise in two copies: the one `taken`, the one `left`.

    `by` is the copy that drew the one that is left; `kept_as` is its name where both are kept.
    """

    taken: Section
    left: Section
    by: Project
    other: Project
    kept_as: str = ""


def subjects(project: Project, *, on_list: bool) -> dict[Subject, set[str]]:
    """Return what was spoken of in a project's drawing, with the names of what was said."""
    trail = Trail(project, on_list=on_list)
    found: dict[Subject, set[str]] = {}
    for said in _sayings(project, on_list=on_list):
        now = trail.now(subject_of(said))
        if isinstance(now, Subject):
            found.setdefault(now, set()).add(said.id)
    return found


def doubtful(version: Version, *, on_list: bool) -> set[Subject]:
    """Return what was said of a section as it is not drawn any more, and of none of its pieces."""
    known = {said.id for said in _sayings(version.other, on_list=on_list)}
    return {
        subject
        for subject, names in subjects(version.by, on_list=on_list).items()
        if subject.section == version.left.name
        and not names <= known
        and not _same_pieces(subject.key, version.taken, version.left)
    }


def links_over(
    project: Project, versions: Iterable[Version], revision: str, *, on_list: bool
) -> Iterator[Carried]:
    """Yield which finding is which in a drawing made of two, for all that is certain."""
    for subject, later in _where(project, versions, on_list=on_list).items():
        to = Subject(revision, later, subject.key)
        yield Carried(subject, to, on_list=on_list, id=new_id("carried", on_list, *subject, *to))


def _where(project: Project, versions: Iterable[Version], *, on_list: bool) -> dict[Subject, str]:
    """Return the name of the section that each subject is in afterwards, where that is certain.

    What only the other copy spoke of is found in its own version, where both versions are kept.
    """
    found = {subject: subject.section for subject in subjects(project, on_list=on_list)}
    for version in versions:
        ours = subjects(version.other, on_list=on_list)
        for subject in doubtful(version, on_list=on_list):
            found.pop(subject, None)
            if version.kept_as and subject not in ours:
                found[subject] = version.kept_as
    return found


def _same_pieces(key: str, one: Section, other: Section) -> bool:
    """Whether a key names pieces, all of which are the same in two sections."""
    names = {name for name in _names(key) if name in one.by_name or name in other.by_name}
    return bool(names) and all(
        name in one.by_name and name in other.by_name and _is_same(name, one, other)
        for name in names
    )


def _is_same(name: str, one: Section, other: Section) -> bool:
    a, b = one.by_name[name], other.by_name[name]
    return (a.product, a.shape) == (b.product, b.shape)


def _names(key: str) -> Iterator[str]:
    """Yield what may be a piece's name in a key: each part, with and without its end."""
    for part in _STEPS.split(_COUNT.sub("", key)):
        yield part
        yield part.rpartition(".")[0]


def _sayings(project: Project, *, on_list: bool) -> list[Said]:
    decided: list[Decision | Remark] = [*project.decisions, *project.remarks]
    looks: tuple[SiteCheck, ...] = project.site_checks
    return [*looks] if on_list else [*decided]
