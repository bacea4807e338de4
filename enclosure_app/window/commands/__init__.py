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
from enclosure_app.window.commands.handing_over import HandOverCommands
from enclosure_app.window.commands.layers import LayerCommands
from enclosure_app.window.commands.looking import LookCommands
from enclosure_app.window.commands.merging import MergeCommands
from enclosure_app.window.commands.open_questions import OpenQuestionCommands
from enclosure_app.window.commands.parts import Parts
from enclosure_app.window.commands.preferring import PreferenceCommands
from enclosure_app.window.commands.revising import RevisionCommands
from enclosure_app.window.commands.sections import SectionCommands
from enclosure_app.window.commands.sketching import SketchCommands
from enclosure_app.window.menus.action_table import TABLE

Doing = Callable[..., object]


class Commands:
    """The doings of one window."""

    def __init__(self, parts: Parts) -> None:
        self.files = FileCommands(parts)
        self.answering = AnswerCommands(parts)
        self.merging = MergeCommands(parts)
        self.open_questions = OpenQuestionCommands(parts)
        self.revising = RevisionCommands(parts)
        self.handing_over = HandOverCommands(parts)
        self.editing = EditCommands(parts)
        self.sketching = SketchCommands(parts)
        self.sections = SectionCommands(parts)
        self.looking = LookCommands(parts)
        self.finding = FindingCommands(parts)
        self.layers = LayerCommands(parts)
        self.preferring = PreferenceCommands(parts)
        self._made = _choices(parts)

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


def _choices(parts: Parts) -> dict[str, Doing]:
    """Return what takes each tool in hand, and what shows each control alone."""
    tools = {
        row.name: partial(parts.toolbox.take, row.name.removeprefix("tool_"))
        for row in TABLE
        if row.choice == "tool"
    }
    only = {f"only_{each.value}": partial(parts.place.show_only, each) for each in Control}
    return {**tools, **only, "only_all": partial(parts.place.show_only, None)}
