"""What is dropped on the window, or named as it opens."""

from collections.abc import Callable
from pathlib import Path

from PIL import Image
from PySide6.QtCore import QMimeData, QPoint, QPointF, Qt, QUrl
from PySide6.QtGui import QDragEnterEvent, QDropEvent

from enclosure_app.model.edits import remove_pieces
from enclosure_app.resources import sample
from enclosure_app.window.main_window import MainWindow

Opened = Callable[..., MainWindow]


def dropped(window: MainWindow, *paths: Path) -> bool:
    """Drop files on the window; say whether it takes them."""
    data = QMimeData()
    data.setUrls([QUrl.fromLocalFile(str(path)) for path in paths])
    copy, left = Qt.DropAction.CopyAction, Qt.MouseButton.LeftButton
    plain = Qt.KeyboardModifier.NoModifier
    entered = QDragEnterEvent(QPoint(50, 50), copy, data, left, plain)
    entered.ignore()
    window.dragEnterEvent(entered)
    if entered.isAccepted():
        window.dropEvent(QDropEvent(QPointF(50, 50), copy, data, left, plain))
    return entered.isAccepted()


def test_a_file_that_is_dropped_is_opened(window: MainWindow) -> None:
    assert dropped(window, sample("ridge.dxf"))
    assert window.document.project.source.endswith("ridge.dxf")


def test_several_drawings_that_are_dropped_are_sections_of_one_project(
    window: MainWindow,
) -> None:
    assert dropped(window, sample("ridge.dxf"), sample("parapet.dxf"))
    names = [section.name for section in window.document.project.sections]
    assert names == ["ridge", "parapet"]
    assert window.document.path is None
    assert [Path(path).name for path in window.settings.recent] == ["parapet.dxf", "ridge.dxf"]


def test_what_was_brought_with_a_file_that_cannot_be_read_is_not_put_under_another(
    window: MainWindow, tmp_path: Path
) -> None:
    (tmp_path / "torn.dxf").write_text("no drawing", encoding="utf-8")
    Image.new("RGB", (60, 40), "white").save(tmp_path / "plan.png")
    assert dropped(window, tmp_path / "torn.dxf", tmp_path / "plan.png")
    assert "torn.dxf" in window.messages.words.text()
    window.filing.open(sample("ridge.dxf"))
    assert window.document.project.sections
    assert window.document.project.underlays == ()


def test_a_layer_map_that_is_dropped_is_for_the_drawing_that_is_open(window: MainWindow) -> None:
    assert dropped(window, sample("ridge.dxf"))
    guessed = window.document.project.sections[0].pieces
    assert dropped(window, sample("layers-second-office.toml"))
    mapped = window.document.project.sections[0].pieces
    assert {piece.product for piece in mapped} != {piece.product for piece in guessed}


def test_a_project_opens_alone_and_says_so(opened: Opened, tmp_path: Path) -> None:
    window = opened()
    kept = tmp_path / "eave.enclosure.json"
    window.document.path = kept
    window.filing.save()
    assert dropped(window, sample("ridge.dxf"), kept)
    assert window.document.path == kept
    assert "A project opens alone" in window.messages.words.text()


def test_what_is_no_drawing_is_not_taken(window: MainWindow, tmp_path: Path) -> None:
    letter = tmp_path / "letter.txt"
    letter.write_text("Dear all", encoding="utf-8")
    assert not dropped(window, letter)


def test_unsaved_work_is_asked_about_before_what_is_dropped_opens(opened: Opened) -> None:
    window = opened()
    project = window.document.project
    name = project.sections[0].pieces[0].name
    window.document.apply("Delete", remove_pieces(project, 0, [name]))
    changed = window.document.project
    assert dropped(window, sample("ridge.dxf"))
    assert window.document.project is changed
    assert "not kept yet" in window.messages.words.text()


def test_a_picture_brought_with_a_drawing_lies_under_it(
    window: MainWindow, tmp_path: Path
) -> None:
    picture = tmp_path / "scan.png"
    Image.new("RGB", (40, 30), "white").save(picture)
    window.open_files([picture, sample("ridge.dxf")])
    assert window.document.project.source.endswith("ridge.dxf")
    assert [under.name for under in window.document.project.underlays] == ["scan.png"]
