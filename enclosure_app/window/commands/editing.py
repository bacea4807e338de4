"""What Edit in the menu does, and what gives lines a product."""

from collections.abc import Collection, Mapping

from PySide6.QtCore import QObject, Qt, Signal
from PySide6.QtWidgets import QDockWidget

from enclosure_app.errors import EnclosureError
from enclosure_app.language import say
from enclosure_app.model.edits import put_in
from enclosure_app.model.product import Product
from enclosure_app.model.section import Piece
from enclosure_app.window.canvas.tools.select import Select
from enclosure_app.window.commands.fittings import Fittings
from enclosure_app.window.lines.giving import given_product


class EditCommands(QObject):
    """Picking, deleting, and saying what the lines are. `given`: this product was used."""

    given = Signal(str)

    def __init__(self, fittings: Fittings) -> None:
        super().__init__(fittings.window)
        self._fittings = fittings
        self._copied: tuple[tuple[Piece, ...], Mapping[str, Product]] | None = None
        self._pasted = 0
        fittings.lines.search.returnPressed.connect(fittings.canvas.setFocus)

    def delete(self) -> None:
        """Remove what is picked, or what the tool in hand takes out."""
        if self._fittings.place.picked:
            Select(self._fittings.place).delete()

    def copy_picked(self) -> None:
        """Keep what is picked, to be put in elsewhere."""
        place, section = self._fittings.place, self._fittings.place.section
        if section and place.picked:
            pieces = tuple(p for p in section.pieces if p.name in place.picked)
            self._copied, self._pasted = (pieces, section.products), 0

    def cut_picked(self) -> None:
        """Keep what is picked, and remove it."""
        self.copy_picked()
        self.delete()

    def paste(self) -> None:
        """Put in what was copied, and pick it; copies do not hide what they were made of."""
        place, section = self._fittings.place, self._fittings.place.section
        if section is None or self._copied is None:
            place.refused.emit(self.tr("Nothing is copied yet: pick something and copy it first."))
            return
        pieces, products = self._copied
        hidden = any(section.by_name.get(piece.name) is piece for piece in pieces)
        self._pasted += hidden
        step = self._pasted * place.aids.spacing(place.document.project.units) if hidden else 0.0
        after = put_in(place.document.project, place.index, pieces, products, (step, -step))
        place.document.apply(self.tr("Put in what was copied"), after)
        place.pick([p.name for p in after.sections[place.index].pieces[-len(pieces) :]])

    def pick_all(self) -> None:
        """Pick every piece."""
        section = self._fittings.place.section
        self._fittings.place.pick(section.by_name if section else ())

    def pick_same(self) -> None:
        """Pick every piece of the same products as those that are picked."""
        place, section = self._fittings.place, self._fittings.place.section
        if section:
            products = {section.by_name[name].product for name in place.picked}
            place.pick([piece.name for piece in section.pieces if piece.product in products])

    def pick_product(self) -> None:
        """Pick every piece of the product that is chosen in the list."""
        place, section = self._fittings.place, self._fittings.place.section
        if section:
            place.pick([piece.name for piece in section.pieces if piece.product == place.product])

    def pick_next(self) -> None:
        """Pick the piece that was drawn after the one that is picked."""
        self._pick_by(1)

    def pick_last(self) -> None:
        """Pick the piece that was drawn before the one that is picked."""
        self._pick_by(-1)

    def _pick_by(self, step: int) -> None:
        place, section = self._fittings.place, self._fittings.place.section
        names = list(section.by_name) if section else []
        if not names:
            return
        picked = [number for number, name in enumerate(names) if name in place.picked]
        now = picked[-1 if step > 0 else 0] if picked else (-1 if step > 0 else 0)
        place.pick((names[(now + step) % len(names)],))

    def pick_none(self) -> None:
        """Pick nothing."""
        self._fittings.place.pick(())

    def pick_layers(self, layers: Collection[str]) -> None:
        """Pick everything on these layers of the drawing."""
        section = self._fittings.place.section
        if section:
            names = [piece.name for piece in section.pieces if piece.layer in layers]
            lines = [stroke.handle for stroke in section.strokes if stroke.layer in layers]
            self._fittings.place.pick(names, lines)

    def pick_drawn(self, products: Collection[str]) -> None:
        """Pick everything that was drawn of these products (keys) on no layer of the office's."""
        section = self._fittings.place.section
        if section:
            here = (p for p in section.pieces if not p.layer and p.product in products)
            self._fittings.place.pick([piece.name for piece in here])

    def find_product(self) -> None:
        """Go to the line in which products are searched; Enter there goes back to the drawing."""
        lines, search = self._fittings.lines, self._fittings.lines.search
        for dock in self._fittings.window.findChildren(QDockWidget):
            if dock.isAncestorOf(lines):
                dock.show()
        lines.show_lists()
        search.setFocus(Qt.FocusReason.ShortcutFocusReason)
        search.selectAll()

    def give_product(self) -> None:
        """Say that what is picked is made of the product that is chosen."""
        place = self._fittings.place
        section = place.section
        if section is None or place.product not in section.products:
            return
        if not (place.picked or place.picked_lines):
            place.refused.emit(self.tr("Pick the lines first that are made of this product."))
            return
        text = self.tr("Make it {}").format(say(section.products[place.product].name))
        try:
            after = given_product(
                place.document.project,
                place.index,
                (place.picked, place.picked_lines),
                place.product,
            )
        except EnclosureError as error:
            place.refuse(error)
            return
        place.document.apply(text, after)
        self.given.emit(place.product)

    def read_notes(self) -> None:
        """Read the drawing's notes, and offer what they say."""
        self._fittings.noting.read()
