"""What was seen of each item of the site list: the last look counts, all are kept."""

from collections.abc import Iterable, Mapping
from types import MappingProxyType

from enclosure_app.model.project import Project
from enclosure_app.model.said.moment import instant
from enclosure_app.model.said.site_check import Seen, SiteCheck
from enclosure_app.model.standing.whereabouts import Trail, Whereabouts, standing_in, subject_of

_CAUTION = (Seen.NOT_IN_ORDER, Seen.NOT_LOOKED_AT, Seen.HIDDEN, Seen.IN_ORDER)


def seen_in(project: Project, section: str) -> Mapping[str, SiteCheck]:
    """Return the look that counts at each item of a section's site list, by the item's key.

    Of two people who did not know of each other's look, the one who saw more amiss counts.
    """
    found = standing_in(project.site_checks, Trail(project, on_list=True), section)
    return MappingProxyType({key: _counts(of) for key, of in found.items()})


def contested_looks_in(project: Project, section: str) -> Mapping[str, tuple[SiteCheck, ...]]:
    """Return looks of people who did not know of each other's and saw different things, by key."""
    found = standing_in(project.site_checks, Trail(project, on_list=True), section)
    return MappingProxyType(
        {key: of for key, of in found.items() if len({each.seen for each in of}) > 1}
    )


def looks_at(project: Project, key: str, section: str) -> tuple[SiteCheck, ...]:
    """Return every look that was taken at an item, earliest first."""
    trail = Trail(project, on_list=True)
    told = [each for each in project.site_checks if _is_of(trail, each, key, section)]
    return tuple(sorted(told, key=lambda each: instant(each.when)))


def _is_of(trail: Trail, check: SiteCheck, key: str, section: str) -> bool:
    now = trail.now(subject_of(check))
    return not isinstance(now, Whereabouts) and (now.section, now.key) == (section, key)


def _counts(checks: Iterable[SiteCheck]) -> SiteCheck:
    latest = sorted(checks, key=lambda each: instant(each.when), reverse=True)
    return min(latest, key=lambda each: _CAUTION.index(each.seen))
