"""Flags stand beside the places of findings, where they cover nothing that is to be read."""

from itertools import combinations

import pytest

from enclosure_app.drawing.marks import Anchor, Flag, Label
from enclosure_app.drawing.placement import Box, Placement, box_around
from enclosure_app.drawing.section.flags import FLAG_HEIGHT, FLAG_WIDTH
from enclosure_app.drawing.typeface import text_width
from enclosure_app.model.place import Point
from enclosure_app.model.report import SectionResult
from enclosure_app.model.said.decision import Decision, State
from enclosure_app.window.canvas.ink.look import Look
from enclosure_app.window.canvas.picture.composition import composed, numbers_of
from enclosure_app.window.canvas.picture.flag_places import box_of, flags_of
from tests.drawing import eave

PLACEMENT = Placement(10.0)
EVERYTHING = Box(-10000.0, -10000.0, 10000.0, 10000.0)


def placed(result: SectionResult, *written: Label, placement: Placement = PLACEMENT) -> list[Flag]:
    marks = flags_of(result, numbers_of(result.findings), placement, Look(), written)
    return [mark for mark in marks if isinstance(mark, Flag)]


def apart(a: Box, b: Box) -> bool:
    beside = a.right <= b.left or b.right <= a.left
    return beside or a.top <= b.bottom or b.top <= a.bottom


def label(text: str, at: Point, anchor: Anchor = Anchor.START, angle: float = 0.0) -> Label:
    return Label(text, at, 2.0, "ink", anchor, angle, halo="paper")


def test_flags_cover_neither_each_other_nor_the_place_of_a_finding() -> None:
    result = eave.crowded(12)
    flags = placed(result)
    places = [PLACEMENT.point(finding.at) for finding in result.findings]
    for a, b in combinations([*(flag.at for flag in flags), *places], 2):
        if a not in places or b not in places:
            assert abs(a[0] - b[0]) >= FLAG_WIDTH or abs(a[1] - b[1]) >= FLAG_HEIGHT


def test_a_flag_covers_no_words() -> None:
    result = eave.result()
    before = placed(result)
    words = [label("1 106 mm", flag.at) for flag in before]
    for flag in placed(result, *words):
        assert all(apart(box_around(flag.shape), box_of(word)) for word in words)


def test_words_that_are_everywhere_do_not_lead_flags_astray() -> None:
    result = eave.result()
    everywhere = [
        label("M" * 40, (x, y)) for x in range(-200, 400, 80) for y in range(-200, 600, 2)
    ]
    assert [flag.at for flag in placed(result, *everywhere)] == [f.at for f in placed(result)]


def test_of_the_real_marks_no_flag_covers_words() -> None:
    parts = composed(eave.result(), PLACEMENT, EVERYTHING, Look())
    words = [mark for mark in parts.layers if isinstance(mark, Label) and mark.halo]
    assert words
    for flag in (mark for mark in parts.flags if isinstance(mark, Flag)):
        assert all(apart(box_around(flag.shape), box_of(word)) for word in words)


def test_flags_stay_beside_their_places_while_the_drawing_is_moved() -> None:
    moved = Placement(10.0, (777.7, -333.3))
    result = eave.crowded(20)
    for here, there in zip(placed(result), placed(result, placement=moved), strict=True):
        by = here.at[0] - there.at[0], here.at[1] - there.at[1]
        assert by == pytest.approx((77.77, -33.33))


@pytest.mark.parametrize(
    ("anchor", "share"), [(Anchor.START, 0.0), (Anchor.MIDDLE, 0.5), (Anchor.END, 1.0)]
)
def test_the_room_of_words(anchor: Anchor, share: float) -> None:
    wide = text_width("Lap", 2.0)
    box = box_of(label("Lap", (10.0, 5.0), anchor))
    assert (box.left, box.right) == pytest.approx((10.0 - share * wide, 10.0 + (1 - share) * wide))
    assert (box.bottom, box.top) == (5.0, 7.0)


def test_the_word_of_a_verdict_is_covered_by_no_flag() -> None:
    result = eave.crowded(12)
    decided = {f.key: Decision(f.key, State.TO_BE_MENDED, "Ida") for f in result.findings}
    shown = eave.result(findings=result.findings, decisions=decided)
    marks = list(flags_of(shown, numbers_of(shown.findings), PLACEMENT, Look()))
    flags = [m.at for m in marks if isinstance(m, Flag)]
    words = [m.at for m in marks if isinstance(m, Label) and m.text == "To be mended"]
    assert len(words) == 12
    for x, y in words:
        own = min(flags, key=lambda flag: (flag[0] - x) ** 2 + (flag[1] - y) ** 2)
        others = [flag for flag in flags if flag != own]
        assert not any(
            abs(fx - x) < FLAG_WIDTH / 2 and abs(fy - y - 1.0) < FLAG_HEIGHT / 2
            for fx, fy in others
        )
