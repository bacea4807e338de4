"""Reads files, and writes very large sheets, in a process of its own: the window is free meanwhile.

A thread would not do: while the library makes or forgets a hundred thousand entities it holds the
interpreter for half a second at a time. The process waits for one order after another on its
standard input and answers on its standard output; it ends when its input does.
"""

import copyreg
import glob
import os
import pickle
import subprocess
import sys
import traceback
from collections.abc import Mapping
from contextlib import suppress
from dataclasses import dataclass, fields
from operator import attrgetter
from pathlib import Path
from threading import Lock
from time import monotonic
from types import MappingProxyType
from typing import IO, Any

import enclosure_app
from enclosure_app.drawing.sheet.job import SheetJob
from enclosure_app.errors import EnclosureError
from enclosure_app.files.dxf.memory import kept_in_use
from enclosure_app.language import say
from enclosure_app.model.project import Project
from enclosure_app.model.report import DrawingResult
from enclosure_app.model.section import Stroke
from enclosure_app.progress import Progress, listening
from enclosure_app.reports.pdf.report import write_sheets
from enclosure_app.window.apart.orders import Order, read_order

COMMAND = "read-apart"
"""The hidden command that runs this process."""

_PAUSE = 0.05  # seconds between two tellings
_PROTOCOL = 5


@dataclass(frozen=True, slots=True)
class SheetOrder:
    """The sheets of drawings, to be written as a PDF to `path`."""

    path: Path
    results: tuple[DrawingResult, ...]
    job: SheetJob


@dataclass(frozen=True, slots=True)
class _Written:
    """The sheets are written."""


@dataclass(frozen=True, slots=True)
class _Told:
    share: float


@dataclass(frozen=True, slots=True)
class _Failed:
    """The process failed by a fault of its own."""

    trace: str


class Reader:
    """Orders files from the process; one order at a time, from one thread at a time.

    `language` is the code of the language in which the process says what it has to say.
    """

    def __init__(self, language: str = "en") -> None:
        self.language = language
        self._process: subprocess.Popen[bytes] | None = None
        self._guard = Lock()

    def warm(self) -> None:
        """Start the process, so that the first file need not wait for it."""
        with self._guard:
            if self._process is None or self._process.poll() is not None:
                self._process = _started(self.language)

    def read(self, order: Order, progress: Progress) -> Project:
        """Have an order read.

        Raises:
            EnclosureError: a file of it cannot be read.
            StoppedError: it is wanted no more.
        """
        read: Project = self._ask(order, progress)
        return read

    def write(self, order: SheetOrder, progress: Progress) -> None:
        """Have sheets written.

        Raises:
            EnclosureError: there is nothing to draw, or the file cannot be written.
            StoppedError: they are wanted no more; a file that was there is as it was.
        """
        try:
            self._ask(order, progress)
        finally:
            if progress.stopped:
                for part in order.path.parent.glob(f".{glob.escape(order.path.name)}.*.part"):
                    part.unlink(missing_ok=True)

    def _ask(self, order: Order | SheetOrder, progress: Progress) -> Any:  # noqa: ANN401  what is asked for
        self.warm()
        process = self._process
        if process is None or process.stdin is None or process.stdout is None:
            raise AssertionError("The process was started with both its pipes.")
        progress.when_stopped(lambda: self._let_go(process))
        try:
            with kept_in_use():
                _send(process.stdin, order)
            return self._answer(process.stdout, progress)
        except (EOFError, OSError, pickle.UnpicklingError):
            self._let_go(process)
            progress.go_on()
            raise EnclosureError(_died(order)) from None
        finally:
            progress.when_stopped(_nothing)
            if process is not self._process:
                _buried(process)

    def close(self) -> None:
        """End the process."""
        process = self._process
        if process:
            self._let_go(process)
            _buried(process)

    def _let_go(self, process: "subprocess.Popen[bytes]") -> None:
        """End a process; the next order is for another one."""
        with self._guard:
            if self._process is process:
                self._process = None
        process.kill()

    def _answer(self, pipe: IO[bytes], progress: Progress) -> object:
        while True:
            with kept_in_use():
                said = pickle.load(pipe)  # noqa: S301  from our own process
            progress.go_on()
            if isinstance(said, _Told):
                progress.tell(said.share)
            elif isinstance(said, Project | _Written):
                return said
            elif isinstance(said, EnclosureError):
                raise said
            else:
                raise RuntimeError(f"Reading apart failed:\n{said.trace}")  # noqa: TRY004  ours


