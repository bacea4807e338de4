"""unsealed-joint: joints on the air trace, by how the products are held."""

import pytest

from enclosure_app.model.section import Piece, Section
from enclosure_app.rules.unsealed_joint import RULE
from tests.rules.junctions import Told, box, found, run, section, told, wall_lap


def butt(of: str = "sealed-sheathing", *more: Piece, **how: object) -> Section:
    """Two boards, drawn as lines, edge to edge."""
    return section(run("a", of, (0, -500), (0, 0)), run("b", of, (0, 1), (0, 500)), *more, **how)


def slab(*more: Piece, sheet: str = "housewrap") -> Section:
    """A sheet that comes down beside the edge of a concrete slab."""
    return section(
        box("k", "concrete", (-4, -500), (200, 0)),
        run("s", sheet, (-6, -60), (-6, 500)),
        *more,
        outside=[(-450, 300)],
        inside=[(400, 400)],
    )


def lapped(*more: Piece, of: str = "housewrap", **how: object) -> Section:
    return section(*wall_lap(100, of=of).pieces, *more, **how)


SILENT = {
    "one sheet": section(run("a", "housewrap", (0, -500), (0, 500))),
    "adhered sheets lapped": lapped(of="self-adhered-sheet"),
    "a coat over a sheet": wall_lap(60, of="fluid-permeable", on="housewrap"),
    "lap taped over its edge": lapped(
        run("t", "seam-tape", (-7, -90), (-7, -50), (-4, -45), (-4, 0))
    ),
    "butt taped": butt("sealed-sheathing", run("t", "seam-tape", (-2, -40), (-2, 40))),
    "butt with a bead": butt("sealed-sheathing", box("s", "sealant", (-5, -5), (5, 6))),
    "somebody says that it is sealed": butt(sealed=[("a", "b")]),
    "sheet taped to the slab": slab(
        run("t", "seam-tape", (-9, -20), (-9, -58), (-5.5, -66), (-5.5, -120))
    ),
    "adhered sheet on the slab": slab(sheet="self-adhered-sheet"),
    "a gap is another rule's": section(
        run("a", "housewrap", (0, -500), (0, 0)), run("b", "housewrap", (0, 40), (0, 500))
    ),
    "a sheet that keeps no air in": lapped(of="building-paper"),
}

REPORTS = {
    "fastened sheets lapped": (lapped(), Told("low up", (-2, 0), control="air")),
    "boards butted": (butt(), Told("a b", (0, 0.5), control="air")),
    "board and board with a paper tape of no air": (
        butt("sealed-sheathing", run("t", "building-paper", (-2, -40), (-2, 40))),
        Told("a b", (0, 0.5), control="air"),
    ),
    "sheet beside the slab": (slab(), Told("k s", (-5, -30), control="air")),
    "somebody says it of another joint": (
        butt(sealed=[("a", "c")]),
        Told("a b", (0, 0.5), control="air"),
    ),
}


@pytest.mark.parametrize("drawn", SILENT.values(), ids=SILENT)
def test_is_silent(drawn: Section) -> None:
    assert told(RULE, drawn) == []


@pytest.mark.parametrize(("drawn", "finding"), REPORTS.values(), ids=REPORTS)
def test_reports(drawn: Section, finding: Told) -> None:
    assert told(RULE, drawn) == [finding]


def test_a_lap_is_told_from_a_butt() -> None:
    (lap,), (edge,) = found(RULE, lapped()), found(RULE, butt())
    assert "lap and nothing seals them" in lap.message
    assert lap.advice.startswith("Tape the lap")
    assert lap.key == "unsealed-joint:air:low.face+up.face"
    assert "meet and nothing seals them" in edge.message
    assert edge.advice.startswith("Tape over the joint")
    assert edge.key == "unsealed-joint:air:a.high+b.low"


def test_a_joint_that_the_trace_does_not_pass_is_none_of_the_layers() -> None:
    """A board that only leans on the sheet from inside carries nothing across."""
    leaning = run("c", "sealed-sheathing", (1, 100), (300, 100))
    drawn = section(run("a", "housewrap", (0, -500), (0, 500)), leaning)
    assert told(RULE, drawn) == []


def test_a_tape_on_the_face_of_the_outer_sheet_seals_nothing() -> None:
    """It has to cross the edge of the outer sheet to stick to the inner one too."""
    drawn = lapped(run("t", "seam-tape", (-7, 0), (-7, 80)))
    assert told(RULE, drawn) == [Told("low up", (-2, 0), control="air")]
