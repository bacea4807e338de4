"""The exit status says whether there are faults."""

from dataclasses import replace

import pytest

from enclosure_app.cli.statuses import FAULTS, NOTHING_WRONG, status
from enclosure_app.model.finding import Severity
from tests.drawing import eave


@pytest.mark.parametrize(
    ("severity", "expected"),
    [(Severity.FAULT, FAULTS), (Severity.DOUBT, NOTHING_WRONG), (Severity.REMARK, NOTHING_WRONG)],
)
def test_only_faults_are_told_by_the_status(severity: Severity, expected: int) -> None:
    found = replace(eave.GAP, severity=severity)
    sound = eave.drawing(eave.result(findings=()))
    assert status([sound, eave.drawing(eave.result(findings=(found,)))]) == expected
    assert status([sound]) == NOTHING_WRONG
    assert status([]) == NOTHING_WRONG
