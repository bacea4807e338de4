"""What is said of the drawing's layers and of the office's products."""

from collections.abc import Sequence

from PySide6.QtCore import QObject, Signal

from enclosure_app.errors import EnclosureError
from enclosure_app.files.catalogue import load_products
from enclosure_app.files.guesses import guess_of
from enclosure_app.files.layers_said import Said, said
from enclosure_app.language import say, say_count
from enclosure_app.model.edits import add_product
from enclosure_app.model.edits.products import remove_product
from enclosure_app.model.layer import LayerRow, Role, rows_saying
from enclosure_app.model.product import Product
from enclosure_app.model.project import Project
from enclosure_app.window.commands.parts import Parts
from enclosure_app.window.layer_words import guessed_key, meant_word


class LayerCommands(QObject):
    """Saying what layers are, and keeping the office's products. `given`: this product was used."""

    given = Signal(str)

    def __init__(self, parts: Parts) -> None:
        super().__init__(parts.window)
        self._parts = parts

    def use_layer_map(self) -> None:
        """Use a layer map on what is open."""
        self._parts.maps.ask_and_use()

    def save_layer_map(self) -> None:
        """Save what is said of the layers for the next drawing."""
        self._parts.maps.ask_and_save()

    def correct_units(self) -> None:
        """Ask what the units of the open drawing should have been."""
        self._parts.units.ask_again()

    def say_layers(self, layers: Sequence[str], meant: str) -> None:
        """Make layers this: a product's key, a role, or with "" what their names suggest."""
        project = self._parts.document.project
        rows = rows_meaning(project, layers, meant)
        word = meant_word(meant, project.sections[0].products) if meant else say("as named")
        text = say("Make {layer} {meant}", layer=layers[0], meant=word)
        if len(layers) > 1:
            text = say("Make {count} layers {meant}", count=len(layers), meant=word)
        done = self._applied(text, project, rows)
        if done and done.project.sections and meant in done.project.sections[0].products:
            self.given.emit(meant)

    def put_product(self, product: Product) -> None:
        """Put a product of the office into the list, or another one in the place of its key."""
        document = self._parts.document
        known = document.project.sections[0].products
        name = say(product.name)
        text = say("Add {product}", product=name)
        if product.key in known:
            text = say("Change {product}", product=name)
        if known.get(product.key) != product:
            document.apply(text, add_product(document.project, product))

    def drop_product(self, key: str) -> None:
        """Take a product of the office out of the list."""
        document = self._parts.document
        product = document.project.sections[0].products[key]
        try:
            after = remove_product(document.project, key, load_products().get(key))
        except EnclosureError as error:
            self._parts.place.refuse(error)
            return
        document.apply(say("Remove {product}", product=say(product.name)), after)

    def _applied(self, text: str, project: Project, rows: Sequence[LayerRow]) -> Said | None:
        try:
            done = said(project, rows)
        except EnclosureError as error:
            self._parts.place.refuse(error)
            return None
        self._parts.document.apply(text, done.project)
        if done.by_hand:
            self._parts.messages.say(by_hand_words(done.by_hand))
        return done


def rows_meaning(project: Project, layers: Sequence[str], meant: str) -> tuple[LayerRow, ...]:
    """Return a project's rows with layers said to be this (see `LayerCommands.say_layers`)."""
    products = project.sections[0].products
    rows = project.layers
    for layer in layers:
        wanted = meant or guessed_key(guess_of(layer, products)) or Role.LINEWORK
        if wanted in products:
            rows = rows_saying(rows, [layer], product=wanted)
        else:
            rows = rows_saying(rows, [layer], role=Role(wanted))
    return rows


def by_hand_words(count: int) -> str:
    """Return in a sentence that some pieces stayed as they were."""
    return say_count(
        count,
        "One piece stays what it is, because it was given its product by hand.",
        "{count} pieces stay what they are, because they were given their product by hand.",
    )
