"""Metal to look at on site: what it is shaped like says what it has to do."""

from collections.abc import Iterator
from itertools import pairwise
from math import dist

from enclosure_app.model.place import Line, Points
from enclosure_app.model.product import Control, Kind
from enclosure_app.network.details.drainage import METAL
from enclosure_app.planning.site_list import questions as ask
from enclosure_app.planning.site_list.asking import of_product
from enclosure_app.planning.site_list.places import Drawn, SitePlace, lines_of, middle, said, title

_LEDGE = 12.0  # mm: what is shorter is a bend or a drip, and no ledge that water runs over
_HANGS = 10.0  # mm that an edge hangs at least below what the metal covers
_COPING = (ask.COPING_FALL, ask.BOTH_EDGES, ask.LENGTHS, ask.HELD_BELOW)


def metal(section: Drawn) -> Iterator[SitePlace]:
    """Yield each flashing, edge metal and sill pan of the water layer, on the trace or beside it."""
    for piece in section.result.section.layer(Control.WATER):
        if section.product(piece.name).kind in METAL and section.upright:
            lines = lines_of(section, (piece.name,))
            at = middle(lines[0])
            yield SitePlace(
                key=f"metal:{piece.name}",
                title=title(section.words(piece.name)),
                controls=(Control.WATER,),
                pieces=(piece.name,),
                at=at,
                along=section.along((Control.WATER,), at),
                questions=said(_asked(section, piece.name)),
                extent=lines,
            )


def _asked(section: Drawn, name: str) -> tuple[ask.Question, ...]:
    """Return what to look at: a flashing that covers a top, or only hangs, is asked for less."""
    product, shape = section.product(name), section.result.section.by_name[name].shape
    asked = of_product(product)
    if product.kind is not Kind.FLASHING or not isinstance(shape, Line):
        return asked
    line = tuple(map(section.pose.settled, shape.points))
    if _covers_a_top(line):
        return _COPING
    return asked if _has_ledge(line) else (ask.DRIP, ask.LENGTHS)


def _has_ledge(line: Points) -> bool:
    """Whether any leg is flatter than it is steep, and long enough for water to run over it."""
    return any(
        dist(a, b) >= _LEDGE and abs(b[1] - a[1]) <= abs(b[0] - a[0]) for a, b in pairwise(line)
    )


def _covers_a_top(line: Points) -> bool:
    """Whether a line has a ledge and hangs down on both sides of it."""
    top = max(y for _, y in line)
    ends = (line[0][1], line[-1][1])
    return _has_ledge(line) and all(top - y >= _HANGS for y in ends)
