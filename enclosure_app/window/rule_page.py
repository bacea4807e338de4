"""The rule's own page: what it finds, why it matters, what to draw instead, where that is from."""

from html import escape

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QPushButton, QTextBrowser, QVBoxLayout, QWidget

from enclosure_app.window.words import rule_name, word


class RulePage(QWidget):
    """Shows the page of one rule. `closed`: the person has read it."""

    closed = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.text = QTextBrowser(self)
        self.text.setOpenLinks(False)
        self.text.setAccessibleName(self.tr("The rule's page"))
        self.text.document().setDocumentMargin(14)
        back = QPushButton(self.tr("‹ Back to the list"), self)
        back.setObjectName("link")
        back.clicked.connect(self.closed)
        self.back = back
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(back)
        column.setContentsMargins(14, 6, 0, 0)
        column.addWidget(self.text)

    def show_rule(self, name: str) -> None:
        """Show the page of the rule called `name`."""
        self.text.setHtml(rule_html(name))


def rule_html(name: str) -> str:
    """Return the page of a rule with its headings set as such."""
    from enclosure_app.rules import RULES  # noqa: PLC0415  after the window is seen
    from enclosure_app.rules.rule import page  # noqa: PLC0415  as above

    rule = next(rule for rule in RULES if rule.name == name)
    lines = page(rule).splitlines()
    summary = lines[0].partition(": ")[2] or lines[0]
    parts = [f"<h2>{escape(rule_name(name))}</h2>", f"<p><i>{escape(word(summary))}</i></p>"]
    for heading, text in _sections(lines[1:]):
        parts.append(f"<h4>{escape(word(heading))}</h4><p>{escape(text)}</p>")
    return "".join(parts)


def _sections(lines: list[str]) -> list[tuple[str, str]]:
    """Return the headings, which stand at the margin, each with the words below it."""
    found: list[tuple[str, str]] = []
    for line in lines:
        if line and not line.startswith(" "):
            found.append((line.strip(), ""))
        elif line.strip() and found:
            heading, text = found[-1]
            found[-1] = heading, f"{text} {line.strip()}".strip()
    return found
