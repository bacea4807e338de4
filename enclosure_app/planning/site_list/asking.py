"""Which questions are asked of a product: its family decides, then how it is bonded."""

from collections.abc import Mapping
from types import MappingProxyType

from enclosure_app.model.product import Bond, Kind, Product
from enclosure_app.planning.site_list import questions as ask
from enclosure_app.planning.site_list.questions import Question

_COAT = (ask.CLEAN, ask.COAT_OVER_JOINT, ask.WET_THICKNESS, ask.NO_PINHOLES)

_BY_BOND: Mapping[Bond, tuple[Question, ...]] = MappingProxyType(
    {
        Bond.ADHERED: (ask.CLEAN, ask.PRESSED, ask.FLAT_EDGE),
        Bond.TAPE: (ask.CLEAN, ask.CENTRED, ask.PRESSED, ask.FLAT_EDGE, ask.TAPE_ENDS),
        Bond.SEALANT: (ask.CLEAN, ask.BACKING, ask.TOOLED, ask.BEAD_SIZE),
        Bond.FASTENED: (ask.FASTENERS, ask.CAPS, ask.NO_TEARS),
        Bond.FLUID: _COAT,
        Bond.LOOSE: (ask.NO_TEARS,),
        Bond.RIGID: (),
    }
)
_BY_KIND: Mapping[tuple[Kind, Bond], tuple[Question, ...]] = MappingProxyType(
    {
        (Kind.ROOFING, Bond.ADHERED): (ask.CLEAN, ask.SEAM, ask.FLAT_EDGE),
        (Kind.ROOFING, Bond.FASTENED): (ask.CLEAN, ask.SEAM, ask.FLAT_EDGE, ask.ROOF_FASTENERS),
        (Kind.UNDERLAYMENT, Bond.FASTENED): (ask.ROOF_FASTENERS, ask.CAPS, ask.NO_TEARS),
        (Kind.INSULATION, Bond.ADHERED): (ask.FOAM_FULL,),
        (Kind.INSULATION, Bond.LOOSE): (ask.TIGHT_BUTT,),
    }
)
_BY_FAMILY: Mapping[Kind, tuple[Question, ...]] = MappingProxyType(
    {
        Kind.GASKET: (ask.CLEAN, ask.SQUEEZED),
        Kind.SILL_PAN: (ask.FALL, ask.BACK_DAM, ask.END_DAM, ask.DRY_BEFORE_COVERED),
        Kind.DRIP_EDGE: (ask.DRIP, ask.LENGTHS, ask.EDGE_FIXED),
        Kind.FLASHING: (ask.FALL, ask.END_DAM, ask.DRIP, ask.LENGTHS),
    }
)


def of_product(product: Product) -> tuple[Question, ...]:
    """Return what to look at where a product makes a joint."""
    family = _BY_FAMILY.get(product.kind)
    return family or _BY_KIND.get((product.kind, product.bond)) or _BY_BOND[product.bond]
