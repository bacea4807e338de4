"""What the window remembers: kept in its store, sound whatever stands there."""

from pathlib import Path

import pytest
from PySide6.QtCore import QByteArray, QSettings

from enclosure_app.drawing.sheet.setup import SheetSetup
from enclosure_app.window.canvas.catching.aids import Aids
from enclosure_app.window.settings import Settings


@pytest.fixture
def store(tmp_path: Path) -> QSettings:
    return QSettings(str(tmp_path / "settings.ini"), QSettings.Format.IniFormat)


def test_a_new_window_has_sound_settings(store: QSettings, tmp_path: Path) -> None:
    settings = Settings(store)
    assert (settings.ground, settings.motion, settings.who) == ("as_system", "as_system", "")
    assert settings.copy_after == 20
    assert settings.recent == []
    assert settings.layout() is None
    assert settings.folder == tmp_path


@pytest.mark.parametrize("keys", [[], ["felt"], ["felt", "osb"]])
def test_products_given_lately_are_there_the_next_day(store: QSettings, keys: list[str]) -> None:
    Settings(store).lately = keys
    store.sync()
    assert Settings(QSettings(store.fileName(), QSettings.Format.IniFormat)).lately == keys


def test_a_layer_map_is_remembered_for_as_long_as_it_is_there(
    store: QSettings, tmp_path: Path
) -> None:
    path = tmp_path / "office.toml"
    path.touch()
    Settings(store).layer_map = path
    assert Settings(store).layer_map == path.resolve()
    path.unlink()
    assert Settings(store).layer_map is None


def test_what_was_set_is_there_the_next_day(store: QSettings) -> None:
    first = Settings(store)
    first.who, first.motion, first.copy_after, first.ground = " R. Lind ", "off", 90, "night"
    store.sync()
    second = Settings(QSettings(store.fileName(), QSettings.Format.IniFormat))
    assert (second.who, second.motion, second.copy_after) == ("R. Lind", "off", 90)
    assert second.ground == "night"


@pytest.mark.parametrize(
    ("kept", "taken"), [("1", 5), ("100000", 600), ("often", 20), ("", 20), ("30", 30)]
)
def test_a_copy_is_neither_too_rare_nor_without_end(
    store: QSettings, kept: str, taken: int
) -> None:
    store.setValue("copy_after", kept)
    assert Settings(store).copy_after == taken


def test_files_are_remembered_the_last_first_until_they_are_forgotten(
    store: QSettings, tmp_path: Path
) -> None:
    settings = Settings(store)
    paths = [tmp_path / f"{name}.dxf" for name in "abc"]
    for path in paths:
        path.write_text("x", encoding="utf-8")
        settings.opened(path)
    settings.opened(paths[0])
    assert [Path(name).stem for name in settings.recent] == ["a", "c", "b"]
    settings.forget(Path(settings.recent[1]))
    assert [Path(name).stem for name in settings.recent] == ["a", "b"]


def test_a_layout_comes_back_whole_or_not_at_all(store: QSettings) -> None:
    settings = Settings(store)
    settings.keep_layout(QByteArray(b"place"), QByteArray(b"panels"))
    assert settings.layout() == (QByteArray(b"place"), QByteArray(b"panels"))
    store.setValue("layout", 7)
    assert settings.layout() is None


def test_what_helps_a_hand_to_draw_is_as_it_was_left(store: QSettings) -> None:
    Settings(store).aids = Aids(beside=5.0, grid=25.4, grid_shown=True, kept=True)
    store.sync()
    again = Settings(QSettings(store.fileName(), QSettings.Format.IniFormat))
    assert again.aids == Aids(beside=5.0, grid=25.4, grid_shown=True, kept=True)


@pytest.mark.parametrize("spoilt", ["far", "-3", "nan", ""])
def test_a_spoilt_distance_is_the_usual_one(store: QSettings, spoilt: str) -> None:
    store.setValue("aids/beside", spoilt)
    store.setValue("aids/kept", "perhaps")
    assert Settings(store).aids == Aids()


def test_paper_and_name_are_kept_for_every_project_and_the_rest_for_its_own(
    store: QSettings,
) -> None:
    setup = SheetSetup("A1", "1:5", "C", "Ada Berg", cover=False)
    Settings(store).keep_sheets("mill", setup)
    assert Settings(store).sheets("mill") == setup
    assert Settings(store).sheets("barn") == SheetSetup("A1", "", "", "Ada Berg", None)


def test_whoever_gives_verdicts_issues_the_sheets_unless_another_is_named(
    store: QSettings,
) -> None:
    kept = Settings(store)
    assert kept.sheets("mill") == SheetSetup()
    kept.who = "Ida"
    assert kept.sheets("mill").who == "Ida"
    kept.keep_sheets("mill", SheetSetup(who="Ida"))
    kept.who = "Ida Lund"
    assert kept.sheets("mill").who == "Ida Lund"
    kept.keep_sheets("mill", SheetSetup(who="Studio"))
    assert kept.sheets("mill").who == "Studio"
