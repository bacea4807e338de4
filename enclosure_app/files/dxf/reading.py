"""One walk through a layout and its blocks: what is seen, what is wanted, what is left out."""

from collections import Counter
from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass, replace
from typing import Any

from ezdxf.entities.dimension import Dimension
from ezdxf.entities.dxfgfx import DXFGraphic
from ezdxf.entities.insert import Insert
from ezdxf.entities.polyline import Polyline
from ezdxf.layouts.blocklayout import BlockLayout
from ezdxf.lldxf.const import DXFError

from enclosure_app.files.dxf.curves import NumberError
from enclosure_app.files.dxf.document import Document
from enclosure_app.files.dxf.inserts import attribute_placements, children, is_clipped, repeats
from enclosure_app.files.dxf.own_marks import APPLICATION
from enclosure_app.files.dxf.paths import CONVERTERS
from enclosure_app.files.dxf.placement import Placement
from enclosure_app.files.dxf.raw import Raw, RawDimension, RawPath, RawText, Tag
from enclosure_app.files.dxf.styles import Style, Styles
from enclosure_app.files.dxf.tally import MOST_INSERTS, Group, Tally
from enclosure_app.files.dxf.texts import READERS, dimension_kind
from enclosure_app.files.dxf.words import printable
from enclosure_app.model.drawing import Note
from enclosure_app.model.place import Point
from enclosure_app.progress import gone_through

Wanted = Callable[[Tag], bool]

_WALKED = (0.60, 0.75)  # the shares of reading a drawing between which it is walked through
_FARTHEST = 1e12
_MESHES = ("AcDbPolygonMesh", "AcDbPolyFaceMesh")
_SILENT = frozenset({"ATTDEF", "VIEWPORT", "SEQEND", "VERTEX"})
# What the library raises on an entity whose numbers contradict each other (found by damaging
# drawings at random, see the tests).
_DAMAGED = (
    DXFError,
    ValueError,
    TypeError,
    AttributeError,
    IndexError,
    KeyError,
    ZeroDivisionError,
    OverflowError,
)


@dataclass(frozen=True, slots=True)
class Content:
    """What one layout holds.

    `layers` are the names that carry visible content, wanted or not; `skipped` counts by layer
    the paths that were not wanted.
    """

    items: tuple[Raw, ...]
    notes: tuple[Note, ...]
    layers: tuple[str, ...]
    skipped: Mapping[str, int]


