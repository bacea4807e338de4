"""How laps drain, and how long they must be."""

from itertools import product

import pytest

from enclosure_app.files.maps.rule_book import load_limits
from enclosure_app.model.place import Point
from enclosure_app.model.product import Control
from enclosure_app.model.section import Section
from enclosure_app.network.details.drainage import (
    are_neighbours,
    is_buried_edge_metal,
    is_level,
    is_reversed,
    is_sheet_lap,
    required_lap,
)
from enclosure_app.network.joints.laps import Lap
from enclosure_app.network.network import Network
from tests.network.sections import asked, section, sheet

LIMITS = load_limits("irc-2021")
LOW = ((0, -500), (0, 100))
OVER, UNDER = ((-10, 40), (-10, 500)), ((10, 40), (10, 500))


def lap_of(drawn: Section, *names: str) -> tuple[Network, Lap]:
    network = asked(drawn)
    laps = network.layers[Control.WATER].laps
    if names:
        laps = tuple(lap for lap in laps if {lap.outer.name, lap.inner.name} == set(names))
    (lap,) = laps
    return network, lap


def wall(
    up: tuple[Point, ...], low_of: str = "loose", up_of: str = "loose", **how: object
) -> Section:
    return section(sheet("a", *LOW, of=low_of), sheet("b", *up, of=up_of), **how)


def roof(rise: float, *, over: bool = True, of: str = "underlayment") -> Section:
    """A lap in the middle of a slope that rises `rise` in 1 to the right, outside above."""
    off = 8 if over else -8
    low, up = (
        ((-500, -500 * rise), (60, 60 * rise)),
        ((-60, -60 * rise + off), (500, 500 * rise + off)),
    )
    return section(
        sheet("a", *low, of=of), sheet("b", *up, of=of), outside=[(0, 400)], inside=[(0, -400)]
    )


def test_a_shingled_wall_lap_drains_and_a_reversed_one_does_not() -> None:
    assert not is_reversed(*lap_of(wall(OVER)))
    assert is_reversed(*lap_of(wall(UNDER)))


@pytest.mark.parametrize(("first", "second", "swap"), list(product((1, -1), (1, -1), (1, -1))))
def test_drawing_direction_and_order_do_not_matter(first: int, second: int, swap: int) -> None:
    for up, reverse in ((OVER, False), (UNDER, True)):
        pieces = [sheet("a", *LOW[::first]), sheet("b", *up[::second])]
        assert is_reversed(*lap_of(section(*pieces[::swap]))) is reverse


def test_seen_from_the_other_side_the_same_drawing_is_reversed() -> None:
    swapped = wall(OVER, outside=[(250, 0)], inside=[(-250, 0)])
    assert is_reversed(*lap_of(swapped))


@pytest.mark.parametrize("rise", [0.03, 0.25, 1.0, 3.0])
def test_roof_laps_are_judged_at_every_slope(rise: float) -> None:
    assert not is_reversed(*lap_of(roof(rise)))
    assert is_reversed(*lap_of(roof(rise, over=False)))


def test_a_level_lap_is_neither_right_nor_reversed() -> None:
    """1:48 is the limit; 1:50 is flatter and no order drains, 1:40 is steeper."""
    for over in (True, False):
        network, lap = lap_of(roof(1 / 50, over=over))
        assert is_level(network, lap)
        assert not is_reversed(network, lap)
    assert not is_level(*lap_of(roof(1 / 40)))


def test_under_a_soffit_the_order_does_not_matter() -> None:
    for rise in (0.0, 0.1):
        low, up = (
            ((-500, -500 * rise), (60, 60 * rise)),
            ((-60, -60 * rise + 8), (500, 500 * rise + 8)),
        )
        drawn = section(sheet("a", *low), sheet("b", *up), outside=[(0, -400)], inside=[(0, 400)])
        network, lap = lap_of(drawn)
        assert not is_reversed(network, lap)
        assert not is_level(network, lap)


def test_in_a_plan_nothing_is_reversed_or_level() -> None:
    network, lap = lap_of(wall(UNDER, gravity=None))
    assert not is_reversed(network, lap)
    assert not is_level(network, lap)


@pytest.mark.parametrize("glued", ["tape", "bead", "coating", "collar", "gasket"])
def test_tapes_beads_and_collars_do_not_lap_as_sheets_do(glued: str) -> None:
    network, lap = lap_of(wall(UNDER, up_of=glued))
    assert not is_sheet_lap(network, lap)
    assert not is_reversed(network, lap)


def test_a_lower_sheet_whose_upper_edge_a_third_one_covers_is_not_reversed() -> None:
    """A flashing over the sheet behind it, and the next sheet down over the flashing."""
    wall_sheet = sheet("a", (0, -500), (0, 500))
    flashing = sheet("f", (-5, 100), (-5, 0), (-120, -40), of="flashing")
    cover = sheet("c", (-10, 60), (-10, 500))
    network, lap = lap_of(section(wall_sheet, flashing), "a", "f")
    assert is_reversed(network, lap)
    assert not is_reversed(*lap_of(section(wall_sheet, flashing, cover), "a", "f"))


