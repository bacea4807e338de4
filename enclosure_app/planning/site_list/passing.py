"""What passes through a layer or stands in it, to look at on site: pipes, and windows and doors."""

from collections.abc import Iterator

from enclosure_app.language import say
from enclosure_app.model.place import Point
from enclosure_app.model.product import Control, Kind
from enclosure_app.planning.site_list import questions as ask
from enclosure_app.planning.site_list.asking import of_product
from enclosure_app.planning.site_list.places import (
    Drawn,
    SitePlace,
    centre,
    lines_of,
    listed,
    said,
    title,
)

_TIGHT = (Control.WATER, Control.AIR, Control.VAPOUR)
_COLLARS = (Kind.COLLAR, Kind.GASKET)


def passing(section: Drawn) -> Iterator[SitePlace]:
    """Yield each pipe, duct or beam that meets a layer, with its collars and its insulation."""
    for name, (controls, others) in _met(section, Kind.PENETRATION).items():
        collars = [n for n in others if section.product(n).kind in _COLLARS]
        wool = [n for n in others if section.product(n).kind is Kind.INSULATION]
        sheets = [n for n in _sheets_behind(section, others, collars) if n not in wool]
        at = centre(_places(section, name))
        yield SitePlace(
            key=f"through:{name}",
            title=title(_through(section, name, sheets)),
            controls=controls,
            pieces=(name, *collars, *sheets, *wool),
            at=at,
            along=section.along(controls, at),
            questions=said(_of_pipe(section, controls, collars)),
            extent=lines_of(section, (name,)),
        )


def openings(section: Drawn) -> Iterator[SitePlace]:
    """Yield each window and door where a layer that is to be tight meets it."""
    for name, (controls, _) in _met(section, Kind.OPENING, heat=False).items():
        at = centre(_places(section, name))
        yield SitePlace(
            key=f"opening:{name}",
            title=title(say("{window}: its corners", window=section.words(name))),
            controls=controls,
            pieces=(name,),
            at=at,
            along=section.along(controls, at),
            questions=said(_of_opening(section, name, controls)),
            extent=lines_of(section, (name,)),
        )


def _of_pipe(
    section: Drawn, controls: tuple[Control, ...], collars: list[str]
) -> Iterator[ask.Question]:
    """Yield what to look at: what keeps it tight, then what keeps it warm."""
    if set(controls) & set(_TIGHT):
        yield ask.ALL_ROUND
        yield from [ask.COLLAR_UNDER] if collars and Control.WATER in controls else []
        yield ask.HELD_FIRM
    for name in collars:
        yield from of_product(section.product(name))
    if Control.HEAT in controls:
        yield ask.TIGHT_ROUND


def _of_opening(
    section: Drawn, name: str, controls: tuple[Control, ...]
) -> Iterator[ask.Question]:
    """Yield what to look at beside the cut; at a sill, what carries it and lets its water out."""
    yield ask.ROUND_CORNERS
    if section.upright and _is_met_from_below(section, name):
        yield ask.SET_FIRM
        yield from [ask.DRAINS] if Control.WATER in controls else []


def _is_met_from_below(section: Drawn, name: str) -> bool:
    (outline,) = lines_of(section, (name,))
    ys = [section.pose.settled(point)[1] for point in outline]
    middle = (min(ys) + max(ys)) / 2
    return any(section.pose.settled(at)[1] < middle for at in _places(section, name))


def _places(section: Drawn, name: str) -> list[Point]:
    """Return where something meets the layers that are to be tight, else the insulation."""
    met = [
        (layer.control, joint.at)
        for layer in section.walked
        for joint in layer.joints
        if name in (joint.a, joint.b)
    ]
    return [at for control, at in met if control in _TIGHT] or [at for _, at in met]


def _through(section: Drawn, name: str, sheets: list[str]) -> str:
    pipe = section.words(name)
    if not sheets:
        return pipe
    return say("{pipe} through {sheet}", pipe=pipe, sheet=listed(section, sheets))


def _met(
    section: Drawn, kind: Kind, *, heat: bool = True
) -> dict[str, tuple[tuple[Control, ...], list[str]]]:
    """Return each piece of a kind that meets others, with the controls and what it meets there."""
    found: dict[str, tuple[tuple[Control, ...], list[str]]] = {}
    for layer in section.walked:
        for joint in layer.joints if heat or layer.control in _TIGHT else ():
            for name, other in ((joint.a, joint.b), (joint.b, joint.a)):
                kinds = section.product(name).kind, section.product(other).kind
                if kinds[0] is kind and kinds[1] is not kind:
                    controls, others = found.get(name, ((), []))
                    known = tuple(dict.fromkeys((*controls, layer.control)))
                    found[name] = known, list(dict.fromkeys((*others, other)))
    return found


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


def _passes(section: Drawn, name: str) -> bool:
    return section.product(name).kind is Kind.PENETRATION
