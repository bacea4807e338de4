"""One step to a verdict: four words to click, and a reason typed in place where one is needed."""

from PySide6.QtCore import QCoreApplication, QEvent, QPointF, QSize, Qt, Signal
from PySide6.QtGui import QIcon, QKeyEvent, QPainter, QPalette, QPixmap
from PySide6.QtWidgets import (
    QGridLayout,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from enclosure_app.drawing.marks import badge
from enclosure_app.drawing.verdict_words import state_word, verdict_line
from enclosure_app.model.said.decision import Decision, State
from enclosure_app.reports.pdf.painter import MarkPainter

CHOICES = (State.TO_BE_MENDED, State.MENDED, State.ACCEPTED, State.NO_FAULT)
_ICON, _ICON_DOTS = 14, 4.6  # dots: the side of a badge, and the dots for one mm of it


class VerdictBox(QWidget):
    """Takes a verdict. `decided`: the state, the reason and the name of who decides.

    `laid_out`: more room is needed, or less.
    """

    decided = Signal(object, str, str)
    laid_out = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._state = State.OPEN
        self._wanted = State.OPEN
        self._gone = False
        self._shown: object = None
        self.told = QLabel(self)
        self.told.setWordWrap(True)
        self.take_back = QPushButton(self.tr("Take the verdict back"), self)
        self.take_back.clicked.connect(lambda: self.choose(self._state))
        self.buttons = {state: self._made_button(state) for state in CHOICES}
        self.reason, self.who = QLineEdit(self), QLineEdit(self)
        self.question = QLabel(self)
        self.put_down = QPushButton(self.tr("Put it down"), self)
        self.give_up = QPushButton(self.tr("Leave it"), self)
        self.choices, self.form = self._made_choices(), self._made_form()
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 4, 0, 0)
        column.setSpacing(5)
        for part in (self.choices, self.form, self.take_back):
            column.addWidget(part)
        self._connect()

    def show_verdict(
        self, decision: Decision | None, *, about: str = "", gone: bool = False
    ) -> None:
        """Show what was decided, if anything; of what is `gone` only that is to be taken back.

        A reason that is being typed `about` the same finding is kept: a check may end meanwhile.
        """
        shown = about, decision, gone
        if about and shown == self._shown and not self.form.isHidden():
            return
        self._shown = shown
        self._state = decision.state if decision else State.OPEN
        decided = decision is not None and self._state is not State.OPEN
        self.told.setText(verdict_line(decision) if decision and decided else "")
        self.told.setVisible(decided)
        self._gone = gone
        self.cancel()

    def set_who(self, name: str) -> None:
        """Say who decides; a name that is known is not asked for."""
        self.who.setText(name)

    def choose(self, state: State) -> None:
        """Decide so, or ask first for what is lacking; the same verdict again takes it back."""
        if state is self._state:
            state = State.OPEN
        self._wanted = state
        lacks_name = not self.who.text().strip()
        if state is not State.OPEN and (state.needs_reason or lacks_name):
            self._ask(state, lacks_name=lacks_name)
        else:
            self._decide()

    def _made_button(self, state: State) -> QPushButton:
        more = "…" if state.needs_reason else ""
        button = QPushButton(f"{state_word(state)}{more}", self)
        button.setCheckable(True)
        button.setObjectName("verdict")
        button.setIcon(badge_icon(state, self.palette()))
        button.setIconSize(QSize(_ICON, _ICON))
        button.setToolTip(_tips()[state])
        button.clicked.connect(lambda: self.choose(state))
        return button

    def _made_choices(self) -> QWidget:
        whole = QWidget(self)
        grid = QGridLayout(whole)
        grid.setContentsMargins(0, 0, 0, 0)
        grid.setSpacing(5)
        for place, button in enumerate(self.buttons.values()):
            grid.addWidget(button, place // 2, place % 2)
        return whole

    def _made_form(self) -> QWidget:
        whole = QWidget(self)
        for line, words in (
            (self.reason, self.tr("Why may it stand?")),
            (self.who, self.tr("Your name, to be put beside it")),
        ):
            line.setPlaceholderText(words)
            line.setAccessibleName(words)
            line.returnPressed.connect(self._decide)
        foot = QHBoxLayout()
        foot.addWidget(self.put_down)
        foot.addWidget(self.give_up)
        foot.addStretch(1)
        column = QVBoxLayout(whole)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(5)
        for part in (self.question, self.reason, self.who):
            column.addWidget(part)
        column.addLayout(foot)
        return whole

    def _connect(self) -> None:
        self.put_down.clicked.connect(self._decide)
        self.give_up.clicked.connect(self.cancel)
        for line in (self.reason, self.who):
            line.textChanged.connect(self._tell_lack)

    def _ask(self, state: State, *, lacks_name: bool) -> None:
        self.question.setText(f"{state_word(state)}:")
        self.reason.clear()
        self.reason.setVisible(state.needs_reason)
        self.who.setVisible(lacks_name)
        self._show(asking=True)
        self._tell_lack()
        (self.reason if state.needs_reason else self.who).setFocus()

    def _lacking(self) -> bool:
        """Whether a reason is still to be typed."""
        return self._wanted.needs_reason and not self.reason.text().strip()

    def _tell_lack(self) -> None:
        self.put_down.setEnabled(not self._lacking())

    def _decide(self) -> None:
        """Put the verdict down, once there is the reason that it needs."""
        if self._lacking():
            self.reason.setFocus()
            return
        remark = self.reason.text() if self._wanted.needs_reason else ""
        self._show(asking=False)
        self.decided.emit(self._wanted, remark.strip(), self.who.text().strip())

    def cancel(self) -> None:
        """Decide nothing."""
        self._show(asking=False)
        for state, button in self.buttons.items():
            button.setChecked(state is self._state)

    def _show(self, *, asking: bool) -> None:
        self.form.setVisible(asking)
        self.choices.setVisible(not asking and not self._gone)
        self.take_back.setVisible(not asking and self._gone)
        self.laid_out.emit()

    def changeEvent(self, event: QEvent) -> None:
        """Paint the badges anew by day and by night."""
        super().changeEvent(event)
        if event.type() == QEvent.Type.PaletteChange:
            for state, button in self.buttons.items():
                button.setIcon(badge_icon(state, self.palette()))

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Leave the reason with Escape."""
        if event.key() == Qt.Key.Key_Escape and self.form.isVisible():
            self.cancel()
        else:
            super().keyPressEvent(event)


def badge_icon(state: State, palette: QPalette) -> QIcon:
    """Return the disc that tells a verdict, as on the flags."""
    ratio = 2.0  # sharp on a screen of 200 %, and good enough on others
    picture = QPixmap(QSize(_ICON, _ICON) * ratio)
    picture.setDevicePixelRatio(ratio)
    picture.fill(Qt.GlobalColor.transparent)
    painter = QPainter(picture)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    paint_badge(painter, QPointF(_ICON / 2, _ICON / 2), state, palette)
    painter.end()
    return QIcon(picture)


def paint_badge(painter: QPainter, centre: QPointF, state: State, palette: QPalette) -> None:
    """Paint the disc that tells a verdict about a dot."""
    ink = palette.color(QPalette.ColorRole.Text).name()
    ground = palette.color(QPalette.ColorRole.Base).name()
    painter.save()
    painter.translate(centre)
    MarkPainter(painter, _ICON_DOTS, 0.0).paint(badge(state, (0.0, 0.0), (ink, ground)))
    painter.restore()


def _tips() -> dict[State, str]:
    return {
        State.TO_BE_MENDED: say("It is a fault, and somebody is to mend it"),
        State.MENDED: say("It was mended; it is listed until the drawing shows it"),
        State.ACCEPTED: say("It is as found and may stand: say why"),
        State.NO_FAULT: say("The drawing or the check misleads: say how"),
    }


def say(text: str) -> str:
    """Return a text in the window's language."""
    return QCoreApplication.translate("VerdictBox", text)
