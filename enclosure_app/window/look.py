"""How the window looks: its colours by day and by night, and the style of its widgets."""

from dataclasses import dataclass

from PySide6.QtCore import Qt
from PySide6.QtGui import QColor, QGuiApplication, QPalette
from PySide6.QtWidgets import QApplication

from enclosure_app.resources import resource


@dataclass(frozen=True, slots=True)
class Colours:
    """The colours of the panels: grounds from the back to the front, inks from loud to quiet."""

    ground: str
    panel: str
    raised: str
    line: str
    ink: str
    quiet: str
    accent: str
    on_accent: str
    soft: str
    warn: str


DAY = Colours(
    ground="#e9ebee", panel="#f7f8f9", raised="#ffffff", line="#d3d8dd", ink="#1c2126",
    quiet="#5b6570", accent="#2d4a5e", on_accent="#ffffff", soft="#dfe7ed", warn="#fff1c9",
)  # fmt: skip
NIGHT = Colours(
    ground="#14171a", panel="#1b1f23", raised="#262b30", line="#363d44", ink="#e8eaed",
    quiet="#9aa4ae", accent="#a9c7db", on_accent="#14171a", soft="#2c3740", warn="#4a3f1c",
)  # fmt: skip


_WORN = "wornDark"  # property of the application: whether it is dressed for the night


def system_is_dark() -> bool:
    """Whether the desktop asks for dark windows."""
    return QGuiApplication.styleHints().colorScheme() == Qt.ColorScheme.Dark


def dress(application: QApplication, *, dark: bool) -> None:
    """Give the whole application its colours, unless it wears them already."""
    if application.property(_WORN) == dark:
        return
    application.setProperty(_WORN, dark)
    colours = NIGHT if dark else DAY
    application.setStyle("Fusion")
    application.setPalette(_palette(colours))
    application.setStyleSheet(style_sheet(colours))


def _palette(c: Colours) -> QPalette:
    palette = QPalette()
    roles = {
        QPalette.ColorRole.Window: c.panel,
        QPalette.ColorRole.WindowText: c.ink,
        QPalette.ColorRole.Base: c.raised,
        QPalette.ColorRole.AlternateBase: c.panel,
        QPalette.ColorRole.Text: c.ink,
        QPalette.ColorRole.Button: c.raised,
        QPalette.ColorRole.ButtonText: c.ink,
        QPalette.ColorRole.ToolTipBase: c.raised,
        QPalette.ColorRole.ToolTipText: c.ink,
        QPalette.ColorRole.Highlight: c.soft,
        QPalette.ColorRole.HighlightedText: c.ink,
        QPalette.ColorRole.PlaceholderText: c.quiet,
        QPalette.ColorRole.Mid: c.line,
        QPalette.ColorRole.Link: c.accent,
        QPalette.ColorRole.Accent: c.accent,
    }
    for role, colour in roles.items():
        palette.setColor(role, QColor(colour))
    for role in (
        QPalette.ColorRole.Text,
        QPalette.ColorRole.ButtonText,
        QPalette.ColorRole.WindowText,
    ):
        palette.setColor(QPalette.ColorGroup.Disabled, role, QColor(c.quiet))
    return palette


