"""What Check and Help in the menu do."""

from PySide6.QtCore import QObject
from PySide6.QtWidgets import QDialog, QTextBrowser, QVBoxLayout

from enclosure_app.window.action_table import keys_html
from enclosure_app.window.commands.parts import Parts
from enclosure_app.window.pages import about_html


class FindingCommands(QObject):
    """Going through what was found, and the pages that explain it."""

    def __init__(self, parts: Parts) -> None:
        super().__init__(parts.window)
        self._parts = parts

    def next_finding(self) -> None:
        """Go to the next finding."""
        self._parts.findings.step(1)

    def last_finding(self) -> None:
        """Go to the finding before."""
        self._parts.findings.step(-1)

    def why(self) -> None:
        """Show the page of the rule of the finding that is chosen."""
        self._parts.findings.advice.button.click()

    def show_keys(self) -> None:
        """Show all keys on one page."""
        self._page(self.tr("All keys"), keys_html())

    def show_about(self) -> None:
        """Say what the program is and where its limits are."""
        self._page(self.tr("About"), about_html())

    def _page(self, title: str, html: str) -> None:
        page = QDialog(self._parts.window)
        page.setWindowTitle(title)
        page.resize(560, 640)
        text = QTextBrowser(page)
        text.setHtml(html)
        text.document().setDocumentMargin(18)
        column = QVBoxLayout(page)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(text)
        page.open()
