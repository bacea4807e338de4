"""A lap in words: how long it is, which sheet is over which, and whether it is sealed."""

from PySide6.QtCore import QCoreApplication

from enclosure_app.drawing.lengths import format_length
from enclosure_app.drawing.polylines import foot
from enclosure_app.model.drawing import Units
from enclosure_app.model.place import Point
from enclosure_app.model.report import Joint, JointKind, SectionResult


def lap_words(result: SectionResult, joint: Joint, units: Units) -> str:
    """Return a lap in one line: ``Lap of 130 mm: roof underlayment over wall sheet``."""
    length = format_length(joint.length, units)
    if joint.over not in (joint.a, joint.b):
        told = say("Lap of {}: {} and {}")
        names = joint.a, joint.b
    else:
        told = say("Lap of {}: {} over {}")
        names = joint.over, joint.b if joint.over == joint.a else joint.a
    words = told.format(length, *(product_words(result, name) for name in names))
    return f"{words}, {say('sealed')}" if joint.sealed else words


def lap_at(result: SectionResult, at: Point, reach: float) -> Joint | None:
    """Return the lap whose sheets run within `reach` mm of a place, the nearest of several."""
    found = [
        (min(offs), joint)
        for layer in result.layers.values()
        for joint in layer.joints
        if joint.kind is JointKind.LAP
        and (offs := [foot(run, at).off for run in (joint.run_a, joint.run_b) if len(run) > 1])
    ]
    off, nearest = min(found, key=lambda pair: pair[0], default=(reach + 1.0, None))
    return nearest if off <= reach else None


def product_words(result: SectionResult, name: str) -> str:
    """Return what a piece is made of, "" for one that is not there."""
    piece = result.section.by_name.get(name)
    return result.section.product(piece).name if piece else ""


def say(text: str) -> str:
    """Return a text in the window's language."""
    return QCoreApplication.translate("JointTold", text)
