"""Makes pieces of drawn paths: loose segments joined, outlines read for what they stand for."""

import re
from collections import defaultdict
from collections.abc import Collection, Iterable, Mapping, Sequence
from dataclasses import dataclass
from functools import lru_cache

from enclosure_app.files.dxf.raw import RawPath
from enclosure_app.files.dxf.words import listed
from enclosure_app.files.framing.outlines import Region, encloses, shape_of, without_twins
from enclosure_app.files.framing.symbols import symbols_among
from enclosure_app.geometry.outlines.chaining import chain, tidy
from enclosure_app.language import later, say, say_count
from enclosure_app.model.drawing import Note, NoteLevel
from enclosure_app.model.place import Line, Shape
from enclosure_app.model.product import Product
from enclosure_app.model.section import Piece

NAMED = 6


@dataclass(frozen=True, slots=True)
class Drawn:
    """One path of the drawing in mm, and the product that it is made of."""

    path: RawPath
    product: str


@dataclass(frozen=True, slots=True)
class _Made:
    piece: Piece
    guess: str = ""


_OPEN = "open"
_UNEVEN = "uneven"


def pieces_from(
    drawn: Sequence[Drawn], products: Mapping[str, Product], reach: float = 1.0
) -> tuple[tuple[Piece, ...], tuple[Note, ...]]:
    """Return the pieces that `drawn` amounts to in drawing order, and what was guessed.

    Loose segments of one product, layer and width are joined where their ends lie within `reach`
    (mm). A piece is named after the first of its handles.
    """
    regions, made = _rings(drawn), list[_Made]()
    symbols = frozenset(_symbols(drawn, regions, products))
    lines = [each for each in drawn if each.path.tag.handle not in symbols]
    for each in _joined(lines, products, reach):
        if isinstance(each, Region):
            regions.append(each)
        else:
            made.append(each)
    made.extend(_of_region(each, products[each.product]) for each in without_twins(regions))
    made.sort(key=lambda each: handle_order(each.piece.name))
    return tuple(each.piece for each in made), (*_notes(made, products), *_left_out(symbols))


@lru_cache(maxsize=65_536)
def handle_order(handle: str) -> tuple[tuple[int, str], ...]:
    """Return the key that sorts handles as the drawing counts them (in base 16)."""
    parts = re.split(r"[/#.-]", handle)
    return tuple((int(part, 16) if _is_hex(part) else 0, part) for part in parts)


def _is_hex(text: str) -> bool:
    return bool(re.fullmatch(r"[0-9A-Fa-f]{1,16}", text))


def _rings(drawn: Iterable[Drawn]) -> list[Region]:
    return [
        Region(
            tidy(each.path.points, closed=True),
            each.product,
            (each.path.tag.handle,),
            layer=each.path.tag.layer,
            holes=each.path.holes,
            filled=each.path.filled,
            width=each.path.width,
        )
        for each in drawn
        if _is_ring(each.path)
    ]


def _is_ring(path: RawPath) -> bool:
    return (path.closed or path.filled) and encloses(tidy(path.points, closed=True))


def _is_loose(path: RawPath) -> bool:
    """Whether a path is a run; a closed one that encloses nothing is a run there and back."""
    return not path.filled and len(path.points) > 1 and not _is_ring(path)


def _joined(
    drawn: Iterable[Drawn], products: Mapping[str, Product], reach: float
) -> Iterable[_Made | Region]:
    groups: dict[tuple[str, str, float], list[RawPath]] = defaultdict(list)
    for each in drawn:
        path = each.path
        if _is_loose(path):
            groups[each.product, path.tag.layer, round(path.width, 3)].append(path)
    for (key, layer, width), paths in groups.items():
        paths.sort(key=lambda path: handle_order(path.tag.handle))
        for run in chain([path.points for path in paths], reach):
            handles = tuple(paths[i].tag.handle for i in run.members)
            if run.closed:
                yield Region(run.points, key, handles, layer=layer, width=width)
            else:
                guess = _OPEN if products[key].drawn == "area" and width == 0 else ""
                yield _made(Line(run.points, width), key, handles, layer, guess)


def _of_region(region: Region, product: Product) -> _Made:
    shape, guessed = shape_of(region, product)
    guess = _UNEVEN if guessed else ""
    return _made(shape, region.product, region.handles, region.layer, guess)


def _made(shape: Shape, product: str, handles: tuple[str, ...], layer: str, guess: str) -> _Made:
    name = min(handles, key=handle_order)
    return _Made(Piece(name, product, shape, handles, layer), guess)


def _symbols(
    drawn: Sequence[Drawn], regions: Sequence[Region], products: Mapping[str, Product]
) -> list[str]:
    """Return the handles of the lines that only say what an area of their product is."""
    runs: dict[str, list[RawPath]] = defaultdict(list)
    for each in drawn:
        path = each.path
        if _is_loose(path) and path.width == 0 and products[each.product].drawn == "area":
            runs[each.product].append(path)
    return [
        paths[i].tag.handle
        for key, paths in runs.items()
        for i in symbols_among(
            [path.points for path in paths],
            [region.points for region in regions if region.product == key],
        )
    ]


def _left_out(symbols: Collection[str]) -> list[Note]:
    if not symbols:
        return []
    names = listed(symbols, NAMED)
    text = say(
        "Lines across areas of their own product are taken for drafting symbols: {names}.",
        names=names,
    )
    return [Note(NoteLevel.IGNORED, text)]


_SAYS = {
    _OPEN: (
        later("One outline of {product} does not close and is read as a line: {names}."),
        later("{count} outlines of {product} do not close and are read as lines: {names}."),
    ),
    _UNEVEN: (
        later("One outline of {product} is of no even thickness and is read as an area: {names}."),
        later(
            "{count} outlines of {product} are of no even thickness and are read as areas: {names}."
        ),
    ),
}


def _notes(made: Sequence[_Made], products: Mapping[str, Product]) -> tuple[Note, ...]:
    guesses: dict[tuple[str, str], list[str]] = defaultdict(list)
    for each in made:
        if each.guess:
            guesses[each.guess, each.piece.product].append(each.piece.name)
    return tuple(
        Note(NoteLevel.GUESSED, _sentence(_SAYS[guess], products[key].name, names))
        for (guess, key), names in guesses.items()
    )


def _sentence(says: tuple[str, str], product: str, names: Sequence[str]) -> str:
    shown = names[0] if len(names) == 1 else listed(names, NAMED)
    return say_count(len(names), *says, product=say(product), names=shown)
