"""The panels round the drawing: quiet titles in words, each hidden by a word and shown by a menu."""

from PySide6.QtCore import QCoreApplication, Qt
from PySide6.QtWidgets import (
    QDockWidget,
    QHBoxLayout,
    QLabel,
    QMainWindow,
    QPushButton,
    QSizePolicy,
    QWidget,
)


def made_dock(
    window: QMainWindow, title: str, widget: QWidget, area: Qt.DockWidgetArea
) -> QDockWidget:
    """Return a panel of the window; its name is that of its widget."""
    dock = QDockWidget(title, window)
    dock.setObjectName(f"dock-{widget.objectName()}")
    dock.setWidget(widget)
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
