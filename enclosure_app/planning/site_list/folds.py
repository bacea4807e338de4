"""Folds to look at on site: where a sheet turns a corner."""

from collections.abc import Iterator
from itertools import pairwise
from math import atan2, degrees, dist, pi

from enclosure_app.language import say
from enclosure_app.model.place import Line, Point, Points
from enclosure_app.model.product import Bond, Control, Kind
from enclosure_app.planning.site_list import questions as ask
from enclosure_app.planning.site_list.places import Drawn, SitePlace, said, title

_SHEETS = frozenset(
    {Kind.SHEET, Kind.UNDERLAYMENT, Kind.EAVE_MEMBRANE, Kind.ROOFING, Kind.FLUID, Kind.TAPE}
)
_COAT = (ask.COAT_OVER_JOINT, ask.WET_THICKNESS, ask.NO_PINHOLES)
_TURN = 30.0  # degrees from which a sheet is folded
_LEG = 25.0  # mm: what is shorter belongs to the rounding of a fold


def folds(section: Drawn) -> Iterator[SitePlace]:
    """Yield each fold of the sheets that the pen follows, numbered from the sheet's lower end."""
    for name, controls in _followed(section).items():
        piece = section.result.section.by_name[name]
        if section.product(name).kind in _SHEETS and isinstance(piece.shape, Line):
            places = _fold_places(section, piece.shape)
            for number, at in enumerate(places, 1):
                yield _fold(section, name, (controls, number, len(places)), at)


def _followed(section: Drawn) -> dict[str, tuple[Control, ...]]:
    """Return the pieces that any pen follows, with the controls that they are followed for."""
    found: dict[str, tuple[Control, ...]] = {}
    for layer in section.walked:
        for name in dict.fromkeys(layer.pieces):
            found[name] = (*found.get(name, ()), layer.control)
    return found


def _fold(
    section: Drawn, name: str, of: tuple[tuple[Control, ...], int, int], at: Point
) -> SitePlace:
    controls, number, count = of
    sheet = section.words(name)
    told = say("Fold of {sheet}", sheet=sheet)
    if count > 1:
        told = say("Fold {number} of {sheet}, from below", number=number, sheet=sheet)
    asked = _COAT if section.product(name).bond is Bond.FLUID else _of_sheet(controls)
    return SitePlace(
        key=f"fold:{name}.{number}",
        title=title(told),
        controls=controls,
        pieces=(name,),
        at=at,
        along=section.along(controls, at),
        questions=said(asked),
        extent=((at, at),),
    )


def _of_sheet(controls: tuple[Control, ...]) -> tuple[ask.Question, ...]:
    """Return what to look at; in which order a corner is folded matters where water runs."""
    if Control.WATER in controls:
        return ask.TIGHT_CORNER, ask.FOLD_ORDER, ask.NO_CUT_CORNER
    return ask.TIGHT_CORNER, ask.NO_CUT_CORNER


def _fold_places(section: Drawn, line: Line) -> list[Point]:
    """Return where a line turns, from its lower end; a rounding of short bits is one fold."""
    points = line.points if _from_below(section, line.points) else line.points[::-1]
    legs = [(a, b) for a, b in pairwise(points) if dist(a, b) >= _LEG]
    return [
        ((b[0] + c[0]) / 2, (b[1] + c[1]) / 2)
        for (a, b), (c, d) in pairwise(legs)
        if _turned((a, b), (c, d)) >= _TURN
    ]


def _from_below(section: Drawn, points: Points) -> bool:
    first, last = section.pose.settled(points[0]), section.pose.settled(points[-1])
    return (first[1], first[0]) <= (last[1], last[0])


def _turned(first: tuple[Point, Point], second: tuple[Point, Point]) -> float:
    """Return by how many degrees the second leg turns from the first."""
    turn = abs(_angle(*second) - _angle(*first))
    return degrees(min(turn, 2 * pi - turn))


def _angle(a: Point, b: Point) -> float:
    return atan2(b[1] - a[1], b[0] - a[0])
