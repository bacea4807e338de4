"""Files are opened in every release, form and code page, mended where damaged, or refused."""

import gc
import logging
import os
from pathlib import Path

import ezdxf
import pytest
from ezdxf.document import Drawing

from enclosure_app.errors import EnclosureError
from enclosure_app.files.dxf.content import content
from enclosure_app.files.dxf.document import Document, open_document
from enclosure_app.files.dxf.raw import RawPath, RawText
from enclosure_app.model.drawing import NoteLevel

WALL = ((100.0, 200.0), (100.0, 2700.0))


def one_wall(release: str = "R2010") -> Drawing:
    drawing = ezdxf.new(release)
    drawing.modelspace().add_line(*WALL)
    return drawing


def saved(drawing: Drawing, folder: Path, form: str = "asc") -> Path:
    path = folder / "wall.dxf"
    drawing.saveas(path, fmt=form)
    return path


def lines(document: Document) -> list[object]:
    return [item.points for item in content(document).items if isinstance(item, RawPath)]


@pytest.mark.parametrize("form", ["asc", "bin"])
@pytest.mark.parametrize("release", ["R12", "R2000", "R2004", "R2007", "R2010", "R2013", "R2018"])
def test_every_release_is_read_in_both_forms(release: str, form: str, tmp_path: Path) -> None:
    document = open_document(saved(one_wall(release), tmp_path, form))
    assert lines(document) == [WALL]
    assert document.version == release
    assert document.notes == ()


def test_units_and_layouts_are_read(tmp_path: Path) -> None:
    drawing = one_wall()
    drawing.header["$INSUNITS"] = 1
    drawing.header["$MEASUREMENT"] = 0
    drawing.layouts.new("Sheet A-301")
    document = open_document(saved(drawing, tmp_path))
    assert (document.insunits, document.measurement) == (1, 0)
    assert document.layouts == ("Layout1", "Sheet A-301")


def test_units_that_are_not_said_are_unknown(tmp_path: Path) -> None:
    path = tmp_path / "bare.dxf"
    path.write_text("0\nSECTION\n2\nENTITIES\n0\nLINE\n8\n0\n10\n0\n20\n0\n11\n3\n21\n4\n"
                    "0\nENDSEC\n0\nEOF\n")  # fmt: skip
    document = open_document(path)
    assert (document.insunits, document.measurement) == (0, None)
    assert lines(document) == [((0.0, 0.0), (3.0, 4.0))]


@pytest.mark.parametrize(
    ("name", "data", "reason"),
    [
        ("empty.dxf", b"", "is empty"),
        ("blank.dxf", b" \r\n\n", "is empty"),
        ("letter.dxf", b"Dear all,\nsee you on site.\n", "is not a DXF drawing"),
        ("roof.dwg", b"AC1032\x00\x00\x00\x00\x05\x00rest", "is a DWG drawing"),
        ("plan.dxf", b"%PDF-1.7\n...", "is a PDF"),
        ("plan.dxf", b"PK\x03\x04....", "is a ZIP archive"),
        ("noise.dxf", bytes(range(256)) * 40, "is not a DXF drawing"),
        ("cut.dxf", b"AutoCAD Binary DXF\r\n\x1a\x00", "is damaged so badly"),
    ],
)
def test_what_is_no_drawing_is_refused_in_one_sentence(
    name: str, data: bytes, reason: str, tmp_path: Path
) -> None:
    path = tmp_path / name
    path.write_bytes(data)
    with pytest.raises(EnclosureError) as refusal:
        open_document(path)
    said = str(refusal.value)
    assert said.startswith(f"“{path}” {reason}")
    assert ": " in said.split("”")[1]
    assert said.endswith(".")
    assert said.count(". ") == 0


def test_a_missing_file_is_refused(tmp_path: Path) -> None:
    with pytest.raises(EnclosureError, match=r"There is no file “.*gone\.dxf”: check its name"):
        open_document(tmp_path / "gone.dxf")


def test_a_folder_is_refused(tmp_path: Path) -> None:
    with pytest.raises(EnclosureError, match="is a folder: name a DXF file in it"):
        open_document(tmp_path)


def test_a_name_that_no_file_can_have_is_refused() -> None:
    with pytest.raises(EnclosureError, match="cannot be opened"):
        open_document(Path("x" * 5000))
    with pytest.raises(EnclosureError, match="cannot be opened"):
        open_document(Path("a\0b.dxf"))


