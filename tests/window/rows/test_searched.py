"""A list that is searched: read aloud by its name, never wider than its place."""

from PySide6.QtCore import QStringListModel, Qt
from PySide6.QtWidgets import QStyledItemDelegate, QWidget
from pytestqt.qtbot import QtBot

from enclosure_app.window.rows.searched import made_list, made_search


def test_the_field_says_what_it_is_for_and_is_cleared_by_a_click(qtbot: QtBot) -> None:
    parent = QWidget()
    qtbot.addWidget(parent)
    search = made_search(parent, "Find a product: sheet, tape", "Find a product")
    assert search.placeholderText() == "Find a product: sheet, tape"
    assert search.accessibleName() == "Find a product"
    assert search.isClearButtonEnabled()


def test_the_list_keeps_its_delegate_and_never_scrolls_sideways(qtbot: QtBot) -> None:
    parent = QWidget()
    qtbot.addWidget(parent)
    delegate = QStyledItemDelegate()
    view = made_list(parent, QStringListModel(["x" * 500], parent), delegate, "Products")
    assert view.itemDelegate() is delegate
    assert delegate.parent() is view
    assert view.accessibleName() == "Products"
    assert view.horizontalScrollBarPolicy() is Qt.ScrollBarPolicy.ScrollBarAlwaysOff
