"""Ready-made parts to start from: one section each, sound as it is placed.

A part is drawn from a few sizes (a pitch, an overhang, the wall's make-up) by code of its own. It
is a start and no design: codes, climate and the products' makers decide what is built.
"""

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from typing import Any

from enclosure_app.errors import EnclosureError
from enclosure_app.language import say
from enclosure_app.model.product import Product
from enclosure_app.model.section import Section
from enclosure_app.planning.parts import (
    eave,
    eave_flush,
    parapet,
    rake,
    ridge,
    roof_wall,
    wall_base,
    window_head,
    window_sill,
)
from enclosure_app.planning.parts.assembly import Sketch
from enclosure_app.planning.parts.parameters import Parameters, Size, sizes_of

__all__ = ["PARTS", "Parameters", "Part", "Size", "part", "sizes_of"]


@dataclass(frozen=True, slots=True)
class Part:
    """One ready-made part: its name, its title in a menu, its sizes, and how it is drawn."""

    name: str
    title: str
    parameters: type[Parameters]
    draw: Callable[[Any], Sketch]

    def section(self, sizes: Parameters, products: Mapping[str, Product]) -> Section:
        """Return the part as a section of products of the catalogue, mm, y up."""
        return self.draw(sizes).section(products)


PARTS = (
    Part("wall-base", "Wall base", wall_base.Parameters, wall_base.draw),
    Part("window-sill", "Window sill", window_sill.Parameters, window_sill.draw),
    Part("window-head", "Window head", window_head.Parameters, window_head.draw),
    Part("eave", "Eave", eave.Parameters, eave.draw),
    Part("eave-flush", "Flush eave", eave_flush.Parameters, eave_flush.draw),
    Part("rake", "Rake", rake.Parameters, rake.draw),
    Part("ridge", "Ridge", ridge.Parameters, ridge.draw),
    Part("parapet", "Parapet", parapet.Parameters, parapet.draw),
    Part("roof-wall", "Roof to higher wall", roof_wall.Parameters, roof_wall.draw),
)


def part(name: str, products: Mapping[str, Product], **sizes: float) -> Section:
    """Return the part called `name`; sizes that are not given are the usual ones.

    Raises:
        EnclosureError: there is no such part, it has no such size, or a size is out of its range.
    """
    found = next((each for each in PARTS if each.name == name), None)
    if found is None:
        names = ", ".join(each.name for each in PARTS)
        raise EnclosureError(
            say(
                "There is no ready-made part {name!r}: choose one of {names}.",
                name=name,
                names=names,
            )
        )
    known = [size.name for size in sizes_of(found.parameters)]
    strange = sorted(set(sizes) - set(known))
    if strange:
        raise EnclosureError(
            say(
                "{part} has no size {size!r}: it has {sizes}.",
                part=say(found.title),
                size=strange[0],
                sizes=", ".join(known),
            )
        )
    return found.section(found.parameters(**sizes), products)
