"""The frame of a drawing in which none is drawn: the extent of its pieces."""

from collections.abc import Iterable, Sequence
from math import dist

from enclosure_app.files.dxf.words import listed
from enclosure_app.files.framing.frames import Frame
from enclosure_app.files.framing.marks import Marks
from enclosure_app.language import say
from enclosure_app.model.drawing import Note, NoteLevel
from enclosure_app.model.place import Line, Point, Points
from enclosure_app.model.section import Piece

MARGIN = 50.0  # mm: so far a side without cut ends is moved out
INSET = 5.0  # mm: so far within a side a mark beyond it is put
ON_SIDE = 1.0  # mm

Box = tuple[float, float, float, float]


def frame_around(
    pieces: Sequence[Piece], lines: frozenset[str], marks: Marks
) -> tuple[Frame, tuple[Note, ...]]:
    """Return the frame of a drawing in which none is drawn, and what was guessed.

    It is the extent of the pieces. A side at which a piece of a product drawn as a line (keys
    in `lines`) ends is a cut and stays; the other sides move out past the marks. A mark beyond a
    cut is put just inside it. Marks further off than the pieces are across belong elsewhere.

    Args:
        pieces: At least one.
        lines: The keys of the products that are drawn as lines.
        marks: What the drawing or the person says is inside and outside.
    """
    box = box_of([_run(piece) for piece in pieces])
    near, far = _near(marks, box)
    cut = _cut_sides(pieces, lines, box)
    grown = _grown(box, cut, (*near.inside, *near.outside))
    moved = Marks(
        tuple(_into(point, grown) for point in near.inside),
        tuple(_into(point, grown) for point in near.outside),
    )
    x0, y0, x1, y1 = grown
    ring = ((x0, y0), (x1, y0), (x1, y1), (x0, y1))
    return Frame(ring, drawn=False, marks=moved), (
        Note(NoteLevel.GUESSED, say("No frame is drawn: the extent of the pieces is the frame.")),
        *_moved_notes(near, moved),
        *_far_notes(far),
    )


def around_all(runs: Sequence[Points]) -> Frame:
    """Return a frame around linework, for a drawing of which nothing is mapped yet."""
    x0, y0, x1, y1 = box_of(runs)
    ring = (
        (x0 - MARGIN, y0 - MARGIN),
        (x1 + MARGIN, y0 - MARGIN),
        (x1 + MARGIN, y1 + MARGIN),
        (x0 - MARGIN, y1 + MARGIN),
    )
    return Frame(ring, drawn=False)


def box_of(runs: Iterable[Points]) -> Box:
    """Return the least and the greatest x and y of all points."""
    xs, ys = zip(*(point for run in runs for point in run), strict=True)
    return min(xs), min(ys), max(xs), max(ys)


def _run(piece: Piece) -> Points:
    return piece.shape.points if isinstance(piece.shape, Line) else piece.shape.outer


def _near(marks: Marks, box: Box) -> tuple[Marks, Points]:
    x0, y0, x1, y1 = box
    reach = max(dist((x0, y0), (x1, y1)), 10 * MARGIN)

    def close(point: Point) -> bool:
        x, y = point
        return x0 - reach <= x <= x1 + reach and y0 - reach <= y <= y1 + reach

    near = Marks(tuple(filter(close, marks.inside)), tuple(filter(close, marks.outside)))
    return near, tuple(p for p in (*marks.inside, *marks.outside) if not close(p))


def _cut_sides(pieces: Sequence[Piece], lines: frozenset[str], box: Box) -> tuple[bool, ...]:
    """Return for left, bottom, right and top whether a run ends there, heading out."""
    cut = [False] * 4
    for piece in pieces:
        if not isinstance(piece.shape, Line) or piece.product not in lines or piece.shape.closed:
            continue
        points = piece.shape.points
        for end, before in ((points[0], points[1]), (points[-1], points[-2])):
            for side in range(4):
                cut[side] = cut[side] or _ends_on(end, before, side, box)
    return tuple(cut)


def _ends_on(end: Point, before: Point, side: int, box: Box) -> bool:
    axis, sign = side % 2, (-1 if side < 2 else 1)
    if abs(end[axis] - box[side]) > ON_SIDE:
        return False
    return sign * (end[axis] - before[axis]) >= 0.5 * dist(end, before)


def _grown(box: Box, cut: Sequence[bool], marks: Points) -> Box:
    sides = list(box)
    for side in range(4):
        if cut[side]:
            continue
        axis, sign = side % 2, (-1 if side < 2 else 1)
        beyond = [sign * (mark[axis] - box[side]) + MARGIN for mark in marks]
        sides[side] += sign * max(MARGIN, *beyond, MARGIN)
    return sides[0], sides[1], sides[2], sides[3]


def _into(point: Point, box: Box) -> Point:
    x0, y0, x1, y1 = box
    x = point[0] if x0 < point[0] < x1 else min(max(point[0], x0 + INSET), x1 - INSET)
    y = point[1] if y0 < point[1] < y1 else min(max(point[1], y0 + INSET), y1 - INSET)
    return x, y


def _moved_notes(before: Marks, after: Marks) -> list[Note]:
    pairs = [
        *zip(("inside",) * len(before.inside), before.inside, after.inside, strict=True),
        *zip(("outside",) * len(before.outside), before.outside, after.outside, strict=True),
    ]
    return [
        Note(
            NoteLevel.GUESSED,
            say(
                "The {word} mark stands beyond the cut ends; it counts at {x:.0f},{y:.0f}.",
                word=say(word),
                x=to[0],
                y=to[1],
            ),
        )
        for word, start, to in pairs
        if start != to
    ]


def _far_notes(far: Points) -> list[Note]:
    if not far:
        return []
    places = listed([f"{x:.0f},{y:.0f}" for x, y in far], 4)
    return [
        Note(
            NoteLevel.IGNORED,
            say("Marks far away from every piece are left out: {places}.", places=places),
        )
    ]
