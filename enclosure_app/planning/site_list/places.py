"""A place of the site list, and the drawn section that places are found in."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from math import inf
from types import MappingProxyType

import numpy as np

from enclosure_app.geometry.runs.polyline import as_array, as_points, point_at, positions
from enclosure_app.language import say
from enclosure_app.model.finding import begun
from enclosure_app.model.limits import Limits
from enclosure_app.model.place import Area, Line, Point, Points
from enclosure_app.model.pose import Pose, settle
from enclosure_app.model.product import Bond, Control, Kind, Product
from enclosure_app.model.report import Joint, LayerResult, SectionResult
from enclosure_app.network.network import Network
from enclosure_app.network.order import Order
from enclosure_app.network.walk import along_walk
from enclosure_app.planning.site_list.questions import Question


@dataclass(frozen=True, slots=True)
class SitePlace:
    """One place to look at.

    `key` is made of named pieces and their parts, never of coordinates. `extent` are the lines
    that show it, `along` how far along the walk of its first control it lies, mm. The questions
    are said in the language spoken.
    """

    key: str
    title: str
    controls: tuple[Control, ...]
    pieces: tuple[str, ...]
    at: Point
    along: float
    questions: tuple[Question, ...]
    extent: tuple[Points, ...] = ()
    cautions: tuple[str, ...] = ()

    @property
    def items(self) -> tuple[tuple[str, Question], ...]:
        """What is looked at here, each with the key that what was seen of it is kept by."""
        return tuple((f"{self.key}:{question.name}", question) for question in self.questions)

    def joined(self, other: "SitePlace") -> "SitePlace":
        """Return the place with the controls, pieces and questions of another that is the same."""
        controls = {*self.controls, *other.controls}
        asked = {question.name for question in self.questions}
        more = tuple(question for question in other.questions if question.name not in asked)
        return replace(
            self,
            controls=tuple(control for control in Control if control in controls),
            pieces=tuple(dict.fromkeys((*self.pieces, *other.pieces))),
            questions=(*self.questions, *more),
        )


@dataclass(frozen=True, slots=True)
class Drawn:
    """A section that was checked, with what names its pieces and their parts.

    `named` holds the section with gravity along -y; it was not questioned anew, and has no layers.
    """

    result: SectionResult
    limits: Limits
    named: Network
    pose: Pose

    def product(self, name: str) -> Product:
        """Return what a piece is made of."""
        return self.named.product(name)

    def words(self, name: str) -> str:
        """Return a builder's words for a piece, as they stand within a sentence."""
        return self.named.words(name)

    def part(self, name: str, at: Point) -> str:
        """Return a piece's name and which part of it lies at a place of the drawing."""
        return self.named.part(name, self.pose.settled(at))

    def parts(self, names: Iterable[str], at: Point) -> str:
        """Return the parts of several pieces at a place, as a key has them."""
        return "+".join(sorted(self.part(name, at) for name in names))

    @property
    def upright(self) -> bool:
        """Whether gravity acts in the section; in a plan it does not."""
        return self.result.section.gravity is not None

    @property
    def walked(self) -> tuple[LayerResult, ...]:
        """The layers that have a walk, in the order of the controls."""
        layers = self.result.layers
        return tuple(layers[c] for c in Control if c in layers and layers[c].walk)

    def along(self, controls: Iterable[Control], at: Point) -> float:
        """Return how far along the first of the controls' walks a place lies, mm."""
        among = set(controls)
        layer = next((each for each in self.walked if each.control in among), None)
        walks = layer or next(iter(self.walked), None)
        return float(along_walk(walks.walk, np.array([at]))[0]) if walks else 0.0

    def slope(self, run: Points) -> float:
        """Return rise over run of a line of the drawing; inf where it is plumb."""
        (x, y), (u, v) = self.pose.settled(run[0]), self.pose.settled(run[-1])
        return abs(v - y) / abs(u - x) if abs(u - x) > 1e-9 * abs(v - y) else inf


def drawn(result: SectionResult, limits: Limits) -> Drawn:
    """Return a checked section with what names its pieces."""
    settled, pose = settle(result.section)
    named = Network(settled, limits.tolerances, MappingProxyType({}), None, Order())
    return Drawn(result, limits, named, pose)


def joints_walked(layer: LayerResult) -> list[Joint]:
    """Return the joints of a layer that its pen goes through or past: both pieces are followed."""
    followed = set(layer.pieces)
    return [j for j in layer.joints if j.on_trace or {j.a, j.b} <= followed]


def is_bead(product: Product) -> bool:
    """Whether a product is a tape, a bead, a gasket or a collar: it joins others."""
    tape = product.bond in (Bond.TAPE, Bond.SEALANT)
    return tape or product.kind in (Kind.GASKET, Kind.COLLAR)


def said(questions: Iterable[Question], **places: str) -> tuple[Question, ...]:
    """Return questions in the language spoken, each once."""
    return tuple({q.name: q.said(**places) for q in questions}.values())


def lines_of(section: Drawn, names: Iterable[str]) -> tuple[Points, ...]:
    """Return the lines that show pieces: their runs, or the outlines of areas."""
    shapes = [section.result.section.by_name[name].shape for name in names]
    return tuple(_line(shape) for shape in shapes)


def _line(shape: Line | Area) -> Points:
    if isinstance(shape, Area):
        return (*shape.outer, shape.outer[0])
    return (*shape.points, shape.points[0]) if shape.closed else shape.points


def middle(points: Points) -> Point:
    """Return the place half way along a line."""
    line = as_array(points)
    return as_points(point_at(line, positions(line)[-1] / 2))[0]


def centre(places: Sequence[Point]) -> Point:
    """Return the mean of some places."""
    xs, ys = zip(*places, strict=True)
    return sum(xs) / len(xs), sum(ys) / len(ys)


def listed(section: Drawn, names: Sequence[str]) -> str:
    """Return the words for one, two or more pieces, each kind of product once."""
    words = list(dict.fromkeys(section.words(name) for name in names))
    if len(words) < 2:
        return words[0] if words else ""
    return say("{first} and {second}", first=words[0], second=words[1])


def title(text: str) -> str:
    """Return words as the title of a place."""
    return begun(text)
