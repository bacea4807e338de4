"""What helps a hand to draw."""

import pytest

from enclosure_app.model.drawing import Units
from enclosure_app.window.canvas.catching.aids import Aids, kept_ray


@pytest.mark.parametrize(
    ("at", "ahead"),
    [
        ((100.0, 8.0), (1.0, 0.0)),
        ((5.0, 90.0), (0.0, 1.0)),
        ((-80.0, -3.0), (-1.0, 0.0)),
        ((100.0, 101.0), (0.5**0.5, 0.5**0.5)),
    ],
)
def test_a_line_is_kept_to_every_fifteen_degrees(
    at: tuple[float, float], ahead: tuple[float, float]
) -> None:
    assert kept_ray((0.0, 0.0), at, 15.0).ahead == pytest.approx(ahead)


def test_a_line_is_kept_square_to_what_was_drawn_before() -> None:
    ray = kept_ray((0.0, 0.0), (-40.0, 91.0), 15.0, along=24.0)
    assert ray.ahead == pytest.approx((-0.406737, 0.913545), abs=1e-6)


def test_the_foot_on_a_ray_is_square_below_the_place() -> None:
    ray = kept_ray((10.0, 20.0), (300.0, 25.0), 15.0)
    assert ray.foot((300.0, 25.0)) == (300.0, 20.0)


def test_the_grid_is_that_of_the_units_until_a_person_sets_one() -> None:
    assert Aids().spacing(Units.MM) == 50.0
    assert Aids().spacing(Units.FT) == pytest.approx(2 * 25.4)
    assert Aids(grid=12.5).spacing(Units.IN) == 12.5
