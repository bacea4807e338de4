"""What the drawing's notes say is offered, and taken in one step."""

from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QWidget
from pytestqt.qtbot import QtBot

from enclosure_app.planning.notes.reading import Proposal
from enclosure_app.window.lines.noting import tells_more, with_notes
from enclosure_app.window.main_window import MainWindow

Opened = Callable[..., MainWindow]


def answer(window: MainWindow, number: int) -> QWidget:
    item = window.messages.answers.itemAt(number)
    assert item is not None
    return item.widget()


def test_what_is_known_already_is_not_offered(opened: Opened) -> None:
    section = opened().document.project.sections[0]
    piece = next(piece for piece in section.pieces if piece.product == "plywood")
    known = Proposal("plywood", "plywood", 1.0, (0.0, 0.0), pieces=(piece.name,))
    other = Proposal("OSB", "osb", 1.0, (0.0, 0.0), pieces=(piece.name,))
    assert not tells_more(section, known)
    assert tells_more(section, other)


def test_a_note_that_means_a_line_makes_it_a_piece(opened: Opened) -> None:
    project = opened().document.project
    stroke = project.sections[0].strokes[2]
    note = Proposal("felt", "felt", 0.9, stroke.points[0], strokes=(2,))
    section = with_notes(project, 0, [note]).sections[0]
    assert section.by_name[stroke.handle].product == "felt"
    assert stroke not in section.strokes


def test_all_notes_are_taken_in_one_step(
    window: MainWindow, office_drawings: Path, qtbot: QtBot
) -> None:
    window.filing.open(office_drawings / "sections" / "wall_details_inches.dxf")
    before = window.document.project
    window.do("read_notes")
    assert "notes say what a line is made of" in window.messages.words.text()
    qtbot.mouseClick(answer(window, 0), Qt.MouseButton.LeftButton)
    assert window.document.project is not before
    assert window.document.undo_stack.undoText() == "Take what the notes say"
    window.do("undo")
    assert window.document.project is before


def test_one_by_one_shows_the_place_and_asks(
    window: MainWindow, office_drawings: Path, qtbot: QtBot
) -> None:
    window.filing.open(office_drawings / "sections" / "wall_details_inches.dxf")
    before = window.document.project
    window.do("read_notes")
    qtbot.mouseClick(answer(window, 1), Qt.MouseButton.LeftButton)
    first = window.messages.words.text()
    assert "is this line" in first
    qtbot.mouseClick(answer(window, 1), Qt.MouseButton.LeftButton)
    assert window.messages.words.text() != first
    assert window.document.project is before
