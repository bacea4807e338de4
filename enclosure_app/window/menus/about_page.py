"""Pages of text: what the program is, and what it is not."""

from html import escape

from PySide6.QtCore import QCoreApplication

from enclosure_app import __version__
from enclosure_app.reports.text_report import CAUTION


def about_html() -> str:
    """Return the page about the program."""
    told = say(
        "Checks section drawings of buildings: whether each control layer can be followed with a "
        "pen from one end to the other, whether every sheet laps over the one below it, and "
        "whether rain finds a way in."
    )
    return (
        f"<h2>{escape(say('Enclosure continuity'))} {__version__}</h2>"
        f"<p>{escape(told)}</p><p>{escape(say(CAUTION))}</p>"
    )


def say(text: str) -> str:
    """Return a text in the window's language."""
    return QCoreApplication.translate("Pages", text)
