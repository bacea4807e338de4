"""Kinds of joints, and which of them are sealed; the outside is on the left."""

from enclosure_app.model.report import Joint, JointKind
from enclosure_app.model.section import Piece, Section
from tests.network.sections import air, area, box, section, sheet


def joint(drawn: Section, a: str = "a", b: str = "b") -> Joint:
    """Return the only joint of two pieces."""
    (found,) = (j for j in air(drawn).joints if {j.a, j.b} == {a, b})
    return found


def lapped(low: str, up: str, *others: Piece, sealed: tuple[tuple[str, str], ...] = ()) -> Joint:
    """Return the joint of a lower sheet "a" and an upper sheet "b" drawn 10 mm outside of it."""
    return joint(
        section(
            sheet("a", (0, -500), (0, 100), of=low),
            sheet("b", (-10, 40), (-10, 500), of=up),
            *others,
            sealed=sealed,
        )
    )


def butted(*others: Piece) -> Joint:
    return joint(section(sheet("a", (0, -500), (0, 0)), sheet("b", (0, 1), (0, 500)), *others))


def test_an_adhered_sheet_over_a_loose_one_seals_the_lap() -> None:
    assert lapped("loose", "adhered").sealed


def test_an_adhered_sheet_under_a_loose_one_does_not() -> None:
    """Its glue is on its back, away from the loose sheet."""
    assert not lapped("adhered", "loose").sealed


def test_two_loose_sheets_are_not_sealed() -> None:
    assert not lapped("loose", "loose").sealed


def test_a_coating_seals_from_either_side() -> None:
    assert lapped("coating", "loose").sealed
    assert lapped("loose", "coating").sealed


def test_an_adhered_sheet_drawn_on_top_of_a_loose_one_gets_the_benefit_of_the_doubt() -> None:
    drawn = section(sheet("a", (0, -500), (0, 100), of="adhered"), sheet("b", (0, 40), (0, 500)))
    assert joint(drawn).sealed


def test_a_lap_tells_its_length_its_stretches_and_its_sheets() -> None:
    found = lapped("loose", "loose")
    assert found.kind is JointKind.LAP
    assert (found.length, found.over, found.upper, found.on_trace) == (60, "b", "b", True)
    assert found.run_a == ((0, 40), (0, 100))
    assert found.run_b == ((-10, 40), (-10, 100))


def test_a_tape_over_a_butt_joint_seals_it() -> None:
    found = butted(sheet("t", (-1, -30), (-1, 31), of="tape"))
    assert found.kind is JointKind.BUTT
    assert found.sealed


def test_a_wide_tape_over_a_butt_joint_seals_it() -> None:
    """A 12 in strip: the middles of its legs are 75 mm from the joint, the tape is not."""
    assert butted(sheet("t", (-1, -152), (-1, 153), of="tape")).sealed


def test_a_tape_on_one_side_of_a_butt_joint_does_not_seal_it() -> None:
    assert not butted(sheet("t", (-1, -60), (-1, -3), of="tape")).sealed


def test_a_tape_that_touches_both_sides_far_from_the_joint_does_not_seal_it() -> None:
    assert not butted(sheet("t", (0, -200), (-50, 0), (0, 200), of="tape")).sealed


def test_a_loose_strip_over_a_butt_joint_does_not_seal_it() -> None:
    assert not butted(sheet("t", (-1, -30), (-1, 31))).sealed


def test_a_tape_over_the_edge_of_a_lap_seals_it() -> None:
    tape = sheet("t", (0, 10), (-1, 38), (-11, 39), (-11, 80), of="tape")
    assert lapped("loose", "loose", tape).sealed


def test_a_bead_in_a_lap_seals_it() -> None:
    bead = box("bead", (-9.5, 60), (-0.5, 68), "bead")
    assert lapped("loose", "loose", bead).sealed
    drawn = section(sheet("a", (0, -500), (0, 100)), sheet("b", (-10, 40), (-10, 500)), bead)
    for name in ("a", "b"):
        found = joint(drawn, name, "bead")
        assert found.kind is JointKind.BRIDGE
        assert found.sealed


def test_a_bead_on_one_sheet_only_does_not_seal_the_lap() -> None:
    assert not lapped("loose", "loose", box("bead", (-5, 60), (-0.5, 68), "bead")).sealed


def test_a_person_may_say_that_a_joint_is_sealed() -> None:
    assert lapped("loose", "loose", sealed=(("a", "b"),)).sealed
    assert not lapped("loose", "loose", sealed=(("a", "c"),)).sealed


def test_a_pane_in_its_frame_is_sealed() -> None:
    drawn = section(
        box("a", (-30, -500), (30, 0), "window"), box("b", (-10, 0), (10, 500), "glass")
    )
    assert joint(drawn).sealed
    assert joint(drawn).kind is JointKind.BUTT


def test_a_window_frame_in_concrete_is_not_sealed_by_itself() -> None:
    drawn = section(
        box("a", (-100, -500), (100, 0), "concrete"), box("b", (-30, 0), (30, 500), "window")
    )
    assert not joint(drawn).sealed


def test_a_sheet_that_ends_against_another_ones_face_makes_a_tee() -> None:
    drawn = section(sheet("a", (0, -500), (0, 500)), sheet("b", (300, 10), (1, 10)))
    assert joint(drawn).kind is JointKind.TEE


def test_a_sheet_that_ends_on_concrete_makes_a_tee_and_a_bead_there_seals_it() -> None:
    slab = area("b", (-90, -500), (90, -500), (90, 0), (-90, 0), of="concrete")
    wall = sheet("a", (0, 1), (0, 500))
    assert joint(section(slab, wall)).kind is JointKind.TEE
    assert not joint(section(slab, wall)).sealed
    bead = area("bead", (-8, 0), (-0.5, 0), (-0.5, 8), of="bead")
    assert joint(section(slab, wall, bead)).sealed


def test_joints_off_the_trace_are_told_apart() -> None:
    drawn = section(
        sheet("a", (0, -500), (0, 500)),
        sheet("b", (-100, 0), (-100, 90)),
        sheet("c", (-100, 90), (-60, 150)),
    )
    assert not joint(drawn, "b", "c").on_trace
