"""Edits of the project as a whole: title, units, figures, severities, book."""

import pytest

from enclosure_app.errors import EnclosureError
from enclosure_app.model import edits
from enclosure_app.model.drawing import Units
from enclosure_app.model.finding import Severity
from enclosure_app.model.project import Project

PROJECT = Project("House", Units.MM, ())


def test_title_units_and_book_change_alone() -> None:
    after = edits.set_book(edits.set_units(edits.rename(PROJECT, " Barn "), Units.FT), "eu")
    assert after == Project("Barn", Units.FT, (), book="eu")


def test_figures_and_severities_are_set_and_given_back_to_the_rule_book() -> None:
    set_once = edits.set_figure(PROJECT, "wall-lap", 100.0)
    both = edits.set_severity(edits.set_figure(set_once, "roof-lap", 90.0), "gap", Severity.DOUBT)
    assert both.figures == {"wall-lap": 100.0, "roof-lap": 90.0}
    assert both.severities == {"gap": Severity.DOUBT}
    assert set_once.figures == {"wall-lap": 100.0}
    back = edits.set_severity(edits.set_figure(both, "wall-lap", None), "gap", None)
    assert (back.figures, back.severities) == ({"roof-lap": 90.0}, {})


@pytest.mark.parametrize("value", [-1.0, float("nan"), float("inf")])
def test_a_figure_is_a_finite_number_not_below_zero(value: float) -> None:
    with pytest.raises(
        EnclosureError, match=r'The figure "wall-lap" cannot be .*: give 0 or more'
    ):
        edits.set_figure(PROJECT, "wall-lap", value)
