"""Which piece is which: by place, by handle, by shape, and by none of these."""

from collections.abc import Sequence
from dataclasses import replace

from enclosure_app.model.place import Line
from enclosure_app.model.section import Piece, Section
from enclosure_app.planning.revision.outlines import Motion, moved_shape
from enclosure_app.planning.revision.pieces import How, PiecesMatched, pieces_matched
from enclosure_app.planning.revision.sections import outlined, section_pairs
from tests.planning.revision.walls import HIGH, LEDGE, LOW, MIDDLE, SHORT, WALL, line, wall


def matched(new: Section, old: Section = WALL) -> PiecesMatched:
    (pair,) = section_pairs([outlined(old)], [outlined(new)])
    return pieces_matched(pair.fit, pair.old.outlines, pair.new.outlines)


def told(pieces: PiecesMatched) -> set[tuple[How, str, str]]:
    return {
        (m.how, m.old.name if m.old else "", m.new.name if m.new else "") for m in pieces.matches
    }


def moved(piece: Piece, dx: float, dy: float) -> Piece:
    return replace(piece, shape=moved_shape(piece.shape, Motion((dx, dy))))


def renamed(pieces: Sequence[Piece], names: Sequence[str]) -> tuple[Piece, ...]:
    return tuple(
        replace(piece, name=name, handles=(name,))
        for piece, name in zip(pieces, names, strict=True)
    )


def test_pieces_that_lie_where_they_lay_are_the_same_whatever_they_are_called() -> None:
    names = ["12", "10", "11", "A", "22", "21"]
    pieces = matched(replace(WALL, pieces=renamed(WALL.pieces, names)))
    assert told(pieces) == {
        (How.IN_PLACE, piece.name, name) for piece, name in zip(WALL.pieces, names, strict=True)
    }
    assert pieces.partners("10", How.IN_PLACE) == ("12",)
    assert pieces.partners("10", How.MOVED, How.PART) == ()
    exact = pieces.exact("10")
    assert exact is not None
    assert exact.motion == Motion()


def test_a_piece_of_its_own_shape_that_kept_its_handle_was_moved() -> None:
    pieces = matched(wall(moved(LEDGE, 7.0, -20.0)))
    (match,) = (m for m in pieces.matches if m.how is How.MOVED)
    assert (match.new and match.new.name, match.motion) == ("22", Motion((7.0, -20.0)))


def test_without_its_handle_nobody_knows() -> None:
    (new,) = renamed([moved(LEDGE, 7.0, -20.0)], ["77"])
    assert {(How.GONE, "22", ""), (How.NEW, "", "77")} <= told(matched(wall(new, without=("22",))))


def test_a_handle_that_was_given_to_another_piece_is_no_match() -> None:
    other = line("22", (100.0, 100.0), (100.0, 2000.0))
    pieces = matched(wall(other))
    assert (How.HANDLE, "22", "22") in told(pieces)
    assert pieces.exact("22") is None


def test_handles_that_cross_mean_nothing() -> None:
    """Two sheets lie where they lay under each other's handles: what moved is not known either."""
    names = ["10", "12", "11", "20", "21", "22"]
    section = replace(WALL, pieces=(*renamed(WALL.pieces, names)[:-1], moved(LEDGE, 7.0, -20.0)))
    assert {(How.GONE, "22", ""), (How.NEW, "", "22")} <= told(matched(section))


def test_three_pieces_that_moved_alike_are_known_without_handles_where_none_were_kept() -> None:
    shapes = [moved(p, 90.0, 0.0) if p in (LOW, SHORT, LEDGE) else p for p in WALL.pieces]
    pieces = matched(replace(WALL, pieces=renamed(shapes, ["a", "b", "c", "d", "e", "f"])))
    assert {(How.MOVED, "10", "a"), (How.MOVED, "21", "e"), (How.MOVED, "22", "f")} <= told(pieces)


def test_where_handles_are_kept_a_piece_with_a_new_one_is_a_new_piece() -> None:
    new = renamed([moved(p, 90.0, 0.0) for p in (LOW, SHORT, LEDGE)], ["a", "b", "c"])
    pieces = matched(wall(*new, without=("10", "21", "22")))
    assert {(How.GONE, "10", ""), (How.NEW, "", "a")} <= told(pieces)


def test_parts_of_a_sheet_lie_on_it_and_the_whole_on_its_parts() -> None:
    lower, upper = line("11", (0.0, 830.0), (0.0, 1200.0)), line("5", (0.0, 1200.0), (0.0, 1700.0))
    split = matched(wall(lower, upper))
    assert {(How.PART, "11", "11"), (How.PART, "11", "5")} <= told(split)
    assert split.exact("11") is None
    joined = matched(wall(), wall(lower, upper))
    assert {(How.PART, "11", "11"), (How.PART, "5", "11")} <= told(joined)


def test_what_is_gone_and_what_is_new_is_said() -> None:
    new = line("30", (200.0, 0.0), (200.0, 77.0))
    assert told(matched(wall(new, without=("12",)))) >= {
        (How.GONE, "12", ""),
        (How.NEW, "", "30"),
    }
    assert HIGH.name == "12"
    assert isinstance(MIDDLE.shape, Line)
