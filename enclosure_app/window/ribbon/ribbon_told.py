"""What stands at a place of the ribbon, in words: the sheet, the lap with its order, or the lift."""

from PySide6.QtCore import QCoreApplication

from enclosure_app.drawing.lengths import format_length
from enclosure_app.drawing.ribbon.unrolled import Lapped, Part, Unrolled, joint_between, lapped
from enclosure_app.model.drawing import Units
from enclosure_app.model.report import LayerResult, SectionResult
from enclosure_app.window.words.laps import lap_words, product_words
from enclosure_app.window.words.trade import taught


def told_at(
    result: SectionResult, layer: LayerResult, laid: Unrolled, along: float, units: Units
) -> str:
    """Return what stands `along` mm from the start of a walk, and what its words mean."""
    hole = _part_at(laid.holes, along)
    if hole:
        return taught(say("Lift: {} wide").format(format_length(hole.end - hole.start, units)))
    lap = next((lap for lap in lapped(layer, laid) if lap.start <= along <= lap.end), None)
    told = _lap_words(result, layer, laid, lap, units) if lap else ""
    course = _part_at(laid.courses, along)
    if not told and course:
        told = product_words(result, course.piece)
    return taught(told) if told else ""


def stops(layer: LayerResult, laid: Unrolled) -> tuple[float, ...]:
    """Return the places along a walk that one goes to step by step: ends, laps, lifts, joints."""
    middles = [(lap.start + lap.end) / 2 for lap in lapped(layer, laid)]
    middles += [(hole.start + hole.end) / 2 for hole in laid.holes]
    edges = [course.start for course in laid.courses]
    inner = [at for at in (*middles, *edges) if 0 < at < laid.length]
    return tuple(sorted({0.0, laid.length, *inner}))


def _part_at(parts: tuple[Part, ...], along: float) -> Part | None:
    return next((part for part in parts if part.start <= along <= part.end), None)


def _lap_words(
    result: SectionResult, layer: LayerResult, laid: Unrolled, lap: Lapped, units: Units
) -> str:
    """Return how long a lap is and which sheet is over which."""
    middle = (lap.start + lap.end) / 2
    before = min(laid.courses, key=lambda course: abs(course.end - middle))
    at = laid.courses.index(before) + 1
    joint = (
        joint_between(layer, before.piece, laid.courses[at].piece)
        if at < len(laid.courses)
        else None
    )
    return lap_words(result, joint, units) if joint else ""


def say(text: str) -> str:
    """Return a text in the window's language."""
    return QCoreApplication.translate("RibbonTold", text)
