"""Puts marks into a DXF file between its bytes, and takes earlier ones out.

Everything else stays letter by letter. What is put in: entities at the end of their layout, what
they need in the tables, and where the file has handles, the next free one in its header.
"""

from collections.abc import Iterable, Iterator, Mapping, Sequence
from itertools import count

from enclosure_app.errors import EnclosureError
from enclosure_app.files.dxf.own_marks import PREFIX, own_records
from enclosure_app.files.dxf.records import R12, DxfRecords, Record
from enclosure_app.language import say
from enclosure_app.reports.dxf.edits import Edit, bare, edited
from enclosure_app.reports.dxf.entities import Host, Shape, entities
from enclosure_app.reports.dxf.layers import MarkLayer
from enclosure_app.reports.dxf.tables import Tables
from enclosure_app.reports.dxf.tags import encoded

MODEL = "*Model_Space"
"""The name of the block that holds the model."""
_PAPER = "*Paper_Space"  # of the layout on paper that was shown last; others have a number behind
_ROOM = 0x10000  # for what a reader adds of its own, such as the layers that every drawing has


def without_marks(data: bytes) -> bytes:
    """Return a drawing without the marks of an earlier run; layers and the like stay.

    Raises:
        EnclosureError: the file stops in the middle.
    """
    if PREFIX.encode() not in data.upper():
        return data
    file = DxfRecords(data)
    return edited(data, [Edit(r.start, r.end, b"") for r in own_records(file)])


def with_marks(
    data: bytes,
    shapes: Mapping[str, Iterable[Shape]],
    layers: Sequence[MarkLayer],
    dash_unit: float = 1.0,
) -> bytes:
    """Return a drawing with marks in it, in place of those of an earlier run.

    `shapes` are those of each layout, by the name of its block. `dash_unit` is how long a mm of a
    line type on paper is in drawing units.

    Raises:
        EnclosureError: the file stops in the middle, or has no such layout.
    """
    file = DxfRecords(without_marks(data))
    return _Splice(file).done(shapes, layers, dash_unit)


class _Splice:
    """One file and what is to be put into it."""

    def __init__(self, file: DxfRecords) -> None:
        self._file = file
        # What has no handle is given one by whoever reads it, counting from 1: ours leave room.
        first = max(file.handles, default=len(file.records) + _ROOM) + 1
        self._free = (n for n in count(first))
        self._last = 0

    def done(
        self,
        shapes: Mapping[str, Iterable[Shape]],
        layers: Sequence[MarkLayer],
        dash_unit: float,
    ) -> bytes:
        places = {block: self._place(block) for block in shapes}
        edits = list(Tables(self._file, self._handle).edits(layers, dash_unit))
        for block, (host, end) in places.items():
            edits.append(Edit(end, end, self._entities(shapes[block], host)))
        return edited(self._file.data, [*edits, *self._seed()])

    def _entities(self, shapes: Iterable[Shape], host: Host) -> bytes:
        put = bytearray()
        for shape in shapes:
            for entity in entities(shape, host):
                put += encoded(entity.numbered(self._handle()), self._file)
        return bytes(put)

    def _handle(self) -> str:
        """Return a handle that nothing in the file has or names."""
        self._last = next(self._free)
        return f"{self._last:X}"

    def _place(self, block: str) -> tuple[Host, int]:
        """Return what is to own the entities of a layout, and the place of its end in the file."""
        file, owner = self._file, self._owner(block)
        if block.upper() in (MODEL.upper(), _PAPER.upper()):
            end = file.records[file.sections["ENTITIES"].last]
        else:
            end = self._end_of_block(block)
        on_paper = block.upper() != MODEL.upper()
        return Host(file.version, owner, on_paper=on_paper), end.start

    def _end_of_block(self, block: str) -> Record:
        """Return the record before which the entities of a block end."""
        within = False
        for record in self._inside("BLOCKS"):
            if record.kind == "BLOCK":
                within = self._file.first(record, 2).upper() == block.upper()
            elif within and record.kind == "ENDBLK":
                return record
        raise EnclosureError(
            say(
                "The layout that was checked is not written in the drawing where the format asks "
                "for it: open it in a CAD program and save it again as DXF."
            )
        )

    def _inside(self, section: str) -> list[Record]:
        there = self._file.sections.get(section)
        return self._file.inside(there) if there else []

    def _owner(self, name: str) -> str:
        """Return the handle of a block's record, "" where the file has none."""
        there = self._file.tables.get("BLOCK_RECORD")
        if there is None or self._file.version <= R12:
            return ""
        records = self._file.inside(there)
        named = (r for r in records if self._file.first(r, 2).upper() == name.upper())
        return next((self._file.first(record, 5) for record in named), "")

    def _seed(self) -> Iterator[Edit]:
        """Yield the next free handle in the header, if ours have taken what it says.

        One that was wrong before stays so: whoever reads the drawing has to find a better one.
        """
        tag = self._file.header.get("$HANDSEED")
        if tag is None:
            return
        try:
            free = int(tag.text, 16)
        except ValueError:
            return
        if max(self._file.handles, default=0) < free <= self._last:
            start, end = bare(self._file.data, tag.start, tag.end)
            yield Edit(start, end, f"{self._last + 1:X}".encode())
