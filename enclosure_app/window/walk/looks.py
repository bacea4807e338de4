"""What to look at at one place of the site list: each question with three answers to touch."""

from collections.abc import Mapping

from PySide6.QtCore import QCoreApplication, Qt, Signal
from PySide6.QtWidgets import (
    QApplication,
    QFrame,
    QHBoxLayout,
    QLabel,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from enclosure_app.drawing.lengths import format_length
from enclosure_app.model.drawing import Units
from enclosure_app.model.said.site_check import Seen, SiteCheck
from enclosure_app.planning.site_list.places import SitePlace
from enclosure_app.planning.site_list.questions import Question

ANSWERS = (Seen.IN_ORDER, Seen.NOT_IN_ORDER, Seen.HIDDEN)


class LookRow(QFrame):
    """One question. `answered`: its key, and what was seen; the same answer again takes it back.

    `picked`: a remark or a photograph is to be about this one.
    """

    answered = Signal(str, object)
    picked = Signal(str)

    def __init__(self, key: str, question: Question, units: Units, parent: QWidget) -> None:
        super().__init__(parent)
        self.setObjectName("card")
        self.key, self.seen = key, Seen.NOT_LOOKED_AT
        self.asked = _wrapped(question.text, "asked", self)
        self.why = _wrapped(question.why, "", self)
        self.source = _wrapped(figures(question, units), "small", self)
        self.told = _wrapped("", "small", self)
        self.buttons = {seen: self._made(seen) for seen in ANSWERS}
        self.note = self._made_note()
        above, line = QHBoxLayout(), QHBoxLayout()
        above.addWidget(self.asked, 1)
        above.addWidget(self.note, 0, Qt.AlignmentFlag.AlignTop)
        line.setSpacing(6)
        for button in self.buttons.values():
            line.addWidget(button, 1)
        column = QVBoxLayout(self)
        column.setContentsMargins(12, 10, 12, 10)
        column.setSpacing(6)
        column.addLayout(above)
        for part in (self.why, self.source):
            column.addWidget(part)
        column.addLayout(line)
        column.addWidget(self.told)
        self.show_look(None)

    def show_look(self, check: SiteCheck | None) -> None:
        """Show what was seen, if anybody looked."""
        self.seen = check.seen if check else Seen.NOT_LOOKED_AT
        for seen, button in self.buttons.items():
            button.setChecked(seen is self.seen)
        told = look_line(check) if check else ""
        self.told.setText(told)
        self.told.setVisible(bool(told))

    def choose(self, *, chosen: bool) -> None:
        """Show whether a note is about this question."""
        self.note.setChecked(chosen)
        self.setProperty("chosen", chosen)
        self.style().unpolish(self)
        self.style().polish(self)

    @property
    def is_answered(self) -> bool:
        """Whether somebody looked."""
        return self.seen is not Seen.NOT_LOOKED_AT

    def _made(self, seen: Seen) -> QPushButton:
        button = QPushButton(seen_word(seen), self)
        button.setCheckable(True)
        button.setObjectName("answer")
        button.setAccessibleName(f"{self.asked.text()} {seen_word(seen)}")
        button.clicked.connect(lambda: self._answer(seen))
        return button

    def _made_note(self) -> QPushButton:
        button = QPushButton(say("Note…"), self)
        button.setCheckable(True)
        button.setObjectName("answer")
        words = say("A remark or a photograph about this question (Q goes from one to the next)")
        button.setToolTip(words)
        button.setAccessibleName(f"{self.asked.text()} {words}")
        button.clicked.connect(lambda: self.picked.emit(self.key))
        return button

    def _answer(self, seen: Seen) -> None:
        self.answered.emit(self.key, Seen.NOT_LOOKED_AT if seen is self.seen else seen)


class Looks(QWidget):
    """All questions of one place.

    `answered`: the key of one, and what was seen. `all_answered`: everything that is left there is
    in order. `picked`: the key of the one that a note is about; `touched`: it was picked by hand,
    so that the note is begun now.
    """

    touched = Signal()

    answered = Signal(str, object)
    picked = Signal(str)
    all_answered = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.all_in_order = QPushButton(self.tr("All of it is in order"), self)
        self.all_in_order.setObjectName("main")
        self.all_in_order.clicked.connect(self.all_answered)
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(0, 0, 0, 0)
        self._column.setSpacing(8)
        self._shown: tuple[SitePlace, Units] | None = None
        self.rows: dict[str, LookRow] = {}
        self.chosen = ""

    def show_place(self, place: SitePlace, units: Units, seen: Mapping[str, SiteCheck]) -> None:
        """Show what to look at at a place, and what was seen there."""
        if (place, units) != self._shown:
            self._shown = place, units
            self._ask(place, units)
        for key, row in self.rows.items():
            row.show_look(seen.get(key))
        looked = [check.seen for key in self.rows if (check := seen.get(key))]
        left = sum(each is not Seen.NOT_LOOKED_AT for each in looked) < len(self.rows)
        self.all_in_order.setEnabled(left)

    def choose(self, key: str) -> None:
        """Take the question with a key for what a note is about: a person chose it."""
        self._mark(key)
        self.picked.emit(key)

    def begin(self) -> None:
        """Choose nothing of several; an only question needs no choice."""
        self._mark(next(iter(self.rows)) if len(self.rows) == 1 else "")

    def _mark(self, key: str) -> None:
        self.chosen = key
        for each, row in self.rows.items():
            row.choose(chosen=each == key and len(self.rows) > 1)

    def choose_next(self) -> LookRow | None:
        """Choose the question after the one that is chosen, the first one after the last."""
        keys = list(self.rows)
        if not keys:
            return None
        at = keys.index(self.chosen) + 1 if self.chosen in keys else 0
        self.choose(keys[at % len(keys)])
        return self.rows[self.chosen]

    def _touch(self, key: str) -> None:
        self.choose(key)
        self.touched.emit()

    def _answer(self, key: str, seen: Seen) -> None:
        """Tell an answer; what is not in order is what a note will be about."""
        self.answered.emit(key, seen)
        if seen is Seen.NOT_IN_ORDER:
            self.choose(key)

    def next_row(self) -> LookRow | None:
        """Return the question that the keys are at, else the first one, that nobody answered."""
        at = QApplication.focusWidget()
        rows = [row for row in self.rows.values() if not row.is_answered]
        held = next((row for row in rows if at is not None and row.isAncestorOf(at)), None)
        return held or next(iter(rows), None)

    def _ask(self, place: SitePlace, units: Units) -> None:
        for row in self.rows.values():
            row.hide()
            row.deleteLater()
        self.rows = {key: LookRow(key, asked, units, self) for key, asked in place.items}
        for row in self.rows.values():
            row.answered.connect(self._answer)
            row.picked.connect(self._touch)
            row.note.setVisible(len(self.rows) > 1)
            self._column.addWidget(row)
            row.show()
        self.begin()
        self._column.addWidget(self.all_in_order)  # below: one looks first
        self.all_in_order.setVisible(len(self.rows) > 1)  # one question needs no other button


def figures(question: Question, units: Units) -> str:
    """Return the lengths of a question and where it is from, in one line."""
    told = []
    if question.drawn is not None:
        told.append(say("Drawn: {}").format(format_length(question.drawn, units)))
    if question.least is not None:
        told.append(say("at least {}").format(format_length(question.least, units)))
    return " · ".join([*told, question.source])


def seen_word(seen: Seen) -> str:
    """Return what was seen, as it stands on a button."""
    return {
        Seen.IN_ORDER: say("In order"),
        Seen.NOT_IN_ORDER: say("Not in order"),
        Seen.HIDDEN: say("Cannot be seen"),
        Seen.NOT_LOOKED_AT: say("Not looked at"),
    }[seen]


def look_line(check: SiteCheck) -> str:
    """Return what was seen, by whom, when, with the remark; where nobody looked, the note alone."""
    pictures = pictures_word(len(check.photographs))
    if check.seen is Seen.NOT_LOOKED_AT:
        return " · ".join(filter(None, (check.remark, pictures)))
    told = seen_word(check.seen)
    if check.who:
        told = say("{} by {}").format(told, check.who)
    if check.when:
        told = f"{told}, {check.when[:10]}"
    told = f"{told}: {check.remark}" if check.remark else told
    return " · ".join(filter(None, (told, pictures)))


def pictures_word(count: int) -> str:
    """Return how many photographs there are, "" for none."""
    if count == 0:
        return ""
    return say("1 photograph") if count == 1 else say("{} photographs").format(count)


def _wrapped(text: str, name: str, parent: QWidget) -> QLabel:
    label = QLabel(text, parent)
    label.setWordWrap(True)
    label.setObjectName(name)
    label.setVisible(bool(text))
    return label


def say(text: str) -> str:
    """Return a text in the window's language."""
    return QCoreApplication.translate("Looks", text)
