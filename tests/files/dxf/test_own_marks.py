"""Marks of an earlier check are passed over; what a person drew among them is told."""

from collections.abc import Callable

import ezdxf
import pytest

from enclosure_app.files.dxf.content import Content
from enclosure_app.files.dxf.own_marks import APPLICATION, PREFIX, is_own_layer


@pytest.mark.parametrize(
    ("name", "own"),
    [
        ("ENCLOSURE-CHECK-FLAGS", True),
        ("enclosure-check-water", True),
        ("ENCLOSURE-CHECK-", True),
        ("ENCLOSURE-CHECK", False),
        ("A-ENCLOSURE-CHECK-FLAGS", False),
        ("", False),
    ],
)
def test_a_layer_of_marks_is_known_by_how_its_name_begins(name: str, own: bool) -> None:
    assert is_own_layer(name) is own


@pytest.mark.parametrize("everything", [False, True])
def test_marks_are_passed_over_in_silence_and_a_persons_line_is_told(
    reread: Callable[..., Content], everything: bool
) -> None:
    drawing = ezdxf.new("R2010")
    drawing.appids.add(APPLICATION)
    space = drawing.modelspace()
    space.add_line((0, 0), (9, 9), dxfattribs={"layer": "wall"})
    mark = space.add_line((0, 0), (5, 5), dxfattribs={"layer": f"{PREFIX}FLAGS"})
    mark.set_xdata(APPLICATION, [(1000, "gap:1.end")])
    block = drawing.blocks.new("STAMP")
    block.add_line((0, 0), (1, 0), dxfattribs={"layer": f"{PREFIX}FLAGS"})
    space.add_blockref("STAMP", (0, 0), dxfattribs={"layer": "wall"})
    read = reread(drawing, all_layers=everything)
    assert [item.tag.layer for item in read.items] == ["wall"]
    assert read.layers == ("wall",)
    (told,) = [note.text for note in read.notes]
    assert told.startswith("Left out: 1 entity on the layers of this program's own marks")


def test_a_drawing_with_marks_alone_says_nothing_of_them(reread: Callable[..., Content]) -> None:
    drawing = ezdxf.new("R2010")
    drawing.appids.add(APPLICATION)
    mark = drawing.modelspace().add_circle((0, 0), 5, dxfattribs={"layer": f"{PREFIX}HEAT"})
    mark.set_xdata(APPLICATION, [(1000, "opening heat")])
    read = reread(drawing)
    assert (read.items, read.layers, read.notes) == ((), (), ())
