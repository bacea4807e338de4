"""Which picture a click means."""

from PySide6.QtCore import QSizeF
from PySide6.QtGui import QImage, QPainter

from enclosure_app.geometry.similarity import Similarity
from enclosure_app.model.drawing import Units
from enclosure_app.model.project import Project
from enclosure_app.model.section import Section
from enclosure_app.model.underlay import Underlay
from enclosure_app.window.canvas.camera import Camera
from enclosure_app.window.canvas.underlay.pick import (
    apart,
    movable,
    paint_outline,
    underlay_meant,
)
from enclosure_app.window.canvas.workplace import Workplace
from enclosure_app.window.document import Document

FRAME = ((0.0, 0.0), (9.0, 0.0), (9.0, 9.0))


def under(x: float, **more: object) -> Underlay:
    return Underlay("a.png", "png", b"", at=(x, 0.0), size=(100.0, 50.0), **more)  # type: ignore[arg-type]


def place(*underlays: Underlay) -> Workplace:
    sections = (Section("Eave", FRAME, (), {}),)
    held = Workplace(Document(Project("", Units.MM, sections, underlays=underlays)))
    held.kept = held.document  # type: ignore[attr-defined]  a child goes with its parent
    return held


def test_the_uppermost_that_lies_there_is_meant() -> None:
    both = place(under(0.0), under(50.0))
    assert underlay_meant(both, (75, 25)) == 1
    assert underlay_meant(both, (25, 25)) == 0
    assert underlay_meant(both, (500, 25)) is None


def test_the_only_one_is_meant_wherever_the_click_is() -> None:
    assert underlay_meant(place(under(0.0)), (500, 25)) == 0


def test_what_is_locked_hidden_or_elsewhere_is_never_meant() -> None:
    held = place(under(0.0, locked=True), under(0.0, shown=False), under(0.0, section="Rake"))
    assert movable(held) == []
    assert underlay_meant(held, (25, 25)) is None


def test_a_turned_one_is_met_where_it_lies() -> None:
    held = place(under(0.0, angle=90.0), under(300.0))
    assert underlay_meant(held, (-25, 75)) == 0
    assert underlay_meant(held, (25, 25)) is None


def test_places_are_apart_or_not() -> None:
    assert apart((0, 0), (3, 4), 4.9)
    assert not apart((0, 0), (3, 4), 5.0)
    assert not apart(None, (3, 4), 0.0)


def test_the_edge_is_painted_where_it_will_lie() -> None:
    image = QImage(200, 200, QImage.Format.Format_RGB32)
    image.fill(0xFFFFFFFF)
    camera = Camera((100.0, 100.0), 1.0, QSizeF(200, 200))
    painter = QPainter(image)
    paint_outline(painter, camera, under(0.0), Similarity.moving((50.0, 80.0)))
    painter.end()
    inked = {x for x in range(200) for y in (120, 119, 121) if image.pixel(x, y) != 0xFFFFFFFF}
    assert min(inked) in range(48, 53)
    assert max(inked) in range(147, 153)
