"""Folds on the site list: where sheets turn, numbered from below, roundings as one."""

from math import cos, pi, sin

import pytest

from enclosure_app.checker import check_section
from enclosure_app.model.place import Point
from enclosure_app.model.section import Section
from enclosure_app.planning.site_list.folds import folds
from enclosure_app.planning.site_list.places import drawn
from tests.rules.junctions import US, box, run, section

OPEN = "self-adhered-permeable"
ROUND = tuple((-100 + 20 * cos(k * pi / 8), 20 * sin(k * pi / 8) - 20) for k in range(5))


def of(product: str, *points: Point, gravity: Point | None = (0.0, -1.0)) -> Section:
    return section(run("s", product, *points), gravity=gravity)


def places(made: Section) -> list[tuple[str, Point]]:
    found = folds(drawn(check_section(made, US), US))
    return [(place.key, place.at) for place in found]


@pytest.mark.parametrize("turned", [False, True])
def test_folds_are_numbered_from_the_lower_end(turned: bool) -> None:
    points = [(0.0, -500.0), (0.0, 0.0), (200.0, 0.0), (200.0, 500.0)]
    made = of(OPEN, *(points[::-1] if turned else points))
    assert places(made) == [("fold:s.1", (0.0, 0.0)), ("fold:s.2", (200.0, 0.0))]


def test_a_rounded_corner_is_one_fold() -> None:
    found = places(of(OPEN, (-80, -500), *ROUND, (-500, 0)))
    assert [key for key, _ in found] == ["fold:s.1"]
    assert found[0][1] == pytest.approx((-90, -10), abs=12)


def test_a_sheet_that_hardly_bends_has_no_fold() -> None:
    assert places(of(OPEN, (0, -500), (20, 0), (0, 500))) == []


def test_metal_is_bent_in_the_works() -> None:
    assert places(of("base-flashing", (0, -500), (0, 0), (100, 0), (100, 500))) == []


def test_a_coat_is_looked_at_for_its_thickness_in_the_corner() -> None:
    made = of("fluid-permeable", (0, -500), (0, 0), (200, 0), (200, 500))
    first = next(iter(folds(drawn(check_section(made, US), US))))
    assert "wet-thickness" in [q.name for q in first.questions]
    assert "fold-order" not in [q.name for q in first.questions]


def test_corners_of_a_plan_are_folds_too() -> None:
    made = of(OPEN, (-500, 0), (0, 0), (0, 500), gravity=None)
    assert [key for key, _ in places(made)] == ["fold:s.1"]


def asked(made: Section) -> list[str]:
    first = next(iter(folds(drawn(check_section(made, US), US))))
    return [question.name for question in first.questions]


def test_the_order_of_a_corner_matters_where_water_runs() -> None:
    corner = ((0, -500), (0, 0), (200, 0), (200, 500))
    assert asked(of(OPEN, *corner)) == ["tight-corner", "fold-order", "no-cut-corner"]
    assert asked(of("vapour-retarder", *corner)) == ["tight-corner", "no-cut-corner"]


def test_a_tape_that_is_turned_into_an_opening_is_folded_too() -> None:
    made = section(
        run("s", OPEN, (0, -500), (0, -10)),
        run("t", "flashing-tape", (-2, -100), (-2, 2), (80, 2)),
        box("w", "window-frame", (0, 3), (58, 500)),
    )
    assert "fold:t.1" in dict(places(made))


def test_several_folds_of_a_sheet_are_told_apart() -> None:
    made = of(OPEN, (0, -500), (0, 0), (200, 0), (200, 500))
    titles = [place.title for place in folds(drawn(check_section(made, US), US))]
    name = "self-adhered sheet"
    assert titles == [f"Fold {n} of {name}, from below" for n in (1, 2)]
    (only,) = folds(drawn(check_section(of(OPEN, (-500, 0), (0, 0), (0, 500)), US), US))
    assert only.title == f"Fold of {name}"
