"""Required figures carry where they come from, and a project's own figures go over them."""

import pytest

from enclosure_app.model.limits import Limit, Limits

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
