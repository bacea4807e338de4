"""Issues of one drawing are known by what is drawn in them."""

from dataclasses import replace

import pytest

from enclosure_app.files.projects import read_project
from enclosure_app.model.section import Stroke
from enclosure_app.planning.revision.likeness import Likeness, Same, likeness
from enclosure_app.planning.revision.outlines import Motion
from enclosure_app.resources import sample
from tests.planning.revision.test_sections import EAVE, elsewhere
from tests.planning.revision.walls import WALL, project


@pytest.mark.parametrize(
    ("one", "other", "same"),
    [
        ("eave-flush-faulty", "eave-flush", Same.LIKELY),
        ("window", "window-faulty", Same.LIKELY),
        ("four-sections", "eave-flush", Same.DOUBTFUL),  # it holds that eave, among others
        ("eave-flush", "parapet", Same.NO),
        ("ridge", "window", Same.NO),
    ],
)
def test_mended_samples_are_known_and_others_are_not(one: str, other: str, same: Same) -> None:
    first, second = (read_project(sample(f"{name}.dxf")) for name in (one, other))
    assert likeness(first, second).same is same
    assert likeness(second, first).same is same


def test_a_later_one_may_hold_more_and_of_one_that_holds_less_nobody_is_sure() -> None:
    strokes = tuple(Stroke(((0.0, 0.0), (30.0 + n, 0.0)), "", f"n{n}") for n in range(30))
    whole = project(replace(WALL, strokes=strokes))
    assert likeness(project(WALL), whole).same is Same.LIKELY
    assert likeness(whole, project(WALL)).same is Same.DOUBTFUL


def test_a_drawing_that_was_moved_mirrored_and_renumbered_is_the_same_by_its_sizes() -> None:
    pieces = elsewhere(WALL, 700.0, "Anew", renumbered=True).pieces
    mirrored = Motion((5.0, 0.0), mirrored=True)
    strokes = tuple(
        Stroke(mirrored.places(p.shape.points), "", p.name) for p in pieces if p.name != "700-3"
    )
    later = replace(WALL, pieces=(), strokes=strokes)
    found = likeness(project(WALL), project(later))
    assert found == Likeness(pytest.approx(10 / 11), 0.0, pytest.approx(5 / 6))


def test_of_several_drawings_the_one_that_is_most_like_it_counts() -> None:
    handled = replace(EAVE, pieces=tuple(replace(p, handles=(p.name,)) for p in EAVE.pieces))
    before = project(replace(WALL, file="w.dxf"), replace(handled, file="e.dxf"))
    assert likeness(before, project(WALL)) == Likeness(1.0, 1.0, 1.0)


def test_where_nothing_was_read_nothing_is_alike() -> None:
    assert likeness(project(EAVE), project(WALL)).same is Same.NO  # the eave was only sketched
    assert likeness(project(), project(WALL)) == Likeness(0.0, 0.0)
