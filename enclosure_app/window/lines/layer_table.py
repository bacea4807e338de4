"""The drawing's layers: what each is said to be, changed in place, one or several at once."""

from collections import defaultdict
from collections.abc import Collection, Sequence

from PySide6.QtCore import QEvent, QItemSelectionModel, QModelIndex, QObject, QPoint, Qt, Signal
from PySide6.QtGui import QKeyEvent, QResizeEvent
from PySide6.QtWidgets import (
    QAbstractItemView,
    QHBoxLayout,
    QLabel,
    QListView,
    QPushButton,
    QSizePolicy,
    QVBoxLayout,
    QWidget,
)

from enclosure_app.language import say
from enclosure_app.model.product import Product
from enclosure_app.model.project import Project
from enclosure_app.window.canvas.ink.layer_preview import Lit
from enclosure_app.window.lines.layer_delegate import LayerDelegate
from enclosure_app.window.lines.layer_menu import LayerMenu
from enclosure_app.window.lines.layer_words import chosen_words, guessed_key
from enclosure_app.window.lines.layers_model import LayersModel
from enclosure_app.window.lines.layers_told import LayerTold
from enclosure_app.window.rows.marks import controls_of
from enclosure_app.window.rows.searched import made_list, made_search

_FEW = 8  # layers that are seen at once, and need no search
_ROWS = 3  # that are seen on the lowest screen
_LOW = 220  # dots of height below which rows are worth more than a sentence of help


