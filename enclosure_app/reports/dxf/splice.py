"""Puts marks into a DXF file between its bytes, and takes earlier ones out.

Everything else stays letter by letter. What is put in: entities at the end of their layout, layers,
line types and names of extended data at the end of their tables (a table that the file lacks is
made), and where the file has handles, the next free one in its header. The number of entries in
the head of a table is left as it is: it is only a hint of how many there may be (DXF reference,
"Common group codes for symbol tables": maximum number of entries).
"""

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from itertools import count

from enclosure_app.errors import EnclosureError
from enclosure_app.files.dxf.own_marks import APPLICATION, PREFIX, is_own_layer
from enclosure_app.language import say
from enclosure_app.reports.dxf.entities import HYPERLINK, Host, Shape, entities
from enclosure_app.reports.dxf.layers import MarkLayer, line_type_tags
from enclosure_app.reports.dxf.records import R12, Bracket, DxfRecords, Record
from enclosure_app.reports.dxf.tags import Tags, encoded

_ROOM = 0x10000  # for what a reader adds of its own, such as the layers that every drawing has
_OF_LAYER_0 = (390, 347, 348)  # plot style, material, visual style: needed from R2000 and R2007


@dataclass(frozen=True, slots=True)
class _Edit:
    """Bytes that take the place of others; where `start` is `end`, they are put in."""

    start: int
    end: int
    put: bytes


def without_marks(data: bytes) -> bytes:
    """Return a drawing without the marks of an earlier run; layers and the like stay.

    Raises:
        EnclosureError: the file stops in the middle.
    """
    if PREFIX.encode() not in data.upper():
        return data
    file = DxfRecords(data)
    return _edited(data, [_Edit(r.start, r.end, b"") for r in _own_records(file)])


def with_marks(
    data: bytes,
    shapes: Iterable[Shape],
    layers: Sequence[MarkLayer],
    layout: str = "Model",
    dash_unit: float = 1.0,
) -> bytes:
    """Return a drawing with `shapes` in it, in place of those of an earlier run.

    `dash_unit` is how long a mm of a line type on paper is in drawing units.

    Raises:
        EnclosureError: the file stops in the middle, or has no such layout.
    """
    file = DxfRecords(without_marks(data))
    return _Splice(file).done(shapes, layers, layout, dash_unit)


