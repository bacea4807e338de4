"""How much sooner a check is done after one point moved: ratios within one run.

Run with ``pytest tests/benchmarks --benchmark-only``. Times are processor time.
"""

import os

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

import random
from collections.abc import Callable, Iterator
from dataclasses import replace
from statistics import median
from time import process_time

import pytest
from PySide6.QtWidgets import QApplication
from pytest_benchmark.fixture import BenchmarkFixture

from enclosure_app.checker import check, check_section
from enclosure_app.drawing.placement import Placement, box_around
from enclosure_app.files.maps.rule_book import load_limits
from enclosure_app.model.drawing import Units
from enclosure_app.model.place import Line, Point
from enclosure_app.model.project import Project
from enclosure_app.model.section import Section
from enclosure_app.window.canvas.canvas import Canvas
from enclosure_app.window.canvas.ink.look import Look
from enclosure_app.window.canvas.picture.composition import composed
from enclosure_app.window.canvas.workplace import Workplace
from enclosure_app.window.document import Document
from tests.benchmarks.walls import wall_of_sheets

PIECES, MOVES = 2000, 25
LIMITS = load_limits()


def moves(section: Section, count: int) -> Iterator[Section]:
    """Yield the section with one point moved a little at a random place, and as it was, in turn."""
    chance = random.Random(2000)  # noqa: S311  the same places in every run
    for _ in range(count):
        number = chance.randrange(len(section.pieces))
        piece = section.pieces[number]
        assert isinstance(piece.shape, Line)
        points = list(piece.shape.points)
        at = chance.randrange(len(points))
        x, y = points[at]
        points[at] = (x + chance.uniform(-1.5, 1.5), y + chance.uniform(-8.0, 8.0))
        pieces = list(section.pieces)
        pieces[number] = replace(piece, shape=replace(piece.shape, points=tuple(points)))
        yield replace(section, pieces=tuple(pieces))
        yield section


def seconds(task: Callable[[], object]) -> float:
    start = process_time()
    task()
    return process_time() - start


def test_a_moved_point_is_checked_twenty_times_sooner_than_all(
    benchmark: BenchmarkFixture,
) -> None:
    section = wall_of_sheets(PIECES, gap=False)
    last = check(section, LIMITS)
    took: list[float] = []
    for moved in moves(section, MOVES):
        start = process_time()
        last = check(moved, LIMITS, last)
        took.append(process_time() - start)
    whole = min(seconds(lambda: check_section(section, LIMITS)) for _ in range(3))
    again = median(took)
    moved = next(moves(section, 1))
    assert check(moved, LIMITS, last).result == check_section(moved, LIMITS)
    benchmark.pedantic(lambda: check(moved, LIMITS, last), rounds=5)
    benchmark.extra_info |= {
        "again_ms": 1e3 * again, "whole_ms": 1e3 * whole, "ratio": whole / again,
    }  # fmt: skip
    assert whole >= 20 * again


def test_what_is_open_is_checked_again_no_slower_than_as_a_whole(
    benchmark: BenchmarkFixture,
) -> None:
    """The widest way in is looked for as a whole: where it runs may depend on all that is drawn."""
    section = wall_of_sheets(PIECES, gap=True)
    last = check(section, LIMITS)
    took = [seconds(lambda moved=moved: check(moved, LIMITS, last)) for moved in moves(section, 3)]
    whole = min(seconds(lambda: check_section(section, LIMITS)) for _ in range(2))
    benchmark.pedantic(lambda: check(next(moves(section, 1)), LIMITS, last), rounds=1)
    benchmark.extra_info |= {"again_ms": 1e3 * median(took), "whole_ms": 1e3 * whole}
    assert median(took) <= whole


@pytest.fixture
def canvas(qapp: QApplication) -> Iterator[Canvas]:
    """Return a view of 1366 by 768 on a wall; it is closed before it goes, as a window is.

    A widget that goes while it has the keys is told that it loses them, when it can hear no more.
    """
    del qapp
    section = wall_of_sheets(PIECES, gap=False)
    shown = Canvas(Workplace(Document(Project("", Units.MM, (section,)))))
    shown.resize(1366, 768)
    shown.show()
    yield shown
    shown.close()


@pytest.mark.qt_log_ignore("propagateSizeHints")
def test_a_moved_point_is_checked_and_painted_twenty_times_sooner_than_all_is_checked(
    benchmark: BenchmarkFixture, canvas: Canvas
) -> None:
    """The view is at the place already, as when somebody drags a point; then all is done at once.

    Check, composing, painting and the grab of a view of 1366 by 768 are counted; in the window
    the picture is painted in turns of ten milliseconds.
    """
    place, section = canvas.place, canvas.place.section
    assert section is not None
    last = check(section, LIMITS)
    place.result = last.result
    canvas.show_result(last.result, Look())
    checked: list[float] = []
    painted: list[float] = []
    for moved in moves(section, MOVES):
        canvas.go_to(_where(last.result.section, moved), across=600.0)
        canvas.finish_painting()
        start = process_time()
        last = check(moved, LIMITS, last)
        checked.append(process_time() - start)
        start = process_time()
        place.result = last.result
        canvas.show_result(last.result, Look())
        canvas.finish_painting()
        canvas.grab()
        painted.append(process_time() - start)
    whole = min(seconds(lambda: check_section(section, LIMITS)) for _ in range(3))
    both = median(a + b for a, b in zip(checked, painted, strict=True))
    benchmark.pedantic(canvas.grab, rounds=1)
    benchmark.extra_info |= {
        "again_ms": 1e3 * median(checked), "painted_ms": 1e3 * median(painted),
        "both_ms": 1e3 * both, "whole_ms": 1e3 * whole, "ratio": whole / both,
    }  # fmt: skip
    assert whole >= 20 * both


def test_all_in_view_is_composed_in_a_time_that_grows_with_the_pieces(
    benchmark: BenchmarkFixture,
) -> None:
    """Four times as many sheets take about four times as long, far from sixteen times."""

    def composing(count: int) -> float:
        result = check_section(wall_of_sheets(count, gap=False), LIMITS)
        window = box_around(result.section.frame)
        placement = Placement(50.0, window.centre)
        return min(seconds(lambda: composed(result, placement, window, Look())) for _ in range(2))

    few, many = composing(200), composing(800)
    benchmark.pedantic(lambda: composing(50), rounds=1)
    benchmark.extra_info |= {"few_ms": 1e3 * few, "many_ms": 1e3 * many, "ratio": many / few}
    assert many <= 8 * few


def _where(old: Section, new: Section) -> Point:
    """Return where a point has moved to."""
    pairs = zip(old.pieces, new.pieces, strict=True)
    shape = next((new.shape for old, new in pairs if old is not new), old.pieces[0].shape)
    assert isinstance(shape, Line)
    return shape.points[1]
