"""What goes through a layer, with and without a seal round it."""

import pytest

from enclosure_app.model.product import Control
from enclosure_app.model.section import Piece
from enclosure_app.network.details.passages import Passage, passages
from tests.network.sections import asked, box, section, sheet

LOW, UP = sheet("low", (0, -500), (0, -20)), sheet("up", (0, 20), (0, 500))
PIPE = box("pipe", (-100, -20), (100, 20), "pipe")


def found(*pieces: Piece) -> list[Passage]:
    drawn = section(*pieces, outside=[(-250, 200)], inside=[(250, 200)])
    return list(passages(asked(drawn), Control.AIR))


def test_a_pipe_between_two_ends_meets_both_unsealed() -> None:
    assert found(LOW, UP, PIPE) == [
        Passage("pipe", "low", (0, -20), sealed=False),
        Passage("pipe", "up", (0, 20), sealed=False),
    ]


def test_a_pipe_drawn_over_a_sheet_goes_through_it() -> None:
    (through,) = found(sheet("whole", (0, -500), (0, 500)), PIPE)
    assert (through.passing, through.layer, through.sealed) == ("pipe", "whole", False)
    assert through.at[0] == 0
    assert abs(through.at[1]) <= 20


@pytest.mark.parametrize("of", ["collar", "gasket", "bead", "tape", "coating"])
def test_a_collar_or_bead_on_both_pipe_and_sheet_seals_that_side(of: str) -> None:
    seal = box("seal", (-12, 20), (-0.5, 40), of)
    sealed = {passage.layer: passage.sealed for passage in found(LOW, UP, PIPE, seal)}
    assert sealed == {"low": False, "up": True}


def test_a_collar_on_the_pipe_that_does_not_reach_the_sheet_seals_nothing() -> None:
    seal = box("seal", (-30, 20), (-10, 40), "collar")
    assert not any(passage.sealed for passage in found(LOW, UP, PIPE, seal))


def test_a_bead_on_the_sheet_that_does_not_reach_the_pipe_seals_nothing() -> None:
    seal = box("seal", (-12, 30), (-0.5, 40), "bead")
    assert not any(passage.sealed for passage in found(LOW, UP, PIPE, seal))


def test_an_adhered_strip_round_the_pipe_is_no_collar() -> None:
    """Glue holds the strip to the sheet, nothing turns it up the pipe: sealed joints need more."""
    strip = sheet("strip", (-5, 21), (-5, 90), of="adhered")
    assert not any(passage.sealed for passage in found(LOW, UP, PIPE, strip))


def test_a_collar_of_one_pipe_does_not_seal_another() -> None:
    other = box("duct", (-100, 100), (100, 140), "pipe")
    split = [sheet("up", (0, 20), (0, 100)), sheet("top", (0, 140), (0, 500))]
    seals = [
        box("s1", (-12, 20), (-0.5, 40), "collar"),
        box("s2", (-12, 140), (-0.5, 160), "collar"),
    ]
    sealed = {(p.passing, p.layer): p.sealed for p in found(LOW, *split, PIPE, other, *seals)}
    assert sealed == {
        ("pipe", "low"): False,
        ("pipe", "up"): True,
        ("duct", "up"): False,
        ("duct", "top"): True,
    }


def test_a_pipe_that_stays_clear_of_the_layer_is_no_passage() -> None:
    clear = box("pipe", (50, -20), (200, 20), "pipe")
    assert found(sheet("whole", (0, -500), (0, 500)), clear) == []


def test_without_a_penetration_or_a_layer_there_is_none() -> None:
    assert found(LOW, UP) == []
    assert found(PIPE) == []
