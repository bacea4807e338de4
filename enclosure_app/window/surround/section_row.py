"""The sections of a project above the drawing: tabs while they are few, a list when they are many."""

from collections.abc import Sequence

from PySide6.QtCore import QCoreApplication, Signal
from PySide6.QtWidgets import QComboBox, QHBoxLayout, QSizePolicy, QTabBar, QToolButton, QWidget

FEW = 8  # sections that have tabs; more have a list
_SEEN = 24  # lines of the list that are seen at once; the others are scrolled to


class SectionRow(QWidget):
    """Names the sections and tells which is wanted. `turned`: the place of that one."""

    turned = Signal(int)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.tabs = QTabBar(self)
        self.tabs.setDrawBase(False)
        self.tabs.setExpanding(False)
        self.tabs.setUsesScrollButtons(True)
        self.tabs.setAccessibleName(say("Sections"))
        self.every = QComboBox(self)
        self.every.setAccessibleName(say("Sections"))
        self.every.setMaxVisibleItems(_SEEN)
        self.every.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.every.setMaximumWidth(520)
        self.before = self._arrow(say("Before"), say("The section before"), -1)
        self.after = self._arrow(say("Next"), say("The next section"), 1)
        self.tabs.currentChanged.connect(self._turn)
        self.every.activated.connect(self._turn)
        line = QHBoxLayout(self)
        line.setContentsMargins(0, 0, 0, 0)
        line.setSpacing(4)
        line.addWidget(self.tabs, 1)
        for widget in (self.before, self.every, self.after):
            line.addWidget(widget)
        line.addStretch()
        self.show_sections((), 0)

    def show_sections(self, names: Sequence[str], at: int) -> None:
        """Name the sections, and say which of them is in view; a single one needs no row."""
        self._name_tabs(names, at)
        if names != [self.every.itemText(i) for i in range(self.every.count())]:
            self.every.clear()
            self.every.addItems(names)
        self.every.setCurrentIndex(at)
        many = len(names) > FEW
        self.tabs.setVisible(1 < len(names) <= FEW)
        for widget in (self.before, self.every, self.after):
            widget.setVisible(many)
        self.setVisible(len(names) > 1)

    def step(self, by: int) -> None:
        """Ask for the next section or the one before; the first comes after the last."""
        count = self.every.count()
        if count > 1:
            self._turn((self.every.currentIndex() + by) % count)

    def _name_tabs(self, names: Sequence[str], at: int) -> None:
        tabs = self.tabs
        tabs.blockSignals(True)
        while tabs.count() > len(names):
            tabs.removeTab(tabs.count() - 1)
        while tabs.count() < len(names):
            tabs.addTab("")
        for number, name in enumerate(names):
            if tabs.tabText(number) != name:
                tabs.setTabText(number, name)
        tabs.setCurrentIndex(at)
        tabs.blockSignals(False)

    def _turn(self, at: int) -> None:
        self.every.setCurrentIndex(at)
        self.turned.emit(at)

    def _arrow(self, text: str, tip: str, by: int) -> QToolButton:
        button = QToolButton(self)
        button.setText(text)
        button.setToolTip(tip)
        button.setAccessibleName(tip)
        button.clicked.connect(lambda: self.step(by))
        return button


def say(text: str) -> str:
    """Return a text in the window's language."""
    return QCoreApplication.translate("SectionRow", text)
