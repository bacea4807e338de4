"""Bad input on the real road: one sentence for each, status 2, and nothing written.

Each row is a drawing (or what somebody took for one) and the exact sentence about it.
"""

import json
from collections.abc import Callable
from pathlib import Path

import pytest
from ezdxf.document import Drawing
from ezdxf.filemanagement import new

from enclosure_app.cli import NOTHING_WRONG, UNUSABLE, main

MAP = """
[[layers]]
match = "SHEET"
product = "self-adhered-sheet"

[[layers]]
match = "LIMIT"
role = "frame"
"""


def wall(*, marks: bool = True, layers: int = 0) -> Drawing:
    """A sheet from edge to edge of its frame, in millimetres: nothing is wrong with it."""
    document = new("R2010", units=4)
    space = document.modelspace()
    frame = [(0, 0), (400, 0), (400, 1000), (0, 1000)]
    space.add_lwpolyline(frame, close=True, dxfattribs={"layer": "LIMIT"})
    space.add_lwpolyline([(200, 0), (200, 1000)], dxfattribs={"layer": "SHEET"})
    if marks:
        for text, x in (("OUTSIDE", 40), ("INSIDE", 280)):
            space.add_text(text, height=20).set_placement((x, 500))
    for number in range(layers):
        document.layers.add(f"L{number}")
        space.add_line((0, number), (5, number), dxfattribs={"layer": f"L{number}"})
    return document


def save(document: Drawing, path: Path) -> None:
    document.saveas(path)


def nothing(path: Path) -> None:
    """No such file."""


def empty(path: Path) -> None:
    path.touch()


def folder(path: Path) -> None:
    path.mkdir()


def letter(path: Path) -> None:
    path.write_text("Dear architect,\nplease find the section enclosed.\n", encoding="utf-8")


def picture(path: Path) -> None:
    path.write_bytes(b"\x89PNG\r\n\x1a\n" + bytes(200))


def unmapped(path: Path) -> None:
    document = wall()
    for entity in document.modelspace():
        entity.dxf.layer = "0"
    save(document, path)


def unmarked(path: Path) -> None:
    save(wall(marks=False), path)


def unitless(path: Path) -> None:
    document = new("R2010", units=0)
    document.modelspace().add_lwpolyline([(0, 0), (0, 3)], dxfattribs={"layer": "SHEET"})
    save(document, path)


def dwg(path: Path) -> None:
    path.write_bytes(b"AC1032" + bytes(500))


