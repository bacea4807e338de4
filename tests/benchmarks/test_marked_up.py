"""What annotations and layers cost a large set: ratios within one run, and the size of the file.

Run with ``pytest tests/benchmarks --benchmark-only``. Times are processor time.
"""

import os

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

from collections.abc import Callable
from pathlib import Path
from statistics import median
from time import process_time

from pytest_benchmark.fixture import BenchmarkFixture

from enclosure_app.drawing.sheet.job import SheetJob
from enclosure_app.drawing.sheet.sheet import compose_sheets
from enclosure_app.drawing.theme import load_theme
from enclosure_app.reports.pdf.pages import PaintedPage, painted
from enclosure_app.reports.pdf.report import write_sheets
from tests.drawing import eave

FINDINGS, ROUNDS = 200, 5


def seconds(task: Callable[[], object]) -> float:
    def timed() -> float:
        start = process_time()
        task()
        return process_time() - start

    return median(timed() for _ in range(ROUNDS))


def test_a_set_of_two_hundred_findings_costs_at_most_twice_and_a_half_what_it_shows(
    benchmark: BenchmarkFixture, tmp_path: Path, qapp: object
) -> None:
    """With layers, annotations and bookmarks, against composing and painting the marks alone."""
    drawing, theme, path = eave.drawing(eave.crowded(FINDINGS)), load_theme(), tmp_path / "set.pdf"

    def bare() -> None:
        pages = compose_sheets((drawing,), SheetJob(), theme)
        painted([PaintedPage(p.width, p.height, p.numbered(1, 1, theme)) for p in pages])

    alone = seconds(bare)
    whole = seconds(lambda: write_sheets(path, (drawing,), SheetJob()))
    benchmark.extra_info.update(bare=alone, whole=whole, bytes=path.stat().st_size)
    benchmark.pedantic(lambda: write_sheets(path, (drawing,), SheetJob()), rounds=3)
    assert whole < 2.5 * alone
    assert path.stat().st_size < 1_000_000
