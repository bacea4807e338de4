"""What goes wrong, in sentences on standard error; nothing here shows a traceback."""

import os
import sys
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

import click

from enclosure_app.cli.terminal import say
from enclosure_app.errors import EnclosureError, ListedError


def complain(error: EnclosureError, file: Path | None = None) -> None:
    """Say on standard error what is wrong, one sentence a line, each naming the file."""
    sentences = error.sentences if isinstance(error, ListedError) else (str(error),)
    for sentence in sentences:
        named = file is None or file.name in sentence
        say(sentence if named else f"{file}: {sentence}", sys.stderr)


def usage_sentence(error: click.ClickException) -> str:
    """Return what is wrong with what was typed, and where to read what can be typed."""
    context = error.ctx if isinstance(error, click.UsageError) else None
    command = context.command_path if context else "enclosure-app"
    sentence = " ".join(error.format_message().split())
    return f"{sentence} Type `{command} --help` to see what can be typed."


@contextmanager
def own_faults_in_words(subject: str) -> Iterator[None]:
    """Turn a fault of the program itself into a sentence that owns up to it.

    ``ENCLOSURE_TRACEBACK`` in the environment lets the fault through, for developers.

    Raises:
        EnclosureError: the program, or the system beneath it, failed at `subject`.
    """
    try:
        yield
    except (EnclosureError, click.ClickException, click.Abort, click.exceptions.Exit):
        raise
    except OSError as error:
        raise EnclosureError(
            f"{subject}: the system refuses ({error}); mend that and try again."
        ) from error
    except Exception as error:
        if os.environ.get("ENCLOSURE_TRACEBACK"):
            raise
        raise EnclosureError(
            f"{subject}: the program itself failed ({type(error).__name__}: {error}); that is "
            "its fault and not yours: please send its developers this sentence and the drawing."
        ) from error
