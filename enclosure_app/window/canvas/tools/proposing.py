"""A gesture that shows what a click would do before it does it."""

from PySide6.QtGui import QPainter

from enclosure_app.errors import EnclosureError
from enclosure_app.window.canvas.camera import Camera
from enclosure_app.window.canvas.ink.preview import Preview
from enclosure_app.window.canvas.tools.tool import Edit, Pointer
from enclosure_app.window.canvas.tools.typing_tool import TypingTool
from enclosure_app.window.canvas.workplace import Workplace

REACH = 9.0  # dots within which a piece is meant

Wish = tuple[str, Edit]
"""A change and the words that the Edit menu has for it."""


class ProposingTool(TypingTool):
    """Shows a change while the pointer moves, and makes it at a click.

    Why a change cannot be made stands in the hint while the pointer is there, and is told at a
    click.
    """

    def __init__(self, place: Workplace) -> None:
        super().__init__(place)
        self.preview: Preview | None = None
        self.why = ""

    # ---- what each gesture makes of it ---------------------------------------------------------

    def wish(self, pointer: Pointer) -> Wish | None:
        """Return what a click at the pointer would do, None for nothing; `why` may say why not."""
        raise NotImplementedError

    @property
    def next_step(self) -> str:
        """Return what to do next, in one sentence."""
        return ""

    # ---- what all share ------------------------------------------------------------------------

    @property
    def hint(self) -> str:
        """Return what is typed, why nothing can be done here, or what to do next."""
        return self.typed or self.why or self.next_step

    @property
    def told(self) -> str:
        """Return how much longer or shorter things get."""
        return self.preview.told(self.place.document.project.units) if self.preview else ""

    def look(self, pointer: Pointer) -> None:
        """Show what a click here would do."""
        self.preview, self.why = None, ""
        wish, section = self.wish(pointer), self.place.section
        if wish is None or section is None:
            return
        try:
            after = wish[1](self.place.document.project, self.place.index)
        except EnclosureError as error:
            self.why = str(error)
            return
        self.preview = Preview(section, after.sections[self.place.index])

    def take(self, pointer: Pointer) -> None:
        """Do what is shown."""
        self.accept(pointer)

    def accept(self, pointer: Pointer) -> bool:
        """Make the change that a click at the pointer means; say whether it was made."""
        self.why = ""
        wish = self.wish(pointer)
        if wish is None and self.why:
            self.place.refused.emit(self.why)
        done = wish is not None and self.edit(*wish)
        self.forget()
        return done

    def forget(self) -> None:
        """Show nothing any more."""
        self.preview, self.why = None, ""
        self.changed.emit()

    def paint(self, painter: QPainter, camera: Camera) -> None:
        """Paint the change and what is typed."""
        if self.preview:
            self.preview.paint(painter, camera)
        self.paint_typed(painter, camera)
