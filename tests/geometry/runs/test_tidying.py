"""Points on top of each other are one point."""

from enclosure_app.geometry.runs.tidying import SAME, tidy


def test_points_on_top_of_the_one_before_are_left_out() -> None:
    run = ((0.0, 0.0), (0.0, SAME / 2), (5.0, 0.0), (5.0, 0.0), (0.0, 0.0))
    assert tidy(run) == ((0.0, 0.0), (5.0, 0.0), (0.0, 0.0))


def test_very_many_small_steps_do_not_vanish() -> None:
    """Each is held against the last that was kept, so together they count."""
    run = tuple((i * SAME * 0.6, 0.0) for i in range(101))
    assert len(tidy(run)) == 51


def test_one_point_stays() -> None:
    assert tidy(((1.0, 2.0),)) == ((1.0, 2.0),)
