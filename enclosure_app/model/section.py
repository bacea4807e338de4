"""One section: the pieces inside one frame, the marks, and which way is down."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from types import MappingProxyType

from enclosure_app.model.place import Point, Points, Shape
from enclosure_app.model.product import Control, Product

DOWN: Point = (0.0, -1.0)


@dataclass(frozen=True, slots=True)
class Piece:
    """One drawn run of one product.

    `name` is unique in its section and comes from the drawing (the DXF handle of the first of
    `handles`, with a suffix where one entity gives several pieces). `product` is a product's key.
    """

    name: str
    product: str
    shape: Shape
    handles: tuple[str, ...] = ()
    layer: str = ""


@dataclass(frozen=True, slots=True)
class Stroke:
    """A piece of the office's own linework, shown and snapped to but never judged.

    What it is drawn like is kept, because a layer map may ask for it: `linetype`, `color` (the
    number of the drawing's palette), `block` ("" outside blocks), the drawn `width` in mm. A
    `filled` one is a patch; patches of one handle are an outline, then the holes in it.
    """

    points: Points
    layer: str = ""
    handle: str = ""
    linetype: str = "CONTINUOUS"
    color: int = 7
    block: str = ""
    width: float = 0.0
    filled: bool = False


@dataclass(frozen=True, slots=True)
class Text:
    """A text of the drawing; `height` in mm, `angle` in degrees anticlockwise."""

    text: str
    at: Point
    height: float = 0.0
    angle: float = 0.0
    layer: str = ""
    handle: str = ""


@dataclass(frozen=True, slots=True)
class Break:
    """Two break lines with a blank strip between.

    Material that ends on `near` goes on at `far`, in the same position across the strip:
    moved by the vector from the middle of `near` to the middle of `far`.
    """

    near: tuple[Point, Point]
    far: tuple[Point, Point]


@dataclass(frozen=True, slots=True)
class Section:
    """One drawn cut through the enclosure; every length is mm in the drawing's own coordinates.

    `frame` is a ring without a repeated first point. `gravity` is the unit vector that points
    down on the sheet, None for a plan. `sealed` names joints that a person declared sealed, as
    pairs of piece names in sorted order. `strokes` is the linework that is shown; `taken` what
    is drawn besides, whole: what pieces were made of, frames, breaks, what is to be ignored, and
    strokes of which the frame leaves only a part. `file` is the drawing that it was read from,
    as the person named it, "" for the project's `source`; it is not compared.
    """

    name: str
    frame: Points
    pieces: tuple[Piece, ...]
    products: Mapping[str, Product]
    inside: Points = ()
    outside: Points = ()
    gravity: Point | None = DOWN
    frame_drawn: bool = False
    breaks: tuple[Break, ...] = ()
    sealed: frozenset[tuple[str, str]] = frozenset()
    strokes: tuple[Stroke, ...] = ()
    texts: tuple[Text, ...] = ()
    taken: tuple[Stroke, ...] = ()
    file: str = field(default="", compare=False)
    by_name: Mapping[str, Piece] = field(
        init=False, repr=False, compare=False, default_factory=dict
    )

    @property
    def can_be_judged(self) -> bool:
        """Whether it has pieces, and a frame to judge them in."""
        return bool(self.pieces) and len(self.frame) > 2

    def __post_init__(self) -> None:
        """Index the pieces by name."""
        names = {piece.name: piece for piece in self.pieces}
        object.__setattr__(self, "by_name", MappingProxyType(names))

    def product(self, piece: Piece) -> Product:
        """Return what `piece` is made of."""
        return self.products[piece.product]

    def layer(self, control: Control) -> tuple[Piece, ...]:
        """Return the pieces whose product has `control`, in drawing order."""
        return tuple(p for p in self.pieces if control in self.products[p.product].controls)
