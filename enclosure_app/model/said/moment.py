"""Moments: when something was said, by the clock of whoever said it.

A moment is kept as ISO 8601 with the writer's offset from UTC, ``2026-03-02T10:15:00+02:00``: it
is one instant in UTC for everybody, and it still tells that it was a quarter past ten there.
"""

from datetime import UTC, datetime

_NEVER = datetime.min.replace(tzinfo=UTC)


def now() -> str:
    """Return this moment, with the offset of the clock here."""
    return moment(datetime.now(UTC).astimezone())


def moment(at: datetime) -> str:
    """Return a time that knows its offset as it is kept, to the second."""
    return at.isoformat(timespec="seconds")


def instant(when: str) -> datetime:
    """Return the instant of a moment, in UTC.

    One without an offset is taken for UTC, as the first version of the program wrote it. Words
    that are no moment come before all moments.
    """
    try:
        at = datetime.fromisoformat(when)
        return (at if at.tzinfo else at.replace(tzinfo=UTC)).astimezone(UTC)
    except (ValueError, OverflowError):
        return _NEVER


def shown(when: str) -> str:
    """Return a moment for people, by the writer's clock: ``2026-03-02 10:15 (UTC+02:00)``."""
    try:
        at = datetime.fromisoformat(when)
    except ValueError:
        return when
    offset = at.isoformat(timespec="seconds")[19:]
    zone = f"UTC{offset}" if offset not in ("", "+00:00") else "UTC"
    return f"{at:%Y-%m-%d %H:%M} ({zone})"
