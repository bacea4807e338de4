"""reverse-lap: the textbook junctions, in order and swapped.

Order of laps: IRC R703.2 and R703.4 (second-hand), drip edges R905.2.8.5 (from memory).
"""

import pytest

from enclosure_app.model.finding import Severity
from enclosure_app.model.section import Section
from enclosure_app.rules.reverse_lap import RULE
from tests.rules.junctions import (
    Told,
    counter_flashing,
    eave,
    flush_eave,
    found,
    head,
    higher_wall,
    parapet,
    patched,
    rake,
    roof_lap,
    run,
    section,
    sill,
    told,
    wall_base,
    wall_lap,
)


def plan(*, over: bool) -> Section:
    """A wall lap in a plan, where nothing runs downhill."""
    drawn = wall_lap(100, over=over)
    return section(*drawn.pieces, gravity=None)


def soffit(off: float) -> Section:
    """Two sheets under a sloping soffit, the outside below."""
    return section(
        run("low", "housewrap", (-500, -100), (40, 8)),
        run("up", "housewrap", (-40, -8 + off), (500, 100 + off)),
        outside=[(-100, -450)],
        inside=[(100, 450)],
    )


def on_top_of_each_other() -> Section:
    return wall_lap(100, apart=0.1)


SILENT = {
    "wall sheets lie as shingles": wall_lap(100),
    "roof sheets lie as shingles": roof_lap(100, 1 / 3),
    "wall sheet over the head flashing": head(over=True),
    "leg over the wall sheet, its edge taped over": head(over=False, taped=True),
    "eave: underlayment over the drip edge": eave(underlayment_over=True),
    "rake: drip edge over the underlayment": rake(metal_over=True),
    "leg of the sill pan over the wall sheet": sill(leg_over=True),
    "wall sheet over the waterproofing turned up": wall_base(sheet_over=True),
    "counter-flashing over the roof's leg": counter_flashing(over=True),
    "parapet: membrane down over the wall sheet": parapet(membrane_over=True),
    "flush eave: metal on the folded membrane, under a strip": flush_eave(60, covered=True),
    "flush eave: membrane comes out below the metal": flush_eave(130, covered=False),
    "wall sheet over the apron": higher_wall(sheet_over=True),
    "patch strip of sheet": patched("building-paper"),
    "patch strip of tape": patched("flashing-tape"),
    "tape over the upper sheet's edge": wall_lap(100, of="flashing-tape", on="building-paper"),
    "tape under the sheet it carries on": wall_lap(100, over=False, on="seam-tape"),
    "tape that goes on up behind a sheet": wall_lap(100, over=False, of="flashing-tape"),
    "coat that goes on up behind a sheet": wall_lap(
        100, over=False, of="fluid-permeable", on="housewrap"
    ),
    "nothing runs downhill in a plan": plan(over=False),
    "soffit, upper sheet outside": soffit(-5),
    "soffit, upper sheet inside": soffit(5),
    "no lap at all": section(run("S", "building-paper", (0, -500), (0, 500))),
}

REPORTS = {
    "wall sheets": (wall_lap(100, over=False), Told("low up", (2, 0), 100)),
    "roof sheets": (roof_lap(100, 1 / 3, over=False), Told("low up", (0.6, -1.9), 100)),
    # R703.4: the trap of a flashing nailed on the face of the sheet that should cover it
    "leg of the head flashing over the wall sheet": (
        head(over=False),
        Told("F S", (-1, 70), 100),
    ),
    # R905.2.8.5; a checklist that was seen says both the other way round (checks.md 0.2)
    "eave: drip edge over the underlayment": (
        eave(underlayment_over=False),
        Told("D U", (-324, -164.5), 167.7),
    ),
    "rake: underlayment over the drip edge": (
        rake(metal_over=False),
        Told("U D", (-350.5, -2.5), 101),
    ),
    "leg of the sill pan behind the wall sheet": (
        sill(leg_over=False),
        Told("S P", (-2, -51), 78),
    ),
    "wall sheet behind the waterproofing": (wall_base(sheet_over=False), Told("B S", (2, 0), 180)),
    "counter-flashing behind the roof's leg": (
        counter_flashing(over=False),
        Told("R C", (2, 165), 110),
    ),
    "parapet: membrane down behind the wall sheet": (
        parapet(membrane_over=False),
        Told("S R", (-2, 165), 130),
    ),
    "flush eave: nothing covers the metal": (
        flush_eave(60, covered=False),
        Told("D M", (-325.9, -191.3), 229.5),
    ),
    "wall sheet behind the apron": (higher_wall(sheet_over=False), Told("A S", (0, 105), 90)),
    "a short one is reported here, with its length": (
        wall_lap(30, over=False),
        Told("low up", (2, 0), 30),
    ),
    "drawn on top of each other": (
        on_top_of_each_other(),
        Told("up low", (-0.1, 0), 100, severity=Severity.DOUBT),
    ),
}


@pytest.mark.parametrize("drawn", SILENT.values(), ids=SILENT)
def test_is_silent(drawn: Section) -> None:
    assert told(RULE, drawn) == []


@pytest.mark.parametrize(("drawn", "finding"), REPORTS.values(), ids=REPORTS)
def test_reports(drawn: Section, finding: Told) -> None:
    assert told(RULE, drawn) == [finding]


def test_the_outside_decides_and_not_the_hand() -> None:
    """The same wall seen with the outside on the right is lapped the wrong way round."""
    drawn = wall_lap(100)
    swapped = section(*drawn.pieces, outside=drawn.inside, inside=drawn.outside)
    assert [finding.pieces for finding in found(RULE, swapped)] == [("low", "up")]


def test_a_strip_further_up_does_not_cover_the_leg() -> None:
    """A strip has to begin within reach of the upper edge that it covers."""
    high = run("T", "flashing-tape", (-6, 190), (-2, 195), (-2, 300))
    drawn = section(*head(over=False).pieces, high)
    assert [finding.pieces for finding in found(RULE, drawn)] == [("F", "S")]


def test_the_message_tells_which_sheet_to_move_where() -> None:
    (finding,) = found(RULE, head(over=False))
    assert finding.message.startswith("Building paper laps under head flashing: water")
    assert finding.advice.startswith("Put building paper over head flashing;")
    assert finding.key == "reverse-lap:water:F.high+S.low"


def test_along_a_rake_the_metal_goes_over() -> None:
    (finding,) = found(RULE, rake(metal_over=False))
    assert "drip edge lies under roof underlayment" in finding.message
    assert finding.advice.startswith("Put drip edge over roof underlayment here;")


def test_two_like_sheets_are_told_apart() -> None:
    (finding,) = found(RULE, wall_lap(100, over=False))
    assert finding.message.startswith("The upper building paper laps under the lower one:")


def test_both_lapped_stretches_are_shown() -> None:
    (finding,) = found(RULE, wall_lap(100, over=False))
    assert finding.extent == (((0, -50), (0, 50)), ((4, -50), (4, 50)))