def test_a_file_that_may_not_be_read_is_refused(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    path = saved(one_wall(), tmp_path)
    path.chmod(0)
    if os.access(path, os.R_OK):  # whoever may read everything meets the refusal by hand

        def refuse(*_: object, **__: object) -> None:
            raise PermissionError(13, "Permission denied")

        monkeypatch.setattr(Path, "open", refuse)
    with pytest.raises(EnclosureError, match="may not be read: ask for the right"):
        open_document(path)


@pytest.mark.parametrize(
    ("page", "word"),
    [("cp1252", "Außenwand"), ("cp1251", "СТЕНА"), ("cp1253", "ΤΟΙΧΟΣ"), ("cp932", "外壁")],
)
def test_the_code_page_of_the_file_is_used(page: str, word: str, tmp_path: Path) -> None:
    drawing = one_wall("R2000")
    drawing.encoding = page
    drawing.layers.add(word)
    drawing.modelspace().add_text(word, dxfattribs={"layer": word})
    document = open_document(saved(drawing, tmp_path))
    texts = [item for item in content(document).items if isinstance(item, RawText)]
    assert [(item.text, item.tag.layer) for item in texts] == [(word, word)]


def test_escaped_characters_are_decoded(tmp_path: Path) -> None:
    drawing = one_wall()
    drawing.layers.add("WAND-X")
    drawing.modelspace().add_text("CAF-X", dxfattribs={"layer": "WAND-X"})
    path = saved(drawing, tmp_path)
    text = path.read_text().replace("WAND-X", r"W\U+00C4NDE").replace("CAF-X", r"CAF\U+00C9")
    path.write_text(text)
    item = content(open_document(path)).items[1]
    assert isinstance(item, RawText)
    assert (item.text, item.tag.layer) == ("CAFÉ", "WÄNDE")


def test_bytes_that_do_not_fit_the_code_page_can_be_printed(tmp_path: Path) -> None:
    """A file that says UTF-8 and holds Western European bytes leaves lone surrogates behind."""
    drawing = one_wall()
    drawing.layers.add("W-X")
    drawing.modelspace().add_text("T-X", dxfattribs={"layer": "W-X"})
    path = saved(drawing, tmp_path)
    path.write_bytes(path.read_bytes().replace(b"W-X", b"W\xe4").replace(b"T-X", b"T\x81"))
    read = content(open_document(path))
    item = read.items[1]
    assert isinstance(item, RawText)
    assert (item.text, item.tag.layer) == ("T�", "Wä")
    assert read.layers == ("0", "Wä")


def test_repairs_of_one_kind_are_one_note_with_their_number(tmp_path: Path) -> None:
    drawing = one_wall()
    for number in range(500):
        drawing.modelspace().add_text(f"T{number}", dxfattribs={"style": "GONE"})
    path = saved(drawing, tmp_path)
    # A stray bracket makes the first attempt fail, so that the file is repaired.
    path.write_text(path.read_text().replace("  0\nSECTION", "  0\nENDSEC\n  0\nSECTION", 1))
    document = open_document(path)
    texts = [note.text for note in document.notes if note.level is NoteLevel.REPAIRED]
    assert "Repaired: use of a text style that is not defined (500 times)." in texts
    assert len(content(document).items) == 501


def test_an_ascii_file_cut_short_is_read_up_to_there(tmp_path: Path) -> None:
    drawing = ezdxf.new("R2010")
    for number in range(100):
        drawing.modelspace().add_line((number, 0), (number, 10))
    path = saved(drawing, tmp_path)
    data = path.read_bytes()
    path.write_bytes(data[: data.index(b"AcDbLine", data.index(b"ENTITIES") + 8000)])
    document = open_document(path)
    read = lines(document)
    assert len(read) > 20
    assert read == [((float(n), 0.0), (float(n), 10.0)) for n in range(len(read))]
    assert any("no end mark" in note.text for note in document.notes)


@pytest.mark.parametrize("share", [0.3, 0.5, 0.7, 0.8, 0.9, 0.95, 0.99])
@pytest.mark.parametrize("form", ["asc", "bin"])
def test_a_file_cut_anywhere_is_opened(form: str, share: float, tmp_path: Path) -> None:
    """Whatever is read was in the drawing; late cuts lose nothing that is drawn."""
    path = saved(one_wall("R2000"), tmp_path, form)
    data = path.read_bytes()
    path.write_bytes(data[: int(len(data) * share)])
    document = open_document(path)
    drawn = data.index(b"OBJECTS") / len(data)
    assert lines(document) == ([WALL] if share > drawn else [])
    assert any("no end mark" in note.text for note in document.notes)


def test_one_damaged_entity_does_not_cost_the_others(tmp_path: Path) -> None:
    drawing = one_wall()
    drawing.modelspace().add_line((0, 0), (77.5, 0), dxfattribs={"color": 123})
    path = saved(drawing, tmp_path)
    path.write_text(path.read_text().replace("\n 62\n123\n", "\n 62\nred\n"))
    document = open_document(path)
    assert WALL in lines(document)
    assert any(note.level is not NoteLevel.READ for note in document.notes)


def test_nothing_is_logged_and_nothing_stays_switched_off(
    tmp_path: Path, caplog: pytest.LogCaptureFixture, capsys: pytest.CaptureFixture[str]
) -> None:
    path = saved(one_wall(), tmp_path)
    handle = "\n  5\n2F\n"
    text = path.read_text()
    assert handle in text
    path.write_text(text.replace(handle, "\n  5\n1F\n"))
    before = logging.getLogger("ezdxf").propagate, list(logging.getLogger("ezdxf").handlers)
    document = open_document(path)
    assert any("handle given to several entities" in note.text for note in document.notes)
    assert caplog.records == []
    assert capsys.readouterr() == ("", "")
    after = logging.getLogger("ezdxf").propagate, list(logging.getLogger("ezdxf").handlers)
    assert after == before
    assert gc.isenabled()


@pytest.mark.parametrize(
    "start", [b"\xef\xbb\xbf", b"\n\n", b"999\nmade by hand\n"], ids=["mark", "blank", "comment"]
)
def test_what_stands_before_the_first_section_does_no_harm(start: bytes, tmp_path: Path) -> None:
    path = saved(one_wall(), tmp_path)
    path.write_bytes(start + path.read_bytes())
    assert lines(open_document(path)) == [WALL]


@pytest.mark.parametrize("end", [b"\r", b"\r\n"], ids=["CR", "CRLF"])
def test_every_kind_of_line_end_is_read(end: bytes, tmp_path: Path) -> None:
    path = saved(one_wall(), tmp_path)
    path.write_bytes(path.read_bytes().replace(b"\r\n", b"\n").replace(b"\n", end))
    assert lines(open_document(path)) == [WALL]
