"""Enlarged details in the paper that the drawing leaves free."""

from dataclasses import replace
from itertools import combinations
from math import dist

from enclosure_app.drawing.marks import Flag, Label, Stroke, points_of
from enclosure_app.drawing.placement import Placement
from enclosure_app.drawing.scales import METRIC, parse_scale
from enclosure_app.drawing.section.details import arrange, detail_marks, detail_scales, grouped
from enclosure_app.drawing.section.flags import LANE
from enclosure_app.drawing.section.section_marks import View
from enclosure_app.drawing.sheet.job import paper_size
from enclosure_app.drawing.sheet.layout import areas
from enclosure_app.drawing.theme import load_theme
from enclosure_app.model.drawing import Units
from tests.drawing import eave


def test_places_that_are_close_share_a_detail() -> None:
    groups = grouped((eave.GAP, eave.SHORT, eave.REVERSED), 100.0)
    assert groups == [(eave.GAP, eave.SHORT), (eave.REVERSED,)]


def test_details_are_in_the_free_paper_and_hold_their_places() -> None:
    free = areas(paper_size("A3"), 2).drawing
    made = arrange(eave.result(), eave.result().findings, free, parse_scale("1:20"), Units.MM)
    drawing = made.drawing.inset(-LANE)
    shown = [f.key for d in made.details for f in d.findings]
    assert sorted(shown) == sorted(f.key for f in eave.result().findings)
    for detail in made.details:
        assert detail.box.left >= drawing.right - 1e-6
        assert free.inset(-LANE).holds((detail.box.right, detail.box.top))
        for finding in detail.findings:
            off = dist(finding.at, detail.middle) / detail.scale.ratio
            assert off < detail.box.width / 2
    for a, b in combinations([d.box for d in made.details], 2):
        assert min(a.right, b.right) <= max(a.left, b.left) or min(a.top, b.top) <= max(
            a.bottom, b.bottom
        )


def test_a_detail_is_larger_than_its_drawing_and_at_a_standard_scale() -> None:
    assert [s.text for s in detail_scales(parse_scale("1:20"), Units.MM)] == ["1:5", "1:10"]
    assert [s.text for s in detail_scales(parse_scale("1:1"), Units.MM)] == []
    assert all(s in METRIC for s in detail_scales(parse_scale("1:50"), Units.MM))


def test_a_wide_section_has_its_details_below() -> None:
    wide = replace(eave.section(), frame=((-700, -300), (4300, -300), (4300, 800), (-700, 800)))
    findings = (eave.GAP, eave.SHORT)
    free = areas(paper_size("A3"), 2).drawing
    made = arrange(eave.result(section=wide), findings, free, parse_scale("1:20"), Units.MM)
    assert made.details
    assert all(d.box.top <= made.drawing.bottom for d in made.details)


def test_nothing_of_a_detail_leaves_its_square_but_its_scale() -> None:
    result = eave.result()
    free = areas(paper_size("A3"), 2).drawing
    made = arrange(result, result.findings, free, parse_scale("1:20"), Units.MM)
    numbers = {f.key: i for i, f in enumerate(result.findings, 1)}
    view = View(Placement(20.0), Units.MM, load_theme())
    for detail in made.details:
        marks = list(detail_marks(detail, result, numbers, view))
        for mark in marks:
            if isinstance(mark, Label) and mark.text == detail.scale.text:
                assert mark.at[1] < detail.box.bottom
            else:
                assert all(detail.box.holds(p) for p in points_of(mark)), mark
        assert {m.number for m in marks if isinstance(m, Flag)} == {
            numbers[f.key] for f in detail.findings
        }


def test_lengths_in_a_detail_are_true_to_its_scale() -> None:
    """The lap of 80 mm between the roof sheets is 16 mm long at 1:5."""
    result = eave.result(findings=(eave.REVERSED,))
    free = areas(paper_size("A3"), 2).drawing
    (detail,) = arrange(result, result.findings, free, parse_scale("1:20"), Units.MM).details
    marks = detail_marks(
        detail, result, {eave.REVERSED.key: 1}, View(Placement(20.0), Units.MM, load_theme())
    )
    runs = [m.points for m in marks if isinstance(m, Stroke) and m.source == "r2"]
    assert detail.scale.text == "1:5"
    start = Placement(5.0, detail.middle, detail.box.centre).point(eave.roof(480, 4))
    assert min(dist(p, start) for run in runs for p in run) < 1e-6


def test_a_long_lap_gets_a_detail_that_holds_it() -> None:
    long = replace(eave.REVERSED, extent=((eave.roof(0, 8), eave.roof(560, 8)),))
    free = areas(paper_size("A3"), 2).drawing
    (detail,) = arrange(eave.result(), (long,), free, parse_scale("1:20"), Units.MM).details
    assert detail.scale.text == "1:10"


def test_a_glyph_that_can_be_read_in_the_drawing_stays_there() -> None:
    free = areas(paper_size("A3"), 2).drawing
    made = arrange(eave.result(), (eave.REVERSED, eave.GAP), free, parse_scale("1:20"), Units.MM)
    large = replace(eave.REVERSED, extent=((eave.roof(0, 8), eave.roof(560, 8)),))
    assert made.told(parse_scale("1:20"), (large, eave.GAP)) == {eave.GAP.key}


def test_among_very_many_findings_the_drawing_does_without_small_glyphs() -> None:
    free = areas(paper_size("A3"), 2).drawing
    findings = eave.crowded().findings
    made = arrange(eave.crowded(), findings, free, parse_scale("1:20"), Units.MM)
    assert made.told(parse_scale("1:20"), findings) == {f.key for f in findings}
