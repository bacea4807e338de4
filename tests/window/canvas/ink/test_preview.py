"""What a change would do, shown before it is done."""

from PySide6.QtCore import QSizeF
from PySide6.QtGui import QColor, QImage, QPainter

from enclosure_app.files.maps.catalogue import load_products
from enclosure_app.model.drawing import Units
from enclosure_app.model.edits import move_pieces, remove_pieces, trim
from enclosure_app.model.place import Line
from enclosure_app.model.project import Project
from enclosure_app.model.section import Piece, Section
from enclosure_app.window.canvas.camera import Camera
from enclosure_app.window.canvas.ink.preview import Preview

PIECES = (
    Piece("a", "felt", Line(((0.0, 0.0), (100.0, 0.0)))),
    Piece("b", "felt", Line(((60.0, -50.0), (60.0, 50.0)))),
)
BEFORE = Project("p", Units.MM, (Section("s", (), PIECES, load_products()),))


def preview(after: Project) -> Preview:
    return Preview(BEFORE.sections[0], after.sections[0])


def test_only_what_changes_is_shown() -> None:
    shown = preview(trim(BEFORE, 0, "a", (90.0, 0.0)))
    assert [piece.name for piece in shown.gone] == ["a"]
    assert [piece.shape.points[-1] for piece in shown.come] == [(60.0, 0.0)]


def test_how_much_shorter_a_line_gets_is_told_in_the_units_of_the_drawing() -> None:
    shown = preview(trim(BEFORE, 0, "a", (90.0, 0.0)))
    assert shown.told(Units.MM) == "−40 mm"
    assert shown.told(Units.IN) == '−1 9/16"'


def test_nothing_is_told_where_no_length_changes() -> None:
    assert preview(move_pieces(BEFORE, 0, ("a",), (5.0, 5.0))).told(Units.MM) == ""
    assert preview(remove_pieces(BEFORE, 0, ("a",))).told(Units.MM) == ""


def test_it_is_painted_where_it_comes_to_lie(qapp: object) -> None:
    image = QImage(200, 200, QImage.Format.Format_RGB32)
    image.fill(QColor("white"))
    painter = QPainter(image)
    moved = preview(move_pieces(BEFORE, 0, ("b",), (0.0, 20.0)))
    moved.paint(painter, Camera((50.0, 0.0), 1.0, QSizeF(200, 200)))
    painter.end()
    assert QColor(image.pixel(110, 35)).saturation() > 100  # (60, 65), where it comes
    assert QColor(image.pixel(60, 100)) == QColor("white")  # (10, 0), where nothing changes
