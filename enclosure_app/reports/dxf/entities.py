"""The plain entities that marks in a drawing are made of, and their groups in every version.

LINE, LWPOLYLINE (from R14 on), CIRCLE and TEXT, whose groups stand in the DXF reference.
Each carries extended data: under this program's name what it shows, and, where it belongs to a
finding, a hyperlink under PE_URL, as CAD programs keep them.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from itertools import pairwise

from enclosure_app.files.dxf.own_marks import APPLICATION
from enclosure_app.files.dxf.records import R12, R14, R2000
from enclosure_app.model.place import Point, Points
from enclosure_app.reports.dxf.tags import Tags, plain, shortened

HYPERLINK = "PE_URL"


@dataclass(frozen=True, slots=True)
class Told:
    """What a mark shows (a finding's key, or words such as ``lift air``) and where its link leads.

    `words` are shown when one points at it; without a `link` it has none.
    """

    source: str
    link: str = ""
    words: str = ""


@dataclass(frozen=True, slots=True)
class Way:
    """A line along `points`, in drawing units; `weight` is its width in mm on paper, 0 the layer's."""

    layer: str
    points: Points
    told: Told
    closed: bool = False
    weight: float = 0.0


@dataclass(frozen=True, slots=True)
class Ring:
    """A circle, in drawing units."""

    layer: str
    centre: Point
    radius: float
    told: Told
    weight: float = 0.0


@dataclass(frozen=True, slots=True)
class Words:
    """One line of text on its base line, or about its middle where it is `centred`."""

    layer: str
    text: str
    at: Point
    height: float
    told: Told
    centred: bool = False


Shape = Way | Ring | Words


@dataclass(frozen=True, slots=True)
class Host:
    """The drawing that entities go into: its version, and what owns them there, "" for nobody."""

    version: str
    owner: str = ""
    on_paper: bool = False


@dataclass(frozen=True, slots=True)
class Entity:
    """One entity: its groups without a handle, which goes in after the first of them."""

    tags: Tags

    def numbered(self, handle: str) -> Tags:
        """Return the groups with a handle."""
        return [self.tags[0], (5, handle), *self.tags[1:]]


def entities(shape: Shape, host: Host) -> Iterator[Entity]:
    """Yield the entities that a shape comes to."""
    match shape:
        case Way():
            yield from _way(shape, host)
        case Ring():
            x, y = shape.centre
            round_one = [(10, float(x)), (20, float(y)), (30, 0.0), (40, float(shape.radius))]
            yield _entity("CIRCLE", shape, host, [*_marker("AcDbCircle", host), *round_one])
        case Words():
            yield _entity("TEXT", shape, host, _text(shape, host))


def _way(shape: Way, host: Host) -> Iterator[Entity]:
    """Yield a polyline, or lines where it is a single one or there is no such thing yet.

    The polyline of older versions is a chain of entities, of which readers number some anew.
    """
    if len(shape.points) > 2 and host.version >= R14:
        corners: Tags = [(90, len(shape.points)), (70, int(shape.closed))]
        for x, y in shape.points:
            corners += [(10, float(x)), (20, float(y))]
        yield _entity("LWPOLYLINE", shape, host, [*_marker("AcDbPolyline", host), *corners])
        return
    last = shape.points[:1] if shape.closed else ()
    for (a, b), (c, d) in pairwise((*shape.points, *last)):
        ends = [(10, a), (20, b), (30, 0.0), (11, c), (21, d), (31, 0.0)]
        groups: Tags = [(code, float(value)) for code, value in ends]
        yield _entity("LINE", shape, host, [*_marker("AcDbLine", host), *groups])


def _text(shape: Words, host: Host) -> Tags:
    x, y = float(shape.at[0]), float(shape.at[1])
    groups: Tags = [*_marker("AcDbText", host), (10, x), (20, y), (30, 0.0)]
    groups += [(40, float(shape.height)), (1, shortened(plain(shape.text)))]
    if shape.centred:
        groups += [(72, 1), (11, x), (21, y), (31, 0.0)]
    groups += _marker("AcDbText", host)
    return [*groups, (73, 2)] if shape.centred else groups


def _entity(kind: str, shape: Shape, host: Host, own: Tags) -> Entity:
    head: Tags = [(0, kind)]
    if host.version > R12 and host.owner:
        head.append((330, host.owner))
    head += _marker("AcDbEntity", host)
    if host.on_paper:
        head.append((67, 1))
    head.append((8, shape.layer))
    weight = 0.0 if isinstance(shape, Words) else shape.weight
    if weight and host.version >= R2000:
        head.append((370, round(weight * 100)))
    return Entity([*head, *own, *_extended(shape.told)])


def _extended(told: Told) -> Tags:
    tags: Tags = [(1001, APPLICATION), (1000, shortened(plain(told.source)))]
    if told.link:
        tags += [(1001, HYPERLINK), (1000, shortened(plain(told.link)))]
        tags += [(1002, "{"), (1000, shortened(plain(told.words))), (1002, "}")]
    return tags


def _marker(name: str, host: Host) -> Tags:
    """Return the marker of a class, which R13 brought."""
    return [(100, name)] if host.version > R12 else []
