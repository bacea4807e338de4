"""The faces of a layer's pieces."""

import numpy as np
import pytest

from enclosure_app.model.place import Area, Line
from enclosure_app.network.rain.surfaces import surfaces_of

SQUARE = ((0.0, 0.0), (10.0, 0.0), (10.0, 10.0), (0.0, 10.0))


def test_a_line_has_a_face_on_either_side_and_keeps_its_half_width() -> None:
    faces = surfaces_of({"a": Line(((0, 0), (0, 10)), width=3.0)}).surfaces.faces
    assert sorted(faces.normal[:, 0].tolist()) == [-1, 1]
    assert faces.half.tolist() == [1.5, 1.5]


def test_a_closed_line_has_an_inner_and_an_outer_face_and_no_ends() -> None:
    faces = surfaces_of({"ring": Line(SQUARE, closed=True)}).surfaces.faces
    probe = (faces.a + faces.b) / 2 + faces.normal
    assert np.all((probe > 0) & (probe < 10), axis=1).sum() == 4
    assert len(faces.a) == 8


def test_an_area_has_faces_outside_and_round_its_holes() -> None:
    hole = ((4.0, 4.0), (6.0, 4.0), (6.0, 6.0), (4.0, 6.0))
    faces = surfaces_of({"a": Area(SQUARE, (hole,))}).surfaces.faces
    middle = faces.a[4:] + faces.along[4:] + faces.normal[4:] * 0.5
    assert np.all((middle > 4) & (middle < 6))
    assert len(faces.a) == 8


def test_owners_are_places_in_the_list_of_names() -> None:
    made = surfaces_of({"b": Line(((0, 0), (0, 9))), "a": Area(SQUARE)})
    assert [made.names[owner] for owner in made.surfaces.faces.owner] == ["b"] * 2 + ["a"] * 4


@pytest.mark.parametrize("shape", [Line(((1, 1), (1, 1))), Area(((2, 2), (2, 2), (2, 2)))])
def test_a_piece_without_extent_has_no_face(shape: Line | Area) -> None:
    assert len(surfaces_of({"dot": shape}).surfaces.faces.a) == 0


def test_only_what_lies_in_the_frame_has_faces() -> None:
    """A sheet that leaves the frame and comes back is two; what lies beyond is none."""
    frame = ((0.0, 0.0), (100.0, 0.0), (100.0, 100.0), (0.0, 100.0))
    shapes = {
        "far": Line(((200, 0), (200, 50))),
        "bent": Line(((20, 50), (150, 50), (150, 70), (60, 70))),
        "board": Area(((90, 10), (130, 10), (130, 20), (90, 20))),
    }
    made = surfaces_of(shapes, frame)
    faces, names = made.surfaces.faces, made.names
    edges = {
        (names[owner], *map(tuple, sorted((a, b))))
        for owner, a, b in zip(
            faces.owner.tolist(), faces.a.tolist(), faces.b.tolist(), strict=True
        )
    }
    assert edges == {
        ("bent", (20, 50), (100, 50)),
        ("bent", (60, 70), (100, 70)),
        ("board", (90, 10), (100, 10)),
        ("board", (100, 10), (100, 20)),
        ("board", (90, 20), (100, 20)),
        ("board", (90, 10), (90, 20)),
    }
