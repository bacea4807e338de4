"""What is said of a finding, line by line."""

from dataclasses import replace

from enclosure_app.model.drawing import Units
from enclosure_app.reports.finding_words import lines_about
from tests.drawing import eave


def test_what_was_measured_stands_against_what_is_required() -> None:
    lines = list(lines_about(eave.SHORT, Units.MM))
    assert lines[0] == eave.SHORT.message
    assert lines[1:3] == ["Measured 60 mm, required 100 mm.", f"To do: {eave.SHORT.advice}"]


def test_what_is_not_known_is_not_said() -> None:
    bare = replace(eave.SHORT, required=None, advice="", basis="")
    assert list(lines_about(bare, Units.IN))[1:] == ['Measured 2 3/8".']
    assert list(lines_about(replace(bare, measured=None), Units.MM)) == [eave.SHORT.message]


def test_where_a_figure_is_from_is_said_last_and_whether_anybody_read_it_there() -> None:
    said = list(lines_about(replace(eave.SHORT, basis="IRC R703.2 (unconfirmed)"), Units.MM))
    assert said[-1] == "Figure from: IRC R703.2 (unconfirmed)"
