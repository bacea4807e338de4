"""A network taken up after a move: what moved, what is concerned, and what stays as it was."""

from dataclasses import replace

import pytest
from hypothesis import given

from enclosure_app.model.place import Area, Line
from enclosure_app.model.product import Control
from enclosure_app.model.section import Piece
from enclosure_app.network.again import FEW, concerned, moved_between, question_again
from enclosure_app.network.network import Network
from tests.network.moving import CASES, Case
from tests.network.random_layers import profile
from tests.network.sections import PLAIN, asked, box, section, sheet

LOW, HIGH = sheet("low", (0, -500), (0, 60)), sheet("high", (-5, 0), (-5, 500))
BOARD = box("board", (20, -500), (30, 500))
DRAWN = section(LOW, HIGH, BOARD)


def with_piece(piece: Piece) -> frozenset[str] | None:
    pieces = tuple(piece if each.name == piece.name else each for each in DRAWN.pieces)
    return moved_between(DRAWN, replace(DRAWN, pieces=pieces))


def test_pieces_that_stand_elsewhere_are_named() -> None:
    assert with_piece(sheet("low", (1, -500), (0, 60))) == {"low"}
    assert with_piece(box("board", (21, -500), (31, 500))) == {"board"}
    assert with_piece(sheet("low", (0, -500), (0, 60))) == set()


@pytest.mark.parametrize(
    "piece",
    [
        sheet("low", (0, -500), (0, 0), (0, 60)),
        sheet("low", (0, -500), (0, 60), of="adhered"),
        sheet("low", (0, -500), (0, 60), width=3.0),
        Piece("low", "loose", Line(((0, -500), (0, 60)), closed=True)),
        Piece("low", "loose", Area(((0, -500), (0, 60), (5, 0)))),
    ],
)
def test_a_piece_that_changed_in_another_way_has_not_just_moved(piece: Piece) -> None:
    assert with_piece(piece) is None


def test_a_section_that_changed_in_another_way_is_asked_anew() -> None:
    for other in (
        replace(DRAWN, pieces=DRAWN.pieces[:2]),
        replace(DRAWN, inside=((240.0, 0.0),)),
        replace(DRAWN, gravity=None),
        replace(DRAWN, sealed=frozenset({("high", "low")})),
        replace(DRAWN, frame=(*DRAWN.frame[:3], (-500.0, 501.0))),
    ):
        assert moved_between(DRAWN, other) is None
    assert moved_between(DRAWN, replace(DRAWN, strokes=(), texts=())) == set()


def test_when_many_pieces_move_all_is_asked_anew() -> None:
    sheets = [sheet(f"s{n}", (n * 10, 0), (n * 10, 50)) for n in range(FEW + 1)]
    others = [sheet(f"s{n}", (n * 10, 0), (n * 10, 51)) for n in range(FEW + 1)]
    assert moved_between(section(*sheets), section(*others)) is None
    fewer = moved_between(section(*sheets), section(sheets[0], *others[1:]))
    assert fewer == {f"s{n}" for n in range(1, FEW + 1)}


def test_a_layer_that_nothing_moved_in_is_kept() -> None:
    last = asked(section(LOW, HIGH, BOARD, sheet("foil", (60, -500), (60, 500), of="foil")))
    now = section(LOW, HIGH, BOARD, sheet("foil", (61, -500), (60, 500), of="foil"))
    again = question_again(last, now, frozenset({"foil"}))
    assert again.layers[Control.WATER].work is last.layers[Control.WATER].work
    assert again.layers[Control.VAPOUR].walk != last.layers[Control.VAPOUR].walk
    assert again.rain == last.rain
    assert again.order is last.order


def test_pieces_of_laps_and_joints_that_changed_are_concerned() -> None:
    far = sheet("far", (-5, 440), (-5, 500))
    high = sheet("high", (-5, 0), (-5, 400))
    last = asked(section(LOW, high, far))
    now = section(sheet("low", (0, -500), (0, 70)), high, far)
    again = question_again(last, now, frozenset({"low"}))
    assert concerned(last, again, frozenset({"low"})) == {"low", "high"}


def test_all_pieces_of_a_layer_that_can_no_more_be_judged_are_concerned() -> None:
    """Here the inside mark comes to lie on a sheet: of no lap is anything known any more."""
    pieces = LOW, HIGH, sheet("lining", (300, -500), (300, 500), of="curtain")
    last = asked(section(*pieces))
    now = section(*pieces[:2], sheet("lining", (250, -500), (250, 500), of="curtain"))
    again = question_again(last, now, frozenset({"lining"}))
    assert again.layers[Control.AIR].why
    assert concerned(last, again, frozenset({"lining"})) >= {"low", "high", "lining"}


def told(network: Network) -> list[object]:
    layers = network.layers.values()
    return [
        network.rain, network.order, network.laid, network.kinds,
        *((each.laps, each.joints, each.lifts, each.sealed_laps, each.why) for each in layers),
        *((each.walk.steps if each.walk else None, each.opening) for each in layers),
    ]  # fmt: skip


@profile(15)
@given(CASES)
def test_a_network_taken_up_is_the_one_asked_anew(made: Case) -> None:
    again = question_again(made.last, made.section, made.names)
    assert told(again) == told(made.whole)
    assert again.tolerances is PLAIN or again.tolerances == PLAIN
