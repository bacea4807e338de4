"""Sizes of parts: ranges, words for the form, and sentences for what is out of range."""

import pytest

from enclosure_app.errors import EnclosureError
from enclosure_app.planning.parts import PARTS, Part, part, sizes_of
from enclosure_app.planning.parts.eave import Parameters
from enclosure_app.planning.parts.parameters import Size


def test_a_size_out_of_its_range_is_said_with_the_range() -> None:
    with pytest.raises(EnclosureError) as told:
        Parameters(overhang=2000)
    assert str(told.value) == (
        "Overhang past the cladding is 2000 mm: choose between 120 and 900 mm."
    )


def test_a_pitch_out_of_its_range_is_said_as_a_pitch() -> None:
    with pytest.raises(EnclosureError, match=r"Pitch of the roof is 0\.1 in 1"):
        Parameters(pitch=0.1)


def test_sizes_come_in_the_order_of_the_form_with_the_walls_first() -> None:
    sizes = sizes_of(Parameters)
    assert [size.name for size in sizes] == [
        "insulation", "studs", "board", "cavity", "roof_insulation", "rafters", "pitch", "overhang"
    ]  # fmt: skip
    assert sizes[0] == Size("insulation", "Insulation outside the wall", 60, 300, 150, "mm")


@pytest.mark.parametrize("each", PARTS, ids=lambda each: each.name)
def test_usual_sizes_lie_in_their_ranges_and_every_size_has_words(each: Part) -> None:
    for size in sizes_of(each.parameters):
        assert size.low < size.usual < size.high
        assert size.words[0].isupper()
        assert getattr(each.parameters(), size.name) == size.usual


def test_a_part_that_does_not_exist_is_said_with_those_that_do() -> None:
    with pytest.raises(EnclosureError, match="no ready-made part 'dome': choose one of wall-base"):
        part("dome", {})


def test_a_size_that_a_part_does_not_have_is_said_with_those_it_has() -> None:
    with pytest.raises(EnclosureError, match="Ridge has no size 'overhang': it has insulation"):
        part("ridge", {}, overhang=300)
