"""Unsaved work is found again after a crash, and only then."""

import os
from dataclasses import replace
from datetime import UTC, datetime
from pathlib import Path

import pytest

from enclosure_app.errors import EnclosureError
from enclosure_app.files.project.autosave import (
    autosave,
    autosave_path,
    discard_autosave,
    find_recovery,
)
from enclosure_app.files.project.file import load_project, save_project
from enclosure_app.model.drawing import Units
from enclosure_app.model.project import Project

SAVED = Project("As saved", Units.MM, ())
WORK = replace(SAVED, title="As worked on")


@pytest.fixture
def path(tmp_path: Path) -> Path:
    path = tmp_path / "house.enclosure.json"
    save_project(SAVED, path)
    return path


def test_work_that_was_not_saved_is_found_and_the_project_is_as_it_was(path: Path) -> None:
    autosave(WORK, path)
    found = find_recovery(path)
    assert found is not None
    assert found.copy == path.with_name(".house.enclosure.json.autosave")
    assert abs((datetime.now(UTC) - found.when).total_seconds()) < 60
    assert found.load() == WORK
    assert load_project(path) == SAVED


def test_nothing_is_found_without_a_copy_or_where_the_copy_is_the_same(path: Path) -> None:
    assert find_recovery(path) is None
    autosave(SAVED, path)
    assert find_recovery(path) is None


def test_a_copy_that_is_older_than_the_project_is_not_offered(path: Path) -> None:
    autosave(WORK, path)
    os.utime(autosave_path(path), (1e9, 1e9))
    assert find_recovery(path) is None


def test_a_project_that_was_never_saved_has_unsaved_work(tmp_path: Path) -> None:
    path = tmp_path / "new.enclosure.json"
    autosave(WORK, path)
    found = find_recovery(path)
    assert found is not None
    assert found.load() == WORK


def test_work_is_offered_where_the_project_itself_was_damaged_before(path: Path) -> None:
    path.write_bytes(path.read_bytes()[:50])
    autosave(WORK, path)
    found = find_recovery(path)
    assert found is not None
    assert found.load() == WORK


def test_discarded_work_is_gone_and_discarding_nothing_is_nothing(path: Path) -> None:
    autosave(WORK, path)
    found = find_recovery(path)
    assert found is not None
    found.discard()
    assert [each.name for each in path.parent.iterdir()] == [path.name]
    discard_autosave(path)
    assert find_recovery(path) is None


def test_a_damaged_copy_is_refused_by_its_own_name(path: Path) -> None:
    autosave_path(path).write_bytes(b'{"format": 1')
    found = find_recovery(path)
    assert found is not None
    with pytest.raises(EnclosureError, match=r"^\.house\.enclosure\.json\.autosave, line 1: the"):
        found.load()


def test_a_copy_that_cannot_be_removed_or_read_is_told(path: Path) -> None:
    autosave_path(path).mkdir()
    with pytest.raises(EnclosureError, match="cannot be removed"):
        discard_autosave(path)
    with pytest.raises(EnclosureError, match="cannot be read"):
        find_recovery(path)
