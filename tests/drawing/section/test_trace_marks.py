"""The way of the pen: a band under the sheets, dashes where it is lifted, rings at its ends."""

from enclosure_app.drawing.marks import Stroke
from enclosure_app.drawing.placement import Placement
from enclosure_app.drawing.section.section_marks import View, section_marks
from enclosure_app.drawing.section.trace_marks import trace_marks
from enclosure_app.drawing.theme import load_theme
from enclosure_app.model.drawing import Units
from enclosure_app.model.product import Control
from enclosure_app.model.report import Continuity, LayerResult, Lift
from tests.drawing import eave

THEME = load_theme()
PLACEMENT = Placement(10.0)


def marks(layer: LayerResult) -> list[Stroke]:
    return list(trace_marks(layer, PLACEMENT, THEME))


def test_every_run_has_its_band_and_every_lift_its_dashes() -> None:
    found = marks(eave.AIR)
    bands = [m.points for m in found if m.pen.colour == THEME.tints["air"][1]]
    runs = [step for step in eave.AIR.walk if not isinstance(step, Lift)]
    assert bands == [PLACEMENT.points(run.points) for run in runs]
    dashed = [m.points for m in found if m.pen.dash]
    assert dashed == [((16.0, 9.0), (16.0, 12.0))]


def test_rings_stand_at_both_ends() -> None:
    rings = [m for m in marks(eave.AIR) if m.closed]
    middles = [(sum(x for x, _ in r.points) / 24, sum(y for _, y in r.points) / 24) for r in rings]
    assert [(round(x, 6), round(y, 6)) for x, y in middles] == [(-70.0, 4.5), (-70.0, 204.0)]


def test_arrows_lead_the_way_the_pen_goes() -> None:
    heads = [
        m.points for m in marks(eave.AIR) if len(m.points) == 3 and not m.closed and not m.pen.dash
    ]
    heads = [
        h for h in heads if h[0] != h[2] and abs(h[0][0] - h[2][0]) + abs(h[0][1] - h[2][1]) < 4
    ]
    upward = [h for h in heads if h[1][1] > h[0][1] and abs(h[1][0] - 16.0) < 0.5]
    assert len(upward) >= 3  # along the wall it goes up


def test_a_layer_without_a_walk_has_no_trace() -> None:
    assert marks(LayerResult(Control.HEAT, Continuity.ABSENT)) == []


def test_a_section_shows_it_only_when_asked() -> None:
    view = View(PLACEMENT, Units.MM, THEME)
    traced = View(PLACEMENT, Units.MM, THEME, traced=True)
    sources = {m.source for m in section_marks(eave.result(), view)}
    assert not any(source.startswith("trace:") for source in sources)
    more = {m.source for m in section_marks(eave.result(), traced)} - sources
    assert more == {"trace:water", "trace:air", "trace:vapour"}
