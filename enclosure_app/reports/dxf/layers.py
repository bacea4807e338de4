"""The layers that marks are written on, each with its colour and its line.

A control has its hue and its pattern, as on the sheet; a layer is a plain number of the palette for
programs that know no more, and the theme's own colour from R2004 on.
"""

from dataclasses import dataclass

from enclosure_app.drawing.theme import Theme
from enclosure_app.files.dxf.own_marks import PREFIX
from enclosure_app.files.dxf.records import R2000, R2004
from enclosure_app.model.product import Control
from enclosure_app.reports.dxf.tags import Tags

FLAGS, WORDS = f"{PREFIX}FLAGS", f"{PREFIX}WORDS"
_BLACK_OR_WHITE = 7
_NUMBERS = {Control.WATER: 5, Control.AIR: 30, Control.VAPOUR: 92, Control.HEAT: 40}
"""The number of the palette nearest to the theme's hue (by eye from the palette's chart)."""


@dataclass(frozen=True, slots=True)
class MarkLayer:
    """One layer: its number in the palette, its own `colour` ("" for none), its line.

    `dashes` are mm on paper, drawn and left out in turn; `weight` is mm.
    """

    name: str
    number: int
    colour: str
    weight: float
    dashes: tuple[float, ...] = ()

    @property
    def line_type(self) -> str:
        """The name of its line type."""
        return self.name if self.dashes else "CONTINUOUS"

    def tags(self, version: str, like_0: Tags) -> Tags:
        """Return the groups of its entry, with `like_0` from layer 0 where the version has it."""
        tags: Tags = [(70, 0), (62, self.number)]
        if version >= R2004 and self.colour:
            tags.append((420, int(self.colour.removeprefix("#"), 16)))
        tags.append((6, self.line_type))
        if version >= R2000:
            tags += [(370, round(self.weight * 100)), *like_0]
        return tags


def layer_of(control: Control | None) -> str:
    """Return the layer of what belongs to a control."""
    return f"{PREFIX}{control.value.upper()}" if control else FLAGS


def mark_layers(theme: Theme) -> tuple[MarkLayer, ...]:
    """Return all layers that marks are written on, whether a drawing needs them or not."""
    pens = {control: theme.control(control) for control in Control}
    controls = [
        MarkLayer(layer_of(c), _NUMBERS[c], pen.colour, pen.width, pen.dash)
        for c, pen in pens.items()
    ]
    dark = theme.pen("leader").width
    return (
        *controls,
        MarkLayer(FLAGS, _BLACK_OR_WHITE, "", dark),
        MarkLayer(WORDS, _BLACK_OR_WHITE, "", dark),
    )


def line_type_tags(layer: MarkLayer, unit: float, modern: bool) -> Tags:
    """Return the groups of a layer's line type; `unit` is the length of a mm on paper."""
    lengths = [length * unit * (-1 if k % 2 else 1) for k, length in enumerate(layer.dashes)]
    total = sum(map(abs, lengths))
    tags: Tags = [(70, 0), (3, "Continuity check"), (72, 65), (73, len(lengths)), (40, total)]
    for length in lengths:
        tags.append((49, length))
        if modern:
            tags.append((74, 0))
    return tags
