"""Required figures and settings of the check: which rule book, each figure with its source."""

from collections.abc import Mapping

from PySide6.QtCore import QSignalBlocker, Qt, Signal
from PySide6.QtWidgets import (
    QAbstractItemView,
    QComboBox,
    QFormLayout,
    QHeaderView,
    QLabel,
    QLineEdit,
    QPushButton,
    QTableWidget,
    QTableWidgetItem,
    QVBoxLayout,
    QWidget,
)

from enclosure_app.errors import EnclosureError
from enclosure_app.files.maps.rule_book import books, unused_figures
from enclosure_app.language import say
from enclosure_app.model.drawing import Units
from enclosure_app.model.limits import Limit, Limits
from enclosure_app.window.typed.typed_figure import read_figure, written_figure
from enclosure_app.window.words.trade import figure_words, taught

_WHAT, _VALUE, _FROM = range(3)
_NAME = Qt.ItemDataRole.UserRole


class FiguresPage(QWidget):
    """`figure`: its name, and the project's own value (None: the book's); `book`, `units`: chosen."""

    figure = Signal(str, object)
    book = Signal(str)
    units = Signal(object)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._limits = Limits({})
        self._names: tuple[str, ...] = ()  # of the figures, row by row
        self._own: Mapping[str, float] = {}
        self._units = Units.MM
        self.books, self.shown_units = QComboBox(self), QComboBox(self)
        self.sought, self.table, self.told = QLineEdit(self), QTableWidget(self), QLabel(self)
        self.refused = QLabel(self)  # why what was typed is no figure
        self.refused.setWordWrap(True)
        self.refused.hide()
        self.back = QPushButton(self.tr("Back to the book's figure"), self)
        self._fill_choices()
        self._make_table()
        self._lay_out()
        self._connect()

    def show_figures(
        self, limits: Limits, own: Mapping[str, float], book: str, units: Units
    ) -> None:
        """Show the figures in force; those in `own` are the project's."""
        self._limits, self._own, self._units = limits, own, units
        self._names = tuple(name for name in limits.figures if name not in unused_figures())
        self.books.setCurrentIndex(self.books.findData(book or limits.book))
        self.shown_units.setCurrentIndex(self.shown_units.findData(units))
        self._fill()

    def _fill_choices(self) -> None:
        for key, name in books().items():
            self.books.addItem(say(name), key)
        for each in Units:
            self.shown_units.addItem(self._unit_words(each), each)

    def _unit_words(self, units: Units) -> str:
        return {
            Units.MM: self.tr("millimetres"),
            Units.CM: self.tr("centimetres"),
            Units.M: self.tr("metres"),
            Units.IN: self.tr("feet and inches (drawn in inches)"),
            Units.FT: self.tr("feet and inches (drawn in feet)"),
        }[units]

    def _make_table(self) -> None:
        table = self.table
        table.setTabKeyNavigation(False)  # Tab leads on, the arrows go through the rows
        table.setColumnCount(3)
        table.setHorizontalHeaderLabels(
            [self.tr("What"), self.tr("Required"), self.tr("Where it is from")]
        )
        table.setAccessibleName(self.tr("Required figures"))
        table.verticalHeader().hide()
        table.setShowGrid(False)
        table.setWordWrap(False)
        table.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        table.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        head = table.horizontalHeader()
        head.setDefaultAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
        head.setSectionResizeMode(_WHAT, QHeaderView.ResizeMode.ResizeToContents)
        head.setSectionResizeMode(_VALUE, QHeaderView.ResizeMode.ResizeToContents)
        head.setSectionResizeMode(_FROM, QHeaderView.ResizeMode.Stretch)

    def _lay_out(self) -> None:
        self.sought.setPlaceholderText(self.tr("Find a figure: lap, upturn, drip…"))
        self.sought.setAccessibleName(self.tr("Find a figure"))
        self.told.setWordWrap(True)
        self.told.setObjectName("quiet")
        form = QFormLayout()
        form.setLabelAlignment(Qt.AlignmentFlag.AlignVCenter)
        form.addRow(self.tr("Rule book"), self.books)
        form.addRow(self.tr("Lengths are shown in"), self.shown_units)
        column = QVBoxLayout(self)
        column.addLayout(form)
        column.addWidget(self.sought)
        column.addWidget(self.table, 1)
        column.addWidget(self.refused)
        column.addWidget(self.told)
        column.addWidget(self.back, 0, Qt.AlignmentFlag.AlignLeft)

    def _connect(self) -> None:
        self.books.activated.connect(lambda _: self.book.emit(self.books.currentData()))
        self.shown_units.activated.connect(
            lambda _: self.units.emit(Units(self.shown_units.currentData()))
        )
        self.sought.textChanged.connect(self._seek)
        self.table.itemChanged.connect(self._take)
        self.table.currentCellChanged.connect(self._tell)
        self.back.clicked.connect(self._give_back)

    def _fill(self) -> None:
        blocker = QSignalBlocker(self.table)
        self.table.setRowCount(len(self._names))
        for row, name in enumerate(self._names):
            self._fill_row(row, self._limits.figure(name))
        blocker.unblock()
        self._seek()
        self._tell()

    def _fill_row(self, row: int, limit: Limit) -> None:
        texts = (
            figure_words(limit.name),
            written_figure(limit.value, limit.unit, self._units),
            limit.basis,
        )
        for column, text in enumerate(texts):
            item = self.table.item(row, column)
            if item is None:
                item = QTableWidgetItem()
                self.table.setItem(row, column, item)
            item.setText(text)
            item.setToolTip(taught(say(limit.note) if limit.note else text, texts[0]))
            item.setData(_NAME, limit.name)
            face = item.font()
            face.setBold(limit.name in self._own)
            item.setFont(face)
            flags = Qt.ItemFlag.ItemIsEnabled | Qt.ItemFlag.ItemIsSelectable
            item.setFlags(flags | Qt.ItemFlag.ItemIsEditable if column == _VALUE else flags)
            if column == _VALUE:
                item.setTextAlignment(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)

    def _seek(self) -> None:
        words = self.sought.text().casefold().split()
        for row, name in enumerate(self._names):
            text = figure_words(name).casefold()
            self.table.setRowHidden(row, not all(each in text for each in words))

    def _take(self, item: QTableWidgetItem) -> None:
        """Take what was typed, or say what is wrong with it and show the figure again."""
        limit = self._limits.figure(item.data(_NAME))
        if item.text() == written_figure(limit.value, limit.unit, self._units):
            return
        try:
            value = read_figure(item.text(), limit, self._units)
        except EnclosureError as error:
            self._fill()
            self.refused.setText(str(error))
            self.refused.show()
            return
        self.refused.hide()
        self.figure.emit(limit.name, value)

    def _tell(self, *_: int) -> None:
        """Say more about the figure that is chosen."""
        limit = self._chosen()
        self.back.setEnabled(limit is not None and limit.name in self._own)
        usual = self.tr("Choose a figure to read more; click it twice to type another.")
        self.told.setText(say(limit.note) if limit and limit.note else usual)

    def _chosen(self) -> Limit | None:
        item = self.table.item(self.table.currentRow(), _WHAT)
        return self._limits.figure(item.data(_NAME)) if item else None

    def _give_back(self) -> None:
        limit = self._chosen()
        if limit:
            self.figure.emit(limit.name, None)
