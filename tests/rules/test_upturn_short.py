"""upturn-short: how high the roof turns up a wall.

Steep roofs: 4 in (IRC R905.2.8.3, read in the editions 2015 and 2018). Low slopes: 8 in (practice
of a trade association, from memory; no code). Roofs flatter than 2:12 count as low slopes.
"""

import pytest

from enclosure_app.files.maps.rule_book import load_limits
from enclosure_app.model.limits import Limits
from enclosure_app.model.section import Section
from enclosure_app.rules.upturn_short import RULE
from tests.rules.junctions import INCH, US, Told, found, run, section, told

CANADA, EUROPE = load_limits("nbc-2020"), load_limits("eu")


def corner(inches: float, rise: float = 0.0, of: str = "bituminous-roofing") -> Section:
    """A roof that rises to a wall on the right and turns up it by so many inches."""
    top = inches * INCH
    return section(
        run("r", of, (-500, -500 * rise), (0, 0), (0, top)),
        run("s", "building-paper", (-4, top - 60), (-4, 500)),
        outside=[(-300, 400)],
    )


def stepped(roof: float, flashing: float) -> Section:
    """Underlayment and an apron over it, turned up by so many inches."""
    return section(
        run("u", "underlayment", (-500, -250), (6, 3), (6, 3 + roof * INCH)),
        run("a", "apron-flashing", (-140, -65), (-2, 4), (-2, 4 + flashing * INCH)),
        run("s", "building-paper", (-8, 60), (-8, 500)),
        outside=[(-300, 300)],
    )


def valley() -> Section:
    """A roof that falls from a higher slope: no wall."""
    return section(
        run("r", "underlayment", (-500, 150), (0, 0), (500, 400)),
        outside=[(0, 450)],
        inside=[(0, -300)],
    )


SILENT = {
    "steep roof, 4 in": (corner(4, 4 / 12, "underlayment"), US),
    "2:12 is steep, 4 in": (corner(4, 2 / 12, "underlayment"), US),
    "low slope, 8 in": (corner(8), US),
    "just below 2:12, 8 in": (corner(8, 1.9 / 12), US),
    "the apron reaches higher than the sheet below it": (stepped(2, 4), US),
    "Canada, low slope, 150 mm": (corner(150 / INCH), CANADA),
    "Europe, low slope, 150 mm": (corner(150 / INCH), EUROPE),
    "no wall": (valley(), US),
    "a wall sheet turned out over the roof is no roof": (
        section(run("s", "building-paper", (-500, 0), (0, 0), (0, 500)), outside=[(-300, 300)]),
        US,
    ),
    "a roof that goes on up the wall as its sheet": (
        section(run("r", "bituminous-roofing", (-500, 0), (0, 0), (0, 500))),
        US,
    ),
}

REPORTS = {
    "steep roof, 3.9 in": (
        corner(3.9, 4 / 12, "underlayment"),
        US,
        Told("r", (0, 99.1), 99.1, 101.6),
    ),
    "2:12, 3.9 in": (corner(3.9, 2 / 12, "underlayment"), US, Told("r", (0, 99.1), 99.1, 101.6)),
    "low slope, 7.9 in": (corner(7.9), US, Told("r", (0, 200.7), 200.7, 203.2)),
    "low slope, 4 in": (corner(4), US, Told("r", (0, 101.6), 101.6, 203.2)),
    "just below 2:12, 4 in": (
        corner(4, 1.9 / 12),
        US,
        Told("r", (0, 101.6), 101.6, 203.2),
    ),
    "neither sheet nor apron reaches 4 in": (
        stepped(2, 3.9),
        US,
        Told("a", (-2, 103.1), 99.1, 101.6),
    ),
    "Canada, low slope, 149 mm": (
        corner(149 / INCH),
        CANADA,
        Told("r", (0, 149), 149, 150),
    ),
    "Europe, low slope, 149 mm": (corner(149 / INCH), EUROPE, Told("r", (0, 149), 149, 150)),
}


@pytest.mark.parametrize(("drawn", "limits"), SILENT.values(), ids=SILENT)
def test_is_silent(drawn: Section, limits: Limits) -> None:
    assert told(RULE, drawn, limits) == []


@pytest.mark.parametrize(("drawn", "limits", "finding"), REPORTS.values(), ids=REPORTS)
def test_reports(drawn: Section, limits: Limits, finding: Told) -> None:
    assert told(RULE, drawn, limits) == [finding]


def test_a_pitch_drawn_with_rounded_coordinates_is_still_that_pitch() -> None:
    """2:12 to a hundredth of a millimetre over half a metre."""
    drawn = section(
        run("r", "underlayment", (-500, -83.33), (0, 0), (0, 101.6)),
        run("s", "building-paper", (-4, 45), (-4, 500)),
        outside=[(-300, 400)],
    )
    assert told(RULE, drawn) == []


def test_the_clause_stands_beside_the_figure() -> None:
    (finding,) = found(RULE, corner(3, 4 / 12, "underlayment"))
    assert finding.basis == "IRC R905.2.8.3, 2018"
    assert finding.key == "upturn-short:water:r.high"
    assert finding.message.startswith("Roof underlayment does not turn up far enough")


def test_the_practice_for_low_slopes_is_marked_as_unconfirmed() -> None:
    (finding,) = found(RULE, corner(4))
    assert finding.basis == "NRCA manual practice, from memory (unconfirmed)"
