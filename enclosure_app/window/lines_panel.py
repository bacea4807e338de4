"""What the lines are: the layers of the drawing, and the products that lines can be made of."""

from PySide6.QtCore import QModelIndex, QPersistentModelIndex, QRect, QSize, Qt, Signal
from PySide6.QtGui import QColor, QPainter, QPalette, QPen
from PySide6.QtWidgets import (
    QAbstractItemView,
    QHeaderView,
    QLabel,
    QLineEdit,
    QListView,
    QPushButton,
    QSplitter,
    QStyle,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QTreeView,
    QVBoxLayout,
    QWidget,
)

from enclosure_app.language import say
from enclosure_app.model.product import Control, Product
from enclosure_app.model.section import Section
from enclosure_app.window.canvas.look import screen_theme
from enclosure_app.window.layers_model import LayersModel
from enclosure_app.window.products_model import PRODUCT, ProductsModel


class LinesPanel(QWidget):
    """The left-hand panel.

    `lit`: light these layers up; `picked`: pick everything on this layer; `chosen`: draw with
    this product; `given`: what is picked is made of the product that is chosen.
    """

    lit = Signal(frozenset)
    picked = Signal(str)
    chosen = Signal(str)
    given = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("lines")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self.layers = LayersModel(self)
        self.products = ProductsModel(self)
        self.layer_list = self._made_layers()
        self.search = QLineEdit(self)
        self.search.setPlaceholderText(self.tr("Find a product: sheet, tape, water…"))
        self.search.setClearButtonEnabled(True)
        self.search.setAccessibleName(self.tr("Find a product"))
        self.search.textChanged.connect(self._seek)
        self.product_list = self._made_products()
        self.no_layers = QLabel(
            self.tr("Nothing is drawn yet: choose a product below, then Sheet or Board."), self
        )
        self.no_layers.setObjectName("quiet")
        self.no_layers.setWordWrap(True)
        self.no_layers.setMargin(14)
        self.give = QPushButton(self.tr("Give it to what is picked"), self)
        self.give.clicked.connect(self.given)
        self.give.setEnabled(False)
        self.chosen_words = QLabel(self)
        self.chosen_words.setObjectName("small")
        self.chosen_words.setWordWrap(True)
        self._lay_out()

    def show_section(self, section: Section | None) -> None:
        """Show the layers and products of a section."""
        kept = self.product
        self.layers.show(section)
        self.no_layers.setVisible(not self.layers.rows)
        self.layer_list.setVisible(bool(self.layers.rows))
        if section:
            used = frozenset(piece.product for piece in section.pieces)
            self.products.show(section.products, used)
        self.choose(kept.key if kept else self._first())

    def choose(self, key: str) -> None:
        """Choose the product with this key."""
        row = self.products.place_of(key)
        if row >= 0:
            self.product_list.setCurrentIndex(self.products.index(row))

    @property
    def product(self) -> Product | None:
        """The product that is chosen."""
        index = self.product_list.currentIndex()
        found = index.data(PRODUCT) if index.isValid() else None
        return found if isinstance(found, Product) else None

    def show_picked(self, count: int) -> None:
        """Say how many pieces and lines a product would be given to."""
        self.give.setEnabled(count > 0)
        text = self.tr("Give it to what is picked")
        self.give.setText(f"{text} ({count})" if count else text)

    def _first(self) -> str:
        """Return a product to begin with: the first one that controls something."""
        return next((p.key for p in self.products.rows if p.controls), "")

    def _made_layers(self) -> QTreeView:
        view = QTreeView(self)
        view.setModel(self.layers)
        view.setRootIsDecorated(False)
        view.setUniformRowHeights(True)
        view.setSelectionMode(QAbstractItemView.SelectionMode.ExtendedSelection)
        view.setAccessibleName(self.tr("Layers of the drawing"))
        view.setToolTip(self.tr("A click lights a layer up; a double click picks all on it"))
        head = view.header()
        head.setStretchLastSection(False)
        head.setSectionResizeMode(0, QHeaderView.ResizeMode.Interactive)
        head.setSectionResizeMode(1, QHeaderView.ResizeMode.Stretch)
        head.setSectionResizeMode(2, QHeaderView.ResizeMode.ResizeToContents)
        head.resizeSection(0, 120)
        view.selectionModel().selectionChanged.connect(self._light)
        view.doubleClicked.connect(self._pick)
        return view

    def _made_products(self) -> QListView:
        view = QListView(self)
        view.setModel(self.products)
        view.setItemDelegate(_ProductDelegate(view))
        view.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        view.setTextElideMode(Qt.TextElideMode.ElideRight)
        view.setResizeMode(QListView.ResizeMode.Adjust)
        view.setAccessibleName(self.tr("Products"))
        view.selectionModel().currentChanged.connect(self._choose)
        view.doubleClicked.connect(self.given)
        return view

    def _lay_out(self) -> None:
        split = QSplitter(Qt.Orientation.Vertical, self)
        upper = QWidget(self)
        above = QVBoxLayout(upper)
        above.setContentsMargins(0, 0, 0, 0)
        above.addWidget(self.layer_list, 1)
        above.addWidget(self.no_layers)
        split.addWidget(upper)
        lower = QWidget(self)
        column = QVBoxLayout(lower)
        column.setContentsMargins(10, 8, 10, 10)
        column.addWidget(self.search)
        column.addWidget(self.product_list, 1)
        column.addWidget(self.chosen_words)
        column.addWidget(self.give)
        split.addWidget(lower)
        split.setChildrenCollapsible(False)
        split.setSizes([220, 330])
        split.setStretchFactor(0, 2)
        split.setStretchFactor(1, 3)
        outer = QVBoxLayout(self)
        outer.setContentsMargins(0, 0, 0, 0)
        outer.addWidget(split)

    def _seek(self, text: str) -> None:
        kept = self.product
        self.products.seek(text)
        self.choose(kept.key if kept else self._first())

    def _light(self) -> None:
        rows = {index.row() for index in self.layer_list.selectionModel().selectedIndexes()}
        self.lit.emit(frozenset(self.layers.rows[row].name for row in rows))

    def _pick(self, index: QModelIndex) -> None:
        self.picked.emit(self.layers.rows[index.row()].name)

    def _choose(self) -> None:
        product = self.product
        if product:
            self.chosen_words.setText(self.tr("Drawn with: {}").format(say(product.name)))
            self.chosen.emit(product.key)


