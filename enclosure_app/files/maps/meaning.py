"""What the layers of a drawing mean: as the layer map says, or as their names suggest."""

from collections import defaultdict
from collections.abc import Collection, Iterable, Mapping, Sequence

from enclosure_app.files.dxf.raw import Tag
from enclosure_app.files.dxf.words import listed
from enclosure_app.files.maps.catalogue import load_products
from enclosure_app.files.maps.guesses import guess_row
from enclosure_app.files.maps.layer_map import LayerMap
from enclosure_app.language import say, say_count
from enclosure_app.model.drawing import Note, NoteLevel
from enclosure_app.model.layer import LayerRow, Role
from enclosure_app.model.product import Product
from enclosure_app.model.section import Piece

SHOWN_LAYERS = 8
LAYERS = "layers"
"""What notes on layers are about."""


class Meaning:
    """What the layers mean: as the map says, or as their names suggest."""

    def __init__(self, layer_map: LayerMap | None, *, linework: bool) -> None:
        self._map = layer_map
        self._linework = linework
        self._guesses: dict[str, LayerRow | None] = {}
        self._unmatched: set[str] = set()
        self._matched: set[str] = set()
        self.products: Mapping[str, Product] = layer_map.products if layer_map else load_products()

    def row(self, tag: Tag) -> LayerRow | None:
        """Return what says what an entity is, None where nothing does."""
        if self._map is not None:
            return self._map.row_for(tag)
        if tag.layer not in self._guesses:
            self._guesses[tag.layer] = guess_row(tag.layer, self.products)
        return self._guesses[tag.layer]

    def wanted(self, tag: Tag) -> bool:
        """Whether a path is worth reading."""
        row = self.row(tag)
        (self._unmatched if row is None else self._matched).add(tag.layer)
        if self.is_linework(tag) or (row is not None and row.role == Role.IGNORE):
            return self._linework  # what is ignored today may be said to be something tomorrow
        return True

    def is_linework(self, tag: Tag) -> bool:
        """Whether nothing says what a path is, or only that it is a note or linework."""
        row = self.row(tag)
        return row is None or (row.role is not None and Role(row.role).shown)

    def notes(self, pieces: Sequence[Piece]) -> tuple[Note, ...]:
        """Return what was guessed of layers, and which of them mean nothing."""
        guessed: dict[str, set[str]] = defaultdict(set)
        if self._map is None:
            for piece in pieces:
                guessed[piece.product].add(piece.layer)
        return notes_on_layers(self.products, guessed, self._unmatched - self._matched)


def notes_on_layers(
    products: Mapping[str, Product],
    guessed: Mapping[str, Collection[str]],
    unmatched: Collection[str],
) -> tuple[Note, ...]:
    """Return what is told of layers.

    Args:
        products: The products by key.
        guessed: The layers that are taken for each product by their names, by its key.
        unmatched: The layers of which nothing is said.
    """
    notes = [
        Note(
            NoteLevel.GUESSED,
            say(
                "Taken for {product}: {layers}.",
                product=say(products[key].name),
                layers=layers_named(layers),
            ),
            LAYERS,
        )
        for key, layers in guessed.items()
    ]
    if unmatched:
        layers = layers_named(unmatched)
        text = say("Nothing is said of {layers}: linework only.", layers=layers)
        notes.append(Note(NoteLevel.IGNORED, text, LAYERS))
    return tuple(notes)


def layers_named(names: Iterable[str]) -> str:
    """Return ``layer “A”`` or ``layers “A”, “B” and 3 more``."""
    every = set(names)
    names = listed(every, SHOWN_LAYERS)
    return say_count(len(every), "layer {names}", "layers {names}", names=names)
