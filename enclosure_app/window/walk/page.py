"""The walk's page: the place large, its words beside or below it, and the way to the next one."""

from pathlib import Path

from PySide6.QtCore import QSize, Qt, Signal
from PySide6.QtGui import QDragEnterEvent, QDropEvent, QResizeEvent
from PySide6.QtWidgets import (
    QApplication,
    QBoxLayout,
    QLineEdit,
    QStackedWidget,
    QVBoxLayout,
    QWidget,
)

from enclosure_app.model.said.photograph import Photograph
from enclosure_app.window.findings.rule_page import RulePage
from enclosure_app.window.walk.dress import WALK
from enclosure_app.window.walk.foot import Foot
from enclosure_app.window.walk.head import Head
from enclosure_app.window.walk.note_box import PHOTOGRAPHS
from enclosure_app.window.walk.photo_page import PhotoPage
from enclosure_app.window.walk.place_view import PlaceView
from enclosure_app.window.walk.stops import Round, Stop, Which
from enclosure_app.window.walk.summary import name_of
from enclosure_app.window.walk.words_column import Shown, WordsColumn

_SHARES = (54, 46)  # of the width, or of the height: the picture, the words
_WORDS = 620  # dots that the words are wide at most beside the picture
_ANY = 16777215  # dots: Qt's word for no limit
_SIGN = ""  # the key of the last page