class Reading:
    """One walk through a layout, and what it has gathered."""

    def __init__(self, document: Document, styles: Styles, wanted: Wanted | None) -> None:
        self.tally = Tally()
        self.remarks: tuple[Note, ...] = ()
        self._blocks = document.drawing.blocks
        self._styles = styles
        self._wanted = wanted
        self._items: list[Raw] = []
        self._layers: set[str] = set()
        self._skipped: Counter[str] = Counter()
        self._handles: Counter[str] = Counter()
        self._open_blocks: list[str] = []
        self._inserts = 0

    def content(self) -> Content:
        """Return what was gathered."""
        layers = tuple(sorted(self._layers))
        notes = (*self.tally.notes(), *self.remarks)
        return Content(tuple(self._items), notes, layers, dict(self._skipped))

    def walk(self, entities: Iterable[Any], placement: Placement) -> None:
        """Read entities that are placed in the same way."""
        table = self._styles.under(placement.style)
        block, wanted, skipped = placement.block, self._wanted, self._skipped
        if not self._open_blocks:
            entities = gone_through(entities, *_WALKED)
        for entity in entities:
            kind = entity.DXFTYPE
            # The attribute table itself: asking the entity one by one takes three times as long.
            own = vars(entity.dxf)
            style = table[
                own.get("layer", "0"), own.get("linetype", "BYLAYER"), own.get("color", 256)
            ]
            if kind in _SILENT or (style.own and self._passes_over(entity)):
                continue
            if self._hides(kind, style, own):
                continue
            handle = placement.handle(own.get("handle") or "")
            tag = Tag(kind, handle, style.layer, style.linetype, style.color, block)
            if kind not in CONVERTERS:
                self._other(entity, tag, style, placement)
                continue
            self._layers.add(style.layer)
            if wanted is not None and not wanted(tag):
                skipped[style.layer] += 1
            else:
                self._draw(entity, tag, placement)

    def _passes_over(self, entity: DXFGraphic) -> bool:
        """Return whether an entity stands among the marks of an earlier check, and say so if it is none."""
        if not entity.has_xdata(APPLICATION):
            self.tally.among_marks.add(entity.dxf.get("handle") or "")
        return True

    def _hides(self, kind: str, style: Style, own: Mapping[str, Any]) -> bool:
        """Return whether an entity is not seen, and count it."""
        if not (style.off or style.frozen or own.get("invisible")) or self._styles.all_layers:
            return False
        if style.frozen or (style.off and kind != "INSERT"):
            self.tally.hidden[style.layer] += 1
            return True
        if own.get("invisible"):
            self.tally.invisible.add(own.get("handle") or "")
            return True
        return False

    def _other(self, entity: DXFGraphic, tag: Tag, style: Style, placement: Placement) -> None:
        kind = tag.kind
        if isinstance(entity, Insert):
            self._insert(entity, tag, style, placement)
        elif kind in READERS or kind == "ATTRIB":
            self._layers.add(tag.layer)
            if isinstance(entity, Dimension):
                tag = replace(tag, kind=dimension_kind(entity))
            self._keep(READERS["TEXT" if kind == "ATTRIB" else kind], entity, tag, placement)
        else:
            self.tally.leave_out(kind, tag.handle)

    def _draw(self, entity: DXFGraphic, tag: Tag, placement: Placement) -> None:
        if isinstance(entity, Polyline) and entity.get_mode() in _MESHES:
            self.tally.leave_out(tag.kind, tag.handle)
        elif not self._keep(CONVERTERS[tag.kind], entity, tag, placement):
            self.tally.empty.add(tag.handle)

    def _keep(
        self,
        convert: Callable[..., Iterable[Raw]],
        entity: DXFGraphic,
        tag: Tag,
        placement: Placement,
    ) -> bool:
        """Gather what an entity comes to; return False if that is nothing."""
        try:
            made = list(convert(entity, tag, placement))
        except NumberError:
            self.tally.wild.add(tag.handle)
            return True
        except _DAMAGED:
            self.tally.broken.add(tag.handle)
            return True
        for item in made:
            if _is_wild(item):
                self.tally.wild.add(tag.handle)
                break
            if not isinstance(item, RawText) or item.text.strip():
                self._items.append(self._with_own_handle(item))
        return bool(made)

    def _with_own_handle(self, item: Raw) -> Raw:
        handle = item.tag.handle
        self._handles[handle] += 1
        count = self._handles[handle]
        if count == 1:
            return item
        return replace(item, tag=replace(item.tag, handle=f"{handle}.{count}"))

    def _insert(self, insert: Insert, tag: Tag, style: Style, placement: Placement) -> None:
        name = str(insert.dxf.name)
        block = self._blocks.get(name)
        if self._no_content(name, block, tag):
            return
        self._inserts += repeats(insert)
        if self._inserts > MOST_INSERTS:
            self.tally.crowded.add(tag.handle)
            return
        try:
            clipped = is_clipped(insert)
            inside = list(children(insert, style, placement))
            around = list(attribute_placements(insert, style, placement))
        except _DAMAGED:
            self.tally.broken.add(tag.handle)
            return
        if clipped:
            _group(self.tally.clipped, name).add(tag.handle)
        self._open_blocks.append(name.casefold())
        for inner in inside:
            self.walk(block or (), inner)
        self._open_blocks.pop()
        for outer in around:
            self.walk((attribute for attribute in insert.attribs if attribute.is_alive), outer)

    def _no_content(self, name: str, block: BlockLayout | None, tag: Tag) -> bool:
        """Return whether a block cannot be read, and count why."""
        if block is None:
            _group(self.tally.missing, name).add(tag.handle)
        elif block.block and (block.block.is_xref or block.block.is_xref_overlay):
            _group(self.tally.outside, name).add(tag.handle)
        elif name.casefold() in self._open_blocks:
            _group(self.tally.cyclic, name).add(tag.handle)
        else:
            return False
        return True


def _group(groups: dict[str, Group], name: str) -> Group:
    return groups.setdefault(printable(name), Group())


def _is_wild(item: Raw) -> bool:
    """Return whether a number is not finite or farther out than any building."""
    if isinstance(item, RawPath):
        return any(map(_far, (item.points, *item.holes)))
    if isinstance(item, RawText):
        return _far((item.at, (item.height, item.angle)))
    if isinstance(item, RawDimension):
        return _far((item.at, (item.measured, item.factor)))
    return _far(item.points)


def _far(points: Iterable[Point]) -> bool:
    return not all(-_FARTHEST < x < _FARTHEST and -_FARTHEST < y < _FARTHEST for x, y in points)
