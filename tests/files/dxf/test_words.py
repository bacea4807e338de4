"""Whatever a file holds can be printed and written as JSON."""

import json

import pytest
from hypothesis import given
from hypothesis import strategies as st

from enclosure_app.files.dxf.words import listed, printable


@pytest.mark.parametrize(
    ("written", "read"),
    [
        ("plain", "plain"),
        ("Außenwand", "Außenwand"),
        (r"W\U+00C4NDE", "WÄNDE"),
        (r"\U+D83C\U+DFE0", "🏠"),
        ("W\udce4nde", "Wände"),
        ("\udc81", "�"),
        ("\ud800x", "�x"),
    ],
)
def test_escapes_and_stray_bytes_become_characters(written: str, read: str) -> None:
    assert printable(written) == read


@given(st.text(st.characters(codec=None, exclude_categories=())))
def test_every_text_can_be_encoded(text: str) -> None:
    shown = printable(text)
    shown.encode("utf-8")
    json.dumps(shown)


@given(st.text(st.characters(codec="utf-8", exclude_characters="\\")))
def test_sound_text_stays_as_it_is(text: str) -> None:
    assert printable(text) == text


def test_long_lists_are_cut() -> None:
    assert listed(["b", "a"]) == "“a”, “b”"
    assert listed("hgfedcba") == "“a”, “b”, “c”, “d”, “e”, “f” and 2 more"
