"""The ink of what a hand is doing."""

from enclosure_app.drawing.theme import load_theme
from enclosure_app.model.product import Control
from enclosure_app.resources import resource
from enclosure_app.window.canvas.ink.ink import INK, pen, wash


def test_it_is_apart_from_every_controls_hue_by_day_and_by_night() -> None:
    for theme in (load_theme(), load_theme(resource("theme-dark.toml"))):
        assert INK.name() not in {theme.control(each).colour for each in Control}


def test_it_can_be_thin_and_pale() -> None:
    assert pen(1.5).widthF() == 1.5
    assert (wash(40).hue(), wash(40).alpha()) == (INK.hue(), 40)
