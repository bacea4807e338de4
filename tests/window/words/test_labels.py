"""The words of the trade on the screen."""

import pytest

from enclosure_app.model.drawing import Units
from enclosure_app.model.finding import Severity
from enclosure_app.model.product import Control
from enclosure_app.model.report import Continuity, LayerResult, Lift
from enclosure_app.rules import RULES
from enclosure_app.window.words import labels


def test_a_rule_is_called_by_its_name_with_a_capital() -> None:
    assert labels.rule_name("reverse-lap") == "Reverse lap"
    assert all(labels.rule_name(rule.name)[0].isupper() for rule in RULES)


@pytest.mark.parametrize(
    ("severity", "count", "told"),
    [
        (Severity.FAULT, 1, "1 fault"),
        (Severity.FAULT, 3, "3 faults"),
        (Severity.DOUBT, 0, "0 doubts"),
    ],
)
def test_severities_are_counted(severity: Severity, count: int, told: str) -> None:
    assert labels.severity_count(severity, count) == told


def test_a_control_has_a_capital_alone_and_none_within_a_sentence() -> None:
    assert labels.control_word(Control.AIR) == "Air"
    assert labels.control_within(Control.AIR) == "air"
    assert labels.control_word(None) == ""
    assert len({labels.control_tip(control) for control in Control}) == len(Control)


def layer(continuity: Continuity, *widths: float) -> LayerResult:
    lifts = tuple(Lift("a", "b", (0.0, 0.0), (0.0, width)) for width in widths)
    return LayerResult(Control.WATER, continuity, walk=lifts)


@pytest.mark.parametrize(
    ("result", "told"),
    [
        (layer(Continuity.CONTINUOUS), "continuous"),
        (layer(Continuity.ABSENT), "not drawn"),
        (layer(Continuity.UNSURE), "unsure"),
        (layer(Continuity.BROKEN, 30.0), "1 gap, 30 mm"),
        (layer(Continuity.BROKEN, 30.0, 12.0), "2 gaps, up to 30 mm"),
    ],
)
def test_how_a_layer_runs_is_said_in_a_few_words(result: LayerResult, told: str) -> None:
    assert labels.continuity_words(result, Units.MM) == told


@pytest.mark.parametrize(
    ("mm", "units", "told"),
    [
        (1234.56, Units.MM, "1234.6"),
        (1234.56, Units.M, "1.2346"),
        (25.4, Units.IN, "1.000"),
        (-0.01, Units.MM, "0"),
    ],
)
def test_a_coordinate_is_as_exact_as_its_unit(mm: float, units: Units, told: str) -> None:
    assert labels.coordinate(mm, units) == told
