"""Seal: says of a joint that it is sealed on site, or takes that back; every joint is shown.

An open ring is a joint that nothing seals, a dot one that its products seal, and a square one that
a person said is sealed.
"""

from collections.abc import Mapping
from math import dist

from PySide6.QtCore import QPointF, Qt
from PySide6.QtGui import QPainter

from enclosure_app.model.edits import declare_sealed
from enclosure_app.model.report import Joint
from enclosure_app.model.section import Section
from enclosure_app.window.canvas.camera import Camera
from enclosure_app.window.canvas.ink.ink import pen
from enclosure_app.window.canvas.ink.joint_marks import Pair, joints_of, paint_joint, pair_of
from enclosure_app.window.canvas.ink.lettering import words
from enclosure_app.window.canvas.tools.tool import Pointer, say
from enclosure_app.window.canvas.tools.typing_tool import TypingTool
from enclosure_app.window.canvas.workplace import Workplace

_REACH = 12.0  # dots


class Seal(TypingTool):
    """Says which joints are sealed on site."""

    catches = False

    def __init__(self, place: Workplace) -> None:
        super().__init__(place)
        self._at: Joint | None = None

    @property
    def hint(self) -> str:
        """Return what is at the pointer, and what a click does."""
        section = self.place.section
        if self.typed:
            return self.typed
        if not self.joints:
            return say(
                "No joints are found yet: draw sheets that meet, and mark inside and outside."
            )
        if self._at is None or section is None or pair_of(self._at) not in self.joints:
            return say("Click a joint: it is sealed on site. Rings are joints that nothing seals.")
        return self._told(section, self._at)

    @property
    def joints(self) -> Mapping[Pair, list[Joint]]:
        """The joints of all layers by the names of their two pieces."""
        section = self.place.section
        return joints_of(self.place.result, section) if section else {}

    def look(self, pointer: Pointer) -> None:
        """Find the joint at the pointer."""
        self._at = self._joint_at(pointer)

    def take(self, pointer: Pointer) -> None:
        """Say that the joint is sealed, or take that back."""
        joint, section = self._joint_at(pointer), self.place.section
        if joint is None or section is None:
            return
        a, b = pair_of(joint)
        said = (a, b) in section.sealed
        if joint.sealed and not said:
            self.place.refused.emit(say("What is drawn there seals that joint already."))
            return
        text = say("Take a seal back") if said else say("Seal a joint")
        self.edit(text, lambda p, i: declare_sealed(p, i, a, b, sealed=not said))

    def paint(self, painter: QPainter, camera: Camera) -> None:
        """Paint every joint, and the words of the one at the pointer."""
        section = self.place.section
        for pair, joints in self.joints.items():
            said = section is not None and pair in section.sealed
            for joint in joints:
                paint_joint(painter, camera.seen(joint.at), sealed=joint.sealed, said=said)
        if self._at is not None and section is not None and pair_of(self._at) in self.joints:
            at = camera.seen(self._at.at)
            painter.setPen(pen(2.0))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawEllipse(at, 12.0, 12.0)
            words(painter, at + QPointF(16, -12), _state(section, self._at))
        self.paint_typed(painter, camera)

    def _joint_at(self, pointer: Pointer) -> Joint | None:
        near = [
            (dist(joint.at, pointer.at), number, joint)
            for number, joint in enumerate(j for joints in self.joints.values() for j in joints)
        ]
        found = min(near, default=None)
        return found[2] if found and found[0] <= pointer.reach(_REACH) else None

    def _told(self, section: Section, joint: Joint) -> str:
        names = [section.product(section.by_name[name]).name for name in (joint.a, joint.b)]
        if pair_of(joint) in section.sealed:
            return say("{} and {}: sealed, says a person. A click takes that back.").format(*names)
        if joint.sealed:
            return say("{} and {}: sealed by what is drawn.").format(*names)
        return say("{} and {}: nothing seals them. A click says that they are sealed.").format(
            *names
        )


def _state(section: Section, joint: Joint) -> str:
    if pair_of(joint) in section.sealed:
        return say("sealed, says a person")
    return say("sealed") if joint.sealed else say("not sealed")
