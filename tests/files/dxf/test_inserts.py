"""Content of blocks lands where the library's own exploding puts it, and by hand calculation."""

import math
from collections.abc import Callable

import ezdxf
import pytest
from ezdxf import bbox
from ezdxf.document import Drawing
from ezdxf.math import Vec2
from ezdxf.xclip import XClip
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from enclosure_app.files.dxf.content import Content, content
from enclosure_app.files.dxf.document import Document
from enclosure_app.files.dxf.raw import RawPath, RawText

Reread = Callable[..., Content]
FACTORS = st.sampled_from([1.0, 2.0, -1.0, 0.5, -3.0])


@pytest.fixture
def drawing() -> Drawing:
    """A drawing with the block STUD: a line from (1, 1) to (5, 1) with its base at (1, 0)."""
    drawing = ezdxf.new("R2010")
    block = drawing.blocks.new("STUD", base_point=(1, 0))
    block.add_line((1, 1), (5, 1))
    return drawing


def ends(read: Content) -> list[list[float]]:
    return [
        [round(number, 6) for point in item.points for number in point]
        for item in read.items
        if isinstance(item, RawPath)
    ]


@pytest.mark.parametrize(
    ("how", "expected"),
    [
        ({}, [100, 51, 104, 51]),
        ({"xscale": 2, "yscale": 3}, [100, 53, 108, 53]),
        ({"xscale": -1}, [100, 51, 96, 51]),
        ({"rotation": 90}, [99, 50, 99, 54]),
        ({"rotation": 90, "xscale": -2}, [99, 50, 99, 42]),
        # Seen from behind, x runs to the left, and so does the place of the insert.
        ({"extrusion": (0, 0, -1)}, [-100, 51, -104, 51]),
    ],
)
def test_an_insert_scales_mirrors_and_turns(
    how: dict[str, object], expected: list[float], drawing: Drawing, reread: Reread
) -> None:
    drawing.modelspace().add_blockref("STUD", (100, 50), dxfattribs=how)
    assert ends(reread(drawing)) == [expected]


def test_nested_inserts_add_up(drawing: Drawing, reread: Reread) -> None:
    """Turned by 90 degrees inside, doubled outside: (1, 1) to (5, 1) becomes upright."""
    wall = drawing.blocks.new("WALL")
    inner = wall.add_blockref("STUD", (10, 0), dxfattribs={"rotation": 90})
    outer = drawing.modelspace().add_blockref(
        "WALL", (0, 100), dxfattribs={"xscale": 2, "yscale": 2}
    )
    read = reread(drawing)
    assert ends(read) == [[18, 100, 18, 108]]
    tag = read.items[0].tag
    assert tag.block == "WALL"
    assert tag.handle.startswith(f"{outer.dxf.handle}/{inner.dxf.handle}/")


def test_an_array_repeats_its_content_with_numbered_handles(
    drawing: Drawing, reread: Reread
) -> None:
    """The grid turns with the insert but is not scaled."""
    drawing.modelspace().add_blockref(
        "STUD", (0, 0),
        dxfattribs={"column_count": 3, "column_spacing": 10, "rotation": 90, "xscale": 2},
    )  # fmt: skip
    read = reread(drawing)
    assert ends(read) == [[-1, 0, -1, 8], [-1, 10, -1, 18], [-1, 20, -1, 28]]
    first = read.items[0].tag.handle
    assert [item.tag.handle for item in read.items] == [first, f"{first}#2", f"{first}#3"]


def test_arrays_inside_arrays_have_different_handles(drawing: Drawing, reread: Reread) -> None:
    row = {"column_count": 2, "column_spacing": 10}
    drawing.blocks.new("ROW").add_blockref("STUD", (0, 0), dxfattribs=row)
    drawing.modelspace().add_blockref(
        "ROW", (0, 0), dxfattribs={"row_count": 3, "row_spacing": 50}
    )
    handles = [item.tag.handle for item in reread(drawing).items]
    assert sorted(handle.partition("#")[2] for handle in handles) == ["", *"23456"]


def test_attributes_are_texts_of_the_block(drawing: Drawing, reread: Reread) -> None:
    drawing.blocks.get("STUD").add_attdef("SIZE", (0, 0), "unset")
    insert = drawing.modelspace().add_blockref("STUD", (7, 7))
    insert.add_attrib("SIZE", "45 x 145", (8, 9), dxfattribs={"height": 3})
    texts = [item for item in reread(drawing).items if isinstance(item, RawText)]
    assert [(text.text, text.at, text.height) for text in texts] == [("45 x 145", (8.0, 9.0), 3.0)]
    assert (texts[0].tag.kind, texts[0].tag.block) == ("ATTRIB", "STUD")


def test_a_circle_scaled_unevenly_is_a_true_ellipse(drawing: Drawing, reread: Reread) -> None:
    drawing.blocks.new("RING").add_circle((0, 0), 1)
    drawing.modelspace().add_blockref("RING", (0, 0), dxfattribs={"xscale": 300, "yscale": 100})
    (ring,) = reread(drawing, sagitta=0.05).items
    assert isinstance(ring, RawPath)
    for x, y in ring.points:
        assert math.hypot(x / 300, y / 100) == pytest.approx(1)
    assert len(ring.points) > 100


