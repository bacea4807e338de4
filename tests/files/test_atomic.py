"""A file is wholly the old one or wholly the new one, whatever happens while it is written."""

import json
import os
import stat
import subprocess
import sys
from pathlib import Path

import pytest

from enclosure_app.errors import EnclosureError
from enclosure_app.files import atomic
from enclosure_app.files.atomic import made_folder, write_atomically

MANY = int(os.environ.get("ENCLOSURE_MANY", "40"))


@pytest.mark.skipif(not hasattr(os, "fork"), reason="Processes cannot be forked here.")
def test_a_process_killed_while_saving_leaves_the_old_project_or_the_new_one(
    tmp_path: Path,
) -> None:
    """``ENCLOSURE_MANY`` says how many kills; some must have hit a part file being written."""
    script = Path(__file__).with_name("killed_while_saving.py")
    arguments = [sys.executable, str(script), str(tmp_path), str(MANY), "7"]
    done = subprocess.run(arguments, capture_output=True, text=True, check=True, timeout=300)
    found = json.loads(done.stdout)
    assert found["torn"] == 0
    assert found["A1"] + found["B2"] == MANY
    assert min(found["A1"], found["B2"]) > 0
    assert found["parts"] > 0


def test_a_new_file_gets_the_usual_permissions_and_an_old_one_keeps_its_own(
    tmp_path: Path,
) -> None:
    path, usual = tmp_path / "a.json", tmp_path / "usual"
    usual.touch()
    write_atomically(path, b"old")
    assert stat.S_IMODE(path.stat().st_mode) == stat.S_IMODE(usual.stat().st_mode)
    path.chmod(0o640)
    write_atomically(path, b"new")
    assert path.read_bytes() == b"new"
    assert stat.S_IMODE(path.stat().st_mode) == 0o640
    assert {each.name for each in tmp_path.iterdir()} == {"a.json", "usual"}


def test_a_link_stays_a_link_and_the_file_it_leads_to_is_written(tmp_path: Path) -> None:
    (tmp_path / "server").mkdir()
    real, link = tmp_path / "server" / "a.json", tmp_path / "a.json"
    real.write_bytes(b"old")
    link.symlink_to(real)
    write_atomically(link, b"new")
    assert link.is_symlink()
    assert real.read_bytes() == b"new"


@pytest.mark.parametrize("call", ["fsync", "replace"])
def test_a_full_disk_leaves_the_old_file_and_no_other(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, call: str
) -> None:
    path = tmp_path / "a.json"
    path.write_bytes(b"old")

    def refuse(*_: object) -> None:
        raise OSError(28, "No space left on device")

    monkeypatch.setattr(*((os, "fsync") if call == "fsync" else (Path, "replace")), refuse)
    with pytest.raises(
        EnclosureError, match=r"^a\.json: the file cannot be written in .*No space"
    ):
        write_atomically(path, b"new")
    assert path.read_bytes() == b"old"
    assert [each.name for each in tmp_path.iterdir()] == ["a.json"]


def test_the_bytes_are_on_the_disk_before_the_name_and_the_name_before_it_returns(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    happened: list[str] = []
    fsync, replace = os.fsync, Path.replace

    def noted_fsync(handle: int) -> None:
        happened.append("folder" if stat.S_ISDIR(os.fstat(handle).st_mode) else "bytes")
        fsync(handle)

    def noted_replace(self: Path, target: Path) -> Path:
        happened.append("name")
        return replace(self, target)

    monkeypatch.setattr(os, "fsync", noted_fsync)
    monkeypatch.setattr(Path, "replace", noted_replace)
    write_atomically(tmp_path / "a.json", b"new")
    assert happened == ["bytes", "name", "folder"]


def test_a_folder_that_is_not_there_is_told(tmp_path: Path) -> None:
    with pytest.raises(EnclosureError, match=r"^a\.json: the file cannot be written in .*/gone"):
        write_atomically(tmp_path / "gone" / "a.json", b"new")


def test_part_files_that_a_crash_left_long_ago_are_swept_away_and_no_other_file_is(
    tmp_path: Path,
) -> None:
    names = [".a.json.x1.part", ".a.json.x2.part", ".b.json.x3.part", ".a.json.autosave"]
    for name in names:
        (tmp_path / name).write_bytes(b"")
    for name in (names[0], names[2], names[3]):
        os.utime(tmp_path / name, (0, 0))
    write_atomically(tmp_path / "a.json", b"new")
    left = {each.name for each in tmp_path.iterdir()}
    assert left == {"a.json", *names[1:]}
    assert atomic.FORGOTTEN == 3600.0


def test_a_folder_is_made_where_it_lacks_and_a_file_of_its_name_is_said(tmp_path: Path) -> None:
    made_folder(tmp_path / "a" / "b")
    made_folder(tmp_path / "a" / "b")
    assert (tmp_path / "a" / "b").is_dir()
    (tmp_path / "file").touch()
    with pytest.raises(EnclosureError, match=r"The folder .*file cannot be made"):
        made_folder(tmp_path / "file")
