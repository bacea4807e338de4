"""What of a section belongs to the page under it, and how it moves when the page does."""

from collections.abc import Collection, Iterable, Sequence
from dataclasses import replace

from enclosure_app.geometry.similarity import Similarity
from enclosure_app.model.place import Area, Shape
from enclosure_app.model.section import Break, Piece, Section, Stroke, Text


def is_of(handle: str, key: str) -> bool:
    """Whether a handle is that of a line or note of the page with a key."""
    return bool(key) and handle.startswith(f"{key}:")


def goes_along(section: Section, key: str) -> frozenset[str]:
    """Return the names of the pieces that are made of nothing but lines of a page."""
    return frozenset(
        piece.name
        for piece in section.pieces
        if piece.handles and all(is_of(handle, key) for handle in piece.handles)
    )


def is_alone(section: Section, key: str) -> bool:
    """Whether nothing stands in a section but what belongs to the page."""
    handles = [each.handle for each in (*section.strokes, *section.taken)]
    handles += [each.handle for each in section.texts]
    own = len(goes_along(section, key)) == len(section.pieces)
    return own and all(is_of(handle, key) for handle in handles)


def is_blank(section: Section) -> bool:
    """Whether nothing at all stands in a section."""
    drawn = (section.pieces, section.strokes, section.taken, section.texts, section.breaks)
    return not any((*drawn, section.inside, section.outside))


def without_page(section: Section, key: str) -> Section:
    """Return a section without the lines and notes of a page; pieces stay."""
    strokes = tuple(each for each in section.strokes if not is_of(each.handle, key))
    taken = tuple(each for each in section.taken if not is_of(each.handle, key))
    texts = tuple(each for each in section.texts if not is_of(each.handle, key))
    kept = [len(each) for each in (strokes, taken, texts)]
    if kept == [len(each) for each in (section.strokes, section.taken, section.texts)]:
        return section
    return replace(section, strokes=strokes, taken=taken, texts=texts)


def moved_section(
    section: Section, similar: Similarity, key: str | None, names: Collection[str] | None
) -> Section:
    """Return a section with the lines of a page and some pieces moved, turned and scaled.

    Args:
        section: The section.
        similar: How.
        key: The key of the page; None leaves lines and notes where they are.
        names: The pieces that go along; None for all of them, the frame, marks and breaks.
    """
    pieces = tuple(
        _piece(piece, similar) if names is None or piece.name in names else piece
        for piece in section.pieces
    )
    changed = replace(section, pieces=pieces)
    if key is not None:
        strokes = _strokes(section.strokes, similar, key)
        taken = _strokes(section.taken, similar, key)
        texts = tuple(
            moved_text(each, similar) if is_of(each.handle, key) else each
            for each in section.texts
        )
        changed = replace(changed, strokes=strokes, taken=taken, texts=texts)
    if names is not None:
        return changed if _differs(changed, section) else section
    return with_frame_moved(changed, similar)


def with_frame_moved(section: Section, similar: Similarity) -> Section:
    """Return a section with its frame, marks and breaks moved, turned and scaled."""
    return replace(
        section,
        frame=similar.places(section.frame),
        inside=similar.places(section.inside),
        outside=similar.places(section.outside),
        breaks=tuple(_break(each, similar) for each in section.breaks),
    )


def _differs(changed: Section, section: Section) -> bool:
    """Whether anything was moved: one that stays the same is not judged again."""
    kinds = ("pieces", "strokes", "taken", "texts")
    return any(
        a is not b
        for kind in kinds
        for a, b in zip(getattr(changed, kind), getattr(section, kind), strict=True)
    )


def _strokes(strokes: Sequence[Stroke], similar: Similarity, key: str) -> tuple[Stroke, ...]:
    """Move those lines that are of a page; the others stay the very same objects."""
    own = [stroke for stroke in strokes if is_of(stroke.handle, key)]
    moved = iter(moved_strokes(own, similar, [stroke.handle for stroke in own]))
    return tuple([next(moved) if is_of(each.handle, key) else each for each in strokes])


def moved_strokes(
    strokes: Sequence[Stroke], similar: Similarity, handles: Iterable[str]
) -> list[Stroke]:
    """Return lines moved, turned and scaled, with these handles; quick for a hundred thousand."""
    runs = similar.runs([stroke.points for stroke in strokes])
    factor = similar.factor
    return [
        Stroke(
            run, each.layer, handle, each.linetype, each.color, each.block,
            each.width * factor, each.filled,
        )
        for run, each, handle in zip(runs, strokes, handles, strict=True)
    ]  # fmt: skip


def moved_text(text: Text, similar: Similarity) -> Text:
    """Return a note moved, turned and scaled."""
    return replace(
        text,
        at=similar.place(text.at),
        height=text.height * similar.factor,
        angle=text.angle + similar.turn,
    )


def _piece(piece: Piece, similar: Similarity) -> Piece:
    return replace(piece, shape=_shape(piece.shape, similar))


def _shape(shape: Shape, similar: Similarity) -> Shape:
    if isinstance(shape, Area):
        return Area(similar.places(shape.outer), tuple(map(similar.places, shape.holes)))
    return replace(shape, points=similar.places(shape.points), width=shape.width * similar.factor)


def _break(each: Break, similar: Similarity) -> Break:
    near, far = similar.places(each.near), similar.places(each.far)
    return Break((near[0], near[1]), (far[0], far[1]))
