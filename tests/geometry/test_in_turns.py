"""Large arrays worked on in turns give what one call gives."""

import numpy as np
import pytest
import shapely

from enclosure_app.geometry.in_turns import ROWS, asked, listed, made, placed


@pytest.mark.parametrize("count", [0, 1, ROWS, ROWS + 1, 2 * ROWS + 7])
def test_turns_give_what_one_call_gives(count: int) -> None:
    rows = np.random.default_rng(count).uniform(0, 50, (count, 2))
    shapes = made(shapely.points, rows)
    assert shapely.equals(shapes, shapely.points(rows)).all()
    assert len(shapes) == count
    assert listed(rows) == rows.tolist()
    tree = shapely.STRtree(shapely.points(np.arange(100.0).reshape(-1, 2)))
    found = np.array(asked(tree, shapes, predicate="dwithin", distance=1.0))
    whole = tree.query(shapes, predicate="dwithin", distance=1.0)
    assert found.tolist() == whole.tolist()


def test_the_places_of_runs_stand_one_after_the_other() -> None:
    runs = [((0.0, 1.0), (2.0, 3.0)), (), ((4.0, 5.0),)]
    assert placed(runs).tolist() == [[0.0, 1.0], [2.0, 3.0], [4.0, 5.0]]
    assert placed([]).shape == (0, 2)
