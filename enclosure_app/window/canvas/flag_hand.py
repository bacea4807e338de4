"""Flags in the drawing that are clicked or pointed at: the finding they stand for."""

from PySide6.QtCore import QEvent, QObject, QPointF, Qt, Signal
from PySide6.QtGui import QHelpEvent, QMouseEvent
from PySide6.QtWidgets import QToolTip

from enclosure_app.drawing.verdict_words import verdict_line
from enclosure_app.model.finding import Finding
from enclosure_app.model.report import SectionResult
from enclosure_app.model.said.decision import State
from enclosure_app.window.canvas.canvas import Canvas
from enclosure_app.window.canvas.ink.look import Look
from enclosure_app.window.canvas.picture.composition import only_control
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
        self._held = False
        canvas.installEventFilter(self)

    def show_result(self, result: SectionResult, look: Look) -> None:
        """Watch over the flags of another result."""
        self._result, self._look = result, look

    def finding_at(self, dot: QPointF) -> Finding | None:
        """Return the finding whose flag is seen at a dot of the view; the upper one of two."""
        hit = [key for box, key in self._canvas.flags() if box.contains(dot)]
        if not hit or self._result is None:
            return None
        shown = only_control(self._result, self._look.only)
        return next((finding for finding in shown.findings if finding.key == hit[-1]), None)

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
