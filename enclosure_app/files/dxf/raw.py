"""What a DXF file holds once entities are plain numbers, before anybody says what it means.

Coordinates are drawing units (not yet mm), in the world's x and y.
"""

from dataclasses import dataclass

from enclosure_app.model.place import Point, Points


@dataclass(frozen=True, slots=True)
class Tag:
    """Where an entity stands in the drawing and how it is drawn.

    Properties are resolved (ByLayer and ByBlock replaced). `block` is the name of the outermost
    block the entity came in, "" for none. `handle` is unique in one reading: the entity's handle,
    with the insert's handle before it (``"2F/3A"``) and ``"#2"`` behind it for a repeat in an array.
    """

    kind: str
    handle: str
    layer: str
    linetype: str = "CONTINUOUS"
    color: int = 7
    block: str = ""


@dataclass(frozen=True, slots=True)
class RawPath:
    """A flattened curve or boundary.

    `closed` rings do not repeat the first point. `width` is the drawn constant width. A `filled`
    path (hatch, solid, wide polyline of varying width) is a region with `holes`.
    """

    tag: Tag
    points: Points
    closed: bool = False
    width: float = 0.0
    filled: bool = False
    holes: tuple[Points, ...] = ()


@dataclass(frozen=True, slots=True)
class RawText:
    """One text as read (formatting codes removed, lines joined by newlines)."""

    tag: Tag
    text: str
    at: Point
    height: float = 0.0
    angle: float = 0.0


@dataclass(frozen=True, slots=True)
class RawDimension:
    """One dimension: what it measures between, and what it says (the text may be overridden)."""

    tag: Tag
    measured: float
    text: str
    at: Point
    factor: float = 1.0


@dataclass(frozen=True, slots=True)
class RawLeader:
    """One leader: its arrow tip first, then its bends, and its text where it has one."""

    tag: Tag
    points: Points
    text: str = ""


Raw = RawPath | RawText | RawDimension | RawLeader
