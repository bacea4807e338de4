"""Which section is which: by what is drawn in it."""

from dataclasses import replace

from enclosure_app.model.section import Section
from enclosure_app.planning.parts import part
from enclosure_app.planning.revision.outlines import Motion, moved_shape
from enclosure_app.planning.revision.sections import outlined, section_pairs
from tests.planning.revision.walls import WALL, wall

EAVE = part("eave", WALL.products)


def elsewhere(section: Section, dx: float, name: str, *, renumbered: bool = False) -> Section:
    motion = Motion((dx, 0.0))
    pieces = tuple(
        replace(
            p,
            shape=moved_shape(p.shape, motion),
            name=f"{dx:g}-{n}" if renumbered else p.name,
            handles=(f"{dx:g}-{n}",) if renumbered else p.handles,
        )
        for n, p in enumerate(section.pieces)
    )
    return replace(
        section, name=name, pieces=pieces, frame=motion.places(section.frame),
        inside=motion.places(section.inside), outside=motion.places(section.outside),
    )  # fmt: skip


def pairs(old: list[Section], new: list[Section]) -> set[tuple[str, str]]:
    found = section_pairs([*map(outlined, old)], [*map(outlined, new)])
    return {(pair.old.section.name, pair.new.section.name) for pair in found}


def test_sections_are_found_again_under_other_names_at_other_places() -> None:
    new = [elsewhere(EAVE, 9e4, "Wall"), elsewhere(WALL, -7.0, "Detail 3", renumbered=True)]
    assert pairs([WALL, EAVE], new) == {("Wall", "Detail 3"), (EAVE.name, "Wall")}


def test_a_section_with_little_in_common_is_another_one() -> None:
    assert pairs([WALL], [EAVE]) == set()
    assert pairs([WALL], [replace(WALL, pieces=())]) == set()
    assert pairs([WALL], [wall(without=("10", "11"))]) == {("Wall", "Wall")}


def test_two_equal_sections_are_told_apart_by_name_and_place_together() -> None:
    twin = elsewhere(WALL, 5000.0, "Twin", renumbered=True)
    assert pairs([WALL, twin], [WALL, twin]) == {("Wall", "Wall"), ("Twin", "Twin")}


def test_or_by_their_handles() -> None:
    twin = elsewhere(WALL, 5000.0, "Twin", renumbered=True)
    swapped = [replace(WALL, name="Twin"), replace(twin, name="Wall")]
    assert pairs([WALL, twin], swapped) == {("Wall", "Twin"), ("Twin", "Wall")}


def test_and_are_asked_about_where_neither_tells() -> None:
    twin = elsewhere(WALL, 5000.0, "Twin", renumbered=True)
    new = [
        elsewhere(WALL, 300.0, "Twin", renumbered=True),
        elsewhere(WALL, 5300.0, "Wall", renumbered=True),
    ]
    assert pairs([WALL, twin], new) == set()


def test_where_most_was_moved_within_its_frame_the_frame_says_what_stayed() -> None:
    up = Motion((0.0, 61.0))
    moved = {"10", "11", "12", "20"}
    pieces = tuple(
        replace(p, shape=moved_shape(p.shape, up)) if p.name in moved else p for p in WALL.pieces
    )
    (pair,) = section_pairs([outlined(WALL)], [outlined(replace(WALL, pieces=pieces))])
    assert (pair.fit.motion, pair.fit.count, pair.fit.anchored) == (Motion(), 2, 3)


def test_handles_name_and_place_together_outweigh_how_much_is_alike() -> None:
    """Half of a wall was drawn anew; its twin, untouched, looks more like it."""
    twin = elsewhere(WALL, 5000.0, "Twin", renumbered=True)
    anew = [p if n < 3 else replace(p, product="osb") for n, p in enumerate(WALL.pieces)]
    new = [replace(WALL, pieces=tuple(anew)), twin]
    assert pairs([WALL, twin], new) == {("Wall", "Wall"), ("Twin", "Twin")}
