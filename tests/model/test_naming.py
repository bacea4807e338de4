"""No two pieces, and no two sections, have one name."""

from dataclasses import replace

from hypothesis import given
from hypothesis import strategies as st

from enclosure_app.model.naming import free_name, named_apart
from enclosure_app.model.place import Line
from enclosure_app.model.section import Piece

PIECE = Piece("felt", "felt", Line(((0.0, 0.0), (1.0, 0.0))))


def test_a_free_name_stays_and_a_taken_one_gets_the_lowest_free_number() -> None:
    assert free_name("Eave", {"Ridge"}) == "Eave"
    assert free_name("Eave", {"Eave", "Eave 3"}) == "Eave 2"
    assert free_name("Eave", {"Eave", "Eave 2"}) == "Eave 3"
    assert free_name("7", {"7"}, "{name}-{number}") == "7-2"


@given(st.lists(st.sampled_from(["a", "a 2", "b"])), st.sets(st.sampled_from(["a", "b 2"])))
def test_every_name_is_had_once_and_first_come_keep_theirs(
    wishes: list[str], taken: set[str]
) -> None:
    found = named_apart([replace(PIECE, name=wish) for wish in wishes], taken)
    names = [piece.name for piece in found]
    assert len({*names, *taken}) == len(names) + len(taken)
    for at, (wish, name) in enumerate(zip(wishes, names, strict=True)):
        assert name == wish or wish in taken or wish in names[:at]
        assert name.startswith(wish)


def test_what_keeps_its_name_is_the_very_same() -> None:
    assert named_apart([PIECE])[0] is PIECE


def test_a_form_says_how_the_number_is_written() -> None:
    many = named_apart([PIECE, PIECE, PIECE], form="{name} ({number})")
    assert [piece.name for piece in many] == ["felt", "felt (2)", "felt (3)"]
