"""What is handed over of an open project, without the window."""

from collections.abc import Iterator
from io import BytesIO
from pathlib import Path
from zipfile import ZipFile

import ezdxf
import openpyxl
import pytest
from bcf_api_xml import to_json
from lxml import etree
from PySide6.QtWidgets import QApplication

from enclosure_app.checker import check_drawing
from enclosure_app.files.maps.layer_map import load_layer_map
from enclosure_app.files.project.file import load_project, save_project
from enclosure_app.files.projects import Wish, limits_of, read_project
from enclosure_app.language import say
from enclosure_app.model.project import drawing_of
from enclosure_app.reports.dxf.layers import FLAGS
from enclosure_app.resources import sample
from enclosure_app.rules import RULES
from enclosure_app.window.apart.orders import Order, read_order
from enclosure_app.window.filing.handing import Open, exchange, mark, tabulate
from enclosure_app.window.languages import speak_in, tongue_of
from tests.reports.bcf.test_archive import schema_file


def opened(drawing: Path = sample("wall-base-faulty.dxf")) -> Open:  # noqa: B008  a constant
    layers = load_layer_map(sample("layers.toml"), [rule.name for rule in RULES])
    project = read_project(drawing, Wish(layers))
    return Open(project, check_drawing(drawing_of(project), limits_of(project)).sections)


def test_marks_lead_to_the_sheet_that_lies_beside_them(tmp_path: Path) -> None:
    wall = opened()
    source = sample("wall-base-faulty.dxf")
    assert mark([tmp_path / "a.dxf"], [source], wall) == []
    (tmp_path / "b.pdf").touch()
    mark([tmp_path / "b.dxf"], [source], wall)
    assert b"urn:uuid:" in (tmp_path / "a.dxf").read_bytes()
    assert b"b.pdf" in (tmp_path / "b.dxf").read_bytes()
    assert b"urn:uuid:" not in (tmp_path / "b.dxf").read_bytes()


def test_a_project_without_photographs_makes_no_folder(tmp_path: Path) -> None:
    assert tabulate(tmp_path / "a.csv", opened()) is None
    assert [each.name for each in tmp_path.iterdir()] == ["a.csv"]


def topics(path: Path) -> list[str]:
    return [topic["guid"] for topic in to_json(BytesIO(path.read_bytes()))]


def test_topics_are_called_the_same_in_every_session_and_once_it_is_saved(
    tmp_path: Path, qapp: object
) -> None:
    today, tomorrow = opened(), opened()
    exchange(tmp_path / "today.bcf", today)
    exchange(tmp_path / "tomorrow.bcf", tomorrow)
    assert topics(tmp_path / "today.bcf") == topics(tmp_path / "tomorrow.bcf") != []
    save_project(today.project, tmp_path / "wall.enclosure.json")
    saved = Open(load_project(tmp_path / "wall.enclosure.json"), today.results)
    exchange(tmp_path / "saved.bcf", saved)
    assert topics(tmp_path / "saved.bcf") == topics(tmp_path / "today.bcf")


def test_each_drawing_of_a_project_is_marked_by_itself(tmp_path: Path, qapp: object) -> None:
    sources = [sample("wall-base-faulty.dxf"), sample("window-faulty.dxf")]
    project = read_order(Order(tuple(sources), layers=sample("layers.toml")))
    both = Open(project, check_drawing(drawing_of(project), limits_of(project)).sections)
    assert [each.drawing.file for each in both.handed.results] == [*map(str, sources)]
    assert mark([tmp_path / "a.dxf", tmp_path / "b.dxf"], sources, both) == []
    found = [sum(len(s.findings) for s in each.sections) for each in both.handed.results]
    for name, number in zip("ab", found, strict=True):
        rings = ezdxf.readfile(tmp_path / f"{name}.dxf").modelspace().query("CIRCLE")
        assert sum(ring.dxf.layer == FLAGS for ring in rings) == number > 0


@pytest.fixture
def german(qapp: QApplication) -> Iterator[None]:
    speak_in(qapp, tongue_of("de", []))
    yield
    speak_in(qapp, tongue_of("en", []))


@pytest.mark.usefixtures("german")
def test_a_coordinator_gets_german_words_that_are_sorted_by_english_ones(tmp_path: Path) -> None:
    exchange(tmp_path / "a.bcf", opened())
    for topic in to_json(BytesIO((tmp_path / "a.bcf").read_bytes())):
        assert (topic["topic_type"], topic["topic_status"]) in (
            ("Fault", "Open"),
            ("Doubt", "Open"),
        )
        assert "Zu tun: " in topic["description"]
    rules = etree.XMLSchema(etree.parse(schema_file("markup.xsd")))
    with ZipFile(tmp_path / "a.bcf") as archive:
        for name in archive.namelist():
            if name.endswith("markup.bcf"):
                rules.assertValid(etree.fromstring(archive.read(name)))


@pytest.mark.usefixtures("german")
def test_german_words_stand_in_an_old_drawing_and_in_a_workbook(tmp_path: Path) -> None:
    """R12 has no umlauts: they are spelt out, as CAD programs do."""
    source = sample("window-faulty.dxf")
    wall = opened(source)
    mark([tmp_path / "a.dxf"], [source], wall)
    written = (tmp_path / "a.dxf").read_bytes()
    words = " ".join(
        each.plain_text() for each in ezdxf.readfile(tmp_path / "a.dxf").query("TEXT")
    )
    assert "Höhe" in words
    assert "Höhe".encode() not in written
    tabulate(tmp_path / "a.xlsx", wall)
    book = openpyxl.load_workbook(tmp_path / "a.xlsx")
    assert book.sheetnames[:2] == [say("Findings"), say("Site list")]
    assert book.worksheets[0]["F1"].value == "Was gefunden wurde"
