"""The sums over a section change with what is judged, and with nothing else."""

from collections.abc import Callable
from dataclasses import replace
from types import MappingProxyType

import pytest
from hypothesis import given
from hypothesis import strategies as st

from enclosure_app.files.maps.catalogue import load_products
from enclosure_app.model.place import Area, Line, Points
from enclosure_app.model.said.sign_off import drawn_sum, fingerprint
from enclosure_app.model.section import Break, Piece, Section, Stroke, Text

FRAME = ((0.0, 0.0), (500.0, 0.0), (500.0, 2500.0), (0.0, 2500.0))
WALL = Piece("2F", "housewrap", Line(((10.0, 0.0), (10.0, 2400.0))), ("2F",), "A-WALL")
BOARD = Piece("30", "osb", Area(((12.0, 0.0), (24.0, 0.0), (24.0, 9.0))), ("30",), "A-WALL")
EAVE = Section("Eave", FRAME, (WALL, BOARD), load_products(), ((400.0, 9.0),), ((1.0, 9.0),))
STRIP = Break(((0.0, 1.0), (9.0, 1.0)), ((0.0, 2.0), (9.0, 2.0)))


def with_product(**change: object) -> Section:
    wrap = replace(EAVE.products["housewrap"], **change)
    return replace(EAVE, products=MappingProxyType({**EAVE.products, "housewrap": wrap}))


def with_wall(**change: object) -> Section:
    return replace(EAVE, pieces=(replace(WALL, **change), BOARD))


@pytest.mark.parametrize(
    "changed",
    [
        lambda: with_wall(shape=Line(((10.0, 0.0), (10.0, 2400.001)))),
        lambda: with_wall(shape=Line(((10.0, 0.0), (10.0, 2400.0)), 1.0)),
        lambda: with_wall(shape=Line(((10.0, 0.0), (10.0, 2400.0)), closed=True)),
        lambda: with_wall(product="osb"),
        lambda: with_product(min_lap_mm=149.0),
        lambda: with_product(controls=frozenset()),
        lambda: replace(EAVE, pieces=(WALL,)),
        lambda: replace(EAVE, frame=(*FRAME[:3], (0.0, 2501.0))),
        lambda: replace(EAVE, inside=((401.0, 9.0),)),
        lambda: replace(EAVE, inside=EAVE.outside, outside=EAVE.inside),
        lambda: replace(EAVE, gravity=None),
        lambda: replace(EAVE, breaks=(STRIP,)),
        lambda: replace(EAVE, sealed=frozenset({("2F", "30")})),
    ],
)
def test_a_change_of_what_is_judged_shows(changed: Callable[[], Section]) -> None:
    assert fingerprint(changed()) != fingerprint(EAVE)
    assert drawn_sum(changed()) != drawn_sum(EAVE)


@pytest.mark.parametrize(
    "same",
    [
        lambda: replace(EAVE, name="North eave"),
        lambda: replace(EAVE, pieces=(BOARD, WALL)),
        lambda: with_wall(layer="A-ROOF", handles=("99",)),
        lambda: with_wall(shape=Line(((10, -0.0), (10, 2400)))),
        lambda: with_product(name="Wall sheet", source="maker", confirmed=True),
        lambda: replace(EAVE, strokes=(Stroke(((0.0, 0.0), (1.0, 1.0))),)),
        lambda: replace(EAVE, texts=(Text("EAVE", (0.0, 0.0)),)),
        lambda: replace(EAVE, frame_drawn=True),
    ],
)
def test_a_change_of_anything_else_does_not(same: Callable[[], Section]) -> None:
    assert fingerprint(same()) == fingerprint(EAVE)
    assert drawn_sum(same()) == drawn_sum(EAVE)


def renumbered(section: Section) -> Section:
    """Return a section as another export gives it: names, order, ends and corners are others."""
    pieces = (
        replace(BOARD, name="7", shape=Area(((24.0, 9.0), (24.0, 0.0), (12.0, 0.0)))),
        replace(WALL, name="8", shape=Line(((10.0, 2400.0), (10.0, 0.0)))),
    )
    sealed = frozenset({("7", "8")} if section.sealed else ())
    return replace(section, pieces=pieces, sealed=sealed, frame=(*FRAME[2:], *FRAME[:2]))


@pytest.mark.parametrize("sealed", [frozenset[tuple[str, str]](), frozenset({("2F", "30")})])
def test_a_renumbered_export_is_still_what_was_drawn(sealed: frozenset[tuple[str, str]]) -> None:
    signed = replace(EAVE, sealed=sealed)
    again = renumbered(signed)
    assert drawn_sum(again) == drawn_sum(signed)
    assert fingerprint(again) != fingerprint(signed)  # which revision it is does tell names apart


