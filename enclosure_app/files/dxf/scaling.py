"""What a DXF file holds, from drawing units to mm."""

from dataclasses import replace

from enclosure_app.files.dxf.raw import Raw, RawLeader, RawPath, RawText
from enclosure_app.model.place import Points


def scaled(points: Points, factor: float) -> Points:
    """Return points whose drawing units are `factor` mm in mm."""
    return points if factor == 1 else tuple((x * factor, y * factor) for x, y in points)


def in_mm(item: Raw, factor: float) -> Raw:
    """Return what was read with its lengths in mm; what a dimension measures stays as it was."""
    if factor == 1:
        return item
    if isinstance(item, RawPath):
        return replace(
            item,
            points=scaled(item.points, factor),
            width=item.width * factor,
            holes=tuple(scaled(hole, factor) for hole in item.holes),
        )
    if isinstance(item, RawLeader):
        return replace(item, points=scaled(item.points, factor))
    if isinstance(item, RawText):
        return replace(item, at=scaled((item.at,), factor)[0], height=item.height * factor)
    return item
