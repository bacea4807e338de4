"""What is usual for sheets, and what the window remembers of how they were set up."""

from pathlib import Path

from PySide6.QtCore import QSettings

from enclosure_app.drawing.sheet.job import PAPERS
from enclosure_app.drawing.sheet.setup import SheetSetup, usual_paper
from enclosure_app.model.drawing import Units
from enclosure_app.window.settings import Settings


def settings(folder: Path) -> Settings:
    return Settings(QSettings(str(folder / "kept.ini"), QSettings.Format.IniFormat))


def test_the_usual_paper_is_one_that_there_is() -> None:
    assert usual_paper(Units.FT) == "ANSI B"
    assert {usual_paper(units) for units in Units} <= set(PAPERS)


def test_paper_and_name_are_kept_for_every_project_and_the_rest_for_its_own(
    tmp_path: Path,
) -> None:
    setup = SheetSetup("A1", "1:5", "C", "Ada Berg", cover=False)
    settings(tmp_path).keep_sheets("mill", setup)
    assert settings(tmp_path).sheets("mill") == setup
    assert settings(tmp_path).sheets("barn") == SheetSetup("A1", "", "", "Ada Berg", None)


def test_whoever_gives_verdicts_issues_the_sheets_unless_another_is_named(tmp_path: Path) -> None:
    kept = settings(tmp_path)
    assert kept.sheets("mill") == SheetSetup()
    kept.who = "Ida"
    assert kept.sheets("mill").who == "Ida"
    kept.keep_sheets("mill", SheetSetup(who="Ida"))
    kept.who = "Ida Lund"
    assert kept.sheets("mill").who == "Ida Lund"
    kept.keep_sheets("mill", SheetSetup(who="Studio"))
    assert kept.sheets("mill").who == "Studio"
