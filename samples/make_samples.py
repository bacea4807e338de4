"""Draws the sample drawings, their layer maps, what is expected of them and the table of faults.

Run it as ``python samples/make_samples.py [FOLDER]``; the same bytes come out on each run.
"""

import logging
import sys
from collections.abc import Callable
from pathlib import Path

import ezdxf
from drawn import (
    balcony_ledger,
    eave_flush,
    eave_overhang,
    floor_line,
    four_sections,
    parapet,
    pipe_through_wall,
    rake,
    ridge,
    roof_to_wall,
    wall_base,
    window,
)
from drawn.layer_map import layer_map
from drawn.office import FIRST, SECOND
from drawn.readme import readme
from drawn.sheet import Sheet

DETAILS: dict[str, Callable[[bool], Sheet]] = {
    "wall-base": wall_base.draw,
    "window": window.draw,
    "eave-overhang": eave_overhang.draw,
    "balcony-ledger": balcony_ledger.draw,
    "pipe-through-wall": pipe_through_wall.draw,
    "floor-line": floor_line.draw,
    "eave-flush": eave_flush.draw,
    "rake": rake.draw,
    "ridge": ridge.draw,
    "roof-to-wall": roof_to_wall.draw,
    "parapet": parapet.draw,
    "four-sections": four_sections.draw,
}


def make_all(folder: Path) -> None:
    """Write everything into `folder`."""
    logging.getLogger("ezdxf").setLevel(logging.ERROR)  # R12 cannot hold its units: we know
    ezdxf.options.write_fixed_meta_data_for_testing = True
    told = []
    for name, draw in DETAILS.items():
        for faulty, stem in ((False, name), (True, f"{name}-faulty")):
            sheet = draw(faulty)
            sheet.save(folder / f"{stem}.dxf")
            told.append(sheet.expected)
    for office in (FIRST, SECOND):
        path = folder / office.layer_map
        path.write_text(layer_map(office), encoding="utf-8", newline="\n")
    text = "\n".join(e.as_toml() for e in told)
    (folder / "README.md").write_text(readme(told), encoding="utf-8", newline="\n")
    (folder / "expected.toml").write_text(HEAD + text, encoding="utf-8", newline="\n")


HEAD = """\
# What the checker must say of each sample, written by make_samples.py. `at_mm` is the place in the
# drawing's own coordinates times its unit; a finding may lie up to `within_mm` from it.

"""


if __name__ == "__main__":
    make_all(Path(sys.argv[1]) if len(sys.argv) > 1 else Path(__file__).parent)
