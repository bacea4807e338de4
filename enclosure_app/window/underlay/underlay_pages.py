"""Asks in place which page of a file goes under the drawing: small pictures, a click, done."""

from PySide6.QtCore import QPoint, QRect, QSize, Qt, Signal
from PySide6.QtGui import QIcon, QImage, QKeyEvent, QPainter, QPixmap
from PySide6.QtWidgets import (
    QHBoxLayout,
    QLabel,
    QListView,
    QListWidget,
    QListWidgetItem,
    QPushButton,
    QSizePolicy,
    QVBoxLayout,
    QWidget,
)

from enclosure_app.files.underlay.reading import UnderlayFile, small_picture
from enclosure_app.window.apart.underlay_work import Work

_SMALL = QSize(150, 106)  # dots of a small picture: A-sizes across


class PageChooser(QWidget):
    """Shows the pages of a file. `chosen`: the file and which page of it, from 0."""

    chosen = Signal(object, int)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("step")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self.setAccessibleName(self.tr("Which page"))
        self._file: UnderlayFile | None = None
        self._work: Work | None = None
        self.words = QLabel(self)
        self.words.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)
        self.pages = self._made_pages()
        self.put = QPushButton(self.tr("Put it under the drawing"), self)
        self.put.clicked.connect(self._choose)
        self.leave = QPushButton(self.tr("Leave it"), self)
        self.leave.clicked.connect(self.give_up)
        self._lay_out()
        self.hide()

    def ask(self, file: UnderlayFile) -> None:
        """Ask which page of a file."""
        self.give_up()
        self._file = file
        self.words.setText(
            self.tr("{} has {} pages. Which one goes under the drawing?").format(
                file.name, len(file.pages)
            )
        )
        self.pages.clear()
        for name in file.pages:
            item = QListWidgetItem(_icon(QImage()), self.tr("Page {}").format(name))
            item.setTextAlignment(Qt.AlignmentFlag.AlignHCenter)
            self.pages.addItem(item)
        self.pages.setCurrentRow(0)
        self.show()
        self.pages.setFocus()
        self._picture(0)

    def give_up(self) -> None:
        """Ask no more."""
        if self._work:
            self._work.stop()
        self._work = self._file = None
        self.hide()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Leave the file with Escape."""
        if event.key() == Qt.Key.Key_Escape:
            self.give_up()
        else:
            super().keyPressEvent(event)

    def _made_pages(self) -> QListWidget:
        pages = QListWidget(self)
        pages.setViewMode(QListView.ViewMode.IconMode)
        pages.setFlow(QListView.Flow.LeftToRight)
        pages.setWrapping(False)
        pages.setMovement(QListView.Movement.Static)
        pages.setIconSize(_SMALL)
        pages.setGridSize(QSize(_SMALL.width() + 16, _SMALL.height() + 28))
        pages.setFixedHeight(_SMALL.height() + 44)
        pages.setHorizontalScrollMode(QListView.ScrollMode.ScrollPerPixel)
        pages.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        pages.setAccessibleName(self.tr("Pages"))
        pages.itemActivated.connect(self._choose)
        return pages

    def _lay_out(self) -> None:
        head = QHBoxLayout()
        head.addWidget(self.words, 1)
        head.addWidget(self.put)
        head.addWidget(self.leave)
        column = QVBoxLayout(self)
        column.setContentsMargins(14, 7, 10, 8)
        column.addLayout(head)
        column.addWidget(self.pages)

    def _choose(self) -> None:
        file, page = self._file, self.pages.currentRow()
        if file is not None and page >= 0:
            self.give_up()
            self.chosen.emit(file, page)

    def _picture(self, number: int) -> None:
        """Have the small picture of a page made, and after it that of the next one."""
        file = self._file
        if file is None or number >= len(file.pages):
            return
        most = max(_SMALL.width(), _SMALL.height()) * 2
        self._work = Work(lambda _: (number, small_picture(file, number, most)))
        self._work.done.connect(self._show_picture)
        self._work.failed.connect(lambda _: self._picture(number + 1))
        self._work.start()

    def _show_picture(self, made: tuple[int, bytes]) -> None:
        number, data = made
        item = self.pages.item(number)
        if item is not None:
            item.setIcon(_icon(QImage.fromData(data)))
            self._picture(number + 1)


def _icon(image: QImage) -> QIcon:
    """Return a picture as an icon that looks the same when it is chosen."""
    icon, sheet = QIcon(), _on_sheet(image)
    for mode in (QIcon.Mode.Normal, QIcon.Mode.Selected):
        icon.addPixmap(sheet, mode)
    return icon


def _on_sheet(image: QImage) -> QPixmap:
    """Return a picture in the middle of the room that each has, clear around it."""
    sheet = QPixmap(_SMALL * 2)
    sheet.setDevicePixelRatio(2.0)
    sheet.fill(Qt.GlobalColor.transparent)
    if image.isNull():
        return sheet
    fit = image.size().scaled(_SMALL, Qt.AspectRatioMode.KeepAspectRatio)
    left, top = (_SMALL.width() - fit.width()) // 2, (_SMALL.height() - fit.height()) // 2
    painter = QPainter(sheet)
    painter.setRenderHint(QPainter.RenderHint.SmoothPixmapTransform)
    painter.drawImage(QRect(QPoint(left, top), fit), image)
    painter.end()
    return sheet
