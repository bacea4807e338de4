"""What there is to tell of each layer of a project: how much is on it, what it is said to be."""

from collections import Counter, defaultdict
from collections.abc import Sequence
from dataclasses import dataclass

from enclosure_app.files.drawn_lines import drawn_of
from enclosure_app.files.guesses import Guess, guess_of
from enclosure_app.files.line_meanings import meant_by
from enclosure_app.model.layer import Role, narrower_rows, row_of
from enclosure_app.model.project import Project
from enclosure_app.model.section import Section


@dataclass(frozen=True, slots=True)
class LayerTold:
    """One layer.

    `lines` and `texts` are on it; `meant` is the product's key or the role that it is said to be
    of; `guess` is what its name suggests. `narrower` rows of the map say otherwise of some of its
    lines; `by_hand` pieces of it were given another product.
    """

    name: str
    lines: int
    texts: int
    meant: str
    guess: Guess | None
    narrower: int = 0
    by_hand: int = 0


class LayersTold:
    """Tells of a project's layers; what is drawn is counted again only where it is another."""

    def __init__(self) -> None:
        self._counted: list[tuple[tuple[object, ...], Counter[str]]] = []

    def of(self, project: Project) -> tuple[LayerTold, ...]:
        """Return the layers of a project, by name."""
        lines, texts = Counter[str](), Counter[str]()
        self._counted = [self._count(at, each) for at, each in enumerate(project.sections)]
        for _, counts in self._counted:
            lines.update(counts)
        for section in project.sections:
            texts.update(text.layer for text in section.texts)
        names = sorted({*lines, *texts} - {""}, key=lambda name: (name.casefold(), name))
        by_hand = _by_hand(project)
        return tuple(
            _told(project, name, (lines[name], texts[name], by_hand[name])) for name in names
        )

    def _count(self, at: int, section: Section) -> tuple[tuple[object, ...], Counter[str]]:
        drawn = (section.strokes, section.taken, bool(section.pieces))
        if at < len(self._counted) and _same(self._counted[at][0], drawn):
            return self._counted[at]
        handles: dict[str, set[str]] = defaultdict(set)
        for number, stroke in enumerate(drawn_of(section)):
            handles[stroke.layer].add(stroke.handle or f" {number}")
        return drawn, Counter({layer: len(found) for layer, found in handles.items()})


def _same(one: Sequence[object], other: Sequence[object]) -> bool:
    return all(a is b for a, b in zip(one, other, strict=True))


def _told(project: Project, name: str, counts: tuple[int, int, int]) -> LayerTold:
    products = project.sections[0].products
    lines, texts, by_hand = counts
    return LayerTold(
        name,
        lines,
        texts,
        meant_by(row_of(project.layers, name)),
        guess_of(name, products),
        len(narrower_rows(project.layers, name)),
        by_hand,
    )


def _by_hand(project: Project) -> Counter[str]:
    """Count the pieces of each layer that are of none of the products its rows give."""
    meant: dict[str, set[str]] = {}
    found: Counter[str] = Counter()
    for section in project.sections:
        for piece in section.pieces:
            if not piece.layer:
                continue
            if piece.layer not in meant:
                rows = (
                    *narrower_rows(project.layers, piece.layer),
                    row_of(project.layers, piece.layer),
                )
                meant[piece.layer] = {meant_by(row) for row in rows}
            found[piece.layer] += piece.product not in meant[piece.layer]
    return found


def is_plain(told: LayerTold) -> bool:
    """Whether nothing is said of a layer: it is linework."""
    return told.meant == Role.LINEWORK
