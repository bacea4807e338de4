"""Metal to look at on site, and what passes through a layer."""

from collections.abc import Iterator

from enclosure_app.language import say
from enclosure_app.model.product import Control, Kind
from enclosure_app.network.details.drainage import METAL
from enclosure_app.planning.site_list import questions as ask
from enclosure_app.planning.site_list.places import (
    Drawn,
    SitePlace,
    centre,
    lines_of,
    listed,
    middle,
    said,
    title,
)

_TIGHT = (Control.WATER, Control.AIR, Control.VAPOUR)


def metal(section: Drawn) -> Iterator[SitePlace]:
    """Yield each flashing, edge metal and sill pan of the water layer, on the trace or beside it."""
    for piece in section.result.section.layer(Control.WATER):
        product = section.product(piece.name)
        if product.kind in METAL and section.upright:
            lines = lines_of(section, (piece.name,))
            at = middle(lines[0])
            yield SitePlace(
                key=f"metal:{piece.name}",
                title=title(section.words(piece.name)),
                controls=(Control.WATER,),
                pieces=(piece.name,),
                at=at,
                along=section.along((Control.WATER,), at),
                questions=said(ask.of_product(product)),
                extent=lines,
            )


def passing(section: Drawn) -> Iterator[SitePlace]:
    """Yield each pipe, duct or beam that meets a layer other than heat, with its collars."""
    for name, (controls, others) in _met(section).items():
        collars = [n for n in others if section.product(n).kind in (Kind.COLLAR, Kind.GASKET)]
        sheets = _sheets_behind(section, others, collars)
        lines = lines_of(section, (name,))
        places = [j.at for layer in section.walked for j in layer.joints if name in (j.a, j.b)]
        at = centre(places)
        asked = [ask.ALL_ROUND, *([ask.COLLAR_UNDER] if collars else []), ask.HELD_FIRM]
        yield SitePlace(
            key=f"through:{name}",
            title=title(_through(section, name, sheets)),
            controls=controls,
            pieces=(name, *collars, *sheets),
            at=at,
            along=section.along(controls, at),
            questions=said([*asked, *_sticking(section, collars)]),
            extent=lines,
        )


def _through(section: Drawn, name: str, sheets: list[str]) -> str:
    pipe = section.words(name)
    return (
        say("{pipe} through {sheet}", pipe=pipe, sheet=listed(section, sheets)) if sheets else pipe
    )


def _sticking(section: Drawn, collars: list[str]) -> list[ask.Question]:
    """Return what to look at about collars that are stuck on."""
    return [question for name in collars for question in ask.of_product(section.product(name))]


def _met(section: Drawn) -> dict[str, tuple[tuple[Control, ...], list[str]]]:
    """Return each penetration that meets a layer, with the controls and what it meets there."""
    found: dict[str, tuple[tuple[Control, ...], list[str]]] = {}
    for layer in section.walked:
        for joint in layer.joints:
            for name, other in ((joint.a, joint.b), (joint.b, joint.a)):
                if _passes(section, name) and layer.control in _TIGHT:
                    controls, others = found.get(name, ((), []))
                    known = tuple(dict.fromkeys((*controls, layer.control)))
                    found[name] = known, list(dict.fromkeys((*others, other)))
    return found


def _passes(section: Drawn, name: str) -> bool:
    return section.product(name).kind is Kind.PENETRATION


def _sheets_behind(section: Drawn, others: list[str], collars: list[str]) -> list[str]:
    """Return the sheets that are held: those met, and those that the collars lie on."""
    joined = [
        joint.b if joint.a in collars else joint.a
        for layer in section.walked
        if layer.control in _TIGHT
        for joint in layer.joints
        if (joint.a in collars) is not (joint.b in collars)
    ]
    names = [n for n in (*others, *joined) if n not in collars and not _passes(section, n)]
    return list(dict.fromkeys(names))
