"""Every finding stands on the sheet where its mark stands."""

from dataclasses import replace
from math import dist

import pytest

from enclosure_app.drawing.marks import Overlay, Stroke
from enclosure_app.drawing.placement import Placement
from enclosure_app.drawing.section.places import FindingPlace, finding_places
from enclosure_app.drawing.sheet.job import SheetJob
from enclosure_app.drawing.sheet.sheet import compose_sheets
from enclosure_app.drawing.theme import load_theme
from enclosure_app.model.finding import Finding
from enclosure_app.model.said.decision import Decision, State
from tests.drawing import eave

HALF = Placement(20.0, (0.0, 0.0), (100.0, 100.0))


def place_of(finding: Finding, **changes: object) -> FindingPlace:
    result = eave.result(findings=(finding,), **changes)
    (place,) = finding_places(result, (finding,), {finding.key: 4}, HALF)
    return place


def test_a_gap_is_the_line_between_its_ends() -> None:
    place = place_of(eave.GAP)
    assert place.number == 4
    assert place.at == pytest.approx((108.0, 105.25))
    assert place.line == (pytest.approx((108.0, 104.5)), pytest.approx((108.0, 106.0)))
    assert not place.closed
    assert place.box.holds((108.0, 105.25 + place.ring))


def test_a_lap_is_the_run_of_its_outer_sheet() -> None:
    outer = eave.SHORT.extent[0]
    assert place_of(eave.SHORT).line == HALF.points(outer)


def test_a_place_without_an_extent_is_a_ring_only() -> None:
    place = place_of(eave.NO_DRIP)
    assert place.line == ()
    assert place.box.width == pytest.approx(2 * place.ring + 2.0)
    doubled = replace(eave.NO_DRIP, extent=((eave.NO_DRIP.at, eave.NO_DRIP.at),))
    assert place_of(doubled).line == ()


def test_a_puddle_is_the_area_under_its_surface() -> None:
    pond = replace(
        eave.NO_DRIP, rule="ponding", at=(0.0, 0.0), extent=(((-40.0, 10.0), (60.0, 10.0)),)
    )
    place = place_of(pond)
    assert place.closed
    assert place.line == HALF.points(((0.0, 0.0), (-40.0, 10.0), (60.0, 10.0)))


def test_what_was_decided_comes_along() -> None:
    decision = Decision(eave.GAP.key, State.MENDED, "Ida")
    assert place_of(eave.GAP, decisions={eave.GAP.key: decision}).decision is decision
    assert place_of(eave.GAP).decision is None


def test_places_are_in_the_middle_of_the_rings_that_are_painted() -> None:
    (page,) = compose_sheets((eave.drawing(),), SheetJob(), load_theme())
    assert [place.number for place in page.places] == [1, 2, 3, 4, 5, 6]
    for place in page.places:
        rings = [
            m for m in page.marks
            if isinstance(m, Stroke) and m.source == place.finding.key
            and m.closed and len(m.points) == 48 and m.overlays == (Overlay.FINDINGS,)
        ]  # fmt: skip
        assert rings
        assert all(dist(p, place.at) == pytest.approx(place.ring) for r in rings for p in r.points)
    assert (page.drawing, page.section) == (eave.drawing(), eave.result())


def test_every_finding_of_many_sheets_has_its_place_on_one() -> None:
    pages = compose_sheets((eave.drawing(eave.crowded(120)),), SheetJob(), load_theme())
    numbers = [place.number for page in pages for place in page.places]
    assert len([page for page in pages if page.places]) > 1
    assert numbers == list(range(1, 121))
