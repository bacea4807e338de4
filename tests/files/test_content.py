"""What a file holds, or one sentence that says what is wrong with it."""

from pathlib import Path

import pytest

from enclosure_app.errors import EnclosureError
from enclosure_app.files.content import content_of, missed, unreadable_told


def test_all_bytes_of_a_file_are_returned_as_they_are(tmp_path: Path) -> None:
    path = tmp_path / "map.toml"
    path.write_bytes(b"\xef\xbb\xbfa = 1\r\n\x00")
    assert content_of(path, "no file") == b"\xef\xbb\xbfa = 1\r\n\x00"


def test_what_is_not_there_is_told_with_its_folder(tmp_path: Path) -> None:
    with pytest.raises(EnclosureError) as told:
        content_of(tmp_path / "gone.toml", "no file")
    assert str(told.value) == f"gone.toml: there is no such file in {tmp_path.resolve()}."
    missed(tmp_path)  # it is there: nothing is said


def test_a_folder_is_told_in_the_words_of_who_wanted_a_file(tmp_path: Path) -> None:
    with pytest.raises(EnclosureError, match=r"^Name a project file\.$"):
        content_of(tmp_path, "Name a project file.")


def test_what_hinders_the_reading_is_told_in_the_systems_words(tmp_path: Path) -> None:
    path = tmp_path / "locked.toml"
    with (
        pytest.raises(EnclosureError, match=r"^locked.toml: the file cannot be read: Is locked.$"),
        unreadable_told(path),
    ):
        raise OSError(13, "Is locked")
