"""Keeps a copy of unsaved work beside the project, and finds it again after a crash.

The copy of ``house.enclosure.json`` is ``.house.enclosure.json.autosave`` in the same folder.
Saving the project makes it useless; whoever saves discards it.
"""

from dataclasses import dataclass
from datetime import UTC, datetime
from pathlib import Path

from enclosure_app.errors import EnclosureError
from enclosure_app.files.atomic import write_atomically
from enclosure_app.files.project.file import load_project, project_bytes
from enclosure_app.language import say
from enclosure_app.model.project import Project


@dataclass(frozen=True, slots=True)
class Recovery:
    """Work that was not saved: the autosave `copy` of the project at `path`, written at `when`."""

    path: Path
    copy: Path
    when: datetime

    def load(self) -> Project:
        """Return the unsaved project.

        Raises:
            EnclosureError: the copy cannot be read (see `load_project`).
        """
        return load_project(self.copy)

    def discard(self) -> None:
        """Throw the copy away."""
        discard_autosave(self.path)


def autosave_path(path: Path) -> Path:
    """Return where the unsaved work on the project at `path` is kept."""
    return path.with_name(f".{path.name}.autosave")


def autosave(project: Project, path: Path) -> None:
    """Keep a copy of the project beside `path`; the project's own file is not touched.

    Raises:
        EnclosureError: as `save_project`.
    """
    write_atomically(autosave_path(path), project_bytes(project, path.name))


def find_recovery(path: Path) -> Recovery | None:
    """Return the unsaved work on a project: a copy that is newer than its file and different.

    A project that was never saved, or whose file is gone, has unsaved work if there is a copy.

    Raises:
        EnclosureError: the copy or the file cannot be looked at.
    """
    copy = autosave_path(path)
    try:
        written = copy.stat().st_mtime_ns
        if path.exists() and (
            path.stat().st_mtime_ns > written or path.read_bytes() == copy.read_bytes()
        ):
            return None
    except FileNotFoundError:
        return None
    except OSError as error:
        raise EnclosureError(
            say(
                "{name}: the autosave cannot be read ({reason}); look at the permissions of "
                "{folder}.",
                name=copy.name,
                reason=error.strerror,
                folder=copy.parent.resolve(),
            )
        ) from error
    return Recovery(path, copy, datetime.fromtimestamp(written / 1e9, UTC))


def discard_autosave(path: Path) -> None:
    """Throw away the copy of unsaved work on the project at `path`, if there is one.

    Raises:
        EnclosureError: the folder refuses.
    """
    copy = autosave_path(path)
    try:
        copy.unlink(missing_ok=True)
    except OSError as error:
        raise EnclosureError(
            say(
                "{name}: the autosave cannot be removed ({reason}); remove it by hand.",
                name=copy.name,
                reason=error.strerror,
            )
        ) from error
