"""Who knew of what is told by names, not by clocks."""

from dataclasses import dataclass
from random import Random

from hypothesis import given
from hypothesis import strategies as st

from enclosure_app.model.standing.standing import in_order, new_id, standing


@dataclass(frozen=True)
class Word:
    id: str
    when: str = ""
    after: tuple[str, ...] = ()


FIRST = Word("a", "2026-03-02T08:00:00+00:00")
LATER = Word("b", "2026-03-01T08:00:00+00:00", ("a",))  # its clock is a day slow
OTHER = Word("c", "2026-03-02T07:00:00+00:00", ("a",))


def test_a_saying_takes_the_place_of_those_it_names() -> None:
    assert standing((FIRST, LATER)) == (LATER,)
    assert standing((FIRST,)) == (FIRST,)


def test_two_that_did_not_know_of_each_other_stand_side_by_side() -> None:
    assert standing((FIRST, LATER, OTHER)) == (LATER, OTHER)
    both = Word("d", after=("b", "c"))
    assert standing((FIRST, LATER, OTHER, both)) == (both,)


def test_a_saying_without_a_name_stands() -> None:
    assert standing((Word(""), Word("e", after=("",)))) == (Word(""), Word("e", after=("",)))


def test_a_slow_clock_puts_no_answer_before_what_it_answers() -> None:
    assert in_order([LATER, FIRST]) == [FIRST, LATER]
    assert in_order([OTHER, LATER, FIRST]) == [FIRST, LATER, OTHER]


def test_a_ring_in_a_file_written_by_hand_loses_nothing() -> None:
    ring = [Word("a", "2026-01-02", ("b",)), Word("b", "2026-01-01", ("a",))]
    assert in_order(ring) == ring[::-1]


@given(st.lists(st.integers(0, 9), max_size=10), st.randoms(use_true_random=False))
def test_the_order_they_come_in_never_matters(parents: list[int], shuffled: Random) -> None:
    words = [
        Word(str(n), f"2026-01-0{1 + parent % 3}", (str(parent),) if parent < n else ())
        for n, parent in enumerate(parents)
    ]
    mixed = list(words)
    shuffled.shuffle(mixed)
    order = in_order(mixed)
    assert order == in_order(words)
    places = {word.id: at for at, word in enumerate(order)}
    assert all(places[name] < places[word.id] for word in words for name in word.after)


def test_the_same_parts_give_the_same_name_and_others_another() -> None:
    assert new_id("p", "gap:a", 1) == new_id("p", "gap:a", 1)
    assert len({new_id("p", "a", "b"), new_id("p", "ab"), new_id("q", "a", "b")}) == 3
