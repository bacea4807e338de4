"""Draws the sample drawings, their layer maps, what is expected of them and the table of faults.

Run it as ``python samples/make_samples.py [FOLDER]``; the same bytes come out on each run.
"""

import sys
from collections.abc import Callable
from pathlib import Path

import ezdxf
from drawn import balcony_ledger, eave_overhang, wall_base
from drawn.layer_map import layer_map
from drawn.office import FIRST, SECOND
from drawn.sheet import Sheet

DETAILS: dict[str, Callable[[bool], Sheet]] = {
    "wall-base": wall_base.draw,
    "eave-overhang": eave_overhang.draw,
    "balcony-ledger": balcony_ledger.draw,
}


def make_all(folder: Path) -> None:
    """Write everything into `folder`."""
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
    (folder / "expected.toml").write_text(HEAD + text, encoding="utf-8", newline="\n")


HEAD = """\
# What the checker must say of each sample, written by make_samples.py. `at_mm` is the place in the
# drawing's own coordinates times its unit; a finding may lie up to `within_mm` from it.

"""


if __name__ == "__main__":
    make_all(Path(sys.argv[1]) if len(sys.argv) > 1 else Path(__file__).parent)
