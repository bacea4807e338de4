"""What is drawn in a section, whole: lines that are shown, and those that something was made of."""

from collections.abc import Collection, Iterator, Sequence
from itertools import groupby

from enclosure_app.files.dxf.raw import RawPath, Tag
from enclosure_app.model.place import Area, Points
from enclosure_app.model.section import Piece, Section, Stroke


def drawn_of(section: Section) -> tuple[Stroke, ...]:
    """Return everything that is drawn in a section, whole.

    Where a piece came from the drawing but its lines were not kept, its outline stands for them.
    """
    whole = {stroke.handle for stroke in section.taken if stroke.handle}
    every = (*section.taken, *(s for s in section.strokes if s.handle not in whole))
    return (*every, *_piece_strokes(section, {stroke.handle for stroke in every}))


def paths_of(strokes: Sequence[Stroke]) -> list[RawPath]:
    """Return strokes as the paths of the drawing that they were: rings closed, holes in patches."""
    paths: list[RawPath] = []
    for patch, together in groupby(strokes, key=_patch):
        same = list(together)
        if patch:
            outer, *holes = map(_ring, same)
            paths.append(_path(same[0], outer, closed=True, holes=tuple(holes)))
        else:
            paths += map(_single, same)
    return paths


def _piece_strokes(section: Section, known: Collection[str]) -> Iterator[Stroke]:
    for piece in section.pieces:
        if piece.layer and piece.handles and not any(h in known for h in piece.handles):
            yield from outlines(piece)


def outlines(piece: Piece) -> Iterator[Stroke]:
    """Yield a piece as lines of the drawing, all under its first handle."""
    shape, handle = piece.shape, piece.handles[0] if piece.handles else piece.name
    if isinstance(shape, Area):
        for ring in (shape.outer, *shape.holes):
            yield Stroke((*ring, ring[0]), piece.layer, handle, filled=bool(shape.holes))
    else:
        run = (*shape.points, shape.points[0]) if shape.closed else shape.points
        yield Stroke(run, piece.layer, handle, width=shape.width)


def _patch(stroke: Stroke) -> str:
    return stroke.handle if stroke.filled else ""


def _single(stroke: Stroke) -> RawPath:
    closed = len(stroke.points) > 3 and stroke.points[0] == stroke.points[-1]
    return _path(stroke, _ring(stroke) if closed else stroke.points, closed=closed)


def _ring(stroke: Stroke) -> Points:
    run = stroke.points
    return run[:-1] if run[0] == run[-1] else run


def _path(
    stroke: Stroke,
    points: Points,
    *,
    closed: bool,
    holes: tuple[Points, ...] = (),
) -> RawPath:
    tag = Tag(
        "LWPOLYLINE", stroke.handle, stroke.layer, stroke.linetype, stroke.color, stroke.block
    )
    return RawPath(tag, points, closed, stroke.width, stroke.filled, holes)
