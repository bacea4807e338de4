"""What is drawn of a section."""

import itertools
from dataclasses import replace
from math import dist

import pytest

from enclosure_app.drawing.marks import Fill, Label, Mark, Stroke, points_of
from enclosure_app.drawing.placement import Placement
from enclosure_app.drawing.polylines import foot
from enclosure_app.drawing.section.glyphs import GLYPHS
from enclosure_app.drawing.section.section_marks import RING, View, frame_box, section_marks
from enclosure_app.drawing.section.side_words import label_box
from enclosure_app.drawing.theme import load_theme
from enclosure_app.drawing.typeface import text_width
from enclosure_app.model.drawing import Units
from enclosure_app.model.finding import Finding, Severity
from enclosure_app.model.product import Control
from enclosure_app.model.report import Continuity, SectionResult
from enclosure_app.model.section import Text
from tests.drawing import eave

THEME = load_theme()
AT_TEN = Placement(10.0, (0.0, 0.0), (100.0, 60.0))


def marks(result: SectionResult | None = None, **how: object) -> tuple[Mark, ...]:
    view = View(AT_TEN, Units.MM, THEME)
    return section_marks(result or eave.result(), replace(view, **how))


def strokes(found: tuple[Mark, ...], source: str) -> list[Stroke]:
    return [m for m in found if isinstance(m, Stroke) and m.source == source]


def labels(found: tuple[Mark, ...]) -> list[str]:
    return [m.text for m in found if isinstance(m, Label)]


def test_every_control_of_a_sheet_has_its_own_line_and_water_is_outermost() -> None:
    pens = {m.pen: m for m in strokes(marks(), "w2")}
    water, air = pens[THEME.control(Control.WATER)], pens[THEME.control(Control.AIR)]
    height = AT_TEN.point((0, 1500))[1]
    outer, inner = (foot(m.points, (0, height)).at[0] for m in (water, air))
    assert outer - inner == pytest.approx(THEME.control(Control.WATER).width + 0.12, abs=0.01)


def test_a_known_length_is_true_to_scale() -> None:
    """The roof sheet's run of 510 mm is 51.0 mm on paper at 1:10."""
    run = max((m.points for m in strokes(marks(), "r2")), key=lambda p: dist(p[0], p[-1]))
    whole = sum(dist(a, b) for a, b in itertools.pairwise(run))
    assert whole == pytest.approx(51.0, abs=0.05)


def test_calm_marks_end_at_the_frame() -> None:
    frame = frame_box(eave.result(), AT_TEN)
    sound = eave.result(findings=(), layers={})
    for mark in marks(sound):
        if not isinstance(mark, Label):
            assert all(frame.holds(p) for p in points_of(mark))


def test_a_gap_has_blunt_caps_on_both_ends_and_its_width_beside_it() -> None:
    found = marks()
    heavy = [m for m in strokes(found, eave.GAP.key) if m.pen == THEME.pen("cap")]
    caps = [m for m in heavy if not m.closed]
    ends = sorted(sum(y for _, y in m.points) / 2 for m in caps)
    assert ends == pytest.approx([AT_TEN.point((0, 90))[1], AT_TEN.point((0, 120))[1]])
    assert "30 mm" in labels(found)


def test_the_ruler_of_a_short_lap_is_filled_for_what_is_there_and_hollow_for_what_is_missing() -> (
    None
):
    fills = [m for m in marks() if isinstance(m, Fill) and m.source == eave.SHORT.key]
    sizes = {}
    for fill in fills:
        ys = [y for _, y in fill.rings[0]]
        sizes[fill.colour] = max(ys) - min(ys)
    assert sizes[THEME.ink] == pytest.approx(6.0, abs=0.1)
    assert sizes[THEME.paper] == pytest.approx(4.0, abs=0.1)
    assert {"60 mm", "of 100 mm"} <= set(labels(marks()))


def test_the_stream_of_a_reversed_lap_ends_on_the_inner_side_below_the_lap() -> None:
    streams = [m for m in strokes(marks(), eave.REVERSED.key) if m.pen == THEME.pen("stream")]
    way = max((m.points for m in streams), key=len)
    deck = AT_TEN.points((eave.roof(0), eave.roof(1000)))
    inner = AT_TEN.points((eave.roof(0, 4), eave.roof(1000, 4)))
    assert foot(inner, way[0]).left is False  # uphill, the outer side is on the right
    assert foot(inner, way[-1]).left is True
    assert foot(deck, way[0]).along > foot(deck, way[-1]).along


def test_the_trail_of_what_stops_short_leads_on_and_fades() -> None:
    gone = replace(eave.STOPS, extent=(((-1.5, 1900.0), (-1.5, 2040.0)),))
    trail = strokes(marks(eave.result(findings=(gone,))), gone.key)[2:]
    heights = [m.points[0][1] for m in trail]
    widths = [m.pen.width for m in trail]
    assert heights == sorted(heights)
    assert heights[0] > AT_TEN.point((0, 1900))[1]
    assert widths == sorted(widths, reverse=True)


