"""What a bond seals."""

import pytest

from enclosure_app.model.product import Bond, Kind, Product, is_glued_on


@pytest.mark.parametrize(
    ("bond", "seals", "seals_edges"),
    [
        ("adhered", True, False),
        ("fluid", True, True),
        ("sealant", True, True),
        ("tape", True, True),
        ("fastened", False, False),
        ("loose", False, False),
        ("rigid", False, False),
    ],
)
def test_a_bond_seals_laps_or_edges_too_or_neither(
    bond: str, seals: bool, seals_edges: bool
) -> None:
    """An adhered sheet seals a lap; only what is wet or tape-like seals where it just touches."""
    assert (Bond(bond).seals, Bond(bond).seals_edges) == (seals, seals_edges)


@pytest.mark.parametrize(
    ("bond", "kind", "glued"),
    [
        (Bond.TAPE, Kind.TAPE, True),
        (Bond.SEALANT, Kind.SEALANT, True),
        (Bond.FLUID, Kind.ROOFING, True),
        (Bond.ADHERED, Kind.COLLAR, True),
        (Bond.RIGID, Kind.GASKET, True),
        (Bond.ADHERED, Kind.SHEET, False),
        (Bond.FASTENED, Kind.UNDERLAYMENT, False),
        (Bond.RIGID, Kind.FLASHING, False),
    ],
)
def test_what_sticks_with_all_its_face_has_no_wrong_order(
    bond: Bond, kind: Kind, glued: bool
) -> None:
    """An adhered sheet is no such thing: water that runs down behind its edge loosens it."""
    assert is_glued_on(Product("p", "P", frozenset(), bond, kind)) is glued
