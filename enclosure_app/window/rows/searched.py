"""A list of rows that is searched: the field above it, and the list itself."""

from PySide6.QtCore import QAbstractItemModel, Qt
from PySide6.QtWidgets import (
    QAbstractItemView,
    QLineEdit,
    QListView,
    QStyledItemDelegate,
    QWidget,
)


def made_search(parent: QWidget, hint: str, name: str) -> QLineEdit:
    """Return a field to search in: `hint` stands in it while it is empty, `name` is read aloud."""
    search = QLineEdit(parent)
    search.setPlaceholderText(hint)
    search.setClearButtonEnabled(True)
    search.setAccessibleName(name)
    return search


def made_list(
    parent: QWidget, model: QAbstractItemModel, delegate: QStyledItemDelegate, name: str
) -> QListView:
    """Return a list of rows of one height that are as wide as it is; `name` is read aloud."""
    view = QListView(parent)
    view.setModel(model)
    delegate.setParent(view)
    view.setItemDelegate(delegate)
    view.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
    view.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
    view.setResizeMode(QListView.ResizeMode.Adjust)
    view.setUniformItemSizes(True)
    view.setAccessibleName(name)
    return view
