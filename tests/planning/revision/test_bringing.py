"""What people drew over the office's drawing is laid over the revised one."""

from dataclasses import replace

from enclosure_app.model.drawing import Drawing, Units
from enclosure_app.model.place import Line
from enclosure_app.model.section import Break, Piece
from enclosure_app.model.underlay import Underlay
from enclosure_app.planning.revision import brought_over
from tests.planning.revision.test_sections import EAVE, elsewhere
from tests.planning.revision.walls import BOARD, WALL, project, wall

TAPE = Piece("drawn-1", "seam-tape", Line(((-1.0, 780.0), (-1.0, 850.0))))
STRIP = Break(((-300.0, 2000.0), (300.0, 2000.0)), ((-300.0, 2100.0), (300.0, 2100.0)))


def drawing(*sections: object) -> Drawing:
    return Drawing("house-b.dxf", Units.IN, sections, title="House B")


def test_sketched_pieces_seals_marks_and_breaks_go_along_with_the_section() -> None:
    sealed = frozenset({("10", "11"), ("10", "drawn-1")})
    before = replace(project(wall(TAPE, sealed=sealed, breaks=(STRIP,))), title="House")
    moved = elsewhere(WALL, 700.0, "Detail 3", renumbered=True)
    after = brought_over(before, drawing(replace(moved, inside=(), outside=())))
    (section,) = after.sections
    assert section.by_name["drawn-1"].shape == Line(((699.0, 780.0), (699.0, 850.0)))
    assert (section.inside, section.outside) == (((900.0, 1500.0),), ((500.0, 1500.0),))
    assert section.breaks[0].near == ((400.0, 2000.0), (1000.0, 2000.0))
    assert section.sealed == {("700-0", "700-1")}
    assert (after.title, after.source, after.units) == ("House", "house-b.dxf", Units.IN)


def test_what_the_revised_drawing_shows_itself_is_not_drawn_twice() -> None:
    before = project(wall(TAPE))
    shown = replace(TAPE, name="9F", handles=("9F",))
    (section,) = brought_over(before, drawing(wall(shown))).sections
    assert [piece.name for piece in section.pieces] == [p.name for p in wall(shown).pieces]


def test_a_name_that_is_taken_is_not_given_twice() -> None:
    other = replace(BOARD, name="drawn-1")
    (section,) = brought_over(project(wall(TAPE)), drawing(wall(other))).sections
    assert section.by_name["drawn-1-2"].product == "seam-tape"
    assert section.by_name["drawn-1"].product == "osb"


def test_a_section_that_was_only_ever_sketched_stays() -> None:
    sketched = replace(EAVE, name="Wall")
    assert not any(piece.handles for piece in sketched.pieces)
    after = brought_over(project(WALL, sketched), drawing(WALL))
    assert [each.name for each in after.sections] == ["Wall", "Wall 2"]
    assert after.sections[1].pieces == sketched.pieces


def test_a_picture_lies_under_its_section_still() -> None:
    below = Underlay("scan.png", "png", b"", at=(-50.0, 0.0), section="Wall")
    before = replace(project(WALL), underlays=(below, replace(below, section="")))
    after = brought_over(before, drawing(elsewhere(WALL, 700.0, "Detail 3")))
    assert [(each.section, each.at) for each in after.underlays] == [
        ("Detail 3", (650.0, 0.0)),
        ("", (-50.0, 0.0)),
    ]


def test_the_same_drawing_gives_the_same_revision_in_every_copy() -> None:
    one, other = (brought_over(project(WALL), drawing(wall(TAPE))) for _ in range(2))
    assert one.revision == other.revision != ""
    third = brought_over(one, drawing(WALL))
    assert len({one.revision, third.revision, brought_over(third, drawing(WALL)).revision}) == 3


def test_a_drawing_that_is_only_numbered_otherwise_is_another_revision() -> None:
    """Keys are made of its names: what is said of the one is not said of the other."""
    again = replace(WALL, pieces=tuple(replace(p, name=f"x{p.name}") for p in WALL.pieces))
    one, other = (brought_over(project(WALL), drawing(each)) for each in (WALL, again))
    assert one.revision != other.revision
