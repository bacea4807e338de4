"""No copy that both began from is needed: what each was tells who changed what, as well as it would."""

from collections.abc import Callable
from dataclasses import replace

from hypothesis import given, settings
from hypothesis import strategies as st

from enclosure_app.model import edits
from enclosure_app.model.project import Project
from enclosure_app.model.states import remembering
from enclosure_app.planning.merging import Drawn, Part, Side, merged
from tests.planning.revision.test_sections import EAVE
from tests.planning.revision.walls import WALL, line, project

STEPS = st.lists(st.tuples(st.integers(0, 6), st.integers(0, 2)), max_size=6)
BASE = replace(
    project(WALL, replace(WALL, name="South")), figures={"wall-lap": 90.0}, book="irc-2021"
)


def stepped(before: Project, who: str, step: tuple[int, int]) -> Project:
    """One thing that a person does; what both do alike is alike in both copies."""
    kind, which = step
    figures = {**before.figures, f"figure-{which}": 80.0 + which}
    does: list[Callable[[], Project]] = [
        lambda: replace(before, title=["House", "Barn", who][which]),
        lambda: replace(before, figures=figures if which else {}),
        lambda: replace(before, book=["", "irc-2021", "ibc-2021"][which]),
        lambda: _drawn_on(before, who, which),
        lambda: replace(before, sections=before.sections[which:]),
        lambda: _with_a_new_one(before, f"{who} {which}"),
        lambda: before,
    ]
    return does[kind]()


def _with_a_new_one(before: Project, name: str) -> Project:
    if name in {each.name for each in before.sections}:
        return before
    inside = ((float(len(name)), float(ord(name[-1]))),)
    return replace(before, sections=(*before.sections, replace(EAVE, name=name, inside=inside)))


def _drawn_on(before: Project, who: str, which: int) -> Project:
    if not before.sections:
        return before
    section = before.sections[which % len(before.sections)]
    name = f"drawn-{len(section.pieces)}"
    piece = line(name, (float(len(who)), 0.0), (0.0, 10.0 + which))
    drawn = replace(section, pieces=(*section.pieces, piece))
    return edits.replace_section(before, section.name, drawn)


def history(who: str, steps: list[tuple[int, int]]) -> list[Project]:
    """What a copy was; it was saved after every step."""
    held = [BASE]
    for step in steps:
        held.append(stepped(held[-1], who, step))
    return held


def kept(held: list[Project]) -> Project:
    return remembering(held[-1], held)


def value_in(one: Project, part: Part, name: str) -> object:
    held = {each.name: Drawn(each) for each in one.sections}
    parts = {Part.SECTION: held, Part.FIGURE: one.figures, Part.TITLE: {"": one.title},
             Part.BOOK: {"": one.book}}  # fmt: skip
    return parts[part].get(name)


@settings(max_examples=150, deadline=None)
@given(STEPS, STEPS)
def test_just_what_both_changed_is_asked(
    ours: list[tuple[int, int]], theirs: list[tuple[int, int]]
) -> None:
    """Who set it to what the other one has, and went on from there, knew of it: that is taken."""
    one, other = history("Ida", ours), history("Jonathan", theirs)
    done = merged(kept(one), kept(other))
    every = {(Part.TITLE, ""), (Part.BOOK, "")}
    every |= {(Part.FIGURE, name) for each in (*one, *other) for name in each.figures}
    every |= {(Part.SECTION, s.name) for each in (*one, *other) for s in each.sections}
    asked = {each.key for each in done.differences}
    assert asked <= every
    for key in every:
        was, mine, its = (value_in(each, *key) for each in (BASE, one[-1], other[-1]))
        went_on = mine in [value_in(each, *key) for each in other[1:]]
        went_on |= its in [value_in(each, *key) for each in one[1:]]
        both = was not in (mine, its) and mine != its
        if not went_on:
            assert (key in asked) == both, key
        now = value_in(done.project, *key)
        if key in asked or went_on:
            assert now in (mine, its), key
        else:
            assert now == (its if mine == was else mine), key


@settings(max_examples=60, deadline=None)
@given(STEPS, STEPS)
def test_what_was_chosen_once_is_not_asked_again(
    ours: list[tuple[int, int]], theirs: list[tuple[int, int]]
) -> None:
    one, other = kept(history("Ida", ours)), kept(history("Jonathan", theirs))
    first = merged(one, other)
    sides = [Side.OURS, Side.THEIRS]
    chosen = {each.key: sides[n % 2] for n, each in enumerate(first.differences)}
    done = merged(one, other, chosen=chosen).project
    again = merged(done, other)
    assert {each.key for each in again.differences} <= {each.key for each in first.differences}
    assert again.project.sections == done.sections
    assert again.project.figures == done.figures


def test_of_a_copy_of_an_older_version_that_knows_no_past_all_that_differs_is_asked() -> None:
    ours, theirs = replace(BASE, title="Ours"), replace(BASE, book="")
    assert {each.part for each in merged(ours, theirs).asked} == {Part.TITLE, Part.BOOK}
    done = merged(*(remembering(each, [BASE]) for each in (ours, theirs)))
    assert done.differences == ()
    assert (done.project.title, done.project.book) == ("Ours", "")
