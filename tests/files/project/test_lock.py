"""A lock says who has a project open, and one that a crash left is taken over."""

import json
import os
import socket
import subprocess
import sys
from collections.abc import Iterator
from pathlib import Path

import pytest

from enclosure_app.errors import EnclosureError
from enclosure_app.files.project.lock import HeldError, Holder, Lock, lock_path

HERE = socket.gethostname()


@pytest.fixture
def path(tmp_path: Path) -> Path:
    return tmp_path / "house.enclosure.json"


@pytest.fixture
def running() -> Iterator[int]:
    """Give the pid of another process that runs."""
    with subprocess.Popen([sys.executable, "-c", "input()"], stdin=subprocess.PIPE) as process:
        yield process.pid
        process.communicate(b"\n")


def _held(path: Path, **how: object) -> None:
    held = {
        "who": "Ida",
        "host": HERE,
        "pid": 1,
        "since": "2026-03-02T08:15:00+00:00",
        "began": "",
    }
    lock_path(path).write_text(json.dumps({**held, **how}))


def _dead_pid() -> int:
    process = subprocess.Popen([sys.executable, "-c", ""])
    process.wait()
    return process.pid


def test_a_lock_names_this_process_while_it_is_held_and_is_gone_afterwards(path: Path) -> None:
    with Lock.take(path) as lock:
        table = json.loads(lock_path(path).read_text())
        assert table["pid"] == os.getpid()
        assert table["host"] == HERE
        assert lock.holder == Holder(**table)
        assert lock.note == ""
    assert list(path.parent.iterdir()) == []


def test_somebody_who_has_it_open_is_named(path: Path, running: int) -> None:
    _held(path, pid=running)
    with pytest.raises(HeldError) as caught:
        Lock.take(path)
    assert str(caught.value) == (
        f"house.enclosure.json is open by Ida on {HERE} since 2026-03-02 08:15 UTC: ask them to "
        "close it, or open it to read only; whoever saves last overwrites the other's work."
    )
    assert caught.value.holder is not None
    assert caught.value.holder.pid == running
    assert isinstance(caught.value, EnclosureError)


def test_a_second_taking_in_the_same_program_is_refused_too(path: Path) -> None:
    with Lock.take(path), pytest.raises(HeldError):
        Lock.take(path)


def test_the_lock_of_a_process_that_died_is_taken_over_with_a_note(path: Path) -> None:
    _held(path, pid=_dead_pid())
    with Lock.take(path) as lock:
        assert lock.note.startswith("house.enclosure.json was not closed properly by Ida on")
        assert json.loads(lock_path(path).read_text())["pid"] == os.getpid()
    assert list(path.parent.iterdir()) == []


@pytest.mark.skipif(not Path("/proc/self/stat").exists(), reason="The system does not tell.")
def test_a_pid_that_was_given_again_to_another_process_does_not_hold(
    path: Path, running: int
) -> None:
    _held(path, pid=running, began="another boot 12345")
    with Lock.take(path) as lock:
        assert "was not closed properly by Ida" in lock.note


def test_a_process_of_another_computer_cannot_be_known_to_be_gone(path: Path) -> None:
    _held(path, host="site-office", pid=_dead_pid())
    with pytest.raises(HeldError, match="is open by Ida on site-office since"):
        Lock.take(path)


def test_a_lock_taken_by_force_says_whose_it_was_and_is_not_released_by_them(path: Path) -> None:
    theirs = Lock.take(path)
    ours = Lock.take(path, by_force=True)
    assert "was taken over; it is still open by" in ours.note
    _held(path, who="Ours")
    theirs.release()
    assert lock_path(path).exists()


def test_a_lock_that_cannot_be_understood_still_holds_until_it_is_forced(path: Path) -> None:
    for content in ("", "{", "[]", '{"who": 5}', json.dumps({"who": "Ida"})):
        lock_path(path).write_text(content)
        with pytest.raises(HeldError, match="is open by somebody else"):
            Lock.take(path)
    Lock.take(path, by_force=True).release()
    assert list(path.parent.iterdir()) == []


def test_in_a_folder_that_cannot_be_written_to_the_lock_warns_nobody_and_says_so(
    path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def refuse(*_: object, **__: object) -> int:
        raise PermissionError(13, "Permission denied")

    monkeypatch.setattr(Path, "write_text", refuse)
    lock = Lock.take(path)
    assert lock.holder is None
    assert lock.note.startswith("Nobody is warned that house.enclosure.json is open here")
    lock.release()


def test_a_file_system_without_links_does_too(path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    def refuse(*_: object) -> None:
        raise OSError(95, "Operation not supported")

    monkeypatch.setattr(os, "link", refuse)
    with Lock.take(path), pytest.raises(HeldError, match=f"on {HERE}"):
        Lock.take(path)
    assert list(path.parent.iterdir()) == []


def test_of_many_who_take_it_at_once_only_one_has_it(path: Path) -> None:
    """Eight processes wait for one signal and take the lock left by a dead one."""
    _held(path, pid=_dead_pid())
    script = (
        "import sys, time; from pathlib import Path\n"
        "from enclosure_app.files.project.lock import HeldError, Lock\n"
        "print('ready', flush=True); input()\n"
        "try: Lock.take(Path(sys.argv[1])); print('mine', flush=True)\n"
        "except HeldError: print('held', flush=True)\n"
        "input()\n"
    )
    started = [
        subprocess.Popen(
            [sys.executable, "-c", script, str(path)],
            stdin=subprocess.PIPE,
            stdout=subprocess.PIPE,
            text=True,
            bufsize=1,
        )
        for _ in range(8)
    ]
    said = []
    for process in started:
        assert process.stdout
        assert process.stdout.readline() == "ready\n"
    for process in started:
        assert process.stdin
        process.stdin.write("\n")
    for process in started:
        assert process.stdout
        said.append(process.stdout.readline().strip())
    for process in started:
        process.communicate("\n")
    assert sorted(said) == ["held"] * 7 + ["mine"]
