"""What is written above the band, and that no two words stand in one place."""

from dataclasses import replace
from itertools import combinations

from enclosure_app.drawing.marks import Anchor, Label
from enclosure_app.drawing.placement import Box
from enclosure_app.drawing.ribbon.band import HEIGHT, Ribbon
from enclosure_app.drawing.ribbon.unrolled import unrolled
from enclosure_app.drawing.ribbon.words import word_marks
from enclosure_app.drawing.theme import load_theme
from enclosure_app.drawing.typeface import text_width
from enclosure_app.model.drawing import Units
from enclosure_app.model.product import Control
from enclosure_app.model.report import Continuity, LayerResult, Run, SectionResult
from enclosure_app.model.section import Text
from tests.drawing import eave

NAMES = tuple(
    Text(text, (150.0, y), 30.0)
    for text, y in (("footing", 150.0), ("sill", 700.0), ("window", 1200.0), ("soffit", 1900.0))
)


def labels(
    layer: LayerResult, result: SectionResult | None = None, width: float = 200.0
) -> list[Label]:
    box = Box(0.0, 0.0, width, HEIGHT)
    laid = unrolled(layer)
    ribbon = Ribbon(result or eave.result(), layer, laid, box, Units.MM, load_theme())
    return [mark for mark in word_marks(ribbon) if isinstance(mark, Label)]


def named() -> SectionResult:
    section = replace(eave.section(), texts=NAMES)
    return eave.result(section=section)


def span(label: Label) -> tuple[float, float]:
    width = text_width(label.text, label.size, bold=label.bold)
    left = (
        label.at[0]
        - {Anchor.START: 0.0, Anchor.MIDDLE: 0.5, Anchor.END: 1.0}[label.anchor] * width
    )
    return left, left + width


def test_ends_junctions_and_lies_are_written() -> None:
    texts = [label.text for label in labels(eave.WATER, named())]
    assert texts[:2] == ["goes on below", "goes on to the left"]
    assert [text for text in texts if text in ("footing", "sill", "opening", "soffit")] == [
        "footing", "sill", "opening", "soffit",
    ]  # fmt: skip
    assert "upright" in texts
    assert "slope 30°" in texts


def test_no_word_covers_another_however_little_room_there_is() -> None:
    for width in (60.0, 120.0, 200.0, 300.0):
        spans = [span(label) for label in labels(eave.WATER, named(), width)]
        for a, b in combinations(spans, 2):
            assert a[1] <= b[0] + 1e-6 or b[1] <= a[0] + 1e-6, width


def test_a_layer_that_meets_itself_goes_all_the_way_round() -> None:
    ring = ((0.0, 0.0), (900.0, 0.0), (900.0, 900.0), (0.0, 900.0), (0.0, 0.0))
    layer = LayerResult(
        Control.AIR, Continuity.CONTINUOUS, (Run("w1", ring[:3]), Run("w2", ring[2:]))
    )
    texts = [label.text for label in labels(layer)]
    assert texts[:2] == ["goes all the way round", "and meets itself"]
    assert "ends here" not in texts
