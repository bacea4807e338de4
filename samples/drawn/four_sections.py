"""One sheet with four sections, drawn in metres: eave, ridge, roof to wall, parapet."""

from drawn import eave_flush, parapet, ridge, roof_to_wall
from drawn.office import SECOND
from drawn.sheet import Sheet


def draw(faulty: bool) -> Sheet:
    """Draw the sheet; the faulty one has a fault in three of its sections."""
    s = Sheet(SECOND, "Roof sections", version="R2013", unit_mm=1000.0, scale=10)
    s.origin = (20_260.0, 10_900.0)
    eave_flush.section(s, short_cover=faulty)
    s.origin = (23_100.0, 11_000.0)
    ridge.section(s, lap=42.0 if faulty else 210.0)
    s.origin = (20_820.0, 9_000.0)
    roof_to_wall.section(s)
    s.origin = (22_600.0, 9_000.0)
    parapet.section(s, flat_top=faulty)
    s.origin = (24_200.0, 8_180.0)
    s.title_block((0.0, 0.0), "10", "1:10")
    return s
