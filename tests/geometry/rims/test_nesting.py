"""What meets inside a solid although no rims meet: cast-in pieces, and the rings of one solid."""

import numpy as np
import shapely

from enclosure_app.geometry.rims.closest import Chords
from enclosure_app.geometry.rims.nesting import chords_within
from enclosure_app.geometry.rims.rims import rims_of
from enclosure_app.geometry.rims.solids import Solid, area_solid, line_solid


def square(x: float, y: float, side: float) -> tuple[tuple[float, float], ...]:
    return ((x, y), (x + side, y), (x + side, y + side), (x, y + side))


def within(*solids: Solid) -> Chords:
    return chords_within(solids, rims_of(solids))


def owners(chords: Chords, *solids: Solid) -> set[frozenset[int]]:
    rims = rims_of(solids)
    pairs = zip(rims.owner[rims.rim[chords.a]], rims.owner[rims.rim[chords.b]], strict=True)
    return {frozenset((int(a), int(b))) for a, b in pairs}


def test_a_sheet_cast_in_is_tied_to_the_concrete_round_it() -> None:
    solids = area_solid(square(0, 0, 100)), line_solid([(40, 40), (60, 40)])
    chords = within(*solids)
    assert owners(chords, *solids) == {frozenset((0, 1))}
    assert chords.length.tolist() == [0]


def test_a_sheet_that_only_passes_through_is_left_to_its_touching_rims() -> None:
    assert len(within(area_solid(square(0, 0, 100)), line_solid([(-50, 40), (60, 40)])).a) == 0


def test_a_piece_in_a_hole_is_not_held() -> None:
    hollow = area_solid(square(0, 0, 100), [square(20, 20, 60)])
    solids = hollow, line_solid([(40, 40), (60, 40)])
    assert owners(within(*solids), *solids) == {frozenset((0,))}


def test_the_rings_of_one_solid_are_tied_by_chords_that_stay_in_it() -> None:
    holes = [square(10, 10, 20), square(40, 10, 20), square(70, 10, 20)]
    solid = area_solid(square(0, 0, 100), holes)
    chords = within(solid)
    drawn = shapely.linestrings(np.stack([chords.at_a, chords.at_b], axis=1))
    assert shapely.covers(solid, drawn).all()
    rims = rims_of([solid])
    joined = {
        (int(a), int(b)) for a, b in zip(rims.rim[chords.a], rims.rim[chords.b], strict=True)
    }
    assert {ring for pair in joined for ring in pair} == {0, 1, 2, 3}
    assert len(joined) == 3


def test_a_solid_in_a_solid_in_a_solid_is_tied_to_both() -> None:
    solids = tuple(area_solid(square(at, at, 100 - 2 * at)) for at in (0, 20, 40))
    found = owners(within(*solids), *solids)
    assert found == {frozenset((0, 1)), frozenset((0, 2)), frozenset((1, 2))}


def test_bare_lines_hold_nothing() -> None:
    solids = line_solid(square(0, 0, 100), closed=True), line_solid([(40, 40), (60, 40)])
    assert len(within(*solids).a) == 0
