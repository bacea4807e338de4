"""Keys under other names, and what is compared of a finding."""

from enclosure_app.planning.revision.spots import Fate, renamed_key, spot_of
from tests.planning.revision.walls import GAP, WALL, found_in


def test_a_key_says_the_same_under_the_later_names() -> None:
    names = {"10": "7.1", "11": "A"}
    assert renamed_key(GAP, names) == renamed_key("gap:air:A.low+7.1.high", {})
    assert renamed_key("lap-cycle:10+11", names) == renamed_key("lap-cycle:A+7.1", {})
    assert renamed_key("wet-route:10.low+11#2", names) == renamed_key("wet-route:7.1.low+A", {})
    assert renamed_key(GAP, {}) != renamed_key("gap:water:10.high+11.low", {})


def test_a_finding_is_compared_by_rule_control_place_pieces_and_measure() -> None:
    finding = next(f for f in found_in(WALL).findings if f.key == GAP)
    spot = spot_of(finding)
    assert (spot.key, spot.what, spot.pieces) == (GAP, ("gap", "air"), {"10", "11"})
    assert (spot.at, spot.measured, spot.required) == ((0.0, 815.0), 30.0, 0.0)


def test_only_two_fates_are_certain() -> None:
    assert [fate for fate in Fate if fate.certain] == [Fate.STILL_THERE, Fate.MOVED]
