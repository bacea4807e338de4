"""What the pictures of a BCF file cost: ratios within one run, and the size of the file.

Run with ``pytest tests/benchmarks --benchmark-only``. Times are processor time.
"""

import os

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

from collections.abc import Callable
from dataclasses import replace
from datetime import UTC, datetime
from pathlib import Path
from statistics import median
from time import process_time

import pytest
from pytest_benchmark.fixture import BenchmarkFixture

from enclosure_app.checker import check_drawing
from enclosure_app.files.maps.layer_map import load_layer_map
from enclosure_app.files.maps.rule_book import load_limits
from enclosure_app.files.reading import ReadOptions, read_drawing
from enclosure_app.model.report import SectionResult
from enclosure_app.reports.bcf.archive import BcfJob, bcf_bytes
from enclosure_app.reports.bcf.snapshot import Pictures
from enclosure_app.reports.bcf.topics import Found
from enclosure_app.rules import RULES
from tests.benchmarks.walls import MAP, write_drawing
from tests.drawing import eave

JOB = BcfJob("Boathouse", datetime(2026, 3, 5, tzinfo=UTC), "1f2e")
FINDINGS, ROUNDS = 200, 3


def seconds(task: Callable[[], object]) -> float:
    def timed() -> float:
        start = process_time()
        task()
        return process_time() - start

    return median(timed() for _ in range(ROUNDS))


@pytest.fixture
def wall(tmp_path: Path) -> SectionResult:
    """Return a wall of twelve storeys, checked."""
    layers = tmp_path / "layers.toml"
    layers.write_text(MAP, encoding="utf-8")
    write_drawing(tmp_path / "wall.dxf", walls=1, storeys=12, entities=0)
    options = ReadOptions(load_layer_map(layers, [rule.name for rule in RULES]))
    return check_drawing(read_drawing(tmp_path / "wall.dxf", options), load_limits()).sections[0]


def test_the_pictures_of_a_wall_cost_half_as_much_together_as_each_alone(
    wall: SectionResult, benchmark: BenchmarkFixture, qapp: object
) -> None:
    units = eave.drawing().drawing.units

    def together() -> None:
        pictures = Pictures(wall, units)
        for number, finding in enumerate(wall.findings, 1):
            pictures.of(finding, number)

    def alone() -> None:
        for number, finding in enumerate(wall.findings, 1):
            Pictures(replace(wall, findings=(finding,)), units).of(finding, number)

    assert len(wall.findings) > 10
    one, each = seconds(together), seconds(alone)
    benchmark.extra_info.update(together=one, alone=each)
    benchmark.pedantic(together, rounds=1)
    assert one < 0.6 * each


def test_two_hundred_findings_weigh_no_more_than_eight_megabytes(
    benchmark: BenchmarkFixture, qapp: object
) -> None:
    found = [Found(eave.drawing(eave.crowded(FINDINGS)))]
    data = benchmark.pedantic(lambda: bcf_bytes(found, JOB), rounds=1)
    benchmark.extra_info.update(bytes=len(data))
    assert len(data) < 8_000_000
