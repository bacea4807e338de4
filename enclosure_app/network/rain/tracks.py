"""A drop's way as it is shown: places without repetitions, pieces, where it ends and where it enters."""

from dataclasses import dataclass

import numpy as np

from enclosure_app.geometry.surfaces.faces import Bools, Floats, Point
from enclosure_app.model.place import Points
from enclosure_app.network.rain.runs import IsOutside
from enclosure_app.network.rain.water import Course, Place

_CHUNK = 64  # places that are first looked at from the end of a way


@dataclass(frozen=True, slots=True, eq=False)
class Track:
    """The points and the pieces of a course; `turns` and `passes` (m,) are the places that begin one."""

    points: Points
    pieces: tuple[str, ...]
    turns: Bools
    passes: Bools


def track_of(course: Course) -> Track:
    """Return the points and pieces of a course."""
    return _track(course.places, None, "")


def track_again(course: Course, old: Course, last: Track) -> Track:
    """Return the track of a course that was taken up from an `old` one."""
    if course.taken is None:
        return track_of(course)
    head, tail = course.taken
    before, at = course.places[:head], len(old.places) - tail
    points = last.points[: int(last.turns[:head].sum())]
    pieces = last.pieces[: int(last.passes[:head].sum())]
    middle = _track(
        course.places[head : len(course.places) - tail],
        before[-1].point if before else None,
        pieces[-1] if pieces else "",
    )
    points, pieces = points + middle.points, pieces + middle.pieces
    turns = np.concatenate([last.turns[:head], middle.turns, last.turns[at:]])
    passes = np.concatenate([last.passes[:head], middle.passes, last.passes[at:]])
    first = len(course.places) - tail
    turns[first] = not points or points[-1] != old.places[at].point
    rest = int(last.turns[:at].sum()) + (not turns[first]) - (not last.turns[at])
    named = next((n for n in range(at, len(old.places)) if old.places[n].piece), None)
    if named is None:
        return Track(points + last.points[rest:], pieces, turns, passes)
    here = first + named - at
    passes[here] = not pieces or pieces[-1] != old.places[named].piece
    on = int(last.passes[:named].sum()) + (not passes[here]) - (not last.passes[named])
    return Track(points + last.points[rest:], pieces + last.pieces[on:], turns, passes)


def _track(places: tuple[Place, ...], point: Point | None, piece: str) -> Track:
    """Return the track of places that come after a point and a piece."""
    turns, passes = np.zeros(len(places), dtype=bool), np.zeros(len(places), dtype=bool)
    points, pieces = [], []
    for number, place in enumerate(places):
        if place.point != point:
            turns[number], point = True, place.point
            points.append(point)
        if place.piece and place.piece != piece:
            passes[number], piece = True, place.piece
            pieces.append(piece)
    return Track(tuple(points), tuple(pieces), turns, passes)


def last_probes(courses: list[Course]) -> Floats:
    """Return for each course the place that tells on which side it ends, (n, 2)."""
    return np.array([course.places[-1].probe for course in courses]).reshape(-1, 2)


def last_outside(course: Course, is_outside: IsOutside) -> int:
    """Return the number of the last place of a course that lies outside, 0 if none does."""
    end, chunk = len(course.places), _CHUNK
    while end > 0:
        start = max(end - chunk, 0)
        probes = np.array([place.probe for place in course.places[start:end]])
        outside = np.flatnonzero(is_outside(probes))
        if len(outside):
            return start + int(outside[-1])
        end, chunk = start, chunk * 8
    return 0
