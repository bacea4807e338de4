"""Places the content of inserts: scaled, turned, mirrored, tilted, nested and in arrays."""

from collections.abc import Iterator

from ezdxf.entities.insert import Insert
from ezdxf.math import Matrix44, Vec3
from ezdxf.xclip import XClip

from enclosure_app.files.dxf.placement import Placement
from enclosure_app.files.dxf.styles import Style
from enclosure_app.files.dxf.words import printable


def children(insert: Insert, style: Style, parent: Placement) -> Iterator[Placement]:
    """Yield the placement of the block's content for each place of the insert (or array)."""
    own = insert.matrix44()
    for place, shift, copy in _places(insert, parent):
        matrix = own @ shift if shift else own
        if parent.matrix is not None:
            matrix = matrix @ parent.matrix
        yield Placement(
            parent.sagitta,
            matrix,
            style,
            parent.block or printable(insert.dxf.name),
            place,
            copy,
        )


def attribute_placements(insert: Insert, style: Style, parent: Placement) -> Iterator[Placement]:
    """Yield the placement of the attributes, which lie in the coordinates around the insert."""
    for place, shift, copy in _places(insert, parent):
        matrix = parent.matrix
        if shift:
            matrix = shift if matrix is None else shift @ matrix
        block = parent.block or printable(insert.dxf.name)
        yield Placement(parent.sagitta, matrix, style, block, place, copy)


def is_clipped(insert: Insert) -> bool:
    """Return whether the drawing shows only a part of this insert."""
    if not insert.has_extension_dict:
        return False
    clip = XClip(insert)
    return clip.has_clipping_path and clip.is_clipping_enabled


def repeats(insert: Insert) -> int:
    """Return at how many places an insert stands (more than one in an array)."""
    rows, columns = int(insert.dxf.row_count), int(insert.dxf.column_count)
    return max(rows, 1) * max(columns, 1)


def _places(insert: Insert, parent: Placement) -> Iterator[tuple[str, Matrix44 | None, int]]:
    """Yield handle prefix, shift and running number; the grid turns but does not scale."""
    dxf = insert.dxf
    prefix = f"{parent.prefix}{dxf.handle}/"
    count = repeats(insert)
    if count == 1:
        yield prefix, None, parent.copy
        return
    ocs = insert.ocs()
    seen: set[Vec3] = set()
    for index in range(count):
        row, column = divmod(index, max(dxf.column_count, 1))
        step = Vec3(column * dxf.column_spacing, row * dxf.row_spacing).rotate_deg(dxf.rotation)
        if step in seen:
            continue
        seen.add(step)
        shift = ocs.to_wcs(step)
        copy = (parent.copy - 1) * count + index + 1
        yield prefix, Matrix44.translate(shift.x, shift.y, shift.z), copy
