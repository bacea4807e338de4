"""How far work is, and how it is stopped."""

from pathlib import Path

import pytest

from enclosure_app.files.projects import read_project
from enclosure_app.progress import (
    Progress,
    StoppedError,
    go_on,
    gone_through,
    listening,
    part,
    tell,
    told_text,
)


def heard(told: list[float]) -> list[float]:
    return [round(share, 2) for share in told]


def test_nobody_need_listen() -> None:
    tell(0.5)
    assert list(gone_through([1, 2], 0, 1)) == [1, 2]


def test_going_on_takes_nothing_back_and_ends_what_is_not_wanted() -> None:
    progress = Progress()
    with listening(progress.tell), part(0.5, 1.0):
        tell(0.5)
        go_on()
        assert progress.share == 0.75
        progress.stop()
        with pytest.raises(StoppedError):
            go_on()


def test_a_part_tells_its_share_of_the_whole() -> None:
    told: list[float] = []
    with listening(told.append), part(0.5, 1.0), part(0.0, 0.5):
        tell(0.0)
        tell(1.0)
    tell(0.9)
    assert heard(told) == [0.5, 0.75]


def test_many_items_are_told_now_and_then() -> None:
    told: list[float] = []
    with listening(told.append):
        assert len(list(gone_through(list(range(2000)), 0.2, 0.6))) == 2000
        assert len(list(gone_through((n for n in range(600)), 0.6, 0.9))) == 600
    assert heard(told) == [0.2, 0.3, 0.4, 0.5], "the length of the second is not known"


def test_a_text_tells_how_far_it_is_read(tmp_path: Path) -> None:
    path = tmp_path / "long.txt"
    path.write_text("a line\n" * 40_000, encoding="utf-8")
    told: list[float] = []
    with listening(told.append), told_text(path, "utf-8", "strict", 0.5) as text:
        assert sum(1 for _ in text) == 40_000
    assert told == sorted(told)
    assert 0 < told[0] < 0.2
    assert told[-1] == 0.5


def test_what_is_stopped_goes_on_no_more_and_says_so_to_whoever_can_end_it() -> None:
    progress, ended = Progress(), []
    progress.tell(0.4)
    progress.tell(0.2)
    assert progress.share == 0.4, "what was told is never taken back"
    progress.when_stopped(lambda: ended.append("ended"))
    progress.stop()
    assert ended == ["ended"]
    with pytest.raises(StoppedError):
        progress.tell(0.5)
    progress.when_stopped(lambda: ended.append("late"))
    assert ended == ["ended", "late"]


def test_reading_a_drawing_tells_from_the_beginning_to_near_the_end() -> None:
    told: list[float] = []
    with listening(told.append):
        read_project(Path(__file__).parents[1] / "samples" / "parapet.dxf")
    assert told[0] <= 0.25
    assert told[-1] >= 0.6
