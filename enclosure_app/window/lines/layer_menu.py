"""What chosen layers can be besides a product: as named, a frame, break lines, notes, ignored."""

from collections.abc import Mapping, Sequence

from PySide6.QtCore import Signal
from PySide6.QtGui import QAction
from PySide6.QtWidgets import QMenu, QWidget

from enclosure_app.language import say
from enclosure_app.model.product import Product
from enclosure_app.window.lines.layer_words import ROLE_TIPS, ROLES, guessed_key, meant_word
from enclosure_app.window.lines.layers_told import LayerTold


class LayerMenu(QMenu):
    """The menu over chosen layers.

    `taken`: make them this, a role or "" for what each name suggests; `pointed`: the mouse or the
    keys are at this; `picked`: pick all that is on them.
    """

    taken = Signal(str)
    pointed = Signal(str)
    picked = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setToolTipsVisible(True)

    def fill(self, told: Sequence[LayerTold], products: Mapping[str, Product]) -> None:
        """Offer what these layers can be."""
        self.clear()
        if not any(each.drawn for each in told):
            self._add_roles(told, products)
        pick = self.addAction(self.tr("Pick all that is on it"))
        pick.triggered.connect(lambda _=False: self.picked.emit())

    def _add_roles(self, told: Sequence[LayerTold], products: Mapping[str, Product]) -> None:
        """Offer what layers can be; what was drawn here can be another product only."""
        guesses = {guessed_key(each.guess) for each in told} - {""}
        if guesses:
            one = meant_word(next(iter(guesses)), products)
            text = say("As named: {guess}", guess=one) if len(guesses) == 1 else say("As named")
            self._add(text, "", say("What its name suggests"))
            self.addSeparator()
        for role, word in ROLES.items():
            self._add(say(word), role, say(ROLE_TIPS[role]))
        self.addSeparator()

    def _add(self, text: str, meant: str, tip: str) -> None:
        action = QAction(text, self)
        action.setToolTip(tip)
        action.triggered.connect(lambda: self.taken.emit(meant))
        action.hovered.connect(lambda: self.pointed.emit(meant))
        self.addAction(action)
