"""What is brought to the window, dropped on it or named as it opens: drawings, and what lies under."""

from collections.abc import Sequence
from functools import partial
from pathlib import Path

from PySide6.QtGui import QDropEvent

from enclosure_app.files.underlay.reading import SUFFIXES, can_lie_under
from enclosure_app.window.commands import Commands
from enclosure_app.window.commands.fittings import Fittings
from enclosure_app.window.filing.filing import DRAWINGS, MAPS


class Bringing:
    """Opens what is brought: drawings, projects, layer maps; pictures and PDF files under them."""

    def __init__(self, fittings: Fittings, commands: Commands) -> None:
        self._fittings, self._commands = fittings, commands
        self._under_next: tuple[list[Path], list[Path]] = ([], [])  # the drawings, what is under

    def open(self, paths: Sequence[Path]) -> None:
        """Open all of it; what is not saved is asked about before another drawing takes its place."""
        under = [path for path in paths if can_lie_under(path)]
        others = [path for path in paths if path not in under]
        if others and not under and self._commands.revising.offer(others):
            return
        if others:
            self._under_next = others, under
            opens = partial(self._fittings.filing.open_all, others)
            self._commands.files.ask_to_save(opens)
        else:
            self._fittings.underlaying.open(under)

    def lay_under(self) -> None:
        """Put under the drawing that is open by now what was brought with it, and with no other."""
        (others, under), self._under_next = self._under_next, ([], [])
        if under and self._fittings.filing.source in others:
            self._fittings.underlaying.open(under)


def dropped(event: QDropEvent) -> list[Path]:
    """Return the files that a mouse drops, or would drop."""
    return [Path(url.toLocalFile()) for url in event.mimeData().urls() if url.isLocalFile()]


def can_be_dropped(event: QDropEvent) -> bool:
    """Whether any of what a mouse brings is of use."""
    kinds = (*DRAWINGS, *MAPS, *SUFFIXES)
    return any(path.suffix.casefold() in kinds for path in dropped(event))
