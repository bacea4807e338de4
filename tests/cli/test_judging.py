"""What is typed reaches the reader and the checker; what is read is never written over."""

from pathlib import Path

import pytest

from enclosure_app.cli import UNUSABLE, main
from enclosure_app.model.drawing import Units
from enclosure_app.model.finding import Severity
from tests.cli.stand_ins import Options, Road


def test_the_options_reach_the_reader(road: Road) -> None:
    main(["check", "doubt.dxf", "--units", "in", "--all-layers", "--layout", "Sheet 1", "--plan"])
    assert road.options == [
        Options(units=Units.IN, all_layers=True, layout="Sheet 1", plan=True),
    ]


def test_nothing_typed_leaves_every_choice_to_the_drawing(road: Road) -> None:
    main(["check", "doubt.dxf"])
    assert road.options == [Options()]


def test_marks_go_to_the_reader_as_typed(road: Road) -> None:
    """The reader takes them in the drawing's own units, which only it can tell."""
    sides = ["--inside", "1,2", "--inside", "3,-4.5", "--outside", "0,9e3"]
    main(["check", "inches.dxf", *sides])
    assert road.options[-1].inside == ((1.0, 2.0), (3.0, -4.5))
    assert road.options[-1].outside == ((0.0, 9000.0),)


def test_what_is_typed_goes_over_the_map_and_the_map_over_the_book(
    road: Road, tmp_path: Path
) -> None:
    path = tmp_path / "map.toml"
    path.write_text(
        'book = "nbc-2020"\n[limits]\nwall-lap = 123\n'
        '[severity]\ngap = "remark"\nshort-lap = "remark"\n',
        encoding="utf-8",
    )
    main(["check", "doubt.dxf", "--layers", str(path), "--severity", "gap=off"])
    (limits,) = road.limits
    assert limits.book == "nbc-2020"
    assert limits.figure("wall-lap").value == 123
    assert limits.figure("wall-lap").basis == f"layer map {path}"
    assert limits.severities["gap"] is Severity.OFF
    assert limits.severities["short-lap"] is Severity.REMARK


def test_a_book_that_is_typed_goes_over_the_maps(road: Road, tmp_path: Path) -> None:
    path = tmp_path / "map.toml"
    path.write_text('book = "nbc-2020"\n', encoding="utf-8")
    main(["check", "doubt.dxf", "--layers", str(path), "--book", "practice"])
    assert road.limits[0].book == "practice"


def test_the_map_is_read_once_for_many_drawings(road: Road, tmp_path: Path) -> None:
    path = tmp_path / "map.toml"
    path.write_text('[[layers]]\nmatch = "X"\nrole = "note"\n', encoding="utf-8")
    main(["check", "doubt.dxf", "doubt2.dxf", "--layers", str(path)])
    first, second = road.options
    assert first.layer_map.rows[0].match == "X"
    assert first.layer_map is second.layer_map


@pytest.mark.parametrize("command", ["check --json", "sheet -o"])
@pytest.mark.parametrize("kept", ["doubt.dxf", "map.toml"])
def test_what_is_read_is_never_written_over(
    command: str, kept: str, road: Road, capsys: pytest.CaptureFixture[str]
) -> None:
    Path(kept).write_text("# to be kept", encoding="utf-8")
    Path("sub").mkdir()
    name, option = command.split()
    spelled_otherwise = f"sub/../{kept}"
    arguments = [name, "doubt.dxf", "--layers", "map.toml", option, spelled_otherwise]
    assert main(arguments) == UNUSABLE
    assert f"{spelled_otherwise} is a file to be read" in capsys.readouterr().err
    assert Path(kept).read_text(encoding="utf-8") == "# to be kept"
