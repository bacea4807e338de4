"""Ready-made parts on the way into the drawing: their sizes are asked for while they are looked at.

A part is there at once, with its usual sizes, as a section of its own; each size that is typed draws
it anew. It can be put into the section that was in view instead. All of it undoes as one step.
"""

from collections.abc import Mapping
from dataclasses import dataclass, field, replace

from PySide6.QtCore import QCoreApplication, QObject, Signal
from PySide6.QtWidgets import QPushButton

from enclosure_app.files.maps.catalogue import load_products
from enclosure_app.language import say as say_word
from enclosure_app.model.edits import add_section
from enclosure_app.model.naming import free_name
from enclosure_app.model.place import Point
from enclosure_app.model.project import Project
from enclosure_app.model.section import Section
from enclosure_app.planning.parts import PARTS, Part, sizes_of
from enclosure_app.planning.parts.placing import other_hand, put_part
from enclosure_app.window.canvas.canvas import Canvas
from enclosure_app.window.canvas.toolbox import Toolbox
from enclosure_app.window.canvas.tools.place_part import PlacePart
from enclosure_app.window.canvas.workplace import Workplace
from enclosure_app.window.document import new_gesture
from enclosure_app.window.parts.sizes_form import SizesForm
from enclosure_app.window.typed.typed_size import Asked


@dataclass(slots=True)
class _Placing:
    """One part on its way: the project before it, which section is in view, where it was put."""

    part: Part
    before: Project
    index: int
    sizes: Mapping[str, float] = field(default_factory=dict)
    flipped: bool = False
    into: bool = False
    at: Point | None = None
    gesture: int = field(default_factory=new_gesture)

    def section(self) -> Section:
        """Return the part as a section, under a name that is free."""
        sizes = self.part.parameters(**self.sizes)
        drawn = self.part.section(sizes, load_products())
        taken = [section.name for section in self.before.sections]
        named = replace(drawn, name=free_name(say_word(self.part.title), taken))
        return other_hand(named) if self.flipped else named


class PartsPlacing(QObject):
    """Adds ready-made parts.

    `begun`: a project that is to be opened, since none is; `added`: the place of a new section.
    """

    begun = Signal(object)
    added = Signal(int)

    def __init__(
        self, place: Workplace, toolbox: Toolbox, canvas: Canvas, form: SizesForm
    ) -> None:
        super().__init__(place)
        self._place, self._toolbox, self._canvas, self._form = place, toolbox, canvas, form
        self._now: _Placing | None = None
        self._made: Project | None = None
        self._instead: QPushButton | None = None
        place.document.changed.connect(self._look_whether_it_is_ours)
        toolbox.taken.connect(self._look_whether_it_is_given_up)
        form.closed.connect(self._leave)

    def begin(self, name: str) -> None:
        """Add the part called `name` as a section of its own, and ask for its sizes."""
        self._form.put_away()
        self._toolbox.take("select")
        part = next(each for each in PARTS if each.name == name)
        document = self._place.document
        if not document.project.sections:
            empty = replace(document.project, title=say_word(part.title), source="")
            self._now = _Placing(part, empty, 0)
            self._made = add_section(empty, self._now.section())
            self.begun.emit(self._made)
        else:
            self._now = _Placing(part, document.project, self._place.index)
            self._draw()
            self.added.emit(len(document.project.sections) - 1)
        self._ask()

    def put_into(self) -> None:
        """Put the part into the section that was in view before, where a click says."""
        now = self._now
        if now is None:
            return
        now.into, now.at = True, None
        if self._instead is not None:
            self._instead.hide()
        self._made = now.before
        self._place.document.apply(self._text(now), now.before, gesture=now.gesture)
        self._place.turn_to(now.index)
        self._canvas.fit()
        self._toolbox.take("part")
        tool = self._canvas.tool
        if isinstance(tool, PlacePart):
            tool.hold(now.section())
            tool.put.connect(self._put)
        self._canvas.setFocus()

    def _ask(self) -> None:
        now = self._now
        if now is None:
            return
        asked = [
            Asked(size.name, say_word(size.words), size.usual, size.low, size.high, size.unit)
            for size in sizes_of(now.part.parameters)
        ]
        units = self._place.document.project.units
        self._form.ask(say_word(now.part.title), asked, units, self._take)
        self._form.add_button(say("Outside on the other side"), self._flip)
        self._canvas.fit()
        self._instead = None
        if now.before.sections:
            name = now.before.sections[now.index].name
            text = say("Put it into “{}” instead").format(name)
            self._instead = self._form.add_button(text, self.put_into)

    def _take(self, sizes: Mapping[str, float]) -> None:
        now = self._now
        if now is not None:
            now.sizes = sizes
            self._draw_anew()

    def _flip(self) -> None:
        if self._now is not None:
            self._now.flipped = not self._now.flipped
            self._draw_anew()

    def _put(self, at: Point) -> None:
        """Put the part at a place; its sizes may still change."""
        now = self._now
        if now is not None:
            now.at, now.gesture = at, new_gesture()
            self._draw()
            self._toolbox.take("select")

    def _draw_anew(self) -> None:
        """Draw the part with other sizes: where it is, or at the mouse."""
        now, tool = self._now, self._canvas.tool
        if now is None:
            return
        if now.into and now.at is None:
            if isinstance(tool, PlacePart):
                tool.hold(now.section())
            return
        self._draw()
        if not now.into:
            self._canvas.fit()

    def _draw(self) -> None:
        now = self._now
        if now is None:
            return
        section = now.section()
        if now.at is None:
            self._made = add_section(now.before, section)
        else:
            self._made = put_part(now.before, now.index, section, now.at)
        self._place.document.apply(self._text(now), self._made, gesture=now.gesture)

    def _text(self, now: _Placing) -> str:
        return say("Add {}").format(say_word(now.part.title))

    def _look_whether_it_is_ours(self) -> None:
        """Put the form away when something else was done: its sizes would undo that."""
        if self._now is not None and self._place.document.project is not self._made:
            self._form.put_away()

    def _look_whether_it_is_given_up(self, tool: str) -> None:
        """Put the form away when another tool is taken before the part has a place."""
        now = self._now
        if now is not None and now.into and now.at is None and tool != "part":
            self._form.put_away()

    def _leave(self) -> None:
        self._now = None
        if self._toolbox.name == "part":
            self._toolbox.take("select")
        self._canvas.setFocus()


def say(text: str) -> str:
    """Return a text in the window's language."""
    return QCoreApplication.translate("Parts", text)