def test_flattening_is_as_fine_in_a_scaled_block(drawing: Drawing, reread: Reread) -> None:
    drawing.blocks.new("ARC").add_lwpolyline([(0, 0, 1), (1, 0, 0)], format="xyb")
    drawing.modelspace().add_blockref("ARC", (0, 0), dxfattribs={"xscale": 1000, "yscale": 1000})
    (path,) = reread(drawing, sagitta=0.1).items
    assert isinstance(path, RawPath)
    for (a, b), (c, d) in zip(path.points, path.points[1:], strict=False):
        assert 500 - math.hypot((a + c) / 2 - 500, (b + d) / 2) <= 0.1


@settings(max_examples=40, deadline=None, suppress_health_check=[HealthCheck.too_slow])
@given(
    st.tuples(FACTORS, FACTORS), st.integers(0, 359), st.booleans(), FACTORS, st.integers(0, 359)
)
def test_any_nesting_covers_what_the_library_explodes(
    inner: tuple[float, float], angle: int, behind: bool, outer: float, turn: int
) -> None:
    """Extents against `ezdxf.bbox`, which explodes blocks by copying and transforming entities."""
    drawing = ezdxf.new("R2010")
    block = drawing.blocks.new("PART", base_point=(2, 1))
    block.add_line((0, 0), (8, 3))
    block.add_arc((3, 3), 2, 30, 200)
    block.add_lwpolyline([(0, 0, 0.4), (5, 1, -0.2), (6, 6, 0)], format="xyb", close=True)
    block.add_ellipse((1, 2), (3, 1), 0.4, 0.5, 4)
    block.add_open_spline([(0, 0), (3, 4), (7, 1), (9, 9)])
    around = drawing.blocks.new("AROUND")
    around.add_blockref(
        "PART", (4, -3),
        dxfattribs={"xscale": inner[0], "yscale": inner[1], "rotation": angle,
                    "extrusion": (0, 0, -1 if behind else 1)},
    )  # fmt: skip
    drawing.modelspace().add_blockref(
        "AROUND", (10, 20), dxfattribs={"xscale": outer, "yscale": outer, "rotation": turn}
    )
    read = content(Document(drawing, (), 0, None, "R2010", ()), sagitta=0.001)
    points = [point for item in read.items if isinstance(item, RawPath) for point in item.points]
    xs, ys = zip(*points, strict=True)
    box = bbox.extents(drawing.modelspace())
    assert len(read.items) == 5
    assert (min(xs), min(ys)) == pytest.approx((box.extmin.x, box.extmin.y), abs=0.05)
    assert (max(xs), max(ys)) == pytest.approx((box.extmax.x, box.extmax.y), abs=0.05)


def test_a_missing_block_is_said(drawing: Drawing, reread: Reread) -> None:
    insert = drawing.modelspace().add_blockref("GONE", (0, 0))
    assert [note.text for note in reread(drawing).notes] == [
        f"The block “GONE” is missing from the file and was left out "
        f"(1 place; first: {insert.dxf.handle})."
    ]


def test_a_drawing_attached_from_outside_is_said(drawing: Drawing, reread: Reread) -> None:
    drawing.add_xref_def("grid.dxf", "GRID")
    drawing.modelspace().add_blockref("GRID", (0, 0))
    read = reread(drawing)
    assert read.items == ()
    assert [note.text for note in read.notes] == [
        "The drawing “GRID” is attached from outside and was not read (1 place): "
        "bind it into this drawing to have it checked."
    ]


def test_a_clipped_insert_is_read_whole_and_said(drawing: Drawing, reread: Reread) -> None:
    insert = drawing.modelspace().add_blockref("STUD", (0, 0))
    XClip(insert).set_block_clipping_path(Vec2.list([(0, 0), (3, 3)]))
    read = reread(drawing)
    assert ends(read) == [[0, 1, 4, 1]]
    assert [note.text for note in read.notes] == [
        f"The block “STUD” is clipped at 1 place (first: {insert.dxf.handle}); "
        "its content was read whole."
    ]


def test_a_block_that_contains_itself_ends(drawing: Drawing) -> None:
    inner = drawing.blocks.get("STUD").add_blockref("stud", (1, 1))
    drawing.modelspace().add_blockref("STUD", (0, 0))
    read = content(Document(drawing, (), 0, None, "R2010", ()))
    assert ends(read) == [[0, 1, 4, 1]]
    assert "contains itself" in read.notes[0].text
    assert inner.dxf.handle in read.notes[0].text


def test_endless_repetition_is_cut_off(drawing: Drawing) -> None:
    many = {"row_count": 30000, "column_count": 30000, "row_spacing": 1, "column_spacing": 1}
    drawing.modelspace().add_blockref("STUD", (0, 0), dxfattribs=many)
    read = content(Document(drawing, (), 0, None, "R2010", ()))
    assert read.items == ()
    assert "repeat too often" in read.notes[0].text
