"""The sizes that a person gives for a ready-made part: ranges, and words for the form."""

from dataclasses import dataclass, field, fields

from enclosure_app.errors import EnclosureError
from enclosure_app.language import later, say


@dataclass(frozen=True, slots=True)
class Size:
    """One size as a form asks for it; `unit` is ``"mm"`` or ``"slope"`` (rise over run)."""

    name: str
    words: str
    low: float
    high: float
    usual: float
    unit: str


_OUT_OF_RANGE = later("{size} is {value:g} mm: choose between {low:g} and {high:g} mm.")
_TOO_STEEP_OR_FLAT = later("{size} is {value:g} in 1: choose between {low:g} and {high:g} in 1.")


def size(usual: float, low: float, high: float, words: str, unit: str = "mm") -> float:
    """Return a field of a parameters class: a size with its range and its words."""
    told = {"low": low, "high": high, "words": words, "unit": unit, "usual": usual}
    return field(default=usual, metadata=told)


@dataclass(frozen=True, slots=True)
class Parameters:
    """What every parameters class shares: each size lies in its range."""

    def __post_init__(self) -> None:
        """Refuse a size that is out of its range, in a sentence."""
        for each in sizes_of(type(self)):
            value = getattr(self, each.name)
            if not each.low <= value <= each.high:
                told = _OUT_OF_RANGE if each.unit == "mm" else _TOO_STEEP_OR_FLAT
                raise EnclosureError(
                    say(told, size=say(each.words), value=value, low=each.low, high=each.high)
                )


def sizes_of(kind: type[Parameters]) -> tuple[Size, ...]:
    """Return the sizes of a parameters class in the order in which a form asks for them."""
    told = [(each.name, each.metadata) for each in fields(kind)]
    return tuple(
        Size(name, own["words"], own["low"], own["high"], own["usual"], own["unit"])
        for name, own in told
    )


@dataclass(frozen=True, slots=True)
class WallSizes(Parameters):
    """The wall make-up that every part has: studs, board, sheet, insulation outside, cavity."""

    insulation: float = size(150, 60, 300, "Insulation outside the wall")
    studs: float = size(140, 89, 240, "Depth of the studs")
    board: float = size(12, 9, 22, "Thickness of the wall board")
    cavity: float = size(20, 12, 50, "Vented space behind the cladding")


@dataclass(frozen=True, slots=True)
class DeckSizes(WallSizes):
    """The wall's sizes and those of a roof that is insulated above its deck."""

    roof_insulation: float = size(160, 80, 300, "Insulation above the roof deck")
    rafters: float = size(235, 140, 300, "Depth of the rafters")


@dataclass(frozen=True, slots=True)
class RoofSizes(DeckSizes):
    """Those of a pitched roof."""

    pitch: float = size(0.5, 0.25, 1.2, "Pitch of the roof", "slope")
