"""Gates, and what bridges do to them."""

import numpy as np
import pytest
import shapely

from enclosure_app.geometry.linework.linework import noded
from enclosure_app.geometry.openings.bridges import tied
from enclosure_app.geometry.openings.gates import Gates, gates
from enclosure_app.geometry.openings.triangles import triangulate

FRAME = [(0.0, 0.0), (400.0, 0.0), (400.0, 300.0), (0.0, 300.0)]
RUNS = [
    [(0.0, 150.0), (180.0, 150.0)],
    [(220.0, 150.0), (400.0, 150.0)],
    [(200.0, 160.0), (200.0, 140.0)],
]


def gates_with(*bridges: tuple[tuple[float, float], tuple[float, float]]) -> Gates:
    lines = noded(FRAME, [shapely.LineString(run) for run in RUNS])
    lines, ties = tied(lines, np.array(bridges).reshape(-1, 2, 2))
    return gates(triangulate(lines), ties)


def closed_lines(found: Gates) -> shapely.Geometry:
    """Return all closed edges that are no walls."""
    rows = np.flatnonzero(~found.open & ~found.mesh.wall)
    ends = np.stack([found.mesh.starts[rows], found.mesh.ends[rows]], axis=1)
    return shapely.union_all(shapely.linestrings(found.mesh.points[ends]))


def test_without_bridges_all_edges_but_walls_are_open() -> None:
    found = gates_with()
    assert (found.open == ~found.mesh.wall).all()
    length = np.hypot(
        *(found.mesh.points[found.mesh.ends] - found.mesh.points[found.mesh.starts]).T
    )
    assert found.width == pytest.approx(length)


def test_a_bridge_that_is_an_edge_is_closed() -> None:
    bridge = ((180.0, 150.0), (200.0, 140.0))
    assert closed_lines(gates_with(bridge)).equals(shapely.LineString(bridge))


def test_a_bridge_that_is_no_edge_cuts_the_gates_it_crosses_and_leaves_their_width() -> None:
    bridge = ((90.0, 150.0), (90.0, 0.0))
    far = ((180.0, 150.0), (330.0, 300.0))
    found = gates_with(bridge, far, ((0.0, 200.0), (260.0, 300.0)))
    drawn = shapely.union_all([shapely.LineString(b) for b in (bridge, far)])
    assert shapely.hausdorff_distance(
        shapely.intersection(closed_lines(found), shapely.buffer(drawn, 1e-6)), drawn
    ) == pytest.approx(0, abs=1e-5)
    mesh = found.mesh
    length = np.hypot(*(mesh.points[mesh.ends] - mesh.points[mesh.starts]).T)
    cut = found.open & (found.width > length + 1e-6) & np.isfinite(found.width)
    assert cut.any()
    chord = mesh.points[found.chord[cut]]
    assert found.width[cut] == pytest.approx(np.hypot(*(chord[:, 1] - chord[:, 0]).T))
    inner = shapely.line_interpolate_point(
        shapely.linestrings(mesh.points[np.stack([mesh.starts, mesh.ends], axis=1)[cut]]),
        0.5,
        normalized=True,
    )
    assert shapely.distance(inner, shapely.linestrings(chord)).max() < 1e-6


def test_cut_triangles_still_cover_the_same_ground_once() -> None:
    whole, cut = gates_with().mesh, gates_with(((90.0, 150.0), (90.0, 0.0))).mesh
    area = [shapely.area(shapely.polygons(m.points[m.triangles])).sum() for m in (whole, cut)]
    assert area[0] == pytest.approx(area[1])


def test_an_end_a_little_off_its_wall_is_tied_to_it() -> None:
    lines = noded(FRAME, [shapely.LineString(run) for run in RUNS])
    lines, ties = tied(lines, np.array([[[90.0, 150.001], [90.0, 0.0]]]))
    assert lines.points[ties[0]].tolist() == [[90, 150], [90, 0]]
