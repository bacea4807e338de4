"""Turn and flip what is picked: places and angles are clicked or typed, and all is seen before.

With Ctrl held at the last click the originals stay where they are and copies are made.
"""

from collections.abc import Callable, Collection
from math import atan2, degrees, dist

from enclosure_app.language import written
from enclosure_app.model.edits import doubled, mirror_pieces, rotate_pieces
from enclosure_app.model.place import Point
from enclosure_app.model.project import Project
from enclosure_app.window.canvas.tools.proposing import Wish
from enclosure_app.window.canvas.tools.tool import Edit, Pointer, say
from enclosure_app.window.canvas.tools.transform import Transform
from enclosure_app.window.typed.typed_length import read_angle

_SAME = 0.01  # mm

Change = Callable[[Project, int, Collection[str]], Project]
"""A change of pieces by their names."""


class Turn(Transform):
    """Turns what is picked about a centre, from one place to another or by a typed angle."""

    places = 3

    def ask(self) -> str:
        """Return what is asked for now."""
        asked = (
            say("Click the centre to turn about."),
            say("Type the angle, such as 22.5, or click a place that is to be turned."),
            say("Click where that place goes, or type the angle; Shift keeps to 15 degrees."),
        )
        return asked[len(self.given)]

    @property
    def anchor(self) -> Point | None:
        """Return none: angles count from the place that is turned."""
        return None

    @property
    def signed(self) -> bool:
        """Return whether an angle may be typed: there is a centre."""
        return bool(self.given)

    @property
    def told(self) -> str:
        """Return by how much it turns."""
        if len(self.given) < 2 or self.pointer is None:
            return ""
        return written(f"∠ {self._angle(self.pointer):.1f}°")

    def meant(self, names: Collection[str], pointer: Pointer) -> Wish | None:
        """Turn by the angle between the two places."""
        return self._by(names, self._angle(pointer), keeps=pointer.keeps)

    def read(self, text: str) -> None:
        """Take a typed angle, or a place while there is no centre."""
        if not self.given or ";" in text:
            super().read(text)
            return
        wish = self._by(self.place.picked, read_angle(text.removeprefix("at")), keeps=False)
        if self.place.picked and self.edit(*wish):
            self.forget()
            self.after()

    def _by(self, names: Collection[str], angle: float, *, keeps: bool) -> Wish:
        centre = self.given[0]
        return say("Turn"), _on_copies(
            names, keeps, lambda p, i, n: rotate_pieces(p, i, n, centre, angle)
        )

    def _angle(self, pointer: Pointer) -> float:
        """Return the angle, between -180 and 180 degrees."""
        centre, start = self.given[0], self.given[1]
        angle = _direction(centre, pointer.at) - _direction(centre, start)
        aids = self.place.aids
        if aids.kept is not pointer.adds and pointer.catch is None:
            angle = round(angle / aids.step) * aids.step
        return (angle + 180.0) % 360.0 - 180.0


class Flip(Transform):
    """Flips what is picked over a line through two places."""

    def ask(self) -> str:
        """Return what is asked for now."""
        if not self.given:
            return say("Click a place on the line to flip over.")
        return say(
            "Click a second place on the line, or type its angle; Shift keeps to 15 degrees, "
            "Ctrl leaves the original."
        )

    @property
    def told(self) -> str:
        """Return the angle of the line."""
        if not self.given or self.pointer is None:
            return ""
        return written(f"∠ {_direction(self.given[0], self.pointer.at):.1f}°")

    def meant(self, names: Collection[str], pointer: Pointer) -> Wish | None:
        """Flip over the line."""
        a, b = self.given[0], pointer.at
        if dist(a, b) < _SAME:
            return None
        flipped = _on_copies(names, pointer.keeps, lambda p, i, n: mirror_pieces(p, i, n, (a, b)))
        return say("Flip"), flipped

    def read(self, text: str) -> None:
        """Take the typed angle of the line, or a place."""
        if not self.given or ";" in text:
            super().read(text)
            return
        super().read(f"1000 mm at {read_angle(text.removeprefix('at'))}")


def _on_copies(names: Collection[str], keeps: bool, change: Change) -> Edit:
    """Return an edit that changes the pieces, or copies of them where the originals are kept."""
    if not keeps:
        return lambda p, i: change(p, i, names)

    def on_copies(project: Project, index: int) -> Project:
        after, copies = doubled(project, index, names)
        return change(after, index, copies)

    return on_copies


def _direction(a: Point, b: Point) -> float:
    return degrees(atan2(b[1] - a[1], b[0] - a[0]))
