"""How the window looks: its colours by day and by night, and the style of its widgets."""

import tomllib
from dataclasses import asdict, dataclass
from string import Template

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


def _colours(when: str) -> Colours:
    with resource("window.toml").open("rb") as file:
        return Colours(**tomllib.load(file)[when])


DAY, NIGHT = _colours("day"), _colours("night")

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
    style = Template(resource("window.qss").read_text(encoding="utf-8"))
    return style.substitute(asdict(c), arrow=resource("icons/arrow-down.svg").as_posix())
