"""A line of words that is cut with dots where there is no room for all of it."""

from PySide6.QtCore import Qt
from PySide6.QtGui import QPainter, QPaintEvent
from PySide6.QtWidgets import QLabel, QSizePolicy, QWidget


class ElidedLabel(QLabel):
    """Shows the beginning of its text; the tip shows all of it."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Fixed)

    def tell(self, text: str) -> None:
        """Show a text."""
        self.setText(text)
        self.setToolTip(text)

    @property
    def shown(self) -> str:
        """What there is room for."""
        end = Qt.TextElideMode.ElideRight
        return self.fontMetrics().elidedText(self.text(), end, self.contentsRect().width())

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint what there is room for."""
        del event
        painter = QPainter(self)
        self.style().drawItemText(
            painter,
            self.contentsRect(),
            int(self.alignment()),
            self.palette(),
            self.isEnabled(),
            self.shown,
            self.foregroundRole(),
        )
