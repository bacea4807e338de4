"""Flush eave: the roof ends at the cladding, with a drip edge that stands clear of it."""

from dataclasses import dataclass

from enclosure_app.planning.parts import eave
from enclosure_app.planning.parts.assembly import Sketch
from enclosure_app.planning.parts.parameters import RoofSizes, size


@dataclass(frozen=True, slots=True)
class Parameters(RoofSizes):
    """Sizes of a flush eave."""

    projection: float = size(25, 20, 80, "How far the roof boards stand past the cladding")


def draw(sizes: Parameters) -> Sketch:
    """Return the flush eave."""
    return eave.drawn("Flush eave", sizes, sizes.projection)
