"""Small sections and textbook junctions in the products that come with the program; lengths mm.

Unless told otherwise the outside is on the left and above, the inside on the right and below, and
the frame reaches 500 from the middle. Sheets that lie on each other are drawn 3 to 6 mm apart.
"""

from collections.abc import Sequence
from dataclasses import dataclass

from enclosure_app.files.maps.catalogue import load_products
from enclosure_app.files.maps.rule_book import load_limits
from enclosure_app.model.finding import Finding, Severity
from enclosure_app.model.limits import Limits
from enclosure_app.model.place import Area, Line, Point, Points
from enclosure_app.model.section import DOWN, Break, Piece, Section
from enclosure_app.network.network import question
from enclosure_app.rules.rule import Rule

INCH = 25.4
US = load_limits("irc-2021")
FRAME = ((-500.0, -500.0), (500.0, -500.0), (500.0, 500.0), (-500.0, 500.0))
PITCH = 0.5  # rise over run of the roofs in these junctions


def run(name: str, product: str, *points: Point) -> Piece:
    """Return a piece drawn as a line."""
    return Piece(name, product, Line(points))


def box(name: str, product: str, low: Point, high: Point) -> Piece:
    """Return a piece drawn as a filled rectangle."""
    (x, y), (u, v) = low, high
    return Piece(name, product, Area(((x, y), (u, y), (u, v), (x, v))))


def section(  # noqa: PLR0913  # one argument for each thing that a case may set
    *pieces: Piece,
    outside: Sequence[Point] = ((-450.0, 300.0),),
    inside: Sequence[Point] = ((400.0, -400.0),),
    frame: Points = FRAME,
    gravity: Point | None = DOWN,
    breaks: Sequence[Break] = (),
    sealed: Sequence[tuple[str, str]] = (),
) -> Section:
    """Return a section of real products."""
    return Section(
        name="junction",
        frame=frame,
        pieces=pieces,
        products=load_products(),
        inside=tuple(inside),
        outside=tuple(outside),
        gravity=gravity,
        breaks=tuple(breaks),
        sealed=frozenset(sealed),
    )


@dataclass(frozen=True)
class Told:
    """What a finding has to say; measured and required in mm."""

    pieces: str
    at: Point
    measured: float | None = None
    required: float | None = None
    severity: Severity = Severity.FAULT
    control: str = "water"


def found(rule: Rule, drawn: Section, limits: Limits = US) -> list[Finding]:
    """Return what one rule finds in a section that stands with gravity down the sheet."""
    return list(rule.check(question(drawn, limits.tolerances), limits))


def told(rule: Rule, drawn: Section, limits: Limits = US) -> list[Told]:
    """Return what one rule finds, without its words; lengths to a tenth of a millimetre."""
    return [
        Told(
            " ".join(finding.pieces),
            (round(finding.at[0], 1), round(finding.at[1], 1)),
            None if finding.measured is None else round(finding.measured, 1),
            None if finding.required is None else round(finding.required, 1),
            finding.severity,
            str(finding.control),
        )
        for finding in found(rule, drawn, limits)
    ]


def wall_lap(
    length: float, *, over: bool = True, of: str = "building-paper", on: str = "", apart: float = 4
) -> Section:
    """Two wall sheets that lap in the middle; `over` is shingle fashion, `on` the lower sheet."""
    x = -apart if over else apart
    return section(
        run("low", on or of, (0, -500), (0, length / 2)),
        run("up", of, (x, -length / 2), (x, 500)),
    )


def roof_lap(
    length: float, rise: float, *, over: bool = True, of: str = "underlayment", on: str = ""
) -> Section:
    """Two roof sheets on a slope of `rise` in 1, up to the right; the lap along the slope."""
    long, off = (1 + rise**2) ** 0.5, 4.0 if over else -4.0
    half = length / 2 / long
    # the upper sheet starts square above its place on the slope, so that the lap keeps its length
    start = (-half - off * rise / long, -half * rise + off / long)
    return section(
        run("low", on or of, (-500, -500 * rise), (half, half * rise)),
        run("up", of, start, (500, 500 * rise + off * long)),
        outside=[(-100, 450)],
        inside=[(100, -450)],
    )


def head(*, over: bool, taped: bool = False, sheet: str = "building-paper") -> Section:
    """A head flashing over a window; the wall sheet laps over its leg, or runs behind it."""
    x = -7.0 if over else 1.0
    tape = run("T", "flashing-tape", (-6, 80), (-6, 125), (-2, 130), (-2, 220))
    return section(
        box("W", "window-frame", (-2, -500), (60, -1)),
        run("F", "head-flashing", (-3, 120), (-3, 0), (-70, -8), (-78, -30)),
        run("S", sheet, (x, 20), (x, 500)),
        *([tape] if taped else []),
    )


