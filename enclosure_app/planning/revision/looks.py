"""What became of the looks at the places of one section's site list."""

from collections.abc import Iterator, Sequence

from enclosure_app.model.project import Project
from enclosure_app.model.said.carried import Carried, Subject
from enclosure_app.model.said.question import Question
from enclosure_app.model.standing.standing import new_id
from enclosure_app.planning.revision.comparing import GONE, Revision, SectionRevision, link
from enclosure_app.planning.revision.matching import spots_matched
from enclosure_app.planning.revision.spots import Fate, LookedAt, LookMatch, Spot, SpotMatch
from enclosure_app.planning.site_list.listing import SiteList
from enclosure_app.planning.site_list.places import SitePlace

_DOUBT = (Fate.NOT_SURE, Fate.MOVED, Fate.STILL_THERE, Fate.GONE)  # what tells of several


def spots_of(listed: SiteList) -> Iterator[Spot]:
    """Yield the items of a site list as they are compared."""
    for place in listed.places:
        kind = place.key.partition(":")[0]
        for key, question in place.items:
            pieces, least = frozenset(place.pieces), question.least
            yield Spot(key, (kind, question.name), place.at, pieces, question.drawn, least)


class LooksMatched:
    """The items of one section's site list in both drawings, and those that were `looked` at."""

    def __init__(
        self,
        revision: Revision,
        before: Project,
        section: SectionRevision,
        lists: tuple[SiteList | None, SiteList | None],
        looked: Sequence[str],
    ) -> None:
        self.section = section
        self._earlier, self._later = before.revision, revision.project.revision
        self._looked = looked
        self._old, self._new = (_by_item(each) for each in lists)
        old, new = ([*spots_of(each)] if each else [] for each in lists)
        matches = spots_matched(old, new, section.pieces, near=True) if section.pieces else ()
        self._matches = {match.old: match for match in matches if match.old}

    def links(self) -> Iterator[Carried]:
        """Yield which item is which, for all that is certain: what is said later needs it too."""
        if self.section.pieces is None:
            return
        later = {m.old: m.new for m in self._matches.values() if m.fate.certain}
        later |= {m.old: f"{GONE}{m.old}" for m in self._matches.values() if m.fate is Fate.GONE}
        gone = (key for key in self._looked if key not in self._old)
        later |= {key: f"{GONE}{key.removeprefix(GONE)}" for key in gone}
        for key, name in later.items():
            to = Subject(self._later, self.section.new, name)
            yield link(self._subject(key), to, on_list=True)

    def questions(self) -> Iterator[Question]:
        """Yield what is to be asked of items that were looked at, kept for another day."""
        for key in self._looked:
            match = self._match(key)
            place = self._old.get(key)
            if match.fate is not Fate.NOT_SURE:
                continue
            subject, pieces = self._subject(key), self.section.pieces
            yield Question(
                subject,
                _words(place, key) if place else key,
                self._later,
                self.section.new,
                pieces.ground.place(place.at) if pieces and place else None,
                match.asked,
                new_id("question", "list", *subject, self._later),
                on_list=True,
            )

    def places(self) -> Iterator[LookMatch]:
        """Yield what became of each place that was looked at; one answer is for all its items."""
        by_place: dict[str, list[str]] = {}
        for key in self._looked:
            if key in self._old and not self.section.untouched:
                by_place.setdefault(self._old[key].key, []).append(key)
        for every in by_place.values():
            fate = min((self._match(key).fate for key in every), key=_DOUBT.index)
            unsure = fate is Fate.NOT_SURE
            keys = [key for key in every if not unsure or self._match(key).fate is fate]
            matches = [self._match(key) for key in keys]
            old = _told(self._old[keys[0]], self.section.old, tuple(keys))
            news = dict.fromkeys(self._new[m.new].key for m in matches if m.new in self._new)
            asked = dict.fromkeys(self._new[key].key for m in matches for key in m.asked)
            later = {place.key: place for place in self._new.values()}
            told = {key: _told(later[key], self.section.new) for key in (*news, *asked)}
            yield LookMatch(
                fate,
                old,
                None if unsure else next((told[key] for key in news), None),
                tuple(told[key] for key in (*news, *asked)) if unsure else (),
            )

    def _match(self, key: str) -> SpotMatch:
        """Return what became of an item; where its section was not known again nobody knows."""
        if self.section.untouched:
            return SpotMatch(Fate.STILL_THERE, key, key)
        if self.section.pieces is None:
            return SpotMatch(Fate.NOT_SURE, key)
        return self._matches.get(key) or SpotMatch(Fate.GONE, key)

    def _subject(self, key: str) -> Subject:
        return Subject(self._earlier, self.section.old, key)


def _by_item(listed: SiteList | None) -> dict[str, SitePlace]:
    places = listed.places if listed else ()
    return {key: place for place in places for key, _ in place.items}


def _words(place: SitePlace, key: str) -> str:
    question = dict(place.items)[key]
    return f"{place.title}: {question.text}"


def _told(place: SitePlace, section: str, keys: tuple[str, ...] | None = None) -> LookedAt:
    own = tuple(key for key, _ in place.items) if keys is None else keys
    return LookedAt(place.key, section, place.at, place.title, place.extent, own)