def style_sheet(c: Colours) -> str:
    """Return the style of the widgets in the given colours."""
    arrow = resource("icons/arrow-down.svg").as_posix()
    return f"""
    QMainWindow, QMainWindow::separator {{ background: {c.ground}; }}
    QMainWindow::separator {{ width: 5px; height: 5px; }}
    QMainWindow::separator:hover {{ background: {c.line}; }}
    QMenuBar {{ background: {c.panel}; padding: 2px 6px; border-bottom: 1px solid {c.line}; }}
    QMenuBar::item {{ padding: 5px 10px; border-radius: 4px; background: transparent; }}
    QMenuBar::item:selected {{ background: {c.soft}; }}
    QMenu {{ background: {c.raised}; border: 1px solid {c.line}; padding: 5px; }}
    QMenu::item {{ padding: 6px 28px 6px 22px; border-radius: 4px; }}
    QMenu::item:selected {{ background: {c.soft}; color: {c.ink}; }}
    QMenu::item:disabled {{ color: {c.quiet}; }}
    QMenu::separator {{ height: 1px; background: {c.line}; margin: 5px 8px; }}
    QToolBar {{ background: {c.panel}; border: 0; border-bottom: 1px solid {c.line};
               padding: 5px 8px; spacing: 3px; }}
    QToolBar::separator {{ background: {c.line}; width: 1px; margin: 4px 8px; }}
    QToolButton, QPushButton {{ padding: 6px 11px; border-radius: 5px; color: {c.ink};
               border: 1px solid transparent; background: transparent; outline: 0; }}
    QToolBar[close="true"] QToolButton {{ padding: 6px 5px; }}
    QPushButton {{ background: {c.raised}; border-color: {c.line}; }}
    QToolButton#qt_toolbar_ext_button {{ padding: 0; image: url({arrow}); }}
    QToolButton:hover, QPushButton:hover {{ background: {c.soft}; }}
    QToolButton:checked {{ background: {c.accent}; color: {c.on_accent}; }}
    QPushButton:checked {{ background: {c.soft}; border-color: {c.accent}; }}
    QPushButton:checked:disabled {{ background: transparent; border-color: {c.line}; }}
    QToolButton:disabled, QPushButton:disabled {{ color: {c.quiet}; }}
    QToolButton:focus, QPushButton:focus, QComboBox:focus, QLineEdit:focus {{
               border: 1px solid {c.accent}; }}
    QPushButton#main {{ background: {c.accent}; color: {c.on_accent}; border: 0; font-weight: 600; }}
    QPushButton#main:focus, QToolButton:checked:focus {{ border: 2px solid {c.on_accent}; }}
    QPushButton#main:hover {{ border: 2px solid {c.soft}; }}
    QPushButton#main:disabled {{ background: {c.soft}; color: {c.quiet}; }}
    QPushButton#link {{ background: transparent; border: 0; color: {c.accent}; padding: 2px 0;
               text-align: left; }}
    QPushButton#link:hover {{ text-decoration: underline; }}
    QPushButton#link:disabled {{ color: {c.line}; text-decoration: none; }}
    QPushButton#link:focus {{ border-bottom: 2px solid {c.accent}; border-radius: 0; }}
    QDockWidget {{ font-weight: 600; color: {c.ink}; }}
    QDockWidget > QWidget {{ background: {c.panel}; }}
    QListView, QTreeView, QTextBrowser, QScrollArea {{ background: {c.panel};
               border: 1px solid {c.panel}; outline: 0; }}
    QListView:focus, QTreeView:focus, QTextBrowser:focus {{ border-color: {c.accent}; }}
    QTreeView::item {{ padding: 4px 2px; }}
    QTreeView::item:selected, QListView::item:selected {{ background: {c.soft}; color: {c.ink}; }}
    QHeaderView::section {{ background: {c.panel}; color: {c.quiet}; border: 0;
               border-bottom: 1px solid {c.line}; padding: 4px 6px; }}
    QLineEdit, QComboBox, QSpinBox {{ background: {c.raised}; border: 1px solid {c.line};
               border-radius: 5px; padding: 5px 8px; color: {c.ink};
               selection-background-color: {c.accent}; selection-color: {c.on_accent}; }}
    QComboBox::drop-down {{ border: 0; width: 20px; }}
    QComboBox::down-arrow {{ image: url("{arrow}"); width: 12px; height: 12px; }}
    QStatusBar {{ background: {c.panel}; border-top: 1px solid {c.line}; color: {c.quiet}; }}
    QStatusBar::item {{ border: 0; }}
    QStatusBar QLabel {{ color: {c.quiet}; padding: 2px 8px; }}
    QTabBar {{ background: {c.ground}; }}
    QTabBar::tab {{ background: transparent; color: {c.quiet}; padding: 7px 14px; border: 0;
               border-bottom: 3px solid transparent; }}
    QTabBar::tab:selected {{ color: {c.ink}; border-bottom: 3px solid {c.accent}; }}
    QScrollBar:vertical {{ background: transparent; width: 11px; margin: 0; }}
    QScrollBar:horizontal {{ background: transparent; height: 11px; margin: 0; }}
    QScrollBar::handle {{ background: {c.line}; border-radius: 5px; min-height: 30px;
               min-width: 30px; margin: 2px; }}
    QScrollBar::add-line, QScrollBar::sub-line {{ width: 0; height: 0; }}
    QScrollBar::add-page, QScrollBar::sub-page {{ background: transparent; }}
    QTableView {{ background: {c.raised}; border: 1px solid {c.line}; border-radius: 5px;
               outline: 0; }}
    QTableView::item {{ padding: 3px 8px; }}
    QTableView::item:selected {{ background: {c.soft}; color: {c.ink}; }}
    QTabWidget::pane {{ border: 0; border-top: 1px solid {c.line}; background: {c.panel}; }}
    QSplitter::handle {{ background: {c.line}; }}
    QProgressBar {{ background: {c.line}; border: 0; border-radius: 3px; }}
    QProgressBar::chunk {{ background: {c.accent}; border-radius: 3px; }}
    QToolTip {{ background: {c.raised}; color: {c.ink}; border: 1px solid {c.line}; padding: 5px; }}
    QWidget#panel, QWidget#lines, QWidget#findings {{ background: {c.panel}; }}
    QLabel#panel-title {{ font-weight: 600; color: {c.ink}; }}
    QWidget#step {{ background: {c.soft}; border-bottom: 1px solid {c.line}; }}
    QWidget#strip {{ background: {c.panel}; border-bottom: 1px solid {c.line}; }}
    QWidget#message {{ background: {c.warn}; border-bottom: 1px solid {c.line}; }}
    QLabel#quiet {{ color: {c.quiet}; }}
    QLabel#heading {{ font-size: 15pt; font-weight: 600; color: {c.ink}; }}
    QLabel#title {{ font-size: 24pt; font-weight: 600; color: {c.ink}; }}
    QLabel#small {{ color: {c.quiet}; font-size: 9pt; }}
    QWidget#start {{ background: {c.ground}; }}
    QFrame#card {{ background: {c.raised}; border: 1px solid {c.line}; border-radius: 10px; }}
    """
