"""A remark and photographs for one stop, typed and taken in place."""

from collections.abc import Iterable
from pathlib import Path

from PySide6.QtCore import QDir, Qt, Signal
from PySide6.QtWidgets import (
    QFileDialog,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

PICTURES = (".jpg", ".jpeg", ".png", ".webp", ".tif", ".tiff", ".bmp", ".gif")
PHOTOGRAPHS = (*PICTURES, ".heic", ".heif", ".avif")
"""What telephones call their photographs; those that cannot be read are refused in words."""

Draft = tuple[str, ...]
"""What names a stop in which something may be typed and not put down yet."""


class NoteBox(QWidget):
    """Takes a remark, and photographs from files. `noted`: the words and the files' paths.

    What is typed at one stop stays there until one comes back. Where a place has several
    questions, nothing is noted before one of them is chosen: it waits, and says so.
    """

    noted = Signal(str, object)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._at: Draft = ()
        self._drafts: dict[Draft, str] = {}
        self._waiting: dict[Draft, tuple[Path, ...]] = {}
        self._pressed = False
        self._about, self._lacks = "", False
        self.about = self._made_label("")
        self.words = QLineEdit(self)
        self.words.setPlaceholderText(self.tr("Remark"))
        self.words.setAccessibleName(self.tr("Remark"))
        self.words.setAcceptDrops(False)  # else a photograph that is dropped on it becomes words
        self.put_down = QPushButton(self.tr("Put the remark down"), self)
        self.photograph = QPushButton(self.tr("Photograph…"), self)
        self.photograph.setToolTip(
            self.tr(
                "Choose photographs from files, or drop them here. The program cannot use the "
                "tablet's camera: take the photograph with the tablet itself, then choose it."
            )
        )
        self.told = self._made_label("small")
        self.told.setText(self.photograph.toolTip())
        self.put_down.clicked.connect(self._note)
        self.words.returnPressed.connect(self._note)
        self.words.textChanged.connect(self._check)
        self.photograph.clicked.connect(self.choose_photographs)
        self._lay_out()
        self._check()

    # ---- what it is about ----------------------------------------------------------------------

    @property
    def is_waiting(self) -> bool:
        """Whether something is to be noted as soon as its question is chosen."""
        return self._pressed or bool(self._waiting.get(self._at))

    @property
    def begun(self) -> tuple[Draft, ...]:
        """The stops at which something is typed, or waits, and is not put down."""
        here = [self._at] if self.words.text().strip() else []
        return tuple(dict.fromkeys((*self._drafts, *self._waiting, *here)))

    def turn_to(self, stop: Draft) -> None:
        """Come to another stop: what is typed stays at the one before."""
        if stop == self._at:
            return
        self._keep(self._at, self.words.text())
        self._at, self._pressed = stop, False
        self.words.setText(self._drafts.pop(stop, ""))

    def show_about(self, question: str, *, lacks: bool) -> None:
        """Say which question a note is about; `lacks` while none of several is chosen."""
        self._about, self._lacks = question, lacks
        self._tell()
        if not lacks and self.is_waiting:
            paths, self._pressed = self._waiting.pop(self._at, ()), False
            self.noted.emit(self.words.text().strip(), paths)

    def give_back(self, words: str, stop: Draft | None = None) -> None:
        """Put words back that could not be put down, unless others were typed there meanwhile."""
        if stop is None or stop == self._at:
            self.words.setText(self.words.text() or words)
        else:
            self._keep(stop, self._drafts.get(stop, "") or words)

    def give_up(self) -> None:
        """Wait for no question any more; what is typed stays in its line."""
        self._pressed = False
        self._waiting.pop(self._at, None)
        self._tell()

    def clear(self, stop: Draft) -> None:
        """Forget what was typed at a stop: it is put down."""
        if stop == self._at:
            self.words.clear()
        else:
            self._drafts.pop(stop, None)

    # ---- what is given -------------------------------------------------------------------------

    def choose_photographs(self) -> None:
        """Ask for photographs, and take them in with what is typed."""
        kinds = " ".join(f"*{each}" for each in PHOTOGRAPHS)
        kinds = f"{kinds} {kinds.upper()}"
        dialog = QFileDialog(self, self.tr("Photographs"), QDir.homePath())
        dialog.setNameFilter(self.tr("Photographs ({})").format(kinds))
        dialog.setFileMode(QFileDialog.FileMode.ExistingFiles)
        dialog.filesSelected.connect(lambda names: self.take_in(map(Path, names)))
        dialog.open()

    def take_in(self, paths: Iterable[Path]) -> None:
        """Note photographs, with what is typed; what is none is told by whoever reads them."""
        pictures = tuple(paths)
        if pictures and self._lacks:
            self._waiting[self._at] = (*self._waiting.get(self._at, ()), *pictures)
            self._tell()
        elif pictures:
            self.noted.emit(self.words.text().strip(), pictures)

    def _note(self) -> None:
        if self.words.text().strip() and self._lacks:
            self._pressed = True
            self._tell()
        elif self.words.text().strip():
            self.noted.emit(self.words.text().strip(), ())

    def _keep(self, stop: Draft, words: str) -> None:
        if words.strip():
            self._drafts[stop] = words

    def _check(self) -> None:
        self.put_down.setEnabled(bool(self.words.text().strip()))

    # ---- how it looks --------------------------------------------------------------------------

    def _tell(self) -> None:
        """Say what a note goes to, or what it waits for."""
        count = len(self._waiting.get(self._at, ()))
        if not self._lacks:
            told = self.tr("About: {}").format(self._about) if self._about else ""
        elif count:
            told = self.tr(
                "{} photographs wait: touch “Note…” at the question that they are about (or press Q)."
            ).format(count)
            if count == 1:
                told = self.tr(
                    "1 photograph waits: touch “Note…” at the question that it is about (or press Q)."
                )
        else:
            told = self.tr("Which question is it about? Touch “Note…” beside it (or press Q).")
        self.about.setText(told)
        self.about.setVisible(bool(told))
        name = "kind" if self._lacks and self.is_waiting else ""
        if self.about.objectName() != name:
            self.about.setObjectName(name)
            self.about.style().unpolish(self.about)
            self.about.style().polish(self.about)

    def _made_label(self, name: str) -> QLabel:
        label = QLabel(self)
        label.setObjectName(name)
        label.setWordWrap(True)
        label.setTextFormat(Qt.TextFormat.PlainText)
        return label

    def _lay_out(self) -> None:
        line = QHBoxLayout()
        line.addWidget(self.put_down)
        line.addWidget(self.photograph)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(8)
        column.addWidget(self.about)
        column.addWidget(self.words)
        column.addLayout(line)
        column.addWidget(self.told)
        self.about.hide()