class LayerTable(QWidget):
    """The layers of the project, and what to make of those that are chosen.

    `lit`: light layers up, each group as what it is or would be (a tuple of `Lit`). `said`: make
    these layers (names) this (a product's key, a role, or "" for what each name suggests).
    `picked`: pick all that is on these layers. What was drawn here on no layer has rows too, by
    product: `given`: make all that was drawn of these products (keys) this one; `sought`: pick it.
    """

    lit = Signal(object)
    said = Signal(object, str)
    picked = Signal(object)
    given = Signal(object, str)
    sought = Signal(object)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.model = LayersModel(self)
        self._product: Product | None = None
        self._picked: list[str] = []
        self.search = made_search(self, self.tr("Find a layer"), self.tr("Find a layer"))
        self.search.textChanged.connect(self._seek)
        self.list = self._made_list()
        self.why = QLabel(self)
        self.why.setObjectName("small")
        self.why.setWordWrap(True)
        self.make = QPushButton(self)
        self.make.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Fixed)
        self.make.clicked.connect(self._make)
        self.make.installEventFilter(self)
        self.menu = LayerMenu(self)
        self.menu.aboutToShow.connect(lambda: self.menu.fill(self.told, self.model.products))
        self.menu.aboutToHide.connect(self._light)
        self.menu.taken.connect(lambda meant: self.said.emit(self.chosen, meant))
        self.menu.pointed.connect(self._preview)
        self.menu.picked.connect(self._pick)
        self.other = QPushButton(self.tr("Other"), self)
        self.other.setToolTip(self.tr("A frame, break lines, notes, linework, or ignored"))
        self.other.setMenu(self.menu)
        self._lay_out()
        self._show_chosen()

    # ---- what is shown -------------------------------------------------------------------------

    def show_project(self, project: Project) -> None:
        """Show the layers of a project; those that were chosen stay chosen."""
        before = self.told
        self.model.show(project)
        self._choose({told.row for told in before})
        self.search.setVisible(self.model.total > _FEW)
        rows = min(self.model.total, _ROWS)
        high = rows * max(self.list.sizeHintForRow(0), 0)
        self.list.setMinimumHeight(high + 2 * self.list.frameWidth())
        if self.told != before:
            self._light()

    def offer(self, product: Product | None, *, preview: bool = True) -> None:
        """Offer to make the chosen layers of this product, and show them as if they were."""
        self._product = product
        self._show_chosen()
        if preview and product and self.told:
            controls, drawn = tuple(controls_of(product)), frozenset(self.chosen_drawn)
            self.lit.emit((Lit(frozenset(self.chosen), controls, drawn=drawn),))

    def show_picked(self, layers: Collection[str]) -> None:
        """Say which layers that is on what is picked in the drawing, and bring the first in view."""
        self._picked = sorted(layers, key=str.casefold)
        names = [told.row[1] for told in self.model.rows]
        if self._picked and not self.chosen and self._picked[0] in names:
            self.list.scrollTo(self.model.index(names.index(self._picked[0])))
        self._show_chosen()

    @property
    def told(self) -> list[LayerTold]:
        """The layers that are chosen."""
        rows = {index.row() for index in self.list.selectionModel().selectedIndexes()}
        return [self.model.rows[row] for row in sorted(rows) if row < len(self.model.rows)]

    @property
    def chosen(self) -> list[str]:
        """The names of the layers that are chosen."""
        return [told.name for told in self.told if not told.drawn]

    @property
    def chosen_drawn(self) -> list[str]:
        """The products that are chosen of what was drawn here."""
        return [told.drawn for told in self.told if told.drawn]

    def _choose(self, rows: set[tuple[str, str]]) -> None:
        if rows == {told.row for told in self.told}:
            return
        selection = self.list.selectionModel()
        for row, told in enumerate(self.model.rows):
            if told.row in rows:
                select = QItemSelectionModel.SelectionFlag.Select
                selection.select(self.model.index(row), select)

    def _seek(self, text: str) -> None:
        chosen = {told.row for told in self.told}
        self.model.seek(text)
        self._choose(chosen)
        self._light()

    def _light(self) -> None:
        """Light the chosen layers up as what they are."""
        self._light_as([(told, told.meant) for told in self.told])
        self._show_chosen()

    def _light_as(self, meant: Sequence[tuple[LayerTold, str]]) -> None:
        """Light rows up as what each is to be shown as."""
        groups: dict[str, list[LayerTold]] = defaultdict(list)
        for told, each in meant:
            groups[each].append(told)
        self.lit.emit(tuple(self._as(each, rows) for each, rows in groups.items()))

    def _as(self, meant: str, rows: Sequence[LayerTold]) -> Lit:
        names = frozenset(told.name for told in rows if not told.drawn)
        drawn = frozenset(told.drawn for told in rows if told.drawn)
        product = self.model.products.get(meant)
        if product:
            return Lit(names, tuple(controls_of(product)), drawn=drawn)
        return Lit(names, role=meant, drawn=drawn)

    def _point(self, index: QModelIndex) -> None:
        """Light up what was drawn here of a product while the mouse is over its row."""
        told = self.model.rows[index.row()]
        if told.drawn and not self.told:
            self._light_as([(told, told.meant)])

    def _show_chosen(self) -> None:
        told, product = self.told, self._product
        self.why.setText(chosen_words(told, self._picked, self.model.products))
        self._show_why()
        self.make.setVisible(bool(told))
        self.other.setVisible(bool(told))
        if product:
            text = say("Make it {product}", product=say(product.name))
            if len(told) > 1 and self.chosen_drawn:
                text = say("Make all of them {product}", product=say(product.name))
            elif len(told) > 1:
                text = say(
                    "Make {count} layers {product}", count=len(told), product=say(product.name)
                )
            metrics, room = self.make.fontMetrics(), max(self.make.width() - 26, 80)
            self.make.setText(metrics.elidedText(text, Qt.TextElideMode.ElideRight, room))
            self.make.setToolTip(text)
            self.make.setAccessibleName(text)
        self.make.setEnabled(product is not None)

    # ---- what is done --------------------------------------------------------------------------

    def _make(self) -> None:
        drawn = self.chosen_drawn
        if self._product and self.chosen:
            self.said.emit(self.chosen, self._product.key)
        if self._product and drawn:
            key = self._product.key
            self.given.emit(drawn, key)
            self._choose({told.row for told in self.told} | {(key, "")})

    def _pick(self) -> None:
        """Pick all that is on the layers, or was drawn of the products, that are chosen."""
        if self.chosen_drawn:
            self.sought.emit(self.chosen_drawn)
        else:
            self.picked.emit(self.chosen)

    def _preview(self, meant: str) -> None:
        """Show the chosen layers as what the menu would make of them."""
        self._light_as(
            [(told, meant or guessed_key(told.guess) or told.meant) for told in self.told]
        )

    def _open_menu(self, at: QPoint) -> None:
        if self.told:
            self.menu.popup(at)

    def _open_menu_at_row(self) -> None:
        box = self.list.visualRect(self.list.currentIndex())
        self._open_menu(self.list.viewport().mapToGlobal(box.bottomLeft()))

    # ---- how it is put together ----------------------------------------------------------------

    def _made_list(self) -> QListView:
        view = made_list(self, self.model, LayerDelegate(), self.tr("Layers of the drawing"))
        view.setSelectionMode(QAbstractItemView.SelectionMode.ExtendedSelection)
        view.setContextMenuPolicy(Qt.ContextMenuPolicy.CustomContextMenu)
        view.customContextMenuRequested.connect(
            lambda at: self._open_menu(view.viewport().mapToGlobal(at))
        )
        view.selectionModel().selectionChanged.connect(self._light)
        view.setMouseTracking(True)
        view.entered.connect(self._point)
        view.viewport().installEventFilter(self)
        view.doubleClicked.connect(lambda _: self._open_menu_at_row())
        view.installEventFilter(self)
        return view

    def _lay_out(self) -> None:
        buttons = QHBoxLayout()
        buttons.setSpacing(6)
        buttons.addWidget(self.make, 1)
        buttons.addWidget(self.other)
        column = QVBoxLayout(self)
        column.setContentsMargins(10, 2, 10, 8)
        column.setSpacing(5)
        column.addWidget(self.search)
        column.addWidget(self.list, 1)
        column.addWidget(self.why)
        column.addLayout(buttons)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Give the rows the room of the help where there is little."""
        super().resizeEvent(event)
        self._show_why()

    def _show_why(self) -> None:
        says_more = bool(self.told or self._picked)
        self.why.setVisible(says_more or self.height() >= _LOW)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Open the menu by Enter or F2 on the list; fit the button's words to its width."""
        if watched is self.make and event.type() is QEvent.Type.Resize:
            self._show_chosen()
        if watched is self.list.viewport() and event.type() is QEvent.Type.Leave and not self.told:
            self._light()
        if watched is self.list and isinstance(event, QKeyEvent):
            keys = (Qt.Key.Key_Return, Qt.Key.Key_Enter, Qt.Key.Key_F2)
            if event.type() is QEvent.Type.KeyPress and event.key() in keys:
                self._open_menu_at_row()
                return True
        return super().eventFilter(watched, event)
