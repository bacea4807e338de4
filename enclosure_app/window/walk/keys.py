"""The keys of the walk. All of it can be done with them; what is typed into a line stays there."""

from collections.abc import Callable

from PySide6.QtCore import Qt
from PySide6.QtGui import QKeySequence, QShortcut

from enclosure_app.window.findings.verdict_box import CHOICES
from enclosure_app.window.walk.looks import ANSWERS
from enclosure_app.window.walk.page import WalkPage

_CLOSER = 1.5


def give_keys(page: WalkPage) -> None:
    """Give the page its keys."""
    does: dict[tuple[str, ...], Callable[[], object]] = {
        ("Right", "PgDown", "N"): lambda: page.step(1),
        ("Left", "PgUp", "Shift+N"): lambda: page.step(-1),
        ("+", "="): lambda: page.zoom(_CLOSER),
        ("-",): lambda: page.zoom(1 / _CLOSER),
        ("0",): page.show_all,
        ("Esc",): page.leave,
        ("A",): lambda: _press_all(page),
        ("W",): lambda: (
            page.words.finding.ask_why.click() if page.words.finding.isVisible() else None
        ),
        ("R",): lambda: _write(page),
        ("Q",): lambda: _choose_question(page),
        ("P",): lambda: (
            page.words.note.photograph.click() if page.words.note.isVisible() else None
        ),
        **{(str(n + 1),): _answer(page, n) for n in range(len(CHOICES))},
    }
    for names, do in does.items():
        for name in names:
            keys = QShortcut(QKeySequence(name), page)
            keys.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
            keys.activated.connect(do)
            if name == "Esc":  # both mean what takes long: that goes first
                keys.activatedAmbiguously.connect(page.halted)


def _press_all(page: WalkPage) -> None:
    """Say that all that is left at a place is in order."""
    if page.words.look_here.isVisible():
        page.words.look_here.looks.all_in_order.click()


def _choose_question(page: WalkPage) -> None:
    """Go on to the next question that a note may be about."""
    if page.words.look_here.isVisible():
        row = page.words.look_here.looks.choose_next()
        if row is not None:
            page.words.ensureWidgetVisible(row)


def _write(page: WalkPage) -> None:
    """Begin a remark, or on the last page the name."""
    line = page.words.note.words if page.words.note.isVisible() else page.words.signing.who
    line.setFocus()
    page.words.ensureWidgetVisible(line)


def _answer(page: WalkPage, number: int) -> Callable[[], None]:
    """Return what gives the finding its verdict of this number, or a question its answer."""

    def do() -> None:
        if page.words.finding.isVisible():
            page.words.finding.verdict.buttons[CHOICES[number]].click()
        elif page.words.look_here.isVisible() and number < len(ANSWERS):
            row = page.words.look_here.looks.next_row()
            if row is not None:
                page.words.ensureWidgetVisible(row)
                row.buttons[ANSWERS[number]].click()

    return do
