"""A window that asks on cards, one below the other, beside the drawing; nothing waits for it."""

from collections.abc import Iterable

from PySide6.QtCore import QSize, Qt
from PySide6.QtWidgets import QDialog, QLabel, QScrollArea, QVBoxLayout, QWidget

from enclosure_app.window.revising.saying_bar import SayingBar


class CardWindow(QDialog):
    """Shows what is `told`, the cards, and the bar below. Each card says that it `changed`."""

    def __init__(
        self, words: tuple[str, str, str], size: tuple[int, int], parent: QWidget | None
    ) -> None:
        title, leave, take = words
        super().__init__(parent)
        self.setWindowTitle(title)
        self.resize(QSize(*size).boundedTo(self.screen().availableSize()))
        self.told = QLabel(self)
        self.told.setWordWrap(True)
        self.told.setTextFormat(Qt.TextFormat.PlainText)
        self.bar = SayingBar(leave, take, self)
        self.bar.changed.connect(self.look_over)
        self.bar.left.connect(self.close)
        self._room = QScrollArea(self)
        self._room.setWidgetResizable(True)
        self._room.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        column = QVBoxLayout(self)
        column.addWidget(self.told)
        column.addWidget(self._room, 1)
        column.addWidget(self.bar)

    def show_cards(self, cards: Iterable[QWidget], who: str) -> None:
        """Put other cards in the place of those that were shown; `who` is asked by it."""
        inside = QWidget(self._room)
        column = QVBoxLayout(inside)
        column.setSpacing(8)
        for card in cards:
            column.addWidget(card)
        column.addStretch(1)
        self._room.setWidget(inside)
        self.bar.who.setText(who)
        self.look_over()

    def look_over(self) -> None:
        """Say what is lacking, after a card or the name was changed."""
        raise NotImplementedError
