"""Junctions that a drawing names, found along the walk of a layer."""

from dataclasses import replace

import pytest

from enclosure_app.drawing.ribbon.junctions import Junction, _named_strokes, junctions
from enclosure_app.drawing.ribbon.unrolled import stretches, unrolled
from enclosure_app.model.section import Stroke, Text
from tests.drawing import eave

WATER = unrolled(eave.WATER)


def found(**changes: object) -> list[tuple[str, int]]:
    section = replace(eave.section(), **{"texts": (), "strokes": (), **changes})
    return [(j.name, round(j.along)) for j in junctions(section, WATER)]


def wall(y: float) -> int:
    """Where a height on the wall stands along the walk of the water layer."""
    return round(WATER.along((163.0, y)))


def test_a_text_beside_the_layer_names_it_there() -> None:
    text = Text("Parapet, see detail 7", (-100.0, 1500.0), 30.0)
    assert found(texts=(text,)) == [("parapet", wall(1500.0))]


@pytest.mark.parametrize(
    ("text", "name"),
    [
        ("FASCIA BOARD", "fascia"),
        ("roof to higher wall", "roof-wall"),
        ("A-ROOF-WALL", "roof-wall"),
        ("Eaves", "eave"),
        ("window head", "head"),
        ("RIDGE_VENT", "ridge"),
    ],
)
def test_names_are_known_however_offices_write_them(text: str, name: str) -> None:
    assert [n for n, _ in found(texts=(Text(text, (100.0, 1000.0), 30.0),))] == [name]


def test_words_that_only_contain_a_name_name_nothing() -> None:
    texts = tuple(
        Text(t, (160.0, 900.0), 30.0) for t in ("bridge", "spoilers", "brake", "retrace")
    )
    assert found(texts=texts) == []


def test_what_is_too_far_off_names_nothing() -> None:
    assert found(texts=(Text("eave", (700.0, 900.0), 30.0),)) == []
    far = Stroke(((500.0, 900.0), (500.0, 1000.0)), "FASCIA")
    assert found(strokes=(far,)) == []


def test_a_layer_of_the_drawing_names_what_is_drawn_on_it() -> None:
    board = Stroke(((200.0, 1200.0), (220.0, 1200.0)), "A_FASCIA")
    assert found(strokes=(board,)) == [("fascia", wall(1200.0))]


def test_a_piece_is_named_by_its_product_unless_the_pen_follows_it() -> None:
    section = eave.section()
    products = {
        **section.products,
        "timber": replace(section.products["timber"], name="Fascia board"),
        "wall-sheet": replace(section.products["wall-sheet"], name="Sheet at the eave"),
    }
    names = [name for name, _ in found(products=products)]
    assert "fascia" in names
    assert "eave" not in names


def test_one_junction_is_named_once_and_two_apart_twice() -> None:
    near = [Text("sill", (150.0, y), 30.0) for y in (900.0, 950.0)]
    far = Text("sill", (150.0, 1900.0), 30.0)
    assert [name for name, _ in found(texts=(*near, far))] == ["sill", "sill"]


def test_a_hundred_thousand_strokes_are_looked_through_once() -> None:
    far = Stroke(((5000.0, 0.0), (5001.0, 0.0)), "A-GRID")
    board = Stroke(((200.0, 1200.0), (220.0, 1200.0)), "A-FASCIA")
    section = replace(eave.section(), texts=(), strokes=(far,) * 100_000 + (board,))
    assert [j.name for j in junctions(section, WATER)] == ["fascia"]
    assert _named_strokes(section.strokes) is _named_strokes(section.strokes)
    others = (board,)
    assert _named_strokes(others) == (("fascia", board.points),)


def test_a_section_named_after_its_junction_names_its_only_fold() -> None:
    fold = round(stretches(WATER, eave.section())[1].start)
    assert found(name="ROOF TO HIGHER WALL, 1:10") == [("roof-wall", fold)]
    air = unrolled(eave.AIR)  # folds twice: nothing says at which
    assert junctions(replace(eave.section(), name="Eave"), air) == ()


def test_they_stand_in_the_order_of_the_walk() -> None:
    texts = (Text("soffit", (150.0, 1900.0), 30.0), Text("footing", (150.0, 300.0), 30.0))
    assert [name for name, _ in found(texts=texts)] == ["footing", "soffit"]
    assert Junction("footing", 1.0) != Junction("footing", 2.0)
