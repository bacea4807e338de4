"""The form in which a product of the office is added or changed, in the place of the lists."""

from collections.abc import Sequence

from PySide6.QtCore import QEvent, QSize, Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import (
    QCheckBox,
    QComboBox,
    QFormLayout,
    QGridLayout,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QPushButton,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from enclosure_app.errors import ListedError
from enclosure_app.language import later, say
from enclosure_app.model.drawing import Units
from enclosure_app.model.edits.products import new_key
from enclosure_app.model.product import Bond, Control, Kind, Product
from enclosure_app.window.products.product_fields import Fields, fields_of, product_made
from enclosure_app.window.products.product_words import units_of
from enclosure_app.window.rows.marks import SWATCH, control_icon
from enclosure_app.window.words.labels import control_tip, control_word, word

_DRAWN = {
    "line": later("as a line"),
    "area": later("as an outline"),
    "either": later("either way"),
}


class ProductForm(QWidget):
    """The fields of one product. `made`: this is the product now; `left`: nothing is to change."""

    made = Signal(object)
    left = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._before: Product | None = None
        self._taken: Sequence[str] = ()
        self._units = Units.MM
        self.title = QLabel(self)
        self.title.setObjectName("panel-title")
        self.title.setWordWrap(True)
        self.name, self.source = QLineEdit(self), QLineEdit(self)
        self.controls = {control: self._tick(control) for control in Control}
        self.bond = self._choice([(each, word(each.value)) for each in Bond])
        self.kind = self._choice([(None, self.tr("as usual for it")), *_kinds()])
        self.drawn = self._choice([(key, say(text)) for key, text in _DRAWN.items()])
        self.min_lap, self.thickness = QLineEdit(self), QLineEdit(self)
        self.vapour, self.conductivity = QLineEdit(self), QLineEdit(self)
        self.confirmed = QCheckBox(self.tr("I have read these figures there"), self)
        self.wrong = QLabel(self)
        self.wrong.setWordWrap(True)
        self.area = QScrollArea(self)
        self.area.setFocusPolicy(Qt.FocusPolicy.NoFocus)  # it follows what the keys reach
        self.keep = QPushButton(self.tr("Keep it"), self)
        self.keep.setObjectName("main")
        self.keep.clicked.connect(self._keep)
        self.leave = QPushButton(self.tr("Leave it"), self)
        self.leave.clicked.connect(self.left)
        self._lay_out()

    def begin(self, product: Product | None, taken: Sequence[str], *, imperial: bool) -> None:
        """Show a product to be changed, or empty fields for a new one.

        Args:
            product: The product, None for a new one.
            taken: The keys of the products that there are.
            imperial: Whether bare numbers are inches.
        """
        self._before, self._taken, self._units = product, taken, units_of(imperial=imperial)
        self.title.setText(
            say("Change {product}", product=say(product.name))
            if product
            else self.tr("A product of your own")
        )
        self._fill(fields_of(product, self._units) if product else Fields())
        self.wrong.hide()
        self._mark()
        unit = self.tr("inches") if imperial else "mm"
        self.thickness.setPlaceholderText(unit)
        self.min_lap.setPlaceholderText(self.tr("{}, or as the rule book says").format(unit))
        self.area.ensureVisible(0, 0)
        self.name.setFocus()
        self.name.selectAll()

    @property
    def fields(self) -> Fields:
        """What stands in the fields."""
        return Fields(
            name=self.name.text(),
            controls=frozenset(c for c, tick in self.controls.items() if tick.isChecked()),
            bond=Bond(self.bond.currentData()),
            kind=self.kind.currentData() and Kind(self.kind.currentData()),
            drawn=self.drawn.currentData(),
            min_lap=self.min_lap.text(),
            thickness=self.thickness.text(),
            vapour=self.vapour.text(),
            conductivity=self.conductivity.text(),
            source=self.source.text(),
            confirmed=self.confirmed.isChecked(),
        )

    def _fill(self, fields: Fields) -> None:
        self.name.setText(fields.name)
        for control, tick in self.controls.items():
            tick.setChecked(control in fields.controls)
        for choice, value in (
            (self.bond, fields.bond),
            (self.kind, fields.kind),
            (self.drawn, fields.drawn),
        ):
            choice.setCurrentIndex(max(choice.findData(value), 0))
        self.min_lap.setText(fields.min_lap)
        self.thickness.setText(fields.thickness)
        self.vapour.setText(fields.vapour)
        self.conductivity.setText(fields.conductivity)
        self.source.setText(fields.source)
        self.confirmed.setChecked(fields.confirmed)

    def _keep(self) -> None:
        fields, before = self.fields, self._before
        key = before.key if before else new_key(fields.name, self._taken)
        try:
            product = product_made(fields, key, self._units, before)
        except ListedError as error:
            self.wrong.setText("\n".join(error.sentences))
            self.wrong.show()
            return
        self.made.emit(product)

    # ---- how it is put together ----------------------------------------------------------------

    def _tick(self, control: Control) -> QPushButton:
        tick = QPushButton(control_word(control), self)
        tick.setCheckable(True)
        tick.setToolTip(control_tip(control))
        tick.setIconSize(QSize(SWATCH, SWATCH))
        return tick

    def _choice(self, values: Sequence[tuple[object, str]]) -> QComboBox:
        choice = QComboBox(self)
        for value, text in values:
            choice.addItem(text, value)
        return choice

    def _lay_out(self) -> None:
        page = QWidget(self)
        page.setObjectName("lines")
        page.setLayout(self._rows())
        self.area.setWidget(page)
        self.area.setWidgetResizable(True)
        self.area.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.title.setContentsMargins(14, 6, 14, 2)
        self.wrong.setContentsMargins(14, 4, 14, 0)
        buttons = QHBoxLayout()
        buttons.setContentsMargins(14, 4, 14, 10)
        buttons.addWidget(self.keep, 1)
        buttons.addWidget(self.leave)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self.title)
        column.addWidget(self.area, 1)
        column.addWidget(self.wrong)
        column.addLayout(buttons)

    def _rows(self) -> QFormLayout:
        ticks = QGridLayout()
        ticks.setSpacing(4)
        for place, tick in enumerate(self.controls.values()):
            ticks.addWidget(tick, place // 2, place % 2)
        self.vapour.setPlaceholderText("2 perm, 57 ng, sd 0.2 m")
        self.conductivity.setPlaceholderText("W/(m·K)")
        self.source.setPlaceholderText(self.tr("the maker's sheet, a test, a standard"))
        rows = QFormLayout()
        rows.setContentsMargins(14, 2, 14, 8)
        rows.setRowWrapPolicy(QFormLayout.RowWrapPolicy.WrapAllRows)
        rows.setVerticalSpacing(3)
        rows.addRow(self.tr("Name"), self.name)
        rows.addRow(self.tr("What it keeps apart"), ticks)
        rows.addRow(self.tr("How it is held"), self.bond)
        rows.addRow(self.tr("Family"), self.kind)
        rows.addRow(self.tr("How it is drawn"), self.drawn)
        rows.addRow(self.tr("Thickness"), self.thickness)
        rows.addRow(self.tr("Least lap"), self.min_lap)
        rows.addRow(self.tr("How open to vapour"), self.vapour)
        rows.addRow(self.tr("Conductivity"), self.conductivity)
        rows.addRow(self.tr("Where the figures are from"), self.source)
        rows.addRow(self.confirmed)
        return rows

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Keep it by Enter, leave it by Escape."""
        if event.key() == Qt.Key.Key_Escape:
            self.left.emit()
        elif event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self._keep()
        else:
            super().keyPressEvent(event)

    def changeEvent(self, event: QEvent) -> None:
        """Draw the marks of the controls anew by day and by night."""
        if event.type() is QEvent.Type.PaletteChange:
            self._mark()
        super().changeEvent(event)

    def _mark(self) -> None:
        for control, tick in self.controls.items():
            tick.setIcon(control_icon(control, self.palette()))


def _kinds() -> list[tuple[object, str]]:
    named = [(kind, word(kind.value.replace("-", " "))) for kind in Kind]
    return [*sorted(named, key=lambda pair: pair[1])]
