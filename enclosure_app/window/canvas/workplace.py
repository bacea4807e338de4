"""What a gesture works with: the document, the section in view, what is picked and drawn with.

What is picked and what is drawn with belong to the view: they are not undone and not saved.
"""

from collections.abc import Collection
from dataclasses import replace
from typing import Any

from PySide6.QtCore import QObject, Signal

from enclosure_app.errors import EnclosureError
from enclosure_app.model.product import Control
from enclosure_app.model.report import SectionResult
from enclosure_app.model.section import Section
from enclosure_app.window.canvas.catching.aids import Aids
from enclosure_app.window.document import Document


class Workplace(QObject):
    """One document with the section in view.

    `picked_changed`: other pieces are picked. `turned`: another section is in view, or another
    control shown. `aided`: the grid, or another help to draw, is another. `refused`: an edit cannot
    be done, in one sentence. `asked`: a question with its answers. `resized`: everything has
    another size, and is to be looked at anew. `result` is what was last found in the section in view.
    """

    picked_changed = Signal()
    turned = Signal()
    aided = Signal()
    resized = Signal()
    refused = Signal(str)
    asked = Signal(str, object)

    def __init__(self, document: Document) -> None:
        super().__init__(document)
        self.document = document
        self.index = 0
        self.only: Control | None = None
        self.product = ""
        self.aids = Aids()
        self.result: SectionResult | None = None
        self.picked: frozenset[str] = frozenset()
        self.picked_lines: frozenset[str] = frozenset()
        document.changed.connect(self._drop_what_is_gone)

    @property
    def section(self) -> Section | None:
        """The section in view, None while the project has none."""
        sections = self.document.project.sections
        return sections[self.index] if 0 <= self.index < len(sections) else None

    @property
    def picked_layers(self) -> frozenset[str]:
        """The layers of the drawing that what is picked is on."""
        section = self.section
        if section is None:
            return frozenset()
        names = (section.by_name[name].layer for name in self.picked if name in section.by_name)
        lines = section.strokes if self.picked_lines else ()
        on = (stroke.layer for stroke in lines if stroke.handle in self.picked_lines)
        return frozenset((*names, *on)) - {""}

    def turn_to(self, index: int) -> None:
        """Bring another section into view."""
        if index != self.index:
            self.index = index
            self.pick(())
            self.turned.emit()

    def show_only(self, control: Control | None) -> None:
        """Show one control alone, or all of them."""
        if control is not self.only:
            self.only = control
            self.turned.emit()

    def aid(self, **changes: Any) -> None:  # noqa: ANN401  the fields of Aids
        """Help otherwise: with another grid, another distance off boards, other angles."""
        self.aids = replace(self.aids, **changes)
        self.aided.emit()

    def pick(self, names: Collection[str], lines: Collection[str] = ()) -> None:
        """Pick these pieces, and these lines of the office's linework by their handles."""
        chosen = frozenset(names), frozenset(lines)
        if chosen != (self.picked, self.picked_lines):
            self.picked, self.picked_lines = chosen
            self.picked_changed.emit()

    def refuse(self, error: EnclosureError) -> None:
        """Say why an edit cannot be done."""
        self.refused.emit(str(error))

    def _drop_what_is_gone(self) -> None:
        if self.index >= len(self.document.project.sections):
            self.index = 0
            self.turned.emit()
        section = self.section
        there = frozenset(section.by_name) if section else frozenset()
        self.pick(self.picked & there, self.picked_lines)
