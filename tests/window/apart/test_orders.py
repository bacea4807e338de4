"""One project from one file or from several drawings."""

from pathlib import Path

import ezdxf
import pytest

from enclosure_app.model.drawing import Units
from enclosure_app.resources import sample
from enclosure_app.window.apart.orders import NotReadError, Order, read_order


def test_several_drawings_become_the_sections_of_one_project() -> None:
    paths = (sample("ridge.dxf"), sample("four-sections.dxf"), sample("ridge.dxf"))
    layers = sample("layers-second-office.toml")
    project = read_order(Order(paths, layers=layers))
    alone = [read_order(Order((path,), layers=layers)) for path in paths]
    names = [section.name for section in project.sections]
    assert names[0] == "ridge"
    assert names[-1] == "ridge 2"
    assert [name.partition(": ")[0] for name in names[1:5]] == ["four-sections"] * 4
    assert [section.pieces for section in project.sections] == [
        section.pieces for each in alone for section in each.sections
    ]
    assert project.title == paths[0].parent.name
    assert [section.file for section in project.sections] == [
        str(path) for path, one in zip(paths, alone, strict=True) for _ in one.sections
    ]
    assert project.id == read_order(Order(paths, layers=layers)).id
    assert len({project.id, *(each.id for each in alone)}) == 3  # the ridge is there twice


def without_units(path: Path, side: float) -> Path:
    drawing = ezdxf.new("R12")
    drawing.modelspace().add_line((0, 0), (side, side))
    drawing.saveas(path)
    return path


def test_the_one_that_cannot_be_read_is_named(tmp_path: Path) -> None:
    with pytest.raises(NotReadError, match=r"gone\.dxf") as told:
        read_order(Order((sample("ridge.dxf"), tmp_path / "gone.dxf")))
    assert told.value.path == tmp_path / "gone.dxf"


def test_units_are_said_for_the_drawing_that_lacks_them_and_no_other(tmp_path: Path) -> None:
    lacking = without_units(tmp_path / "sketch.dxf", 10)
    order = Order((sample("ridge.dxf"), lacking))
    with pytest.raises(NotReadError, match="--units") as told:
        read_order(order)
    assert told.value.path == lacking
    project = read_order(order.in_units(lacking, Units.IN).in_units(lacking, Units.CM))
    (stroke,) = project.sections[1].strokes
    assert stroke.points == ((0, 0), (100, 100))
    ridge = read_order(Order((sample("ridge.dxf"),))).sections[0]
    assert project.sections[0].pieces == ridge.pieces
