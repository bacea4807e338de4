"""The words of the trade on the screen, in the window's language: rules, severities, controls."""

from PySide6.QtCore import QCoreApplication

from enclosure_app.drawing.lengths import format_length
from enclosure_app.language import written
from enclosure_app.model.drawing import Units
from enclosure_app.model.finding import Severity
from enclosure_app.model.product import Control
from enclosure_app.model.report import Continuity, LayerResult

_DECIMALS = {Units.MM: 1, Units.CM: 2, Units.M: 4, Units.IN: 3, Units.FT: 4}


def word(text: str) -> str:
    """Return a word of the trade in the window's language."""
    return QCoreApplication.translate("Words", text)


def rule_name(rule: str) -> str:
    """Return how a rule is called, with a capital: ``Reverse lap``."""
    return word(rule.replace("-", " ").capitalize())


def severity_word(severity: Severity) -> str:
    """Return the word for a severity."""
    return word(severity.value.capitalize())


def severity_count(severity: Severity, count: int) -> str:
    """Return how many there are: ``3 faults``."""
    return f"{count} {word(severity.value if count == 1 else severity.value + 's')}"


def control_word(control: Control | None) -> str:
    """Return the word for a control, "" for a finding that is of none."""
    return word(control.value.capitalize()) if control else ""


def control_within(control: Control) -> str:
    """Return the word for a control as it stands within a sentence: ``water``, but ``Wasser``."""
    return word(control.value)


def control_tip(control: Control) -> str:
    """Return in a sentence what a control layer does."""
    tips = {
        Control.WATER: word("Keeps rain out: every sheet laps over the one below it."),
        Control.AIR: word("Keeps air from blowing through: every joint is sealed."),
        Control.VAPOUR: word("Keeps damp air off cold timber, and lets the wall dry."),
        Control.HEAT: word("Keeps the warmth in: insulation without a cold bridge."),
    }
    return tips[control]


def continuity_words(layer: LayerResult, units: Units) -> str:
    """Return in a few words how a layer runs."""
    if layer.continuity is not Continuity.BROKEN:
        if layer.continuity is Continuity.ABSENT:
            return word("not drawn")
        return word(layer.continuity.value)
    gaps = len(layer.lifts)
    widest = max((lift.width for lift in layer.lifts), default=0.0)
    if gaps == 1:
        return word("1 gap, {}").format(format_length(widest, units))
    return word("{} gaps, up to {}").format(gaps, format_length(widest, units))


def coordinate(mm: float, units: Units) -> str:
    """Return one coordinate as the drawing has it."""
    text = f"{mm / units.in_mm:.{_DECIMALS[units]}f}"
    return "0" if text.strip("-0.") == "" else written(text)
