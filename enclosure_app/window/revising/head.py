"""The head of a revision: what is laid over what, and what became of all that was said, in a sentence."""

from collections import Counter
from collections.abc import Sequence
from pathlib import PureWindowsPath

from PySide6.QtCore import QCoreApplication, Qt, Signal
from PySide6.QtWidgets import QComboBox, QHBoxLayout, QLabel, QPushButton, QVBoxLayout, QWidget

from enclosure_app.planning.revision import Fate, files_of
from enclosure_app.window.revising.laying import Laid
from enclosure_app.window.revising.rows import ORDER, Row, fate_words, unlisted


class Head(QWidget):
    """Tells it, and asks what the person may know better.

    `place_chosen`: the revised drawing takes the place of this earlier one, "" for none of them.
    `stay_wanted`: what was not found again is of other drawings, and stays.
    """

    place_chosen = Signal(str)
    stay_wanted = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.told, self.sum, self.others, self.missing = (self._label() for _ in range(4))
        self.sum.setObjectName("panel-title")
        self.place = QComboBox(self)
        self.place.activated.connect(lambda _: self.place_chosen.emit(self.place.currentData()))
        self._asked = self._label()
        self._asked.setWordWrap(False)
        self._asked.setBuddy(self.place)
        self.stay = QPushButton(self.tr("They are of other drawings: let them stay"), self)
        self.stay.clicked.connect(lambda _=False: self.stay_wanted.emit())
        asked, lost = QHBoxLayout(), QHBoxLayout()
        asked.addWidget(self._asked)
        asked.addWidget(self.place)
        asked.addStretch(1)
        lost.addWidget(self.missing, 1)
        lost.addWidget(self.stay, 0, Qt.AlignmentFlag.AlignTop)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        for part in (self.told, self.sum):
            column.addWidget(part)
        column.addLayout(asked)
        column.addWidget(self.others)
        column.addLayout(lost)

    def show_laid(self, laid: Laid, rows: Sequence[Row]) -> None:
        """Tell what became of what."""
        earlier = laid.place.file if laid.place else laid.before.source
        own = _name(laid.file)
        over = self.tr("{} over {}.").format(own, _name(earlier)) if earlier else f"{own}."
        self.told.setText(f"{over} {self.tr('Nothing is changed before you lay it over.')}")
        self.sum.setText(sum_words(rows, unlisted(laid, rows)))
        self._show_place(laid)
        kept = [file for file in files_of(laid.before) if _stays(laid, file)]
        self.others.setText(
            self.tr("Stays as it is, with all that was said of it: {}.").format(
                ", ".join(map(_name, kept))
            )
        )
        self.others.setVisible(bool(kept))
        missing = self.tr(
            "Not surely found again: {}. They go with the earlier drawing; what was said there "
            "stays in the history."
        )
        self.missing.setText(missing.format(", ".join(laid.missing)))
        self.missing.setVisible(bool(laid.missing))
        self.stay.setVisible(bool(laid.missing))

    def _show_place(self, laid: Laid) -> None:
        """Ask whose place it takes, where there are several and nobody can be sure."""
        place = laid.place
        self._asked.setVisible(place is not None)
        self.place.setVisible(place is not None)
        if place is None:
            return
        self._asked.setText(
            self.tr("It takes the place of")
            if place.sure
            else self.tr("Not sure, please choose: it takes the place of")
        )
        self.place.clear()
        for file in laid.files:
            self.place.addItem(_name(file), file)
        self.place.addItem(self.tr("none of them: it stands beside the others"), "")
        chosen = place.sure or place.file
        self.place.setCurrentIndex(self.place.findData(place.file) if chosen else -1)

    def _label(self) -> QLabel:
        label = QLabel(self)
        label.setWordWrap(True)
        label.setTextFormat(Qt.TextFormat.PlainText)
        return label


def sum_words(rows: Sequence[Row], besides: int = 0) -> str:
    """Return in a sentence what became of all that people said of the earlier drawing.

    `besides` is how much of it has no row and is asked all the same.
    """
    said = [row for row in rows if row.said]
    if not said and not besides:
        return say("Nothing was said of what it takes the place of.")
    counts = Counter(row.match.fate for row in said)
    counts[Fate.NOT_SURE] += besides
    told = (
        f"{say('Only you can say') if fate is Fate.NOT_SURE else fate_words(fate)}: {counts[fate]}"
        for fate in reversed(ORDER)
        if counts[fate]
    )
    return f"{say('Places that people spoke of: {}.').format(counts.total())} {' · '.join(told)}"


def _stays(laid: Laid, file: str) -> bool:
    """Whether a drawing of the project stays as it is."""
    own = [e.name for e in laid.before.sections if (e.file or laid.before.source) == file]
    return all(name in laid.kept for name in own)


def _name(file: str) -> str:
    return PureWindowsPath(file).name


def say(text: str) -> str:
    """Return a text in the window's language."""
    return QCoreApplication.translate("RevisionHead", text)
