"""Flags beside the places of findings: where they cover neither each other nor what is written.

All places are mm of the sheet. A place that is found depends only on where others lie from it, so
that flags stay beside their places while the drawing is moved.
"""

from collections import defaultdict
from collections.abc import Iterable, Iterator, Mapping, Sequence
from itertools import product
from math import cos, floor, radians, sin

from enclosure_app.drawing.marks import Anchor, Label, Mark, Stroke
from enclosure_app.drawing.placement import Box, Placement
from enclosure_app.drawing.section.flags import FLAG_HEIGHT, FLAG_WIDTH, Site, flag_at
from enclosure_app.drawing.section.section_marks import ring_radius
from enclosure_app.drawing.typeface import text_width
from enclosure_app.drawing.verdict_words import state_word
from enclosure_app.model.place import Point, Points
from enclosure_app.model.report import SectionResult
from enclosure_app.model.said.decision import State
from enclosure_app.window.canvas.ink.look import Look, legible

_ROUND = (45, 135, -45, -135, 0, 180, 90, -90)  # degrees: where a flag may stand about its ring
_RINGS = (1.0, 3.2, 5.4)  # half flags from the stem's end to the flag's middle
_STEM = 2.2  # mm from the ring to the flag
_WORDS = 3.0  # mm below a flag for the word of its verdict
_AIR = 0.4  # mm between two things
_CELL = 12.0  # mm: what is taken is looked up in squares of this size


def flags_of(
    result: SectionResult,
    numbers: Mapping[str, int],
    placement: Placement,
    look: Look,
    written: Iterable[Label] = (),
) -> Iterator[Mark]:
    """Yield a flag for each finding beside its ring, where it covers no flag and no words.

    What was decided about it is told by its badge and, below it, by its word. `written` are the
    texts that are there already.
    """
    radius = ring_radius(result.findings)
    decided = len(result.undecided) < len(result.findings)
    tall = FLAG_HEIGHT + (_WORDS if decided else 0.0)
    places = [placement.point(finding.at) for finding in result.findings]
    flags = _Taken(_around(place, tall) for place in places)
    words = _Taken(box_of(label) for label in written if not label.angle)
    for finding, at in zip(result.findings, places, strict=True):
        centre = _free_place(at, radius, tall, (flags, words))
        flags.add(_around(centre, tall))
        state = result.state(finding)
        site = Site(numbers[finding.key], at, finding.severity, radius, finding.key, state)
        stem = Stroke(_stem(at, centre, radius), look.theme.pen("leader"), finding.key)
        yield legible(flag_at(site, centre, look.theme, stem), dark=look.dark)
        if state is not State.OPEN:
            yield _word(state, centre, finding.key, look)


def box_of(label: Label) -> Box:
    """Return the room that an upright text takes."""
    width = text_width(label.text, label.size, bold=label.bold)
    share = {Anchor.START: 0.0, Anchor.MIDDLE: 0.5, Anchor.END: 1.0}[label.anchor]
    left, bottom = label.at[0] - share * width, label.at[1]
    return Box(left, bottom, left + width, bottom + label.size)


class _Taken:
    """Room that is taken, looked up by squares of the sheet."""

    def __init__(self, boxes: Iterable[Box] = ()) -> None:
        self._squares: dict[tuple[int, int], list[Box]] = defaultdict(list)
        for box in boxes:
            self.add(box)

    def add(self, box: Box) -> None:
        for square in _squares(box):
            self._squares[square].append(box)

    def meets(self, box: Box) -> bool:
        """Whether a box comes nearer than `_AIR` to anything."""
        grown = box.inset(-_AIR)
        return any(
            grown.left < other.right
            and other.left < grown.right
            and grown.bottom < other.top
            and other.bottom < grown.top
            for square in _squares(grown)
            for other in self._squares.get(square, ())
        )


def _squares(box: Box) -> Iterable[tuple[int, int]]:
    columns = range(floor(box.left / _CELL), floor(box.right / _CELL) + 1)
    rows = range(floor(box.bottom / _CELL), floor(box.top / _CELL) + 1)
    return product(columns, rows)


def _free_place(at: Point, radius: float, tall: float, taken: Sequence[_Taken]) -> Point:
    """Return a place for a flag that is clear of all that is taken, or of the first of it."""
    places = [
        _away(at, radius + _STEM + (FLAG_WIDTH / 2) * ring, angle)
        for ring in _RINGS
        for angle in _ROUND
    ]
    for clear_of in (taken, taken[:1]):
        for place in places:
            box = _around(place, tall)
            if not any(each.meets(box) for each in clear_of):
                return place
    return places[0]


def _around(centre: Point, tall: float) -> Box:
    """Return the room of a flag about `centre`, with its words below it."""
    x, y = centre
    return Box(x - FLAG_WIDTH / 2, y - tall / 2, x + FLAG_WIDTH / 2, y + tall / 2)


def _away(at: Point, by: float, degrees: float) -> Point:
    return at[0] + by * cos(radians(degrees)), at[1] + by * sin(radians(degrees))


def _stem(at: Point, centre: Point, radius: float) -> Points:
    dx, dy = centre[0] - at[0], centre[1] - at[1]
    whole = max((dx * dx + dy * dy) ** 0.5, 1e-9)
    return (at[0] + dx / whole * radius, at[1] + dy / whole * radius), centre


def _word(state: State, centre: Point, key: str, look: Look) -> Label:
    theme = look.theme
    at = (centre[0], centre[1] - FLAG_HEIGHT / 2 - theme.small - 0.7)
    words = state_word(state)
    return Label(
        words, at, theme.small, theme.ink, Anchor.MIDDLE, bold=True, halo=theme.paper, source=key
    )
