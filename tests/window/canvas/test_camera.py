"""Where the window looks."""

from hypothesis import given
from hypothesis import strategies as st
from PySide6.QtCore import QPointF, QSizeF

from enclosure_app.drawing.placement import Box
from enclosure_app.window.canvas.camera import CLOSEST, FARTHEST, Camera

places = st.tuples(st.floats(-1e5, 1e5), st.floats(-1e5, 1e5))
cameras = st.builds(
    Camera,
    places,
    st.floats(0.01, 50),
    st.builds(QSizeF, st.floats(100, 4000), st.floats(100, 3000)),
)
dots = st.builds(QPointF, st.floats(0, 4000), st.floats(0, 3000))


@given(cameras, places)
def test_a_place_that_is_seen_at_a_dot_is_the_place_of_that_dot(camera: Camera, place) -> None:  # noqa: ANN001
    x, y = camera.place(camera.seen(place))
    assert abs(x - place[0]) < 1e-6
    assert abs(y - place[1]) < 1e-6


@given(cameras, dots, st.floats(0.1, 10))
def test_zooming_leaves_the_place_under_the_mouse(
    camera: Camera, dot: QPointF, factor: float
) -> None:
    before = camera.place(dot)
    after = camera.zoomed(factor, dot).place(dot)
    assert abs(after[0] - before[0]) < 1e-6
    assert abs(after[1] - before[1]) < 1e-6


@given(cameras, dots)
def test_the_transform_says_the_same_as_seen(camera: Camera, dot: QPointF) -> None:
    place = camera.place(dot)
    mapped = camera.transform().map(QPointF(*place))
    assert abs(mapped.x() - dot.x()) < 1e-3
    assert abs(mapped.y() - dot.y()) < 1e-3


def test_what_is_fitted_is_seen_whole_with_room_around_it() -> None:
    camera = Camera((0, 0), 1.0, QSizeF(800, 600)).fitted(Box(100, 200, 2100, 700))
    window = camera.window
    assert camera.centre == (1100, 450)
    assert window.left < 100 and window.right > 2100  # noqa: PT018
    assert window.bottom < 200 and window.top > 700  # noqa: PT018


def test_zoom_has_an_end_on_either_side() -> None:
    camera = Camera((0, 0), 1.0, QSizeF(800, 600))
    assert camera.zoomed(1e9, QPointF(0, 0)).zoom == CLOSEST
    assert camera.zoomed(1e-9, QPointF(0, 0)).zoom == FARTHEST
