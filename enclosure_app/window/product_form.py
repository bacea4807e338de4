"""The form in which a product of the office is added or changed, in the place of the lists."""

from collections.abc import Sequence

from PySide6.QtCore import Qt, Signal
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
from enclosure_app.window.product_fields import Fields, fields_of, product_made
from enclosure_app.window.product_words import units_of
from enclosure_app.window.words import control_tip, control_word, word

_DRAWN = {
    "line": later("as a line"),
    "area": later("as an outline"),
    "either": later("either way"),
}


class ProductForm(QScrollArea):
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
        self.wrong.setObjectName("wrong")
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
        unit = self.tr("inches") if imperial else "mm"
        self.thickness.setPlaceholderText(unit)
        self.min_lap.setPlaceholderText(self.tr("{}, or as the rule book says").format(unit))
        self.ensureVisible(0, 0)
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
            self.ensureWidgetVisible(self.wrong)
            return
        self.made.emit(product)

    # ---- how it is put together ----------------------------------------------------------------

    def _tick(self, control: Control) -> QCheckBox:
        tick = QCheckBox(control_word(control), self)
        tick.setToolTip(control_tip(control))
        return tick

    def _choice(self, values: Sequence[tuple[object, str]]) -> QComboBox:
        choice = QComboBox(self)
        for value, text in values:
            choice.addItem(text, value)
        return choice

    def _lay_out(self) -> None:
        page = QWidget(self)
        page.setObjectName("lines")
        column = QVBoxLayout(page)
        column.setContentsMargins(14, 6, 14, 12)
        column.addWidget(self.title)
        column.addLayout(self._rows())
        column.addWidget(self.wrong)
        buttons = QHBoxLayout()
        buttons.addWidget(self.keep, 1)
        buttons.addWidget(self.leave)
        column.addLayout(buttons)
        column.addStretch(1)
        self.setWidget(page)
        self.setWidgetResizable(True)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)

    def _rows(self) -> QFormLayout:
        ticks = QGridLayout()
        for place, tick in enumerate(self.controls.values()):
            ticks.addWidget(tick, place // 2, place % 2)
        self.vapour.setPlaceholderText("2 perm, 57 ng, sd 0.2 m")
        self.conductivity.setPlaceholderText("W/(m·K)")
        self.source.setPlaceholderText(self.tr("the maker's sheet, a test, a standard"))
        rows = QFormLayout()
        rows.setRowWrapPolicy(QFormLayout.RowWrapPolicy.WrapAllRows)
        rows.setVerticalSpacing(4)
        rows.addRow(self.tr("Name"), self.name)
        rows.addRow(self.tr("Keeps apart"), ticks)
        rows.addRow(self.tr("How it is held"), self.bond)
        rows.addRow(self.tr("Family"), self.kind)
        rows.addRow(self.tr("How it is drawn"), self.drawn)
        rows.addRow(self.tr("Least lap"), self.min_lap)
        rows.addRow(self.tr("Thickness"), self.thickness)
        rows.addRow(self.tr("How open to vapour"), self.vapour)
        rows.addRow(self.tr("Conductivity"), self.conductivity)
        rows.addRow(self.tr("Where the figures are from"), self.source)
        rows.addRow(self.confirmed)
        return rows


def _kinds() -> list[tuple[object, str]]:
    named = [(kind, word(kind.value.replace("-", " "))) for kind in Kind]
    return [*sorted(named, key=lambda pair: pair[1])]
