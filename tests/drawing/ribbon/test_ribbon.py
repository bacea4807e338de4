"""The ribbon is read like a measuring tape."""

from dataclasses import replace

import pytest

from enclosure_app.drawing.marks import Fill, Flag, Label, Mark, Stroke
from enclosure_app.drawing.placement import Box
from enclosure_app.drawing.ribbon.band import HAIR, HEIGHT
from enclosure_app.drawing.ribbon.ribbon import continuity_line, ribbon_marks
from enclosure_app.drawing.ribbon.unrolled import (
    end_word,
    unrolled,
)
from enclosure_app.drawing.theme import load_theme
from enclosure_app.model.drawing import Units
from enclosure_app.model.product import Control
from enclosure_app.model.report import Continuity, LayerResult, Lift, Run, SectionResult
from tests.drawing import eave

BOX = Box(20, 50, 220, 50 + HEIGHT)
LOOK = (Units.MM, load_theme())


def marks(layer: LayerResult, result: SectionResult | None = None) -> tuple[Mark, ...]:
    result = result or eave.result()
    numbers = {f.key: i for i, f in enumerate(result.findings, 1)}
    return ribbon_marks(result, layer, numbers, BOX, LOOK)


def texts(found: tuple[Mark, ...]) -> list[str]:
    return [m.text for m in found if isinstance(m, Label)]


def x_of(layer: LayerResult, along: float) -> float:
    return BOX.left + along / unrolled(layer).length * BOX.width


def test_a_sheet_is_as_long_on_the_ribbon_as_along_the_walk() -> None:
    block = next(m for m in marks(eave.WATER) if isinstance(m, Fill) and m.source == "w2")
    xs = [x for x, _ in block.rings[0]]
    assert max(xs) - min(xs) == pytest.approx(1000 / unrolled(eave.WATER).length * BOX.width)


def test_courses_take_turns_in_two_tints() -> None:
    names = ("coat", "base", "w1", "w2", "w3", "r1", "r2")
    fills = {m.source: m.colour for m in marks(eave.WATER) if isinstance(m, Fill) and m.source}
    tints = load_theme().tints["water"]
    assert [fills[name] for name in names] == [tints[k % 2] for k in range(7)]


def test_a_lift_is_a_hole_to_scale_but_never_thinner_than_a_hair() -> None:
    def hole(width: float) -> float:
        walk = (Run("w1", ((0, 0), (0, 1000))), Lift("w1", "w2", (0, 1000), (0, 1000 + width)),
                Run("w2", ((0, 1000 + width), (0, 2000))))  # fmt: skip
        layer = LayerResult(Control.AIR, Continuity.BROKEN, walk)
        fill = next(m for m in marks(layer) if isinstance(m, Fill) and m.source == "lift")
        xs = [x for x, _ in fill.rings[0]]
        assert fill.colour == load_theme().paper
        return max(xs) - min(xs)

    assert hole(200.0) == pytest.approx(20.0)
    assert hole(1.0) == pytest.approx(HAIR)


def test_flags_hang_below_their_places_with_the_numbers_of_the_drawing() -> None:
    flags = {m.number: m for m in marks(eave.WATER) if isinstance(m, Flag)}
    assert sorted(flags) == [2, 4, 6]
    stem = flags[6].leader
    assert stem is not None
    assert stem.points[0][0] == pytest.approx(
        x_of(eave.WATER, unrolled(eave.WATER).along(eave.roof(520, 6)))
    )
    assert flags[6].at[1] < stem.points[0][1]


def test_forty_flags_keep_their_order_and_stay_on_the_ribbon() -> None:
    flags = [m for m in marks(eave.WATER, eave.crowded(60)) if isinstance(m, Flag)]
    xs = [flag.at[0] for flag in flags]
    assert xs == sorted(xs)
    assert all(BOX.left <= x <= BOX.right for x in xs)


def test_the_ends_say_where_the_layer_goes_on() -> None:
    words = texts(marks(eave.AIR))
    assert words.count("goes on to the left") == 2
    assert "goes on below" in texts(marks(eave.WATER))
    assert end_word((0.0, 0.0), eave.section()) == "ends here"
    assert end_word((0.0, 2640.0), eave.section()) == "goes on above"


def test_the_length_is_written_at_the_end_in_the_drawing_s_units() -> None:
    whole = round(unrolled(eave.AIR).length)
    assert f"{whole:,} mm".replace(",", "\u202f") in texts(marks(eave.AIR))


def test_one_line_says_how_the_layer_runs() -> None:
    assert (
        continuity_line(eave.AIR, Units.MM)
        == "broken at 1 place, 30 mm wide; open from outside to inside by 30 mm"
    )
    assert continuity_line(eave.WATER, Units.MM).startswith("continuous")
    unsure = LayerResult(Control.AIR, Continuity.UNSURE, why="the two proofs differ")
    assert continuity_line(unsure, Units.MM) == "unsure: the two proofs differ"
    assert continuity_line(replace(unsure, why=""), Units.MM) == "unsure: judge this layer by eye"
    two = replace(eave.AIR, walk=(*eave.AIR.walk, Lift("lid", "", (0, 0), (0, 50))), opening=None)
    assert continuity_line(two, Units.MM) == "broken at 2 places, at most 50 mm wide"


def test_a_layer_that_is_not_drawn_has_words_and_no_band() -> None:
    absent = LayerResult(Control.AIR, Continuity.ABSENT)
    found = marks(absent)
    assert "No sheet or board of this layer is drawn." in texts(found)
    assert not [m for m in found if isinstance(m, Fill | Flag)]


def test_every_mark_stays_within_the_ribbon_s_box() -> None:
    for mark in marks(eave.AIR):
        if isinstance(mark, Stroke):
            assert all(BOX.holds(p, 0.01) for p in mark.points)
