"""Says anew what the layers of an open project are: their lines become pieces, frames, breaks.

What the person did by hand stands: a piece that was given another product than its layer's, and
whatever was drawn or moved, unless the layer is no longer of any product at all.
"""

from collections import defaultdict
from collections.abc import Collection, Iterable, Mapping, Sequence
from dataclasses import dataclass, replace
from types import MappingProxyType

from enclosure_app.files.dxf.memory import kept_in_use
from enclosure_app.files.framing.drawn_lines import drawn_of
from enclosure_app.files.framing.frames import Frame
from enclosure_app.files.framing.reframing import reframed
from enclosure_app.files.framing.repiecing import pieces_of
from enclosure_app.files.framing.sections import near_frame, strokes_in
from enclosure_app.files.maps.catalogue import load_products
from enclosure_app.files.maps.guesses import guess_row
from enclosure_app.files.maps.layer_map import LayerMap
from enclosure_app.files.maps.line_meanings import Meanings, Meant
from enclosure_app.files.maps.meaning import LAYERS, notes_on_layers
from enclosure_app.model.drawing import Note, NoteLevel
from enclosure_app.model.layer import LayerRow, Role, exactly, row_of
from enclosure_app.model.naming import named_apart
from enclosure_app.model.product import Product
from enclosure_app.model.project import Project
from enclosure_app.model.section import Piece, Section, Stroke


@dataclass(frozen=True, slots=True)
class Said:
    """What came of saying anew what layers are: the project, and numbers to tell the person.

    `made` pieces are new, `changed` ones are of another product, `freed` ones are linework again
    or gone; `by_hand` stayed because they had been given a product of their own.
    """

    project: Project
    made: int = 0
    changed: int = 0
    freed: int = 0
    by_hand: int = 0


def guessed_rows(project: Project) -> tuple[LayerRow, ...]:
    """Return the rows that the names of a project's layers suggest."""
    products = project.sections[0].products if project.sections else {}
    guesses = (guess_row(name, products) for name in layers_of(project))
    return tuple(row for row in guesses if row is not None)


def layers_of(project: Project) -> tuple[str, ...]:
    """Return the names of all layers on which something is drawn or written, sorted."""
    names: dict[str, None] = {}
    for section in project.sections:
        names.update(dict.fromkeys(stroke.layer for stroke in section.strokes))
        names.update(dict.fromkeys(stroke.layer for stroke in section.taken))
        names.update(dict.fromkeys(text.layer for text in section.texts))
        names.update(dict.fromkeys(piece.layer for piece in section.pieces))
    names.pop("", None)
    return tuple(sorted(names, key=str.casefold))


@kept_in_use()
def said(
    project: Project,
    rows: Sequence[LayerRow],
    products: Mapping[str, Product] = MappingProxyType({}),
) -> Said:
    """Return the project with its layers said to be something else.

    Args:
        project: The project.
        rows: What its layers are from now on.
        products: Products that the rows name and the project may lack, such as a map's own.

    Raises:
        EnclosureError: a layer cannot be what it is said to be (no outline on it closes).
    """
    project = with_products(project, products)
    parts = [_said_of(section, project.layers, rows) for section in project.sections]
    every = [each for part in parts for each in part.sections]
    sections = named_apart(every, form="{name} ({number})")
    counts = (sum(getattr(part, name) for part in parts) for name in _COUNTS)
    after = replace(project, sections=sections, layers=tuple(rows))
    return Said(replace(after, notes=_notes(after)), *counts)


def mapped(project: Project, layer_map: LayerMap) -> Said:
    """Return an open project with a layer map used on it, as if it had been read with the map.

    What the person said of layers that the map does not know still holds, and so do figures and
    severities of the project's own that the map does not give.

    Raises:
        EnclosureError: a layer cannot be what it is said to be (no outline on it closes).
    """
    guesses = guessed_rows(project)
    rows = list(layer_map.rows)
    for layer in layers_of(project):
        row = row_of(project.layers, layer)
        if row and row not in guesses and row_of(rows, layer) is None:
            rows.append(replace(row, match=exactly(layer)))
    usual = load_products()
    own = {k: each for k, each in layer_map.products.items() if usual.get(k) != each}
    told = replace(
        project,
        book=layer_map.book or project.book,
        figures=MappingProxyType({**project.figures, **layer_map.limits}),
        severities=MappingProxyType({**project.severities, **layer_map.severities}),
    )
    return said(told, rows, own)


def with_products(project: Project, products: Mapping[str, Product]) -> Project:
    """Return the project with every section knowing these products too."""
    if not products:
        return project
    lists = {id(section.products): section.products for section in project.sections}
    longer = {key: MappingProxyType({**held, **products}) for key, held in lists.items()}
    sections = tuple(replace(s, products=longer[id(s.products)]) for s in project.sections)
    return replace(project, sections=sections)


