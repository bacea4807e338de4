"""A form beside the drawing that asks for a few sizes, and shows at once what each one makes.

Nothing waits for it: the drawing goes on being drawn in. A value that cannot be is told in one
sentence below the fields, and the last good one stays in force.
"""

from collections.abc import Callable, Mapping, Sequence

from PySide6.QtCore import QCoreApplication, Qt, QTimer, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import (
    QFrame,
    QGridLayout,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QPushButton,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from enclosure_app.errors import EnclosureError
from enclosure_app.model.drawing import Units
from enclosure_app.window.typed.typed_size import Asked, range_words, read_size, written_size

_PAUSE = 350  # ms after the last letter until a size is taken
_WIDTH = 300

Take = Callable[[Mapping[str, float]], None]
"""What is done with good sizes; it may refuse them with an `EnclosureError`."""


class SizesForm(QFrame):
    """Asks for sizes. `closed`: the person is done with it."""

    closed = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("panel")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self.setFixedWidth(_WIDTH)
        self.fields: dict[str, QLineEdit] = {}
        self._asked: Sequence[Asked] = ()
        self._units = Units.MM
        self._take: Take = _nothing
        self.title, self.wrong = _label(self, "panel-title"), _label(self, "message")
        self.buttons = QVBoxLayout()
        self._room = QScrollArea(self)
        self._room.setFocusPolicy(Qt.FocusPolicy.NoFocus)  # it follows what the keys reach
        self._done = QPushButton(say("Done"), self)
        self._done.setObjectName("main")
        self._done.clicked.connect(self.leave)
        self._timer = QTimer(self)
        self._timer.setSingleShot(True)
        self._timer.setInterval(_PAUSE)
        self._timer.timeout.connect(self.take_now)
        self._lay_out()
        self.hide()

    def ask(self, title: str, asked: Sequence[Asked], units: Units, take: Take) -> None:
        """Ask for sizes; `take` gets all of them as soon as they are good."""
        self._asked, self._units, self._take = asked, units, take
        self.title.setText(title)
        self._tell("")
        self._clear_buttons()
        self._room.setWidget(self._made_fields())
        self.show()
        self._make_room()
        next(iter(self.fields.values())).setFocus()

    def add_button(self, text: str, does: Callable[[], object]) -> QPushButton:
        """Add a button above the last one."""
        button = QPushButton(text, self)
        button.clicked.connect(lambda _=False: does())
        self.buttons.addWidget(button)
        return button

    def take_now(self) -> None:
        """Read every field, and hand the sizes on if all of them are good."""
        self._timer.stop()
        if self.isHidden():
            return
        try:
            values = {
                asked.name: read_size(asked, self.fields[asked.name].text(), self._units)
                for asked in self._asked
            }
            self._take(values)
        except EnclosureError as error:
            self._tell(str(error))
            return
        self._tell("")

    def leave(self) -> None:
        """Take what was typed last, and go."""
        if self._timer.isActive():
            self.take_now()
        self.put_away()

    def put_away(self) -> None:
        """Go without taking anything."""
        self._timer.stop()
        if not self.isHidden():
            self.hide()
            self.closed.emit()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Take the sizes at Enter, go at Escape."""
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self.take_now()
        elif event.key() == Qt.Key.Key_Escape:
            self.leave()
        else:
            super().keyPressEvent(event)

    def _made_fields(self) -> QWidget:
        held = QWidget(self)
        rows = QGridLayout(held)
        rows.setContentsMargins(0, 0, 6, 0)
        rows.setVerticalSpacing(6)
        rows.setColumnStretch(0, 1)
        rows.setRowStretch(len(self._asked), 1)
        self.fields = {}
        for row, asked in enumerate(self._asked):
            field = self._made_field(asked, held)
            words = QLabel(asked.words, held)
            words.setWordWrap(True)
            words.setBuddy(field)
            rows.addWidget(words, row, 0)
            rows.addWidget(field, row, 1)
            self.fields[asked.name] = field
        return held

    def _made_field(self, asked: Asked, held: QWidget) -> QLineEdit:
        field = QLineEdit(written_size(asked, asked.value, self._units), held)
        field.setToolTip(range_words(asked, self._units))
        field.setAccessibleName(asked.words)
        field.setAlignment(Qt.AlignmentFlag.AlignRight)
        field.setFixedWidth(104)
        field.textEdited.connect(self._timer.start)
        return field

    def _lay_out(self) -> None:
        self._room.setWidgetResizable(True)
        self._room.setFrameShape(QFrame.Shape.NoFrame)
        self._room.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        foot = QHBoxLayout()
        foot.addStretch(1)
        foot.addWidget(self._done)
        column = QVBoxLayout(self)
        column.setContentsMargins(14, 12, 10, 12)
        column.addWidget(self.title)
        column.addWidget(self._room, 1)
        column.addWidget(self.wrong)
        column.addLayout(self.buttons)
        column.addLayout(foot)

    def _make_room(self) -> None:
        """Let the drawing make room at once, so that it can be fitted into what is left."""
        parent = self.parentWidget()
        layout = parent.layout() if parent else None
        if layout is not None:
            layout.activate()

    def _clear_buttons(self) -> None:
        while (item := self.buttons.takeAt(0)) is not None:
            widget = item.widget()
            if widget:
                widget.hide()
                widget.deleteLater()

    def _tell(self, sentence: str) -> None:
        self.wrong.setText(sentence)
        self.wrong.setVisible(bool(sentence))


def _label(parent: QWidget, look: str) -> QLabel:
    label = QLabel(parent)
    label.setObjectName(look)
    label.setWordWrap(True)
    return label


def _nothing(values: Mapping[str, float]) -> None:
    """Do nothing with sizes: none are asked for."""


def say(text: str) -> str:
    """Return a text in the window's language."""
    return QCoreApplication.translate("Sizes", text)
