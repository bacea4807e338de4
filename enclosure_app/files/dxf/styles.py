"""Resolves ByLayer, ByBlock and layer 0, and tells which layers are frozen or switched off."""

from dataclasses import dataclass, replace

from ezdxf.document import Drawing
from ezdxf.entities.layer import Layer

from enclosure_app.files.dxf.own_marks import is_own_layer
from enclosure_app.files.dxf.words import printable

_BY_BLOCK, _BY_LAYER = 0, 256
_WHITE = 7


@dataclass(frozen=True, slots=True)
class Style:
    """Resolved properties: the layer as its table spells it, linetype in capitals, colour number.

    `own` says of a layer that this program writes its marks on it.
    """

    layer: str
    linetype: str
    color: int
    off: bool = False
    frozen: bool = False
    own: bool = False


class Styles:
    """Looks styles up; `all_layers` takes every layer for visible."""

    def __init__(self, document: Drawing, *, all_layers: bool) -> None:
        self.all_layers = all_layers
        self._layers = {_fold(layer.dxf.name): _of(layer, all_layers) for layer in document.layers}
        self._tables: dict[Style | None, StyleTable] = {}

    def under(self, insert: Style | None) -> "StyleTable":
        """Return the table for content of an insert of this style (None for the layout itself)."""
        table = self._tables.get(insert)
        if table is None:
            table = self._tables[insert] = StyleTable(self, insert)
        return table

    def layer(self, name: str) -> Style:
        """Return what a layer says; one that the table lacks is visible and white."""
        style = self._layers.get(_fold(name))
        if style is None:
            style = self._layers[_fold(name)] = Style(
                printable(name), "CONTINUOUS", _WHITE, own=is_own_layer(name)
            )
        return style


class StyleTable(dict[tuple[str, str, int], Style]):
    """Styles by (layer, linetype, colour) as written in the entity, each resolved once."""

    def __init__(self, styles: Styles, insert: Style | None) -> None:
        super().__init__()
        self._styles = styles
        self._insert = insert

    def __missing__(self, key: tuple[str, str, int]) -> Style:
        """Resolve properties that are asked for the first time."""
        name, linetype, color = key
        insert = self._insert
        layer = insert if insert and name == "0" else None
        own = self._styles.layer(layer.layer if layer else name)
        line = linetype.upper()
        if line == "BYLAYER":
            line = own.linetype
        elif line == "BYBLOCK":
            line = insert.linetype if insert else "CONTINUOUS"
        number = abs(color)
        if number == _BY_LAYER:
            number = own.color
        elif number == _BY_BLOCK:
            number = insert.color if insert else _WHITE
        style = self[key] = replace(own, linetype=printable(line), color=number)
        return style


def _fold(name: str) -> str:
    return name.casefold()


def _of(layer: Layer, all_layers: bool) -> Style:
    written = layer.dxf.get("color", _WHITE)
    return Style(
        layer=printable(layer.dxf.name),
        linetype=printable(layer.dxf.get("linetype", "CONTINUOUS")).upper(),
        color=abs(written) or _WHITE,
        off=not all_layers and layer.is_off(),
        frozen=not all_layers and layer.is_frozen(),
        own=is_own_layer(layer.dxf.name),
    )