class WalkPage(QWidget):
    """Shows one stop at a time. It decides nothing itself: what is touched is told.

    `closed`: enough. `moved`: another stop is shown. `noted`: a remark, and the files of photographs.
    `halted`: what takes long is to be given up. `check_wanted`: what is drawn is to be checked.
    """

    closed = Signal()
    moved = Signal()
    noted = Signal(str, object)
    halted = Signal()
    check_wanted = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("walk")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self.setAccessibleName(self.tr("The walk"))
        self._shown: Shown | None = None
        self._walked: Round | None = None
        self.which = Which.EVERYTHING
        self.here = self._told = _SIGN
        self.head, self.foot = Head(self), Foot(self)
        self.place, self.photo, self.rule = PlaceView(self), PhotoPage(self), RulePage(self)
        self.words = WordsColumn(self)
        self.picture = self._made_picture()
        self._body = QBoxLayout(QBoxLayout.Direction.LeftToRight)
        self._lay_out()
        self._connect()
        self.setStyleSheet(WALK)
        self.setAcceptDrops(True)

    # ---- what is shown -------------------------------------------------------------------------

    @property
    def stop(self) -> Stop | None:
        """The stop one is at, None on the last page."""
        return next((stop for stop in self.stops if stop.key == self.here), None)

    @property
    def stops(self) -> tuple[Stop, ...]:
        """The stops that are walked, and the one that one is at: what is done does not run away."""
        walked = self._walked
        if walked is None:
            return ()
        shown = {stop.key for stop in walked.shown(self.which)}
        return tuple(s for s in walked.stops if s.key in shown or s.key == self.here)

    def begin(self, key: str = "") -> None:
        """Begin at the stop with a key, else at the first one."""
        self.which, self.here = Which.EVERYTHING, key
        self.head.choose(self.which)

    def stand_at(self, walked: Round) -> None:
        """Stand in a round at the stop one is at; where that is gone, near where it was."""
        first = self._walked is None or not self._walked.stops
        gone = self.here and all(stop.key != self.here for stop in walked.stops)
        at = self._number()
        self._walked = walked
        if gone or (first and not self.here):
            stops = self.stops
            self.here = stops[min(max(at - 1, 0), len(stops) - 1)].key if stops else _SIGN

    def show_walk(self, shown: Shown) -> None:
        """Show the walk as it is now."""
        self.stand_at(shown.walked)
        self._shown = shown
        self._tell()

    def forget(self) -> None:
        """Forget what was shown: another section, or another project, comes."""
        self._shown = self._walked = None
        self.here = _SIGN

    def go_to(self, key: str) -> None:
        """Go to the stop with a key, "" for the last page."""
        if key != self.here:
            self.here = key
            self.moved.emit()

    def step(self, by: int) -> None:
        """Go to the next stop, or the one before; the last page comes after the last one."""
        keys = [*(stop.key for stop in self.stops), _SIGN]
        at = keys.index(self.here) + by
        if 0 <= at < len(keys):
            self.go_to(keys[at])

    def choose(self, which: Which) -> None:
        """Walk these stops only, from the first one that is not behind."""
        self.which = which
        self.head.choose(which)
        if self._walked is None:
            return
        wanted = self._walked.shown(which)
        keys = {stop.key for stop in wanted}
        if self.here not in keys:
            every = [stop.key for stop in self._walked.stops]
            at = every.index(self.here) if self.here in every else 0
            ahead = [key for key in every[at:] if key in keys] or [s.key for s in wanted]
            self.here = ahead[0] if ahead else _SIGN
        self.moved.emit()

    def rest(self) -> None:
        """Rest the keys on the way onward: what was typed or touched is put down.

        On the last page they rest on what is left, on the signature, or on the next section.
        """
        (self.foot.onward if self.stop else self.words.signing.next_step).setFocus()

    def zoom(self, factor: float) -> None:
        """Look closer or wider at what is seen, the drawing or a photograph."""
        photo = self.picture.currentWidget() is self.photo
        (self.photo.view if photo else self.place).zoom(factor)

    def show_all(self) -> None:
        """Show the whole section, or the whole photograph."""
        if self.picture.currentWidget() is self.photo:
            self.photo.view.come_back()
        else:
            self.place.show_all()

    def show_drawing(self) -> None:
        """Show the drawing instead of a photograph or a rule's page."""
        self.picture.setCurrentWidget(self.place)

    def leave(self) -> None:
        """Go back by one: from a reason that is asked for, from a photograph, then from the walk."""
        finding, note = self.words.finding, self.words.note
        if note.words.hasFocus() or self.words.who.hasFocus():
            self.rest()
        elif note.isVisible() and note.is_waiting:
            note.give_up()
        elif finding.isVisible() and not finding.verdict.form.isHidden():
            finding.verdict.cancel()
            self.rest()
        elif self.picture.currentWidget() is not self.place:
            self.show_drawing()
        else:
            self.closed.emit()

    def _number(self) -> int:
        keys = [stop.key for stop in self.stops]
        return keys.index(self.here) + 1 if self.here in keys else 0

    def _tell(self) -> None:
        """Show the stop one is at, or the last page."""
        shown = self._shown
        if shown is None:
            return
        walked, stop = shown.walked, self.stop
        turned, self._told = self.here != self._told, self.here
        if turned:
            self.show_drawing()
        self.place.show_result(walked.result, shown.look, shown.under)
        self.rule.show_look(shown.look)
        self.head.name_section(walked.result.section.name, shown.section, shown.signed)
        self.head.show_round(walked, self.which, (self.here, self._number(), len(self.stops)))
        if not shown.judged:
            self.head.wait(stopped=shown.stopped, offers=stop is not None)  # else the words do
        self.foot.show_where(
            first=not self.stops or self.here == self.stops[0].key,
            last=stop is None,
            done=stop is not None and walked.is_done(stop),
        )
        types = isinstance(QApplication.focusWidget(), QLineEdit)
        self.words.show_stop(shown, stop)
        if turned and not types:
            self.rest()
        if stop is None:
            self.place.go_nowhere()
        else:
            self.place.go_to(stop.at, stop.extent)
            self.place.setAccessibleDescription(name_of(stop))

    # ---- how it is put together ----------------------------------------------------------------

    def _made_picture(self) -> QStackedWidget:
        picture = QStackedWidget(self)
        for page in (self.place, self.photo, self.rule):
            picture.addWidget(page)
        return picture

    def _lay_out(self) -> None:
        self._body.setContentsMargins(0, 0, 0, 0)
        self._body.setSpacing(0)
        for part, share in zip((self.picture, self.words), _SHARES, strict=True):
            self._body.addWidget(part, share)
        column = QVBoxLayout(self)
        column.setSizeConstraint(QVBoxLayout.SizeConstraint.SetNoConstraint)  # see below
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addWidget(self.head)
        column.addLayout(self._body, 1)
        column.addWidget(self.foot)

    def _connect(self) -> None:
        self.head.left.connect(self.leave)
        self.head.chosen.connect(self.choose)
        for button in (self.head.check, self.words.signing.check):
            button.clicked.connect(lambda _=False: self.check_wanted.emit())
        self.head.overview.taken.connect(self.go_to)
        self.foot.stepped.connect(self.step)
        self.foot.zoomed.connect(self.zoom)
        self.foot.all_wanted.connect(self.show_all)
        self.words.page.swiped.connect(self.step)
        self.words.signing.wanted.connect(self.go_to)
        self.words.finding.why.connect(self._show_rule)
        self.rule.back.setText(self.tr("‹ Back to the drawing"))
        self.rule.closed.connect(self.show_drawing)
        self.photo.closed.connect(self.show_drawing)
        self.words.strip.opened.connect(self._show_photograph)
        self.words.note.noted.connect(self.noted)

    def _show_rule(self, name: str) -> None:
        self.picture.setCurrentWidget(self.rule)
        self.rule.show_rule(name, self._shown.look if self._shown else None)

    def _show_photograph(self, photograph: Photograph) -> None:
        self.picture.setCurrentWidget(self.photo)
        self.photo.show_photograph(photograph)

    # ---- Qt's events ---------------------------------------------------------------------------

    def minimumSizeHint(self) -> QSize:
        """Return the least size in either direction, so that a tablet can always be turned."""
        bars = [part.minimumSizeHint() for part in (self.head, self.foot)]
        parts = [part.minimumSizeHint() for part in (self.picture, self.words)]
        wide = max(each.width() for each in (*bars, *parts))
        return QSize(wide, sum(b.height() for b in bars) + max(p.height() for p in parts))

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Put the words beside the picture, or below it on a tablet that is held upright."""
        super().resizeEvent(event)
        beside = self.picture.minimumSizeHint().width() + self.words.minimumSizeHint().width()
        upright = self.height() > self.width() or self.width() < beside
        ways = QBoxLayout.Direction
        way = ways.TopToBottom if upright else ways.LeftToRight
        self.words.setMaximumWidth(_ANY if upright else _WORDS)
        if way is not self._body.direction():
            self._body.setDirection(way)
            self._body.activate()

    def dragEnterEvent(self, event: QDragEnterEvent) -> None:
        """Take photographs that are dropped; other files are for the window."""
        if _has_pictures(event):
            event.acceptProposedAction()

    def dropEvent(self, event: QDropEvent) -> None:
        """Put photographs to the stop one is at, or to the question they are dropped on."""
        looks, at = self.words.look_here.looks, event.position().toPoint()
        under = self.childAt(at)
        for key, row in looks.rows.items():
            if under is not None and (under is row or row.isAncestorOf(under)):
                looks.choose(key)
        self.words.note.take_in(_dropped(event))


def _dropped(event: QDropEvent) -> list[Path]:
    return [Path(url.toLocalFile()) for url in event.mimeData().urls() if url.isLocalFile()]


def _has_pictures(event: QDropEvent) -> bool:
    return any(path.suffix.casefold() in PHOTOGRAPHS for path in _dropped(event))
