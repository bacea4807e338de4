"""What the lines are: the layers of the drawing, and the products that lines can be made of."""

from collections.abc import Collection

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QLabel, QLineEdit, QSplitter, QStackedWidget, QVBoxLayout, QWidget

from enclosure_app.model.product import Product
from enclosure_app.model.project import Project
from enclosure_app.model.section import Section
from enclosure_app.window.lines.layer_table import LayerTable
from enclosure_app.window.products.product_form import ProductForm
from enclosure_app.window.products.product_list import ProductList

_MOST_LATELY = 6  # products that were given lately and stand first


class LinesPanel(QWidget):
    """The left-hand panel: layers above, products under them, the form of a product in their place.

    `lit`: light layers up (a tuple of `Lit`); `said`: make these layers this (see `LayerTable`);
    `picked`: pick everything on these layers; `changed`: make all that was drawn of these products
    this one; `sought`: pick it; `chosen`: draw with this product; `given`: what is
    picked is made of the product that is chosen; `made`: this product of the office is to be in
    the list; `removed`: the own product of this key is not.
    """

    lit = Signal(object)
    said = Signal(object, str)
    picked = Signal(object)
    changed = Signal(object, str)
    sought = Signal(object)
    chosen = Signal(str)
    given = Signal()
    made = Signal(object)
    removed = Signal(str)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("lines")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self.table = LayerTable(self)
        self.list = ProductList(self)
        self.form = ProductForm(self)
        self.lately: list[str] = []
        self._shown: tuple[Project, Section | None] | None = None
        self.no_layers = QLabel(
            self.tr("Nothing is drawn yet: choose a product below, then Sheet or Board."), self
        )
        self.no_layers.setObjectName("quiet")
        self.no_layers.setWordWrap(True)
        self.no_layers.setMargin(14)
        self.pages = QStackedWidget(self)
        self._lay_out()
        self._connect()

    @property
    def search(self) -> QLineEdit:
        """The line in which products are searched."""
        return self.list.search

    @property
    def product(self) -> Product | None:
        """The product that is chosen."""
        return self.list.product

    def show_section(self, section: Section | None, project: Project | None = None) -> None:
        """Show the layers of a project, and the products of its section in view."""
        if project is None:
            return
        self._shown = project, section
        self.table.show_project(project)
        self.list.show_products(project, section, self.lately)
        layered = self.table.model.total > 0
        self.no_layers.setVisible(not layered)
        self.table.setVisible(layered)

    def choose(self, key: str) -> None:
        """Choose the product with this key."""
        self.list.choose(key)

    def show_picked(self, count: int, layers: Collection[str] = ()) -> None:
        """Say how many pieces and lines a product would be given to, and which layers they are on."""
        self.list.show_picked(count)
        self.table.show_picked(layers)

    def was_given(self, key: str) -> None:
        """Put a product first from now on, for it was given just now."""
        self.lately = [key, *(other for other in self.lately if other != key)][:_MOST_LATELY]
        if self._shown:
            self.list.show_products(*self._shown, self.lately)

    def show_lists(self) -> None:
        """Show the lists in the place of the form."""
        self.pages.setCurrentIndex(0)
        self.list.list.setFocus()

    def _begin_form(self, product: Product | None) -> None:
        model = self.list.model
        taken = [each.key for each in model.every]
        self.form.begin(product, taken, imperial=model.imperial)
        self.pages.setCurrentWidget(self.form)
        self.form.name.setFocus()

    def _offer(self, key: str) -> None:
        self.table.offer(self.product, preview=self.list.list.hasFocus())
        self.chosen.emit(key)

    def _made(self, product: Product) -> None:
        self.show_lists()
        self.was_given(product.key)
        self.made.emit(product)
        self.choose(product.key)

    def _connect(self) -> None:
        self.table.lit.connect(self.lit)
        self.table.said.connect(self.said)
        self.table.picked.connect(self.picked)
        self.table.given.connect(self.changed)
        self.table.sought.connect(self.sought)
        self.list.chosen.connect(self._offer)
        self.list.given.connect(self.given)
        self.list.removed.connect(self.removed)
        self.list.form.connect(self._begin_form)
        self.form.made.connect(self._made)
        self.form.left.connect(self.show_lists)

    def _lay_out(self) -> None:
        split = QSplitter(Qt.Orientation.Vertical, self)
        upper = QWidget(self)
        above = QVBoxLayout(upper)
        above.setContentsMargins(0, 0, 0, 0)
        above.addWidget(self.table, 1)
        above.addWidget(self.no_layers)
        split.addWidget(upper)
        split.addWidget(self.list)
        split.setChildrenCollapsible(False)
        split.setSizes([280, 280])
        split.setStretchFactor(0, 1)
        split.setStretchFactor(1, 1)
        self.pages.addWidget(split)
        self.pages.addWidget(self.form)
        outer = QVBoxLayout(self)
        outer.setContentsMargins(0, 0, 0, 0)
        outer.addWidget(self.pages)
