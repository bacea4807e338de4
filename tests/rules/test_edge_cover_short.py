"""edge-cover-short: eaves drawn with the published lengths pass, a quarter inch less fails.

Published: M. Guertin's article on ice barriers in a US building magazine (12 in overhang, 2x6
wall, 24 in past the inner face; read second-hand, the wall counts as 6 in). The clause is IRC
R905.1.2 (from memory). Canada: OBC 9.26.5.1 (1), read. The other lengths are worked by hand from
(overhang + wall + inside) * sqrt(12^2 + n^2) / 12.
"""

from math import hypot

import pytest

from enclosure_app.files.maps.rule_book import load_limits
from enclosure_app.model.limits import Limits
from enclosure_app.model.section import Section
from enclosure_app.rules.edge_cover_short import RULE
from tests.rules.junctions import INCH, US, box, found, run, section, told

CANADA = load_limits("nbc-2020")
FROM_OUTER = US.overridden({"eave-wall-line": 0}, "the project")
REST = 700.0  # mm of roof drawn beyond the membrane's end


def eave(pitch: float, overhang: float, wall: float, length: float, side: int = 1) -> Section:
    """An eave with its edge at the origin, rising to the right (side 1); mm, pitch in 12.

    `length` is that of the membrane along the slope; an underlayment laps its upper end.
    """
    slope = pitch / 12
    along = 1 / hypot(1, slope)
    top, far = length * along, (length + REST) * along

    def at(x: float, y: float) -> tuple[float, float]:
        return (side * x, y)

    def on(x: float, off: float = 0.0) -> tuple[float, float]:
        return at(x, x * slope + off)

    (low, _), (high, _) = sorted((at(overhang, 0), at(overhang + max(wall, 1.0), 0)))
    frame = (
        at(-200, -800),
        at(far, -800),
        at(far, far * slope + 400),
        at(-200, far * slope + 400),
    )
    return section(
        run("m", "eave-membrane", at(0, -800), on(0), on(top)),
        run("u", "underlayment", on(top - 200, 4), on(far, 4)),
        box("w", "framing", (low, -800), (high, -60)),
        frame=frame if side > 0 else frame[::-1],
        outside=[at(-150, 300)],
        inside=[at(far - 50, -700)],
    )


def inches(pitch: float, overhang: float, wall: float, length: float) -> Section:
    return eave(pitch, overhang * INCH, wall * INCH, length * INCH)


LENGTHS = {
    "published, 6:12": ((6, 12, 6), 47, US),
    "published, 8:12": ((8, 12, 6), 50.5, US),
    "published, 12:12": ((12, 12, 6), 59.375, US),
    "from the outer face, 6:12": ((6, 12, 6), 40.25, FROM_OUTER),
    "from the outer face, 8:12": ((8, 12, 6), 43.27, FROM_OUTER),
    "from the outer face, 12:12": ((12, 12, 6), 50.91, FROM_OUTER),
    "long overhang, 4:12": ((4, 24, 7.5), 58.50, US),
    "no overhang, 2:12": ((2, 0, 5.5), 29.91, US),
    "36 in along a steep slope, counted from the outer face": ((8, 0, 6), 36.0, FROM_OUTER),
}
each_length = pytest.mark.parametrize(("shape", "length", "limits"), LENGTHS.values(), ids=LENGTHS)


@each_length
def test_is_silent(shape: tuple[float, float, float], length: float, limits: Limits) -> None:
    assert told(RULE, inches(*shape, length), limits) == []


@each_length
def test_reports(shape: tuple[float, float, float], length: float, limits: Limits) -> None:
    """A quarter of an inch less than published is too little; published is to an eighth."""
    (finding,) = found(RULE, inches(*shape, length - 0.25), limits)
    assert finding.measured == pytest.approx((length - 0.25) * INCH)
    assert finding.required == pytest.approx(length * INCH, abs=INCH / 8)
    assert finding.pieces == ("m",)
    (edge, top), slope = finding.extent[0], shape[0] / 12
    assert edge == (0, 0)
    assert finding.at == top
    assert top[1] / top[0] == pytest.approx(slope)


@pytest.mark.parametrize("side", [1, -1])
def test_canada_asks_for_300_inside_the_inner_face(side: int) -> None:
    """Overhang 400 and 190 to the inner face, slope 1:3 (worked by hand): 938.1 mm."""
    assert told(RULE, eave(4, 400, 190, 938.1, side), CANADA) == []
    (finding,) = found(RULE, eave(4, 400, 190, 930, side), CANADA)
    assert finding.required == pytest.approx(938.1, abs=0.05)
    assert finding.basis == "OBC 9.26.5.1 (1), Ontario"


def test_canada_never_asks_for_less_than_900_along_the_slope() -> None:
    assert told(RULE, eave(4, 100, 140, 900), CANADA) == []
    (finding,) = found(RULE, eave(4, 100, 140, 890), CANADA)
    assert finding.required == 900


def test_the_figure_that_decides_is_named() -> None:
    (finding,) = found(RULE, inches(6, 12, 6, 40))
    assert finding.basis == "IRC R905.1.2, from memory, 2021 (unconfirmed)"
    assert finding.key == "edge-cover-short:water:m.high"
    assert finding.message.startswith(
        "Self-adhered membrane along the eave ends too near the eave"
    )


def test_a_second_membrane_lapped_over_the_first_carries_it_on() -> None:
    short = inches(6, 12, 6, 40)
    more = run("n", "eave-membrane", (700, 354), (1200, 604))
    drawn = section(
        *short.pieces, more, frame=short.frame, outside=short.outside, inside=short.inside
    )
    assert told(RULE, drawn) == []


def test_an_eave_without_a_membrane_is_not_judged() -> None:
    """Whether one is needed depends on the climate, which no section shows."""
    drawn = inches(6, 12, 6, 40)
    pieces = [piece for piece in drawn.pieces if piece.name != "m"]
    bare = section(*pieces, frame=drawn.frame, outside=drawn.outside, inside=drawn.inside)
    assert told(RULE, bare) == []
