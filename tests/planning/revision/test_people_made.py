"""What people had made on a section lies on the later one as it lay on the earlier."""

from enclosure_app.model.place import Line
from enclosure_app.model.section import Break, Piece
from enclosure_app.planning.revision.people_made import laid_on
from enclosure_app.planning.revision.sections import SectionPair, outlined, section_pairs
from tests.planning.revision.test_sections import elsewhere
from tests.planning.revision.walls import WALL, wall

TAPE = Piece("drawn-1", "seam-tape", Line(((-1.0, 780.0), (-1.0, 850.0))))


def pair(old: object, new: object) -> SectionPair:
    (found,) = section_pairs([outlined(old)], [outlined(new)])
    return found


def test_pieces_seals_and_breaks_go_along() -> None:
    strip = Break(((-300.0, 2000.0), (300.0, 2000.0)), ((-300.0, 2100.0), (300.0, 2100.0)))
    old = wall(TAPE, sealed=frozenset({("10", "11")}), breaks=(strip,))
    over = laid_on(pair(old, elsewhere(WALL, 700.0, "Later", renumbered=True)))
    assert over.name == "Later"
    assert over.by_name["drawn-1"].shape == Line(((699.0, 780.0), (699.0, 850.0)))
    assert over.sealed == {("700-0", "700-1")}
    assert over.breaks[0].far == ((400.0, 2100.0), (1000.0, 2100.0))


def test_a_seal_of_a_sheet_that_was_moved_by_itself_is_to_be_said_again() -> None:
    moved = Piece("11", "housewrap", Line(((0.0, 930.0), (0.0, 1800.0))), ("11",), "A-WALL")
    over = laid_on(pair(wall(sealed=frozenset({("10", "11"), ("10", "20")})), wall(moved)))
    assert over.sealed == {("10", "20")}
