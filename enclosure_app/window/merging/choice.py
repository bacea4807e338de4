"""One of several that stand side by side, chosen in place: a picture or words above, a button below."""

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLabel, QRadioButton, QVBoxLayout, QWidget


class Choice(QWidget):
    """Shows one side, with the button that takes it."""

    def __init__(self, text: str, told: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.button = QRadioButton(text, self)
        self.told = QLabel(told, self)
        self.told.setWordWrap(True)
        self.told.setTextFormat(Qt.TextFormat.PlainText)
        self.told.setVisible(bool(told))
        self.button.setAccessibleDescription(told)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self.button)
        column.addWidget(self.told)
        column.addStretch(1)

    def show_picture(self, picture: QWidget, height: int) -> None:
        """Put a picture below the button, in place of empty room."""
        picture.setMinimumHeight(height)
        column = self.layout()
        if isinstance(column, QVBoxLayout):
            column.insertWidget(1, picture, 1)
