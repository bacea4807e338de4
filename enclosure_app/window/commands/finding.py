"""What Check and Help in the menu do."""

from dataclasses import replace

from PySide6.QtCore import QObject
from PySide6.QtWidgets import QDialog, QTextBrowser, QVBoxLayout

from enclosure_app.drawing.verdict_words import state_word
from enclosure_app.errors import EnclosureError
from enclosure_app.model.edits import set_decision
from enclosure_app.model.said.decision import State
from enclosure_app.model.said.moment import now
from enclosure_app.model.standing.verdicts import verdict_on
from enclosure_app.window.commands.fittings import Fittings
from enclosure_app.window.findings.findings_model import AnyRow, Row
from enclosure_app.window.menus.about_page import about_html
from enclosure_app.window.menus.keys_page import keys_html


class FindingCommands(QObject):
    """Going through what was found, and the pages that explain it."""

    def __init__(self, fittings: Fittings) -> None:
        super().__init__(fittings.window)
        self._fittings = fittings
        fittings.findings.decided.connect(self._put_down)
        self._tell_who()
        fittings.walking.ended.connect(self._tell_who)

    def _tell_who(self) -> None:
        """Let the name that was given last be put beside verdicts."""
        self._fittings.findings.advice.verdict.set_who(self._fittings.settings.who)

    def check_now(self) -> None:
        """Check the drawing as it is now, unless that is done."""
        checking = self._fittings.checking
        if not checking.current:
            checking.check_now()

    def next_finding(self) -> None:
        """Go to the next finding."""
        self._step(1)

    def last_finding(self) -> None:
        """Go to the finding before."""
        self._step(-1)

    def _step(self, by: int) -> None:
        """Go to the next finding or the one before; where all are left out, show all of them first."""
        findings = self._fittings.findings
        if findings.model.total and not findings.model.rows:
            self._fittings.place.show_only(None)
            findings.filter.clear()
        findings.step(by)

    def walk(self) -> None:
        """Walk the section, stop by stop, as on a scaffold; again: back to the drawing."""
        walking = self._fittings.walking
        walking.end() if walking.on else walking.begin()

    def why(self) -> None:
        """Show the page of the rule of the finding that is chosen."""
        self._fittings.findings.advice.button.click()

    def decide_to_mend(self) -> None:
        """Say of the finding that is chosen that it is to be mended."""
        self._fittings.findings.decide(State.TO_BE_MENDED)

    def decide_mended(self) -> None:
        """Say that it was mended."""
        self._fittings.findings.decide(State.MENDED)

    def decide_accepted(self) -> None:
        """Let it stand, for a reason that is asked for in place."""
        self._fittings.findings.decide(State.ACCEPTED)

    def decide_no_fault(self) -> None:
        """Say that it is no fault, for a reason that is asked for in place."""
        self._fittings.findings.decide(State.NO_FAULT)

    def _put_down(self, row: AnyRow, state: State, reason: str, who: str) -> None:
        """Keep a verdict in the project, and the name for the next one."""
        fittings = self._fittings
        if who:
            fittings.settings.who = who
        when = now()
        if isinstance(row, Row):
            decision = verdict_on(row.finding, state, who, when, reason)
        else:
            decision = replace(row.decision, state=state, who=who, when=when, remark=reason)
        try:
            after = set_decision(fittings.document.project, decision)
        except EnclosureError as error:
            fittings.place.refuse(error)
            return
        fittings.document.apply(self.tr("Verdict: {}").format(state_word(state)), after)

    def show_keys(self) -> None:
        """Show all keys on one page."""
        self._page(self.tr("All keys"), keys_html())

    def show_about(self) -> None:
        """Say what the program is and where its limits are."""
        self._page(self.tr("About"), about_html())

    def _page(self, title: str, html: str) -> None:
        page = QDialog(self._fittings.window)
        page.setWindowTitle(title)
        page.resize(560, 640)
        text = QTextBrowser(page)
        text.setHtml(html)
        text.document().setDocumentMargin(18)
        column = QVBoxLayout(page)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(text)
        page.open()
