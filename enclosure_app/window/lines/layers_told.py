"""What there is to tell of each layer of a project: how much is on it, what it is said to be."""

from collections import Counter
from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from enclosure_app.files.maps.guesses import Guess, guess_of
from enclosure_app.files.maps.line_meanings import meant_by
from enclosure_app.language import say
from enclosure_app.model.layer import LayerRow, narrower_rows, row_of
from enclosure_app.model.product import Product
from enclosure_app.model.project import Project
from enclosure_app.model.section import Section
from enclosure_app.window.canvas.made_ready import Strokes, made_of


@dataclass(frozen=True, slots=True)
class LayerTold:
    """One layer.

    `lines` and `texts` are on it; `meant` is the product's key or the role that it is said to be
    of; `guess` is what its name suggests. `narrower` rows of the map say otherwise of some of its
    lines; `by_hand` pieces of it were given another product. A row may also stand for what was
    `drawn` here of a product (its key), on no layer of the office's: `name` is then the product's.
    """

    name: str
    lines: int
    texts: int
    meant: str
    guess: Guess | None
    narrower: int = 0
    by_hand: int = 0
    drawn: str = ""

    @property
    def row(self) -> tuple[str, str]:
        """What tells a row from every other."""
        return self.drawn, "" if self.drawn else self.name


@dataclass(frozen=True, slots=True)
class _Drawn:
    """What is drawn and written in a section, and how much of it on each layer."""

    of: tuple[object, ...]
    lines: Counter[str]
    texts: Counter[str]

    def holds(self, section: Section) -> bool:
        return all(a is b for a, b in zip(self.of, _content(section), strict=True))


@dataclass(frozen=True, slots=True)
class _Meant:
    """What rows say of a layer, and what they say otherwise of some of its lines."""

    whole: str
    guess: Guess | None
    narrower: frozenset[str]
    rows: int


class LayersTold:
    """Tells of a project's layers; what did not change since the last time is not asked again.

    It is asked at every step of a drag, when all but a piece is what it was.
    """

    def __init__(self) -> None:
        self._drawn: list[_Drawn] = []
        self._said: tuple[Sequence[LayerRow], Mapping[str, Product]] = ((), {})
        self._meant: dict[str, _Meant] = {}

    def of(self, project: Project) -> tuple[LayerTold, ...]:
        """Return the layers of a project, by name, and then what was drawn here, by product."""
        if not project.sections:
            return ()
        self._forget(project.layers, project.sections[0].products)
        self._drawn = [self._count(at, each) for at, each in enumerate(project.sections)]
        lines, texts = Counter[str](), Counter[str]()
        for drawn in self._drawn:
            lines.update(drawn.lines)
            texts.update(drawn.texts)
        by_hand = self._by_hand(project)
        names = sorted({*lines, *texts} - {""}, key=lambda name: (name.casefold(), name))
        told = [self._told(name, (lines[name], texts[name], by_hand[name])) for name in names]
        return (*told, *drawn_here(project))

    def _forget(self, rows: Sequence[LayerRow], products: Mapping[str, Product]) -> None:
        if self._said[0] is not rows or self._said[1] is not products:
            self._said = rows, products
            self._meant.clear()

    def _count(self, at: int, section: Section) -> _Drawn:
        if at < len(self._drawn) and self._drawn[at].holds(section):
            return self._drawn[at]
        texts = Counter(text.layer for text in section.texts)
        return _Drawn(_content(section), _lines_of(section), texts)

    def _told(self, name: str, counts: tuple[int, int, int]) -> LayerTold:
        meant = self._of_layer(name)
        lines, texts, by_hand = counts
        return LayerTold(name, lines, texts, meant.whole, meant.guess, meant.rows, by_hand)

    def _of_layer(self, name: str) -> _Meant:
        if name not in self._meant:
            rows, products = self._said
            narrower = narrower_rows(rows, name)
            self._meant[name] = _Meant(
                meant_by(row_of(rows, name)),
                guess_of(name, products),
                frozenset(map(meant_by, narrower)),
                len(narrower),
            )
        return self._meant[name]

    def _by_hand(self, project: Project) -> Counter[str]:
        """Count the pieces of each layer that are of none of the products its rows give."""
        found: Counter[str] = Counter()
        for section in project.sections:
            counts = Counter((piece.layer, piece.product) for piece in section.pieces)
            for (layer, product), count in counts.items():
                meant = self._of_layer(layer)
                if layer and product != meant.whole and product not in meant.narrower:
                    found[layer] += count
        return found


def drawn_here(project: Project) -> list[LayerTold]:
    """Return a row for each product of which pieces lie on no layer of the office's, by name."""
    counts = Counter(
        piece.product for each in project.sections for piece in each.pieces if not piece.layer
    )
    products = project.sections[0].products if counts else {}
    rows = [
        LayerTold(say(products[key].name), count, 0, key, None, drawn=key)
        for key, count in counts.items()
        if key in products
    ]
    return sorted(rows, key=lambda row: (row.name.casefold(), row.drawn))


def _content(section: Section) -> tuple[object, ...]:
    return section.strokes, section.taken, section.texts, bool(section.pieces)


def layers_by_handle(strokes: Strokes) -> dict[str, str]:
    """Return the layer of each entity of the drawing that lines are of."""
    return {stroke.handle: stroke.layer for stroke in strokes}


def _lines_of(section: Section) -> Counter[str]:
    """Count the lines of each layer; what one entity of the drawing comes to counts once."""
    layers = dict(made_of(section.strokes, layers_by_handle))
    layers.update(layers_by_handle(section.taken))
    for piece in section.pieces:  # of an older project, whose lines were not kept
        if piece.handles and layers.keys().isdisjoint(piece.handles):
            layers[piece.handles[0]] = piece.layer
    nameless = layers.pop("", None) is not None
    counts = Counter(layers.values())
    if nameless:
        every = (*section.strokes, *section.taken)
        counts.update(stroke.layer for stroke in every if not stroke.handle)
    return counts
