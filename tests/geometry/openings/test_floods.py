"""Joints made one after the other until two nodes are joined."""

import networkx as nx
import numpy as np
from hypothesis import given, settings
from hypothesis import strategies as st

from enclosure_app.geometry.openings.floods import first_joining


@settings(max_examples=80, derandomize=True, deadline=None)
@given(
    st.integers(2, 12).flatmap(
        lambda n: st.tuples(
            st.just(n),
            st.lists(st.tuples(st.integers(0, n - 1), st.integers(0, n - 1)), max_size=30),
        )
    )
)
def test_it_is_the_joint_that_a_graph_built_edge_by_edge_needs(
    case: tuple[int, list[tuple[int, int]]],
) -> None:
    number, joints = case
    graph = nx.Graph()
    graph.add_nodes_from(range(number))
    expected = None
    for joint, (a, b) in enumerate(joints):
        graph.add_edge(a, b)
        if nx.has_path(graph, number - 2, number - 1):
            expected = joint
            break
    pairs = np.array(joints, dtype=np.int64).reshape(-1, 2)
    assert first_joining(number, pairs[:, 0], pairs[:, 1]) == expected
