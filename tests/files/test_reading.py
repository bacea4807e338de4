"""From a DXF file to sections, end to end; the files are written by ezdxf."""

import tomllib
from collections.abc import Callable
from dataclasses import replace
from itertools import pairwise
from pathlib import Path
from time import process_time
from typing import Any

import ezdxf
import pytest
from ezdxf.document import Drawing as Dxf

from enclosure_app.errors import EnclosureError, ListedError
from enclosure_app.files import reading
from enclosure_app.files.dxf.document import open_document
from enclosure_app.files.framing.extents import box_of
from enclosure_app.files.maps.catalogue import load_products
from enclosure_app.files.maps.layer_map import LayerMap, LayerRow, load_layer_map
from enclosure_app.files.reading import ReadOptions, read_drawing
from enclosure_app.model.drawing import Drawing, NoteLevel, Units
from enclosure_app.model.place import Area, Line
from enclosure_app.model.section import DOWN
from enclosure_app.resources import sample

ROWS = (
    LayerRow("SHEET", product="housewrap"),
    LayerRow("FLASH*", product="drip-edge"),
    LayerRow("BOARD", product="osb"),
    LayerRow("PLY", product="plywood"),
    LayerRow("CROP", role="frame"),
    LayerRow("CUT", role="break"),
    LayerRow("HIDE", role="ignore"),
)
MAP = LayerMap(ROWS, load_products())
OPTIONS = ReadOptions(layer_map=MAP)
CODES = {Units.MM: 4, Units.IN: 1, Units.FT: 2, Units.M: 6}


def rectangle(x0: float, y0: float, x1: float, y1: float) -> list[tuple[float, float]]:
    return [(x0, y0), (x1, y0), (x1, y1), (x0, y1)]


def wall(units: Units = Units.MM, code: int | None = None) -> Dxf:
    """A wall in one frame: sheet of two lines, flashing as an outline, board as hatch and line."""
    document = ezdxf.new("R2010")
    document.header["$INSUNITS"] = CODES[units] if code is None else code
    space, per = document.modelspace(), 1 / units.in_mm

    def at(*points: tuple[float, float]) -> list[tuple[float, float]]:
        return [(x * per, y * per) for x, y in points]

    def ring(layer: str, *points: tuple[float, float]) -> None:
        space.add_lwpolyline(at(*points), close=True, dxfattribs={"layer": layer})

    ring("CROP", *rectangle(0, 0, 2000, 3000))
    space.add_line(*at((1000, -100), (1000, 1500)), dxfattribs={"layer": "SHEET"})
    space.add_line(*at((1000, 3100), (1000, 1500)), dxfattribs={"layer": "SHEET"})
    ring("FLASHING", (950, 1500), (953, 1500), (953, 1600), (950, 1600))
    ring("BOARD", *rectangle(1005, 0, 1016, 3000))
    hatch = space.add_hatch(dxfattribs={"layer": "BOARD"})
    hatch.paths.add_polyline_path(at(*rectangle(1005, 0, 1016, 3000)), is_closed=True)
    space.add_circle(at((500, 500))[0], 40 * per, dxfattribs={"layer": "OTHER"})
    for text, place, height in (
        ("OUTSIDE", (300, 1500), 40),
        ("INSIDE", (1700, 1500), 40),
        ("WALL AT THE LEDGE", (200, -200), 60),
        ("SCALE 1:10", (200, -300), 80),
    ):
        style = {"layer": "TEXT", "insert": at(place)[0], "height": height * per}
        space.add_text(text, dxfattribs=style)
    return document


def bare_wall() -> Dxf:
    """A sheet between two marks, in a file that names no units."""
    document = ezdxf.new("R2010")
    document.header["$INSUNITS"] = 0
    space = document.modelspace()
    space.add_line((0, 0), (0, 2500), dxfattribs={"layer": "SHEET"})
    space.add_text("OUTSIDE", dxfattribs={"insert": (-400, 1000), "height": 30})
    space.add_text("INSIDE", dxfattribs={"insert": (400, 1000), "height": 30})
    return document


@pytest.fixture
def saved(tmp_path: Path) -> Callable[[Dxf], Path]:
    def save(document: Dxf) -> Path:
        path = tmp_path / "wall.dxf"
        document.saveas(path)
        return path

    return save


def rounded(shape: Line | Area) -> tuple[object, ...]:
    if isinstance(shape, Line):
        points = tuple((round(x, 3), round(y, 3)) for x, y in shape.points)
        return points, round(shape.width, 3), shape.closed
    return tuple((round(x, 3), round(y, 3)) for x, y in shape.outer)