def test_both_sides_are_named_where_their_marks_are() -> None:
    words = {
        m.text: m.at for m in marks() if isinstance(m, Label) and m.text in ("INSIDE", "OUTSIDE")
    }
    assert words["INSIDE"][0] < AT_TEN.point((0, 0))[0] < words["OUTSIDE"][0]
    assert labels(marks()).count("INSIDE") == 1  # the office's own text is not repeated


def test_the_words_of_a_finding_do_not_lie_over_those_for_the_sides() -> None:
    """The width of the gap at the sill stands just where somebody put the inside mark."""
    (width,) = [m for m in marks() if isinstance(m, Label) and m.text == "30 mm"]
    spot = AT_TEN.back(label_box(width).centre)
    result = eave.result()
    result = replace(result, section=replace(result.section, inside=(spot,)))
    found = [m for m in marks(result) if isinstance(m, Label)]
    (word,) = [m for m in found if m.text == "INSIDE" and m.bold]
    (still,) = [m for m in found if m.text == "30 mm"]
    (inner, outer) = label_box(word), label_box(still)
    assert inner.bottom >= outer.top or inner.top <= outer.bottom or inner.right <= outer.left
    assert dist(inner.centre, outer.centre) < 12.0


def test_the_ring_of_a_finding_does_not_lie_over_the_words_for_the_sides() -> None:
    result = eave.result()
    near = (result.findings[0].at[0] + 45.0, result.findings[0].at[1])
    result = replace(result, section=replace(result.section, outside=(near,)))
    (word,) = [m for m in marks(result) if isinstance(m, Label) and m.text == "OUTSIDE" and m.bold]
    box, centre = label_box(word), AT_TEN.point(result.findings[0].at)
    assert dist(box.clamp(centre), centre) >= RING
    assert box.centre[0] > centre[0]


def test_the_way_in_is_drawn_for_a_broken_layer_only() -> None:
    assert strokes(marks(), "opening:air")
    assert not strokes(marks(), "opening:water")
    whole = replace(eave.AIR, continuity=Continuity.CONTINUOUS)
    assert not strokes(marks(eave.result(layers={Control.AIR: whole})), "opening:air")


def test_a_ring_is_as_heavy_as_its_finding_and_a_detail_has_none() -> None:
    def rings(found: tuple[Mark, ...], key: str) -> set[float]:
        return {m.pen.width for m in strokes(found, key) if m.closed and len(m.points) == 48}

    assert THEME.pen("fault").width in rings(marks(), eave.GAP.key)
    assert rings(marks(), eave.NO_DRIP.key) == {THEME.pen("remark").width}
    assert rings(marks(detail=True), eave.GAP.key) == set()


def test_a_finding_shown_elsewhere_has_its_ring_but_no_glyph() -> None:
    calm = marks(elsewhere=frozenset({eave.SHORT.key}))
    assert not [m for m in calm if isinstance(m, Fill) and m.source == eave.SHORT.key]
    assert strokes(calm, eave.SHORT.key)


@pytest.mark.parametrize("rule", sorted(GLYPHS))
def test_every_glyph_is_drawn_near_its_place(rule: str) -> None:
    finding = Finding(
        f"{rule}:x", rule, Control.WATER, Severity.FAULT, (163, 1500), ("w2",), "What.", "Do.",
        60.0, 100.0, extent=(((163, 1470), (163, 1530)),),
    )  # fmt: skip
    found = [
        m
        for m in marks(eave.result(findings=(finding,)))
        if getattr(m, "source", "") == finding.key
    ]
    assert len(found) > 3
    at = AT_TEN.point(finding.at)
    assert all(dist(p, at) < 22 for m in found for p in points_of(m))


def test_a_section_without_any_layer_or_mark_can_be_drawn() -> None:
    bare = SectionResult(replace(eave.section(), inside=(), outside=()), {})
    assert strokes(marks(bare), "w1")


def test_a_finding_without_extent_or_control_can_be_drawn() -> None:
    odd = Finding("own:1", "own-rule", None, Severity.DOUBT, (0.0, 500.0), (), "What.", "Do.")
    lap = replace(odd, key="short-lap:1", rule="short-lap")
    bare = SectionResult(eave.section(), {}, findings=(odd, lap))
    found = marks(bare)
    assert strokes(found, "own:1")
    assert strokes(found, "short-lap:1")


def test_a_plan_has_no_gravity_and_is_drawn_all_the_same() -> None:
    plan = replace(eave.section(), gravity=None)
    assert strokes(marks(eave.result(section=plan)), "w1")


def test_an_office_text_that_would_leave_the_frame_is_shortened_or_left_out() -> None:
    long = Text("a very long note that goes on and on and on " * 3, (700, 1260), 32)
    turned = replace(long, angle=90.0)
    noted = replace(eave.section(), texts=(long, turned))
    (note,) = (
        m for m in marks(eave.result(section=noted)) if isinstance(m, Label) and "very" in m.text
    )
    assert note.text.endswith("…")
    frame = frame_box(eave.result(), AT_TEN)
    assert note.at[0] + text_width(note.text, note.size) <= frame.right
