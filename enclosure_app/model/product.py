"""Products of the trade: what a piece is made of and what it does."""

from dataclasses import dataclass
from enum import StrEnum

from enclosure_app.language import later, say


class Control(StrEnum):
    """What a layer of the enclosure keeps apart."""

    WATER = "water"
    AIR = "air"
    VAPOUR = "vapour"
    HEAT = "heat"


_LAYERS = {
    Control.WATER: later("water layer"),
    Control.AIR: later("air layer"),
    Control.VAPOUR: later("vapour layer"),
    Control.HEAT: later("heat layer"),
}


def layer_words(control: Control) -> str:
    """Return how the layer of a control is called within a sentence: "air layer"."""
    return say(_LAYERS[control])


class Bond(StrEnum):
    """How a product is held, which decides whether its laps are sealed."""

    ADHERED = "adhered"
    FLUID = "fluid"
    FASTENED = "fastened"
    LOOSE = "loose"
    SEALANT = "sealant"
    TAPE = "tape"
    RIGID = "rigid"

    @property
    def seals(self) -> bool:
        """Whether the product itself seals a lap that it takes part in."""
        return self in (Bond.ADHERED, Bond.FLUID, Bond.SEALANT, Bond.TAPE)

    @property
    def seals_edges(self) -> bool:
        """Whether it also seals where it only touches, without a lap (a bead in a corner)."""
        return self in (Bond.FLUID, Bond.SEALANT, Bond.TAPE)


class Kind(StrEnum):
    """The family a product belongs to; rules ask for the family, never for one product."""

    SHEET = "sheet"  # wall membranes, housewraps, vapour retarders
    UNDERLAYMENT = "underlayment"  # roof underlayments and felts
    EAVE_MEMBRANE = "eave-membrane"  # ice barrier along the eave
    ROOFING = "roofing"  # low-slope roof membranes
    FLUID = "fluid"
    TAPE = "tape"
    SEALANT = "sealant"
    GASKET = "gasket"
    BOARD = "board"
    FLASHING = "flashing"
    DRIP_EDGE = "drip-edge"
    SILL_PAN = "sill-pan"
    INSULATION = "insulation"
    FRAMING = "framing"
    MASONRY = "masonry"
    CONCRETE = "concrete"
    GLASS = "glass"
    OPENING = "opening"  # window and door frames
    CLADDING = "cladding"  # also shingles, tiles and metal roofing
    MAT = "mat"
    AIR_SPACE = "air-space"
    PENETRATION = "penetration"  # pipes, ducts, beams that pass through a layer
    COLLAR = "collar"
    DRAIN = "drain"
    GROUND = "ground"


@dataclass(frozen=True, slots=True)
class Product:
    """What a piece is made of.

    `drawn` is ``"line"``, ``"area"`` or ``"either"``: how an office draws it. Thickness is mm,
    permeance ng/(Pa·s·m²), sd metres of still air, conductivity W/(m·K). A figure that is not
    `confirmed` is shown as such wherever it is applied.
    """

    key: str
    name: str
    controls: frozenset[Control]
    bond: Bond
    kind: Kind
    drawn: str = "line"
    min_lap_mm: float | None = None
    thickness_mm: float | None = None
    permeance_ng: float | None = None
    sd_m: float | None = None
    conductivity: float | None = None
    source: str = ""
    confirmed: bool = False


def is_glued_on(product: Product) -> bool:
    """Whether a product sticks to what it lies on with all its face: a tape, bead, coat or collar.

    Water does not get in behind its edge, so its laps have no wrong order.
    """
    glued = product.bond in (Bond.TAPE, Bond.SEALANT, Bond.FLUID)
    return glued or product.kind in (Kind.COLLAR, Kind.GASKET)
