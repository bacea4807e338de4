"""What chosen layers can be, besides a product."""

from PySide6.QtGui import QAction
from pytestqt.qtbot import QtBot

from enclosure_app.files.maps.catalogue import load_products
from enclosure_app.files.maps.guesses import guess_of
from enclosure_app.model.layer import Role
from enclosure_app.window.lines.layer_menu import LayerMenu
from enclosure_app.window.lines.layers_told import LayerTold

PRODUCTS = load_products()


def told(name: str) -> LayerTold:
    return LayerTold(name, 1, 0, Role.LINEWORK, guess_of(name, PRODUCTS))


def filled(qtbot: QtBot, *names: str) -> LayerMenu:
    menu = LayerMenu()
    qtbot.addWidget(menu)
    menu.fill([told(name) for name in names], PRODUCTS)
    return menu


def action(menu: LayerMenu, text: str) -> QAction:
    return next(each for each in menu.actions() if each.text() == text)


def words(menu: LayerMenu) -> list[str]:
    return [each.text() for each in menu.actions() if each.text()]


def test_a_name_that_suggests_something_is_offered_first(qtbot: QtBot) -> None:
    assert words(filled(qtbot, "A-GLAZ"))[0] == "As named: Glazing"
    assert words(filled(qtbot, "A-GLAZ", "S-BEAM"))[0] == "As named"
    assert words(filled(qtbot, "X"))[0] == "Frame of a section"


def test_what_is_taken_and_pointed_at_is_told(qtbot: QtBot) -> None:
    menu = filled(qtbot, "A-GLAZ")
    with qtbot.waitSignal(menu.taken) as taken:
        action(menu, "Break lines").trigger()
    assert taken.args == [Role.BREAK]
    with qtbot.waitSignal(menu.pointed) as pointed:
        action(menu, "As named: Glazing").hover()
    assert pointed.args == [""]
    with qtbot.waitSignal(menu.picked):
        action(menu, "Pick all that is on it").trigger()


def test_filled_again_it_offers_only_what_is_new(qtbot: QtBot) -> None:
    menu = filled(qtbot, "A-GLAZ")
    menu.fill([told("X")], PRODUCTS)
    assert words(menu) == words(filled(qtbot, "X"))


def test_every_role_says_what_it_does(qtbot: QtBot) -> None:
    menu = filled(qtbot, "X")
    assert all(action(menu, text).toolTip() != text for text in words(menu)[:5])
