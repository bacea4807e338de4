"""The last page of a walk: what is left, what is to be mended, and a name under the section."""

from collections.abc import Sequence

from PySide6.QtCore import QDate, QLocale, Qt, Signal
from PySide6.QtWidgets import QLabel, QLineEdit, QPushButton, QVBoxLayout, QWidget

from enclosure_app.language import say
from enclosure_app.model.drawing import Units
from enclosure_app.model.said.moment import shown
from enclosure_app.model.said.sign_off import SignOff
from enclosure_app.model.standing.sign_offs import Signed
from enclosure_app.planning.site_list.questions import LIMITS
from enclosure_app.window.walk.stops import Round, Stop
from enclosure_app.window.walk.summary import named, open_words, summary


class SignPage(QWidget):
    """Takes a name. `signed`: the name and the remark; `taken_back`: the sign-off; `wanted`: a stop."""

    signed = Signal(str, str)
    taken_back = Signal(object)
    wanted = Signal(str)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._open: tuple[Stop, ...] = ()
        self._empty = self._mine = self._waits = False
        self.state, self.told = self._label("asked"), self._label("")
        self.names, self.day = self._label(""), self._label("")
        self.limits = self._label("small")
        self.who, self.remark = self._line(self.tr("Your name")), self._line(self.tr("Remark"))
        self.sign = QPushButton(self.tr("Sign this section"), self)
        self.sign.setObjectName("main")
        self.check = QPushButton(self.tr("Check now"), self)
        self.first_left = QPushButton(self.tr("Go to the first one that is left"), self)
        self.next_section = QPushButton(self.tr("Walk the next section"), self)
        self._signed = QVBoxLayout()
        self._buttons: list[QWidget] = []
        self.sign.clicked.connect(self._sign)
        self.who.returnPressed.connect(self._sign)
        self.who.textChanged.connect(self._check)
        self.first_left.clicked.connect(self._want_first)
        self._lay_out()

    def show_round(
        self,
        walked: Round,
        signed: Sequence[Signed],
        who: str,
        begun: Sequence[Stop] = (),
        units: Units = Units.MM,
    ) -> None:
        """Show what is left of a walk, who signed, and where a note was `begun` and not put down."""
        self._open, self._empty = walked.left, not walked.stops
        self._waits = False
        self.check.hide()
        self._mine = any(
            not each.changed and each.sign_off.who.casefold() == who.casefold() for each in signed
        )
        self.state.setText(self._state_of(walked))
        lines = summary(walked, units)
        if begun:
            lines = (self.tr("Typed, but not put down yet: {}.").format(named(begun)), *lines)
        self.told.setText("\n".join(lines))
        self.told.setVisible(bool(lines))
        self.first_left.setVisible(bool(walked.left))
        self._show_signed(signed)
        today = QLocale().toString(QDate.currentDate(), QLocale.FormatType.LongFormat)
        self.day.setText(self.tr("Date: {}").format(today))
        self.limits.setText(say(LIMITS))
        if not self.who.text():
            self.who.setText(who)
        for part in (self.who, self.remark, self.day, self.sign):
            part.setVisible(not self._empty)  # where nothing was looked at nothing is signed
        self._check()

    @property
    def next_step(self) -> QPushButton:
        """What one does next: check, go to what is left, sign, or once that is done walk on."""
        for offered in (self.check, self.first_left):
            if not offered.isHidden():
                return offered
        return self.next_section if self._mine and not self.next_section.isHidden() else self.sign

    def wait(self, *, stopped: bool) -> None:
        """Take no name while it is not known yet what there is to look at."""
        waits = self.tr("The section is still being checked: sign it after that")
        never = self.tr("Checking was stopped: have the section checked, then sign it")
        self.state.setText(never if stopped else waits)
        self.check.setVisible(stopped)
        self._waits = True
        self._check()

    def _state_of(self, walked: Round) -> str:
        if not walked.stops:
            return self.tr("There is nothing to look at here yet")
        if not walked.left and walked.to_be_mended:
            return self.tr("Everything was looked at; not all of it is in order")
        if not walked.left:
            return self.tr("Everything was looked at")
        done = len(walked.stops) - len(walked.left)
        return self.tr("{} of {} places are done").format(done, len(walked.stops))

    def _show_signed(self, signed: Sequence[Signed]) -> None:
        for button in self._buttons:
            button.hide()
            button.deleteLater()
        self._buttons = []
        self.names.setText("\n".join(map(self._line_of, signed)))
        self.names.setVisible(bool(signed))
        for each in signed:
            self._buttons.append(self._made_button(each.sign_off))

    def _line_of(self, signed: Signed) -> str:
        off = signed.sign_off
        told = self.tr("Signed by {}, {}").format(off.who, shown(off.when))
        told = f"{told}: {off.remark}" if off.remark else told
        if signed.changed:
            told = (
                f"{told}\n{self.tr('The section was changed since: walk it again and sign anew.')}"
            )
        return told

    def _made_button(self, sign_off: SignOff) -> QPushButton:
        button = QPushButton(self.tr("Take the name of {} back").format(sign_off.who), self)
        button.clicked.connect(lambda: self.taken_back.emit(sign_off))
        self._signed.addWidget(button)
        button.show()
        return button

    def _want_first(self) -> None:
        if self._open:
            self.wanted.emit(self._open[0].key)

    def _sign(self) -> None:
        if self.sign.isEnabled():
            left = open_words(self._open) if self._open else ""
            words = [part for part in (self.remark.text().strip(), left) if part]
            self.remark.clear()
            self.signed.emit(self.who.text().strip(), " ".join(words))

    def _check(self) -> None:
        named = bool(self.who.text().strip())
        self.sign.setEnabled(named and not self._empty and not self._waits)
        told = self.tr("Sign again") if self._mine else self.tr("Sign this section")
        self.sign.setText(self.tr("Sign, with this left open") if self._open else told)

    def _label(self, name: str) -> QLabel:
        label = QLabel(self)
        label.setObjectName(name)
        label.setWordWrap(True)
        label.setTextFormat(Qt.TextFormat.PlainText)
        return label

    def _line(self, words: str) -> QLineEdit:
        line = QLineEdit(self)
        line.setPlaceholderText(words)
        line.setAccessibleName(words)
        return line

    def _lay_out(self) -> None:
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(10)
        above: tuple[QWidget, ...] = (
            self.state,
            self.told,
            self.check,
            self.first_left,
            self.names,
        )
        for part in above:
            column.addWidget(part)
        column.addLayout(self._signed)
        for part in (self.who, self.remark, self.day, self.sign, self.next_section, self.limits):
            column.addWidget(part)
