"""Reading back what reviewers answered in a marked-up PDF."""

from pathlib import Path

from PySide6.QtCore import QObject
from PySide6.QtWidgets import QFileDialog

from enclosure_app.errors import EnclosureError
from enclosure_app.files.replies.answers import answers_for, taken_over
from enclosure_app.files.replies.proposal import Proposal
from enclosure_app.files.replies.replies import read_replies
from enclosure_app.window.answers.answers import Answers
from enclosure_app.window.apart.working import Job, Lane
from enclosure_app.window.commands.fittings import Fittings


class AnswerCommands(QObject):
    """Reads a PDF, shows what is proposed, and takes over what the person chose."""

    def __init__(self, fittings: Fittings) -> None:
        super().__init__(fittings.window)
        self._fittings = fittings
        self.shown: Answers | None = None
        self._opening = fittings.document.opening

    def read_answers(self) -> None:
        """Ask for a PDF, and read what was answered in it."""
        title = self.tr("Read the answers in a marked-up PDF")
        name, _ = QFileDialog.getOpenFileName(self._fittings.window, title, "", "PDF (*.pdf)")
        if name:
            self.read_answers_from(Path(name))

    def read_answers_from(self, path: Path) -> None:
        """Read what was answered in a PDF."""
        messages = self._fittings.messages
        self._opening = self._fittings.document.opening
        messages.hide()
        self._fittings.working.begin(
            Job(
                Lane.ISSUING,
                self.tr("Reading {}").format(path.name),
                lambda _: read_replies(path),
                lambda read: self._fittings.checking.once_current(lambda: self._show(read)),
                refused=lambda error: messages.say(str(error)),
            )
        )

    def _show(self, read: tuple[Proposal, ...]) -> None:
        fittings = self._fittings
        if not self._is_still_open():
            return
        results = tuple(fittings.checking.results)
        found = [finding for result in results for finding in result.findings]
        proposals = answers_for(fittings.document.project, found, read)
        if not proposals:
            fittings.messages.say(self.tr("Nothing was answered in it that is not here already."))
            return
        numbers = {
            (result.section.name, finding.key): number
            for result in results
            for number, finding in enumerate(result.findings, 1)
        }
        self._dialog().show_answers(proposals, numbers)
        self._dialog().show()
        self._dialog().activateWindow()

    def _dialog(self) -> Answers:
        if self.shown is None:
            self.shown = Answers(self._fittings.window)
            self.shown.taken.connect(self._take)
            self.shown.wanted.connect(self._go)
        return self.shown

    def _take(self, ticked: tuple[Proposal, ...]) -> None:
        """Put down what was ticked as one step, which can be undone as one."""
        document = self._fittings.document
        if not self._is_still_open():
            self._dialog().close()
            return
        try:
            after = taken_over(document.project, ticked)
        except EnclosureError as error:
            self._fittings.place.refuse(error)
            return
        document.apply(self.tr("Take over answers"), after)
        self._dialog().close()

    def _is_still_open(self) -> bool:
        """Whether the project is open that the answers were read for; if not, say so."""
        same = self._opening == self._fittings.document.opening
        if not same:
            told = self.tr("Another project was opened meanwhile: read the answers again for it.")
            self._fittings.messages.say(told)
        return same

    def _go(self, proposal: Proposal) -> None:
        """Go to the finding that an answer is about."""
        fittings = self._fittings
        names = [section.name for section in fittings.document.project.sections]
        if proposal.section in names:
            fittings.place.turn_to(names.index(proposal.section))
            fittings.findings.choose(proposal.key)
            if fittings.findings.current:
                fittings.findings.asked.emit(fittings.findings.current)
