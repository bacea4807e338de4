"""Guided tracing: two clicks, and the drawn lines between them become one run of a sheet.

The program follows the linework of the office (single lines of exploded outlines too) and the
edges of pieces that are there already. Where a building model has no membrane at all, the run is
taken beside the traced line: 3 mm off the sheathing, say.
"""

from collections.abc import Iterable
from math import dist

from enclosure_app.errors import EnclosureError
from enclosure_app.geometry.linework.graph import LineworkGraph
from enclosure_app.geometry.linework.ways import Way, parting, ways
from enclosure_app.geometry.runs.offsetting import offset_run
from enclosure_app.language import say, written
from enclosure_app.model.place import Area, Line, Point, Points
from enclosure_app.model.section import Piece, Section

__all__ = ["LineworkGraph", "NotJoinedError", "Way", "beside", "graph_of", "traced", "ways"]

BESIDE = 3.0  # mm off the traced line, as sheets are commonly drawn beside what they lie on


class NotJoinedError(EnclosureError):
    """Two places that no drawn lines join; `gap` holds the nearest two places of either part."""

    def __init__(self, gap: tuple[Point, Point]) -> None:
        self.gap = gap
        super().__init__(
            say(
                "These two places are not joined by drawn lines: the lines at the first place "
                "come no nearer to those at the second than {gap}. Trace up to there and "
                "begin again on the other side, or draw the missing line.",
                gap=_written(dist(*gap)),
            )
        )


def graph_of(section: Section) -> LineworkGraph:
    """Return the net of what can be followed in a section; keep it while `followed` is the same."""
    drawn = (stroke.points for stroke in section.strokes)
    return LineworkGraph.of([*drawn, *_edges(followed(section))])


def followed(section: Section) -> tuple[Piece, ...]:
    """Return the pieces whose edges are followed: boards, and lines of the drawing itself.

    Sheets that were drawn or traced here lie on what is followed and would be in the way; they are
    followed only where there is nothing else.
    """
    kept = tuple(p for p in section.pieces if p.handles or isinstance(p.shape, Area))
    return kept if kept or section.strokes else section.pieces


def traced(graph: LineworkGraph, a: Point, b: Point, count: int = 1) -> tuple[Way, ...]:
    """Return up to `count` ways along drawn lines from `a` to `b` (mm), the shortest first.

    Raises:
        EnclosureError: there is nothing to follow, or nothing that joins the two places.
    """
    if not len(graph.start):
        raise EnclosureError(nothing_to_follow())
    found = ways(graph, a, b, count)
    if not found:
        raise NotJoinedError(parting(graph, a, b))
    if dist(found[0].points[0], found[0].points[-1]) == 0 == found[0].length:
        raise EnclosureError(
            say("Both clicks lie on one place: click where the sheet starts and where it ends.")
        )
    return found


def beside(points: Points, side: Point, distance: float = BESIDE) -> Points:
    """Return the run `distance` mm off a traced line, on the side where `side` lies.

    Raises:
        EnclosureError: there is no room for it on that side.
    """
    run = offset_run(points, distance, side, closed=False)
    if not run:
        raise EnclosureError(no_room(distance))
    return run


def nothing_to_follow() -> str:
    """Return what is said where nothing is drawn."""
    return say("There are no drawn lines to follow here: import a drawing, or sketch the sheet.")


def no_room(distance: float) -> str:
    """Return what is said where a sheet finds no room beside its line; `distance` in mm."""
    return say(
        "The traced line turns too tightly for a sheet {distance} off it on that side: "
        "choose the other side, or a smaller distance.",
        distance=_written(distance),
    )


def _edges(pieces: Iterable[Piece]) -> Iterable[Points]:
    for piece in pieces:
        shape = piece.shape
        if isinstance(shape, Area):
            for ring in (shape.outer, *shape.holes):
                yield (*ring, ring[0])
        elif isinstance(shape, Line):
            yield (*shape.points, shape.points[0]) if shape.closed else shape.points


def _written(length: float) -> str:
    return written(f"{length:.0f} mm" if length >= 10 else f"{length:.1f} mm")
