"""The panels round the drawing: quiet titles in words, each hidden by a word and shown by a menu."""

from PySide6.QtCore import QCoreApplication, QEvent, QObject, QSize, Qt
from PySide6.QtWidgets import (
    QAbstractScrollArea,
    QDockWidget,
    QHBoxLayout,
    QLabel,
    QMainWindow,
    QPushButton,
    QScrollArea,
    QSizePolicy,
    QWidget,
)

_LEAST = 150  # dots of height that a panel has on the smallest screen


class _Scrolled(QScrollArea):
    """A panel that scrolls where the screen is too low for all of it."""

    def __init__(self, panel: QWidget) -> None:
        super().__init__()
        self.setWidgetResizable(True)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)  # it follows what the keys reach in it
        self.setWidget(panel)
        self._panel = panel
        panel.installEventFilter(self)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Be as wide as the panel needs, whenever it needs more."""
        if event.type() == QEvent.Type.LayoutRequest:
            self.updateGeometry()
        return super().eventFilter(watched, event)

    def minimumSizeHint(self) -> QSize:
        """Return the width that the panel needs beside its bar, and a height at which it scrolls."""
        bar = self.verticalScrollBar().sizeHint().width()
        return QSize(self._panel.minimumSizeHint().width() + bar, _LEAST)

    def sizeHint(self) -> QSize:
        """Return what the panel would like."""
        return self._panel.sizeHint()


def made_dock(
    window: QMainWindow, title: str, widget: QWidget, area: Qt.DockWidgetArea
) -> QDockWidget:
    """Return a panel of the window; its name is that of its widget."""
    dock = QDockWidget(title, window)
    dock.setObjectName(f"dock-{widget.objectName()}")
    dock.setWidget(widget if isinstance(widget, QAbstractScrollArea) else _Scrolled(widget))
    dock.setFeatures(
        QDockWidget.DockWidgetFeature.DockWidgetClosable
        | QDockWidget.DockWidgetFeature.DockWidgetMovable
    )
    dock.setTitleBarWidget(_title(dock))
    window.addDockWidget(area, dock)
    return dock


def _title(dock: QDockWidget) -> QWidget:
    bar = QWidget(dock)
    bar.setObjectName("panel")
    bar.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
    words = QLabel(dock.windowTitle(), bar)
    words.setObjectName("panel-title")
    hide = QPushButton(say("Hide"), bar)
    hide.setObjectName("link")
    hide.setToolTip(say("Hide this panel; View, Panels shows it again"))
    hide.setAccessibleName(f"{say('Hide')} {dock.windowTitle()}")
    hide.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)
    hide.clicked.connect(dock.close)
    line = QHBoxLayout(bar)
    line.setContentsMargins(14, 7, 12, 3)
    line.addWidget(words, 1)
    line.addWidget(hide)
    return bar


def say(text: str) -> str:
    """Return a text in the window's language."""
    return QCoreApplication.translate("Docks", text)
