"""The triangles under a chord."""

import numpy as np
import shapely
from hypothesis import given, settings
from hypothesis import strategies as st

from enclosure_app.geometry.linework.linework import Linework
from enclosure_app.geometry.openings.crossed import crossed
from enclosure_app.geometry.openings.triangles import triangulate

PLACES = st.lists(
    st.tuples(st.integers(0, 30), st.integers(0, 30)), min_size=4, max_size=25, unique=True
)


@settings(max_examples=60, derandomize=True, deadline=None)
@given(PLACES)
def test_every_triangle_whose_inside_a_chord_meets_is_found(places: list[tuple[int, int]]) -> None:
    points = np.array(places, dtype=float)
    mesh = triangulate(Linework(points, np.empty((0, 2), dtype=np.int64)))
    chord = shapely.LineString(points[:2])
    triangles = shapely.polygons(mesh.points[mesh.triangles])
    inner = shapely.buffer(triangles, -1e-4)
    expected = set(np.flatnonzero(shapely.intersects(inner, chord)).tolist())
    found = set(crossed(mesh, np.array([[0, 1]])).tolist())
    assert expected <= found
    assert shapely.distance(triangles[sorted(found)], chord).max() < 1e-5
