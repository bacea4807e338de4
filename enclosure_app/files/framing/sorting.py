"""Sorts what a drawing holds by what it is for: products, frames, breaks, texts, linework."""

from collections.abc import Iterable

from enclosure_app.files.dxf.raw import Raw, RawLeader, RawPath, RawText
from enclosure_app.files.framing.chains import Drawn, pieces_from
from enclosure_app.files.framing.sections import Material
from enclosure_app.files.maps.meaning import Meaning
from enclosure_app.model.drawing import Note
from enclosure_app.model.section import Stroke


class Sorting:
    """Takes what was read, one after the other, and puts it where it belongs; lengths in mm.

    Args:
        meaning: What the lines of the drawing mean.
        linework: Whether what is no piece is wanted, too.
    """

    def __init__(self, meaning: Meaning, *, linework: bool) -> None:
        self._meaning, self._linework = meaning, linework
        self._drawn: list[Drawn] = []
        self._by_role: dict[str, list[RawPath]] = {"frame": [], "break": []}
        self._texts: list[RawText] = []
        self._strokes: list[Stroke] = []
        self._taken: list[Stroke] = []

    def take_all(self, items: Iterable[Raw]) -> "Sorting":
        """Put everything where it belongs."""
        for item in items:
            if isinstance(item, RawText):
                self._texts.append(item)
            elif isinstance(item, RawLeader):
                self._strokes.append(Stroke(item.points, item.tag.layer, item.tag.handle))
            elif isinstance(item, RawPath):
                self._take_path(item)
        return self

    def _take_path(self, path: RawPath) -> None:
        row = self._meaning.row(path.tag)
        if row is not None and row.product is not None:
            self._drawn.append(Drawn(path, row.product))
        elif row is not None and row.role in self._by_role:
            self._by_role[row.role].append(path)
        if self._linework:
            shown_only = self._meaning.is_linework(path.tag)
            (self._strokes if shown_only else self._taken).extend(strokes_of(path))

    def material(self) -> tuple[Material, tuple[Note, ...]]:
        """Return all of it, its lines made pieces, and what was guessed of them."""
        pieces, notes = pieces_from(self._drawn, self._meaning.products)
        material = Material(
            pieces=pieces,
            products=self._meaning.products,
            frames=tuple(self._by_role["frame"]),
            breaks=tuple(self._by_role["break"]),
            texts=tuple(self._texts),
            strokes=tuple(self._strokes),
            taken=tuple(self._taken),
            linework=self._linework,
        )
        return material, notes


def strokes_of(path: RawPath) -> list[Stroke]:
    """Return a path as strokes: a closed one comes back to its start, a patch has its holes."""
    rings = (path.points, *path.holes) if path.closed or path.filled else ()
    runs = [(*ring, ring[0]) for ring in rings if ring] or [path.points]
    tag = path.tag
    like = (tag.layer, tag.handle, tag.linetype, tag.color, tag.block, path.width, path.filled)
    return [Stroke(run, *like) for run in runs if len(run) > 1]
