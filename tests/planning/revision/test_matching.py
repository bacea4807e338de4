"""What became of a finding, seen from its place, its pieces and its measure."""

from dataclasses import replace

from enclosure_app.model.place import Line
from enclosure_app.planning.revision.matching import spots_matched
from enclosure_app.planning.revision.outlines import Motion
from enclosure_app.planning.revision.pieces import How, PieceMatch, PiecesMatched
from enclosure_app.planning.revision.spots import Fate, Spot, SpotMatch
from tests.planning.revision.walls import line

A, B = line("a", (0.0, 0.0), (0.0, 900.0)), line("b", (0.0, 930.0), (0.0, 2000.0))
C, D = replace(A, name="c"), replace(B, name="d")
STAYED = PiecesMatched(
    Motion(), (PieceMatch(How.IN_PLACE, A, C, Motion()), PieceMatch(How.IN_PLACE, B, D, Motion()))
)
OLD = Spot("gap:air:a.high+b.low", ("gap", "air"), (0.0, 915.0), frozenset("ab"), 30.0, 0.0)
NEW = Spot("gap:air:c.high+d.low", ("gap", "air"), (0.2, 915.0), frozenset("cd"), 30.3, 0.0)


def fate(new: Spot, pieces: PiecesMatched = STAYED) -> SpotMatch:
    return spots_matched([OLD], [new], pieces)[0]


def test_the_same_place_pieces_and_measure_is_the_same_finding() -> None:
    assert fate(NEW) == SpotMatch(Fate.STILL_THERE, OLD.key, NEW.key)


def test_the_same_key_proves_nothing() -> None:
    assert fate(NEW._replace(key=OLD.key, at=(0.0, 1400.0))).fate is Fate.NOT_SURE
    strange = NEW._replace(key=OLD.key, at=(900.0, 0.0), pieces=frozenset("xy"))
    assert fate(strange).fate is Fate.GONE


def test_another_measure_or_another_requirement_is_asked_about() -> None:
    for other in (
        NEW._replace(measured=45.0),
        NEW._replace(required=20.0),
        NEW._replace(measured=None),
    ):
        assert fate(other) == SpotMatch(Fate.NOT_SURE, OLD.key, asked=(other.key,))


def test_where_no_piece_was_changed_a_little_more_or_less_is_the_same_finding() -> None:
    """What is beside them was changed: a gap that runs to the frame grows when that is widened."""
    assert fate(NEW._replace(measured=32.5)).fate is Fate.STILL_THERE
    assert fate(NEW._replace(measured=34.0)).fate is Fate.NOT_SURE
    half = replace(D, shape=Line(((0.0, 930.0), (0.0, 1400.0))))
    split = PiecesMatched(Motion(), (STAYED.matches[0], PieceMatch(How.PART, B, half)))
    assert fate(NEW._replace(measured=32.5), split).fate is Fate.NOT_SURE


def test_another_rule_or_control_is_another_finding() -> None:
    other = NEW._replace(what=("gap", "water"))
    assert spots_matched([OLD], [other], STAYED) == (
        SpotMatch(Fate.GONE, OLD.key),
        SpotMatch(Fate.NEW, "", other.key),
    )


def test_pieces_that_moved_as_a_whole_take_their_finding_along() -> None:
    by = Motion((0.0, 50.0))
    moved = PiecesMatched(
        Motion(), (PieceMatch(How.MOVED, A, C, by), PieceMatch(How.MOVED, B, D, by))
    )
    along = NEW._replace(at=(0.0, 965.0))
    assert fate(along, moved) == SpotMatch(Fate.MOVED, OLD.key, NEW.key)
    one = PiecesMatched(
        Motion(), (PieceMatch(How.MOVED, A, C, by), PieceMatch(How.IN_PLACE, B, D, Motion()))
    )
    assert fate(along, one).fate is Fate.NOT_SURE


def test_a_finding_at_the_same_place_of_a_sheet_that_was_split_is_the_same() -> None:
    half = replace(D, shape=Line(((0.0, 930.0), (0.0, 1400.0))))
    split = PiecesMatched(Motion(), (STAYED.matches[0], PieceMatch(How.PART, B, half)))
    assert fate(NEW, split).fate is Fate.STILL_THERE


def test_of_two_at_one_place_the_one_of_the_same_key_is_taken_and_else_nobody_knows() -> None:
    other = NEW._replace(key="gap:air:c.face+d.low")
    found = spots_matched([OLD], [NEW, other], STAYED)
    assert found[0] == SpotMatch(Fate.STILL_THERE, OLD.key, NEW.key)
    third = NEW._replace(key="gap:air:c.low+d.low")
    unsure = spots_matched([OLD], [third, other], STAYED)[0]
    assert (unsure.fate, {*unsure.asked}) == (Fate.NOT_SURE, {third.key, other.key})


def test_where_a_piece_is_not_known_again_nothing_is_said_to_be_gone() -> None:
    lost = PiecesMatched(
        Motion(), (STAYED.matches[0], PieceMatch(How.GONE, B, None), PieceMatch(How.NEW, None, D))
    )
    far = NEW._replace(at=(0.0, 4000.0))
    assert fate(far, lost) == SpotMatch(Fate.NOT_SURE, OLD.key, asked=(NEW.key,))
    assert spots_matched([OLD], [], lost) == (SpotMatch(Fate.GONE, OLD.key),)
