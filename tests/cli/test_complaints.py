"""Complaints are sentences that name the file; the program owns up to its own faults."""

from pathlib import Path

import click
import pytest

from enclosure_app.cli.complaints import complain, own_faults_in_words, usage_sentence
from enclosure_app.errors import EnclosureError, ListedError


@pytest.mark.parametrize(
    ("error", "file", "said"),
    [
        (EnclosureError("It is empty."), None, "It is empty.\n"),
        (EnclosureError("It is empty."), Path("site/a.dxf"), "site/a.dxf: It is empty.\n"),
        (EnclosureError("“a.dxf” is empty."), Path("site/a.dxf"), "“a.dxf” is empty.\n"),
        (ListedError(("a.dxf: one.", "Two.")), Path("a.dxf"), "a.dxf: one.\na.dxf: Two.\n"),
    ],
)
def test_every_sentence_names_the_file(
    error: EnclosureError, file: Path | None, said: str, capsys: pytest.CaptureFixture[str]
) -> None:
    complain(error, file)
    assert capsys.readouterr() == ("", said)


@pytest.mark.parametrize(
    ("fault", "sentence"),
    [
        (
            KeyError("2F"),
            "a.dxf: the program itself failed (KeyError: '2F'); that is its fault and not yours: "
            "please send its developers this sentence and the drawing.",
        ),
        (
            PermissionError(13, "Permission denied"),
            "a.dxf: the system refuses ([Errno 13] Permission denied); mend that and try again.",
        ),
        (EnclosureError("It is empty."), "It is empty."),
    ],
)
def test_every_fault_becomes_one_sentence(fault: Exception, sentence: str) -> None:
    with pytest.raises(EnclosureError) as caught, own_faults_in_words("a.dxf"):
        raise fault
    assert str(caught.value) == sentence


@pytest.mark.parametrize("leave", [click.UsageError("No."), click.Abort(), KeyboardInterrupt()])
def test_what_is_no_fault_goes_through(leave: BaseException) -> None:
    with pytest.raises(type(leave)), own_faults_in_words("a.dxf"):
        raise leave


def test_developers_see_the_fault_itself(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv("ENCLOSURE_TRACEBACK", "1")
    with pytest.raises(KeyError, match="2F"), own_faults_in_words("a.dxf"):
        raise KeyError("2F")


def test_a_typing_mistake_says_where_to_read_on() -> None:
    context = click.Context(click.Command("check"), info_name="enclosure-app check")
    assert usage_sentence(click.UsageError("No such\n option.", context)) == (
        "No such option. Type `enclosure-app check --help` to see what can be typed."
    )
