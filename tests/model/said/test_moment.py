"""A moment is one instant for everybody and keeps the clock of whoever wrote it."""

from datetime import UTC, datetime, timedelta, timezone

import pytest

from enclosure_app.model.said.moment import instant, moment, now, shown

HELSINKI = timezone(timedelta(hours=2))


def test_a_moment_keeps_the_writers_clock_and_is_one_instant_in_utc() -> None:
    kept = moment(datetime(2026, 3, 2, 10, 15, 30, 999, HELSINKI))
    assert kept == "2026-03-02T10:15:30+02:00"
    assert instant(kept) == datetime(2026, 3, 2, 8, 15, 30, tzinfo=UTC)
    assert instant(kept) == instant("2026-03-02T08:15:30+00:00") == instant("2026-03-02T08:15:30")


@pytest.mark.parametrize("when", ["", "yesterday", "0001-01-01T00:00:00+14:00"])
def test_words_that_are_no_moment_come_first(when: str) -> None:
    assert instant(when) < instant("1900-01-01T00:00:00+00:00")


@pytest.mark.parametrize(
    ("when", "told"),
    [
        ("2026-03-02T10:15:30+02:00", "2026-03-02 10:15 (UTC+02:00)"),
        ("2026-03-02T08:15:30+00:00", "2026-03-02 08:15 (UTC)"),
        ("2026-03-02T08:15:30", "2026-03-02 08:15 (UTC)"),
        ("in spring", "in spring"),
    ],
)
def test_people_read_it_by_the_writers_clock(when: str, told: str) -> None:
    assert shown(when) == told


def test_now_knows_its_offset() -> None:
    assert datetime.fromisoformat(now()).tzinfo is not None
    assert abs(instant(now()) - datetime.now(UTC)) < timedelta(seconds=5)
