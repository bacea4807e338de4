"""The fingerprint of a section changes with what is judged, and with nothing else."""

from collections.abc import Callable
from dataclasses import replace
from types import MappingProxyType

import pytest

from enclosure_app.files.maps.catalogue import load_products
from enclosure_app.model.place import Area, Line
from enclosure_app.model.said.sign_off import fingerprint
from enclosure_app.model.section import Break, Piece, Section, Stroke, Text

FRAME = ((0.0, 0.0), (500.0, 0.0), (500.0, 2500.0), (0.0, 2500.0))
WALL = Piece("2F", "housewrap", Line(((10.0, 0.0), (10.0, 2400.0))), ("2F",), "A-WALL")
BOARD = Piece("30", "osb", Area(((12.0, 0.0), (24.0, 0.0), (24.0, 9.0))), ("30",), "A-WALL")
EAVE = Section("Eave", FRAME, (WALL, BOARD), load_products(), ((400.0, 9.0),), ((1.0, 9.0),))
STRIP = Break(((0.0, 1.0), (9.0, 1.0)), ((0.0, 2.0), (9.0, 2.0)))


def with_product(**change: object) -> Section:
    wrap = replace(EAVE.products["housewrap"], **change)
    return replace(EAVE, products=MappingProxyType({**EAVE.products, "housewrap": wrap}))


def with_wall(**change: object) -> Section:
    return replace(EAVE, pieces=(replace(WALL, **change), BOARD))


@pytest.mark.parametrize(
    "changed",
    [
        lambda: with_wall(shape=Line(((10.0, 0.0), (10.0, 2400.001)))),
        lambda: with_wall(shape=Line(((10.0, 0.0), (10.0, 2400.0)), 1.0)),
        lambda: with_wall(shape=Line(((10.0, 0.0), (10.0, 2400.0)), closed=True)),
        lambda: with_wall(product="osb"),
        lambda: with_wall(name="31"),
        lambda: with_product(min_lap_mm=149.0),
        lambda: with_product(controls=frozenset()),
        lambda: replace(EAVE, pieces=(WALL,)),
        lambda: replace(EAVE, frame=(*FRAME[:3], (0.0, 2501.0))),
        lambda: replace(EAVE, inside=((401.0, 9.0),)),
        lambda: replace(EAVE, inside=EAVE.outside, outside=EAVE.inside),
        lambda: replace(EAVE, gravity=None),
        lambda: replace(EAVE, breaks=(STRIP,)),
        lambda: replace(EAVE, sealed=frozenset({("2F", "30")})),
    ],
)
def test_a_change_of_what_is_judged_shows(changed: Callable[[], Section]) -> None:
    assert fingerprint(changed()) != fingerprint(EAVE)


@pytest.mark.parametrize(
    "same",
    [
        lambda: replace(EAVE, name="North eave"),
        lambda: replace(EAVE, pieces=(BOARD, WALL)),
        lambda: with_wall(layer="A-ROOF", handles=("99",)),
        lambda: with_wall(shape=Line(((10, -0.0), (10, 2400)))),
        lambda: with_product(name="Wall sheet", source="maker", confirmed=True),
        lambda: replace(EAVE, strokes=(Stroke(((0.0, 0.0), (1.0, 1.0))),)),
        lambda: replace(EAVE, texts=(Text("EAVE", (0.0, 0.0)),)),
        lambda: replace(EAVE, frame_drawn=True),
    ],
)
def test_a_change_of_anything_else_does_not(same: Callable[[], Section]) -> None:
    assert fingerprint(same()) == fingerprint(EAVE)
