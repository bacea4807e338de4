"""What was changed is taken; what both changed is noted, and what was chosen is taken."""

from dataclasses import replace

from enclosure_app.model.layer import LayerRow
from enclosure_app.model.underlay import Underlay
from enclosure_app.planning.merging.differences import (
    UNKNOWN,
    Drawn,
    Part,
    Side,
    Weighing,
    settings_weighed,
)
from tests.planning.revision.walls import WALL, project, wall

KEY = (Part.TITLE, "")


def test_only_what_both_changed_is_noted() -> None:
    weighing = Weighing({}, [])
    assert weighing.value(KEY, "a", "a", UNKNOWN) == "a"
    assert weighing.value(KEY, "a", "b", "a") == "b"
    assert weighing.value(KEY, "b", "a", "a") == "b"
    assert weighing.differences == []
    assert weighing.value(KEY, "b", "c", "a") == "b"
    (noted,) = weighing.differences
    assert (noted.key, noted.ours, noted.theirs, noted.taken, noted.asked) == (
        KEY, "b", "c", Side.OURS, True,
    )  # fmt: skip


def test_what_was_chosen_is_taken_and_not_asked_again() -> None:
    weighing = Weighing({KEY: Side.THEIRS}, [])
    assert weighing.value(KEY, "b", "c", "a") == "c"
    assert not weighing.differences[0].asked


def test_what_is_held_by_name_is_united_without_a_base_and_followed_with_one() -> None:
    alone = Weighing({}, []).by_name(Part.FIGURE, {"a": 1.0}, {"b": 2.0}, None)
    assert alone == {"a": 1.0, "b": 2.0}
    taken_back = Weighing({}, []).by_name(Part.FIGURE, {"a": 1.0}, {}, {"a": 1.0})
    assert taken_back == {}
    both = Weighing({}, [])
    assert both.by_name(Part.FIGURE, {"a": 3.0}, {}, {"a": 1.0}) == {"a": 3.0}
    assert [(each.ours, each.theirs) for each in both.differences] == [(3.0, None)]


def test_pictures_and_layers_are_weighed_too() -> None:
    scan = Underlay("scan.png", "png", b"1", section="Wall")
    base = replace(project(WALL), underlays=(scan, replace(scan, page=1)))
    ours = replace(base, underlays=(replace(scan, strength=0.5), base.underlays[1]))
    theirs = replace(
        base, underlays=(replace(scan, strength=0.7), replace(scan, page=1, angle=9.0)),
        layers=(LayerRow("A-*", "osb"),),
    )  # fmt: skip
    weighing = Weighing({}, [])
    done = settings_weighed(weighing, ours, theirs, base)
    assert [each.name for each in weighing.differences] == ["scan.png · Wall"]
    assert [(each.strength, each.angle) for each in done.underlays] == [(0.5, 0.0), (1.0, 9.0)]
    assert done.layers == theirs.layers


def test_a_section_is_equal_to_one_that_shows_and_means_the_same() -> None:
    assert Drawn(WALL) == Drawn(wall())
    assert Drawn(WALL) != Drawn(wall(without=("10",)))
    assert Drawn(WALL) != Drawn(replace(WALL, name="Other"))
    assert Drawn(WALL) != WALL
    assert hash(Drawn(WALL)) == hash(Drawn(wall()))
