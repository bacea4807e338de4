"""Place a part: a ready-made part hangs from the mouse until a click puts it into the section."""

from PySide6.QtCore import Signal

from enclosure_app.model.section import Section
from enclosure_app.planning.parts.placing import put_part
from enclosure_app.window.canvas.tools.proposing import ProposingTool, Wish
from enclosure_app.window.canvas.tools.tool import Pointer, say
from enclosure_app.window.canvas.workplace import Workplace


class PlacePart(ProposingTool):
    """Puts a part into the section in view. `put`: the place where it was put."""

    put = Signal(object)

    def __init__(self, place: Workplace) -> None:
        super().__init__(place)
        self._part: Section | None = None

    @property
    def next_step(self) -> str:
        """Return what to do next."""
        if self._part is None:
            return say("Choose a part in the File menu.")
        return say("Click where the outer face of the wall board goes, at the part's level 0.")

    def hold(self, part: Section) -> None:
        """Hang this part from the mouse."""
        self._part = part
        if self.pointer is not None:
            self.look(self.pointer)
        self.changed.emit()

    def wish(self, pointer: Pointer) -> Wish | None:
        """Put the part in where the pointer is."""
        part = self._part
        if part is None:
            return None
        at = pointer.at
        return say("Put in {}").format(part.name), lambda p, i: put_part(p, i, part, at)

    def take(self, pointer: Pointer) -> None:
        """Say where it goes: whoever gave the part puts it there, so that its sizes can change."""
        if self._part is not None:
            self.forget()
            self.put.emit(pointer.at)
