"""gap: where the pen leaves the layer, and how loud that is."""

import re
from math import sqrt

import pytest

from enclosure_app.model.finding import Severity
from enclosure_app.model.section import Break, Section
from enclosure_app.rules.gap import RULE
from enclosure_app.rules.rule import page
from tests.rules.junctions import Told, box, found, run, section, told, wall_lap


def apart(width: float, of: str = "building-paper", **how: object) -> Section:
    """A wall sheet that stops and starts again `width` further up."""
    return section(run("a", of, (0, -500), (0, 0)), run("b", of, (0, width), (0, 500)), **how)


def boards(width: float) -> Section:
    return section(
        box("a", "mineral-wool", (0, -500), (140, 0)),
        box("b", "mineral-wool", (0, width), (140, 500)),
    )


def taped(product: str) -> Section:
    return section(*apart(20).pieces, run("t", product, (-3, -50), (-3, 70)))


def under_a_soffit() -> Section:
    """A gap in a level sheet with the outside below: no rain gets up to it."""
    return section(
        run("a", "building-paper", (-500, 0), (0, 0)),
        run("b", "building-paper", (30, 0), (500, 0)),
        outside=[(0, -300)],
        inside=[(0, 300)],
    )


DOUBT = Severity.DOUBT
HALVES = Break(((-100, -20), (100, -20)), ((-100, 80), (100, 80)))

SILENT = {
    "one sheet from edge to edge": section(run("a", "building-paper", (0, -500), (0, 500))),
    "two that lap": wall_lap(60),
    "two that lap the wrong way round": wall_lap(60, over=False),
    "2 mm is drafting": apart(2.0),
    "boards that butt": boards(1.0),
    "a tape across": taped("flashing-tape"),
    "the sheet goes on beyond break lines": section(
        run("a", "building-paper", (0, -500), (0, -20)),
        run("b", "building-paper", (0, 80), (0, 500)),
        breaks=[HALVES],
    ),
    "a sheet that stops short has no gap": section(run("a", "building-paper", (0, -500), (0, 0))),
    "no layer": section(box("a", "framing", (0, -500), (90, 500))),
}

REPORTS = {
    "water that rain reaches": (apart(30), [Told("a b", (0, 15), 30, 0)]),
    "just more than drafting": (apart(2.1), [Told("a b", (0, 1.1), 2.1, 0)]),
    "water that no rain reaches": (
        under_a_soffit(),
        [Told("a b", (15, 0), 30, 0, DOUBT)],
    ),
    "water in a plan": (apart(30, gravity=None), [Told("a b", (0, 15), 30, 0, DOUBT)]),
    "air": (
        apart(30, of="sealed-sheathing"),
        [Told("a b", (0, 15), 30, 0, control="air")],
    ),
    "vapour": (
        apart(30, of="kraft-facing"),
        [Told("a b", (0, 15), 30, 0, DOUBT, "vapour")],
    ),
    "one sheet for two layers": (
        apart(30, of="housewrap"),
        [Told("a b", (0, 15), 30, 0), Told("a b", (0, 15), 30, 0, control="air")],
    ),
    "a tape that controls something else": (
        taped("foil-tape"),
        [Told("a b", (0, 10), 20, 0)],
    ),
    "two gaps, in walking order": (
        section(
            run("a", "building-paper", (0, -500), (0, -100)),
            run("b", "building-paper", (0, -60), (0, 100)),
            run("c", "building-paper", (0, 120), (0, 500)),
        ),
        [Told("a b", (0, -80), 40, 0), Told("b c", (0, 110), 20, 0)],
    ),
    "slanting, by the shortest distance": (
        section(
            run("a", "building-paper", (0, -500), (0, 0)),
            run("b", "building-paper", (30, 40), (30, 500)),
        ),
        [Told("a b", (15, 20), 50, 0)],
    ),
}


@pytest.mark.parametrize("drawn", SILENT.values(), ids=SILENT)
def test_is_silent(drawn: Section) -> None:
    assert told(RULE, drawn) == []


@pytest.mark.parametrize(("drawn", "findings"), REPORTS.values(), ids=REPORTS)
def test_reports(drawn: Section, findings: list[Told]) -> None:
    assert sorted(told(RULE, drawn), key=str) == sorted(findings, key=str)


def test_boards_apart_have_a_gap_somewhere_across_their_thickness() -> None:
    (finding,) = found(RULE, boards(34))
    assert (finding.control, finding.severity, finding.measured) == ("heat", DOUBT, 34)
    assert finding.at[1] == 17
    assert 0 <= finding.at[0] <= 140


def test_the_key_names_both_ends_and_the_extent_shows_them() -> None:
    (finding,) = found(RULE, apart(30))
    assert finding.key == "gap:water:a.high+b.low"
    assert set(finding.extent[0]) == {(0, 0), (0, 30)}


def test_like_pieces_are_called_two_pieces_of_it() -> None:
    (finding,) = found(RULE, apart(30))
    assert "between two pieces of building paper: they neither touch nor lap" in finding.message


def test_the_page_quotes_what_an_orifice_lets_through() -> None:
    """Flow q = Cd A sqrt(2 dp / rho): sharp-edged orifice, 0.6 and the formula from memory.

    Air of 1.204 kg/m3 (20 C, sea level); 1 mm by 1 m; checks.md 2.12 has 6.70 L/s at 75 Pa.
    """
    litres = 0.6 * 0.001 * 1.0 * sqrt(2 * 75 / 1.204) * 1000
    assert litres == pytest.approx(6.70, abs=0.005)
    text = " ".join(page(RULE).split())
    quoted = re.findall(r"one millimetre wide lets some (\w+) litres", text)
    assert {7: ["seven"]}[round(litres)] == quoted
    assert "each metre and second at 75 pascal (sharp-edged orifice, coefficient 0.6" in text
