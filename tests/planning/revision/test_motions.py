"""A motion is only believed where no other explains nearly as much."""

from collections.abc import Sequence
from dataclasses import replace
from math import dist

from enclosure_app.model.section import Piece
from enclosure_app.planning.revision.motions import Anchors, Fit, certain, fits, without_contested
from enclosure_app.planning.revision.outlines import Motion, Outline, moved_shape, outline
from tests.planning.revision.walls import WALL, line


def outlines(pieces: Sequence[Piece]) -> list[Outline]:
    return [outline(piece) for piece in pieces]


def moved(pieces: Sequence[Piece], motion: Motion) -> list[Piece]:
    return [replace(piece, shape=moved_shape(piece.shape, motion)) for piece in pieces]


def unnamed(pieces: Sequence[Piece]) -> list[Piece]:
    return [replace(p, name=f"x{n}", handles=(f"x{n}",)) for n, p in enumerate(pieces)]


def best(old: Sequence[Piece], new: Sequence[Piece], least: float = 2) -> Fit | None:
    found = fits(outlines(old), outlines(new))
    return certain(found, least=least, whole=len(old) if len(old) == len(new) else -1)


SHEETS = [line(f"{n}", (0.0, 1000.0 * n), (0.0, 1000.0 * n + 900.0)) for n in range(8)]


def test_a_drawing_that_was_moved_and_renumbered_is_recognised() -> None:
    motion = Motion((41_000.5, -0.7))
    fit = best(WALL.pieces, unnamed(moved(WALL.pieces, motion)))
    assert fit is not None
    assert dist(fit.motion.shift, motion.shift) < 1e-6
    assert (fit.count, fit.named, fit.motion.mirrored) == (6, 0, False)
    assert all(f"x{WALL.pieces.index(a.piece)}" == b.piece.name for a, b in fit.pairs)


def test_a_mirrored_drawing_is_recognised() -> None:
    fit = best(WALL.pieces, moved(WALL.pieces, Motion((50.0, 0.0), mirrored=True)))
    assert fit is not None
    assert (fit.motion, fit.named) == (Motion((50.0, 0.0), mirrored=True), 6)


def test_a_wall_of_equal_sheets_moved_on_by_one_is_not_taken_for_the_same_wall() -> None:
    """Six of eight sheets lie where one lay: only handles can tell, and they say otherwise."""
    on = moved(SHEETS, Motion((0.0, 1000.0)))
    fit = best(SHEETS, on)
    assert fit is not None
    assert fit.motion.shift == (0.0, 1000.0)
    shorter = best(SHEETS, on[:-1])  # the top one was left out: as many lie where one lay
    assert shorter is None or shorter.motion.shift == (0.0, 1000.0)
    assert best(SHEETS, unnamed(on[:-1])) is None


def test_frame_and_marks_tell_alike_motions_apart() -> None:
    old, new = outlines(SHEETS), outlines(unnamed(SHEETS[:-1]))
    anchors = Anchors((WALL.frame,), (WALL.inside, WALL.outside))
    assert certain(fits(old, new), least=2, whole=-1) is None
    fit = certain(fits(old, new, (anchors, anchors)), least=2, whole=-1)
    assert fit is not None
    assert (fit.motion, fit.anchored, fit.count) == (Motion(), 3, 7)


def test_what_was_moved_beside_the_rest_gainsays_nothing() -> None:
    """Half of the wall was moved so, half otherwise: both are believed, each of its own pieces."""
    half = len(WALL.pieces) // 2
    up, aside = Motion((0.0, 77.0)), Motion((33.0, 0.0))
    new = [*moved(WALL.pieces[:half], up), *moved(WALL.pieces[half:], aside)]
    one, other = fits(outlines(WALL.pieces), outlines(new))[:2]
    assert {one.motion, other.motion} == {up, aside}
    assert not one.gainsays(other)
    assert best(WALL.pieces, unnamed(new)) is not None
    on = fits(outlines(SHEETS), outlines(moved(SHEETS, Motion((0.0, 1000.0)))))
    assert on[1].gainsays(on[0])


def test_a_few_handles_given_out_again_do_not_gainsay_a_whole_wall() -> None:
    again = unnamed(SHEETS)
    again[2] = replace(again[2], name="1", handles=("1",))  # the handles of the sheets below
    again[5] = replace(again[5], name="4", handles=("4",))
    anchors = Anchors((WALL.frame,), (WALL.inside, WALL.outside))
    found = fits(outlines(SHEETS), outlines(again), (anchors, anchors))
    fit = certain(found, least=2, whole=-1)
    assert fit is not None
    assert fit.motion == Motion()


def test_sheets_that_may_have_been_moved_on_by_one_are_nobodys() -> None:
    """The boards stayed; of eight equal sheets seven lie where one lay, if they did not move."""
    boards = [
        line(f"b{n}", (40.0 * n, 0.0), (40.0 * n, 3000.0 - 70 * n), product="osb")
        for n in range(9)
    ]
    new = unnamed([*boards, *moved(SHEETS, Motion((0.0, 1000.0)))])
    found = fits(outlines([*boards, *SHEETS]), outlines(new))
    fit = without_contested(found[0], found)
    assert fit.motion == Motion()
    assert {a.piece.name for a, _ in fit.pairs} == {board.name for board in boards}
    assert {a.piece.name for a, _ in fit.contested} == {outlined.name for outlined in SHEETS}
    kept = fits(outlines([*boards, *SHEETS]), outlines(unnamed([*boards, *SHEETS])))
    assert without_contested(kept[0], kept) is kept[0]


def test_too_few_pieces_prove_nothing() -> None:
    assert best(WALL.pieces[:2], [WALL.pieces[0]]) is None
    assert best(WALL.pieces, []) is None
    assert certain([], least=1, whole=0) is None


def test_two_pieces_on_top_of_each_other_are_told_apart_by_their_handles_only() -> None:
    twins = [*WALL.pieces, replace(WALL.pieces[0], name="99", handles=("99",))]
    kept = best(twins, twins)
    assert kept is not None
    assert (kept.count, kept.named) == (7, 7)
    lost = best(twins, unnamed(twins))
    assert lost is not None
    assert lost.count == 5
