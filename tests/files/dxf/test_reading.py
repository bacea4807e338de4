"""What is delivered, what is left out, and that the person is told so."""

from collections.abc import Callable

import pytest
from ezdxf.document import Drawing

from enclosure_app.files.dxf.content import Content, content
from enclosure_app.files.dxf.raw import RawPath, RawText, Tag
from tests.files.dxf.drawn import opened

Reread = Callable[..., Content]


def layers(read: Content) -> list[str]:
    return [item.tag.layer for item in read.items]


def texts(read: Content) -> list[str]:
    return [note.text for note in read.notes]


def test_frozen_and_switched_off_layers_are_left_out_and_named(
    drawing: Drawing, reread: Reread
) -> None:
    for layer in ("WALL", "OFF", "OFF", "COLD"):
        drawing.modelspace().add_line((0, 0), (1, 0), dxfattribs={"layer": layer})
    read = reread(drawing)
    assert layers(read) == ["WALL"]
    assert read.layers == ("WALL",)
    assert texts(read) == [
        "Left out: 3 entities on layers that are frozen or switched off: “COLD”, “OFF”. "
        "To read them as well, add --all-layers."
    ]


def test_all_layers_shows_hidden_layers_and_invisible_entities(
    drawing: Drawing, reread: Reread
) -> None:
    for layer in ("WALL", "OFF", "COLD"):
        drawing.modelspace().add_line((0, 0), (1, 0), dxfattribs={"layer": layer})
    drawing.modelspace().add_line((0, 0), (1, 0), dxfattribs={"invisible": 1})
    read = reread(drawing, all_layers=True)
    assert layers(read) == ["WALL", "OFF", "COLD", "0"]
    assert read.notes == ()


def test_invisible_entities_are_left_out_and_counted(drawing: Drawing, reread: Reread) -> None:
    line = drawing.modelspace().add_line((0, 0), (1, 0), dxfattribs={"invisible": 1})
    read = reread(drawing)
    assert read.items == ()
    assert texts(read) == [
        f"Left out: 1 invisible entity (first: {line.dxf.handle}). "
        "To read them as well, add --all-layers."
    ]


def test_a_frozen_insert_hides_all_its_content_and_one_switched_off_only_layer_0(
    drawing: Drawing, reread: Reread
) -> None:
    block = drawing.blocks.new("B")
    block.add_line((0, 0), (1, 0))
    block.add_line((0, 0), (2, 0), dxfattribs={"layer": "WALL"})
    drawing.modelspace().add_blockref("B", (0, 0), dxfattribs={"layer": "COLD"})
    drawing.modelspace().add_blockref("B", (0, 5), dxfattribs={"layer": "OFF"})
    read = reread(drawing)
    assert [item.points for item in read.items if isinstance(item, RawPath)] == [
        ((0.0, 5.0), (2.0, 5.0))
    ]


def test_only_wanted_paths_are_converted_and_the_others_counted(
    drawing: Drawing, reread: Reread
) -> None:
    space = drawing.modelspace()
    wanted = space.add_line((0, 0), (1, 0), dxfattribs={"layer": "WALL"})
    space.add_line((0, 0), (9, 0), dxfattribs={"layer": "WALL", "color": 1})
    space.add_circle((0, 0), 4)
    space.add_text("INSIDE")
    asked: list[Tag] = []

    def want(tag: Tag) -> bool:
        asked.append(tag)
        return tag.color == 7 and tag.layer == "WALL"

    read = reread(drawing, wanted=want)
    assert read.items[0].tag.handle == wanted.dxf.handle
    assert isinstance(read.items[1], RawText)
    assert len(read.items) == 2
    assert read.skipped == {"WALL": 1, "0": 1}
    assert [tag.kind for tag in asked] == ["LINE", "LINE", "CIRCLE"]
    assert read.layers == ("0", "WALL")