class _ProductDelegate(QStyledItemDelegate):
    """A product with a short line for each layer that it is part of."""

    def paint(
        self,
        painter: QPainter,
        option: QStyleOptionViewItem,
        index: QModelIndex | QPersistentModelIndex,
    ) -> None:
        """Paint the row, and the lines of its controls at the right."""
        product: Product = index.data(PRODUCT)
        controls = [control for control in Control if control in product.controls]
        rect: QRect = option.rect
        palette: QPalette = option.palette
        state: QStyle.StateFlag = option.state
        if state & QStyle.StateFlag.State_Selected:
            painter.fillRect(rect, palette.color(QPalette.ColorRole.Highlight))
        room = rect.adjusted(8, 0, -12 - 9 * len(controls), 0)
        name = option.fontMetrics.elidedText(
            say(product.name), Qt.TextElideMode.ElideRight, room.width()
        )
        painter.setPen(palette.color(QPalette.ColorRole.Text))
        painter.drawText(room, Qt.AlignmentFlag.AlignVCenter, name)
        dark = palette.color(QPalette.ColorRole.Base).lightness() < 128
        theme = screen_theme(dark=dark)
        for place, control in enumerate(reversed(controls)):
            x = rect.right() - 8 - place * 9
            painter.setPen(QPen(QColor(theme.control(control).colour), 4))
            painter.drawLine(x, rect.top() + 7, x, rect.bottom() - 7)

    def sizeHint(
        self, option: QStyleOptionViewItem, index: QModelIndex | QPersistentModelIndex
    ) -> QSize:
        """Return the room for a line of text."""
        size = super().sizeHint(option, index)
        widget = option.widget
        width = widget.viewport().width() if isinstance(widget, QListView) else size.width()
        return QSize(width, max(size.height(), 26))
