"""What is said of the drawing's layers and of the office's products."""

from collections.abc import Collection, Sequence
from dataclasses import dataclass
from functools import partial

from PySide6.QtCore import QObject, Signal

from enclosure_app.errors import EnclosureError
from enclosure_app.files.framing.layers_said import Said, said
from enclosure_app.files.maps.catalogue import load_products
from enclosure_app.files.maps.guesses import guess_of
from enclosure_app.language import say, say_count
from enclosure_app.model.edits import add_product, set_product
from enclosure_app.model.edits.products import remove_product
from enclosure_app.model.layer import LayerRow, Role, rows_saying
from enclosure_app.model.product import Product
from enclosure_app.model.project import Project
from enclosure_app.window.apart.working import Job, Lane
from enclosure_app.window.commands.fittings import Fittings
from enclosure_app.window.lines.layer_words import guessed_key, meant_word

Step = tuple[str, Said | EnclosureError, str]
"""The words of a step, the project after it or why there is none, and what layers were to be."""


class LayerCommands(QObject):
    """Saying what layers are, and keeping the office's products. `given`: this product was used."""

    given = Signal(str)

    def __init__(self, fittings: Fittings) -> None:
        super().__init__(fittings.window)
        self._fittings = fittings
        self._waiting: list[Saying] = []
        self._renewing = False

    def use_layer_map(self) -> None:
        """Use a layer map on what is open."""
        self._fittings.maps.ask_and_use()

    def save_layer_map(self) -> None:
        """Save what is said of the layers for the next drawing."""
        self._fittings.maps.ask_and_save()

    def correct_units(self) -> None:
        """Ask what the units of the open drawing should have been."""
        self._fittings.units.ask_again()

    def say_layers(self, layers: Sequence[str], meant: str) -> None:
        """Make layers this: a product's key, a role, or with "" what their names suggest."""
        self._waiting.append(Saying(tuple(layers), meant))
        self._begin()

    def give_drawn(self, products: Collection[str], product: str) -> None:
        """Make all that was drawn of these products (keys), on no layer, another product."""
        document = self._fittings.document
        after = document.project
        for number, section in enumerate(after.sections):
            drawn = (p for p in section.pieces if not p.layer and p.product in products)
            names = [piece.name for piece in drawn if piece.product != product]
            after = set_product(after, number, names, product) if names else after
        if after is not document.project:
            known = after.sections[0].products
            words = [say(known[key].name) for key in products]
            text = say(
                "Make {before} {after}", before=", ".join(words), after=say(known[product].name)
            )
            document.apply(text, after)
            self.given.emit(product)

    def put_product(self, product: Product) -> None:
        """Put a product of the office into the list, or another one in the place of its key."""
        document = self._fittings.document
        known = document.project.sections[0].products
        name = say(product.name)
        text = say("Add {product}", product=name)
        if product.key in known:
            text = say("Change {product}", product=name)
        if known.get(product.key) != product:
            document.apply(text, add_product(document.project, product))

    def drop_product(self, key: str) -> None:
        """Take a product of the office out of the list."""
        document = self._fittings.document
        product = document.project.sections[0].products[key]
        try:
            after = remove_product(document.project, key, load_products().get(key))
        except EnclosureError as error:
            self._fittings.place.refuse(error)
            return
        document.apply(say("Remove {product}", product=say(product.name)), after)

    def _begin(self) -> None:
        """Say what waits to be said, while the window goes on; what is edited meanwhile stays."""
        document = self._fittings.document
        project, waiting, opening = document.project, tuple(self._waiting), document.opening

        def show(steps: Sequence[Step]) -> None:
            if document.project is not project and document.opening == opening:
                self._begin()
                return
            self._waiting.clear()
            for step in steps if document.opening == opening else ():
                self._show(step)

        self._renewing = True  # an older job gives way, and what it was to say is in the new one
        words, work = waiting[0].words(project), partial(steps_of, project, waiting)
        job = Job(Lane.SAYING, words, lambda _: work(), then=show, stopped=self._stopped)
        self._fittings.working.begin(job)
        self._renewing = False

    def _stopped(self) -> None:
        if not self._renewing:
            self._waiting.clear()

    def _show(self, step: Step) -> None:
        fittings, (words, done, meant) = self._fittings, step
        if isinstance(done, EnclosureError):
            fittings.place.refuse(done)
            return
        fittings.document.apply(words, done.project)
        if done.by_hand:
            fittings.messages.say(by_hand_words(done.by_hand))
        if meant in done.project.sections[0].products:
            self.given.emit(meant)


@dataclass(frozen=True, slots=True)
class Saying:
    """Layers, and what they are to be (see `LayerCommands.say_layers`)."""

    layers: tuple[str, ...]
    meant: str

    def words(self, project: Project) -> str:
        """Return the words of this step in the Edit menu."""
        products = project.sections[0].products
        word = meant_word(self.meant, products) if self.meant else say("as named")
        if len(self.layers) == 1:
            return say("Make {layer} {meant}", layer=self.layers[0], meant=word)
        return say("Make {count} layers {meant}", count=len(self.layers), meant=word)


def steps_of(project: Project, waiting: Sequence[Saying]) -> list[Step]:
    """Return one step after another: its words, what came of it or why it cannot be."""
    steps: list[Step] = []
    for each in waiting:
        words = each.words(project)
        try:
            done = said(project, rows_meaning(project, each.layers, each.meant))
        except EnclosureError as error:
            steps.append((words, error, each.meant))
            continue
        steps.append((words, done, each.meant))
        project = done.project
    return steps


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
