"""The checker: severities, keys, order, verdicts, and places given back as they were drawn."""

from collections.abc import Callable, Iterator
from dataclasses import replace
from math import cos, dist, sin
from types import MappingProxyType

import pytest

from enclosure_app import checker
from enclosure_app.checker import check_drawing, check_section
from enclosure_app.files.maps.rule_book import load_limits
from enclosure_app.model.drawing import Drawing, Units
from enclosure_app.model.finding import Finding, Severity
from enclosure_app.model.limits import Limits
from enclosure_app.model.place import Line, Point, Points
from enclosure_app.model.product import Control
from enclosure_app.model.report import Continuity, Run, SectionResult
from enclosure_app.model.section import Piece, Section
from enclosure_app.network import layer as layer_module
from enclosure_app.network.network import Network
from enclosure_app.network.opening import Opening
from enclosure_app.network.trace import Trace
from enclosure_app.rules import RULES
from enclosure_app.rules.rule import Rule
from tests.faulty_wall import INSIDE, OUTSIDE, WALL
from tests.rules.junctions import box, run, section, wall_lap

US = load_limits("irc-2021")
KEYS = [
    "upturn-short:water:roof.high",
    "unsealed-joint:air:w1.face+w2.face",
    "short-lap:water:w3.high+w4.low",
    "reverse-lap:water:w4.high+w5.low",
    "open-penetration:air:pipe.face+w5.high",
    "open-penetration:air:pipe.face+w6.low",
    "gap:air:w6.high+w7.low",
    "gap:water:w6.high+w7.low",
]


def at_levels(**levels: str) -> Limits:
    """Return the limits with some rules louder or quieter; `reverse_lap` is reverse-lap."""
    named = {rule.replace("_", "-"): Severity(level) for rule, level in levels.items()}
    return replace(US, severities=MappingProxyType(named))


def keys(result: SectionResult) -> list[str]:
    return [finding.key for finding in result.findings]


def gapped(*gaps: tuple[float, float], of: str = "building-paper") -> Section:
    """A wall sheet with gaps from and to the heights given, low to high."""
    low = [-500.0, *(top for _, top in gaps)]
    high = [*(bottom for bottom, _ in gaps), 500.0]
    pieces = [
        run(f"p{n}", of, (0, a), (0, b)) for n, (a, b) in enumerate(zip(low, high, strict=True))
    ]
    return section(*pieces)


# --- severities ---------------------------------------------------------------------------------


def test_a_rule_that_is_off_says_nothing_and_the_others_go_on() -> None:
    found = keys(check_section(WALL, at_levels(gap="off", open_penetration="off")))
    assert found == [key for key in KEYS if not key.startswith(("gap", "open-penetration"))]


def test_all_rules_off_leave_the_verdicts() -> None:
    off = at_levels(**{rule.name.replace("-", "_"): "off" for rule in RULES})
    result = check_section(WALL, off)
    assert result.findings == ()
    assert result.layers[Control.WATER].continuity is Continuity.BROKEN


@pytest.mark.parametrize("level", [Severity.REMARK, Severity.DOUBT, Severity.FAULT])
def test_a_level_that_is_set_goes_for_every_finding_of_the_rule(level: Severity) -> None:
    result = check_section(WALL, at_levels(gap=level))
    severities = {finding.rule: finding.severity for finding in result.findings}
    assert severities.pop("gap") is level
    assert set(severities.values()) == {Severity.FAULT}


def test_a_level_that_is_set_goes_over_a_rules_own_doubt() -> None:
    """A gap in the vapour layer is a doubt unless the project says otherwise."""
    drawn = gapped((0, 30), of="kraft-facing")
    assert [f.severity for f in check_section(drawn, US).findings] == [Severity.DOUBT]
    louder = check_section(drawn, at_levels(gap="fault"))
    assert [f.severity for f in louder.findings] == [Severity.FAULT]


# --- keys and order -----------------------------------------------------------------------------


def test_findings_come_in_walking_order_with_keys_of_names() -> None:
    result = check_section(WALL, US)
    assert keys(result) == KEYS
    along = [finding.along for finding in result.findings]
    assert along == sorted(along)


