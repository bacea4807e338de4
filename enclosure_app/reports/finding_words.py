"""What is said of a finding in every report, line by line."""

from collections.abc import Iterator

from enclosure_app.drawing.lengths import format_length
from enclosure_app.language import say
from enclosure_app.model.drawing import Units
from enclosure_app.model.finding import Finding


def lines_about(finding: Finding, units: Units) -> Iterator[str]:
    """Yield what is wrong, measured against required, what to do, and where the figure is from."""
    yield finding.message
    if finding.measured is not None:
        yield _measured(finding.measured, finding.required, units)
    if finding.advice:
        yield say("To do: {advice}", advice=finding.advice)
    if finding.basis:
        yield say("Figure from: {basis}", basis=finding.basis)


def _measured(measured: float, required: float | None, units: Units) -> str:
    there = format_length(measured, units)
    if required is None:
        return say("Measured {measured}.", measured=there)
    needed = format_length(required, units)
    return say("Measured {measured}, required {required}.", measured=there, required=needed)
