"""From a file to an underlay, and with its project to a file and back."""

from dataclasses import replace
from io import BytesIO
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st
from PIL import Image

from enclosure_app.errors import EnclosureError
from enclosure_app.files.project.file import project_bytes, project_of
from enclosure_app.files.underlay import reading as underlay_reading
from enclosure_app.files.underlay.pdfium import POINT_MM
from enclosure_app.files.underlay.reading import (
    UnderlayFile,
    can_lie_under,
    read_underlay,
    read_underlay_file,
    small_picture,
)
from enclosure_app.model import edits
from enclosure_app.model.drawing import Units
from enclosure_app.model.project import Project
from enclosure_app.model.section import Section
from tests.made_pdf import made_pdf

LINE = "3 w 20 30 m 120 30 l S BT /F1 12 Tf 100 300 Td (OSB) Tj ET"


def put(folder: Path, name: str, data: bytes) -> Path:
    path = folder / name
    path.write_bytes(data)
    return path


def png(wide: int = 30, high: int = 20) -> bytes:
    held = BytesIO()
    Image.new("L", (wide, high), 255).save(held, "PNG", dpi=(300, 300))
    return held.getvalue()


def test_files_are_known_by_their_names() -> None:
    assert can_lie_under(Path("A.PDF"))
    assert can_lie_under(Path("scan.jpeg"))
    assert not can_lie_under(Path("eave.dxf"))


def test_a_picture_has_one_page(tmp_path: Path) -> None:
    file = read_underlay_file(put(tmp_path, "scan.png", png()))
    assert (file.pages, file.is_pdf) == (("1",), False)
    underlay = read_underlay(file).underlay
    assert (underlay.name, underlay.kind, underlay.size) == ("scan.png", "png", (30.0, 20.0))
    assert underlay.paper_mm == underlay.mm_per_pixel == pytest.approx(25.4 / 300, rel=1e-3)


def test_a_page_of_several_is_named(tmp_path: Path) -> None:
    file = read_underlay_file(put(tmp_path, "set.pdf", made_pdf("", LINE)))
    read = read_underlay(file, 1)
    assert (file.pages, file.is_pdf) == (("1", "2"), True)
    assert read.underlay.name == "set.pdf, page 2"
    assert (read.underlay.kind, read.underlay.size) == ("pdf", (420.0, 595.0))
    assert read.underlay.mm_per_pixel == read.underlay.paper_mm == POINT_MM
    assert len(read.lines.strokes) == len(read.lines.texts) == 1


def test_what_a_file_is_stands_in_it_and_not_in_its_name(tmp_path: Path) -> None:
    assert read_underlay_file(put(tmp_path, "scan.png", made_pdf(LINE))).is_pdf


def test_a_file_that_is_not_there_is_empty_or_too_large_is_refused(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    with pytest.raises(EnclosureError, match=r"no.pdf: there is no such file in"):
        read_underlay_file(tmp_path / "no.pdf")
    with pytest.raises(EnclosureError, match=r"a.pdf: the file is empty; scan or export it again"):
        read_underlay_file(put(tmp_path, "a.pdf", b""))
    monkeypatch.setattr(underlay_reading, "_LARGEST", 10)
    with pytest.raises(EnclosureError, match="too much for one picture; cut out the page"):
        read_underlay_file(put(tmp_path, "b.png", png()))


def test_small_pictures_of_pages_are_as_large_as_wanted() -> None:
    page = UnderlayFile("a.pdf", made_pdf("1 0 0 rg 0 0 420 595 re f"), ("1",))
    small = Image.open(BytesIO(small_picture(page, 0, 100)))
    assert small.size in ((71, 100), (71, 101))
    assert small.convert("RGB").getpixel((35, 50)) == (255, 0, 0)
    scan = Image.open(BytesIO(small_picture(UnderlayFile("a.png", png(300, 150), ("1",)), 0, 100)))
    assert scan.size == (100, 50)
    with pytest.raises(EnclosureError, match="cut short or is damaged"):
        small_picture(UnderlayFile("a.png", png(300, 150)[:80], ("1",)), 0, 100)


FILES = (UnderlayFile("scan.png", png(), ("1",)), UnderlayFile("a.pdf", made_pdf(LINE), ("1",)))


@given(
    st.sampled_from(FILES),
    st.floats(0.1, 1000),
    st.floats(-180, 180),
    st.tuples(st.floats(-1e5, 1e5), st.floats(-1e5, 1e5)),
    st.booleans(),
)
def test_a_project_with_an_underlay_is_the_same_after_saving_and_opening(
    file: UnderlayFile, scale: float, turn: float, by: tuple[float, float], shown: bool
) -> None:
    frame = ((0.0, 0.0), (9.0, 0.0), (9.0, 9.0))
    project = Project("House", Units.IN, (Section("Eave", frame, (), {}),))
    read = read_underlay(file)
    underlay = replace(read.underlay, section="Eave")
    project = edits.add_underlay(project, underlay, read.lines)
    project = edits.set_paper_scale(project, 0, scale)
    project = edits.turn_underlay(project, 0, turn)
    project = edits.move_underlay(project, 0, by)
    project = edits.show_underlay(project, 0, shown=shown, locked=True, strength=0.5)
    again = project_of(project_bytes(project, "a"), "a")
    assert again.underlays == project.underlays
    assert again.sections[0].strokes == project.sections[0].strokes
    assert again.sections[0].frame == project.sections[0].frame
