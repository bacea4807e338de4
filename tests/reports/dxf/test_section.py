"""What is marked in one section: places, sizes, layers, and what each mark says."""

from dataclasses import replace
from math import dist

import pytest

from enclosure_app.drawing.placement import Box, box_around
from enclosure_app.drawing.theme import load_theme
from enclosure_app.files.dxf.raw import RawText, Tag
from enclosure_app.model.drawing import Units
from enclosure_app.model.finding import Finding
from enclosure_app.reports.dxf.entities import Ring, Shape, Way, Words
from enclosure_app.reports.dxf.layers import FLAGS, layer_of
from enclosure_app.reports.dxf.room import Room
from enclosure_app.reports.dxf.scale import scale_of
from enclosure_app.reports.dxf.section import Look, SectionMarker, told_of
from enclosure_app.reports.names import urn
from tests.drawing import eave

LOOK = Look(Units.MM, load_theme())
FRAME = box_around(eave.FRAME)


def shapes(room: Room | None = None, **changes: object) -> list[Shape]:
    return list(SectionMarker(eave.result(**changes), LOOK, room or Room()).shapes())


def told(finding: Finding, kind: type[Shape], drawn: list[Shape]) -> list[Shape]:
    return [each for each in drawn if each.told.source == finding.key and isinstance(each, kind)]


def test_every_finding_has_a_ring_at_its_place_and_a_flag_with_its_number() -> None:
    drawn = shapes()
    for number, finding in enumerate(eave.result().findings, 1):
        (ring,) = told(finding, Ring, drawn)
        assert (ring.centre, ring.layer, ring.radius) == (finding.at, FLAGS, 4.4 * 20)
        (words,) = told(finding, Words, drawn)
        assert (words.text, words.height, words.centred) == (str(number), 2.5 * 20, True)
        flag = next(way for way in told(finding, Way, drawn) if way.layer == FLAGS and way.closed)
        assert box_around(flag.points).inset(-0.1).holds(words.at)
        assert not FRAME.holds(words.at)


def test_flags_do_not_lie_on_each_other_or_on_what_is_drawn() -> None:
    notes = [
        RawText(Tag("TEXT", "1", "a"), "NOTE " * 30, (900, y), 60.0) for y in range(0, 2600, 200)
    ]
    for drawn in (shapes(), shapes(Room.beside(notes, 1.0))):
        flags = [
            box_around(w.points)
            for w in drawn
            if isinstance(w, Way) and w.closed and w.layer == FLAGS
        ]
        for k, box in enumerate(flags):
            assert not any(_meet(box, other) for other in flags[:k])
    room = Room.beside(notes, 1.0)
    assert all(room.is_free(box) for box in flags)


def _meet(a: Box, b: Box) -> bool:
    return not (a.right < b.left or b.right < a.left or a.top < b.bottom or b.top < a.bottom)


def test_a_leader_goes_from_the_ring_to_the_flag() -> None:
    for finding in eave.result().findings:
        ways = told(finding, Way, shapes())
        leader = next(way for way in ways if way.layer == FLAGS and not way.closed)
        flag = next(way for way in ways if way.layer == FLAGS and way.closed)
        assert dist(leader.points[0], finding.at) <= 4.4 * 20 + 1e-6
        assert box_around(flag.points).inset(-1.0).holds(leader.points[-1])


def test_a_lift_is_a_line_with_its_width_beside_it() -> None:
    drawn = [each for each in shapes() if each.told.source == "lift air"]
    line, words = drawn
    assert isinstance(line, Way)
    assert isinstance(words, Words)
    assert (line.points, line.layer) == (((160, 90), (160, 120)), layer_of(eave.A))
    assert words.text == "30 mm"
    assert dist(words.at, (160, 105)) == pytest.approx(2.2 * 20)


def test_laps_on_the_trace_are_outlined_between_their_two_sheets() -> None:
    outlines = [
        each.points
        for each in shapes()
        if each.told.source == "lap water" and isinstance(each, Way)
    ]
    assert ((160, 880), (160, 1000), (163, 1000), (163, 880)) in outlines
    assert len(outlines) == len(eave.WATER.joints)


def test_the_way_in_is_drawn_where_a_layer_is_open() -> None:
    (way,) = [each for each in shapes() if each.told.source == "opening air"]
    assert isinstance(way, Way)
    assert (way.points, way.layer) == (eave.AIR.way_in, layer_of(eave.A))
    assert not [each for each in shapes() if each.told.source == "opening water"]


def test_a_fault_is_drawn_as_heavy_as_on_the_sheet() -> None:
    (run, _) = [
        w for w in told(eave.SHORT, Way, shapes()) if isinstance(w, Way) and w.layer != FLAGS
    ]
    assert (run.layer, run.weight) == (layer_of(eave.W), load_theme().pen("fault").width)
    assert run.points == eave.SHORT.extent[0]


def test_a_crowd_of_flags_is_drawn_smaller_so_that_all_find_room() -> None:
    crowd = eave.crowded(150)
    drawn = list(SectionMarker(crowd, LOOK, Room()).shapes())
    numbers = [each.text for each in drawn if isinstance(each, Words) and each.layer == FLAGS]
    assert numbers == [str(n) for n in range(1, 151)]
    assert scale_of(crowd, Units.MM, Room()) < 20


def test_a_mark_leads_to_the_sheet_or_names_its_finding() -> None:
    result = eave.result()
    name = result.section.name
    assert told_of(eave.GAP, result, replace(LOOK, scope="1f2e")).link == urn(
        eave.GAP, name, "1f2e"
    )
    linked = told_of(eave.GAP, result, replace(LOOK, sheet="eave.pdf"))
    assert (linked.link, linked.source) == ("eave.pdf", eave.GAP.key)
    assert linked.words == f"Fault · gap, air: {eave.GAP.message}"
