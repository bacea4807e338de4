"""Long work: it replaces or waits, it is stopped or comes to its end, and the window goes on."""

from collections.abc import Callable, Iterator
from functools import partial
from threading import Event, get_ident

import pytest
from pytestqt.qtbot import QtBot

from enclosure_app.errors import EnclosureError
from enclosure_app.progress import Progress
from enclosure_app.window.apart.working import Job, Lane, Working


@pytest.fixture
def working(qtbot: QtBot) -> Iterator[Working]:
    made = Working()
    yield made
    made.close()


class Held:
    """Work that lasts until it is let go or stopped."""

    def __init__(self) -> None:
        self.go = Event()
        self.begun = Event()
        self.thread = 0

    def __call__(self, progress: Progress) -> str:
        self.thread = get_ident()
        self.begun.set()
        while not self.go.wait(0.005):
            progress.go_on()
        return "done"


def test_work_is_done_elsewhere_and_its_result_comes_here(working: Working, qtbot: QtBot) -> None:
    came: list[tuple[object, int]] = []
    work = Held()
    work.go.set()
    working.begin(
        Job(Lane.READING, "Reading", work, then=lambda got: came.append((got, get_ident())))
    )
    qtbot.waitUntil(lambda: bool(came))
    assert came == [("done", get_ident())]
    assert work.thread != get_ident()
    assert working.jobs == ()


def test_a_newer_wish_ends_the_older_one_which_comes_to_nothing(
    working: Working, qtbot: QtBot
) -> None:
    came: list[str] = []
    first, second = Held(), Held()
    first.go.clear()
    second.go.set()
    then: Callable[[str], None] = came.append
    working.begin(Job(Lane.READING, "one", first, then=then, stopped=lambda: came.append("ended")))
    first.begun.wait(5)
    working.begin(Job(Lane.READING, "two", second, then=then))
    qtbot.waitUntil(lambda: "done" in came)
    qtbot.wait(30)
    assert came == ["ended", "done"]


def test_what_keeps_work_waits_its_turn(working: Working, qtbot: QtBot) -> None:
    came: list[str] = []
    first, second = Held(), Held()
    second.go.set()
    working.begin(Job(Lane.KEEPING, "one", first, then=lambda _: came.append("one")))
    working.begin(Job(Lane.KEEPING, "two", second, then=lambda _: came.append("two")))
    assert first.begun.wait(5)
    assert not second.begun.is_set()
    assert working.busy(Lane.KEEPING)
    first.go.set()
    qtbot.waitUntil(lambda: len(came) == 2)
    assert came == ["one", "two"]


def test_stopping_ends_what_is_told_and_spares_what_is_not(working: Working, qtbot: QtBot) -> None:
    came: list[str] = []
    told, untold = Held(), Held()
    working.begin(Job(Lane.READING, "Reading", told, stopped=lambda: came.append("ended")))
    working.begin(Job(Lane.KEEPING, "", untold, then=lambda _: came.append("kept")))
    told.begun.wait(5)
    untold.begun.wait(5)
    working.stop()
    assert came == ["ended"]
    untold.go.set()
    qtbot.waitUntil(lambda: "kept" in came)


def test_saving_that_is_stopped_in_time_says_so_once(working: Working, qtbot: QtBot) -> None:
    came: list[str] = []
    work = Held()
    working.begin(
        Job(
            Lane.KEEPING,
            "Saving",
            work,
            then=lambda _: came.append("saved"),
            stopped=lambda: came.append("ended"),
        )
    )
    work.begun.wait(5)
    working.stop()
    qtbot.waitUntil(lambda: bool(came))
    assert came == ["ended"]


def test_a_refusal_comes_as_a_refusal(working: Working, qtbot: QtBot) -> None:
    def refuse(_: Progress) -> None:
        raise EnclosureError("The file is gone.")

    came: list[str] = []
    working.begin(Job(Lane.READING, "x", refuse, refused=lambda error: came.append(str(error))))
    qtbot.waitUntil(lambda: bool(came))
    assert came == ["The file is gone."]


def test_closing_waits_for_what_keeps_work_and_ends_the_rest(qtbot: QtBot) -> None:
    working = Working()
    kept: list[str] = []
    reading = Held()

    def keep(_: Progress) -> None:
        Event().wait(0.1)
        kept.append("kept")

    working.begin(Job(Lane.READING, "Reading", reading))
    working.begin(Job(Lane.KEEPING, "", keep))
    reading.begun.wait(5)
    working.close()
    assert kept == ["kept"]


def test_at_once_means_before_it_returns(qtbot: QtBot) -> None:
    came: list[int] = []
    working = Working(apart=False)
    working.begin(Job(Lane.READING, "x", lambda _: get_ident(), then=came.append))
    assert came == [get_ident()]


def _tell(came: list[str], name: str, _: object) -> None:
    came.append(name)


def test_what_is_taken_in_waits_its_turn_and_is_given_up_only_by_the_person(
    working: Working, qtbot: QtBot
) -> None:
    came: list[str] = []
    first, second, third = Held(), Held(), Held()
    for name, work in (("one", first), ("two", second), ("three", third)):
        job = Job(Lane.TAKING_IN, name, work)
        job.then, job.stopped = partial(_tell, came, name), partial(came.append, f"{name} ended")
        working.begin(job)
    first.begun.wait(5)
    assert not second.begun.is_set()
    first.go.set()
    qtbot.waitUntil(lambda: came == ["one"])
    working.stop()
    assert came == ["one", "two ended", "three ended"]
    assert not working.busy(Lane.TAKING_IN)