def test_along_counts_millimetres_from_the_first_cut_end() -> None:
    """The low roof is 600 long, then the wall goes up 120 to the top of the leg."""
    first = check_section(WALL, US).findings[0]
    assert first.along == pytest.approx(dist((-600, -12), (0, 0)) + 120, abs=5)


def test_gaps_come_one_after_the_other_up_the_wall() -> None:
    found = check_section(gapped((-200, -170), (0, 20), (300, 340)), US).findings
    heights = [finding.at[1] for finding in found]
    assert heights in ([-185, 10, 320], [320, 10, -185])


@pytest.mark.parametrize(
    "step",
    [
        (0.6, 0.8),
        (0.0, -1.0),
        (-0.6, 0.8),
        (1.0, 0.0),
    ],
)
def test_keys_stay_when_all_pieces_are_drawn_a_millimetre_further_on(step: Point) -> None:
    """The frame and the marks stay: what was cut by the frame now ends just short of it."""
    pieces = tuple(_stepped(piece, step) for piece in WALL.pieces)
    assert keys(check_section(replace(WALL, pieces=pieces), US)) == KEYS


def _stepped(piece: Piece, step: Point) -> Piece:
    def there(points: Points) -> Points:
        return tuple((x + step[0], y + step[1]) for x, y in points)

    shape = piece.shape
    if isinstance(shape, Line):
        return replace(piece, shape=replace(shape, points=there(shape.points)))
    return replace(piece, shape=replace(shape, outer=there(shape.outer)))


def test_keys_stay_when_a_sheet_between_is_drawn_anew_in_another_place() -> None:
    """Only what is found at that sheet may change its key."""
    moved = tuple(_stepped(p, (0, 5)) if p.name == "w2" else p for p in WALL.pieces)
    assert keys(check_section(replace(WALL, pieces=moved), US)) == KEYS


