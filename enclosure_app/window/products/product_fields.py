"""What a person typed of a product, checked, and the product that it makes."""

from collections.abc import Callable
from dataclasses import dataclass, replace
from typing import TypeVar

from enclosure_app.errors import EnclosureError, ListedError
from enclosure_app.files.maps.catalogue import USUAL_KINDS
from enclosure_app.language import say
from enclosure_app.model.drawing import Units
from enclosure_app.model.product import Bond, Control, Kind, Product
from enclosure_app.window.products.product_figures import (
    conductivity_text,
    read_conductivity,
    read_thickness,
    read_vapour,
    thickness_text,
    vapour_text,
)

T = TypeVar("T")

_NO_VAPOUR: tuple[float | None, float | None] = (None, None)
_FIGURES = {
    "min_lap": ("min_lap_mm",),
    "thickness": ("thickness_mm",),
    "vapour": ("permeance_ng", "sd_m"),
    "conductivity": ("conductivity",),
}


@dataclass(frozen=True, slots=True)
class Fields:
    """What stands in the fields of the form, as typed; `kind` None is the usual one of the bond."""

    name: str = ""
    controls: frozenset[Control] = frozenset()
    bond: Bond = Bond.FASTENED
    kind: Kind | None = None
    drawn: str = "line"
    min_lap: str = ""
    thickness: str = ""
    vapour: str = ""
    conductivity: str = ""
    source: str = ""
    confirmed: bool = False


def fields_of(product: Product, units: Units) -> Fields:
    """Return how a product stands in the form."""
    return Fields(
        name=product.name,
        controls=product.controls,
        bond=product.bond,
        kind=product.kind,
        drawn=product.drawn,
        min_lap=thickness_text(product.min_lap_mm, units),
        thickness=thickness_text(product.thickness_mm, units),
        vapour=vapour_text(product, units),
        conductivity=conductivity_text(product),
        source=product.source,
        confirmed=product.confirmed,
    )


def product_made(fields: Fields, key: str, units: Units, before: Product | None = None) -> Product:
    """Return the product that the fields describe.

    Args:
        fields: What stands in the form.
        key: The product's key.
        units: Those of the drawing, for bare numbers.
        before: The product that is changed; a figure whose text is as it was stays exactly so.

    Raises:
        ListedError: some of them cannot be; one sentence for each.
    """
    wrong: list[str] = []
    name = " ".join(fields.name.split())
    if not name:
        wrong.append(say("The product needs a name: type how the office calls it."))
    lap = _read(lambda: read_thickness(fields.min_lap, units, say("Least lap")), wrong, None)
    thick = _read(lambda: read_thickness(fields.thickness, units, say("Thickness")), wrong, None)
    vapour = _read(lambda: read_vapour(fields.vapour), wrong, _NO_VAPOUR)
    conductivity = _read(lambda: read_conductivity(fields.conductivity), wrong, None)
    if thick == 0:
        wrong.append(say("Thickness: a product cannot be 0 thick; leave it empty if unknown."))
    if conductivity == 0:
        wrong.append(say("Conductivity: it cannot be 0; leave it empty if unknown."))
    if fields.confirmed and not fields.source.strip():
        wrong.append(say("Say in which document the figures were read, or take the tick away."))
    if wrong:
        raise ListedError(tuple(wrong))
    made = Product(
        key=key,
        name=name,
        controls=fields.controls,
        bond=fields.bond,
        kind=fields.kind or USUAL_KINDS[fields.bond],
        drawn=fields.drawn,
        min_lap_mm=lap,
        thickness_mm=thick,
        permeance_ng=vapour[0],
        sd_m=vapour[1],
        conductivity=conductivity,
        source=fields.source.strip() or say("the office's own"),
        confirmed=fields.confirmed,
    )
    return _as_exact(made, before, fields, units) if before else made


def _as_exact(made: Product, before: Product, fields: Fields, units: Units) -> Product:
    """Return a product with the figures that nobody typed anew, before they were rounded."""
    shown = fields_of(before, units)
    kept = {
        name: getattr(before, name)
        for field, names in _FIGURES.items()
        if getattr(fields, field) == getattr(shown, field)
        for name in names
    }
    return replace(made, **kept)


def _read(read: Callable[[], T], wrong: list[str], otherwise: T) -> T:
    try:
        return read()
    except EnclosureError as error:
        wrong.append(str(error))
        return otherwise