def test_wanted_sees_the_handle_that_the_path_will_have(drawing: Drawing) -> None:
    """In blocks and arrays too, so that single entities can be named in a layer map."""
    drawing.blocks.new("B").add_line((0, 0), (1, 0))
    drawing.modelspace().add_blockref(
        "B", (0, 0), dxfattribs={"column_count": 2, "column_spacing": 5}
    )
    asked: list[Tag] = []
    read = content(opened(drawing), wanted=lambda tag: asked.append(tag) is None)
    assert [item.tag for item in read.items] == asked


@pytest.mark.parametrize("number", [float("nan"), float("inf"), 1e13])
def test_impossible_coordinates_are_left_out_with_one_note(
    number: float, drawing: Drawing
) -> None:
    space = drawing.modelspace()
    first = space.add_line((number, 0), (1, 0))
    space.add_lwpolyline([(0, 0), (1, number)])
    space.add_arc((0, 0), number, 0, 90)
    space.add_text("far").dxf.insert = (0, number)
    space.add_lwpolyline([(0, 0, number), (1, 1, 0)], format="xyb")
    space.add_spline([(0, 0), (1, number), (2, 0)])
    space.add_line((0, 0), (1, 0))
    read = content(opened(drawing))
    assert [item.tag.kind for item in read.items if item.tag.kind == "LINE"] == ["LINE"]
    assert any(
        text.startswith("Left out: ") and f"impossible coordinates (first: {first.dxf.handle})." in text
        for text in texts(read)
    )  # fmt: skip
    assert "nan" not in repr(read.items)
    assert "inf" not in repr(read.items)


def test_what_is_no_line_is_named_once_for_each_kind(drawing: Drawing, reread: Reread) -> None:
    space = drawing.modelspace()
    point = space.add_point((0, 0))
    space.add_point((1, 1))
    ray = space.add_ray((0, 0), (1, 0))
    mesh = space.add_polymesh((3, 3))
    image = space.add_image(drawing.add_image_def("photo.png", (8, 8)), (0, 0), (1, 1))
    read = reread(drawing)
    assert read.items == ()
    assert texts(read) == [
        f"Left out: 1 endless construction line (first: {ray.dxf.handle}).",
        f"Left out: 1 picture (first: {image.dxf.handle}).",
        f"Left out: 2 points (first: {point.dxf.handle}).",
        f"Left out: 1 surface mesh (first: {mesh.dxf.handle}).",
    ]


def test_entities_that_share_a_handle_are_told_apart(drawing: Drawing) -> None:
    space = drawing.modelspace()
    one, two = space.add_line((0, 0), (1, 0)), space.add_line((0, 0), (2, 0))
    two.dxf.handle = one.dxf.handle
    handles = [item.tag.handle for item in content(opened(drawing)).items]
    assert handles == [one.dxf.handle, f"{one.dxf.handle}.2"]


def test_an_entity_with_damaged_data_does_not_stop_the_others(drawing: Drawing) -> None:
    space = drawing.modelspace()
    spline = space.add_open_spline([(0, 0), (1, 1), (2, 0), (3, 3)])
    spline.knots = [0.0, 1.0]
    space.add_line((0, 0), (1, 0))
    read = content(opened(drawing))
    assert [item.tag.kind for item in read.items] == ["LINE"]
    assert texts(read) == [f"Left out: 1 entity with damaged data (first: {spline.dxf.handle})."]


@pytest.mark.benchmark
def test_unwanted_entities_cost_next_to_nothing(
    drawing: Drawing, benchmark: Callable[..., Content]
) -> None:
    """Run with --benchmark-enable: 20 000 polylines of which none is wanted."""
    for number in range(20_000):
        drawing.modelspace().add_lwpolyline([(number, 0), (number, 5), (number, 9)])
    read = benchmark(content, opened(drawing), wanted=lambda _: False)
    assert read.skipped == {"0": 20_000}
