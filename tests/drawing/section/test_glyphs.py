"""One glyph for each kind of fault, drawn about a spot whichever way it lies."""

from math import cos, dist, radians, sin

import pytest

from enclosure_app.drawing.marks import Anchor, Fill, Label, Stroke, points_of
from enclosure_app.drawing.section.glyphs import GLYPHS, Facts, Spot, glyph
from enclosure_app.drawing.theme import load_theme
from enclosure_app.rules import RULES

THEME = load_theme()
UPRIGHT = Spot((50.0, 50.0), (0.0, 1.0), (1.0, 0.0))
FACTS = Facts(length=6.0, needed=10.0, text="60 mm", needed_text="100 mm", source="x")


def test_every_rule_has_a_glyph() -> None:
    assert {rule.name for rule in RULES} <= set(GLYPHS)


# A level, standing water, falling drops and a ring of arrows look the same whichever way the layer lies.
UPRIGHT_ALWAYS = {"level-lap", "ponding", "no-drip", "wet-route", "lap-cycle"}


@pytest.mark.parametrize("rule", sorted(set(GLYPHS) - UPRIGHT_ALWAYS))
def test_a_glyph_turns_with_its_spot(rule: str) -> None:
    """Lines about a turned spot are the lines of the upright one, turned."""
    c, s = cos(radians(30)), sin(radians(30))
    turned = Spot((0.0, 0.0), (-s, c), (c, s))
    for a, b in zip(
        glyph(rule, UPRIGHT, FACTS, THEME), glyph(rule, turned, FACTS, THEME), strict=True
    ):
        if isinstance(a, Stroke) and len(a.points) < 20:
            for (x, y), q in zip(a.points, points_of(b), strict=True):
                u, v = x - 50.0, y - 50.0
                assert dist((u * c - v * s, u * s + v * c), q) < 1e-6


def test_a_gap_is_as_wide_as_it_is() -> None:
    caps = [
        m
        for m in GLYPHS["gap"](UPRIGHT, FACTS, THEME)
        if isinstance(m, Stroke) and m.pen == THEME.pen("cap")
    ]
    assert sorted(m.points[0][1] for m in caps) == [47.0, 53.0]


def test_a_short_lap_lacks_its_lower_end_and_a_short_cover_its_upper_one() -> None:
    def hollow(rule: str) -> tuple[float, float]:
        (fill,) = (
            m
            for m in GLYPHS[rule](UPRIGHT, FACTS, THEME)
            if isinstance(m, Fill) and m.colour == THEME.paper
        )
        ys = [y for _, y in fill.rings[0]]
        return min(ys), max(ys)

    assert hollow("short-lap") == (43.0, 47.0)
    assert hollow("edge-cover-short") == hollow("upturn-short") == (53.0, 57.0)


def test_a_label_is_read_away_from_its_sheet() -> None:
    assert UPRIGHT.label("60 mm", 4.0, THEME).anchor is Anchor.START
    assert UPRIGHT.label("60 mm", -4.0, THEME).anchor is Anchor.END
    assert Spot((0, 0), (1.0, 0.0), (0.0, 1.0)).label("60 mm", 4.0, THEME).anchor is Anchor.MIDDLE


def test_the_stream_of_a_reversed_lap_turns_in_behind_the_lower_sheet() -> None:
    way = max(
        (m.points for m in GLYPHS["reverse-lap"](UPRIGHT, FACTS, THEME) if isinstance(m, Stroke)),
        key=len,
    )
    assert way[0][1] > 53.0  # comes from above the lap, on the outer side
    assert way[0][0] > 50.0
    assert way[-1][1] < 47.0  # leaves below it, on the inner side
    assert way[-1][0] < 50.0


def test_beads_of_an_unsealed_joint_are_open() -> None:
    fills = [m for m in GLYPHS["unsealed-joint"](UPRIGHT, FACTS, THEME) if isinstance(m, Fill)]
    assert len(fills) == 3
    assert {m.colour for m in fills} == {THEME.paper}


def test_a_puddle_is_level_and_as_wide_as_its_shores() -> None:
    shores = Facts(length=2.0, text="12 mm", way=((40.0, 52.0), (60.0, 52.0)))
    marks = list(GLYPHS["ponding"](UPRIGHT, shores, THEME))
    top = max((m.points for m in marks if isinstance(m, Stroke)), key=lambda p: p[1][0] - p[0][0])
    assert top[0][1] == top[1][1]
    assert (top[0][0], top[1][0]) == (40.0, 60.0)
    assert [m.text for m in marks if isinstance(m, Label)] == ["12 mm"]


def test_a_drop_that_does_not_fall_clear_hangs_back_towards_the_wall() -> None:
    marks = list(GLYPHS["no-drip"](UPRIGHT, FACTS, THEME))
    way = max((m.points for m in marks if isinstance(m, Stroke)), key=len)
    assert way[-1][0] < way[0][0]  # outside is on the right
    mirrored = Spot((50.0, 50.0), (0.0, 1.0), (-1.0, 0.0))
    way = max(
        (m.points for m in GLYPHS["no-drip"](mirrored, FACTS, THEME) if isinstance(m, Stroke)),
        key=len,
    )
    assert way[-1][0] > way[0][0]


def test_a_rule_of_ones_own_has_no_glyph() -> None:
    assert list(glyph("own-rule", UPRIGHT, FACTS, THEME)) == []


def test_what_is_lacking_stands_beside_the_trail_of_what_stops_short() -> None:
    told = list(glyph("stops-short", UPRIGHT, Facts(text="200 mm"), THEME))
    (label,) = [mark for mark in told if isinstance(mark, Label)]
    assert label.text == "200 mm"
    bare = glyph("stops-short", UPRIGHT, Facts(), THEME)
    assert not any(isinstance(mark, Label) for mark in bare)
