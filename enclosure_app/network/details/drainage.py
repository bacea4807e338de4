"""How a lap drains: whether its order matters, and whether it is the wrong way round."""

from math import dist, radians, tan

from enclosure_app.language import say
from enclosure_app.model.limits import Limit, Limits
from enclosure_app.model.product import Bond, Control, Kind, Product, is_glued_on
from enclosure_app.network.joints.laps import Lap
from enclosure_app.network.network import Network

METAL = frozenset({Kind.FLASHING, Kind.DRIP_EDGE, Kind.SILL_PAN})
STEEP_ROOF = frozenset({Kind.UNDERLAYMENT, Kind.EAVE_MEMBRANE})
"""Sheets that no roof flatter than the coverings on them allow carries."""
STEEP = tan(radians(60.0))
"""From this slope on a face is a wall."""
DRAWN = 1e-4
"""Slopes nearer than this are one slope: drawn coordinates are rounded (2:12 as 0.16664)."""
COVER = 50.0  # mm: how far from a sheet's upper end the sheet that covers it may begin


def is_sheet_lap(network: Network, lap: Lap) -> bool:
    """Whether both sides are sheets in the roofer's sense: no tape, bead, coating or collar."""
    products = (network.product(lap.outer.name), network.product(lap.inner.name))
    return not any(is_glued_on(product) for product in products)


def is_level(network: Network, lap: Lap) -> bool:
    """Whether no order of the two sheets would drain: too flat, with the outside above."""
    if network.section.gravity is None or lap.slope >= network.tolerances.level - DRAWN:
        return False
    return lap.outward is None or lap.outward[1] > 0


def is_reversed(network: Network, lap: Lap) -> bool:
    """Whether water running down gets in behind the lower sheet."""
    if network.section.gravity is None or lap.outward is None or lap.underside:
        return False
    if not is_sheet_lap(network, lap):
        return False
    if is_level(network, lap):
        return is_buried_edge_metal(network, lap)
    return lap.upper is lap.inner and not _covered(network, lap)


def is_buried_edge_metal(network: Network, lap: Lap) -> bool:
    """Whether an edge metal lies under the sheet along a level edge, as at a rake.

    At an eave the roof falls towards the metal and the sheet goes over it; along a rake the
    section shows the roof level, and the metal goes over the sheet.
    """
    inner, outer = network.product(lap.inner.name), network.product(lap.outer.name)
    return inner.kind is Kind.DRIP_EDGE and outer.kind not in METAL


def is_rake(network: Network, lap: Lap) -> bool:
    """Whether an edge metal lies over a steep roof's underlayment along a level edge.

    The section cuts the roof along a contour there: the roof falls out of the drawing's plane, so
    that the lap drains although it is drawn level.
    """
    inner, outer = network.product(lap.inner.name), network.product(lap.outer.name)
    return outer.kind is Kind.DRIP_EDGE and inner.kind in STEEP_ROOF


def are_neighbours(network: Network, control: Control, lap: Lap) -> bool:
    """Whether no third sheet of the layer lies between the two, joined to both.

    Of three sheets lapped in one place like shingles (a roof's leg, the counter-flashing over it,
    the wall's sheet over that) the first and the last also run side by side, but are no joint of
    each other. A flashing's leg that only comes in between two sheets leaves them neighbours.
    """
    layer = network.layers[control]
    over_inner = layer.laps_over(lap.inner.name)
    return not any(
        _carries_on(network, first, lap) and _carries_on(network, second, lap)
        for first in over_inner
        for second in layer.laps_over(first.outer.name)
        if second.outer.name == lap.outer.name
    )


def _carries_on(network: Network, other: Lap, lap: Lap) -> bool:
    """Whether at another lap in the place of `lap` the outer sheet takes over uphill."""
    near = dist(other.at, lap.at) <= (other.length + lap.length) / 2
    onwards = other.outer.goes_up and other.inner.goes_down
    back = other.outer.goes_down and other.inner.goes_up
    return near and onwards and not back and is_sheet_lap(network, other)


def _covered(network: Network, lap: Lap) -> bool:
    """Whether a third sheet laps over the exposed upper end of the lower, outer sheet."""
    top = lap.outer.run[-1]
    return any(
        other.outward is not None
        and other.outer.goes_up
        and not other.inner.goes_up
        and dist(other.inner.run[-1], top) <= COVER
        for other in network.layers[Control.WATER].laps_over(lap.outer.name)
    )


def required_lap(network: Network, lap: Lap, limits: Limits) -> Limit:
    """Return the least length of a lap: the product's own, else the rule book's for the place."""
    outer, inner = network.product(lap.outer.name), network.product(lap.inner.name)
    metal = [product for product in (outer, inner) if product.kind in METAL]
    own = [p for p in metal or (outer, inner) if p.min_lap_mm is not None]
    if own:
        return max((_own_lap(product) for product in own), key=lambda limit: limit.value)
    if metal:
        return limits.figure("flashing-lap")
    return limits.figure(_place_figure(network, lap, limits, outer))


def _own_lap(product: Product) -> Limit:
    return Limit(
        "own-lap",
        product.min_lap_mm or 0.0,
        say(
            "least lap of {product}: {source}",
            product=say(product.name),
            source=say(product.source),
        ),
        confirmed=product.confirmed,
    )


def _place_figure(network: Network, lap: Lap, limits: Limits, outer: Product) -> str:
    if Control.WATER not in outer.controls:
        return "air-lap" if Control.AIR in outer.controls else "below-grade-lap"
    if network.section.gravity is None:
        return "wall-end-lap"
    if lap.slope >= STEEP:
        return "wall-lap"
    return _roof_figure(lap, limits, outer)


def _roof_figure(lap: Lap, limits: Limits, outer: Product) -> str:
    if outer.kind is Kind.ROOFING or lap.slope < limits.figure("roof-minimum-slope").value - DRAWN:
        return "low-slope-lap"
    if outer.bond is Bond.ADHERED:
        return "roof-lap-adhered"
    steep = lap.slope >= limits.figure("roof-lap-low-slope-limit").value - DRAWN
    return "roof-lap" if steep else "roof-lap-low"
