"""stops-short: a layer that ends before the edge of the drawing."""

import pytest

from enclosure_app.model.finding import Severity
from enclosure_app.model.section import Section
from enclosure_app.rules.stops_short import RULE
from tests.rules.junctions import Told, box, found, run, section, told, wall_lap

DOUBT = Severity.DOUBT
CORNER = ((0, -500), (0, 0), (-420, 0))


def sheet(top: float, of: str = "building-paper", **how: object) -> Section:
    """A wall sheet from the lower edge of the frame up to `top`; the frame ends at 500."""
    return section(run("a", of, (0, -500), (0, top)), **how)


SILENT = {
    "edge to edge": sheet(500),
    "2 mm from the edge is drafting": sheet(498),
    "drawn past the edge": sheet(560),
    "two sheets": wall_lap(60),
    "a gap in the middle is another rule's": section(
        run("a", "building-paper", (0, -500), (0, 0)),
        run("b", "building-paper", (0, 30), (0, 500)),
    ),
    "no layer": section(box("f", "framing", (0, -500), (90, 500))),
}

REPORTS = {
    "water": (sheet(300), [Told("a", (0, 300), 200, 0)]),
    "just more than drafting": (sheet(497.9), [Told("a", (0, 497.9), 2.1, 0)]),
    "air": (sheet(300, "sealed-sheathing"), [Told("a", (0, 300), 200, 0, control="air")]),
    "vapour": (sheet(300, "kraft-facing"), [Told("a", (0, 300), 200, 0, DOUBT, "vapour")]),
    "in a plan": (sheet(300, gravity=None), [Told("a", (0, 300), 200, 0)]),
    "a sheet that floats stops at both ends": (
        section(run("a", "building-paper", (0, -350), (0, 300))),
        [Told("a", (0, -350), 150, 0), Told("a", (0, 300), 200, 0)],
    ),
    "by the nearest edge that parts the outside from the inside": (
        section(run("a", "building-paper", *CORNER), outside=[(-450, -300)]),
        [Told("a", (-420, 0), 80, 0)],
    ),
    "an edge that is nearer but parts nothing does not count": (
        section(run("a", "building-paper", *CORNER), outside=[(-450, 300)]),
        [Told("a", (0, 0), 500, 0)],
    ),
}


@pytest.mark.parametrize("drawn", SILENT.values(), ids=SILENT)
def test_is_silent(drawn: Section) -> None:
    assert told(RULE, drawn) == []


@pytest.mark.parametrize(("drawn", "findings"), REPORTS.values(), ids=REPORTS)
def test_reports(drawn: Section, findings: list[Told]) -> None:
    assert sorted(told(RULE, drawn), key=str) == sorted(findings, key=str)


def test_insulation_that_stops_is_a_doubt_at_its_end() -> None:
    (finding,) = found(RULE, section(box("w", "mineral-wool", (0, -500), (140, 400))))
    assert (finding.control, finding.severity, finding.measured) == ("heat", DOUBT, 100)
    assert finding.at[1] == 400
    assert 0 <= finding.at[0] <= 140


def test_the_key_names_the_end() -> None:
    (finding,) = found(RULE, sheet(300))
    assert finding.key == "stops-short:water:a.high"
    assert finding.extent == (((0, 300), (0, 500)),)
    assert finding.message.startswith("The water layer stops short: building paper ends here")
