"""level-lap: on the level no order drains, so the lap has to be sealed.

The limit is a quarter inch in twelve, 1:48 (IBC 1507.10 to .15 as in Minnesota Rules 1305.1507,
read). The code prints "2-percent slope" beside it: 1/48 is 2.083 %, so that a roof of 2.0 % is
flatter (checks.md 0.2): rise over run is compared, never the rounded figure.
"""

from dataclasses import replace
from itertools import product

import pytest

from enclosure_app.model.limits import Limits, Tolerances
from enclosure_app.model.section import Section
from enclosure_app.rules.level_lap import RULE
from tests.rules.junctions import US, Told, found, rake, roof_lap, run, section, told, wall_lap

FASTENED = "single-ply-roofing-fastened"


def roof(rise: float, *, over: bool = True, of: str = FASTENED) -> Section:
    return roof_lap(100, rise, over=over, of=of)


def soffit() -> Section:
    """A level lap with the outside below."""
    drawn = roof(0.0)
    return section(*drawn.pieces, outside=drawn.inside, inside=drawn.outside)


def taped() -> Section:
    """A tape on the upper sheet, over its edge, and on the lower one."""
    drawn = roof(0.0)
    tape = run("t", "flashing-tape", (0, 7), (-56, 7), (-58, 3), (-120, 3))
    return section(*drawn.pieces, tape, outside=drawn.outside, inside=drawn.inside)


def declared() -> Section:
    return replace(roof(0.0), sealed=frozenset({("low", "up")}))


SILENT = {
    "1:48 exactly": roof(1 / 48),
    "1:40": roof(1 / 40),
    "level, adhered": roof(0.0, of="single-ply-roofing"),
    "level, coated": roof(0.0, of="liquid-roofing"),
    "level, taped over the edge": taped(),
    "level, somebody says that it is sealed": declared(),
    "level under a soffit": soffit(),
    "wall": wall_lap(100),
    "level plan": section(
        *roof(0.0).pieces, outside=[(-100, 450)], inside=[(100, -450)], gravity=None
    ),
    "rake: the roof falls out of the drawing": rake(metal_over=True),
    "rake the wrong way round is told as reversed": rake(metal_over=False),
}

REPORTS = {
    "level": (roof(0.0), Told("up low", (0, 2))),
    "level, the other way over": (roof(0.0, over=False), Told("low up", (0, -2))),
    "trap: 2.0 % is flatter than 1/4 in 12": (roof(0.02), Told("up low", (0, 2))),
    "falling the other way by 1:60": (roof(-1 / 60), Told("up low", (0, 2))),
    "1:49": (roof(1 / 49), Told("up low", (0, 2))),
    "metal over a low-slope membrane": (
        section(
            run("r", FASTENED, (-400, 0), (500, 0)),
            run("e", "drip-edge", (-300, 5), (-404, 5), (-404, -500)),
            outside=[(-100, 450)],
        ),
        Told("e r", (-350, 2.5)),
    ),
}


@pytest.mark.parametrize("drawn", SILENT.values(), ids=SILENT)
def test_is_silent(drawn: Section) -> None:
    assert told(RULE, drawn) == []


@pytest.mark.parametrize(("drawn", "finding"), REPORTS.values(), ids=REPORTS)
def test_reports(drawn: Section, finding: Told) -> None:
    assert told(RULE, drawn) == [finding]


@pytest.mark.parametrize(("over", "rise"), list(product((True, False), (1 / 48, 1 / 24))))
def test_from_the_limit_on_the_order_decides_and_not_the_seal(over: bool, rise: float) -> None:
    assert told(RULE, roof(rise, over=over)) == []


def test_the_project_may_set_another_limit() -> None:
    """Coal tar may lie at an eighth in twelve (same clause)."""
    tar = Limits(US.figures, Tolerances(level=1 / 96))
    assert told(RULE, roof(1 / 60), tar) == []
    assert told(RULE, roof(1 / 97), tar) == [Told("up low", (0, 2))]


def test_the_words_and_the_key_name_both_sheets() -> None:
    (finding,) = found(RULE, roof(0.0))
    assert finding.message.startswith("Two pieces of single-ply roof membrane lap on the level")
    assert finding.key == "level-lap:water:low.face+up.face"
    assert finding.extent == (((-50, 4), (50, 4)), ((-50, 0), (50, 0)))
