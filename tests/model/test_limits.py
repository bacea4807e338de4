"""Required figures carry where they come from, and a project's own figures go over them."""

import pytest

from enclosure_app.model.limits import Limit, Limits, Tolerances, tolerances_of

LAP = Limit("wall-lap", 50.8, "A code, 1.2", "2021")
SLOPE = Limit("level-slope", 1 / 48, "Common practice", confirmed=True)
BOOK = Limits({"wall-lap": LAP, "level-slope": SLOPE}, book="a-book")


@pytest.mark.parametrize(
    ("limit", "basis"),
    [
        (LAP, "A code, 1.2, 2021 (unconfirmed)"),
        (SLOPE, "Common practice"),
        (Limit("x", 1.0, "Somebody's memory"), "Somebody's memory (unconfirmed)"),
    ],
    ids=lambda value: value.name if isinstance(value, Limit) else None,
)
def test_the_basis_warns_until_somebody_has_read_the_source(limit: Limit, basis: str) -> None:
    assert limit.basis == basis


def test_a_projects_own_figure_goes_over_the_book_and_counts_as_confirmed() -> None:
    own = BOOK.overridden({"wall-lap": 120.0}, "layer map site.toml")
    assert own.figure("wall-lap").value == 120.0
    assert own.figure("wall-lap").basis == "layer map site.toml"
    assert own.figure("level-slope") is SLOPE
    assert own.book == "a-book"
    assert BOOK.figure("wall-lap") is LAP


def test_a_figure_that_no_book_has_is_a_fault_of_the_program() -> None:
    with pytest.raises(KeyError, match="roof-lap"):
        BOOK.figure("roof-lap")


def test_settings_of_the_check_are_figures_too() -> None:
    given = {
        "touch": Limit("touch", 3.0, "x"),
        "lap-reach": Limit("lap-reach", 20.0, "x"),
        "level-slope": SLOPE,
        "driving-rain": Limit("driving-rain", 1.0, "x", unit="slope"),
    }
    assert tolerances_of(given) == Tolerances(3.0, 20.0, 1 / 48, 45.0)
    assert tolerances_of({}, Tolerances(touch=7.0)) == Tolerances(touch=7.0)


def test_a_projects_own_settings_are_in_force_and_the_others_stay() -> None:
    book = Limits({"touch": Limit("touch", 2.0, "x"), "lap-reach": Limit("lap-reach", 15.0, "x")})
    own = book.overridden({"touch": 4.0}, "this project")
    assert own.tolerances == Tolerances(touch=4.0)
    assert book.tolerances == Tolerances()
