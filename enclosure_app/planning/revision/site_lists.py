"""What was seen on site, after the drawing was revised: of the joints that are still the same."""

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import replace

from enclosure_app.model.project import Project
from enclosure_app.model.said.carried import Carried, Subject
from enclosure_app.planning.revision.comparing import (
    GONE,
    Revision,
    SectionRevision,
    link,
    subjects_in,
)
from enclosure_app.planning.revision.matching import spots_matched
from enclosure_app.planning.revision.spots import Fate, Spot
from enclosure_app.planning.site_list.listing import SiteList


def looks_carried(
    revision: Revision, before: Project, old: Sequence[SiteList], new: Sequence[SiteList]
) -> Revision:
    """Return the revision with what was seen of items of the site list carried on, where certain.

    A joint that was changed in any way is to be looked at again: what was seen of it stays in the
    history, under its earlier name.

    Args:
        revision: What became of the findings (`compared`).
        before: The project of the earlier drawing.
        old: The site lists of its sections.
        new: Those of the later drawing's.
    """
    olds, news = _by_section(old), _by_section(new)
    known = {each.id for each in revision.project.carried}
    links = [
        each
        for section in revision.sections
        if section.pieces
        for each in _links(
            revision, before, section, olds.get(section.old, []), news.get(section.new, [])
        )
        if each.id not in known
    ]
    carried = (*revision.project.carried, *links)
    return replace(revision, project=replace(revision.project, carried=carried))


def _by_section(lists: Iterable[SiteList]) -> dict[str, list[Spot]]:
    return {each.section: [*spots_of(each)] for each in lists}


def spots_of(listed: SiteList) -> Iterator[Spot]:
    """Yield the items of a site list as they are compared."""
    for place in listed.places:
        kind = place.key.partition(":")[0]
        for key, question in place.items:
            pieces, least = frozenset(place.pieces), question.least
            yield Spot(key, (kind, question.name), place.at, pieces, question.drawn, least)


def _links(
    revision: Revision,
    before: Project,
    section: SectionRevision,
    old: Sequence[Spot],
    new: Sequence[Spot],
) -> Iterator[Carried]:
    """Yield which item is which in one section; of those that are gone, only what was looked at."""
    if section.pieces is None:
        return
    matches = spots_matched(old, new, section.pieces)
    later = {m.old: m.new for m in matches if m.fate.certain}
    later |= {m.old: f"{GONE}{m.old}" for m in matches if m.fate is Fate.GONE}
    later |= _gone_before(before, section.old, old)
    for key, name in later.items():
        earlier = Subject(before.revision, section.old, key)
        yield link(earlier, Subject(revision.project.revision, section.new, name), on_list=True)


def _gone_before(before: Project, section: str, old: Iterable[Spot]) -> Mapping[str, str]:
    shown = {spot.key for spot in old}
    keys = (e.key for e in subjects_in(before, on_list=True) if e.section == section)
    return {key: f"{GONE}{key.removeprefix(GONE)}" for key in keys if key not in shown}
