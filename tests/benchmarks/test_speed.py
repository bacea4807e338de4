"""How fast a check is: ratios within one run, never absolute times.

Run with ``pytest tests/benchmarks --benchmark-only``. Times are processor time, so that another
program on the machine does not decide the result.
"""

import os
import resource
import subprocess
import sys
from collections.abc import Callable
from math import log
from pathlib import Path
from time import process_time

import pytest
from ezdxf.filemanagement import readfile
from pytest_benchmark.fixture import BenchmarkFixture

from enclosure_app.checker import check_drawing, check_section
from enclosure_app.files.dxf.memory import kept_in_use
from enclosure_app.files.maps.layer_map import load_layer_map
from enclosure_app.files.maps.rule_book import load_limits
from enclosure_app.files.reading import ReadOptions, read_drawing
from enclosure_app.resources import sample
from tests.benchmarks.walls import MAP, wall_of_sheets, write_drawing

IMPORTS = "import ezdxf, shapely, networkx"


def _seconds(task: Callable[[], object], rounds: int = 3) -> float:
    best = float("inf")
    for _ in range(rounds):
        start = process_time()
        task()
        best = min(best, process_time() - start)
    return best


@pytest.fixture
def large_drawing(tmp_path: Path) -> tuple[Path, Path]:
    drawing, layers = tmp_path / "walls.dxf", tmp_path / "layers.toml"
    mapped = write_drawing(drawing, walls=16, storeys=14, entities=50_000)
    assert 4_900 <= mapped <= 5_400
    layers.write_text(MAP, encoding="utf-8")
    return drawing, layers


def test_reading_and_checking_takes_at_most_half_again_what_reading_the_dxf_takes(
    benchmark: BenchmarkFixture, large_drawing: tuple[Path, Path]
) -> None:
    path, layers = large_drawing
    options, limits = ReadOptions(layer_map=load_layer_map(layers)), load_limits()

    def check() -> None:
        with kept_in_use():  # as the command does
            check_drawing(read_drawing(path, options), limits)

    alone = _seconds(lambda: readfile(path))
    whole = _seconds(check)
    benchmark.pedantic(check, rounds=1)
    benchmark.extra_info |= {"readfile_s": alone, "check_s": whole, "ratio": whole / alone}
    assert whole <= 1.5 * alone


@pytest.mark.parametrize("gap", [False, True])
def test_time_grows_no_faster_than_the_power_1_2_of_the_pieces(
    benchmark: BenchmarkFixture, gap: bool
) -> None:
    limits, few, many = load_limits(), 500, 32_000
    sections = {count: wall_of_sheets(count, gap=gap) for count in (few, many)}
    times = {
        count: _seconds(lambda section=section: check_section(section, limits), rounds=2)
        for count, section in sections.items()
    }
    power = log(times[many] / times[few]) / log(many / few)
    benchmark.pedantic(lambda: check_section(sections[few], limits), rounds=1)
    benchmark.extra_info |= {"power": power, "few_s": times[few], "many_s": times[many]}
    assert power <= 1.2


def test_a_sample_is_checked_in_half_again_the_time_of_importing_the_libraries(
    benchmark: BenchmarkFixture,
) -> None:
    drawing, layers = sample("eave-overhang.dxf"), sample("layers.toml")
    command = (
        "import sys; from enclosure_app.cli import main; "
        f"sys.exit(main(['check', {str(drawing)!r}, '--layers', {str(layers)!r}]))"
    )
    imports = min(_child_seconds(IMPORTS) for _ in range(5))
    whole = min(_child_seconds(command) for _ in range(5))
    benchmark.pedantic(lambda: _child_seconds(command), rounds=1)
    benchmark.extra_info |= {"imports_s": imports, "check_s": whole, "ratio": whole / imports}
    assert whole < 1.5 * imports


def _child_seconds(code: str) -> float:
    """Return the processor time of a new interpreter, with compiled modules as installed ones have."""
    environment = {k: v for k, v in os.environ.items() if k != "PYTHONDONTWRITEBYTECODE"}
    before = resource.getrusage(resource.RUSAGE_CHILDREN)
    subprocess.run([sys.executable, "-c", code], check=True, capture_output=True, env=environment)
    after = resource.getrusage(resource.RUSAGE_CHILDREN)
    return after.ru_utime + after.ru_stime - before.ru_utime - before.ru_stime
