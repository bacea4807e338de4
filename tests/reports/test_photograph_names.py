"""Photographs are handed over under names that every file system takes, no two the same."""

from pathlib import Path

import pytest

from enclosure_app.errors import EnclosureError
from enclosure_app.model.said.photograph import Photograph
from enclosure_app.reports.photograph_names import file_names, write_photographs
from tests.reports.decided import AGAIN, NAMELESS, PHOTOGRAPHS, SILL


def test_a_photograph_keeps_its_name_where_no_other_has_it() -> None:
    assert file_names({SILL.key: SILL}) == {SILL.key: "IMG_0042.jpg"}


def test_two_of_one_name_and_one_of_none_are_told_apart_by_their_keys() -> None:
    assert file_names(PHOTOGRAPHS) == {
        SILL.key: f"IMG_0042-{SILL.key[:8]}.jpg",
        AGAIN.key: f"IMG_0042-{AGAIN.key[:8]}.jpg",
        NAMELESS.key: f"photograph-{NAMELESS.key[:8]}.jpg",
    }


def test_a_name_leads_out_of_no_folder() -> None:
    for name in ("../../etc/passwd.jpg", "C:\\site\\sill.jpg", 'a<b>"c|d?.jpg', "..."):
        made = Photograph(b"x", (1, 1), name)
        (safe,) = file_names({made.key: made}).values()
        assert not set(safe) & set('/\\<>:"|?*')
        assert not safe.startswith(".")


def test_photographs_are_written_under_these_names(tmp_path: Path) -> None:
    folder = tmp_path / "site" / "photographs"
    write_photographs(folder, PHOTOGRAPHS)
    names = file_names(PHOTOGRAPHS)
    assert {each.name: each.read_bytes() for each in folder.iterdir()} == {
        names[key]: photograph.data for key, photograph in PHOTOGRAPHS.items()
    }


def test_a_folder_that_cannot_be_made_is_told(tmp_path: Path) -> None:
    (tmp_path / "photographs").write_text("a file", encoding="utf-8")
    with pytest.raises(EnclosureError, match="cannot be made"):
        write_photographs(tmp_path / "photographs", PHOTOGRAPHS)
