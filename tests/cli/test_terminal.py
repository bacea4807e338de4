"""What a stream can take: encodings, colour, width, pipes."""

import io
import sys

import pytest

from enclosure_app.cli.terminal import (
    fit_encoding,
    reflowed,
    say,
    takes_colour,
    text_width,
    with_progress,
)
from enclosure_app.errors import EnclosureError


class Terminal(io.StringIO):
    """A stream that says that it is a terminal."""

    def isatty(self) -> bool:
        return True


class FullDisk(io.StringIO):
    """A stream that has no room left."""

    def write(self, _text: str) -> int:
        raise OSError(28, "No space left on device")


@pytest.mark.parametrize(
    ("text", "plain"),
    [
        ("2½″ × 30 mm", '2 1/2" x 30 mm'),
        ("Büro − Möller", "Buro - Moller"),
        ("W/(m·K) ≤ 3", "W/(m.K) <= 3"),
        ("Крыша", "?????"),
        ("layer \udce9", "layer ?"),
        ("plain", "plain"),
    ],
)
def test_what_ascii_cannot_take_is_put_plainer(text: str, plain: str) -> None:
    assert fit_encoding(text, "ascii") == plain


def test_what_the_encoding_takes_stays() -> None:
    assert fit_encoding("Büro 2½", "latin-1") == "Büro 2½"
    assert fit_encoding("Büro ×\udce9 ½", "utf-8") == "Büro ×? ½"


def test_a_text_ends_in_one_line_break() -> None:
    stream = io.StringIO()
    say("one\n\n", stream)
    assert stream.getvalue() == "one\n"


def test_a_stream_closed_from_the_start_takes_nothing() -> None:
    say("one", None)


def test_a_full_disk_is_said_in_one_sentence() -> None:
    with pytest.raises(EnclosureError, match="No space left on device"):
        say("one", FullDisk())


def test_colour_is_only_for_a_terminal(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.delenv("NO_COLOR", raising=False)
    monkeypatch.setenv("TERM", "xterm")
    assert takes_colour(Terminal())
    assert not takes_colour(io.StringIO())
    assert not takes_colour(None)


@pytest.mark.parametrize(("name", "value"), [("NO_COLOR", "1"), ("TERM", "dumb")])
def test_a_user_who_wants_plain_text_gets_it(
    monkeypatch: pytest.MonkeyPatch, name: str, value: str
) -> None:
    monkeypatch.setenv("TERM", "xterm")
    monkeypatch.setenv(name, value)
    assert not takes_colour(Terminal())


@pytest.mark.parametrize(("columns", "width"), [("10", 40), ("60", 60), ("80", 80), ("300", 120)])
def test_the_width_is_the_terminals_within_what_reads_well(
    monkeypatch: pytest.MonkeyPatch, columns: str, width: int
) -> None:
    monkeypatch.setenv("COLUMNS", columns)
    assert text_width() == width


def test_progress_shows_on_a_terminal_and_hands_on_every_item(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    screen = Terminal()
    monkeypatch.setenv("TERM", "xterm")
    monkeypatch.setattr(sys, "stdout", Terminal())
    monkeypatch.setattr(sys, "stderr", screen)
    assert list(with_progress(["a", "b"], "Checking")) == ["a", "b"]
    assert "Checking" in screen.getvalue()


def test_no_progress_when_piped(monkeypatch: pytest.MonkeyPatch) -> None:
    screen = Terminal()
    monkeypatch.setattr(sys, "stdout", io.StringIO())
    monkeypatch.setattr(sys, "stderr", screen)
    assert list(with_progress(["a", "b"], "Checking")) == ["a", "b"]
    assert screen.getvalue() == ""


def test_a_page_is_filled_anew_and_its_headings_stay() -> None:
    page = (
        "gap: it stops.\n\nWhat it finds\n    One two three\n    four five.\n\nSource\n    None.\n"
    )
    assert reflowed(page, 18) == (
        "gap: it stops.\n\nWhat it finds\n    One two three\n    four five.\n\nSource\n    None."
    )
    assert reflowed(page, 40).splitlines()[3] == "    One two three four five."