def test_findings_that_bear_one_key_are_numbered_in_walking_order(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    def check(network: Network, limits: Limits) -> Iterator[Finding]:
        for height in (800.0, 400.0, 600.0):  # from the lower edge of the frame
            yield Finding(
                "gap:same", "gap", Control.WATER, Severity.FAULT, (500, height), ("p0",), "", ""
            )

    monkeypatch.setattr(checker, "RULES", (Rule("gap", (), Severity.FAULT, check),))
    found = check_section(gapped(), US).findings
    heights = {finding.key: finding.at[1] for finding in found}
    assert list(heights) == ["gap:same", "gap:same#2", "gap:same#3"]
    assert list(heights.values()) in ([-100, 100, 300], [300, 100, -100])


# --- verdicts -----------------------------------------------------------------------------------


def test_verdicts_and_both_proofs_of_a_broken_and_a_whole_layer() -> None:
    layers = check_section(WALL, US).layers
    assert {str(c): layer.continuity for c, layer in layers.items()} == {
        "water": Continuity.BROKEN,
        "air": Continuity.BROKEN,
        "vapour": Continuity.CONTINUOUS,
        "heat": Continuity.CONTINUOUS,
    }
    water = layers[Control.WATER]
    assert (water.bottleneck, water.opening) == (pytest.approx(25), pytest.approx(25))
    assert [lift.width for lift in water.lifts] == [pytest.approx(25)]
    assert water.way_in[0] == OUTSIDE
    assert water.way_in[-1] == INSIDE
    assert (layers[Control.HEAT].bottleneck, layers[Control.HEAT].way_in) == (0, ())


def test_a_layer_that_nothing_belongs_to_is_absent() -> None:
    layers = check_section(gapped(), US).layers
    for control in (Control.AIR, Control.VAPOUR, Control.HEAT):
        assert layers[control].continuity is Continuity.ABSENT
        assert (layers[control].walk, layers[control].bottleneck) == ((), None)
    assert layers[Control.WATER].continuity is Continuity.CONTINUOUS


def test_a_section_of_nothing_has_four_absent_layers_and_no_finding() -> None:
    result = check_section(section(box("f", "framing", (0, 0), (90, 100))), US)
    assert {layer.continuity for layer in result.layers.values()} == {Continuity.ABSENT}
    assert (result.findings, result.rain, result.order) == ((), (), ())


def _wider(found: Callable[..., Opening], by: float) -> Callable[..., Opening]:
    return lambda *args: replace(found(*args), width=found(*args).width + by)


@pytest.mark.parametrize("by", [5.0, -5.0])
def test_where_the_two_proofs_differ_the_checker_says_that_it_is_unsure(
    monkeypatch: pytest.MonkeyPatch, by: float
) -> None:
    monkeypatch.setattr(layer_module, "find_opening", _wider(layer_module.find_opening, by))
    water = check_section(gapped((0, 30)), US).layers[Control.WATER]
    assert water.continuity is Continuity.UNSURE
    assert (water.bottleneck, water.opening) == (pytest.approx(30), pytest.approx(30 + by))
    assert water.disagrees
    assert water.why == ""  # by how much is said where it is known in which units


def test_with_both_marks_in_one_open_space_the_reason_is_that_nothing_comes_between() -> None:
    """A slab between two walls at the foot of a wide frame, and both marks in the air above it."""
    drawn = section(
        box("slab", "concrete", (800, 1000), (7600, 1150)),
        box("left", "concrete", (600, -900), (800, 1160)),
        box("right", "concrete", (7600, -900), (7860, 1160)),
        inside=((3800, 2400),), outside=((-300, 3200),),
        frame=((-400, -900), (9100, -900), (9100, 7500), (-400, 7500)),
    )  # fmt: skip
    air = check_section(drawn, US).layers[Control.AIR]
    assert air.continuity is Continuity.UNSURE
    assert air.bottleneck != pytest.approx(air.opening, abs=0.1)
    assert air.why.startswith("No piece of this layer comes between the inside and the outside")


def test_a_trace_that_errs_is_found_out_as_well(monkeypatch: pytest.MonkeyPatch) -> None:
    honest = layer_module.find_trace

    def blind(*args: object) -> Trace | None:
        trace = honest(*args)
        return trace and replace(trace, bottleneck=0.0)

    monkeypatch.setattr(layer_module, "find_trace", blind)
    water = check_section(gapped((0, 30)), US).layers[Control.WATER]
    assert water.continuity is Continuity.UNSURE


def test_a_tenth_of_a_millimetre_between_the_proofs_is_rounding(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    monkeypatch.setattr(layer_module, "find_opening", _wider(layer_module.find_opening, 0.09))
    assert check_section(gapped((0, 30)), US).layers[Control.WATER].continuity is Continuity.BROKEN


def test_a_mark_that_lies_on_a_piece_leaves_that_layer_unsure_and_the_others_judged() -> None:
    drawn = section(
        run("s", "building-paper", (0, -500), (0, 500)),
        box("w", "mineral-wool", (300, -500), (420, 500)),
    )
    layers = check_section(drawn, US).layers  # the inside mark is at 400, -400
    heat = layers[Control.HEAT]
    assert heat.continuity is Continuity.UNSURE
    assert "inside" in heat.why.casefold()
    assert heat.why.endswith(".")
    assert layers[Control.WATER].continuity is Continuity.CONTINUOUS


# --- several marks, gravity, names --------------------------------------------------------------


def test_every_pair_of_marks_is_kept_apart() -> None:
    """A house in the middle with the weather on both sides, and a gap in either wall."""
    drawn = section(
        run("a", "building-paper", (-200, -500), (-200, 0)),
        run("b", "building-paper", (-200, 40), (-200, 500)),
        run("c", "building-paper", (200, -500), (200, 0)),
        run("d", "building-paper", (200, 20), (200, 500)),
        outside=[(-400, 0), (400, 0)],
        inside=[(0, -300)],
    )
    result = check_section(drawn, US)
    places = {finding.at: finding.measured for finding in result.findings if finding.rule == "gap"}
    assert places == {(-200, 20): 40, (200, 10): 20}
    water = result.layers[Control.WATER]
    assert (water.bottleneck, water.opening) == (40, pytest.approx(40))


@pytest.mark.parametrize("angle", [0.7, 1.5707963267948966, 3.0, 5.5])
def test_a_section_that_lies_on_the_sheet_gives_its_places_as_drawn(angle: float) -> None:
    def turn(point: Point) -> Point:
        x, y = point
        return (cos(angle) * x - sin(angle) * y + 7000, sin(angle) * x + cos(angle) * y - 900)

    upright = check_section(wall_lap(40, over=False), US)
    lying = check_section(_turned(wall_lap(40, over=False), turn, angle), US)
    for as_drawn, plain in zip(lying.findings, upright.findings, strict=True):
        assert (as_drawn.rule, as_drawn.key) == (plain.rule, plain.key)
        assert dist(as_drawn.at, turn(plain.at)) < 1e-6
        for got, wanted in zip(as_drawn.extent, plain.extent, strict=True):
            assert [dist(a, turn(b)) < 1e-6 for a, b in zip(got, wanted, strict=True)]
    layer = lying.layers[Control.WATER]
    drawn = [step for step in layer.walk if isinstance(step, Run)]
    plain_walk = upright.layers[Control.WATER].walk
    for got, wanted in zip(drawn, plain_walk, strict=True):
        assert isinstance(wanted, Run)
        assert got.piece == wanted.piece
        assert dist(got.points[0], turn(wanted.points[0])) < 1e-6
    (joint,), (plain_joint,) = layer.joints, upright.layers[Control.WATER].joints
    assert dist(joint.at, turn(plain_joint.at)) < 1e-6
    assert dist(joint.run_a[0], turn(plain_joint.run_a[0])) < 1e-6
    assert lying.rain
    assert dist(lying.rain[0].points[0], turn(upright.rain[0].points[0])) < 1e-6


def _turned(drawn: Section, turn: Callable[[Point], Point], angle: float) -> Section:
    def piece(old: Piece) -> Piece:
        assert isinstance(old.shape, Line)
        return replace(old, shape=replace(old.shape, points=tuple(map(turn, old.shape.points))))

    return replace(
        drawn,
        frame=tuple(map(turn, drawn.frame)),
        inside=tuple(map(turn, drawn.inside)),
        outside=tuple(map(turn, drawn.outside)),
        pieces=tuple(map(piece, drawn.pieces)),
        gravity=(sin(angle), -cos(angle)),
    )


def test_a_plan_has_no_rain_and_no_reversed_lap() -> None:
    result = check_section(replace(wall_lap(200, over=False), gravity=None), US)
    assert (result.rain, result.findings) == ((), ())


def test_every_finding_names_its_drawing_and_section() -> None:
    drawings = Drawing("eave.dxf", Units.MM, (WALL, replace(WALL, name="other")))
    result = check_drawing(drawings, US)
    assert [s.section.name for s in result.sections] == ["junction", "other"]
    named = {(f.drawing, f.section) for s in result.sections for f in s.findings}
    assert named == {("eave.dxf", "junction"), ("eave.dxf", "other")}
    assert result.drawing is drawings


def test_the_order_of_building_runs_from_what_is_lapped_to_what_laps() -> None:
    order = check_section(WALL, US).order
    laps = [("roof", "w1"), ("w1", "w2"), ("w2", "w3"), ("w3", "w4"), ("w5", "w4")]
    for under, over in laps:
        assert order.index(under) < order.index(over)


def _rule_names(findings: tuple[Finding, ...]) -> set[str]:
    return {finding.rule for finding in findings}


@pytest.mark.parametrize(
    "past",
    [0.0, -0.5, -1.0, -1.9, 5.0, 50.0],
)
def test_rain_goes_on_where_the_frame_cuts_a_roof(past: float) -> None:
    """Two millimetres short of the frame, or drawn past it, the sheet goes on beyond."""
    end = -500 - past
    drawn = section(
        run("r", "underlayment", (end, end * 0.02), (500, 10)),
        outside=[(-100, 450)],
        inside=[(100, -450)],
    )
    assert _rule_names(check_section(drawn, US).findings) == set()


def test_rain_does_not_land_where_the_frame_cuts_a_piece() -> None:
    """Above the edge of the drawing the window goes on."""
    drawn = section(box("w", "window-frame", (0, -500), (50, 500)))
    assert _rule_names(check_section(drawn, US).findings) == set()
