"""Reads texts, dimensions and leaders: what a drawing says rather than shows."""

import math
from collections.abc import Callable, Iterable, Iterator
from typing import Any

from ezdxf.document import Drawing
from ezdxf.entities.attrib import Attrib
from ezdxf.entities.dimension import Dimension
from ezdxf.entities.leader import Leader
from ezdxf.entities.mleader import MultiLeader
from ezdxf.entities.mtext import MText
from ezdxf.entities.text import Text
from ezdxf.lldxf.const import DXFError, DXFTableEntryError
from ezdxf.math import Vec3
from ezdxf.tools.text import fast_plain_mtext

from enclosure_app.files.dxf.placement import Placement
from enclosure_app.files.dxf.raw import Raw, RawDimension, RawLeader, RawText, Tag
from enclosure_app.files.dxf.words import printable

Reader = Callable[[Any, Tag, Placement], Iterable[Raw]]

_LEFT_ON_BASELINE = (0, 0)
_STRETCHED_BETWEEN = (3, 5)
_ANGULAR = (2, 5, 8)
_ORDINATE = 6
_ALONG_X = 64


def texts(entity: Text, tag: Tag, placement: Placement) -> Iterator[Raw]:
    """Yield a TEXT or ATTRIB; its place is the point that it is aligned to."""
    if isinstance(entity, Attrib) and entity.has_embedded_mtext_entity:
        yield from paragraphs(entity.virtual_mtext_entity(), tag, placement)
        return
    dxf = entity.dxf
    halign, valign = dxf.get("halign", 0), dxf.get("valign", 0)
    plain = (halign, valign) == _LEFT_ON_BASELINE or halign in _STRETCHED_BETWEEN
    at = dxf.insert if plain else dxf.get("align_point", dxf.insert)
    plane = placement.plane(dxf.get("extrusion"), Vec3(at).z)
    yield RawText(
        tag,
        printable(entity.plain_text()),
        plane.point(at.x, at.y),
        float(dxf.height) * plane.scale,
        plane.angle(dxf.rotation),
    )


def paragraphs(entity: MText, tag: Tag, placement: Placement) -> Iterator[Raw]:
    """Yield an MTEXT, the text of all its columns joined."""
    dxf = entity.dxf
    plane = placement.plane(dxf.get("extrusion"))
    direction = dxf.get("text_direction")
    if direction is not None:
        start, end = placement.world((Vec3(0, 0, 0), Vec3(direction)))
        angle = round(math.degrees(math.atan2(end[1] - start[1], end[0] - start[0])), 9) % 360.0
    else:
        angle = plane.angle(dxf.get("rotation", 0.0))
    text = entity.all_columns_plain_text()
    at = placement.world((dxf.insert,))[0]
    yield RawText(tag, printable(str(text)), at, float(dxf.char_height) * plane.scale, angle)


def dimension(entity: Dimension, tag: Tag, placement: Placement) -> Iterator[Raw]:
    """Yield a dimension: degrees for an angle, else the length in drawing units as it is placed.

    `factor` is what the shown number is multiplied by. The text is what the drawing shows; where
    it holds no picture of the dimension, it is put together from the override and the number.
    """
    plane = placement.plane()
    kind = entity.dimtype
    measured = _measured(entity)
    factor = 1.0
    if kind not in _ANGULAR:
        measured *= plane.scale
        factor = _factor(entity)
    at = entity.dxf.get("text_midpoint")
    if at is None:
        place = placement.world((entity.dxf.get("defpoint", Vec3()),))[0]
    else:
        own = placement.plane(entity.dxf.get("extrusion"), at.z)
        place = own.point(at.x, at.y)
    text = _shown(entity) or _written(entity, measured * factor)
    yield RawDimension(tag, measured, printable(text), place, factor)


def dimension_kind(entity: Dimension) -> str:
    """Return ``DIMENSION`` for lengths, and a name of their own for angles and ordinates."""
    if entity.dimtype in _ANGULAR:
        return "ANGULAR_DIMENSION"
    return "ORDINATE_DIMENSION" if entity.dimtype == _ORDINATE else "DIMENSION"


def leader(entity: Leader, tag: Tag, placement: Placement) -> Iterator[Raw]:
    """Yield a LEADER with the text it is tied to (which is delivered as a text as well)."""
    points = placement.world(Vec3.generate(entity.vertices))
    if len(points) > 1:
        yield RawLeader(tag, tuple(points), _annotation(entity))


def multileader(entity: MultiLeader, tag: Tag, placement: Placement) -> Iterator[Raw]:
    """Yield one leader for each arrow of a MULTILEADER; one without arrows is a text."""
    context = entity.context
    text = _multileader_text(entity)
    drawn = False
    for part in context.leaders:
        for line in part.lines:
            points = placement.world([*line.vertices, part.last_leader_point])
            if len(points) > 1:
                drawn = True
                yield RawLeader(tag, tuple(points), text)
    if text and not drawn:
        at = context.mtext.insert if context.mtext else context.base_point
        yield RawText(tag, text, placement.world((at,))[0], float(context.char_height))


def _multileader_text(entity: MultiLeader) -> str:
    if entity.context.mtext:
        return printable(str(fast_plain_mtext(entity.context.mtext.default_content)))
    return printable("\n".join(attribute.text for attribute in entity.block_attribs))


def _annotation(entity: Leader) -> str:
    document = entity.doc
    handle = entity.dxf.get("annotation_handle")
    note = document.entitydb.get(handle) if document and handle else None
    if isinstance(note, MText | Text):
        return printable(str(note.plain_text()))
    return ""


def _measured(entity: Dimension) -> float:
    try:
        value = entity.get_measurement()
    except (DXFError, TypeError, ValueError, ZeroDivisionError):
        return float(entity.dxf.get("actual_measurement", 0.0))
    if isinstance(value, Vec3):
        return float(value.x if entity.dxf.dimtype & _ALONG_X else value.y)
    return float(value)


def _factor(entity: Dimension) -> float:
    """Return DIMLFAC; a negative one counts only in paper space."""
    try:
        factor = float(entity.override().get("dimlfac", 1.0) or 1.0)
    except DXFTableEntryError:  # the dimension's style is missing from the file
        return 1.0
    return factor if factor > 0 else 1.0


def _shown(entity: Dimension) -> str:
    """Return the texts of the dimension's own picture."""
    document: Drawing | None = entity.doc
    block = document.blocks.get(entity.dxf.get("geometry", "")) if document else None
    if block is None:
        return ""
    notes = (item for item in block if isinstance(item, MText | Text))
    return "\n".join(filter(None, (str(item.plain_text()).strip() for item in notes)))


def _written(entity: Dimension, number: float) -> str:
    text = str(fast_plain_mtext(entity.dxf.get("text", "") or "<>"))
    return text.replace("<>", f"{number:.6g}").strip()


READERS: dict[str, Reader] = {
    "TEXT": texts,
    "MTEXT": paragraphs,
    "DIMENSION": dimension,
    "ARC_DIMENSION": dimension,
    "LARGE_RADIAL_DIMENSION": dimension,
    "LEADER": leader,
    "MULTILEADER": multileader,
    "MLEADER": multileader,
}
