"""The sheets are set up by mouse and keys, at once, and issued that way."""

from collections.abc import Callable
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QComboBox, QFileDialog, QPushButton
from pytestqt.qtbot import QtBot

from enclosure_app.drawing.sheet.setup import SheetSetup
from enclosure_app.model.drawing import Units
from enclosure_app.window.filing.sheet_form import SheetForm
from enclosure_app.window.main_window import MainWindow

pypdf = pytest.importorskip("pypdf")

Opened = Callable[..., MainWindow]


@pytest.fixture
def form(qtbot: QtBot) -> SheetForm:
    made = SheetForm()
    qtbot.addWidget(made)
    made.show_setup(SheetSetup(), Units.MM)
    made.show()
    return made


def choose(qtbot: QtBot, box: QComboBox, words: str) -> None:
    """Go down to a choice with the keys."""
    box.setFocus()
    for _ in range(box.findText(words) - box.currentIndex()):
        qtbot.keyClick(box, Qt.Key.Key_Down)
    assert box.currentText() == words


def test_what_is_set_up_is_told_at_once(form: SheetForm, qtbot: QtBot) -> None:
    told: list[SheetSetup] = []
    form.changed.connect(told.append)
    qtbot.keyClicks(form.who, "Ada Berg")
    qtbot.keyClicks(form.revision, "C")
    choose(qtbot, form.paper, "A1")
    choose(qtbot, form.scale, "1:5")
    choose(qtbot, form.cover, "always")
    assert told[-1] == form.setup == SheetSetup("A1", "1:5", "C", "Ada Berg", cover=True)


def test_papers_and_scales_are_those_of_the_units(form: SheetForm) -> None:
    assert form.paper.itemText(0) == "A3 (as usual)"
    assert form.scale.findText("1:20") > 0
    form.show_setup(SheetSetup(paper="ANSI D", scale="1:20", revision="B"), Units.IN)
    assert form.paper.itemText(0) == "ANSI B (as usual)"
    assert form.scale.findText('3" = 1\'-0"') > 0
    assert form.setup == SheetSetup(paper="ANSI D", revision="B")  # no such scale in inches


def test_one_goes_on_from_here(form: SheetForm, qtbot: QtBot) -> None:
    wanted: list[str] = []
    form.wanted.connect(wanted.append)
    button = form.findChild(QPushButton, "preview")
    assert button is not None
    qtbot.mouseClick(button, Qt.MouseButton.LeftButton)
    assert wanted == ["preview"]
    assert not form.isVisible()


def test_the_pdf_is_as_it_was_set_up(
    opened: Opened, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    window, path = opened(), tmp_path / "sheet.pdf"
    monkeypatch.setattr(QFileDialog, "getSaveFileName", lambda *_: (str(path), ""))
    window.do("set_up_sheets")
    form = window.findChild(SheetForm)
    assert form is not None
    form.who.clear()
    qtbot.keyClicks(form.who, "Ada Berg")
    qtbot.keyClicks(form.revision, "C")
    choose(qtbot, form.paper, "A4")
    choose(qtbot, form.cover, "always")
    write = form.findChild(QPushButton, "main")
    assert write is not None
    qtbot.mouseClick(write, Qt.MouseButton.LeftButton)
    cover, sheet = pypdf.PdfReader(path).pages
    assert "Revision C" in cover.extract_text()
    assert "Ada Berg" in sheet.extract_text()
    assert round(float(sheet.mediabox.width) * 25.4 / 72) == 297
    window.do("set_up_sheets")
    assert form.setup == SheetSetup("A4", "", "C", "Ada Berg", cover=True)
    form.close()
