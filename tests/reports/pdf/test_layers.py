"""What is painted lies in layers that a reader can switch, and looks as it did without them."""

from dataclasses import replace
from pathlib import Path

import numpy as np
import pikepdf
import pypdf
import pytest
from numpy.typing import NDArray

from enclosure_app.drawing.marks import Fill, Mark, Overlay
from enclosure_app.drawing.sheet.job import SheetJob
from enclosure_app.drawing.sheet.sheet import compose_sheets
from enclosure_app.drawing.theme import load_theme
from enclosure_app.reports.pdf.document import write_document
from enclosure_app.reports.pdf.layers import layered
from enclosure_app.reports.pdf.outline import About
from enclosure_app.reports.pdf.pages import PaintedPage, painted
from tests.drawing import eave
from tests.reports.rendering import complaints, pictures

pytestmark = pytest.mark.usefixtures("qapp")

Picture = NDArray[np.uint8]


def square(x: float, colour: str, *overlays: Overlay) -> Mark:
    ring = ((x, 10.0), (x + 10.0, 10.0), (x + 10.0, 20.0), (x, 20.0))
    return Fill((ring,), colour, overlays=overlays)


def written(path: Path, *marks: Mark, size: tuple[float, float] = (120.0, 30.0)) -> Path:
    write_document(path, [PaintedPage(*size, marks)], About("squares"))
    return path


def without(path: Path, *names: str) -> Path:
    """The same file with some of its layers switched off, as a reader would do it."""
    with pikepdf.open(path) as pdf:
        groups = pdf.Root.OCProperties.OCGs
        off = [group for group in groups if str(group.Name) in names]
        assert len(off) == len(names)
        pdf.Root.OCProperties.D.OFF = pikepdf.Array(off)
        changed = path.with_name("switched.pdf")
        pdf.save(changed)
    return changed


def seen(path: Path) -> dict[str, bool]:
    """Which of the squares at 10, 30, 50 and 70 mm are dark."""
    (picture,) = pictures(path)
    return {
        name: bool(picture[59, round((x + 5.0) / 25.4 * 100)].mean() < 128)
        for name, x in (("none", 10), ("water", 30), ("air", 50), ("both", 70))
    }


FOUR = (
    square(10, "#000000"),
    square(30, "#000000", Overlay.WATER),
    square(50, "#000000", Overlay.AIR),
    square(70, "#000000", Overlay.WATER, Overlay.AIR),
)


def test_a_layer_that_is_switched_off_takes_its_marks_along_and_no_others(tmp_path: Path) -> None:
    path = written(tmp_path / "squares.pdf", *FOUR)
    assert seen(path) == {"none": True, "water": True, "air": True, "both": True}
    no_water = seen(without(path, "Water"))
    assert no_water == {"none": True, "water": False, "air": True, "both": True}
    neither = seen(without(path, "Water", "Air"))
    assert neither == {"none": True, "water": False, "air": False, "both": False}


def test_a_finding_upon_a_layer_is_seen_with_both_of_them_only(tmp_path: Path) -> None:
    marks = square(10, "#000000", Overlay.FINDINGS, Overlay.AIR), *FOUR[2:3]
    path = written(tmp_path / "squares.pdf", *marks)
    assert seen(path)["none"]
    assert not seen(without(path, "Air"))["none"]
    assert not seen(without(path, "Findings"))["none"]


def test_only_layers_that_something_lies_on_are_offered_all_switched_on(tmp_path: Path) -> None:
    path = written(tmp_path / "squares.pdf", *FOUR)
    properties = pypdf.PdfReader(path).trailer["/Root"]["/OCProperties"]
    assert [group["/Name"] for group in properties["/OCGs"]] == ["Water", "Air"]
    shown = properties["/D"]
    assert [group["/Name"] for group in shown["/Order"]] == ["Water", "Air"]
    assert shown["/BaseState"] == "/ON"
    assert "/OFF" not in shown


def test_a_document_without_overlays_has_no_layers(tmp_path: Path) -> None:
    path = written(tmp_path / "plain.pdf", square(10, "#000000"))
    assert "/OCProperties" not in pypdf.PdfReader(path).trailer["/Root"]


def test_later_marks_cover_earlier_ones_of_other_layers(tmp_path: Path) -> None:
    over = written(
        tmp_path / "over.pdf",
        square(10, "#000000", Overlay.AIR),
        square(10, "#ffffff", Overlay.HEAT),
    )
    assert not seen(over)["none"]
    assert seen(without(over, "Heat"))["none"]


def test_a_page_is_one_again_however_many_runs_it_has(tmp_path: Path) -> None:
    marks = [square(10 + k % 7, "#000000", list(Overlay)[k % 6]) for k in range(500)]
    painting = painted([PaintedPage(120, 30, tuple(marks)), PaintedPage(60, 30, FOUR[:1])])
    pdf, groups = layered(painting)
    assert len(pdf.pages) == 2
    assert set(groups) == set(Overlay)
    assert [round(float(page.mediabox[2])) for page in pdf.pages] == [340, 170]


@pytest.fixture(scope="module")
def both(qapp: object, tmp_path_factory: pytest.TempPathFactory) -> tuple[Path, Path]:
    """A sheet with its layers, and the same without any."""
    folder = tmp_path_factory.mktemp("sheets")
    theme = load_theme()
    pages = compose_sheets((eave.drawing(), eave.drawing(eave.crowded())), SheetJob(), theme)
    marks = [page.numbered(number, len(pages), theme) for number, page in enumerate(pages, 1)]
    bare = [tuple(replace(mark, overlays=()) for mark in each) for each in marks]
    for name, painted_marks in (("layered", marks), ("bare", bare)):
        sheets = [PaintedPage(420.0, 297.0, each) for each in painted_marks]
        write_document(folder / f"{name}.pdf", sheets, About(name))
    return folder / "layered.pdf", folder / "bare.pdf"


def test_a_sheet_looks_exactly_as_it_does_without_layers(both: tuple[Path, Path]) -> None:
    """Dot by dot, by poppler at 100 dpi."""
    layers, bare = (pictures(path) for path in both)
    assert len(layers) == len(bare) > 2
    for one, other in zip(layers, bare, strict=True):
        assert one.min() < 64  # there is something to be compared
        assert np.array_equal(one, other)


def test_a_sheet_has_its_six_layers_and_is_clean(both: tuple[Path, Path]) -> None:
    properties = pypdf.PdfReader(both[0]).trailer["/Root"]["/OCProperties"]
    names = [group["/Name"] for group in properties["/OCGs"]]
    assert names == ["Linework", "Water", "Air", "Vapour", "Heat", "Findings"]
    assert complaints(both[0]) == ""


def test_each_layer_of_a_sheet_can_be_taken_away(both: tuple[Path, Path]) -> None:
    before = pictures(both[0], 50)[0]
    for name in ("Linework", "Water", "Air", "Vapour", "Heat", "Findings"):
        after = pictures(without(both[0], name), 50)[0]
        gone = (before.mean(axis=2) < 200) & (after.mean(axis=2) > before.mean(axis=2) + 30)
        assert gone.sum() > 20, name
