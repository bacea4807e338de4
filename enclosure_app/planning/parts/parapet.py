"""Parapet round a low-slope roof: one sheet over it, insulation all round, membrane and coping."""

from dataclasses import dataclass

from enclosure_app.planning.parts.assembly import LINING, ON, OVER, PLATE, ROOM, Sketch, Wall, box
from enclosure_app.planning.parts.parameters import DeckSizes, size

BOARD = 12.0
ROUND = 60.0  # mm of insulation on the parapet's inner face and on its top
LAP = 150.0
REACH = 900.0  # mm of roof
TOP_FALL = 1 / 12


@dataclass(frozen=True, slots=True)
class Parameters(DeckSizes):
    """Sizes of a parapet."""

    height: float = size(450, 380, 1000, "Height of the parapet above the roof")
    fall: float = size(0.025, 0.0209, 0.06, "Fall of the roof away from the parapet", "slope")


def draw(sizes: Parameters) -> Sketch:
    """Return the parapet; the deck's top stands at 0."""
    wall = Wall(sizes)
    inner = wall.studs + BOARD
    right = inner + REACH
    surface = sizes.roof_insulation + ROOM + REACH * sizes.fall
    head = surface + sizes.height - ROUND - ROOM
    bottom = -sizes.rafters - 500
    left, top = wall.face - 200, head + 260
    frame = box(left, bottom, right, top)
    sketch = Sketch("Parapet", frame, (right - 120, bottom + 100), (right - 120, top - 50))
    _structure(sketch, wall, (inner, head), sizes.rafters)
    _sheet(sketch, inner, head)
    levels = _Levels(sizes, inner + ROOM + ROUND, surface, head + ROOM)
    _insulation(sketch, wall, levels)
    _membrane(sketch, wall, levels)
    wall.screen(sketch, bottom, levels.top(wall.outer) - 20)
    return sketch


@dataclass(frozen=True, slots=True)
class _Levels:
    """Where the insulation's faces stand: of the parapet's inner face, the roof, and the cap."""

    sizes: Parameters
    face: float
    surface: float
    cap: float

    def roof(self, x: float) -> float:
        """The top of the roof's insulation."""
        return self.surface - (x - self.face) * self.sizes.fall

    def top(self, x: float) -> float:
        """The top of the insulation on the parapet, which falls to the roof."""
        return self.cap + ROUND + (self.face - x) * TOP_FALL


def _structure(sketch: Sketch, wall: Wall, corner: tuple[float, float], depth: float) -> None:
    inner, head = corner
    right, bottom = sketch.frame[1][0], sketch.frame[0][1]
    sketch.area("plywood", box(0, bottom, wall.board, head))
    sketch.area("plywood", box(wall.board, -18, right, 0))
    sketch.area("plywood", box(wall.studs, 0, inner, head))
    sketch.area("framing", box(wall.board, -18 - depth, right, -18))
    for level in (head - PLATE, 0.0, -18 - depth - PLATE):
        wall.plate(sketch, level)
    ceiling = -18 - depth - LINING
    sketch.area("gypsum-board", box(wall.room, ceiling, right, ceiling + LINING))
    sketch.area("gypsum-board", box(wall.studs, bottom, wall.room, ceiling))


def _sheet(sketch: Sketch, inner: float, head: float) -> None:
    """Draw the wall's sheet over the parapet, lapped over the one that comes up from the deck."""
    right, bottom = sketch.frame[1][0], sketch.frame[0][1]
    near, over = inner + ON, inner + ON + OVER
    up = [(-ON, bottom), (-ON, head + ON), (near, head + ON)]
    down = [(near, head - 40), (over, head - 54), (over, head - 64 - LAP)]
    sketch.line("self-adhered-sheet", [*up, *down])
    sketch.line("self-adhered-sheet", [(right, ON), (near, ON), (near, head - 62)])


def _insulation(sketch: Sketch, wall: Wall, levels: _Levels) -> None:
    right, bottom = sketch.frame[1][0], sketch.frame[0][1]
    face, start, cap = levels.face, levels.face - ROUND, levels.cap
    sketch.area("mineral-wool", box(wall.outer, bottom, -ROOM, cap))
    slope = [(right, levels.roof(right)), (face, levels.surface), (start, levels.surface)]
    sketch.area("pir", [(start, ROOM), (right, ROOM), *slope])
    sketch.area("pir", box(start, levels.surface, face, cap))
    top = [(face, levels.top(face)), (wall.outer, levels.top(wall.outer))]
    sketch.area("xps", [(wall.outer, cap), (face, cap), *top])


def _membrane(sketch: Sketch, wall: Wall, levels: _Levels) -> None:
    """Draw the roof's membrane up the parapet, the one over its top, and the coping."""
    right, face, outer = sketch.frame[1][0], levels.face + ON, wall.outer - ON
    high = levels.top(levels.face)
    roof = [(right, levels.roof(right) + ON), (face, levels.surface + ON), (face, high - 50)]
    sketch.line("single-ply-roofing", roof)
    out = [(outer, levels.cap - 60), (outer, levels.top(wall.outer) + ON), (face, high + ON)]
    down = [(face, high - 24), (face + OVER, high - 38), (face + OVER, high - 50 - LAP)]
    sketch.line("single-ply-roofing", [*out, *down])
    left, inner = wall.face - 20, face + 24
    low, up = levels.top(inner) + 24, levels.top(left) + 24
    metal = [(left - 8, up - 92), (left, up - 80), (left, up), (inner, low), (inner, low - 60)]
    sketch.line("coping", [*metal, (inner + 8, low - 72)])
