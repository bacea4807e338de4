"""The tools by name, and which of them is in hand."""

from collections.abc import Callable

from PySide6.QtCore import QObject, Signal

from enclosure_app.model.edits import Side
from enclosure_app.window.canvas.canvas import Canvas
from enclosure_app.window.canvas.tools.beside import Beside
from enclosure_app.window.canvas.tools.cut_short import CutShort
from enclosure_app.window.canvas.tools.cutting import Cut, CutBack, Join, RunOn
from enclosure_app.window.canvas.tools.draw_board import DrawBoard
from enclosure_app.window.canvas.tools.draw_frame import DrawFrame
from enclosure_app.window.canvas.tools.draw_run import DrawRun
from enclosure_app.window.canvas.tools.edit_points import EditPoints
from enclosure_app.window.canvas.tools.lay_underlay import LayUnderlay
from enclosure_app.window.canvas.tools.mark_side import MarkSide
from enclosure_app.window.canvas.tools.measure import Measure
from enclosure_app.window.canvas.tools.place_part import PlacePart
from enclosure_app.window.canvas.tools.say_down import SayDown
from enclosure_app.window.canvas.tools.seal import Seal
from enclosure_app.window.canvas.tools.select import Select
from enclosure_app.window.canvas.tools.set_scale import SetScale
from enclosure_app.window.canvas.tools.tool import Tool
from enclosure_app.window.canvas.tools.trace import Trace
from enclosure_app.window.canvas.tools.transform import Move
from enclosure_app.window.canvas.tools.turning import Flip, Turn
from enclosure_app.window.canvas.workplace import Workplace

TOOLS: dict[str, Callable[[Workplace], Tool]] = {
    "select": Select,
    "points": EditPoints,
    "trace": Trace,
    "sheet": DrawRun,
    "area": DrawBoard,
    "beside": Beside,
    "move": Move,
    "copy": lambda place: Move(place, keeps=True),
    "turn": Turn,
    "flip": Flip,
    "cut_back": CutBack,
    "run_on": RunOn,
    "cut": Cut,
    "join": Join,
    "seal": Seal,
    "cut_short": CutShort,
    "down": SayDown,
    "part": PlacePart,
    "inside": lambda place: MarkSide(place, Side.INSIDE),
    "outside": lambda place: MarkSide(place, Side.OUTSIDE),
    "frame": DrawFrame,
    "measure": Measure,
    "scale": SetScale,
    "lay": LayUnderlay,
}


class Toolbox(QObject):
    """Gives the canvas a tool. `hinted`: what to do next; `taken`: the name of the tool in hand."""

    hinted = Signal(str)
    taken = Signal(str)

    def __init__(self, canvas: Canvas) -> None:
        super().__init__(canvas)
        self._canvas = canvas
        self.name = ""
        self._section = canvas.place.index
        canvas.place.picked_changed.connect(self._hint)
        canvas.place.turned.connect(self._turn)
        self.take("select")

    def take(self, name: str) -> None:
        """Take a tool in hand."""
        tool = TOOLS[name](self._canvas.place)
        tool.changed.connect(self._hint)
        tool.done.connect(self._back)
        tool.wanted.connect(self.take)
        before, self.name = self._canvas.tool, name
        self._canvas.take_tool(tool)
        before.deleteLater()
        self.taken.emit(name)
        self._hint()

    def _turn(self) -> None:
        """Give up what was begun in another section; showing a control alone ends nothing."""
        if self._section != self._canvas.place.index:
            self._section = self._canvas.place.index
            self._canvas.tool.put_away()

    def _back(self) -> None:
        """Go back to picking when a tool has done its work."""
        if self.name != "select":
            self.take("select")

    def _hint(self) -> None:
        self.hinted.emit(self._canvas.tool.hint)