@pytest.mark.parametrize("units", [Units.MM, Units.IN, Units.FT, Units.M])
def test_a_wall_is_the_same_wall_in_any_unit(units: Units, saved: Callable[[Dxf], Path]) -> None:
    drawing = read_drawing(saved(wall(units)), OPTIONS)
    (section,) = drawing.sections
    assert drawing.units is units
    assert section.name == "WALL AT THE LEDGE"
    assert section.gravity == DOWN
    assert section.frame_drawn
    assert {p.product: rounded(p.shape) for p in section.pieces} == {
        "housewrap": (((1000, 0), (1000, 3000)), 0, False),
        "drip-edge": (((951.5, 1500), (951.5, 1600)), 3, False),
        "osb": ((1005, 0), (1016, 0), (1016, 3000), (1005, 3000)),
    }
    assert section.inside == (pytest.approx((1700, 1500)),)
    assert section.outside == (pytest.approx((300, 1500)),)


def test_pieces_are_named_after_their_handles(saved: Callable[[Dxf], Path]) -> None:
    path = saved(wall())
    handles = {e.dxf.handle for e in ezdxf.filemanagement.readfile(path).modelspace()}
    (section,) = read_drawing(path, OPTIONS).sections
    assert {p.name for p in section.pieces} < handles
    sheet = next(p for p in section.pieces if p.product == "housewrap")
    assert len(sheet.handles) == 2
    assert sheet.name == min(sheet.handles, key=lambda h: int(h, 16))


def test_layers_without_a_row_are_named_once(saved: Callable[[Dxf], Path]) -> None:
    drawing = read_drawing(saved(wall()), OPTIONS)
    ignored = [note.text for note in drawing.notes if note.level is NoteLevel.IGNORED]
    assert ignored == ["Nothing is said of layer “OTHER”: linework only."]


def test_without_linework_nothing_but_pieces_is_delivered(saved: Callable[[Dxf], Path]) -> None:
    (section,) = read_drawing(saved(wall()), OPTIONS).sections
    assert section.strokes == ()
    assert section.texts == ()


def test_linework_is_what_is_no_piece(saved: Callable[[Dxf], Path]) -> None:
    (section,) = read_drawing(saved(wall()), replace(OPTIONS, linework=True)).sections
    assert {stroke.layer for stroke in section.strokes} == {"OTHER"}
    assert [text.text for text in section.texts] == ["OUTSIDE", "INSIDE"]


def test_a_layer_to_ignore_is_not_even_linework(saved: Callable[[Dxf], Path]) -> None:
    document = wall()
    document.modelspace().add_line((0, 0), (9, 9), dxfattribs={"layer": "HIDE"})
    (section,) = read_drawing(saved(document), replace(OPTIONS, linework=True)).sections
    assert "HIDE" not in {stroke.layer for stroke in section.strokes}


def test_no_units_and_no_evidence_is_a_question(saved: Callable[[Dxf], Path]) -> None:
    with pytest.raises(EnclosureError, match=r"wall\.dxf does not say in which units"):
        read_drawing(saved(bare_wall()), OPTIONS)


def test_thicknesses_of_known_products_answer_it(saved: Callable[[Dxf], Path]) -> None:
    """An OSB board and a plywood board, 11 and 12 units thick."""
    document = bare_wall()
    for layer, *box in (("BOARD", 500, 0, 511, 900), ("PLY", 600, 0, 612, 900)):
        document.modelspace().add_lwpolyline(
            rectangle(*box), close=True, dxfattribs={"layer": layer}
        )
    drawing = read_drawing(saved(document), OPTIONS)
    assert drawing.units is Units.MM
    assert any("as thick as its products are in millimetres" in n.text for n in drawing.notes)


def test_told_units_win_and_contradicting_the_file_is_noted(
    saved: Callable[[Dxf], Path],
) -> None:
    drawing = read_drawing(saved(wall(Units.IN, code=4)), replace(OPTIONS, units=Units.IN))
    assert drawing.units is Units.IN
    assert drawing.sections[0].frame[2] == pytest.approx((2000, 3000))
    assert "The file says millimetres; it is read in inches, as told." in {
        note.text for note in drawing.notes
    }


def test_dimensions_in_feet_and_inches_overrule_a_default_header(
    saved: Callable[[Dxf], Path],
) -> None:
    """A drawing in inches whose header says metres, as programs write by default."""
    document = wall(Units.IN, code=6)
    space = document.modelspace()
    for y in (0.0, 30.0):
        space.add_linear_dim(base=(0, y), p1=(0, y), p2=(64, y), text="5'-4\"").render()
    drawing = read_drawing(saved(document), OPTIONS)
    assert drawing.units is Units.IN
    assert any("is read in inches" in note.text for note in drawing.notes)


