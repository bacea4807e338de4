"""Which units a drawing is in is asked once, in place, with what each answer would mean."""

from collections.abc import Callable
from pathlib import Path

import ezdxf
import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QPushButton
from pytestqt.qtbot import QtBot

from enclosure_app.files.projects import Wish, read_project
from enclosure_app.files.units.evidence import Evidence
from enclosure_app.model.drawing import Units
from enclosure_app.model.edits import add_mark
from enclosure_app.model.edits.sections import Side
from enclosure_app.resources import sample
from enclosure_app.window.filing.units_asking import answer_words, evidence_of, size_words
from enclosure_app.window.main_window import MainWindow

Opened = Callable[..., MainWindow]


def drawing(folder: Path, high: float) -> Path:
    """Write a drawing that says nothing of its units: a box and a line."""
    document = ezdxf.new("R2010")
    document.header["$INSUNITS"] = 0
    document.header["$MEASUREMENT"] = 0
    model = document.modelspace()
    model.add_lwpolyline([(0, 0), (40, 0), (40, high), (0, high)], close=True)
    path = folder / "wall.dxf"
    document.saveas(path)
    return path


def buttons(window: MainWindow) -> list[QPushButton]:
    answers = window.messages.answers
    widgets = [answers.itemAt(i).widget() for i in range(answers.count())]
    return [widget for widget in widgets if isinstance(widget, QPushButton)]


def test_the_question_shows_what_each_answer_would_mean_the_likeliest_first(
    window: MainWindow, tmp_path: Path, qtbot: QtBot
) -> None:
    window.filing.open(drawing(tmp_path, 94.0))
    qtbot.waitUntil(window.messages.isVisible, timeout=10_000)
    told = window.messages.words.text()
    assert told.startswith("wall.dxf does not say in which units it is drawn.")
    assert "--units" not in told
    assert buttons(window)[0].text() == "inches: 7' 10\" high"
    assert {button.text() for button in buttons(window)} == {
        "inches: 7' 10\" high",
        "feet: 94' 0\" high",
        "millimetres: 94 mm high",
        "centimetres: 940 mm high",
        "metres: 94 m high",
    }
    qtbot.mouseClick(buttons(window)[0], Qt.MouseButton.LeftButton)
    qtbot.waitUntil(lambda: bool(window.document.project.sections), timeout=10_000)
    assert window.document.project.units is Units.IN
    assert not window.messages.isVisible()


def test_units_are_corrected_afterwards_and_what_was_drawn_goes_along(
    opened: Opened, qtbot: QtBot
) -> None:
    window = opened("parapet.dxf", "layers.toml")
    project = window.document.project
    assert project.units is Units.MM
    window.document.apply("mark", add_mark(project, 0, Side.INSIDE, (10.0, 20.0)))
    marked = window.document.project
    window.do("correct_units")
    assert window.messages.words.text().startswith("The drawing is read in millimetres.")
    assert not any(button.text().startswith("millimetres") for button in buttons(window))
    inches = next(b for b in buttons(window) if b.text().startswith("inches"))
    qtbot.mouseClick(inches, Qt.MouseButton.LeftButton)
    after = window.document.project
    assert after.units is Units.IN
    assert after.sections[0].inside[-1] == pytest.approx((254.0, 508.0))
    assert window.document.undo_stack.undoText() == "Read the drawing in inches"
    window.do("undo")
    assert window.document.project is marked


def test_without_a_drawing_nothing_is_asked(window: MainWindow) -> None:
    window.do("correct_units")
    assert not window.messages.isVisible()


@pytest.mark.parametrize(
    ("mm", "imperial", "words"),
    [
        (94.0, False, "94 mm"),
        (2387.6, False, "2.39 m"),
        (2387.6, True, "7' 10\""),
        (2390.0, True, "7' 10\""),  # to the inch: it is only to be compared
        (94.0, True, '3 11/16"'),
        (2.4e6, False, "2.4 km"),
    ],
)
def test_sizes_are_told_so_that_they_can_be_compared(
    mm: float, imperial: bool, words: str
) -> None:
    assert size_words(mm, imperial=imperial) == words


def test_a_drawing_that_is_flat_is_told_by_its_width_and_an_empty_one_by_the_unit() -> None:
    assert answer_words(Evidence("a", extent=3.0), Units.M) == "metres: 3 m wide"
    assert answer_words(Evidence("a"), Units.M) == "metres"


def test_an_open_drawing_is_as_high_as_its_highest_frame() -> None:
    project = read_project(sample("four-sections.dxf"), Wish(units=Units.MM))
    highs = [max(y for _, y in s.frame) - min(y for _, y in s.frame) for s in project.sections]
    assert evidence_of(project).high == pytest.approx(max(highs))
