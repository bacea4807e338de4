"""What is gathered from a drawing to judge its units by."""

from pathlib import Path

import ezdxf

from enclosure_app.files.dxf.content import content
from enclosure_app.files.dxf.document import open_document
from enclosure_app.files.maps.catalogue import load_products
from enclosure_app.files.maps.layer_map import LayerMap, LayerRow
from enclosure_app.files.maps.meaning import Meaning
from enclosure_app.files.units.evidence import Evidence
from enclosure_app.files.units.gathering import evidence_of

ROWS = (
    LayerRow("SHEET", product="housewrap"),
    LayerRow("BOARD", product="osb"),
    LayerRow("CROP", role="frame"),
)


def gathered(document: ezdxf.document.Drawing, folder: Path) -> Evidence:
    path = folder / "a.dxf"
    document.saveas(path)
    opened = open_document(path)
    meaning = Meaning(LayerMap(ROWS, load_products()), linework=False)
    return evidence_of(path, opened, content(opened, wanted=meaning.wanted).items, meaning)


def test_everything_that_tells_of_units_is_gathered(tmp_path: Path) -> None:
    document = ezdxf.new("R2010")
    document.header["$INSUNITS"] = 1
    document.header["$MEASUREMENT"] = 0
    space = document.modelspace()
    space.add_line((0, 0), (0, 96), dxfattribs={"layer": "SHEET"})
    space.add_lwpolyline(
        [(2, 0), (2.4375, 0), (2.4375, 96), (2, 96)], close=True, dxfattribs={"layer": "BOARD"}
    )
    space.add_text("tape", dxfattribs={"height": 3})
    space.add_linear_dim(base=(0, -9), p1=(0, 0), p2=(64, 0), text="5'-4\"").render()
    found = gathered(document, tmp_path)
    assert (found.insunits, found.metric) == (1, False)
    assert found.heights == (3,)
    assert [(d.measured, d.text) for d in found.dimensions] == [(64, "5'-4\"")]
    ((drawn, known),) = found.thicknesses
    assert (round(drawn, 4), known) == (0.4375, load_products()["osb"].thickness_mm)
    assert found.extent == 96


def test_with_frames_the_largest_frame_is_the_extent(tmp_path: Path) -> None:
    document = ezdxf.new("R2010")
    space = document.modelspace()
    for x in (0, 90_000):
        space.add_line((x, 0), (x, 900), dxfattribs={"layer": "SHEET"})
        space.add_lwpolyline(
            [(x, 0), (x + 2000, 0), (x + 2000, 900), (x, 900)],
            close=True,
            dxfattribs={"layer": "CROP"},
        )
    assert gathered(document, tmp_path).extent == 2000


def test_angles_are_no_lengths(tmp_path: Path) -> None:
    document = ezdxf.new("R2010")
    space = document.modelspace()
    space.add_line((0, 0), (0, 900), dxfattribs={"layer": "SHEET"})
    space.add_angular_dim_2l(
        base=(5, 5), line1=((0, 0), (9, 0)), line2=((0, 0), (0, 9)), text="250"
    ).render()
    assert gathered(document, tmp_path).dimensions == ()


def test_furniture_and_how_high_all_is_that_is_drawn_are_gathered(tmp_path: Path) -> None:
    document = ezdxf.new("R2010")
    space = document.modelspace()
    space.add_text("bed", dxfattribs={"layer": "MOEBEL-TEXT"})
    space.add_line((0, 0), (0, 20), dxfattribs={"layer": "SHEET"})
    space.add_line((5, -10), (5, 30), dxfattribs={"layer": "BOARD"})
    assert gathered(document, tmp_path).furniture == ""
    path = tmp_path / "b.dxf"
    space.add_line((0, -30), (9, 50), dxfattribs={"layer": "A-FURN"})
    document.saveas(path)
    opened = open_document(path)
    rows = (*ROWS, LayerRow("A-FURN", role="note"))
    meaning = Meaning(LayerMap(rows, load_products()), linework=True)
    found = evidence_of(path, opened, content(opened, wanted=meaning.wanted).items, meaning)
    assert found.furniture == "A-FURN"
    assert (found.high, found.drawn_high) == (40, 80)
