"""The rule's own page: what it finds, why it matters, what to draw instead, where that is from."""

from html import escape

from PySide6.QtCore import QCoreApplication, QUrl, Signal
from PySide6.QtGui import QImage, QResizeEvent, QTextDocument
from PySide6.QtWidgets import QPushButton, QTextBrowser, QVBoxLayout, QWidget

from enclosure_app.model.finding import begun
from enclosure_app.window.canvas.ink.look import Look
from enclosure_app.window.findings.rule_picture import rule_picture
from enclosure_app.window.words.labels import rule_name, word

_PICTURE = "rule-picture"
_MARGIN = 14
_NARROWEST, _WIDEST = 180, 420  # dots: how wide the picture is at least and at most


class RulePage(QWidget):
    """Shows the page of one rule. `closed`: the person has read it."""

    closed = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._rule, self._look, self._wide = "", Look(), 0
        self.text = QTextBrowser(self)
        self.text.setOpenLinks(False)
        self.text.setAccessibleName(self.tr("The rule's page"))
        self.text.document().setDocumentMargin(_MARGIN)
        back = QPushButton(self.tr("‹ Back to the list"), self)
        back.setObjectName("link")
        back.clicked.connect(self.closed)
        self.back = back
        column = QVBoxLayout(self)
        column.setContentsMargins(_MARGIN, 6, 0, 0)
        column.addWidget(back)
        column.addWidget(self.text)

    def show_rule(self, name: str, look: Look | None = None) -> None:
        """Show the page of the rule called `name`, its picture by day or by night."""
        self._rule, self._look, self._wide = name, look or self._look, self._room()
        ratio = self.devicePixelRatioF()
        image = rule_picture(name, self._wide, self._look, ratio)
        if image:
            kind = QTextDocument.ResourceType.ImageResource
            self.text.document().addResource(kind, QUrl(_PICTURE), image)
        self.text.setHtml(rule_html(name, image))

    def show_look(self, look: Look) -> None:
        """Show the page that is shown in other colours or units."""
        if self._rule and look != self._look:
            self.show_rule(self._rule, look)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Make the picture as wide as the page."""
        super().resizeEvent(event)
        if self._rule and self._room() != self._wide:
            self.show_rule(self._rule)

    def _room(self) -> int:
        bar = self.text.verticalScrollBar().sizeHint().width()
        room = self.text.width() - bar - 2 * _MARGIN - 4
        return min(max(room, _NARROWEST), _WIDEST)


def rule_html(name: str, picture: QImage | None = None) -> str:
    """Return the page of a rule with its headings set as such, its picture below the summary."""
    from enclosure_app.rules import RULES  # noqa: PLC0415  after the window is seen
    from enclosure_app.rules.rule import page_parts  # noqa: PLC0415  as above

    rule = next(rule for rule in RULES if rule.name == name)
    summary, told_below = page_parts(rule)
    parts = [
        f"<h2>{escape(rule_name(name))}</h2>",
        f"<p><i>{escape(begun(word(summary)))}</i></p>",
    ]
    if picture:
        wide, high = picture.deviceIndependentSize().toTuple()
        told = escape(say("The fault as it is drawn, and the same place as it should be"))
        parts.append(
            f"<p><img src='{_PICTURE}' alt='{told}' width='{wide:.0f}' height='{high:.0f}'></p>"
        )
    for heading, text in told_below:
        parts.append(f"<h4>{escape(word(heading))}</h4><p>{escape(word(text))}</p>")
    return "".join(parts)


def say(text: str) -> str:
    """Return a text in the window's language."""
    return QCoreApplication.translate("RulePage", text)