def test_a_leg_between_two_sheets_leaves_them_neighbours() -> None:
    """The sheet laps the lower one by 70, the leg ends between them at 52 and is lapped itself."""
    lower, upper = sheet("t", (0, 70), (0, -500)), sheet("s", (-6, 0), (-6, 500))
    leg = sheet("x", (-3, 52), (-3, -60), (-40, -70), of="flashing")
    network, lap = lap_of(section(lower, leg, upper), "s", "t")
    assert lap.length == 70
    assert are_neighbours(network, Control.WATER, lap)


def test_a_sheet_that_takes_over_between_two_parts_them() -> None:
    """It is drawn right on the lower sheet, so that it hides nothing; each laps the one below."""
    lower, middle = sheet("t", (0, -500), (0, 100)), sheet("x", (0, 20), (0, 200))
    network, lap = lap_of(section(middle, lower, sheet("s", (-6, 50), (-6, 500))), "s", "t")
    assert not are_neighbours(network, Control.WATER, lap)


@pytest.mark.parametrize(("metal_over", "buried"), [(True, False), (False, True)])
def test_along_a_level_edge_the_edge_metal_goes_over_the_sheet(
    metal_over: bool, buried: bool
) -> None:
    """IRC R905.2.8.5 (from memory): under the drip edge at rakes."""
    off = 6 if metal_over else -6
    pieces = [
        sheet("u", (-400, 0), (500, 0), of="underlayment"),
        sheet("d", (-300, off), (-410, off), (-410, -60), (-420, -500), of="edge"),
    ]
    drawn = section(*pieces, outside=[(0, 300)], inside=[(0, -300)])
    network, lap = lap_of(drawn)
    assert lap.slope == 0
    assert is_buried_edge_metal(network, lap) is buried
    assert is_reversed(network, lap) is buried


def test_at_a_sloping_eave_the_sheet_goes_over_the_edge_metal() -> None:
    """The roof rises to the right, so the sheet is the upper one."""
    for off, reverse in ((6, False), (-6, True)):
        pieces = [
            sheet("u", (-400, -200 + off), (500, 250 + off), of="underlayment"),
            sheet("d", (-300, -150), (-410, -205), (-410, -500), of="edge"),
        ]
        drawn = section(*pieces, outside=[(0, 400)], inside=[(0, -300)])
        assert is_reversed(*lap_of(drawn)) is reverse


@pytest.mark.parametrize(
    ("drawn", "figure", "inches"),
    [
        (wall(OVER), "wall-lap", 2),  # IRC R703.2
        (wall(OVER, gravity=None), "wall-end-lap", 6),
        (wall(OVER, up_of="flashing"), "flashing-lap", 2),
        (roof(4 / 12), "roof-lap", 2),  # exactly 4:12 is a single layer
        (roof(3.9 / 12), "roof-lap-low", 19),
        (roof(2 / 12), "roof-lap-low", 19),
        (roof(8 / 12, of="eave"), "roof-lap-adhered", 4),
        (roof(1 / 24), "low-slope-lap", 3),
        (roof(1 / 24, of="roofing"), "low-slope-lap", 3),
        (roof(1.8), "wall-lap", 2),
    ],
)
def test_the_place_and_the_slope_decide_the_least_lap(
    drawn: Section, figure: str, inches: float
) -> None:
    limit = required_lap(*lap_of(drawn), LIMITS)
    assert limit.name == figure
    assert limit.value == pytest.approx(25.4 * inches)


@pytest.mark.parametrize(("rise", "figure"), [(2 / 12, "roof-lap-low"), (4 / 12, "roof-lap")])
def test_a_pitch_drawn_with_rounded_coordinates_is_still_that_pitch(
    rise: float, figure: str
) -> None:
    """Coordinates to a tenth of a millimetre, as many files hold them."""
    points = [(-500, -500 * rise), (60, 60 * rise)], [(-60, -60 * rise + 8), (500, 500 * rise + 8)]
    low, up = ([(x, round(y, 1)) for x, y in line] for line in points)
    pieces = [sheet("a", *low, of="underlayment"), sheet("b", *up, of="underlayment")]
    drawn = section(*pieces, outside=[(0, 400)], inside=[(0, -400)])
    assert required_lap(*lap_of(drawn), LIMITS).name == figure


def test_a_products_own_lap_goes_before_the_book() -> None:
    limit = required_lap(*lap_of(wall(OVER, low_of="wide")), LIMITS)
    assert (limit.name, limit.value) == ("own-lap", 150)
    assert "its maker" in limit.source


def test_canada_asks_for_a_hundred_on_a_wall() -> None:
    """NBC 2020 9.27.3.3, from memory."""
    assert required_lap(*lap_of(wall(OVER)), load_limits("nbc-2020")).value == 100
