"""What every action of the menus does, by the name it has in the table of actions.

Each menu's doings have a room of their own; an action is done by the method of its name, and each
tool and each control by the row that names it.
"""

from collections.abc import Callable
from functools import partial

from enclosure_app.model.product import Control
from enclosure_app.window.commands.answering import AnswerCommands
from enclosure_app.window.commands.editing import EditCommands
from enclosure_app.window.commands.files import FileCommands
from enclosure_app.window.commands.finding import FindingCommands
from enclosure_app.window.commands.fittings import Fittings
from enclosure_app.window.commands.handing_over import HandOverCommands
from enclosure_app.window.commands.layers import LayerCommands
from enclosure_app.window.commands.looking import LookCommands
from enclosure_app.window.commands.merging import MergeCommands
from enclosure_app.window.commands.open_questions import OpenQuestionCommands
from enclosure_app.window.commands.preferring import PreferenceCommands
from enclosure_app.window.commands.revising import RevisionCommands
from enclosure_app.window.commands.sections import SectionCommands
from enclosure_app.window.commands.sketching import SketchCommands
from enclosure_app.window.menus.action_table import TABLE

Doing = Callable[..., object]


class Commands:
    """The doings of one window."""

    def __init__(self, fittings: Fittings) -> None:
        self.files = FileCommands(fittings)
        self.answering = AnswerCommands(fittings)
        self.merging = MergeCommands(fittings)
        self.open_questions = OpenQuestionCommands(fittings)
        self.revising = RevisionCommands(fittings)
        self.handing_over = HandOverCommands(fittings)
        self.editing = EditCommands(fittings)
        self.sketching = SketchCommands(fittings)
        self.sections = SectionCommands(fittings)
        self.looking = LookCommands(fittings)
        self.finding = FindingCommands(fittings)
        self.layers = LayerCommands(fittings)
        self.preferring = PreferenceCommands(fittings)
        self._made = _choices(fittings)

    def __getitem__(self, name: str) -> Doing:
        """Return what the action called `name` does."""
        if name in self._made:
            return self._made[name]
        rooms = (
            self.files,
            self.answering,
            self.merging,
            self.open_questions,
            self.revising,
            self.handing_over,
            self.editing,
            self.sketching,
            self.sections,
            self.looking,
            self.finding,
            self.layers,
            self.preferring,
        )
        does: Doing = next(getattr(room, name) for room in rooms if hasattr(room, name))
        return does


def _choices(fittings: Fittings) -> dict[str, Doing]:
    """Return what takes each tool in hand, and what shows each control alone."""
    tools = {
        row.name: partial(fittings.toolbox.take, row.name.removeprefix("tool_"))
        for row in TABLE
        if row.choice == "tool"
    }
    only = {f"only_{each.value}": partial(fittings.place.show_only, each) for each in Control}
    return {**tools, **only, "only_all": partial(fittings.place.show_only, None)}
