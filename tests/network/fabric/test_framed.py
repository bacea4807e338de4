"""A section is judged in its frame: what lies beyond it is no matter of its own."""

from dataclasses import replace

from enclosure_app.checker import check, check_section
from enclosure_app.files.maps.rule_book import load_limits
from enclosure_app.model.finding import Finding, Severity
from enclosure_app.model.product import Control
from enclosure_app.network.fabric.framed import framed, in_frame
from tests.network.sections import area, section, sheet

TOUCH = 2.0
WALL = sheet("wall", (0, -500), (0, 500), of="adhered")
NEXT_DOOR = (
    sheet("upper", (703, 0), (703, 400)),
    sheet("lower", (700, -400), (700, 100)),
)


def names(pieces: tuple) -> list[str]:  # type: ignore[type-arg]
    return [piece.name for piece in pieces]


def test_where_all_is_in_the_frame_the_section_is_the_very_same() -> None:
    whole = section(WALL, sheet("past", (0, 400), (900, 400)))
    assert framed(whole, TOUCH) is whole


def test_a_piece_that_holds_the_frame_is_judged_and_one_beyond_it_is_not() -> None:
    earth = area("earth", (-900, -900), (900, -900), (900, 900), (-900, 900))
    edge = sheet("edge", (501.5, 0), (501.5, 90))
    drawn = section(WALL, earth, edge, *NEXT_DOOR)
    assert names(framed(drawn, TOUCH).pieces) == ["wall", "earth", "edge"]


def test_a_frame_with_a_notch_leaves_out_what_lies_in_the_notch() -> None:
    notched = (
        (-500, -500),
        (500, -500),
        (500, 500),
        (300, 500),
        (300, 0),
        (100, 0),
        (100, 500),
        (-500, 500),
    )
    drawn = replace(section(WALL, sheet("notch", (200, 100), (200, 400))), frame=notched)
    assert names(framed(drawn, TOUCH).pieces) == ["wall"]


def test_pieces_that_are_the_same_are_not_looked_at_again() -> None:
    drawn = section(WALL, *NEXT_DOOR)
    judged = framed(drawn, TOUCH)
    moved = replace(NEXT_DOOR[0], shape=sheet("upper", (403, 0), (403, 400)).shape)
    later = replace(drawn, pieces=(WALL, moved, NEXT_DOOR[1]))
    assert names(framed(later, TOUCH, (drawn, judged)).pieces) == ["wall", "upper"]
    assert framed(later, TOUCH, (drawn, judged)).pieces[1] is moved


def test_laps_beyond_the_frame_are_not_found() -> None:
    limits = load_limits()
    wide = ((-500, -500), (900, -500), (900, 500), (-500, 500))
    drawn = section(WALL, *NEXT_DOOR)
    beyond = {"upper", "lower"}
    assert not [f for f in check_section(drawn, limits).findings if beyond & set(f.pieces)]
    seen = check_section(replace(drawn, frame=wide), limits).findings
    assert [f for f in seen if beyond & set(f.pieces)]


def test_a_piece_that_moves_into_the_frame_is_judged_as_if_it_had_always_been_there() -> None:
    limits = load_limits()
    drawn = section(WALL, *NEXT_DOOR)
    last = check(drawn, limits)
    moved = replace(NEXT_DOOR[0], shape=sheet("upper", (6, 0), (6, 400)).shape)
    later = replace(drawn, pieces=(WALL, moved, NEXT_DOOR[1]))
    assert check(later, limits, last).result == check_section(later, limits)
    assert check(drawn, limits, check(later, limits, last)).result == last.result


def test_a_finding_is_in_the_frame_where_a_part_of_it_is() -> None:
    def found(at: tuple[float, float], *run: tuple[float, float]) -> Finding:
        extent = (run,) if run else ()
        fault = Severity.FAULT
        return Finding("k", "gap", Control.AIR, fault, at, (), "", "", extent=extent)

    drawn = section(WALL)
    inside, outside = found((0, 0)), found((700, 0))
    reaching = found((700, 0), (900, 0), (480, 0))
    assert in_frame([inside, outside, reaching], drawn, TOUCH) == [inside, reaching]
    assert in_frame([], drawn, TOUCH) == []
