"""A drawing has one name whenever it is read, and no other drawing has it."""

from pathlib import Path

import ezdxf
import pytest

from enclosure_app.files.dxf.identity import identity_of
from enclosure_app.files.reading import ReadOptions, read_drawing
from enclosure_app.model.project import project_from
from enclosure_app.resources import sample

GUID = "{5B117075-6074-4079-AE12-C799F586C64C}"


def wall(
    path: Path, version: str = "R2010", guid: str = GUID, far: float = 100, form: str = "asc"
) -> Path:
    drawing = ezdxf.new(version)
    drawing.header["$FINGERPRINTGUID"] = guid
    drawing.modelspace().add_line((0, 0), (far, 0))
    drawing.saveas(path, fmt=form)
    written = drawing.header["$FINGERPRINTGUID"]
    path.write_bytes(path.read_bytes().replace(written.encode(), guid.encode()))
    return path


@pytest.mark.parametrize("form", ["asc", "bin"])
def test_a_drawing_that_says_who_it_is_stays_so_when_it_is_changed(
    form: str, tmp_path: Path
) -> None:
    before = identity_of(wall(tmp_path / "wall.dxf", form=form))
    assert before == (GUID.strip("{}"), "wall.dxf")
    assert identity_of(wall(tmp_path / "wall.dxf", far=90, form=form)) == before


def test_a_copy_for_another_detail_is_another_drawing(tmp_path: Path) -> None:
    assert identity_of(wall(tmp_path / "wall.dxf")) != identity_of(wall(tmp_path / "eave.dxf"))


@pytest.mark.parametrize("version", ["R12", "R2000"])
def test_one_that_says_nothing_is_told_by_what_it_holds(version: str, tmp_path: Path) -> None:
    nobody = "{00000000-0000-0000-0000-000000000000}"
    one = identity_of(wall(tmp_path / "one.dxf", version, nobody))
    (tmp_path / "again.dxf").write_bytes((tmp_path / "one.dxf").read_bytes())
    assert identity_of(tmp_path / "again.dxf") == one
    assert identity_of(wall(tmp_path / "other.dxf", version, nobody, far=90)) != one


def test_a_project_is_called_the_same_whenever_its_drawing_is_read() -> None:
    wanted = ReadOptions(linework=True, require_marks=False)
    names = ("wall-base.dxf", "wall-base.dxf", "window.dxf")
    one, again, other = (project_from(read_drawing(sample(n), wanted)).id for n in names)
    assert one == again != other
