"""Everything is reached by keys, and says what it is to who cannot see it."""

from collections.abc import Callable, Iterator

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QAccessible
from PySide6.QtWidgets import (
    QAbstractButton,
    QAbstractScrollArea,
    QApplication,
    QDialog,
    QTabBar,
    QTabWidget,
    QWidget,
)
from pytestqt.qtbot import QtBot

from enclosure_app.window.main_window import MainWindow

Opened = Callable[..., MainWindow]
TAB = Qt.FocusPolicy.TabFocus


def takes_keys(widget: QWidget) -> bool:
    return bool(widget.focusPolicy() & TAB) and widget.isVisible() and widget.isEnabled()


def told(widget: QWidget) -> str:
    """Return what a screen reader says of a widget: its name, its text, or its label's."""
    seen_by_reader = QAccessible.queryAccessibleInterface(widget)
    return str(seen_by_reader.text(QAccessible.Text.Name))


def known(widget: QWidget) -> str:
    return f"{type(widget).__name__} {widget.objectName()} in {type(widget.parent()).__name__}"


def with_its_group(widget: QWidget | None) -> set[QWidget | None]:
    """Return a widget and those to which the arrows lead from it: one of a group is checked."""
    group = widget.group() if isinstance(widget, QAbstractButton) else None
    return {widget, *group.buttons()} if group and group.exclusive() else {widget}


def in_front(window: MainWindow) -> QWidget:
    """Return the dialog that is open, or the window itself."""
    dialogs = [each for each in window.findChildren(QDialog) if each.isVisible()]
    return dialogs[-1] if dialogs else window


def seen(window: MainWindow) -> Iterator[QWidget]:
    for widget in in_front(window).findChildren(QWidget):
        inside = isinstance(widget.parent(), QAbstractScrollArea)  # a viewport speaks for nothing
        if takes_keys(widget) and not inside and not isinstance(widget, QTabWidget):
            yield widget


def begun(window: MainWindow) -> None:
    assert window.views.start.isVisible()


def judged(window: MainWindow) -> None:
    window.filing.open_sample("eave-flush-faulty.dxf", "layers-second-office.toml")
    window.do("next_finding")


def several(window: MainWindow) -> None:
    window.filing.open_sample("four-sections-faulty.dxf", "layers-second-office.toml")


def explained(window: MainWindow) -> None:
    judged(window)
    window.do("why")


def asked(window: MainWindow) -> None:
    judged(window)
    window.messages.ask("Go on?", {"Yes": lambda: None})


def reasoned(window: MainWindow) -> None:
    judged(window)
    window.do("decide_accepted")


def preferring(window: MainWindow) -> None:
    judged(window)
    window.do("preferences")


def figuring(window: MainWindow) -> None:
    """Show the required figures among the preferences."""
    preferring(window)
    (tabs,) = in_front(window).findChildren(QTabWidget)
    tabs.setCurrentIndex(1)


def own_product(window: MainWindow) -> None:
    judged(window)
    add = (b for b in window.lines.findChildren(QAbstractButton) if b.text() == "Add your own")
    next(add).click()


def sizing(window: MainWindow) -> None:
    """Show the form of sizes of a ready-made part."""
    window.filing.parts.actions()[0].trigger()


def walking(window: MainWindow) -> None:
    """Stand at a finding of the walk."""
    judged(window)
    window.do("walk")


def looking(window: MainWindow) -> None:
    """Stand at a place to look at, with no name given."""
    walking(window)
    page = window.views.walk
    page.go_to(next(stop.key for stop in page.stops if stop.place))


def signing(window: MainWindow) -> None:
    walking(window)
    window.views.walk.go_to("")


STATES = (
    begun,
    judged,
    several,
    explained,
    asked,
    reasoned,
    preferring,
    figuring,
    own_product,
    sizing,
    walking,
    looking,
    signing,
)


@pytest.mark.parametrize("state", STATES, ids=lambda state: state.__name__)
def test_all_that_takes_keys_says_what_it_is(
    window: MainWindow, state: Callable[[MainWindow], None]
) -> None:
    state(window)
    assert [known(widget) for widget in seen(window) if not told(widget)] == []


@pytest.mark.parametrize("state", STATES, ids=lambda state: state.__name__)
def test_tab_reaches_all_that_takes_keys(
    window: MainWindow, state: Callable[[MainWindow], None], qtbot: QtBot
) -> None:
    state(window)
    in_front(window).activateWindow()
    qtbot.waitUntil(in_front(window).isActiveWindow)
    wanted = set(seen(window))
    start = next(iter(wanted))
    start.setFocus(Qt.FocusReason.TabFocusReason)
    reached = {QApplication.focusWidget()}
    for _ in range(3 * len(wanted)):
        qtbot.keyClick(QApplication.focusWidget() or window, Qt.Key.Key_Tab)
        reached |= with_its_group(QApplication.focusWidget())
    assert [known(widget) for widget in wanted - reached] == []


@pytest.mark.parametrize("state", STATES, ids=lambda state: state.__name__)
def test_what_a_mouse_clicks_keys_reach_too(
    window: MainWindow, state: Callable[[MainWindow], None]
) -> None:
    """No button and no row of tabs is for the mouse alone."""
    state(window)
    buttons = [*window.findChildren(QAbstractButton), *window.findChildren(QTabBar)]
    qts_own = ("qt_", "ScrollLeftButton", "ScrollRightButton")
    assert [
        known(button)
        for button in buttons
        if button.isVisible()
        and button.isEnabled()
        and not button.objectName().startswith(qts_own)
        and not button.focusPolicy() & TAB
    ] == []


def test_the_first_page_leads_to_a_judged_sample_by_two_keys(
    window: MainWindow, qtbot: QtBot
) -> None:
    button = next(
        b for b in window.views.start.findChildren(QAbstractButton) if "eave" in b.text()
    )
    button.setFocus(Qt.FocusReason.TabFocusReason)
    qtbot.keyClick(button, Qt.Key.Key_Space)
    assert [row.finding.rule for row in window.findings.model.rows] == [
        "wet-route",
        "reverse-lap",
        "edge-cover-short",
    ]
