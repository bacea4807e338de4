"""Work off the window's own thread: done in order, told of, stopped, refused in a sentence."""

from threading import Event, current_thread, main_thread

from pytestqt.exceptions import capture_exceptions
from pytestqt.qtbot import QtBot

from enclosure_app.errors import EnclosureError
from enclosure_app.window.apart.underlay_work import Tell, Work


def test_it_is_done_in_another_thread_and_told_in_this_one(qtbot: QtBot) -> None:
    threads = []

    def does(tell: Tell) -> str:
        tell(0.5)
        threads.append(current_thread())
        return "read"

    work = Work(does)
    went: list[float] = []
    work.went.connect(went.append)
    work.done.connect(lambda _: threads.append(current_thread()))
    with qtbot.waitSignal(work.done) as heard:
        work.start()
    assert heard.args == ["read"]
    assert threads[0] is not main_thread()
    assert threads[1] is main_thread()
    qtbot.waitUntil(lambda: went == [0.0, 0.5])


def test_what_cannot_be_done_is_said(qtbot: QtBot) -> None:
    def does(_: Tell) -> None:
        raise EnclosureError("It is empty.")

    work = Work(does)
    with qtbot.waitSignal(work.failed) as heard:
        work.start()
    assert heard.args == ["It is empty."]


def test_nothing_is_heard_of_what_was_stopped(qtbot: QtBot) -> None:
    begun, go_on = Event(), Event()
    reached: list[str] = []

    def does(tell: Tell) -> None:
        begun.set()
        go_on.wait(5)
        tell(0.5)
        reached.append("the end")

    work, after = Work(does), Work(lambda _: None)
    heard: list[object] = []
    work.done.connect(heard.append)
    work.start()
    assert begun.wait(5)
    work.stop()
    go_on.set()
    with qtbot.waitSignal(after.done):
        after.start()
    assert (heard, reached) == ([], [])


def test_a_fault_of_the_program_is_not_hidden(qtbot: QtBot) -> None:
    def does(_: Tell) -> None:
        raise ZeroDivisionError

    with capture_exceptions() as caught:
        Work(does).start()
        after = Work(lambda _: None)
        with qtbot.waitSignal(after.done):
            after.start()
    assert [kind for kind, *_ in caught] == [ZeroDivisionError]
