"""What a file holds, byte by byte, or in one sentence why nobody can tell."""

from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from enclosure_app.errors import EnclosureError
from enclosure_app.language import say


def content_of(path: Path, no_file: str) -> bytes:
    """Return all bytes of a file.

    Args:
        path: The file.
        no_file: The sentence to be said where something else is there, such as a folder.

    Raises:
        EnclosureError: it is not there, is no file, or cannot be read.
    """
    missed(path)
    if not path.is_file():
        raise EnclosureError(no_file)
    with unreadable_told(path):
        return path.read_bytes()


def missed(path: Path) -> None:
    """Say so where nothing is there.

    Raises:
        EnclosureError: nothing is there.
    """
    if not path.exists():
        raise EnclosureError(
            say(
                "{file}: there is no such file in {folder}.",
                file=path.name,
                folder=path.resolve().parent,
            )
        )


@contextmanager
def unreadable_told(path: Path) -> Iterator[None]:
    """Tell in words what hinders the reading of a file.

    Raises:
        EnclosureError: the system does not let it be read.
    """
    try:
        yield
    except OSError as error:
        raise EnclosureError(
            say(
                "{file}: the file cannot be read: {reason}.", file=path.name, reason=error.strerror
            )
        ) from None
