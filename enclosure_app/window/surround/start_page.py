"""The page that is shown while nothing is open: three ways to begin, and what was open lately."""

from collections.abc import Sequence
from pathlib import Path

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QIcon
from PySide6.QtWidgets import (
    QFrame,
    QGridLayout,
    QHBoxLayout,
    QLabel,
    QMenu,
    QPushButton,
    QScrollArea,
    QSizePolicy,
    QVBoxLayout,
    QWidget,
)

from enclosure_app.resources import resource

SAMPLES: tuple[tuple[str, str, str], ...] = (
    ("eave-flush-faulty.dxf", "layers-second-office.toml", "A flush eave with three faults"),
    ("parapet-faulty.dxf", "layers-second-office.toml", "A parapet"),
    ("window-faulty.dxf", "layers.toml", "A window, in feet and inches"),
    ("four-sections-faulty.dxf", "layers-second-office.toml", "Four sections on one drawing"),
)
"""Drawings to try: file, layer map, and what they show."""


class StartPage(QWidget):
    """Three ways to begin. `wanted`: the name of an action; `sample`, `recent`: which file."""

    wanted = Signal(str)
    sample = Signal(str, str)
    recent = Signal(str)

    def __init__(self, parts: QMenu, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("start")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self._recent = QVBoxLayout()
        card = QFrame(self)
        card.setObjectName("card")
        card.setMaximumWidth(820)
        column = QVBoxLayout(card)
        column.setContentsMargins(44, 36, 44, 32)
        column.setSpacing(10)
        column.addLayout(self._head())
        column.addSpacing(14)
        column.addLayout(self._ways(parts))
        column.addSpacing(12)
        column.addLayout(self._recent)
        column.addSpacing(10)
        column.addWidget(self._caution())
        whole = QVBoxLayout(self)
        whole.setContentsMargins(0, 0, 0, 0)
        whole.addWidget(self._scrolled(card))

    def _scrolled(self, card: QFrame) -> QScrollArea:
        """Return the card in the middle of a page that scrolls where the screen is small."""
        page = QWidget(self)
        page.setObjectName("start")
        page.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        around = QGridLayout(page)
        around.addWidget(card, 1, 1)
        for side in (0, 2):
            around.setColumnStretch(side, 1)
            around.setRowStretch(side, 1)
        around.setColumnStretch(1, 6)
        scrolled = QScrollArea(self)
        scrolled.setWidgetResizable(True)
        scrolled.setFocusPolicy(Qt.FocusPolicy.NoFocus)  # it follows what the keys reach in it
        scrolled.setWidget(page)
        return scrolled

    def show_recent(self, paths: Sequence[str]) -> None:
        """List what was open lately."""
        while (item := self._recent.takeAt(0)) is not None:
            widget = item.widget()
            if widget:
                widget.deleteLater()
        if paths:
            self._recent.addWidget(self._label(self.tr("Open lately"), "quiet"))
        for path in paths[:5]:
            button = QPushButton(f"{Path(path).name}   —   {Path(path).parent}", self)
            button.setObjectName("link")
            button.clicked.connect(lambda _=False, one=path: self.recent.emit(one))
            self._recent.addWidget(button)

    def _head(self) -> QHBoxLayout:
        line = QHBoxLayout()
        icon = QLabel(self)
        icon.setPixmap(QIcon(str(resource("icons/enclosure-app.svg"))).pixmap(64, 64))
        line.addWidget(icon)
        line.addSpacing(14)
        words = QVBoxLayout()
        words.addWidget(self._label(self.tr("Follow every layer with one pen"), "title"))
        told = self.tr(
            "Open a section drawing, say what its lines are, and see every gap and every lap "
            "that runs the wrong way, from the footing to the ridge."
        )
        words.addWidget(self._label(told, "quiet"))
        line.addLayout(words, 1)
        return line

    def _ways(self, parts: QMenu) -> QHBoxLayout:
        line = QHBoxLayout()
        line.setSpacing(28)
        begin = QVBoxLayout()
        begin.setSpacing(8)
        begin.addWidget(self._label(self.tr("Begin"), "quiet"))
        begin.addWidget(self._button(self.tr("Open a drawing or project…"), "open_file", "main"))
        begin.addWidget(self._button(self.tr("Sketch on an empty sheet"), "new_sheet"))
        begin.addWidget(self._button(self.tr("Trace a scan or a page of a PDF…"), "put_underlay"))
        ready = QPushButton(self.tr("Start from a ready-made part"), self)
        ready.setMinimumHeight(38)
        ready.setMenu(parts)
        begin.addWidget(ready)
        begin.addWidget(
            self._label(self.tr("or drop a DXF file, a picture or a PDF anywhere here."), "small")
        )
        begin.addStretch(1)
        line.addLayout(begin, 1)
        samples = QVBoxLayout()
        samples.setSpacing(8)
        samples.addWidget(self._label(self.tr("Or look at a sample"), "quiet"))
        for file, layers, told in SAMPLES:
            button = QPushButton(self.tr(told), self)
            button.clicked.connect(
                lambda _=False, one=file, with_map=layers: self.sample.emit(one, with_map)
            )
            button.setMinimumHeight(32)
            samples.addWidget(button)
        samples.addStretch(1)
        line.addLayout(samples, 1)
        return line

    def _button(self, text: str, action: str, look: str = "") -> QPushButton:
        button = QPushButton(text, self)
        button.setObjectName(look)
        button.setMinimumHeight(38)
        button.clicked.connect(lambda: self.wanted.emit(action))
        return button

    def _label(self, text: str, look: str) -> QLabel:
        label = QLabel(text, self)
        label.setObjectName(look)
        label.setWordWrap(True)
        label.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Maximum)
        return label

    def _caution(self) -> QLabel:
        text = self.tr(
            "This check is an aid. Local codes, the makers' instructions and licensed practice "
            "decide. Look at work at height only with protection against falls."
        )
        return self._label(text, "small")
