"""Lays widgets out in a row, and in more rows where one has no room for all of them."""

from PySide6.QtCore import QPoint, QRect, QSize, Qt
from PySide6.QtWidgets import QLayout, QLayoutItem


class FlowLayout(QLayout):
    """Items one after the other, each as wide as it likes to be; the last ones wrap."""

    def __init__(self, gap: int = 6) -> None:
        super().__init__()
        self._gap = gap
        self._items: list[QLayoutItem] = []

    def addItem(self, item: QLayoutItem) -> None:
        """Add an item at the end."""
        self._items.append(item)

    def count(self) -> int:
        """Return how many items there are."""
        return len(self._items)

    def itemAt(self, index: int) -> QLayoutItem | None:
        """Return an item, None past the end."""
        return self._items[index] if 0 <= index < len(self._items) else None

    def takeAt(self, index: int) -> QLayoutItem | None:
        """Take an item out."""
        return self._items.pop(index) if 0 <= index < len(self._items) else None

    def expandingDirections(self) -> Qt.Orientation:
        """Return that it wants no more room than it needs."""
        return Qt.Orientation(0)

    def hasHeightForWidth(self) -> bool:
        """Return that it is the higher the narrower it is."""
        return True

    def heightForWidth(self, width: int) -> int:
        """Return how high it is in a width."""
        places = self._places(width)
        return max((place.bottom() + 1 for place in places), default=0)

    def sizeHint(self) -> QSize:
        """Return the size of one row of all items."""
        sizes = [item.sizeHint() for item in self._items]
        wide = sum(size.width() for size in sizes) + self._gap * max(len(sizes) - 1, 0)
        return QSize(wide, max((size.height() for size in sizes), default=0))

    def minimumSize(self) -> QSize:
        """Return the size of the widest item alone."""
        size = QSize()
        for item in self._items:
            size = size.expandedTo(item.minimumSize())
        return size

    def setGeometry(self, rect: QRect) -> None:
        """Place the items."""
        super().setGeometry(rect)
        for item, place in zip(self._items, self._places(rect.width()), strict=True):
            item.setGeometry(place.translated(rect.topLeft()))

    def _places(self, width: int) -> list[QRect]:
        places: list[QRect] = []
        at, high = QPoint(0, 0), 0
        for item in self._items:
            size = item.sizeHint()
            wide = min(size.width(), max(width, 1))
            if at.x() and at.x() + wide > width:
                at, high = QPoint(0, at.y() + high + self._gap), 0
            places.append(QRect(at, QSize(wide, size.height())))
            at += QPoint(wide + self._gap, 0)
            high = max(high, size.height())
        return places
