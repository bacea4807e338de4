"""The head of the walk's page: where one is, how far, and which stops are walked."""

from collections.abc import Sequence

from PySide6.QtCore import Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QBoxLayout, QHBoxLayout, QLabel, QPushButton, QVBoxLayout, QWidget

from enclosure_app.model.standing.sign_offs import Signed
from enclosure_app.window.surround.elided_label import ElidedLabel
from enclosure_app.window.walk.overview import Overview
from enclosure_app.window.walk.stops import Round, Which

_NARROW = 1000  # dots: stops and filters stand side by side from this width on


class Head(QWidget):
    """`left`: enough for now. `chosen`: walk these stops only."""

    left = Signal()
    chosen = Signal(object)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("panel")
        self.back = QPushButton(self.tr("‹ Back to the drawing"), self)
        self.back.setToolTip(self.tr("Leave the walk (Esc); what was put down stays"))
        self.name, self.progress = ElidedLabel(self), QLabel(self)
        self.name.setObjectName("heading")
        self.progress.setObjectName("progress")
        self.still = QLabel(self)
        self.check = QPushButton(self.tr("Check now"), self)
        self.check.setToolTip(self.tr("Checking was stopped: check what is drawn now (F5)"))
        self.overview = Overview(self)
        self.filters = {which: self._made_filter(which) for which in Which}
        self.back.clicked.connect(self.left)
        self._below = QBoxLayout(QBoxLayout.Direction.LeftToRight)
        self._lay_out()

    def name_section(
        self, name: str, which: tuple[int, int], signed: Sequence[Signed] = ()
    ) -> None:
        """Name the section that is walked, which of several it is, and how it was signed."""
        told = [name]
        if which[1] > 1:
            told.append(self.tr("section {} of {}").format(*which))
        if any(each.changed for each in signed):
            told.append(self.tr("changed since it was signed"))
        elif signed:
            names = ", ".join(each.sign_off.who for each in signed)
            told.append(self.tr("signed by {}").format(names))
        self.name.tell(" · ".join(told))

    def show_round(self, walked: Round, which: Which, here: tuple[str, int, int]) -> None:
        """Show a walk; `here` is the key of the stop, its number and how many are walked."""
        key, number, count = here
        words = self.tr("{} of {}").format(number, count) if number else self.tr("Sign")
        self.progress.setText(words)
        self.progress.setAccessibleName(words)
        left = len(walked.left)
        done = self.tr("all done") if walked.stops else ""
        self.still.setText(self.tr("{} left").format(left) if left else done)
        self.check.hide()
        self.overview.show_round(walked, which, key)
        for each, button in self.filters.items():
            button.setText(f"{self._words(each)} ({len(walked.shown(each))})")

    def wait(self, *, stopped: bool, offers: bool) -> None:
        """Say that what there is to look at is not known yet, and `offers` to check what was stopped."""
        self.still.setText(self.tr("not checked") if stopped else self.tr("being checked"))
        self.check.setVisible(stopped and offers)

    def choose(self, which: Which) -> None:
        """Show which stops are walked."""
        for each, button in self.filters.items():
            button.setChecked(each is which)

    def _made_filter(self, which: Which) -> QPushButton:
        button = QPushButton(self._words(which), self)
        button.setCheckable(True)
        button.setChecked(which is Which.EVERYTHING)
        button.clicked.connect(lambda: self.chosen.emit(which))
        return button

    def _words(self, which: Which) -> str:
        return {
            Which.EVERYTHING: self.tr("Everything"),
            Which.WRONG: self.tr("What is wrong"),
            Which.LEFT: self.tr("What is left"),
        }[which]

    def _lay_out(self) -> None:
        above, filters = QHBoxLayout(), QHBoxLayout()
        above.setSpacing(14)
        above.addWidget(self.back)
        above.addWidget(self.name, 1)
        above.addWidget(self.progress)
        above.addWidget(self.still)
        above.addWidget(self.check)
        for button in self.filters.values():
            filters.addWidget(button)
        self._below.addWidget(self.overview, 1)
        self._below.addLayout(filters)
        column = QVBoxLayout(self)
        column.setContentsMargins(10, 6, 14, 6)
        column.setSpacing(4)
        column.addLayout(above)
        column.addLayout(self._below)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Give the stops a row of their own where they would stand too close to be touched."""
        super().resizeEvent(event)
        ways = QBoxLayout.Direction
        self._below.setDirection(ways.TopToBottom if self.width() < _NARROW else ways.LeftToRight)
