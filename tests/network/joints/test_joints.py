"""Meetings of pieces, and what their products seal by themselves."""

import numpy as np
import pytest

from enclosure_app.model.product import Control
from enclosure_app.model.section import Piece
from enclosure_app.network.fabric.fabric import weave
from enclosure_app.network.fabric.links import TOUCHES, links_of
from enclosure_app.network.joints.joints import (
    Meeting,
    joined_in_works,
    meetings,
    neighbours,
    seals_of,
)
from tests.network.sections import PLAIN, PRODUCTS, box, section, sheet, woven


def met(*pieces: Piece) -> list[Meeting]:
    fabric = woven(*pieces)
    return list(meetings(fabric, links_of(fabric, PLAIN.touch)).found)


def test_a_lap_is_one_meeting_in_its_middle() -> None:
    found = met(sheet("a", (0, 0), (0, 100)), sheet("b", (-10, 40), (-10, 300)))
    assert found == [Meeting(0, 1, (-5, 70), 0)]


def test_a_butt_joint_is_one_meeting_between_the_ends() -> None:
    found = met(sheet("a", (0, 0), (0, 100)), sheet("b", (0, 101), (0, 300)))
    assert found == [Meeting(0, 1, (0, 100.5), TOUCHES)]


def test_sheets_that_lap_twice_meet_twice() -> None:
    bowed = sheet("b", (0, 5), (100, 5), (150, 90), (250, 90), (300, 5), (400, 5))
    found = met(sheet("a", (0, 0), (400, 0)), bowed)
    assert [meeting.at for meeting in found] == [(50, 2.5), (350, 2.5)]


def test_the_frame_is_no_meeting() -> None:
    assert met(sheet("a", (0, -500), (0, 500))) == []


def test_neighbours_are_told_both_ways() -> None:
    chain = [Meeting(0, 1, (0, 0), TOUCHES), Meeting(1, 2, (0, 0), TOUCHES)]
    assert neighbours(chain) == {0: {1}, 1: {0, 2}, 2: {1}}


@pytest.mark.parametrize(
    ("first", "second", "butted", "lapped"),
    [
        ("loose", "loose", False, False),
        ("adhered", "loose", False, True),
        ("coating", "loose", True, True),
        ("tape", "loose", True, True),
        ("bead", "concrete", True, True),
        ("sheathing", "sheathing", False, False),
        ("concrete", "concrete", True, True),
    ],
)
def test_products_seal_by_their_bond(first: str, second: str, butted: bool, lapped: bool) -> None:
    """Glue on the back seals a lap; what is fluid, bead or tape also seals where it only touches."""
    low = sheet("a", (0, 0), (0, 100), of=first)
    for others, expected in (
        ([sheet("b", (0, 100), (0, 200), of=second)], butted),
        ([sheet("b", (-10, 40), (-10, 200), of=second)], lapped),
    ):
        fabric = woven(low, *others)
        links = links_of(fabric, PLAIN.touch)
        owners = fabric.rims.owner[fabric.rims.rim[[links.a, links.b]]]
        between = (owners[0] != owners[1]) & (owners.max(axis=0) < 2)
        assert between.any()
        assert set(seals_of(fabric, links)[1][between].tolist()) == {expected}


def test_what_meets_the_frame_is_sealed_elsewhere() -> None:
    fabric = woven(sheet("a", (0, -500), (0, 500)))
    links = links_of(fabric, PLAIN.touch)
    assert seals_of(fabric, links)[1].all()


def test_a_person_may_declare_a_joint_sealed() -> None:
    pieces = sheet("a", (0, 0), (0, 100)), sheet("b", (-10, 40), (-10, 300))
    for sealed in ([], [("a", "b")]):
        fabric = weave(section(*pieces, sealed=sealed), Control.AIR, PLAIN)
        links = links_of(fabric, PLAIN.touch)
        lap = np.flatnonzero(links.run != TOUCHES)
        assert seals_of(fabric, links)[1][lap].tolist() == [bool(sealed)]


def test_panes_come_joined_with_their_frames_and_concrete_is_poured_together() -> None:
    glass, window, concrete = (PRODUCTS[key] for key in ("glass", "window", "concrete"))
    assert joined_in_works(glass, window)
    assert joined_in_works(window, glass)
    assert joined_in_works(concrete, concrete)
    assert not joined_in_works(concrete, window)
    assert not joined_in_works(glass, PRODUCTS["loose"])


def test_a_box_and_a_sheet_through_it_meet_once() -> None:
    slab = box("slab", (-50, 0), (50, 100), "concrete")
    found = met(sheet("a", (0, -50), (0, 50)), slab)
    assert [(meeting.a, meeting.b, meeting.run) for meeting in found] == [(0, 1, TOUCHES)]
