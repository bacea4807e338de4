"""Flags in the drawing that are clicked or pointed at: the finding they stand for."""

from PySide6.QtCore import QEvent, QObject, QPointF, Qt, Signal
from PySide6.QtGui import QHelpEvent, QMouseEvent
from PySide6.QtWidgets import QToolTip

from enclosure_app.drawing.marks import Flag
from enclosure_app.drawing.placement import Placement
from enclosure_app.drawing.section.flags import FLAG_HEIGHT, FLAG_WIDTH
from enclosure_app.drawing.verdict_words import verdict_line
from enclosure_app.model.finding import Finding
from enclosure_app.model.report import SectionResult
from enclosure_app.model.said.decision import State
from enclosure_app.window.canvas.camera import Camera
from enclosure_app.window.canvas.canvas import Canvas
from enclosure_app.window.canvas.ink.look import DOTS, Look
from enclosure_app.window.canvas.picture.composition import flags_of, numbers_of, only_control
from enclosure_app.window.canvas.tools.select import Select
from enclosure_app.window.words.laps import lap_at, lap_words
from enclosure_app.window.words.trade import taught

_REACH = 7.0  # dots within which a lap is pointed at


class FlagHand(QObject):
    """Watches the mouse over a canvas. `taken`: the key of the finding whose flag was clicked.

    Flags are taken with the tool that picks; every other tool draws through them.
    """

    taken = Signal(str)

    def __init__(self, canvas: Canvas) -> None:
        super().__init__(canvas)
        self._canvas = canvas
        self._result: SectionResult | None = None
        self._look = Look()
        self._flags: tuple[Flag, ...] = ()
        self._seen: Camera | None = None
        self._held = False
        canvas.installEventFilter(self)

    def show_result(self, result: SectionResult, look: Look) -> None:
        """Watch over the flags of another result."""
        self._result, self._look, self._seen = result, look, None

    def finding_at(self, dot: QPointF) -> Finding | None:
        """Return the finding whose flag is at a dot of the view; the upper one of two."""
        size = self._canvas.camera.size
        x, y = (dot.x() - size.width() / 2) / DOTS, (size.height() / 2 - dot.y()) / DOTS
        hit = [
            flag.source
            for flag in self._flags_now()
            if abs(flag.at[0] - x) <= FLAG_WIDTH / 2 and abs(flag.at[1] - y) <= FLAG_HEIGHT / 2
        ]
        findings = self._result.findings if self._result else ()
        return next((f for f in findings if hit and f.key == hit[-1]), None)

    def _flags_now(self) -> tuple[Flag, ...]:
        """Return the flags as they stand now, in mm from the middle of the view; placed once a look."""
        camera = self._canvas.camera
        if self._result is None or not self._result.findings:
            return ()
        if self._seen != camera:
            placement = Placement(DOTS / camera.zoom, camera.centre)
            shown = only_control(self._result, self._look.only)
            marks = flags_of(shown, numbers_of(self._result.findings), placement, self._look)
            self._flags = tuple(mark for mark in marks if isinstance(mark, Flag))
            self._seen = camera
        return self._flags

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Take clicks on flags, and say what a flag stands for."""
        del watched
        if isinstance(event, QMouseEvent) and event.type() == QEvent.Type.MouseButtonPress:
            self._held = self._pressed(event)
            return self._held
        if self._held and event.type() == QEvent.Type.MouseButtonRelease:
            self._held = False  # it belongs to the press
            return True
        if isinstance(event, QHelpEvent) and event.type() == QEvent.Type.ToolTip:
            told = self.told_at(QPointF(event.pos()))
            QToolTip.showText(event.globalPos(), told, self._canvas)
            return True
        return False

    def _pressed(self, event: QMouseEvent) -> bool:
        plain = event.modifiers() == Qt.KeyboardModifier.NoModifier
        if not (
            event.button() == Qt.MouseButton.LeftButton
            and plain
            and isinstance(self._canvas.tool, Select)
        ):
            return False
        finding = self.finding_at(event.position())
        if finding is None:
            return False
        self._canvas.setFocus()
        self.taken.emit(finding.key)
        return True

    def told_at(self, dot: QPointF) -> str:
        """Return what is at a dot of the view, in words: a finding's flag, or a lap."""
        finding = self.finding_at(dot)
        if finding or self._result is None:
            return self.told(finding)
        camera = self._canvas.camera
        shown = only_control(self._result, self._look.only)
        lap = lap_at(shown, camera.place(dot), _REACH / camera.zoom)
        return taught(lap_words(self._result, lap, self._look.units)) if lap else ""

    def told(self, finding: Finding | None) -> str:
        """Return a finding's sentence, what to do, and what was decided."""
        if finding is None or self._result is None:
            return ""
        decision = self._result.decisions.get(finding.key)
        open_still = decision is None or decision.state is State.OPEN
        decided = "" if decision is None or open_still else verdict_line(decision)
        return "\n".join(filter(None, (finding.message, finding.advice, decided)))
