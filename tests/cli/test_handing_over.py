"""Marks, tables and BCF by the command line, from drawings and from projects with verdicts."""

import csv
import re
from dataclasses import replace
from io import BytesIO
from pathlib import Path
from types import MappingProxyType
from zipfile import ZipFile

import ezdxf
import openpyxl
import pytest
from bcf_api_xml import to_json

from enclosure_app.cli import FAULTS, NOTHING_WRONG, UNUSABLE, main
from enclosure_app.files.maps.layer_map import load_layer_map
from enclosure_app.files.project.file import save_project
from enclosure_app.files.reading import ReadOptions, read_drawing
from enclosure_app.model.project import project_from
from enclosure_app.model.said.decision import Decision, State
from enclosure_app.reports.dxf.layers import FLAGS
from enclosure_app.resources import sample
from enclosure_app.rules import RULES
from enclosure_app.window.apart.orders import Order, read_order
from tests.reports.decided import SILL

LAYERS = ["--layers", str(sample("layers.toml"))]
WALL, SOUND = str(sample("wall-base-faulty.dxf")), str(sample("wall-base.dxf"))
WINDOW = str(sample("window-faulty.dxf"))
KEY = "short-lap:water:83.low+84.low"


@pytest.fixture
def here(tmp_path: Path, monkeypatch: pytest.MonkeyPatch, qapp: object) -> Path:
    monkeypatch.chdir(tmp_path)
    return tmp_path


@pytest.fixture
def project(here: Path) -> Path:
    """Return the file of a project, with its drawing beside it and one finding decided."""
    drawing = here / "wall.dxf"
    drawing.write_bytes(Path(WALL).read_bytes())
    layers = load_layer_map(sample("layers.toml"), [rule.name for rule in RULES])
    read = project_from(read_drawing(drawing, ReadOptions(layers)))
    section = read.sections[0].name
    decided = Decision(
        KEY, State.MENDED, "Ida", "2026-03-02T10:15:00+02:00", "longer now", section,
        photographs=(SILL.key,), id="a" * 32,
    )  # fmt: skip
    photographs = MappingProxyType({SILL.key: SILL})
    path = here / "wall.enclosure.json"
    known = replace(
        read, source="elsewhere/wall.dxf", decisions=(decided,), photographs=photographs
    )
    save_project(known, path)
    return path


def rows(path: Path) -> list[dict[str, str]]:
    with path.open(encoding="utf-8-sig", newline="") as file:
        return list(csv.DictReader(file))


def flags(path: Path) -> list[str]:
    return [e.dxf.text for e in ezdxf.readfile(path).modelspace().query(f'TEXT[layer=="{FLAGS}"]')]


