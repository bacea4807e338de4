"""The sample drawings are those that the script draws, and what goes with them fits them.

What the checker says of them is tested elsewhere; here the files are held to each other.
"""

import subprocess
import sys
import tomllib
from fnmatch import fnmatch
from pathlib import Path
from typing import Any

import ezdxf
import pytest
from ezdxf.document import Drawing

SAMPLES = Path(__file__).parent.parent / "samples"
UNITS = {"in": 1, "ft": 2, "mm": 4, "m": 6}  # $INSUNITS, DXF reference (from memory)
IN_MM = {"in": 25.4, "ft": 304.8, "mm": 1.0, "m": 1000.0}


def _toml(name: str) -> dict[str, Any]:
    return tomllib.loads((SAMPLES / name).read_text(encoding="utf-8"))


EXPECTED = {told["file"]: told for told in _toml("expected.toml")["drawing"]}
each_sample = pytest.mark.parametrize("name", EXPECTED)


@pytest.fixture(scope="module")
def drawn_again(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A folder in which the script has drawn all samples, in a process of its own."""
    folder = tmp_path_factory.mktemp("drawn")
    script = SAMPLES / "make_samples.py"
    subprocess.run([sys.executable, str(script), str(folder)], check=True)
    return folder


@pytest.fixture(scope="module")
def drawings() -> dict[str, Drawing]:
    """Every sample, as ezdxf reads it."""
    return {name: ezdxf.readfile(SAMPLES / name) for name in EXPECTED}


def test_the_script_draws_the_same_bytes_again(drawn_again: Path) -> None:
    made = {path.name: path.read_bytes() for path in drawn_again.iterdir()}
    kept = {name: (SAMPLES / name).read_bytes() for name in made}
    assert made == kept
    assert {path.name for path in SAMPLES.glob("*.dxf")} == {n for n in made if ".dxf" in n}


@each_sample
def test_an_auditor_finds_nothing_to_mend(drawings: dict[str, Drawing], name: str) -> None:
    auditor = drawings[name].audit()
    assert [entry.message for entry in (*auditor.errors, *auditor.fixes)] == []


@each_sample
def test_the_file_says_the_units_that_are_expected(
    drawings: dict[str, Drawing], name: str
) -> None:
    """R12 has no place for units, so those files must not pretend to say any."""
    told, doc = EXPECTED[name], drawings[name]
    assert told["units_in_file"] == (doc.dxfversion > "AC1009")
    if told["units_in_file"]:
        assert doc.header["$INSUNITS"] == UNITS[told["units"]]


@each_sample
def test_the_layer_map_says_what_each_used_layer_means(
    drawings: dict[str, Drawing], name: str
) -> None:
    patterns = [row["match"].casefold() for row in _toml(EXPECTED[name]["layers"])["layers"]]
    used = {entity.dxf.layer for entity in drawings[name].modelspace()}
    assert [n for n in used if not any(fnmatch(n.casefold(), p) for p in patterns)] == []


@each_sample
def test_each_frame_holds_one_mark_of_each_side(drawings: dict[str, Drawing], name: str) -> None:
    told = EXPECTED[name]
    unit = IN_MM[told["units"]]
    texts = [
        (text.dxf.text, text.dxf.insert.x * unit, text.dxf.insert.y * unit)
        for text in drawings[name].modelspace().query("TEXT")
    ]
    for section in told["section"]:
        left, bottom, right, top = section["frame_mm"]
        inside = sorted(
            words
            for words, x, y in texts
            if words in ("INSIDE", "OUTSIDE") and left < x < right and bottom < y < top
        )
        assert inside == ["INSIDE", "OUTSIDE"]


@each_sample
def test_each_fault_lies_in_the_frame_of_its_section(name: str) -> None:
    frames = {s["title"]: s["frame_mm"] for s in EXPECTED[name]["section"]}
    for fault in EXPECTED[name].get("finding", ()):
        left, bottom, right, top = frames[fault["section"]]
        x, y = fault["at_mm"]
        assert left <= x <= right
        assert bottom <= y <= top


def test_every_rule_but_the_cycle_occurs_in_some_sample() -> None:
    rules = Path(__file__).parent.parent / "enclosure_app" / "rules"
    files = {path.stem.replace("_", "-") for path in rules.glob("*.py")}
    occurring = {f["rule"] for told in EXPECTED.values() for f in told.get("finding", ())}
    assert occurring == files - {"--init--", "rule", "lap-cycle"}


def test_sound_drawings_have_no_faults_and_faulty_ones_one_to_four() -> None:
    for name, told in EXPECTED.items():
        faults = told.get("finding", [])
        assert len(faults) in ((1, 2, 3, 4) if "-faulty" in name else (0,)), name


def test_the_readme_tells_every_fault_with_its_place() -> None:
    rows = (SAMPLES / "README.md").read_text(encoding="utf-8").splitlines()
    for name, told in EXPECTED.items():
        for fault in told.get("finding", ()):
            x, y = fault["at_mm"]
            cells = (name, fault["section"], fault["rule"], fault["control"])
            found = [row for row in rows if row.startswith(f"| {' | '.join(cells)} |")]
            assert any(f"| {x:.0f}, {y:.0f} |" in row for row in found), (name, fault)


def test_the_samples_cover_old_and_new_files_ascii_and_binary() -> None:
    heads = {name: (SAMPLES / name).read_bytes()[:22] for name in EXPECTED}
    binary = {name for name, head in heads.items() if b"Binary DXF" in head}
    assert binary == {"ridge.dxf", "roof-to-wall-faulty.dxf"}
