"""A level look through walls."""

from enclosure_app.geometry.rims.sightline import level_crossings
from enclosure_app.geometry.rims.solids import area_solid, line_solid

WALL = area_solid(((100, 0), (250, 0), (250, 2400), (100, 2400)))


def test_a_wall_is_met_at_both_faces() -> None:
    assert sorted(level_crossings([WALL], 1000).tolist()) == [100, 250]


def test_a_look_over_the_top_meets_nothing() -> None:
    assert level_crossings([WALL], 2500).tolist() == []


def test_a_leaning_line_is_met_where_the_look_crosses_it() -> None:
    assert level_crossings([line_solid([(0, 0), (100, 400)])], 100).tolist() == [25]


def test_a_look_along_a_level_face_passes_just_over_it() -> None:
    step = area_solid(((0, 0), (50, 0), (50, 10), (20, 10), (20, 20), (0, 20)))
    assert sorted(level_crossings([step], 10).tolist()) == [0, 20]
