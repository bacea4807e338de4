"""Entries that marks need in the tables of a DXF file: layers, line types, names of extended data.

They go to the end of their tables; a table that the file lacks is made, and what is there already is
not put in again. The number of entries in the head of a table is left as it is: it is only a hint
of how many there may be (DXF reference, "Common group codes for symbol tables": maximum number of
entries).
"""

from collections.abc import Callable, Iterator, Sequence

from enclosure_app.files.dxf.own_marks import APPLICATION
from enclosure_app.files.dxf.records import R12, Bracket, DxfRecords
from enclosure_app.reports.dxf.edits import Edit
from enclosure_app.reports.dxf.entities import HYPERLINK
from enclosure_app.reports.dxf.layers import MarkLayer, line_type_tags
from enclosure_app.reports.dxf.tags import Tags, encoded

_OF_LAYER_0 = (390, 347, 348)  # plot style, material, visual style: needed from R2000 and R2007


class Tables:
    """The tables of one file; `handle` gives a handle that nothing in it has."""

    def __init__(self, file: DxfRecords, handle: Callable[[], str]) -> None:
        self._file = file
        self._handle = handle
        self._modern = file.version > R12

    def edits(self, layers: Sequence[MarkLayer], dash_unit: float) -> Iterator[Edit]:
        """Yield what makes the tables name all that marks need, and nothing twice.

        `dash_unit` is how long a mm of a line type on paper is in drawing units.
        """
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
                yield Edit(at, at, put)
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

    def _missing_tables(self, tables: bytes) -> Iterator[Edit]:
        """Yield tables that the file lacks, in the section for them, which it may lack too."""
        if not tables:
            return
        sections, records = self._file.sections, self._file.records
        if "TABLES" in sections:
            at = records[sections["TABLES"].last].start
            yield Edit(at, at, tables)
            return
        following = [sections[n].first for n in ("BLOCKS", "ENTITIES") if n in sections]
        at = records[min(following)].start
        begins = encoded([(0, "SECTION"), (2, "TABLES")], self._file)
        yield Edit(at, at, begins + tables + encoded([(0, "ENDSEC")], self._file))

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
