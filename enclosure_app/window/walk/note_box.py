"""A remark and photographs for one stop, typed and taken in place."""

from collections.abc import Iterable
from pathlib import Path

from PySide6.QtCore import QDir, Signal
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


class NoteBox(QWidget):
    """Takes a remark, and photographs from files. `noted`: the words and the files' paths."""

    noted = Signal(str, object)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.words = QLineEdit(self)
        self.words.setPlaceholderText(self.tr("Remark"))
        self.words.setAccessibleName(self.tr("Remark"))
        self.put_down = QPushButton(self.tr("Put the remark down"), self)
        self.photograph = QPushButton(self.tr("Photograph…"), self)
        self.photograph.setToolTip(
            self.tr(
                "Choose photographs from files, or drop them here. The program cannot use the "
                "tablet's camera: take the photograph with the tablet itself, then choose it."
            )
        )
        self.told = QLabel(self.photograph.toolTip(), self)
        self.told.setWordWrap(True)
        self.told.setObjectName("small")
        self.put_down.clicked.connect(self._note)
        self.words.returnPressed.connect(self._note)
        self.words.textChanged.connect(self._check)
        self.photograph.clicked.connect(self.choose_photographs)
        self._lay_out()
        self._check()

    def clear(self) -> None:
        """Forget what was typed: it is about another stop."""
        self.words.clear()

    def choose_photographs(self) -> None:
        """Ask for photographs, and take them in with what is typed."""
        kinds = " ".join(f"*{each}" for each in PICTURES)
        kinds = f"{kinds} {kinds.upper()}"
        dialog = QFileDialog(self, self.tr("Photographs"), QDir.homePath())
        dialog.setNameFilter(self.tr("Photographs ({})").format(kinds))
        dialog.setFileMode(QFileDialog.FileMode.ExistingFiles)
        dialog.filesSelected.connect(lambda names: self.take_in(map(Path, names)))
        dialog.open()

    def take_in(self, paths: Iterable[Path]) -> None:
        """Note photographs, with what is typed."""
        pictures = tuple(path for path in paths if path.suffix.casefold() in PICTURES)
        if pictures:
            self.noted.emit(self.words.text().strip(), pictures)

    def _note(self) -> None:
        if self.words.text().strip():
            self.noted.emit(self.words.text().strip(), ())

    def _check(self) -> None:
        self.put_down.setEnabled(bool(self.words.text().strip()))

    def _lay_out(self) -> None:
        line = QHBoxLayout()
        line.addWidget(self.put_down)
        line.addWidget(self.photograph)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(8)
        column.addWidget(self.words)
        column.addLayout(line)
        column.addWidget(self.told)
