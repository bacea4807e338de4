"""The net of drawn lines that is traced in: made once for a section, in a thread where it is large."""

from threading import Thread

from PySide6.QtCore import QObject, Signal

from enclosure_app.files.dxf.memory import kept_in_use, set_aside
from enclosure_app.model.section import Piece, Section, Stroke
from enclosure_app.planning.tracing.tracing import LineworkGraph, followed, graph_of

_SMALL = 1500  # points of lines up to which the net is made at once
_KEPT = 4

_Key = tuple[tuple[Stroke, ...], tuple[Piece, ...]]
_made: list[tuple[_Key, LineworkGraph]] = []


class Net(QObject):
    """Gives the net of a section. `ready`: one that was not there yet is there now."""

    ready = Signal()

    def __init__(self, parent: QObject) -> None:
        super().__init__(parent)
        self._making: _Key | None = None
        self.ready.connect(self._done)

    def of(self, section: Section) -> LineworkGraph | None:
        """Return the net of a section, None while it is being made."""
        key = (section.strokes, followed(section))
        there = _found(key)
        if there is None and _size(section) <= _SMALL:
            there = _keep(key, section)
        elif there is None and self._making is None:
            self._making = key
            Thread(target=self._make, args=(key, section), name="net", daemon=True).start()
        return there

    def _make(self, key: _Key, section: Section) -> None:
        with kept_in_use():
            _keep(key, section)
        set_aside()
        self.ready.emit()

    def _done(self) -> None:
        self._making = None


def _keep(key: _Key, section: Section) -> LineworkGraph:
    made = graph_of(section)
    _made.append((key, made))
    del _made[:-_KEPT]
    return made


def _found(key: _Key) -> LineworkGraph | None:
    """Return the net of just these lines; the very same objects, since comparing them takes long."""
    for (strokes, pieces), made in reversed(_made):
        same = len(pieces) == len(key[1]) and all(map(_is, pieces, key[1]))
        if strokes is key[0] and same:
            return made
    return None


def _is(one: Piece, other: Piece) -> bool:
    return one is other


def _size(section: Section) -> int:
    return sum(len(stroke.points) for stroke in section.strokes) + 5 * len(section.pieces)