def serve(language: str = "en") -> None:
    """Be the process: read what is ordered until there are no more orders."""
    if language != "en":
        _speak(language)
    answers = os.fdopen(os.dup(1), "wb")
    os.dup2(2, 1)  # what anything else prints is no answer
    orders = sys.stdin.buffer
    with suppress(EOFError, KeyboardInterrupt):
        while True:
            order = pickle.load(orders)  # noqa: S301  from the window that started it
            _send(answers, _done(order, answers))


def _done(order: Order | SheetOrder, answers: IO[bytes]) -> object:
    """Return what comes of an order: the project, word that it is written, or why not."""
    last = 0.0

    def told(share: float) -> None:
        nonlocal last
        if monotonic() - last > _PAUSE:
            last = monotonic()
            _send(answers, _Told(share))

    try:
        with listening(told):
            return read_order(order) if isinstance(order, Order) else _write(order)
    except EnclosureError as error:
        return error
    except Exception:  # noqa: BLE001  told in the window, as every fault of the program
        return _Failed(traceback.format_exc())


def _write(order: SheetOrder) -> _Written:
    write_sheets(order.path, order.results, order.job)
    return _Written()


def _speak(language: str) -> None:
    from PySide6.QtCore import QCoreApplication  # noqa: PLC0415  only other languages need it

    from enclosure_app.window.languages import speak_in, tongue_of  # noqa: PLC0415  as above

    application = QCoreApplication.instance() or QCoreApplication([COMMAND])
    speak_in(application, tongue_of(language))


def _started(language: str) -> "subprocess.Popen[bytes]":
    bundled = getattr(sys, "frozen", False)
    # -P: a file of the same name in the folder one works in is none of ours
    python = [sys.executable] if bundled else [sys.executable, "-P", "-m", "enclosure_app"]
    home = str(Path(enclosure_app.__file__).parent.parent)
    paths = os.pathsep.join(filter(None, (home, os.environ.get("PYTHONPATH"))))
    return subprocess.Popen(  # noqa: S603  our own program
        [*python, COMMAND, language],
        stdin=subprocess.PIPE,
        stdout=subprocess.PIPE,
        env={**os.environ, "PYTHONPATH": paths, "QT_QPA_PLATFORM": "offscreen"},
        creationflags=getattr(subprocess, "CREATE_NO_WINDOW", 0),
    )


def _buried(process: "subprocess.Popen[bytes]") -> None:
    """Wait for a process that was ended, and let go of its pipes."""
    process.wait()
    for pipe in (process.stdin, process.stdout):
        if pipe:
            with suppress(OSError):  # what was still to be written is wanted no more
                pipe.close()


def _send(pipe: IO[bytes], thing: object) -> None:
    pickler = pickle.Pickler(pipe, _PROTOCOL)
    pickler.dump(thing)
    pipe.flush()


def _died(order: Order | SheetOrder) -> str:
    if isinstance(order, SheetOrder):
        return say(
            "{name}: writing it was ended from outside, or the computer has too little memory for "
            "it: close other programs and write it again.",
            name=order.path.name,
        )
    names = ", ".join(path.name for path in order.paths)
    return say(
        "{names}: reading it was ended from outside, or the computer has too little "
        "memory for it: close other programs and open it again, or export less of the "
        "drawing.",
        names=names,
    )


def _nothing() -> None:
    """What is done when an order is stopped that is no longer read."""


def _fixed(table: Mapping[Any, Any]) -> MappingProxyType[Any, Any]:
    return MappingProxyType(dict(table))


copyreg.pickle(MappingProxyType, lambda table: (_fixed, (dict(table),)))
# a third faster than what a dataclass does by itself, and drawings are mostly these
_all_of = attrgetter(*(each.name for each in fields(Stroke)))
copyreg.pickle(Stroke, lambda stroke: (Stroke, _all_of(stroke)))
