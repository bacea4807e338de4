"""What marks need in the tables of a drawing: put in once, a table made where there is none."""

from itertools import count

from enclosure_app.drawing.theme import load_theme
from enclosure_app.files.dxf.records import DxfRecords
from enclosure_app.reports.dxf.edits import edited
from enclosure_app.reports.dxf.layers import mark_layers
from enclosure_app.reports.dxf.tables import Tables
from tests.reports.dxf_drawings import written

LAYERS = mark_layers(load_theme())


def put(data: bytes) -> bytes:
    file, free = DxfRecords(data), count(0xF000)
    return edited(data, Tables(file, lambda: f"{next(free):X}").edits(LAYERS, 1.0))


def names(data: bytes, table: str) -> list[str]:
    file = DxfRecords(data)
    return [file.first(each, 2) for each in file.inside(file.tables[table])]


def test_each_table_gets_what_it_lacks_at_its_end_and_nothing_twice() -> None:
    before = written("R2010", "lf")
    once = put(before)
    for table in ("LAYER", "LTYPE", "APPID"):
        there, now = names(before, table), names(once, table)
        assert now[: len(there)] == there
        assert len(set(now)) == len(now) > len(there)
    assert {layer.name for layer in LAYERS} <= set(names(once, "LAYER"))
    assert put(once) == once


def test_tables_that_a_file_lacks_are_made() -> None:
    bare = b"0\nSECTION\n2\nENTITIES\n0\nENDSEC\n0\nEOF\n"
    once = put(bare)
    assert names(once, "LAYER") == [layer.name for layer in LAYERS]
    assert names(once, "APPID") == ["PE_URL", "ENCLOSURE_CHECK"]
    assert put(once) == once
