"""Tells others that a project is open: a small file beside it says who has it.

The lock of ``house.enclosure.json`` is ``.house.enclosure.json.lock``: JSON with who, host, pid
and since. It warns and does not prevent: whoever wants may take it over by force.
"""

import json
import os
import socket
from contextlib import suppress
from dataclasses import asdict, dataclass
from datetime import UTC, datetime
from getpass import getuser
from pathlib import Path
from types import TracebackType
from uuid import uuid4

from enclosure_app.errors import EnclosureError
from enclosure_app.files.project.processes import runs, started
from enclosure_app.language import say


@dataclass(frozen=True, slots=True)
class Holder:
    """Who has a project open: `since` is UTC in ISO 8601, `began` tells processes of one pid apart."""

    who: str
    host: str
    pid: int
    since: str
    began: str = ""

    @property
    def gone(self) -> bool:
        """Whether that program surely runs no more; another computer's cannot be known."""
        return self.host == socket.gethostname() and not runs(self.pid, self.began)

    def __str__(self) -> str:
        """Return the holder in words."""
        return say(
            "{who} on {host} since {since} UTC",
            who=self.who or say("Somebody"),
            host=self.host,
            since=self.since.replace("T", " ")[:16],
        )


class HeldError(EnclosureError):
    """Somebody has the project open; `holder` says who, None where the lock cannot be read."""

    def __init__(self, path: Path, holder: Holder | None) -> None:
        who = say("by {holder}", holder=holder) if holder else say("by somebody else")
        super().__init__(
            say(
                "{file} is open {who}: ask them to close it, or open it to read only; whoever "
                "saves last overwrites the other's work.",
                file=path.name,
                who=who,
            )
        )
        self.holder = holder


@dataclass(frozen=True, slots=True)
class Lock:
    """A project that this program has open; release it on closing.

    `note` is a sentence for the person, "" where there is nothing to say. A lock without a
    `holder` warns nobody, because the folder cannot be written to.
    """

    path: Path
    holder: Holder | None
    note: str = ""

    @classmethod
    def take(cls, path: Path, *, by_force: bool = False) -> "Lock":
        """Say that the project at `path` is open here.

        Args:
            path: The project.
            by_force: Take it even though somebody has it.

        Raises:
            HeldError: somebody has it open.
        """
        mine = _myself()
        place = lock_path(path)
        note = ""
        try:
            if not _placed(place, mine):
                held = _holder(place)
                if held is not None and not held.gone and not by_force:
                    raise HeldError(path, held)
                if held is None and place.exists() and not by_force:
                    raise HeldError(path, None)
                note = _taken_over(path, held)
                _set_aside(place, held)
                if not _placed(place, mine):
                    raise HeldError(path, _holder(place))
        except OSError as error:
            return cls(path, None, _unwarned(path, error))
        return cls(path, mine, note)

    def release(self) -> None:
        """Say that the project is closed here; a lock that somebody took over is left alone."""
        place = lock_path(self.path)
        if self.holder is not None and _holder(place) == self.holder:
            with suppress(OSError):  # a lock that stays is taken over by the next who opens
                place.unlink()

    def __enter__(self) -> "Lock":
        """Return the lock."""
        return self

    def __exit__(
        self,
        kind: type[BaseException] | None,
        error: BaseException | None,
        trace: TracebackType | None,
    ) -> None:
        """Release the lock."""
        self.release()


def lock_path(path: Path) -> Path:
    """Return where it stands who has the project at `path` open."""
    return path.with_name(f".{path.name}.lock")


def _myself() -> Holder:
    try:
        who = getuser()
    except (OSError, KeyError, ImportError):  # an account without a name
        who = ""
    now = datetime.now(UTC).isoformat(timespec="seconds")
    return Holder(who, socket.gethostname(), os.getpid(), now, started(os.getpid()))


def _placed(place: Path, holder: Holder) -> bool:
    """Put the lock there, whole at once; False where there is one already."""
    part = place.with_name(f"{place.name}.{uuid4().hex}")
    part.write_text(json.dumps(asdict(holder)), encoding="utf-8")
    try:
        os.link(part, place)
    except FileExistsError:
        return False
    except OSError:  # a file system without links: the name alone must do
        return _placed_unlinked(place, part)
    finally:
        part.unlink(missing_ok=True)
    return True


def _placed_unlinked(place: Path, part: Path) -> bool:
    try:
        with place.open("xb") as file:
            file.write(part.read_bytes())
    except FileExistsError:
        return False
    return True


def _holder(place: Path) -> Holder | None:
    """Return who holds the lock, None where there is none or it cannot be understood."""
    try:
        table = json.loads(place.read_bytes())
        holder = Holder(**table)
    except (OSError, ValueError, TypeError):
        return None
    texts = (holder.who, holder.host, holder.since, holder.began)
    sound = isinstance(holder.pid, int) and all(isinstance(text, str) for text in texts)
    return holder if sound else None


def _set_aside(place: Path, judged: Holder | None) -> None:
    """Remove the lock that was judged, and no other that somebody put there meanwhile."""
    aside = place.with_name(f"{place.name}.{uuid4().hex}")
    try:
        place.rename(aside)
    except FileNotFoundError:
        return
    if _holder(aside) != judged:
        with suppress(OSError):
            os.link(aside, place)
    aside.unlink(missing_ok=True)


def _taken_over(path: Path, held: Holder | None) -> str:
    if held is None:
        return ""
    if held.gone:
        return say(
            "{file} was not closed properly by {held}: what was not saved then may be in the "
            "autosave.",
            file=path.name,
            held=held,
        )
    return say(
        "{file} was taken over; it is still open by {held}: tell them before you save.",
        file=path.name,
        held=held,
    )


def _unwarned(path: Path, error: OSError) -> str:
    return say(
        "Nobody is warned that {file} is open here, because its folder cannot be written "
        "to ({reason}): save it elsewhere.",
        file=path.name,
        reason=error.strerror,
    )
