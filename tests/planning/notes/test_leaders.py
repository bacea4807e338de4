"""Leaders, whole and in single lines, from their note to their tip."""

from enclosure_app.model.section import Stroke, Text
from enclosure_app.planning.notes.leaders import leaders_of, notes_of

NOTE = Text("GYPSUM BOARD", (1000, 0), 25, layer="NOTE")
TIP = (400.0, -200.0)
WHOLE = Stroke((TIP, (900, 12), (970, 12)), "NOTE")
HEAD = Stroke(((400, -200), (440, -172), (446, -182), (400, -200)), "X")


def test_lines_of_one_block_are_one_note_and_the_next_block_is_another() -> None:
    texts = [
        Text("SELF-ADHERED SHEET,", (0, 0), 22),
        Text("LAPPED 150", (0, -36), 22),
        Text("STUDS", (0, -96), 22),
    ]
    assert [note.text for note in notes_of(texts)] == ["SELF-ADHERED SHEET,\nLAPPED 150", "STUDS"]


def test_a_whole_leader_is_followed_to_its_tip() -> None:
    (leader,) = leaders_of(notes_of([NOTE]), [WHOLE])
    assert (leader.tip, leader.strokes, leader.headed) == (TIP, (0,), False)


def test_a_leader_in_single_lines_is_followed_over_its_bend_to_the_arrow_head() -> None:
    lines = [
        Stroke(((970, 12), (900, 12)), "X"),
        Stroke(((900, 12), TIP), "X"),
        HEAD,
    ]
    (leader,) = leaders_of(notes_of([NOTE]), lines)
    assert (leader.tip, leader.strokes, leader.headed) == (TIP, (0, 1, 2), True)


def test_a_shaft_that_stops_at_the_foot_of_its_arrow_head_points_at_the_far_corner() -> None:
    foot = (443.0, -177.0)
    (leader,) = leaders_of(notes_of([NOTE]), [Stroke(((970, 12), foot), "X"), HEAD])
    assert leader.tip == TIP


def test_a_line_without_arrow_head_on_another_layer_is_no_leader() -> None:
    assert leaders_of(notes_of([NOTE]), [Stroke(((970, 12), (400, 12)), "WALL")]) == ()


def test_an_underline_is_no_leader() -> None:
    assert leaders_of(notes_of([NOTE]), [Stroke(((1000, -5), (1240, -5)), "NOTE")]) == ()


def test_a_leader_belongs_to_the_nearer_of_two_notes() -> None:
    other = Text("STUDS", (1000, 60), 25, layer="NOTE")
    (leader,) = leaders_of(notes_of([NOTE, other]), [WHOLE])
    assert leader.note.text == "GYPSUM BOARD"


def test_a_note_may_have_two_leaders() -> None:
    second = Stroke(((300, 200), (900, 12), (970, 12)), "NOTE")
    tips = {leader.tip for leader in leaders_of(notes_of([NOTE]), [WHOLE, second])}
    assert tips == {TIP, (300, 200)}
