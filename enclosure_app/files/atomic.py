"""Writes a file so that at any moment it is wholly the old one or wholly the new one."""

import os
import stat
import time
from contextlib import suppress
from pathlib import Path
from tempfile import mkstemp

from enclosure_app.errors import EnclosureError
from enclosure_app.language import say

FORGOTTEN = 3600.0
"""Seconds after which a part file is one that a crash has left, not one being written."""


def write_atomically(path: Path, data: bytes) -> None:
    """Write `data` to `path`: a crash or a power cut leaves the old file or the new one, whole.

    The bytes go into a hidden part file beside it, onto the disk, and only then take its name.
    A link is followed, and the permissions of a file that is there are kept.

    Raises:
        EnclosureError: the folder or the disk refuses; the old file is as it was.
    """
    path = path.resolve()
    try:
        _write(path, data)
    except OSError as error:
        raise EnclosureError(
            say(
                "{file}: the file cannot be written in {folder} ({reason}); the old one is as it "
                "was: make room or save elsewhere.",
                file=path.name,
                folder=path.parent,
                reason=error.strerror or error,
            )
        ) from error
    _sweep(path)


def made_folder(folder: Path) -> None:
    """Make a folder, and those above it, where it is not there.

    Raises:
        EnclosureError: it cannot be made.
    """
    try:
        folder.mkdir(parents=True, exist_ok=True)
    except OSError as error:
        raise EnclosureError(
            say(
                "The folder {folder} cannot be made ({reason}): name another one.",
                folder=folder,
                reason=error.strerror or error,
            )
        ) from error


def _write(path: Path, data: bytes) -> None:
    handle, name = mkstemp(prefix=f".{path.name}.", suffix=".part", dir=path.parent)
    part = Path(name)
    try:
        with os.fdopen(handle, "wb") as file:
            file.write(data)
            file.flush()
            os.fsync(file.fileno())
        part.chmod(_mode(path))
        part.replace(path)
    except BaseException:  # an interrupt too must not leave the part file lying about
        part.unlink(missing_ok=True)
        raise
    _sync_folder(path.parent)


def _mode(path: Path) -> int:
    """Return the permissions of the old file, or those that a new file would get."""
    with suppress(FileNotFoundError):
        return stat.S_IMODE(path.stat().st_mode)
    mask = os.umask(0)
    os.umask(mask)
    return 0o666 & ~mask


def _sync_folder(folder: Path) -> None:
    """Bring the new name onto the disk; Windows cannot open a folder and does so by itself."""
    if os.name == "nt":
        return
    handle = os.open(folder, os.O_RDONLY)
    try:
        os.fsync(handle)
    finally:
        os.close(handle)


def _sweep(path: Path) -> None:
    """Remove part files that a crash left long ago; one that cannot be removed does no harm."""
    for part in path.parent.iterdir():
        ours = part.name.startswith(f".{path.name}.") and part.suffix == ".part"
        if ours:
            with suppress(OSError):
                if time.time() - part.stat().st_mtime > FORGOTTEN:
                    part.unlink()
