"""The records of a DXF file and their bytes, held against the library's own reading of the groups."""

from io import StringIO

import pytest
from ezdxf.lldxf.tagger import ascii_tags_loader, binary_tags_loader

from enclosure_app.errors import EnclosureError
from enclosure_app.files.dxf.records import DxfRecords
from tests.reports.dxf_drawings import FORMS, VERSIONS, written


def library_groups(data: bytes, form: str) -> list[tuple[int, str]]:
    """Return the groups as the library reads them, numbers of binary files left out."""
    if form == "binary":
        tags = binary_tags_loader(data)
        return [(t.code, t.value) for t in tags if isinstance(t.value, str)]
    text = data.decode("latin-1").replace("\r\n", "\n")
    return [(t.code, t.value.strip()) for t in ascii_tags_loader(StringIO(text))]


@pytest.mark.parametrize("form", FORMS)
@pytest.mark.parametrize("version", VERSIONS)
def test_records_follow_each_other_without_a_byte_between(version: str, form: str) -> None:
    data = written(version, form)
    file = DxfRecords(data)
    ends = [record.end for record in file.records]
    assert [record.start for record in file.records[1:]] == ends[:-1]
    assert ends[-1] == len(data)
    assert file.records[0].kind == "SECTION"
    assert file.records[-1].kind == "EOF"
    assert list(file.sections)[:2] == ["HEADER", "TABLES"] or version != "R12"
    assert {"LTYPE", "LAYER", "APPID"} <= set(file.tables)


@pytest.mark.parametrize("form", FORMS)
@pytest.mark.parametrize("version", ["R12", "R2000", "R2018"])
def test_groups_are_those_that_the_library_reads(version: str, form: str) -> None:
    data = written(version, form)
    file = DxfRecords(data)
    groups = [(t.code, t.text) for record in file.records for t in file.tags(record)]
    kinds = [text for code, text in groups if code == 0]
    handles = [text for code, text in groups if code == 5]
    names = [text for code, text in groups if code == 8]
    told = library_groups(data, form)
    assert kinds == [text for code, text in told if code == 0]
    assert handles == [text for code, text in told if code == 5]
    assert len(names) == len([text for code, text in told if code == 8])


@pytest.mark.parametrize("form", FORMS)
def test_a_value_stands_where_it_is_said_to(form: str) -> None:
    data = written("R2000", form)
    tag = DxfRecords(data).header["$ACADVER"]
    assert (tag.text, data[tag.start : tag.end].strip()) == ("AC1015", b"AC1015")


def test_handles_are_gathered_and_the_free_one_is_none_of_them() -> None:
    file = DxfRecords(written("R2010", "lf"))
    free = int(file.header["$HANDSEED"].text, 16)
    assert 0xABCD in file.handles
    assert free not in file.handles


def test_lines_that_make_no_sense_are_stepped_over() -> None:
    data = b"junk\n  0\nSECTION\n  2\nENTITIES\nmore junk\n  0\nLINE\n  5\nnot hex\n  0\nENDSEC\n  0\nEOF\ntail"
    file = DxfRecords(data)
    assert [record.kind for record in file.records] == ["SECTION", "LINE", "ENDSEC", "EOF"]
    assert (file.handles, file.version, file.header) == (set(), "AC1009", {})


@pytest.mark.parametrize("data", [b"", b"  0\nSECTION\n  2\nENTITIES\n  0\nLINE\n", b"no drawing"])
def test_what_has_no_end_is_refused(data: bytes) -> None:
    with pytest.raises(EnclosureError, match="get the whole file again"):
        DxfRecords(data)


@pytest.mark.parametrize(
    ("data", "end"),
    [(b"  0\r\nSECTION", b"\r\n"), (b"  0\nSECTION", b"\n"), (b"  0\rSECTION", b"\r")],
)
def test_lines_end_as_the_first_one_does(data: bytes, end: bytes) -> None:
    rest = end.join((b"", b"  2", b"ENTITIES", b"  0", b"ENDSEC", b"  0", b"EOF", b""))
    file = DxfRecords(data + rest)
    assert file.end_of_line == end
    assert [record.kind for record in file.records] == ["SECTION", "ENDSEC", "EOF"]