def cut_off(path: Path) -> None:
    save(wall(), path)
    whole = path.read_bytes()
    path.write_bytes(whole[: len(whole) * 6 // 10])


def without_numbers(path: Path) -> None:
    """Every coordinate of the sheet is NaN."""
    save(wall(), path)
    path.write_text(path.read_text(encoding="utf-8").replace("200.0", "nan"), encoding="utf-8")


def binary_noise(path: Path) -> None:
    path.write_bytes(bytes(range(256)) * 40)


def half_a_pair(path: Path) -> None:
    path.write_text("0\nSECTION\n2\nENTITIES\n0\nLINE\n10\n", encoding="utf-8")


SENTENCES: dict[Callable[[Path], None], str] = {
    nothing: "There is no file “a.dxf”: check its name and its folder.",
    empty: "“a.dxf” is empty: export the drawing as DXF again.",
    folder: "“a.dxf” is a folder: name a DXF file in it.",
    letter: "“a.dxf” is not a DXF drawing: export the drawing as DXF, ASCII or binary.",
    picture: "“a.dxf” is a picture, not a DXF drawing: export the drawing as DXF.",
    dwg: "“a.dxf” is a DWG drawing: save it as DXF and open that.",
    unmapped: "a.dxf: nothing says which lines are which product (it has layer “0”): say so with "
    "--layers MAP.toml.",
    unmarked: "a.dxf: no inside mark in section Section 1: give --inside X,Y or write the word "
    "INSIDE in the room.\n"
    "a.dxf: no outside mark in section Section 1: give --outside X,Y or write the word OUTSIDE in "
    "the open.",
    unitless: "a.dxf does not say in which units it is drawn: say so with --units mm, cm, m, in or "
    "ft.",
}


@pytest.fixture(autouse=True)
def workplace(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """An empty folder to work in, with a layer map."""
    monkeypatch.chdir(tmp_path)
    (tmp_path / "map.toml").write_text(MAP, encoding="utf-8")
    return tmp_path


each_bad_file = pytest.mark.parametrize("make", SENTENCES, ids=lambda make: make.__name__)
each_command = pytest.mark.parametrize("command", ["check --json out.pdf", "sheet -o out.pdf"])


@each_bad_file
@each_command
def test_bad_files_get_their_sentence_and_nothing_is_written(
    make: Callable[[Path], None], command: str, capsys: pytest.CaptureFixture[str]
) -> None:
    make(Path("a.dxf"))
    name, *options = command.split()
    assert main([name, "a.dxf", "--layers", "map.toml", *options]) == UNUSABLE
    said = capsys.readouterr()
    assert (said.out, said.err) == ("", SENTENCES[make] + "\n")
    assert not list(Path().glob("out*"))


@pytest.mark.parametrize(
    "make", [cut_off, without_numbers, binary_noise, half_a_pair], ids=lambda make: make.__name__
)
def test_a_damaged_file_is_named_in_one_sentence(
    make: Callable[[Path], None], capsys: pytest.CaptureFixture[str]
) -> None:
    """How far a damaged file can be read may change; that it is named and nothing blows may not."""
    make(Path("a.dxf"))
    assert main(["check", "a.dxf", "--layers", "map.toml", "--json", "out"]) == UNUSABLE
    said = capsys.readouterr()
    assert said.out == ""
    assert len(said.err.splitlines()) == 1
    assert "a.dxf" in said.err
    assert "the program itself failed" not in said.err
    assert not list(Path().glob("out*"))


def test_every_mistake_in_a_layer_map_is_told_at_once_with_its_line(
    capsys: pytest.CaptureFixture[str],
) -> None:
    save(wall(), Path("a.dxf"))
    Path("map.toml").write_text(
        '[[layers]]\nmatch = "SHEET"\nprodukt = "self-adhered-sheet"\n\n'
        '[[layers]]\nmatch = "LIMIT"\nrole = "farme"\n\n[limits]\nwall-lap = "wide"\n',
        encoding="utf-8",
    )
    assert main(["check", "a.dxf", "--layers", "map.toml", "--json", "out"]) == UNUSABLE
    said = capsys.readouterr()
    assert said.out == ""
    assert said.err.splitlines() == [
        "map.toml, line 3: unknown key 'produkt' in [[layers]]; did you mean 'product'?",
        "map.toml, line 7: 'role' in [[layers]] cannot be 'farme'; did you mean 'frame'?",
        "map.toml, line 10: 'wall-lap' in [limits] must be a number without quotes, not 'wide'.",
    ]
    assert not list(Path().glob("out*"))


@pytest.mark.parametrize(
    ("option", "value", "sentence"),
    [
        ("--layout", "Nowhere", "Nowhere"),
        ("--book", "irc-1921", "There is no rule book 'irc-1921'; did you mean 'irc-2021'?"),
        ("--layers", "no.toml", "no.toml: there is no such file"),
        ("--inside", "9000,9000", "--inside 9000,9000"),
    ],
)
def test_an_option_that_does_not_fit_the_drawing_is_said(
    option: str, value: str, sentence: str, capsys: pytest.CaptureFixture[str]
) -> None:
    save(wall(), Path("a.dxf"))
    assert main(["check", "a.dxf", "--layers", "map.toml", option, value]) == UNUSABLE
    said = capsys.readouterr()
    assert said.out == ""
    assert sentence in said.err
    assert len(said.err.splitlines()) == 1


def test_ten_thousand_layers_are_read(capsys: pytest.CaptureFixture[str]) -> None:
    save(wall(layers=10_000), Path("a.dxf"))
    assert main(["check", "a.dxf", "--layers", "map.toml"]) == NOTHING_WRONG
    said = capsys.readouterr()
    assert said.err == ""
    assert "9992 more" in said.out


def test_the_good_drawing_beside_the_bad_ones_is_reported(
    capsys: pytest.CaptureFixture[str],
) -> None:
    save(wall(), Path("good.dxf"))
    letter(Path("bad.dxf"))
    options = ["--layers", "map.toml", "--json", "out"]
    assert main(["check", "bad.dxf", "good.dxf", "gone.dxf", *options]) == UNUSABLE
    said = capsys.readouterr()
    assert said.err == (
        "“bad.dxf” is not a DXF drawing: export the drawing as DXF, ASCII or binary.\n"
        "There is no file “gone.dxf”: check its name and its folder.\n"
    )
    (drawing,) = json.loads(Path("out").read_text(encoding="utf-8"))["drawings"]
    assert drawing["file"] == "good.dxf"
    assert drawing["sections"][0]["controls"]["water"]["verdict"] == "continuous"


def test_marks_typed_in_inches_lie_where_the_drawing_has_them() -> None:
    """The same wall in inches, with no text on it: 1.6 and 11 inches across, 20 up."""
    document = new("R2010", units=1)
    space = document.modelspace()
    frame = [(0, 0), (16, 0), (16, 40), (0, 40)]
    space.add_lwpolyline(frame, close=True, dxfattribs={"layer": "LIMIT"})
    space.add_lwpolyline([(8, 0), (8, 40)], dxfattribs={"layer": "SHEET"})
    save(document, Path("a.dxf"))
    sides = ["--outside", "1.6,20", "--inside", "11,20", "--units", "in"]
    assert main(["check", "a.dxf", "--layers", "map.toml", *sides]) == NOTHING_WRONG
