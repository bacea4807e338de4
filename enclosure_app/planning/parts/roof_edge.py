"""What eave and rake share: where the roof sits on the wall, and its sheet goes over the wall's."""

from enclosure_app.planning.parts.assembly import (
    DECK,
    LINING,
    NAIL_BASE,
    ON,
    OVER,
    PLATE,
    Roof,
    Sketch,
    Wall,
    box,
)

WALL = 620.0  # mm of wall below the rafters' seat
INSIDE = 1100.0  # mm of roof inside the room's face
SOFFIT, OUTRIGGER = 11.0, 75.0  # mm of thickness and of depth
LAP = 160.0  # mm of roof sheet over wall sheet


def begun(name: str, wall: Wall, roof: Roof, edge: float) -> Sketch:
    """Return a sketch whose nail base ends at x = `edge`, with all but what stands on that."""
    right = wall.room + INSIDE
    bottom = seat_of(wall, roof) - WALL
    left, top = edge - 200, roof.at(right, roof.top)[1] + 150
    frame = box(left, bottom, right, top)
    sketch = Sketch(name, frame, (wall.room + 60, bottom + 60), (left + 40, top - 60))
    _structure(sketch, wall, roof, right)
    _insulation(sketch, wall, roof, edge)
    _sheets(sketch, roof)
    _fascia(sketch, wall, roof, edge)
    return sketch


def seat_of(wall: Wall, roof: Roof) -> float:
    """Return the height at which the rafters sit on the plates."""
    return roof.at(wall.studs, -DECK - roof.sizes.rafters)[1]


def _structure(sketch: Sketch, wall: Wall, roof: Roof, right: float) -> None:
    seat, bottom = seat_of(wall, roof), sketch.frame[0][1]
    under = -DECK - roof.sizes.rafters
    sketch.area("plywood", roof.slab(0, right, -DECK, 0))
    board = [(0, bottom), (wall.board, bottom), roof.at(wall.board, -DECK), roof.at(0, -DECK)]
    sketch.area("plywood", board)
    heel = [(wall.board, seat), (wall.studs, seat), roof.at(right, under), roof.at(right, -DECK)]
    sketch.area("framing", [*heel, roof.at(wall.board, -DECK)])
    wall.plate(sketch, seat - PLATE)
    wall.plate(sketch, seat - 2 * PLATE)
    sketch.area("gypsum-board", roof.slab(wall.room, right, under - LINING, under))
    top = roof.at(wall.room, under - LINING)[1]
    sketch.area("gypsum-board", box(wall.studs, bottom, wall.room, top))


def _insulation(sketch: Sketch, wall: Wall, roof: Roof, edge: float) -> None:
    bottom, right = sketch.frame[0][1], sketch.frame[1][0]
    low, high = roof.insulation
    sketch.area("pir", roof.slab(wall.outer, right, low, high))
    corners = (roof.at(wall.outer + wall.sizes.insulation, low), roof.at(wall.outer, low))
    inner = wall.outer + wall.sizes.insulation
    sketch.area("mineral-wool", [(wall.outer, bottom), (inner, bottom), *corners])
    roof.nail_base(sketch, edge, right)
    roof.roofing(sketch, edge - 28, right)


def _sheets(sketch: Sketch, roof: Roof) -> None:
    bottom, right = sketch.frame[0][1], sketch.frame[1][0]
    fold = -90.0
    sketch.line("self-adhered-sheet", [(-ON, bottom), (-ON, fold - 24)])
    over = -ON - OVER
    down = [(-ON, fold), (over, fold - 14), (over, fold - 24 - LAP)]
    sketch.line("self-adhered-underlayment", [roof.at(right, ON), roof.at(-ON, ON), *down])


def _fascia(sketch: Sketch, wall: Wall, roof: Roof, edge: float) -> None:
    """Draw the board under the edge, outriggers and soffit behind it, and the wall's cladding."""
    under = roof.top - NAIL_BASE - 0.5
    foot = roof.at(edge, under)[1] - 130
    level = min(foot + 30, roof.at(wall.outer, roof.insulation[0])[1] - 20)
    foot = min(foot, level - 19)
    inner = edge + 20
    board = [(edge, foot), (inner, foot), roof.at(inner, under), roof.at(edge, under)]
    sketch.area("fascia-board", board)
    wall.screen(sketch, sketch.frame[0][1], level)
    if inner < wall.face - SOFFIT:
        sketch.area("framing", roof.slab(inner, wall.outer - 1, under - OUTRIGGER, under))
        sketch.area("soffit", box(inner, level + 1, wall.outer, level + SOFFIT))
