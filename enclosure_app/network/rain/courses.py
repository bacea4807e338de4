"""The ways of drops, one after the other; what was told of them before is taken up again.

A long way on which a few stretches have changed is followed over these alone.
"""

from bisect import bisect_left
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, replace
from itertools import islice

from enclosure_app.network.rain.edges import Spot
from enclosure_app.network.rain.water import Course, Node, Place, Walked, Water

_SHARED = 60  # runs that a route still tells after it has joined one told before,
_MANY = 2000  # and only while no more runs than these have been told
_WINDOW = 256  # runs: how far along the old way it is first looked for
_LONG = 100  # runs: a shorter way is simply followed again

Key = tuple[Spot, tuple[Place, ...]]


@dataclass(frozen=True, slots=True, eq=False)
class Telling:
    """One way told: where it began, what came before that, and the course from there and in all.

    `more` is for how many runs it could be told after joining another.
    """

    spot: Spot
    before: tuple[Place, ...]
    more: int
    course: Course
    whole: Course


@dataclass(frozen=True, slots=True, eq=False)
class Told:
    """All ways, in order; `first` is the number of the first on which each node was told."""

    tellings: tuple[Telling, ...]
    first: dict[Node, int]

    def by_start(self) -> dict[Spot, Telling]:
        """Return the ways by where they began."""
        return {telling.spot: telling for telling in self.tellings}


def tell(
    water: Water,
    heads: list[Spot],
    last: Told | None = None,
    changed: frozenset[Node] = frozenset(),
) -> Told:
    """Tell the way of each drop that is no part of another's, highest landing first.

    `heads` are where they start, lowest first; `last` is what was told before some nodes `changed`.
    """
    known = last.by_start() if last else {}
    first: dict[Node, int] = {}
    tellings: list[Telling] = []
    todo: list[Key] = [(spot, ()) for spot in heads]
    while todo:
        spot, before = todo.pop()
        if before and water.node(spot) in first:
            continue
        more = _SHARED if len(first) < _MANY else 0
        course = _course(water, spot, (first, more), known.get(spot), changed)
        tellings.append(_telling(spot, before, more, course, known.get(spot)))
        if first:
            for node in course.nodes:
                first.setdefault(node, len(tellings) - 1)
        else:
            first = dict.fromkeys(course.nodes, 0)
        todo.extend((fork, before + course.places[:count]) for fork, count in course.forks)
    return Told(tuple(tellings), first)


def _telling(
    spot: Spot, before: tuple[Place, ...], more: int, course: Course, old: Telling | None
) -> Telling:
    if old is not None and old.course is course and old.before == before:
        whole = old.whole
    else:
        whole = replace(course, places=before + course.places) if before else course
    return Telling(spot, before, more, course, whole)


def _course(
    water: Water,
    spot: Spot,
    told: tuple[Mapping[Node, int], int],
    old: Telling | None,
    changed: frozenset[Node],
) -> Course:
    """Return the course from `spot`: the old one, parts of it, or told anew."""
    first, more = told
    if old is None or old.more != more:
        return water.follow(spot, first, more)
    bad = _otherwise(old.course, first, changed)
    if not bad:
        return _joining(old.course, first)
    if len(old.course.nodes) < _LONG or old.course.rounds:
        return water.follow(spot, first, more)
    return _joining(_followed(water, told, old.course, bad), first)


def _otherwise(course: Course, first: Mapping[Node, int], changed: frozenset[Node]) -> list[int]:
    """Return which nodes of a course, by place, have changed or were told before and are not now."""
    bad = []
    if not changed.isdisjoint(course.nodes):
        bad = [n for n, node in enumerate(course.nodes) if node in changed]
    if first or course.known:
        known = {n for n, node in enumerate(course.nodes) if node in first} if first else set()
        bad = sorted({*bad, *known.symmetric_difference(course.known)})
    return bad


def _joining(course: Course, first: Mapping[Node, int]) -> Course:
    """Return the course with the number that the one it joins has now."""
    joins = None if course.joins is None else first[course.nodes[-1]]
    return course if joins == course.joins else replace(course, joins=joins)


def _followed(
    water: Water, told: tuple[Mapping[Node, int], int], old: Course, bad: list[int]
) -> Course:
    """Follow a long way from its first changed node on, until it runs on as it did."""
    walked, taken = _as_far_as(old, bad[0]), old.visits[bad[0]][1]
    begun, window = len(walked.nodes), 0
    place: dict[Node, int] = {}
    while True:
        if len(walked.nodes) - begun >= window:
            window = max(_WINDOW, window * 8)
            first = bad[-1] + 1
            place = {node: first + n for n, node in enumerate(old.nodes[first : first + window])}
        here = place.get(water.node(walked.spot))
        if here is not None and _goes_on(walked, old, here, begun):
            return _joined_up(walked, old, here, taken)
        course = water.go_on(walked, *told)
        if course is not None:
            return course


def _as_far_as(old: Course, visit: int) -> Walked:
    spot, count = old.visits[visit]
    return Walked(
        spot,
        list(old.places[:count]),
        dict.fromkeys(old.nodes[:visit]),
        [fork for fork in old.forks if fork[1] <= count],
        list(old.visits[:visit]),
        list(old.known[: bisect_left(old.known, visit)]),
    )


def _goes_on(walked: Walked, old: Course, visit: int, begun: int) -> bool:
    """Whether the way goes on from here as the old one did: as far up, after as many joinings.

    Nor must what was walked since it `begun` to differ lie further along the old way.
    """
    if walked.spot != old.visits[visit][0]:
        return False
    since = set(islice(walked.nodes, begun, None))
    known = bisect_left(old.known, visit)
    return len(walked.known) == known and since.isdisjoint(old.nodes[visit:])


def _joined_up(walked: Walked, old: Course, visit: int, taken: int) -> Course:
    """Return the way walked so far, as the old one for `taken` places, with the rest of the old one."""
    count, shift = old.visits[visit][1], len(walked.nodes) - visit
    longer = len(walked.places) - count
    return replace(
        old,
        places=(*walked.places, *old.places[count:]),
        nodes=(*walked.nodes, *old.nodes[visit:]),
        forks=(*walked.forks, *((s, n + longer) for s, n in old.forks if n > count)),
        visits=(*walked.visits, *_moved(old.visits[visit:], longer)),
        known=(*walked.known, *(n + shift for n in old.known if n >= visit)),
        taken=(taken, len(old.places) - count),
    )


def _moved(visits: tuple[tuple[Spot, int], ...], by: int) -> Iterator[tuple[Spot, int]]:
    return iter(visits) if not by else ((spot, count + by) for spot, count in visits)
