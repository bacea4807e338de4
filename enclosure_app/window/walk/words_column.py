"""The words of a stop, or of the last page: what is shown, answered, remarked and photographed."""

from dataclasses import dataclass

from PySide6.QtCore import QSize, Qt
from PySide6.QtWidgets import QLabel, QLineEdit, QScrollArea, QScroller, QVBoxLayout, QWidget

from enclosure_app.language import say
from enclosure_app.model.said.photograph import Photograph
from enclosure_app.model.standing.sign_offs import Signed
from enclosure_app.model.underlay import Underlay
from enclosure_app.planning.site_list.questions import HEIGHT
from enclosure_app.window.canvas.ink.look import Look
from enclosure_app.window.walk.finding_card import FindingCard
from enclosure_app.window.walk.note_box import Draft, NoteBox
from enclosure_app.window.walk.photo_strip import PhotoStrip
from enclosure_app.window.walk.place_card import PlaceCard
from enclosure_app.window.walk.signing import SignPage
from enclosure_app.window.walk.stops import Round, Stop
from enclosure_app.window.walk.swipe_area import SwipeArea

_LEAST = 160  # dots that the words are high at least


@dataclass(frozen=True, slots=True)
class Shown:
    """What a walk shows: the round, how it looks, what lies under it, and who signed."""

    walked: Round
    look: Look
    under: tuple[Underlay, ...] = ()
    signed: tuple[Signed, ...] = ()
    said: tuple[str, ...] = ()  # of the stop one is at, the earliest first
    photographs: tuple[Photograph, ...] = ()
    who: str = ""
    section: tuple[int, int] = (1, 1)  # which one of how many
    project: str = ""
    judged: bool = True  # False while what is drawn is not checked yet
    stopped: bool = False  # and will not be: a person stopped it


class WordsColumn(QScrollArea):
    """One card at a time: a finding, a place to look at, or the signature; and what goes with it."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._at: Draft = ()
        self.page = SwipeArea(self)
        self.page.setObjectName("panel")
        self.finding, self.look_here = FindingCard(self), PlaceCard(self)
        self.signing, self.note, self.strip = SignPage(self), NoteBox(self), PhotoStrip(self)
        self.said = self._made_label(self.tr("What was said until now"))
        self.beware = self._made_label(self.tr("Caution"))
        self.beware.setObjectName("small")
        self.name_asked = self._made_label(self.tr("Your name is asked for"))
        self.name_asked.setObjectName("kind")
        self.name_asked.hide()
        self.who = self._made_who()
        self.look_here.looks.picked.connect(self._pick)
        self.look_here.looks.touched.connect(self._show_note)
        self._lay_out()

    def minimumSizeHint(self) -> QSize:
        """Return room for the widest row of buttons, and for some lines of words."""
        bar = self.verticalScrollBar().sizeHint().width() + 2 * self.frameWidth()
        return QSize(self.page.minimumSizeHint().width() + bar, _LEAST)

    def sizeHint(self) -> QSize:
        """Return no more than the least: how much is said asks for no more room."""
        return self.minimumSizeHint()

    def show_stop(self, shown: Shown, stop: Stop | None) -> None:
        """Show the words of a stop, None for the last page."""
        name = shown.walked.result.section.name
        turned = self._turn_to((shown.project, name, stop.key if stop else ""))
        self.note.setVisible(stop is not None)
        asks = stop is not None and not shown.who
        self.who.setVisible(asks)
        self.name_asked.setVisible(asks and bool(self.name_asked.text()))
        self.strip.show_photographs(shown.photographs if stop else ())
        self.said.setText("\n".join(shown.said if stop else ()))
        self.said.setVisible(bool(self.said.text()))
        told = stop.place.cautions if stop and stop.place else ()
        self.beware.setText(say(HEIGHT))
        self.beware.setVisible(say(HEIGHT) not in told)
        self._show_card(self._told(shown, stop))
        self._show_about(stop)
        if turned:
            self.verticalScrollBar().setValue(0)

    def ask_name(self, sentence: str) -> None:
        """Ask in place who speaks; the sentence stays until it is known."""
        self.name_asked.setText(sentence)
        self.name_asked.show()
        self.who.setFocus()
        self.ensureWidgetVisible(self.name_asked)

    def _turn_to(self, stop: Draft) -> bool:
        """Return whether another stop comes; what is typed waits at its own."""
        if stop == self._at:
            return False
        self._at = stop
        self.note.turn_to(stop)
        self.look_here.looks.begin()
        return True

    def _pick(self, key: str) -> None:
        """Make ready for a note about the question that was chosen."""
        row = self.look_here.looks.rows.get(key)
        self.note.show_about(row.asked.text() if row else "", lacks=row is None)

    def _show_note(self) -> None:
        """Bring the note into view, what it is about above and its buttons below."""
        for part in (self.note.told, self.note.about):
            self.ensureWidgetVisible(part)

    def _show_about(self, stop: Stop | None) -> None:
        looks = self.look_here.looks
        if stop is None or stop.place is None:
            self.note.show_about("", lacks=False)
        elif len(looks.rows) > 1:
            self._pick(looks.chosen)
        else:
            self.note.show_about("", lacks=False)

    def _told(self, shown: Shown, stop: Stop | None) -> QWidget:
        """Fill a card with what there is to tell, and return it."""
        walked, units = shown.walked, shown.look.units
        if stop is not None and stop.finding is not None:
            decision = walked.result.decisions.get(stop.key)
            self.finding.verdict.set_who(shown.who or self.who.text())
            self.finding.show_finding(stop.finding, stop.number, units, decision)
            return self.finding
        if stop is not None and stop.place is not None:
            self.look_here.show_place(stop.place, units, walked.seen)
            return self.look_here
        number, count = shown.section
        self.signing.next_section.setVisible(number < count)
        here = (shown.project, walked.result.section.name)
        begun = [each for each in walked.stops if (*here, each.key) in self.note.begun]
        self.signing.show_round(walked, shown.signed, shown.who, begun, units)
        if not shown.judged:
            self.signing.wait(stopped=shown.stopped)
        return self.signing

    def _show_card(self, card: QWidget) -> None:
        """Show one card; the others ask for no room."""
        for each in (self.finding, self.look_here, self.signing):
            each.setVisible(each is card)

    def _made_label(self, name: str) -> QLabel:
        label = QLabel(self)
        label.setWordWrap(True)
        label.setTextFormat(Qt.TextFormat.PlainText)
        label.setAccessibleName(name)
        return label

    def _made_who(self) -> QLineEdit:
        """Return the line for a name, which is seen while nobody gave one."""
        who, words = QLineEdit(self), self.tr("Your name, to be put beside what you say")
        who.setPlaceholderText(words)
        who.setAccessibleName(words)
        who.textChanged.connect(self.finding.verdict.set_who)
        return who

    def _lay_out(self) -> None:
        column = QVBoxLayout(self.page)
        column.setContentsMargins(18, 14, 18, 18)
        column.setSpacing(14)
        cards = (self.name_asked, self.who, self.finding, self.look_here, self.signing)
        for part in (*cards, self.said, self.strip, self.note, self.beware):
            column.addWidget(part)
        column.addStretch(1)
        self.setWidgetResizable(True)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.setWidget(self.page)
        QScroller.grabGesture(self.viewport(), QScroller.ScrollerGestureType.TouchGesture)