def test_curves_are_as_fine_in_metres_as_in_millimetres(saved: Callable[[Dxf], Path]) -> None:
    """An arc of 1 m in a drawing in metres lies within 0.1 mm of the true one."""
    document = wall(Units.M, code=0)
    document.modelspace().add_arc((1.5, 1.5), 0.2, 0, 90, dxfattribs={"layer": "SHEET"})
    for y in (1, 2):
        document.modelspace().add_linear_dim(
            base=(0, y), p1=(0, y), p2=(1.2, y), text="1200 mm"
        ).render()
    drawing = read_drawing(saved(document), OPTIONS)
    assert drawing.units is Units.M
    arc = max(
        (p.shape.points for p in drawing.sections[0].pieces if isinstance(p.shape, Line)), key=len
    )
    middles = [((a[0] + b[0]) / 2, (a[1] + b[1]) / 2) for a, b in pairwise(arc)]
    assert all(199.89 <= ((x - 1500) ** 2 + (y - 1500) ** 2) ** 0.5 <= 200.01 for x, y in middles)


def test_nothing_mapped_names_the_layers_and_the_mend(saved: Callable[[Dxf], Path]) -> None:
    options = ReadOptions(layer_map=LayerMap((), load_products()))
    with pytest.raises(EnclosureError, match=r"“BOARD”, “CROP”.*--layers MAP\.toml"):
        read_drawing(saved(wall()), options)


def test_the_window_opens_a_drawing_of_which_nothing_is_mapped(
    saved: Callable[[Dxf], Path],
) -> None:
    options = ReadOptions(
        layer_map=LayerMap((), load_products()), linework=True, require_marks=False
    )
    (section,) = read_drawing(saved(wall()), options).sections
    assert section.pieces == ()
    assert {stroke.layer for stroke in section.strokes} >= {"SHEET", "BOARD", "OTHER"}


def test_missing_marks_of_all_sections_are_listed_at_once(saved: Callable[[Dxf], Path]) -> None:
    document = wall()
    for text in document.modelspace().query("TEXT"):
        if text.dxf.text in ("INSIDE", "OUTSIDE"):
            document.modelspace().delete_entity(text)
    path = saved(document)
    with pytest.raises(ListedError) as caught:
        read_drawing(path, OPTIONS)
    assert caught.value.sentences == (
        f"{path}: no inside mark in section WALL AT THE LEDGE: "
        "give --inside X,Y or write the word INSIDE in the room.",
        f"{path}: no outside mark in section WALL AT THE LEDGE: "
        "give --outside X,Y or write the word OUTSIDE in the open.",
    )


def test_told_marks_override_the_words(saved: Callable[[Dxf], Path]) -> None:
    (section,) = read_drawing(saved(wall()), replace(OPTIONS, inside=((1800, 9),))).sections
    assert section.inside == ((1800, 9),)
    assert section.outside == (pytest.approx((300, 1500)),)


def test_told_marks_are_in_the_drawings_own_units(saved: Callable[[Dxf], Path]) -> None:
    told = replace(OPTIONS, units=Units.CM, inside=((1800, 9),))
    (section,) = read_drawing(saved(wall()), told).sections
    assert section.inside == ((18000, 90),)


def test_a_told_mark_outside_every_frame_is_refused(saved: Callable[[Dxf], Path]) -> None:
    with pytest.raises(EnclosureError, match=r"--inside 9000,9 .* lies in no frame"):
        read_drawing(saved(wall()), replace(OPTIONS, inside=((9000, 9),)))


def test_without_a_map_layers_are_guessed_and_said(saved: Callable[[Dxf], Path]) -> None:
    document = ezdxf.new("R2010")
    document.header["$INSUNITS"] = 4
    space = document.modelspace()
    space.add_line((0, 0), (0, 2500), dxfattribs={"layer": "HOUSEWRAP"})
    space.add_text("OUTSIDE", dxfattribs={"insert": (-400, 1000), "height": 30})
    space.add_text("INSIDE", dxfattribs={"insert": (400, 1000), "height": 30})
    drawing = read_drawing(saved(document))
    (section,) = drawing.sections
    assert [p.product for p in section.pieces] == ["housewrap"]
    assert not section.frame_drawn
    assert section.frame == ((-450, 0), (450, 0), (450, 2500), (-450, 2500))
    name = section.products["housewrap"].name
    assert f"Taken for {name}: layer “HOUSEWRAP”." in {n.text for n in drawing.notes}


ZIGZAG = ((-100, 0), (-20, 0), (-15, 12), (-5, -12), (0, 0), (100, 0))


