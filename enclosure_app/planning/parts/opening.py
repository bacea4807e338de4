"""What the sill and the head of a window share: the unit at the plane of the wall board."""

from dataclasses import dataclass

from enclosure_app.model.product import Bond, Control, Kind, Product
from enclosure_app.planning.parts.assembly import Sketch
from enclosure_app.planning.parts.parameters import WallSizes, size

UNIT = Product(
    key="window-unit",
    name="Window unit with insulating glass and thermal break",
    controls=frozenset(Control),
    bond=Bond.RIGID,
    kind=Kind.OPENING,
    drawn="area",
    source="common practice, no source",
)
OUT = -50.0  # the outer face of the window frame
RAIL = 80.0
PANE = 36.0


@dataclass(frozen=True, slots=True)
class Parameters(WallSizes):
    """Sizes of a window in the wall."""

    frame: float = size(85, 78, 90, "Depth of the window frame")

    @property
    def back(self) -> float:
        """The inner face of the window frame."""
        return OUT + self.frame


def unit(sketch: Sketch, back: float, edges: tuple[float, float], cut: float) -> None:
    """Draw the window, from its rail's edge (outside, inside) to where the frame cuts the pane."""
    outer, inner = edges
    up = 1.0 if cut > outer else -1.0
    pane = (OUT + back) / 2
    left, right = pane - PANE / 2, pane + PANE / 2
    seat = outer + RAIL * up
    drop = 6.0
    sketch.own[UNIT.key] = UNIT
    sketch.area(
        UNIT.key,
        [(OUT, outer), (back, inner), (back, seat - drop), (right, seat), (right, cut),
         (left, cut), (left, seat), (OUT, seat - drop)],
    )  # fmt: skip
