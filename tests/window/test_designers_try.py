"""A designer traces a house of which a building model gave lines only: footing to ridge.

The house is made up here: walls of parallel lines 19 and 12 mm apart, a rafter whose tail passes
the wall, a roof deck that is drawn 150 mm above the wall's head and not joined to it.
"""

from math import dist
from pathlib import Path

import ezdxf
import pytest
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from enclosure_app.drawing.polylines import foot
from enclosure_app.model.place import Point, Points
from enclosure_app.window.main_window import MainWindow
from tests.window.designer import NEAR, Designer

FOOTING, HEAD = (0.0, -1400.0), (0.0, 2700.0)
EAVE, DECK, RIDGE = (-600.0, 2400.0), (0.0, 2850.0), (4000.0, 5850.0)
GUARD = (19.0, 400.0)  # where the wall above stands out over the foundation
MOST_CLICKS, MOST_SECONDS = 10, 80


def model_export(path: Path) -> None:
    """Write a section as building models export it: nothing but lines on one layer."""
    drawing = ezdxf.new("R2010")
    drawing.header["$INSUNITS"] = 4
    space = drawing.modelspace()

    def run(*points: tuple[float, float], close: bool = False) -> None:
        space.add_lwpolyline(points, close=close, dxfattribs={"layer": "X"})

    run((-200, -1600), (400, -1600), (400, -1400), (-200, -1400), close=True)
    run((0, -1400), (0, 400))
    run((200, -1400), (200, 400), (0, 400))
    for x in (-38, -19, 0, 12, 152, 165):  # cladding, battens, sheathing, studs, lining
        run((x, 400), (x, 2700))
    run((-38, 2700), (165, 2700))
    run((-38, 400), (0, 400))
    tail = ((-600, 2250), (4100, 5775), (4100, 5475), (-420, 2085))
    run(*tail, close=True)
    run((-600, 2400), (4000, 5850), (8600, 2400))
    run((-600, 2388), (4000, 5838), (8600, 2388))
    run((-600, 2400), (-600, 2388))
    drawing.saveas(path)


@pytest.fixture
def designer(window: MainWindow, qtbot: QtBot, tmp_path: Path) -> Designer:
    path = tmp_path / "house.dxf"
    model_export(path)
    window.filing.open(path)
    window.activateWindow()
    return Designer(window, qtbot)


def whole(at: Point) -> Point:
    return round(at[0]), round(at[1])


def runs(window: MainWindow) -> dict[str, list[Points]]:
    """Every traced sheet by its product, its places to the whole mm."""
    found: dict[str, list[Points]] = {}
    for piece in window.document.project.sections[0].pieces:
        points = tuple(whole(at) for at in piece.shape.points)
        found.setdefault(piece.product, []).append(points)
    return found


def test_water_and_air_from_footing_to_ridge(designer: Designer) -> None:
    window = designer.window
    designer.tool("outside")
    designer.click((-2000.0, 1500.0))
    designer.tool("inside")
    designer.click((2500.0, 1500.0))

    # water: a sheet outside of the sheathing, another on the roof deck
    designer.product("housewrap", "housewrap")
    designer.tool("trace")
    designer.press(Qt.Key.Key_D)
    designer.click(FOOTING)
    designer.click(HEAD)
    designer.product("underlay", "underlayment")
    designer.click(EAVE)
    designer.click(RIDGE)

    # air: one sheet that goes on from the wall over the rafter to the deck
    designer.product("self-adh", "self-adhered-sheet")
    designer.press(Qt.Key.Key_D)
    designer.press(Qt.Key.Key_D)
    designer.click(FOOTING)
    designer.click(HEAD)
    over_the_wall = foot((EAVE, RIDGE), designer.click(DECK)).at
    designer.click(RIDGE)
    designer.press(Qt.Key.Key_Return)

    assert runs(window) == {
        "housewrap": [((-3, -1400), (-3, 2700))],
        "underlayment": [((-602, 2402), (3998, 5852))],
        "self-adhered-sheet": [((0, -1400), (0, 2700), whole(over_the_wall), (4000, 5850))],
    }
    assert dist(over_the_wall, DECK) < 1.0 / NEAR, "a place on a line is met within a dot"
    assert designer.clicks <= MOST_CLICKS, designer
    assert designer.seconds <= MOST_SECONDS, designer
