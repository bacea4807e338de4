"""Lights up layers on the drawing as what they are, or as what they would be: hue and pattern."""

from dataclasses import dataclass

from PySide6.QtCore import Qt
from PySide6.QtGui import QColor, QPen

from enclosure_app.drawing.theme import Theme
from enclosure_app.model.edits.looking_up import runs_of
from enclosure_app.model.layer import Role
from enclosure_app.model.place import Points
from enclosure_app.model.product import Control
from enclosure_app.model.section import Section
from enclosure_app.window.canvas.ink.line_pens import line_pen

_PLAIN = QColor(214, 51, 132, 120)  # apart from every control's hue, by day and by night
_THIN, _STEP = 2.0, 2.2  # dots: the innermost control's line, and how much wider the next one is


@dataclass(frozen=True, slots=True)
class Lit:
    """Layers to light up together: as part of these controls, or else in a role ("" for none).

    `drawn` are products: what was drawn of them on no layer is lit up too.
    """

    layers: frozenset[str] = frozenset()
    controls: tuple[Control, ...] = ()
    role: str = ""
    drawn: frozenset[str] = frozenset()


def lit_runs(section: Section, lit: Lit) -> list[Points]:
    """Return all that is lit up: linework, pieces as they are now, what is not shown."""
    here = [p for p in section.pieces if not p.layer and p.product in lit.drawn]
    return [run for piece in here for run in runs_of(piece.shape)] + _on(section, lit.layers)


def _on(section: Section, layers: frozenset[str]) -> list[Points]:
    if not layers:
        return []
    runs = [stroke.points for stroke in section.strokes if stroke.layer in layers]
    on = [piece for piece in section.pieces if piece.layer in layers]
    shown = {handle for piece in on for handle in piece.handles}
    shown.update(stroke.handle for stroke in section.strokes if stroke.layer in layers)
    runs += [run for piece in on for run in runs_of(piece.shape)]
    runs += [s.points for s in section.taken if s.layer in layers and s.handle not in shown]
    return runs


def lit_pens(lit: Lit, theme: Theme) -> list[QPen]:
    """Return the pens that light layers up, the widest first; a control's line has its pattern."""
    if lit.controls:
        widths = [_THIN + _STEP * n for n in range(len(lit.controls))][::-1]
        pairs = zip(lit.controls, widths, strict=True)
        return [line_pen(theme.control(control), width) for control, width in pairs]
    if lit.role in (Role.FRAME, Role.BREAK):
        return [line_pen(theme.pen(lit.role), 5.0)]
    pen = QPen(_PLAIN, 4.0)
    if lit.role == Role.IGNORE:
        pen.setStyle(Qt.PenStyle.DotLine)
    return [pen]