def test_a_drawing_is_marked_under_another_name(
    here: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert main(["mark", WALL, "-o", "marked.dxf", "--link", "wall.pdf", *LAYERS]) == FAULTS
    assert flags(here / "marked.dxf") == ["1", "2"]
    ring = ezdxf.readfile("marked.dxf").modelspace().query(f'CIRCLE[layer=="{FLAGS}"]')[0]
    assert ring.get_hyperlink()[0] == "wall.pdf"
    assert capsys.readouterr().out.startswith("marked.dxf is written: 1 fault, 1 doubt")
    assert main(["mark", SOUND, "-o", "sound.dxf", *LAYERS]) == NOTHING_WRONG
    assert flags(here / "sound.dxf") == []


def test_a_project_marks_the_drawing_beside_it_with_what_was_decided(project: Path) -> None:
    assert main(["mark", str(project), "-o", "marked.dxf"]) == FAULTS
    words = [e.dxf.text for e in ezdxf.readfile("marked.dxf").modelspace().query("TEXT")]
    assert "Mended by Ida, 2026-03-02: longer now" in words
    assert project.with_name("wall.dxf").read_bytes() == Path(WALL).read_bytes()


def test_a_project_whose_drawing_is_gone_says_how_to_name_it(
    project: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    project.with_name("wall.dxf").rename(project.with_name("wall-b.dxf"))
    assert main(["mark", str(project), "-o", "marked.dxf"]) == UNUSABLE
    assert capsys.readouterr().err == (
        f"{project}: elsewhere/wall.dxf is not there to be marked; name the drawing with "
        "--drawing DXF.\n"
    )
    assert main(["mark", str(project), "-o", "marked.dxf", "--drawing", "wall-b.dxf"]) == FAULTS
    assert main(["mark", str(project), "-o", "m.dxf", "--drawing", WINDOW]) == UNUSABLE
    assert "is not the drawing that was checked" in capsys.readouterr().err


@pytest.fixture
def house(here: Path) -> Path:
    """Return the file of a project of two drawings, which lie beside it."""
    for name in (WALL, WINDOW):
        (here / Path(name).name).write_bytes(Path(name).read_bytes())
    order = Order(
        (Path("wall-base-faulty.dxf"), Path("window-faulty.dxf")), layers=sample("layers.toml")
    )
    path = here / "house.enclosure.json"
    save_project(read_order(order), path)
    return path


def test_every_drawing_of_a_project_is_marked_in_a_file_of_its_own(
    house: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert main(["mark", str(house), "-o", "marked"]) == FAULTS
    said = capsys.readouterr()
    assert said.err == ""
    assert [line.partition(" is written")[0] for line in said.out.splitlines()] == [
        str(Path("marked", f"{name}-faulty-marked.dxf")) for name in ("wall-base", "window")
    ]
    assert flags(house.with_name("marked") / "wall-base-faulty-marked.dxf") == ["1", "2"]
    assert flags(house.with_name("marked") / "window-faulty-marked.dxf")
    before = {path: path.read_bytes() for path in Path("marked").iterdir()}
    assert main(["mark", str(house), "-o", "marked"]) == FAULTS
    assert {path: path.read_bytes() for path in Path("marked").iterdir()} == before


def test_drawings_of_a_project_that_have_moved_are_known_by_their_names(
    house: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    Path("moved").mkdir()
    moved = [Path("moved", name) for name in ("wall-base-faulty.dxf", "window-faulty.dxf")]
    for path in moved:
        Path(path.name).rename(path)
    assert main(["mark", str(house), "-o", "out", "--drawing", str(moved[1])]) == UNUSABLE
    assert "wall-base-faulty.dxf is not there to be marked" in capsys.readouterr().err
    named = [argument for path in moved for argument in ("--drawing", str(path))]
    assert main(["mark", str(house), "-o", "out", *named]) == FAULTS
    assert len(list(Path("out").iterdir())) == 2


def test_a_moved_drawing_that_takes_no_place_is_refused(
    here: Path, house: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    for files in ([str(house)], [WALL]):
        assert main(["mark", *files, "-o", "out", "--drawing", SOUND]) == UNUSABLE
        said = capsys.readouterr().err
        assert f"{SOUND}: no project that is to be marked has a drawing of this name" in said
        assert not (here / "out").exists()


def test_one_drawing_goes_into_a_folder_that_is_named(here: Path) -> None:
    main(["mark", WALL, "-o", "for site", *LAYERS])
    assert [path.name for path in (here / "for site").iterdir()] == ["wall-base-faulty-marked.dxf"]


def test_several_drawings_are_marked_in_one_go(here: Path) -> None:
    assert main(["mark", WALL, SOUND, "-o", "out", *LAYERS]) == FAULTS
    assert flags(Path("out/wall-base-faulty-marked.dxf")) == ["1", "2"]
    assert flags(Path("out/wall-base-marked.dxf")) == []
    Path("alone").mkdir()
    assert main(["mark", WALL, "-o", "alone", *LAYERS]) == FAULTS
    assert flags(Path("alone/wall-base-faulty-marked.dxf")) == ["1", "2"]


def test_marks_stand_in_the_layout_that_was_read(here: Path) -> None:
    doc = ezdxf.readfile(WALL)
    sheet = doc.layouts.new("Sheet")
    for each in list(doc.modelspace()):
        doc.modelspace().move_to_layout(each, sheet)
    doc.saveas("sheet.dxf")
    read = ["--layout", "Sheet", "--link", "wall.pdf", *LAYERS]
    assert main(["mark", "sheet.dxf", "-o", "out.dxf", *read]) == FAULTS
    marked = ezdxf.readfile("out.dxf")
    words = [e.dxf.text for e in marked.layout("Sheet").query(f'TEXT[layer=="{FLAGS}"]')]
    assert words == ["1", "2"]
    assert len(marked.modelspace()) == 0
    assert main(["mark", "out.dxf", "-o", "again.dxf", *read]) == FAULTS
    assert Path("again.dxf").read_bytes() == Path("out.dxf").read_bytes()


def test_findings_of_several_drawings_are_one_table(here: Path) -> None:
    assert main(["table", WALL, WINDOW, "-o", "found.csv", *LAYERS]) == FAULTS
    found = rows(here / "found.csv")
    assert {row["Drawing"] for row in found} == {"wall-base-faulty.dxf", "window-faulty.dxf"}
    assert KEY in {row["Key"] for row in found}


def test_the_site_list_is_a_table_of_its_own(
    here: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert main(["table", SOUND, "-o", "site.csv", "--site", *LAYERS]) == NOTHING_WRONG
    listed = rows(here / "site.csv")
    assert len(listed) > 10
    assert {row["Seen"] for row in listed} == {"not looked at"}
    assert capsys.readouterr().out == f"site.csv is written (site list: {len(listed)}).\n"


def test_a_project_gives_a_workbook_with_verdicts_and_its_photographs(project: Path) -> None:
    arguments = ["table", str(project), "-o", "found.xlsx", "--photographs", "photos"]
    assert main(arguments) == FAULTS
    book = openpyxl.load_workbook("found.xlsx")
    assert book.sheetnames == ["Findings", "Site list", "About this table"]
    head, *found = book["Findings"].iter_rows(values_only=True)
    decided = next(dict(zip(head, r, strict=True)) for r in found if KEY in r)
    assert (decided["Verdict"], decided["By whom"]) == ("Mended", "Ida")
    assert decided["Photographs"] == "IMG_0042.jpg"
    assert Path("photos/IMG_0042.jpg").read_bytes() == SILL.data


def test_topics_of_bcf_are_called_the_same_before_and_after_the_project_is_saved(
    project: Path,
) -> None:
    assert main(["exchange", str(project), "-o", "a.bcf"]) == FAULTS
    assert main(["exchange", str(project), "-o", "b.bcf"]) == FAULTS
    one, two = (to_json(BytesIO(Path(name).read_bytes())) for name in ("a.bcf", "b.bcf"))
    assert [topic["guid"] for topic in one] == [topic["guid"] for topic in two]
    states = {topic["topic_status"]: topic["comments"] for topic in one}
    assert states["Mended"][0]["author"] == "Ida"
    assert main(["exchange", WALL, WINDOW, "-o", "c.bcf", *LAYERS]) == FAULTS
    other = to_json(BytesIO(Path("c.bcf").read_bytes()))
    names = {topic["guid"] for topic in other}
    assert {topic["guid"] for topic in one} < names
    assert main(["exchange", WINDOW, "-o", "d.bcf", *LAYERS]) == FAULTS
    assert {t["guid"] for t in to_json(BytesIO(Path("d.bcf").read_bytes()))} < names


def test_findings_of_a_set_say_which_drawing_they_are_of(house: Path) -> None:
    names = {"wall-base-faulty.dxf", "window-faulty.dxf"}
    assert main(["table", str(house), "-o", "found.csv"]) == FAULTS
    assert {row["Drawing"] for row in rows(Path("found.csv"))} == names
    assert main(["table", str(house), "-o", "site.csv", "--site"]) == FAULTS
    assert {row["Drawing"] for row in rows(Path("site.csv"))} == names
    assert main(["exchange", str(house), "-o", "found.bcf"]) == FAULTS
    assert main(["exchange", WALL, WINDOW, "-o", "bare.bcf", *LAYERS]) == FAULTS
    for name in ("found.bcf", "bare.bcf"):
        with ZipFile(name) as archive:
            texts = [
                archive.read(n).decode() for n in archive.namelist() if n.endswith("markup.bcf")
            ]
        assert {re.search("<Filename>(.*)<", text)[1] for text in texts} == names


@pytest.mark.parametrize(
    ("arguments", "sentence"),
    [
        (["mark", WALL, "-o", "out.dxf", "--layout", "A1"], "has no layout “A1”"),
        (["mark", WALL, SOUND, "-o", "out.dxf"], "there are 2 drawings, each to be a file of its"),
        (["table", WALL, "-o", "out.ods"], "out.ods: name a file that ends in .csv or .xlsx."),
        (["table", "none.dxf", "-o", "out.csv"], "There is no file “none.dxf”"),
        (["exchange", "none.json", "-o", "out.bcf"], "none.json"),
        (
            ["exchange", WALL, "-o", "out.zip"],
            "out.zip: name a file that ends in .bcf or .bcfzip.",
        ),
        (
            ["exchange", WALL, "-o", "."],
            ". is a folder: name a file that ends in .bcf or .bcfzip.",
        ),
        (["mark", WALL, "-o", "out.txt"], "out.txt: name a file that ends in .dxf."),
        (["sheet", WALL, "-o", "."], ". is a folder: name a file that ends in .pdf."),
        (["sheet", WALL, "-o", "out.pdf", "--date", "24.3.2026"], "24.3.2026 is no day; type it"),
        (["sheet", WALL, "-o", "out"], "out: name a file that ends in .pdf."),
        (["mark", WALL, "-o", "nowhere/out.dxf"], "cannot be written"),
        (["table", WALL, "-o", "out.csv", "--photographs", WALL], "cannot be made"),
    ],
)
def test_what_cannot_be_done_is_one_sentence(
    arguments: list[str], sentence: str, here: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert main([*arguments, *LAYERS]) == UNUSABLE
    said = capsys.readouterr().err
    assert sentence in said
    assert len(said.splitlines()) == 1


@pytest.mark.parametrize("command", ["mark", "table", "exchange"])
def test_a_drawing_is_never_written_over(
    command: str, here: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    Path("wall.csv").write_bytes(Path(WALL).read_bytes())
    assert main([command, "wall.csv", "-o", "wall.csv", *LAYERS]) == UNUSABLE
    assert "wall.csv is a file to be read" in capsys.readouterr().err
    assert Path("wall.csv").read_bytes() == Path(WALL).read_bytes()
