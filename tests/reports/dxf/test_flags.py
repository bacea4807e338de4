"""Flags stand where nothing is drawn: in lanes around a section, near to their places in a large one."""

import itertools
from math import dist

from enclosure_app.drawing.placement import Box
from enclosure_app.drawing.section.flags import LANE, Site
from enclosure_app.drawing.theme import load_theme
from enclosure_app.files.dxf.raw import RawPath, RawText, Tag
from enclosure_app.model.finding import Severity
from enclosure_app.reports.dxf.flags import Flags
from enclosure_app.reports.dxf.room import Room

SMALL, LARGE = Box(0, 0, 120, 100), Box(0, 0, 1200, 900)  # mm on paper
RATIO = 10.0


def sites(*places: tuple[float, float]) -> list[Site]:
    return [Site(n, at, Severity.FAULT, 4.4, f"gap:{n}") for n, at in enumerate(places, 1)]


def flags(room: Room) -> Flags:
    return Flags(RATIO, load_theme(), room)


def test_in_a_detail_flags_stand_in_the_lanes_around_it() -> None:
    placed = flags(Room()).placed(sites((10, 50), (60, 90), (115, 40)), SMALL)
    assert [flag.number for flag in placed] == [1, 2, 3]
    assert all(not SMALL.holds(flag.at) for flag in placed)
    assert placed[0].at[0] < SMALL.left
    assert placed[2].at[0] > SMALL.right


def test_a_side_moves_out_as_a_whole_where_notes_stand() -> None:
    note = RawText(Tag("TEXT", "1", "a"), "N" * 40, (-420.0, 500.0), 22.0)
    left = sites((10, 52), (10, 20))
    bare, beside = (flags(room).placed(left, SMALL) for room in (Room(), Room.beside([note], 1.0)))
    moved = {round(a.at[0] - b.at[0], 6) for a, b in zip(bare, beside, strict=True)}
    assert len(moved) == 1
    assert moved.pop() % LANE == 0


def test_on_a_large_sheet_flags_stand_on_free_paper_near_to_their_places() -> None:
    walls = [RawPath(Tag("LINE", "1", "a"), ((x, 0.0), (x, 9000.0))) for x in (5900.0, 6080.0)]
    room = Room.beside(walls, 1.0)
    placed = flags(room).placed(sites((600, 450), (602, 458), (20, 400)), LARGE)
    for flag in placed[:2]:
        (x, y), near = flag.at, {1: (600, 450), 2: (602, 458)}[flag.number]
        assert dist(flag.at, near) < 60
        corners = Box(x * RATIO, y * RATIO, x * RATIO, y * RATIO).inset(-31, -25)
        assert not any(corners.left < wall < corners.right for wall in (5900, 6080))
        assert flag.leader is not None
        assert abs(dist(flag.leader.points[0], near) - 4.4) < 1e-6
    assert placed[2].at[0] < 0, "this one is near to the edge"
    for one, other in itertools.combinations(placed, 2):
        assert abs(one.at[0] - other.at[0]) > 6.2 or abs(one.at[1] - other.at[1]) > 5.0


def test_where_no_paper_is_free_the_lanes_are_left() -> None:
    lines = [RawPath(Tag("LINE", "1", "a"), ((x, 0.0), (x, 9000.0))) for x in range(0, 12000, 30)]
    (flag,) = flags(Room.beside(lines, 1.0)).placed(sites((600, 450)), LARGE)
    assert not LARGE.holds(flag.at)