def _notes(project: Project) -> tuple[Note, ...]:
    """Return a project's notes with what they tell of layers as it is now."""
    others = tuple(note for note in project.notes if note.about != LAYERS)
    by_guess = any(n.about == LAYERS and n.level is NoteLevel.GUESSED for n in project.notes)
    guesses = guessed_rows(project) if by_guess else ()
    guessed: dict[str, set[str]] = defaultdict(set)
    plain: set[str] = set()
    for section in project.sections:
        for piece in section.pieces:
            row = row_of(project.layers, piece.layer)
            if row in guesses and row.product == piece.product:
                guessed[piece.product].add(piece.layer)
        plain.update(stroke.layer for stroke in section.strokes)
    unsaid = {layer for layer in plain if row_of(project.layers, layer) is None} - {""}
    products = project.sections[0].products if project.sections else {}
    return (*others, *notes_on_layers(products, guessed, unsaid))


_COUNTS = ("made", "changed", "freed", "by_hand")


@dataclass(frozen=True, slots=True)
class _Part:
    sections: tuple[Section, ...]
    made: int = 0
    changed: int = 0
    freed: int = 0
    by_hand: int = 0


def _said_of(section: Section, before: Sequence[LayerRow], rows: Sequence[LayerRow]) -> _Part:
    products = section.products
    old, new = Meanings(before, products), Meanings(rows, products)
    every = drawn_of(section)
    moved = {s.handle: new.of(s) for s in every if old.of(s) != new.of(s)}
    if not moved:
        return _Part((section,))
    was = {s.handle: old.of(s) for s in every if s.handle in moved}
    sorted_out = _sorted_out(section, was, moved)
    wanted = {h for h, what in moved.items() if what in products} - sorted_out.spoken_for
    kept, fresh = pieces_of(every, new.of, wanted | sorted_out.again, sorted_out.kept, section)
    shown = [s for s in every if s.handle in moved and _is_shown(moved[s.handle])]
    shown = [s for s in shown if s.handle not in sorted_out.spoken_for]
    changed = replace(
        section,
        pieces=(*kept, *fresh),
        strokes=(
            *(s for s in section.strokes if s.handle not in moved),
            *strokes_in(Frame(section.frame, drawn=section.frame_drawn), tuple(shown)),
        ),
        taken=_taken(section, every, moved, shown),
        sealed=_still_there(section, [*kept, *fresh]),
    )
    counts = (len(fresh), sorted_out.changed, sorted_out.freed, sorted_out.by_hand)
    return _Part(reframed(changed, every, old.of, new.of), *counts)


@dataclass(frozen=True, slots=True)
class _SortedOut:
    """The pieces that stay; the handles of lines that they are made of; numbers to tell.

    `again` are lines that still mean a product, but whose piece was made of others too.
    """

    kept: tuple[Piece, ...]
    spoken_for: frozenset[str]
    again: frozenset[str]
    changed: int
    freed: int
    by_hand: int


def _sorted_out(
    section: Section, was: Mapping[str, Meant], moved: Mapping[str, Meant]
) -> _SortedOut:
    kept: list[Piece] = []
    spoken_for: set[str] = set()
    same: set[tuple[Meant, Meant]] = set()
    freed_of: set[str] = set()
    changed = freed = by_hand = 0
    for piece in section.pieces:
        concerned = [handle for handle in piece.handles if handle in moved]
        if not concerned:
            kept.append(piece)
        elif piece.product not in {was[handle] for handle in concerned}:
            kept.append(piece)
            spoken_for.update(concerned)
            by_hand += piece.product not in {moved[handle] for handle in concerned}
        elif product := _same_shape(section, piece, {moved.get(h, "") for h in piece.handles}):
            kept.append(replace(piece, product=product))
            same.add((piece.product, product))
            changed += 1
        else:
            freed_of.update(piece.handles)
            freed += 1
    in_place = {handle for handle in moved if (was[handle], moved[handle]) in same}
    spoken_for |= in_place - freed_of
    again = frozenset(freed_of - moved.keys())
    return _SortedOut(tuple(kept), frozenset(spoken_for), again, changed, freed, by_hand)


def _same_shape(section: Section, piece: Piece, meant: Collection[Meant]) -> str:
    """Return the product that a piece can be of as it is drawn, "" where it has to be made anew."""
    products = section.products
    product = next(iter(meant)) if len(meant) == 1 else ""
    if product not in products:
        return ""
    return product if products[product].drawn == products[piece.product].drawn else ""


def _is_shown(meant: Meant) -> bool:
    return meant in (Role.NOTE, Role.LINEWORK)


def _taken(
    section: Section, every: Sequence[Stroke], moved: Mapping[str, Meant], shown: Sequence[Stroke]
) -> tuple[Stroke, ...]:
    """Return what is drawn besides the linework that is shown whole."""
    now_shown = {stroke.handle for stroke in shown}
    frame = Frame(section.frame, drawn=section.frame_drawn)
    cut = {stroke.handle for stroke in near_frame(frame, shown)[1]} if frame.drawn else set()
    left = [s for s in section.taken if s.handle not in moved]
    return (
        *left,
        *(
            s
            for s in every
            if s.handle in moved and (s.handle not in now_shown or s.handle in cut)
        ),
    )


def _still_there(section: Section, pieces: Iterable[Piece]) -> frozenset[tuple[str, str]]:
    names = {piece.name for piece in pieces}
    return frozenset(pair for pair in section.sealed if names.issuperset(pair))
