"""What the fittings of a window say to one another: who asks for something, and who does it."""

from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import QPoint

from enclosure_app.window.canvas.tools.tool import Pointer
from enclosure_app.window.commands import Commands
from enclosure_app.window.commands.fittings import Fittings
from enclosure_app.window.menus import context_menus
from enclosure_app.window.menus.actions import Actions
from enclosure_app.window.menus.context_menus import give_menu, made_menu_of_drawing
from enclosure_app.window.menus.ticks import Ticks
from enclosure_app.window.stage.showing import Showing
from enclosure_app.window.stage.views import Views

Do = Callable[[str], None]
"""Does an action by its name."""


def wire_lines(fittings: Fittings, commands: Commands) -> None:
    """Connect what is asked for in the panel of lines to what does it."""
    lines, editing, layers = fittings.lines, commands.editing, commands.layers
    lines.chosen.connect(lambda key: setattr(fittings.place, "product", key))
    lines.given.connect(editing.give_product)
    lines.picked.connect(editing.pick_layers)
    lines.sought.connect(editing.pick_drawn)
    lines.changed.connect(layers.give_drawn)
    lines.said.connect(layers.say_layers)
    lines.made.connect(layers.put_product)
    lines.removed.connect(layers.drop_product)
    layers.given.connect(lines.was_given)
    editing.given.connect(lines.was_given)


def wire_words(fittings: Fittings, views: Views, showing: Showing) -> None:
    """Connect whoever has something to say or to ask to the bar that says it."""
    messages = fittings.messages
    for refused in (
        fittings.checking.failed,
        fittings.filing.failed,
        fittings.place.refused,
        fittings.naming.refused,
        fittings.canvas.below.failed,
        fittings.underlaying.said,
    ):
        refused.connect(messages.say)
    for who in (fittings.keeping, fittings.noting, fittings.maps):
        who.asked.connect(messages.ask)
        who.said.connect(messages.say)
    for asked in (fittings.place.asked, fittings.units.asked):
        asked.connect(messages.ask)
    fittings.naming.closed.connect(views.canvas.setFocus)
    fittings.noting.shown.connect(showing.go_to)
    fittings.filing.asked_units.connect(fittings.units.ask)
    fittings.filing.map_dropped.connect(fittings.maps.use)


def wire_actions(fittings: Fittings, views: Views, do: Do) -> None:
    """Connect what is offered in the window to the actions that it is."""
    views.underlay.wanted.connect(do)
    views.steps.taken.connect(do)
    views.start.wanted.connect(do)
    views.start.sample.connect(fittings.filing.open_sample)
    views.start.recent.connect(lambda path: _open_lately(fittings, views, Path(path)))
    views.sections.tabBarDoubleClicked.connect(lambda _: do("name_section"))


def _open_lately(fittings: Fittings, views: Views, path: Path) -> None:
    """Open a file of the first page; one that is there no more is there no more."""
    fittings.filing.open_lately(path)
    views.start.show_recent(fittings.settings.recent)


def wire_hand(fittings: Fittings, views: Views, showing: Showing, ticks: Ticks) -> None:
    """Connect the tool in hand and the control in view to what tells of them."""
    fittings.toolbox.hinted.connect(views.hint.tell)
    fittings.toolbox.taken.connect(ticks.show_tool)
    showing.shown.connect(ticks.show_control)
    fittings.walking.ended.connect(views.canvas.setFocus)


def give_menus(fittings: Fittings, views: Views, actions: Actions) -> None:
    """Give drawing, lists, tabs and ribbon their menus on a right click."""

    def show_menu(at: QPoint, pointer: Pointer) -> None:
        made_menu_of_drawing(fittings.window, fittings.place, actions, pointer).popup(at)

    views.canvas.asked_menu.connect(show_menu)
    give_menu(views.lines.list.list, context_menus.PRODUCTS, actions)
    give_menu(views.findings.list, context_menus.FINDINGS, actions)
    give_menu(views.sections, context_menus.SECTIONS, actions)
    give_menu(views.ribbon.view, context_menus.RIBBON, actions)