@pytest.mark.parametrize("linework", [False, True])
def test_a_break_drawn_in_loose_lines_on_an_unmapped_layer_is_found(
    saved: Callable[[Dxf], Path], *, linework: bool
) -> None:
    """The sheet stops at one break line and goes on at the other; both ways of reading agree."""
    document = wall()
    space = document.modelspace()
    for y0, y1 in ((0, 1000), (1040, 3000)):
        space.add_line((300, y0), (300, y1), dxfattribs={"layer": "SHEET"})
    for y in (1000, 1040):
        for (ax, ay), (bx, by) in pairwise(ZIGZAG):
            space.add_line((300 + ax, y + ay), (300 + bx, y + by), dxfattribs={"layer": "THIN"})
    (section,) = read_drawing(saved(document), replace(OPTIONS, linework=linework)).sections
    (found,) = section.breaks
    assert {found.near, found.far} == {
        ((200, 1000), (400, 1000)),
        ((200, 1040), (400, 1040)),
    }


def test_breaks_of_a_real_drawing_lie_where_its_sheets_stop(office_drawings: Path) -> None:
    """Wall details with exploded break lines, 1 to 1 1/4 inches apart, on general layers."""
    rows = (LayerRow("A-DETL-HDLN", product="vapour-retarder"),)
    options = ReadOptions(LayerMap(rows, load_products()), require_marks=False)
    path = office_drawings / "sections" / "wall_details_inches.dxf"
    (section,) = read_drawing(path, options).sections
    ends = [
        end
        for piece in section.pieces
        if isinstance(piece.shape, Line)
        for end in (piece.shape.points[0], piece.shape.points[-1])
    ]
    continued = set()
    for each in section.breaks:
        (x0, near), (x1, _), (_, far) = *each.near, each.far[0]
        assert 25 < abs(near - far) < 32
        stop, go_on = (
            {round(x) for x, end in ends if x0 < x < x1 and abs(end - y) < 0.01}
            for y in (near, far)
        )
        assert stop == go_on
        continued |= stop
    assert continued == {2486, 3066, 10250, 10404, 10930, 11753, 11903, 17219, 17369}


@pytest.fixture
def timed(monkeypatch: pytest.MonkeyPatch) -> Callable[[Path], tuple[Drawing, float, float]]:
    """Return a function that reads a drawing, with the seconds of opening and of the rest."""

    def read(path: Path) -> tuple[Drawing, float, float]:
        start = process_time()
        opened = open_document(path)
        opening = process_time() - start
        monkeypatch.setattr(reading, "open_document", lambda _: opened)
        start = process_time()
        drawing = read_drawing(path, OPTIONS)
        return drawing, opening, process_time() - start

    return read


def test_five_thousand_mapped_pieces_take_less_than_opening_them(
    saved: Callable[[Dxf], Path], timed: Callable[[Path], tuple[Drawing, float, float]]
) -> None:
    document = wall()
    space = document.modelspace()
    for k in range(2500):
        x, y = 5 + k % 50 * 39, 5 + k // 50 * 59
        space.add_line((x, y), (x + 30, y + 20), dxfattribs={"layer": "SHEET"})
        ring = rectangle(x, y + 30, x + 30, y + 32)
        space.add_lwpolyline(ring, close=True, dxfattribs={"layer": "FLASHING"})
    drawing, opening, rest = timed(saved(document))
    assert len(drawing.sections[0].pieces) == 5003
    assert rest < 2 * opening + 0.5


def test_ten_thousand_layers_and_as_many_lines_take_less_than_opening_them(
    saved: Callable[[Dxf], Path], timed: Callable[[Path], tuple[Drawing, float, float]]
) -> None:
    document = wall()
    space = document.modelspace()
    for k in range(10_000):
        document.layers.add(f"L{k}")
        space.add_line((k, 0), (k, 9), dxfattribs={"layer": f"L{k}"})
    drawing, opening, rest = timed(saved(document))
    assert rest < opening
    (named,) = [n.text for n in drawing.notes if "Nothing is said of" in n.text]
    assert "and 9993 more" in named


def expected() -> list[dict[str, Any]]:
    with sample("expected.toml").open("rb") as file:
        return list(tomllib.load(file)["drawing"])


@pytest.mark.parametrize("wanted", expected(), ids=lambda each: each["file"])
def test_samples_are_read_as_their_script_drew_them(wanted: dict[str, Any]) -> None:
    """Units, titles and frames; two samples are R12 files that cannot name their units."""
    options = ReadOptions(load_layer_map(sample(wanted["layers"])))
    drawing = read_drawing(sample(wanted["file"]), options)
    assert drawing.units == wanted["units"]
    frames = {s.name.casefold(): box_of([s.frame]) for s in drawing.sections}
    assert frames == {
        each["title"].casefold(): pytest.approx(each["frame_mm"], abs=0.01)
        for each in wanted["section"]
    }
    assert all(section.frame_drawn for section in drawing.sections)