def _on_slope(x: float, off: float = 0.0) -> Point:
    return (x, PITCH * x + off)


def eave(*, underlayment_over: bool) -> Section:
    """The roof falls to the left to a drip edge on the deck, over the wall sheet at the fascia."""
    off = 5.0 if underlayment_over else -5.0
    return section(
        run("D", "drip-edge", _on_slope(-250), _on_slope(-404), (-404, -280), (-414, -292)),
        run("U", "underlayment", _on_slope(-398, off), _on_slope(500, off)),
        run("S", "building-paper", (-399, -500), (-399, -215)),
        outside=[(-450, 300)],
    )


def rake(*, metal_over: bool) -> Section:
    """Along a rake the roof is level in the section; the metal goes over the underlayment."""
    off = 5.0 if metal_over else -5.0
    return section(
        run("D", "drip-edge", (-300, off), (-406, off), (-406, -80), (-416, -92)),
        run("U", "underlayment", (-401, 0), (500, 0)),
        run("S", "building-paper", (-400, -500), (-400, -10)),
        outside=[(-100, 300)],
    )


def sill(*, leg_over: bool) -> Section:
    """A sill pan under a window, its front leg over the wall sheet or behind it."""
    x = 4.0 if leg_over else -4.0
    return section(
        box("W", "window-frame", (20, 1), (70, 500)),
        run("P", "sill-pan", (80, 15), (80, 0), (0, -6), (0, -90)),
        run("S", "building-paper", (x, -500), (x, -12)),
    )


def wall_base(*, sheet_over: bool) -> Section:
    """The wall sheet comes down over the waterproofing turned up from below, or behind it."""
    x = -4.0 if sheet_over else 4.0
    return section(
        run("B", "waterproofing-sheet", (0, -500), (0, 90)),
        run("S", "building-paper", (x, -90), (x, 500)),
    )


def counter_flashing(*, over: bool) -> Section:
    """A roof membrane turned up a wall, a counter-flashing over its leg, the wall sheet over that."""
    x = -4.0 if over else 4.0
    return section(
        run("R", "bituminous-roofing", (-500, 0), (0, 0), (0, 220)),
        run("C", "counter-flashing", (x, 320), (x, 110)),
        run("S", "building-paper", (x - 4, 240), (x - 4, 500)),
        outside=[(-300, 300)],
    )


def parapet(*, membrane_over: bool) -> Section:
    """A roof membrane over the top of a parapet and down its outer face, where the wall goes on."""
    x = 4.0 if membrane_over else -4.0
    return section(
        run("R", "bituminous-roofing", (500, 0), (100, 0), (100, 250), (0, 255), (0, 100)),
        run("S", "building-paper", (x, -500), (x, 230)),
        outside=[(-300, 0)],
    )


def flush_eave(fold: float, *, covered: bool) -> Section:
    """The eave membrane is folded down over the sub-fascia; the edge metal lies on it.

    `fold` is the length of the membrane's leg; the metal's is 80. A strip may cover the metal.
    """
    strip = run("C", "underlayment", _on_slope(-340, 10), _on_slope(-200, 5), _on_slope(500, 5))
    return section(
        run("M", "eave-membrane", _on_slope(500), _on_slope(-400), (-400, -200 - fold)),
        run("D", "drip-edge", _on_slope(-250, 4), _on_slope(-405, 4), (-405, -280), (-415, -292)),
        run("S", "building-paper", (-396, -500), (-396, -205)),
        *([strip] if covered else []),
    )


def higher_wall(*, sheet_over: bool) -> Section:
    """A roof that meets a higher wall: an apron over the underlayment, the wall sheet over both."""
    x = -8.0 if sheet_over else 2.0
    return section(
        run("U", "underlayment", _on_slope(-500), (6, 3), (6, 115)),
        run("A", "apron-flashing", _on_slope(-140, 5), (-2, 4), (-2, 150)),
        run("S", "building-paper", (x, 60), (x, 500)),
        outside=[(-300, 300)],
    )


def patched(product: str) -> Section:
    """A strip put on the face of a sheet that runs through."""
    return section(
        run("S", "building-paper", (0, -500), (0, 500)),
        run("P", product, (-4, -60), (-4, 60)),
    )
