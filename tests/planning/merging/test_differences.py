"""What was changed is taken; what both changed is noted, and what was chosen is taken."""

from dataclasses import replace

from enclosure_app.model.layer import LayerRow
from enclosure_app.model.states import state_of, states
from enclosure_app.model.underlay import Underlay
from enclosure_app.planning.merging.differences import (
    Chosen,
    Drawn,
    Part,
    Side,
    Weighing,
    settings_weighed,
)
from tests.planning.revision.walls import WALL, project, wall

KEY = (Part.TITLE, "")


def after(part: Part, *values: object, chosen: Chosen | None = None) -> Weighing:
    """Two copies that both were once in each of these states."""
    told = {Part.TITLE: "title", Part.FIGURE: "figure"}[part]
    name = "a" if part is Part.FIGURE else ""
    past = frozenset(state_of(told, name, each) for each in values) | {state_of(told, name)}
    return Weighing(chosen or {}, [], (past, past))


def test_only_what_both_changed_is_noted() -> None:
    weighing = after(Part.TITLE, "a")
    assert weighing.value(KEY, "a", "a") == "a"
    assert weighing.value(KEY, "a", "b") == "b"
    assert weighing.value(KEY, "b", "a") == "b"
    assert weighing.differences == []
    assert weighing.value(KEY, "b", "c") == "b"
    (noted,) = weighing.differences
    assert (noted.key, noted.ours, noted.theirs, noted.taken, noted.asked) == (
        KEY, "b", "c", Side.OURS, True,
    )  # fmt: skip


def test_where_each_left_the_others_state_behind_or_nobody_knows_it_is_asked() -> None:
    for weighing in (after(Part.TITLE, "a", "b"), Weighing({}, [])):
        assert weighing.value(KEY, "a", "b") == "a"
        assert weighing.differences[0].asked


def test_what_was_chosen_is_taken_and_not_asked_again() -> None:
    weighing = after(Part.TITLE, "a", chosen={KEY: Side.THEIRS})
    assert weighing.value(KEY, "b", "c") == "c"
    assert not weighing.differences[0].asked


def test_what_is_held_by_name_is_kept_if_it_is_new_and_goes_if_it_was_taken_back() -> None:
    alone = Weighing({}, []).by_name(Part.FIGURE, {"a": 1.0}, {"b": 2.0})
    assert alone == {"a": 1.0, "b": 2.0}
    assert after(Part.FIGURE, 1.0).by_name(Part.FIGURE, {"a": 1.0}, {}) == {}
    assert after(Part.FIGURE, 1.0).by_name(Part.FIGURE, {}, {"a": 1.0}) == {}
    both = after(Part.FIGURE, 1.0)
    assert both.by_name(Part.FIGURE, {"a": 3.0}, {}) == {"a": 3.0}
    assert [(each.ours, each.theirs) for each in both.differences] == [(3.0, None)]
    theirs = after(Part.FIGURE, 1.0)
    assert theirs.by_name(Part.FIGURE, {}, {"a": 3.0}) == {}
    assert theirs.differences[0].asked


def test_pictures_and_layers_are_weighed_too() -> None:
    scan = Underlay("scan.png", "png", b"1", section="Wall")
    base = replace(project(WALL), underlays=(scan, replace(scan, page=1)))
    ours = replace(base, underlays=(replace(scan, strength=0.5), base.underlays[1]))
    theirs = replace(
        base, underlays=(replace(scan, strength=0.7), replace(scan, page=1, angle=9.0)),
        layers=(LayerRow("A-*", "osb"),),
    )  # fmt: skip
    weighing = Weighing({}, [], (states(base), states(base)))
    done = settings_weighed(weighing, ours, theirs)
    assert [each.name for each in weighing.differences] == ["scan.png · Wall"]
    assert [(each.strength, each.angle) for each in done.underlays] == [(0.5, 0.0), (1.0, 9.0)]
    assert done.layers == theirs.layers


def test_a_section_is_equal_to_one_that_shows_and_means_the_same() -> None:
    assert Drawn(WALL) == Drawn(wall())
    assert Drawn(WALL) != Drawn(wall(without=("10",)))
    assert Drawn(WALL) != Drawn(replace(WALL, name="Other"))
    assert Drawn(WALL) != WALL
    assert hash(Drawn(WALL)) == hash(Drawn(wall()))