class _Splice:
    """One file and what is to be put into it."""

    def __init__(self, file: DxfRecords) -> None:
        self._file = file
        self._modern = file.version > R12
        # What has no handle is given one by whoever reads it, counting from 1: ours leave room.
        first = max(file.handles, default=len(file.records) + _ROOM) + 1
        self._free = (n for n in count(first))
        self._last = 0

    def done(
        self, shapes: Iterable[Shape], layers: Sequence[MarkLayer], layout: str, dash_unit: float
    ) -> bytes:
        host, end = self._place(layout)
        edits = list(self._tables(layers, dash_unit))
        put = bytearray()
        for shape in shapes:
            for entity in entities(shape, host):
                put += encoded(entity.numbered(self._handle()), self._file)
        edits += [_Edit(end, end, bytes(put)), *self._seed()]
        return _edited(self._file.data, edits)

    def _handle(self) -> str:
        """Return a handle that nothing in the file has or names."""
        self._last = next(self._free)
        return f"{self._last:X}"

    def _place(self, layout: str) -> tuple[Host, int]:
        """Return what is to own the entities of a layout, and the place of its end in the file."""
        file = self._file
        end = file.records[file.sections["ENTITIES"].last].start
        if layout.casefold() == "model":
            return Host(file.version, self._owner("*MODEL_SPACE")), end
        raise EnclosureError(
            say(
                "Marks are written into the model only, and “{layout}” was checked: check the "
                "model, or write the marked-up sheet.",
                layout=layout,
            )
        )

    def _owner(self, name: str) -> str:
        if not self._modern or "BLOCK_RECORD" not in self._file.tables:
            return ""
        records = self._file.inside(self._file.tables["BLOCK_RECORD"])
        named = (r for r in records if self._file.first(r, 2).upper() == name)
        return next((self._file.first(record, 5) for record in named), "")

    def _tables(self, layers: Sequence[MarkLayer], dash_unit: float) -> Iterator[_Edit]:
        """Yield what makes the tables name all that marks need, and nothing twice."""
        wanted: dict[str, list[tuple[str, Tags]]] = {"LTYPE": [], "LAYER": [], "APPID": []}
        unit = dash_unit / self._line_scale()
        for layer in layers:
            if layer.dashes:
                wanted["LTYPE"].append(
                    (layer.line_type, line_type_tags(layer, unit, self._modern))
                )
        like_0 = self._like_layer_0()
        for layer in layers:
            wanted["LAYER"].append((layer.name, layer.tags(self._file.version, like_0)))
        wanted["APPID"] = [(name, [(70, 0)]) for name in (HYPERLINK, APPLICATION)]
        missing = bytearray()
        for table, entries in wanted.items():
            there = self._file.tables.get(table)
            put = self._entries(table, there, entries)
            if there:
                at = self._file.records[there.last].start
                yield _Edit(at, at, put)
            elif put:
                missing += self._whole_table(table, len(entries), put)
        yield from self._missing_tables(bytes(missing))

    def _entries(self, table: str, there: Bracket | None, wanted: list[tuple[str, Tags]]) -> bytes:
        """Return the entries that a table lacks."""
        records = self._file.inside(there) if there else []
        names = {self._file.first(record, 2).upper() for record in records}
        owner = self._table_owner(there)
        put = bytearray()
        for name, tags in wanted:
            if name.upper() not in names:
                put += encoded(self._entry(table, name, owner, tags), self._file)
        return bytes(put)

    def _entry(self, table: str, name: str, owner: str, tags: Tags) -> Tags:
        if not self._modern:
            return [(0, table), (5, self._handle()), (2, name), *tags]
        whose: Tags = [(330, owner)] if owner else []
        kind = {"LTYPE": "Linetype", "LAYER": "Layer", "APPID": "RegApp"}[table]
        markers: Tags = [(100, "AcDbSymbolTableRecord"), (100, f"AcDb{kind}TableRecord")]
        return [(0, table), (5, self._handle()), *whose, *markers, (2, name), *tags]

    def _table_owner(self, there: Bracket | None) -> str:
        """Return the handle of a table, if its entries name it as theirs."""
        if there is None or not self._modern:
            return ""
        file, records = self._file, self._file.inside(there)
        own = file.first(file.records[there.first], 5)
        return own if records and file.first(records[0], 330) == own else ""

    def _whole_table(self, name: str, number: int, entries: bytes) -> bytes:
        head: Tags = [(0, "TABLE"), (2, name), (5, self._handle())]
        if self._modern:
            head.append((100, "AcDbSymbolTable"))
        begins = encoded([*head, (70, number)], self._file)
        return begins + entries + encoded([(0, "ENDTAB")], self._file)

    def _missing_tables(self, tables: bytes) -> Iterator[_Edit]:
        """Yield tables that the file lacks, in the section for them, which it may lack too."""
        if not tables:
            return
        sections, records = self._file.sections, self._file.records
        if "TABLES" in sections:
            at = records[sections["TABLES"].last].start
            yield _Edit(at, at, tables)
            return
        following = [sections[n].first for n in ("BLOCKS", "ENTITIES") if n in sections]
        at = records[min(following)].start
        begins = encoded([(0, "SECTION"), (2, "TABLES")], self._file)
        yield _Edit(at, at, begins + tables + encoded([(0, "ENDSEC")], self._file))

    def _like_layer_0(self) -> Tags:
        """Return what layer 0 says of plotting and materials, so that ours are plotted alike."""
        there = self._file.tables.get("LAYER")
        for record in self._file.inside(there) if there else ():
            if self._file.first(record, 2) == "0":
                return [(t.code, t.text) for t in self._file.tags(record) if t.code in _OF_LAYER_0]
        return []

    def _line_scale(self) -> float:
        """Return by what the drawing multiplies the dashes of all lines."""
        tag = self._file.header.get("$LTSCALE")
        try:
            return abs(float(tag.text)) or 1.0 if tag else 1.0
        except ValueError:
            return 1.0

    def _seed(self) -> Iterator[_Edit]:
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
            start, end = _bare(self._file.data, tag.start, tag.end)
            yield _Edit(start, end, f"{self._last + 1:X}".encode())


def _own_records(file: DxfRecords) -> Iterator[Record]:
    """Yield the records of marks, wherever a program that read and wrote them has put them."""
    for name in ("BLOCKS", "ENTITIES"):
        for record in file.inside(file.sections[name]) if name in file.sections else ():
            if _is_own(file, record):
                yield record


def _is_own(file: DxfRecords, record: Record) -> bool:
    written = file.data[record.start : record.end]
    if APPLICATION.encode() not in written:
        return False
    tags = list(file.tags(record))
    layer = next((tag.text for tag in tags if tag.code == 8), "")
    return is_own_layer(layer) and any(t.code == 1001 and t.text == APPLICATION for t in tags)


def _bare(data: bytes, start: int, end: int) -> tuple[int, int]:
    """Return the place of a value without the blanks around it."""
    value = data[start:end]
    return start + len(value) - len(value.lstrip()), end - (len(value) - len(value.rstrip()))


def _edited(data: bytes, edits: Iterable[_Edit]) -> bytes:
    parts: list[bytes] = []
    done = 0
    for edit in sorted(edits, key=lambda edit: edit.start):
        parts += (data[done : edit.start], edit.put)
        done = edit.end
    return b"".join((*parts, data[done:]))
