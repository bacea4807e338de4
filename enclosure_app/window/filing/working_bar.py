"""A quiet bar that says in words what takes long and how far it is, and can end it."""

from PySide6.QtCore import QEvent, QObject, Qt, QTimer, Signal
from PySide6.QtGui import QKeyEvent, QKeySequence, QShortcut
from PySide6.QtWidgets import QHBoxLayout, QProgressBar, QPushButton, QWidget

from enclosure_app.progress import Progress
from enclosure_app.window.apart.working import Job, Working
from enclosure_app.window.surround.elided_label import ElidedLabel

SOON = 250  # ms after which work is worth telling
_LOOK = 100  # ms between two looks at how far it is


class WorkingBar(QWidget):
    """Says what is under way; hidden while nothing takes long.

    `check_stopped`: the person wants checking to stop.
    """

    check_stopped = Signal()

    def __init__(self, working: Working, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("step")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self.setAccessibleName(self.tr("What takes long"))
        self._working = working
        self._checked = ""
        self._check: Progress | None = None
        self.words = ElidedLabel(self)
        self.share = QProgressBar(self)
        self.share.setTextVisible(False)
        self.share.setMaximumHeight(6)
        self.cancel = QPushButton(self.tr("Cancel"), self)
        self.cancel.clicked.connect(self._stop)
        line = QHBoxLayout(self)
        line.setContentsMargins(14, 1, 10, 1)  # what it is laid over gives it more room
        line.addWidget(self.words, 3)
        line.addWidget(self.share, 2)
        line.addWidget(self.cancel)
        self._escape = QShortcut(QKeySequence(Qt.Key.Key_Escape), self.window())
        self._escape.setContext(Qt.ShortcutContext.WindowShortcut)
        self._escape.activated.connect(working.stop)
        # the walk has an Escape of its own: what takes long goes first
        self._escape.activatedAmbiguously.connect(working.stop)
        self.window().installEventFilter(self)
        self._soon, self._look = _timer(self, SOON), _timer(self, _LOOK)
        self._soon.setSingleShot(True)
        self._soon.timeout.connect(self._show)
        self._look.timeout.connect(self._tell)
        working.changed.connect(self._changed)
        self._hide()

    def tell_check(self, words: str, progress: Progress | None = None) -> None:
        """Say how far checking is, "" when it is done; it may be stopped, and harms nobody."""
        self._checked, self._check = words, progress
        self._changed()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Stop checking by Escape that nothing else wants: a tool in hand gives up first."""
        if isinstance(event, QKeyEvent) and event.type() == QEvent.Type.KeyPress:
            escape = event.key() == Qt.Key.Key_Escape
            if escape and self._checking and not self.isHidden():
                self._stop()
                return True
        return super().eventFilter(watched, event)

    @property
    def _checking(self) -> bool:
        """Whether a check is what is told of."""
        return bool(self._checked) and self._told() is None

    def _stop(self) -> None:
        """Stop what is told of."""
        if self._checking:
            self.check_stopped.emit()
        else:
            self._working.stop()

    def _told(self) -> Job | None:
        return next((job for job in self._working.jobs if job.words), None)

    def _changed(self) -> None:
        if self._told() is None and not self._checked:
            self._hide()
        elif self.isHidden():
            if not self._soon.isActive():
                self._soon.start()
        else:
            self._tell()

    def _show(self) -> None:
        self.show()
        self._look.start()
        self._tell()

    def _hide(self) -> None:
        self._soon.stop()
        self._look.stop()
        self._escape.setEnabled(False)
        self.hide()

    def _tell(self) -> None:
        job = self._told()
        progress = job.progress if job else self._check
        share = progress.share if progress else None
        words = job.words if job else self._checked
        told = self.tr("{}… {} %").format(words, round(100 * share)) if share else f"{words}…"
        self.words.tell(told)
        self.share.setRange(0, 100 if share else 0)
        self.share.setValue(round(100 * share) if share else 0)
        stop = self.tr("Stop checking; what was found before stays (Esc)")
        leave = self.tr("Stop this and leave everything as it was (Esc)")
        self.cancel.setToolTip(leave if job else stop)
        self.cancel.setText(self.tr("Cancel") if job else self.tr("Stop"))
        self._escape.setEnabled(job is not None)


def _timer(parent: QWidget, pause: int) -> QTimer:
    timer = QTimer(parent)
    timer.setInterval(pause)
    return timer
