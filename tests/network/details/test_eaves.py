"""How far the eave membrane goes up, and how far it has to.

Published: M. Guertin's article on ice barriers in a US building magazine (12 in overhang, 2x6
wall, 24 in past the inner face), second-hand; its lengths hold to 1/8 in. The clause is IRC
R905.1.2 (from memory); for Canada OBC 9.26.5.1 (1). The rest is worked by hand from
(overhang + wall + inside) * sqrt(12^2 + n^2) / 12.
"""

from math import sqrt

import pytest

from enclosure_app.files.maps.rule_book import load_limits
from enclosure_app.model.limits import Limits
from enclosure_app.model.section import Section
from enclosure_app.network.details.eaves import Eave, eaves
from tests.network.sections import asked, box, section, sheet

INCH = 25.4
US, CANADA = load_limits("irc-2021"), load_limits("nbc-2020")


def eave(pitch: float, overhang: float, wall: float, unit: float = INCH) -> Eave:
    """An eave with a level overhang and a wall thickness in `unit`s, rising `pitch` in 12."""
    slope = pitch / 12
    outer, inner = overhang * unit, (overhang + wall) * unit
    return Eave(("m",), (0.0, 0.0), (3000.0, 3000.0 * slope), slope, inner, outer)


def measured_outside(limits: Limits) -> Limits:
    return limits.overridden({"eave-wall-line": 0}, "the project")


@pytest.mark.parametrize(("pitch", "inches"), [(6, 47), (8, 50 + 1 / 2), (12, 59 + 3 / 8)])
def test_the_published_lengths_hold_to_an_eighth_of_an_inch(pitch: float, inches: float) -> None:
    length, limit = eave(pitch, 12, 6).required(US)
    assert length / INCH == pytest.approx(inches, abs=1 / 8)
    assert limit.name == "eave-cover-inside"


@pytest.mark.parametrize(("pitch", "inches"), [(6, 40.25), (8, 43.27), (12, 50.91)])
def test_counted_from_the_outer_face_they_are_shorter(pitch: float, inches: float) -> None:
    length, _ = eave(pitch, 12, 6).required(measured_outside(US))
    assert length / INCH == pytest.approx(inches, abs=0.005)


@pytest.mark.parametrize(
    ("pitch", "overhang", "wall", "inches", "figure"),
    [
        (8, 0, 0, 36.0, "eave-cover-steep-along"),
        (4, 24, 7.5, 58.50, "eave-cover-inside"),
        (2, 0, 5.5, 29.91, "eave-cover-inside"),
        (7.9, 0, 0, 24 * sqrt(144 + 7.9**2) / 12, "eave-cover-inside"),
    ],
)
def test_the_longer_of_the_two_clauses_holds(
    pitch: float, overhang: float, wall: float, inches: float, figure: str
) -> None:
    length, limit = eave(pitch, overhang, wall).required(US)
    assert length / INCH == pytest.approx(inches, abs=0.005)
    assert limit.name == figure


def test_in_canada_the_reach_is_taken_from_300_inside_the_inner_face() -> None:
    """400 mm overhang, 190 mm wall, slope 1 in 3."""
    length, limit = eave(4, 400, 190, unit=1).required(CANADA)
    assert length == pytest.approx(938.1, abs=0.05)
    assert limit.name == "eave-cover-inside"


def test_in_canada_it_is_never_less_than_900_along_the_slope() -> None:
    length, limit = eave(4, 100, 140, unit=1).required(CANADA)
    assert length == 900
    assert limit.name == "eave-cover-along"


# --- read off a drawing -------------------------------------------------------------------------


def drawn(side: int = 1, *, top: float = 300.0, kind: str = "framing", **how: object) -> Section:
    """An eave at the left (side 1) or right (-1): overhang 100, wall 150 thick, rising 1 in 2."""

    def at(x: float, y: float) -> tuple[float, float]:
        return (side * x, y)

    (x, _), (u, _) = sorted((at(-300, 0), at(-150, 0)))
    return section(
        sheet(
            "m", at(-400, -200), at(-400, -150), at(-400, -150), at(top, top / 2 + 50), of="eave"
        ),
        sheet("u", at(top - 80, top / 2 + 18), at(500, 308), of="underlayment"),
        box("wall", (x, -500), (u, -120), kind),
        **{"outside": [at(-400, 300)], "inside": [at(200, -300)], **how},
    )


@pytest.mark.parametrize("side", [1, -1])
def test_edge_top_slope_and_the_walls_faces_are_read_off_the_drawing(side: int) -> None:
    (found,) = eaves(asked(drawn(side)))
    assert found.edge == (-400 * side, -150)
    assert found.top == (300 * side, 200)
    assert found.slope == pytest.approx(0.5)
    assert (found.outer, found.inner) == (-300 * side, -150 * side)
    assert found.reach == pytest.approx(sqrt(700**2 + 350**2))
    length, _ = found.required(US)
    assert length == pytest.approx((250 + 609.6) * sqrt(1.25))


def test_a_gable_drawn_whole_has_an_eave_at_either_side() -> None:
    left, right = drawn(1, top=-50), drawn(-1, top=-50)
    pieces = [p for p in left.pieces if p.name != "u"]
    others = [
        sheet("n", (400, -200), (400, -150), (50, 25), of="eave"),
        box("far wall", (150, -500), (300, -120), "framing"),
    ]
    ridge = sheet("u", (-120, 10), (0, 90), (120, 10), of="underlayment")
    both = section(*pieces, *others, ridge, outside=[(0, 400)], inside=[(0, -300)])
    first, second = eaves(asked(both))
    assert (first.edge, second.edge) == ((-400, -150), (400, -150))
    assert (first.inner, second.inner) == (-150, 150)
    assert right.name == left.name


def test_a_wall_of_several_layers_reaches_from_the_first_face_to_the_last() -> None:
    more = drawn()
    brick = box("brick", (-390, -500), (-320, -190), "concrete")
    (found,) = eaves(asked(section(*more.pieces, brick, outside=more.outside, inside=more.inside)))
    assert (found.outer, found.inner) == (-390, -150)


def test_without_a_wall_below_or_in_a_plan_nothing_is_told() -> None:
    assert list(eaves(asked(drawn(kind="pipe")))) == []
    assert list(eaves(asked(drawn(gravity=None)))) == []
    assert list(eaves(asked(drawn(inside=[(200, 100)])))) == []


def test_without_an_eave_membrane_nothing_is_told() -> None:
    bare = [p for p in drawn().pieces if p.name != "m"]
    assert list(eaves(asked(section(*bare, outside=[(-400, 300)], inside=[(200, -300)])))) == []
