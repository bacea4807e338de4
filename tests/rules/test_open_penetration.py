"""open-penetration: pipes, ducts and beams through sheets and boards."""

import pytest

from enclosure_app.model.section import Piece, Section
from enclosure_app.rules.open_penetration import RULE
from tests.rules.junctions import Told, box, found, run, section, told


def through(
    passing: str, *seals: Piece, sheet: str = "self-adhered-sheet", hole: float = 1.0
) -> Section:
    """A pipe of 100 across a wall sheet that is cut round it, `hole` clear above and below."""
    return section(
        box("p", passing, (-200, -50), (300, 50)),
        run("low", sheet, (0, -500), (0, -50 - hole)),
        run("up", sheet, (0, 50 + hole), (0, 500)),
        *seals,
    )


def board(passing: str) -> Section:
    return section(
        box("p", passing, (-200, -50), (300, 50)),
        box("low", "closed-cell-foam", (0, -500), (90, -51)),
        box("up", "closed-cell-foam", (0, 51), (90, 500)),
    )


def collars(product: str) -> list[Piece]:
    """A collar above and one below, each on the pipe and on the face of the sheet."""
    return [
        run("c", product, (-60, 51), (-2, 51), (-2, 120)),
        run("d", product, (-60, -51), (-2, -51), (-2, -120)),
    ]


def beads(product: str) -> list[Piece]:
    return [
        box("c", product, (-8, 50), (-1, 58)),
        box("d", product, (-8, -58), (-1, -50)),
    ]


SILENT = {
    "pipe with collars": through("pipe", *collars("pipe-collar")),
    "pipe with tape": through("pipe", *collars("flashing-tape")),
    "duct with beads": through("duct", *beads("sealant")),
    "beam with gaskets": through("beam", *beads("compression-gasket")),
    "coat that runs up to the pipe": through("pipe", sheet="fluid-permeable"),
    "duct taped where it passes the water layer": through(
        "duct", *collars("flashing-tape"), sheet="building-paper"
    ),
    "nothing passes": section(run("up", "self-adhered-sheet", (0, -500), (0, 500))),
    "a pipe inside does not meet the layer": section(
        box("p", "pipe", (100, -50), (300, 50)),
        run("up", "self-adhered-sheet", (0, -500), (0, 500)),
    ),
}

BOTH_SIDES = [("p low", -50.5), ("p up", 50.5)]
REPORTS = {
    "pipe": (through("pipe"), "air"),
    "duct": (through("duct"), "air"),
    "beam": (through("beam"), "air"),
    "pipe through a sheet that keeps only water": (
        through("pipe", sheet="building-paper"),
        "water",
    ),
    "a tape that keeps air in but lets water through": (
        through("pipe", *collars("foil-tape"), sheet="housewrap"),
        "water",
    ),
    "a bead that keeps air in but lets water through": (
        through("pipe", *beads("spray-foam-bead"), sheet="housewrap"),
        "water",
    ),
}


@pytest.mark.parametrize("drawn", SILENT.values(), ids=SILENT)
def test_is_silent(drawn: Section) -> None:
    assert told(RULE, drawn) == []


@pytest.mark.parametrize(("drawn", "control"), REPORTS.values(), ids=REPORTS)
def test_reports_below_and_above(drawn: Section, control: str) -> None:
    assert sorted(told(RULE, drawn), key=str) == [
        Told(pieces, (0, y), control=control) for pieces, y in BOTH_SIDES
    ]


def test_reports_only_the_side_without_a_collar() -> None:
    drawn = through("pipe", collars("pipe-collar")[0])
    assert told(RULE, drawn) == [Told("p low", (0, -50.5), control="air")]


def test_reports_a_pipe_drawn_across_a_sheet_that_runs_through() -> None:
    drawn = section(
        box("p", "pipe", (-200, -50), (300, 50)),
        run("s", "self-adhered-sheet", (0, -500), (0, 500)),
    )
    (finding,) = found(RULE, drawn)
    assert finding.pieces == ("p", "s")
    assert finding.at[0] == 0
    assert -50 <= finding.at[1] <= 50


@pytest.mark.parametrize(("shown", "bare"), [((0, 1), []), ((0,), [-50]), ((1,), [50])])
def test_a_sheet_drawn_through_a_pipe_needs_a_collar_on_either_side(
    shown: tuple[int, ...], bare: list[float]
) -> None:
    drawn = section(
        box("p", "pipe", (-200, -50), (300, 50)),
        run("s", "self-adhered-sheet", (0, -500), (0, 500)),
        *(collars("pipe-collar")[n] for n in shown),
    )
    assert [finding.at for finding in found(RULE, drawn)] == [(0, y) for y in bare]


def test_reports_boards_cut_round_a_pipe_somewhere_across_them() -> None:
    low, up = sorted(found(RULE, board("pipe")), key=lambda finding: finding.pieces)
    assert (low.pieces, up.pieces) == (("p", "low"), ("p", "up"))
    assert (low.at[1], up.at[1]) == (-50.5, 50.5)
    assert all(0 <= finding.at[0] <= 90 for finding in (low, up))


def test_a_collar_on_the_pipe_alone_seals_nothing() -> None:
    drawn = through("pipe", run("c", "pipe-collar", (-60, 51), (-20, 51)))
    assert [finding.pieces for finding in found(RULE, drawn)] == [("p", "low"), ("p", "up")]


def test_a_collar_at_another_pipe_seals_nothing_here() -> None:
    far = [
        box("q", "pipe", (-200, 250), (300, 300)),
        run("c", "pipe-collar", (-60, 301), (-2, 301), (-2, 360)),
    ]
    drawn = through("pipe", *far)
    assert ("p", "up") in [finding.pieces for finding in found(RULE, drawn)]


def test_the_words_say_what_goes_through_what() -> None:
    finding = found(RULE, through("pipe"))[0]
    assert finding.message.startswith("Pipe goes through self-adhered sheet and nothing seals")
    assert finding.key == "open-penetration:air:low.high+p.face"
