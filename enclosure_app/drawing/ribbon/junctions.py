"""Junctions that the drawing names, eave, fascia, roof-wall and so on, as places along a walk.

A name is read from a text beside the layer, or from the layer or product of what is drawn there:
a fascia board names the fascia. Pieces that the pen follows name nothing, since they are long.
"""

import re
from collections.abc import Iterator
from dataclasses import dataclass

from enclosure_app.drawing.placement import box_around
from enclosure_app.drawing.polylines import foot
from enclosure_app.drawing.ribbon.unrolled import Unrolled, stretches
from enclosure_app.language import later, say
from enclosure_app.model.place import Area, Point, Points
from enclosure_app.model.section import Piece, Section, Stroke

_NEAR, _NEAR_TEXT = (
    120.0,
    400.0,
)  # mm from the layer within which something drawn, or a text, names it
_MOST, _SECTIONS = 2000, 8  # strokes that name something, and sections they are kept of
_APART = 0.08  # of the walk, that two junctions of one name are apart at least

# What names a junction, in the words of drawings, and the name; the first that fits counts.
_NAMES = (
    (r"roof[ -]*(to[ -]*)?(higher[ -]*)?wall|apron|step[ -]*flashing", later("roof-wall")),
    (r"fascia", later("fascia")),
    (r"soffit", later("soffit")),
    (r"parapet|coping", later("parapet")),
    (r"ridge", later("ridge")),
    (r"rake|verge|barge", later("rake")),
    (r"eaves?", later("eave")),
    (r"sill", later("sill")),
    (r"window[ -]*head|head[ -]*flashing|lintel", later("head")),
    (r"window|door", later("opening")),
    (r"ledger|balcony", later("balcony")),
    (r"floor[ -]*line|rim[ -]*(board|joist)", later("floor")),
    (r"footing|foundation", later("footing")),
    (r"gutter", later("gutter")),
)
_PATTERNS = tuple((re.compile(rf"\b({known})\b", re.IGNORECASE), name) for known, name in _NAMES)


@dataclass(frozen=True, slots=True)
class Junction:
    """A named place, in mm along the walk."""

    name: str
    along: float


@dataclass(frozen=True, slots=True)
class _Named:
    """Something that has a name: its points, and how near to the layer it must be."""

    name: str
    points: Points
    near: float


def junctions(section: Section, laid: Unrolled) -> tuple[Junction, ...]:
    """Return the junctions that a section names along the walk of one of its layers, in order."""
    places = sorted([*_places(section, laid), *_of_the_whole(section, laid)])
    kept: list[Junction] = []
    for _, along, name in places:
        apart = _APART * laid.length
        if all(other.name != name or abs(other.along - along) > apart for other in kept):
            kept.append(Junction(name, along))
    return tuple(sorted(kept, key=lambda junction: junction.along))


def _places(section: Section, laid: Unrolled) -> Iterator[tuple[float, float, str]]:
    """Yield for everything named how far off the layer it is, where along it, and its name."""
    ways = [(part.points, part.start) for part in laid.parts if len(part.points) > 1]
    around = [box_around(way).inset(-_NEAR_TEXT) for way, _ in ways]
    for named in _all_named(section, laid):
        feet = [
            (nearest.off, start + nearest.along)
            for point in named.points
            for (way, start), box in zip(ways, around, strict=True)
            if box.holds(point)
            for nearest in (foot(way, point),)
        ]
        off, along = min(feet, default=(named.near + 1.0, 0.0))
        if off <= named.near:
            yield off, along, named.name


def _of_the_whole(section: Section, laid: Unrolled) -> Iterator[tuple[float, float, str]]:
    """Yield the junction that the section itself is named after, where its layer folds only once."""
    name = _name_in(section.name)
    folds = [stretch.start for stretch in stretches(laid, section)[1:]]
    if name and len(folds) == 1:
        yield _NEAR, folds[0], name


def _all_named(section: Section, laid: Unrolled) -> Iterator[_Named]:
    followed = {part.piece for part in laid.parts}
    for text in section.texts:
        if name := _name_in(text.text):
            yield _Named(name, (text.at,), _NEAR_TEXT)
    for piece in section.pieces:
        product = section.product(piece)
        name = _name_in(f"{piece.layer} {product.name} {product.key}")
        if name and piece.name not in followed:
            yield _Named(name, _points(piece), _NEAR)
    for name, points in _named_strokes(section.strokes):
        yield _Named(say(name), points, _NEAR)


_kept: dict[int, tuple[tuple[Stroke, ...], tuple[tuple[str, Points], ...]]] = {}


def _named_strokes(strokes: tuple[Stroke, ...]) -> tuple[tuple[str, Points], ...]:
    """Return the strokes whose layer names a junction; looked for once in the same strokes.

    An office's drawing may have a hundred thousand strokes, and a ribbon is painted at each change.
    """
    held = _kept.get(id(strokes))
    if held is None or held[0] is not strokes:
        names = {layer: _known_in(layer) for layer in {stroke.layer for stroke in strokes}}
        found = [(names[s.layer], s.points) for s in strokes if names[s.layer]]
        held = (strokes, tuple(found[:_MOST]))
        while len(_kept) >= _SECTIONS:
            _kept.pop(next(iter(_kept)))
        _kept[id(strokes)] = held
    return held[1]


def _points(piece: Piece) -> tuple[Point, ...]:
    return piece.shape.outer if isinstance(piece.shape, Area) else piece.shape.points


def _name_in(text: str) -> str:
    known = _known_in(text)
    return say(known) if known else ""


def _known_in(text: str) -> str:
    """Return the name of the junction that a text speaks of, in English, "" if it speaks of none."""
    plain = text.replace("_", " ").replace("-", " ")
    return next((name for pattern, name in _PATTERNS if pattern.search(plain)), "")