def test_the_key_of_a_product_is_a_name_too() -> None:
    wrap = EAVE.products["housewrap"]
    products = MappingProxyType({**EAVE.products, "house-wrap": replace(wrap, key="house-wrap")})
    other = replace(with_wall(product="house-wrap"), products=products)
    assert drawn_sum(other) == drawn_sum(EAVE)


@given(
    places=st.lists(st.integers(-20_000, 20_000), min_size=1, max_size=8),
    inch=st.sampled_from([1.0, 25.4, 25.4 / 64, 304.8 / 128]),
    off=st.floats(-2e-7, 2e-7),
)
def test_the_digits_that_an_export_loses_are_no_change(
    places: list[int], inch: float, off: float
) -> None:
    def wall(by: float) -> Section:
        return with_wall(shape=Line(tuple((n * inch + by, 3.0 - n * inch) for n in places)))

    assert drawn_sum(wall(off)) == drawn_sum(wall(0.0))


def test_a_seal_that_goes_from_one_joint_to_another_shows() -> None:
    third = Piece("9", "housewrap", Line(((14.0, 0.0), (14.0, 2400.0))))
    both = replace(EAVE, pieces=(WALL, BOARD, third))
    one = replace(both, sealed=frozenset({("2F", "30")}))
    other = replace(both, sealed=frozenset({("30", "9")}))
    assert drawn_sum(one) != drawn_sum(other)


def test_a_section_that_lies_elsewhere_on_the_sheet_is_no_other_one() -> None:
    def there(points: Points) -> Points:
        return tuple((x + 12_345.625, y - 800.5) for x, y in points)

    moved = replace(
        EAVE,
        frame=there(EAVE.frame),
        inside=there(EAVE.inside),
        outside=there(EAVE.outside),
        pieces=(
            replace(WALL, shape=Line(there(((10.0, 0.0), (10.0, 2400.0))))),
            replace(BOARD, shape=Area(there(((12.0, 0.0), (24.0, 0.0), (24.0, 9.0))))),
        ),
    )
    assert drawn_sum(moved) == drawn_sum(EAVE)
    assert drawn_sum(replace(moved, inside=EAVE.inside)) != drawn_sum(EAVE)


@given(
    st.lists(st.floats(0.01, 0.99), max_size=4),
    st.sampled_from([((10.0, 0.0), (10.0, 2400.0)), ((3.175, 7.9375), (811.2, 1999.9))]),
)
def test_points_put_on_a_straight_line_are_no_change(
    shares: list[float], ends: tuple[tuple[float, float], tuple[float, float]]
) -> None:
    (x, y), (u, v) = ends
    between = [(x + (u - x) * k, y + (v - y) * k) for k in sorted(shares)]
    bare, more = Line(ends), Line((ends[0], *between, ends[1]))
    assert drawn_sum(with_wall(shape=more)) == drawn_sum(with_wall(shape=bare))


def test_points_put_on_the_sides_of_a_ring_are_no_change_and_a_corner_is_one() -> None:
    def board(*outer: tuple[float, float]) -> Section:
        return replace(EAVE, pieces=(WALL, replace(BOARD, shape=Area(outer))))

    bare = board((12.0, 0.0), (24.0, 0.0), (24.0, 9.0))
    assert drawn_sum(board((18.0, 0.0), (24.0, 0.0), (24.0, 4.0), (24.0, 9.0), (12.0, 0.0))) == (
        drawn_sum(bare)
    )
    assert drawn_sum(board((12.0, 0.0), (18.0, -0.1), (24.0, 0.0), (24.0, 9.0))) != drawn_sum(bare)


def test_a_line_that_turns_back_on_itself_keeps_its_point() -> None:
    there = with_wall(shape=Line(((10.0, 0.0), (10.0, 2400.0))))
    back = with_wall(shape=Line(((10.0, 0.0), (10.0, 2500.0), (10.0, 2400.0))))
    assert drawn_sum(back) != drawn_sum(there)
    closed = with_wall(shape=Line(((10.0, 0.0), (10.0, 2400.0), (10.0, 0.0))))
    assert drawn_sum(closed) != drawn_sum(with_wall(shape=Line(((10.0, 0.0), (10.0, 0.0)))))


def test_a_section_without_a_frame_has_a_sum_too() -> None:
    bare = replace(EAVE, frame=())
    assert drawn_sum(bare) != drawn_sum(EAVE)
    assert drawn_sum(bare) == drawn_sum(replace(bare, name="Ridge"))
