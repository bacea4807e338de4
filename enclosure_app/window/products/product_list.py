"""The products that lines can be made of: searched, chosen, and the office's own ones kept."""

from collections.abc import Sequence

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import (
    QListView,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from enclosure_app.language import say
from enclosure_app.model.product import Product
from enclosure_app.model.project import Project
from enclosure_app.model.section import Section
from enclosure_app.window.products.product_delegate import ProductDelegate
from enclosure_app.window.products.product_words import figures_told, source_words
from enclosure_app.window.products.products_model import PRODUCT, ProductsModel, is_own
from enclosure_app.window.rows.searched import made_list, made_search
from enclosure_app.window.surround.elided_label import ElidedLabel
from enclosure_app.window.surround.flow_layout import FlowLayout


class ProductList(QWidget):
    """The searchable list of products.

    `chosen`: draw with this product; `given`: what is picked is made of it; `form`: open the form
    for this product, or None for a new one; `removed`: take this own product out.
    """

    chosen = Signal(str)
    given = Signal()
    form = Signal(object)
    removed = Signal(str)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.model = ProductsModel(self)
        hint = self.tr("Find a product: sheet, tape, water…")
        self.search = made_search(self, hint, self.tr("Find a product"))
        self.search.textChanged.connect(self._seek)
        self.list = self._made_list()
        self.told = ElidedLabel(self)
        self.told.setObjectName("small")
        self.add = self._link(self.tr("Add your own"), self.tr("Add a product of the office"))
        self.change = self._link(self.tr("Change"), self.tr("Change the product that is chosen"))
        self.remove = self._link(self.tr("Remove"), "")
        self.add.clicked.connect(lambda: self.form.emit(None))
        self.change.clicked.connect(lambda: self.form.emit(self.product))
        self.remove.clicked.connect(self._remove)
        self.give = QPushButton(self.tr("Give it to what is picked"), self)
        self.give.clicked.connect(self.given)
        self.give.hide()
        self._lay_out()

    @property
    def product(self) -> Product | None:
        """The product that is chosen."""
        index = self.list.currentIndex()
        found = index.data(PRODUCT) if index.isValid() else None
        return found if isinstance(found, Product) else None

    def show_products(
        self, project: Project, section: Section | None, lately: Sequence[str]
    ) -> None:
        """Show the products of a section; the one that was chosen stays chosen."""
        kept = self.product
        if section:
            used = frozenset(piece.product for piece in section.pieces)
            self.model.imperial = project.units.imperial
            self.model.show(section.products, used, lately)
        self.choose(kept.key if kept else self._first())
        self._show_chosen()

    def choose(self, key: str) -> None:
        """Choose the product with this key."""
        row = self.model.place_of(key)
        if row >= 0:
            self.list.setCurrentIndex(self.model.index(row))

    def show_picked(self, count: int) -> None:
        """Say how many pieces and lines a product would be given to."""
        self.give.setVisible(count > 0)
        text = self.tr("Give it to what is picked")
        self.give.setText(f"{text} ({count})" if count else text)

    def _first(self) -> str:
        """Return a product to begin with: the first one that controls something."""
        return next((p.key for p in self.model.rows if p.controls), "")

    def _seek(self, text: str) -> None:
        kept = self.product
        self.model.seek(text)
        self.choose(kept.key if kept else self._first())
        if self.model.rows and not self.list.currentIndex().isValid():
            self.list.setCurrentIndex(self.model.index(0))
        self._show_chosen()

    def _choose(self) -> None:
        self._show_chosen()
        if self.product:
            self.chosen.emit(self.product.key)

    def _show_chosen(self) -> None:
        product = self.product
        if product is None:
            told = self.tr("No product has all these words: take one away.")
        else:
            figures = figures_told(product, imperial=self.model.imperial)
            told = " · ".join([*figures, source_words(product)])
        self.told.tell(told)
        own = product is not None and is_own(product)
        self.change.setEnabled(product is not None)
        self.remove.setEnabled(own)
        self.remove.setToolTip(
            self.tr("Remove this product of the office")
            if own
            else self.tr("Only products of the office's own can be removed")
        )

    def _remove(self) -> None:
        if self.product:
            self.removed.emit(self.product.key)

    def _link(self, text: str, tip: str) -> QPushButton:
        button = QPushButton(text, self)
        button.setObjectName("link")
        button.setToolTip(tip)
        return button

    def _made_list(self) -> QListView:
        view = made_list(self, self.model, ProductDelegate(), say("Products"))
        view.selectionModel().currentChanged.connect(self._choose)
        view.doubleClicked.connect(self.given)
        return view

    def _lay_out(self) -> None:
        own = FlowLayout(14)
        for button in (self.add, self.change, self.remove):
            own.addWidget(button)
        column = QVBoxLayout(self)
        column.setContentsMargins(10, 8, 10, 10)
        column.setSpacing(5)
        column.addWidget(self.search)
        column.addWidget(self.list, 1)
        column.addWidget(self.told)
        column.addLayout(own)
        column.addWidget(self.give)
        self.list.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
