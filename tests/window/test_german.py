"""The German window has no English left in it: in its panels, menus and tips, nor in what it finds."""

from collections.abc import Iterator

import pytest
from PySide6.QtCore import QCoreApplication
from PySide6.QtGui import QAction
from PySide6.QtWidgets import (
    QAbstractButton,
    QApplication,
    QComboBox,
    QLabel,
    QLineEdit,
    QTextEdit,
    QToolButton,
    QWidget,
)
from pytestqt.qtbot import QtBot

from enclosure_app.drawing.sheet.job import SheetJob
from enclosure_app.drawing.sheet.sheet import compose_sheets
from enclosure_app.drawing.theme import load_theme
from enclosure_app.language import Language, speak
from enclosure_app.window.apart.working import Working
from enclosure_app.window.filing.printing import drawn
from enclosure_app.window.languages import TONGUES, speak_in
from enclosure_app.window.main_window import MainWindow
from enclosure_app.window.settings import Settings
from tests.test_translations import FILES, said

ENGLISH, GERMAN = TONGUES
KNOWN = said(FILES[0])
TRANSLATED = {source: words for (_, source), words in KNOWN.items()}
SAMPLES = {
    "eave-flush-faulty.dxf": "layers-second-office.toml",
    "ridge-faulty.dxf": "layers-second-office.toml",
    "pipe-through-wall-faulty.dxf": "layers.toml",
    "window-faulty.dxf": "layers.toml",
}


@pytest.fixture
def unsaid(qapp: QApplication) -> Iterator[set[str]]:
    """Speak German; gather what is to be said and has no German."""
    missing: set[str] = set()

    def translate(text: str) -> str:
        if ("Words", text) not in KNOWN and any(letter.isalpha() for letter in text):
            missing.add(text)
        return QCoreApplication.translate("Words", text)

    speak_in(qapp, GERMAN)
    speak(Language(translate, GERMAN.capitals, GERMAN.groups, GERMAN.point))
    yield missing
    speak_in(qapp, ENGLISH)


@pytest.fixture
def german(unsaid: set[str], qtbot: QtBot, settings: Settings) -> Iterator[MainWindow]:
    settings.language = GERMAN.code
    window = MainWindow(settings, Working(apart=False))
    qtbot.addWidget(window)
    window.show()
    yield window
    window.commands.files.leaving = True
    window.close()


def shown(window: MainWindow) -> Iterator[str]:
    """Yield every text of the window: what is read, pointed at, or read aloud."""
    for widget in [window, *window.findChildren(QWidget)]:
        yield from (widget.windowTitle(), widget.toolTip(), widget.statusTip())
        yield from (widget.accessibleName(), widget.accessibleDescription())
        if isinstance(widget, QLabel | QAbstractButton):
            yield widget.text()
        if isinstance(widget, QComboBox):
            yield from (widget.itemText(row) for row in range(widget.count()))
        if isinstance(widget, QLineEdit | QTextEdit):
            yield widget.placeholderText()
    for action in window.findChildren(QAction):
        yield from (action.text(), action.toolTip(), action.statusTip())


def english(texts: Iterator[str]) -> list[str]:
    """Return those that are an English text whose German is another one."""
    return sorted({text for text in texts if TRANSLATED.get(text, text) != text})


def opened(window: MainWindow, file: str, qtbot: QtBot) -> MainWindow:
    window.filing.open_sample(file, SAMPLES[file])
    assert window.document.project.sections
    qtbot.waitUntil(lambda: window.checking.current, timeout=20_000)
    window.do("next_finding")
    return window


def own_names(window: MainWindow) -> set[str]:
    """Return what the office called its products, which is nobody's to translate."""
    products = [product for section in window.document.project.sections
                for product in section.products.values()]  # fmt: skip
    return {text for product in products for text in (product.name, product.source)}


def left(unsaid: set[str], window: MainWindow) -> set[str]:
    """Return what has no German and should: neither the office's names nor what is German already."""
    least = TRANSLATED["least lap of {product}: {source}"].split("{")[0]
    composed = {text for text in unsaid if text.startswith(least)}
    return unsaid - own_names(window) - composed


def test_every_tool_has_room_in_the_bar_of_a_small_laptop(
    german: MainWindow, qtbot: QtBot
) -> None:
    opened(german, next(iter(SAMPLES)), qtbot)
    german.resize(1366, 768)
    more = german.tools.findChild(QToolButton, "qt_toolbar_ext_button")
    qtbot.waitUntil(lambda: german.tools.width() == 1366 and not more.isVisible())


def test_the_first_page_and_the_menus_are_german(german: MainWindow) -> None:
    assert english(shown(german)) == []


@pytest.mark.parametrize("file", SAMPLES)
def test_nothing_that_is_found_is_said_in_english(
    german: MainWindow, unsaid: set[str], file: str, qtbot: QtBot
) -> None:
    window = opened(german, file, qtbot)
    assert english(shown(window)) == []
    assert left(unsaid, window) == set()


@pytest.mark.parametrize("file", SAMPLES)
def test_the_sheet_is_lettered_in_german(
    german: MainWindow, unsaid: set[str], file: str, qtbot: QtBot
) -> None:
    window = opened(german, file, qtbot)
    result = drawn(window.document.project, tuple(window.checking.results))
    (page, *_) = compose_sheets((result,), SheetJob(paper="A3"), load_theme())
    words = {mark.text for mark in page.numbered(1, 1, load_theme()) if hasattr(mark, "text")}
    assert {"INNEN", "Maßstab", "gefordert"} <= words
    assert english(iter(words)) == []
    assert left(unsaid, window) == set()


@pytest.mark.parametrize("name", ["why", "show_keys", "show_about", "preferences"])
def test_every_page_is_german(
    german: MainWindow, unsaid: set[str], name: str, qtbot: QtBot
) -> None:
    window = opened(german, "eave-flush-faulty.dxf", qtbot)
    window.do(name)
    assert english(shown(window)) == []
    pages = " ".join(page.toPlainText() for page in window.findChildren(QTextEdit))
    told = " ".join(pages.split())
    assert [text for text in TRANSLATED if len(text) > 25 and text in told] == []
    assert left(unsaid, window) == set()


@pytest.mark.parametrize(
    "tool", ["sheet", "area", "trace", "points", "frame", "measure", "select"]
)
def test_every_hint_is_german(german: MainWindow, tool: str, qtbot: QtBot) -> None:
    window = opened(german, "eave-flush-faulty.dxf", qtbot)
    window.do(f"tool_{tool}")
    hint = window.views.hint.text()
    assert hint
    assert hint not in TRANSLATED
