"""Delivers what one layout of a drawing shows and says."""

import math

from ezdxf.layouts.base import BaseLayout

from enclosure_app.errors import EnclosureError
from enclosure_app.files.dxf.document import Document
from enclosure_app.files.dxf.memory import kept_in_use
from enclosure_app.files.dxf.notes import heard
from enclosure_app.files.dxf.placement import Placement
from enclosure_app.files.dxf.reading import Content, Reading, Wanted
from enclosure_app.files.dxf.styles import Styles
from enclosure_app.files.dxf.words import listed, printable
from enclosure_app.language import say


def content(
    document: Document,
    *,
    layout: str = "Model",
    all_layers: bool = False,
    wanted: Wanted | None = None,
    sagitta: float = 0.1,
) -> Content:
    """Read one layout.

    Args:
        document: as opened.
        layout: ``Model`` or the name of a paper layout.
        all_layers: also read frozen and switched-off layers and invisible entities.
        wanted: asked for each path before anything is computed; what it refuses is only counted.
            Texts, dimensions and leaders are always read. The handle it sees is the entity's; if
            an entity comes to several paths, the later ones carry ``.2``, ``.3`` behind it.
        sagitta: how far a flattened curve may lie from the true one, in drawing units.

    Raises:
        EnclosureError: no such layout.
        ValueError: the sagitta is not a positive number.
    """
    if not (sagitta > 0 and math.isfinite(sagitta)):
        raise ValueError("The sagitta must be a positive number.")
    space = _layout(document, layout)
    reading = Reading(document, Styles(document.drawing, all_layers=all_layers), wanted)
    with heard() as remarks, kept_in_use():
        reading.walk(space, Placement(sagitta))
    reading.remarks = remarks.notes()
    if space.is_modelspace:
        reading.tally.paper.update(_paper(document))
    return reading.content()


def _layout(document: Document, name: str) -> BaseLayout:
    drawing = document.drawing
    if name.casefold() == "model":
        return drawing.modelspace()
    for space in drawing.layouts:
        if printable(space.name).casefold() == name.casefold():
            return space
    known_names = listed(["Model", *document.layouts])
    raise EnclosureError(
        say(
            "The drawing has no layout “{name}”: choose one of {names}.",
            name=name,
            names=known_names,
        )
    )


def _paper(document: Document) -> dict[str, int]:
    """Count what paper layouts hold besides their views of the model."""
    counts = {
        printable(space.name): sum(1 for item in space if item.DXFTYPE != "VIEWPORT")
        for space in document.drawing.layouts
        if not space.is_modelspace
    }
    return {name: count for name, count in counts.items() if count}


__all__ = ["Content", "content"]
