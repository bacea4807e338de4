"""A pile of pages that is only as large as the one that is seen."""

from PySide6.QtCore import QSize
from PySide6.QtWidgets import QStackedWidget, QWidget


class OnePage(QStackedWidget):
    """Asks for the room of the page on top: what lies below it keeps no window from being narrow."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.currentChanged.connect(self.updateGeometry)

    def minimumSizeHint(self) -> QSize:
        """Return the least size of the page that is seen."""
        page = self.currentWidget()
        return QSize() if page is None else page.minimumSizeHint().expandedTo(page.minimumSize())
