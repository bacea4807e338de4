"""What a bond seals."""

import pytest

from enclosure_app.model.product import Bond


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
