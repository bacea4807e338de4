"""Joints to look at on site: laps of sheets, tapes and beads, and what only meets."""

from collections.abc import Iterator
from dataclasses import replace
from itertools import combinations
from math import dist

from enclosure_app.language import say
from enclosure_app.model.limits import Limit
from enclosure_app.model.product import Bond, Control, Kind
from enclosure_app.model.report import Joint, JointKind, LayerResult
from enclosure_app.network.details.drainage import METAL, STEEP_ROOF, required_lap
from enclosure_app.network.joints.joints import joined_in_works
from enclosure_app.network.joints.laps import Lap, Sheet
from enclosure_app.planning.site_list import questions as ask
from enclosure_app.planning.site_list.asking import of_product
from enclosure_app.planning.site_list.places import (
    Drawn,
    SitePlace,
    centre,
    is_bead,
    joints_walked,
    lines_of,
    listed,
    said,
    title,
)

_OWN_PLACES = frozenset(
    {Kind.PENETRATION, Kind.COLLAR}
)  # looked at where something passes through


def laps(section: Drawn) -> Iterator[SitePlace]:
    """Yield each lap of two sheets or metals along the walk of each layer.

    A sheet that lies over a metal and over the sheet behind it is pressed down once: how it holds
    is asked at the first of two laps of one outer sheet at one place.
    """
    held: dict[str, list[Joint]] = {}
    bridged = _bridged(section)
    for layer in section.walked:
        for joint in _laps_beside(section, layer):
            if _has_own_place(section, joint):
                continue
            asked, known = _of_lap(section, layer.control, joint), held.setdefault(joint.over, [])
            if not any(_is_same_strip(joint, other) for other in known):
                known.append(joint)
                asked += _holding(section, joint)
            if joint.sealed and not _seals_itself(section, joint) and _pair(joint) not in bridged:
                asked.append(ask.SEALED_AS_DRAWN)
            yield _lap(section, layer.control, joint, asked)


def _is_same_strip(joint: Joint, other: Joint) -> bool:
    """Whether one strip of one outer sheet makes two laps, with two sheets below it."""
    beside = dist(joint.at, other.at) <= max(joint.length, other.length) / 2
    return joint.over != "" and joint.over == other.over and beside


def _laps_beside(section: Drawn, layer: LayerResult) -> list[Joint]:
    """Return the laps that the pen goes through, and those of metal with a sheet that it follows."""
    walked, followed = joints_walked(layer), set(layer.pieces)
    metal = [
        joint
        for joint in layer.joints
        if {joint.a, joint.b} & followed and _is_metal_on_sheet(section, joint)
    ]
    return [j for j in dict.fromkeys((*walked, *metal)) if j.kind is JointKind.LAP]


def _is_metal_on_sheet(section: Drawn, joint: Joint) -> bool:
    """Whether metal laps with what sheds water beside it; on boards it is only nailed."""
    products = [section.product(name) for name in (joint.a, joint.b)]
    metal = [each.kind in METAL for each in products]
    sheet = [each.bond is not Bond.RIGID or each.kind in METAL for each in products]
    return any(metal) and all(sheet)


def _lap(section: Drawn, control: Control, joint: Joint, asked: list[ask.Question]) -> SitePlace:
    over, under = _outer_first(joint)
    words = dict(zip(("over", "under"), _words(section, joint), strict=True))
    return SitePlace(
        key=f"lap:{section.parts((joint.a, joint.b), joint.at)}",
        title=title(_called(section, joint)),
        controls=(control,),
        pieces=(over, under),
        at=joint.at,
        along=section.along((control,), joint.at),
        questions=said(asked, **words),
        extent=(joint.run_a, joint.run_b) if joint.run_a else (),
    )


def _outer_first(joint: Joint) -> tuple[str, str]:
    """Return the two pieces of a lap, the outer one first where it is known."""
    return (joint.b, joint.a) if joint.over == joint.b else (joint.a, joint.b)


def _called(section: Drawn, joint: Joint) -> str:
    """Return what a lap is called; which sheet is over is only said where that is as it should be."""
    over, under = _words(section, joint)
    if not over or joint.upper not in ("", joint.over):
        return section.named.both(joint.a, joint.b)
    return say("{over} over {under}", over=over, under=under)


def _words(section: Drawn, joint: Joint) -> tuple[str, str]:
    """Return the words for the outer and the inner sheet, "" where no words tell them apart."""
    outer, inner = _outer_first(joint)
    first, second = section.words(outer), section.words(inner)
    if first == second and joint.upper == outer:
        return section.named.upper_and_lower(outer, inner)
    if first == second and joint.upper == inner:
        return section.named.upper_and_lower(inner, outer)[::-1]
    return (first, second) if joint.over and first != second else ("", "")


def _of_lap(section: Drawn, control: Control, joint: Joint) -> list[ask.Question]:
    """Return what to look at of the order and the width of a lap."""
    over, _ = _words(section, joint)
    asked = [_width(section, joint)] if joint.length > 0 else []
    if over and joint.over and control is Control.WATER and section.upright:
        asked.insert(0, _order(section, joint))
    return asked


def _seals_itself(section: Drawn, joint: Joint) -> bool:
    return any(section.product(name).bond.seals for name in (joint.a, joint.b))


def _pair(joint: Joint) -> frozenset[str]:
    return frozenset((joint.a, joint.b))


def _bridged(section: Drawn) -> set[frozenset[str]]:
    """Return the pairs of pieces that a tape or a bead joins: it is looked at in its own place."""
    joined: dict[str, set[str]] = {}
    for layer in section.walked:
        for joint in joints_walked(layer):
            for bead, held in ((joint.a, joint.b), (joint.b, joint.a)):
                if is_bead(section.product(bead)):
                    joined.setdefault(bead, set()).add(held)
    return {frozenset(pair) for held in joined.values() for pair in combinations(held, 2)}


def _order(section: Drawn, joint: Joint) -> ask.Question:
    """Return what to look at about the order: a drawing that has it wrong is never to be followed."""
    if joint.upper == joint.over:
        return ask.LAP_ORDER
    if joint.upper and not _is_along_a_rake(section, joint):
        return ask.LAP_AGAINST
    return ask.LAP_AS_DRAWN


def _is_along_a_rake(section: Drawn, joint: Joint) -> bool:
    """Whether an edge metal lies over a roof's sheet where the section shows the roof level."""
    outer, inner = (section.product(name).kind for name in _outer_first(joint))
    level = section.limits.tolerances.level
    runs = [run for run in (joint.run_a, joint.run_b) if run]
    return (
        outer is Kind.DRIP_EDGE
        and inner in STEEP_ROOF
        and all(section.slope(run) < level for run in runs)
    )


def _holding(section: Drawn, joint: Joint) -> tuple[ask.Question, ...]:
    """Return what to look at about what holds a lap: its outer sheet, else whichever is bonded.

    Metal has a place of its own.
    """
    names = (joint.over,) if joint.over else (joint.a, joint.b)
    products = [section.product(name) for name in names]
    asked = (of_product(each) for each in products if each.kind not in METAL)
    return tuple(question for several in asked for question in several)


def _width(section: Drawn, joint: Joint) -> ask.Question:
    required = _required(section, joint)
    least = required.value if required else None
    kinds = {section.product(name).kind for name in (joint.a, joint.b)}
    asked = ask.METAL_WIDTH if kinds & METAL else ask.LAP_WIDTH
    source = required.basis if required else asked.source
    return replace(asked, drawn=joint.length, least=least, source=source)


def _required(section: Drawn, joint: Joint) -> Limit | None:
    """Return the least length of a lap by the rule book, None where it is no lap of two sheets."""
    if not joint.run_a or not joint.run_b:
        return None
    over_a = joint.over != joint.b
    outer, inner = (joint.a, joint.b) if over_a else (joint.b, joint.a)
    run = joint.run_a if over_a else joint.run_b
    over, under = (Sheet(name, run, 0.0, 0.0) for name in (outer, inner))
    lap = Lap(0, over, under, joint.length, 0.0, section.slope(run), None)
    return required_lap(section.named, lap, section.limits)


def beads(section: Drawn) -> Iterator[SitePlace]:
    """Yield each tape, bead and gasket that joins something along the walk of a layer."""
    for layer in section.walked:
        joined: dict[str, list[Joint]] = {}
        for joint in joints_walked(layer):
            for name in (joint.a, joint.b):
                product = section.product(name)
                if is_bead(product) and product.kind not in _OWN_PLACES:
                    joined.setdefault(name, []).append(joint)
        for name, joints in joined.items():
            yield _bead(section, layer.control, name, joints)


def _bead(section: Drawn, control: Control, name: str, joints: list[Joint]) -> SitePlace:
    others = list(dict.fromkeys(j.b if j.a == name else j.a for j in joints))
    held = [other for other in others if not is_bead(section.product(other))] or others
    product, words = section.product(name), section.words(name)
    told = say("{tape} on {others}", tape=words, others=listed(section, held))
    if product.bond is not Bond.TAPE:
        told = say("{bead} at {others}", bead=words, others=listed(section, held))
    at = centre([joint.at for joint in joints])
    return SitePlace(
        key=f"bead:{name}",
        title=title(told),
        controls=(control,),
        pieces=(name, *others),
        at=at,
        along=section.along((control,), at),
        questions=said(of_product(product)),
        extent=lines_of(section, (name,)),
    )


def butts(section: Drawn) -> Iterator[SitePlace]:
    """Yield where two pieces meet without a lap and without a bead, along the walk of a layer."""
    for layer in section.walked:
        for joint in joints_walked(layer):
            meets = joint.kind in (JointKind.BUTT, JointKind.TEE)
            held = _has_own_place(section, joint)
            if meets and not _is_whole(section, joint) and not held:
                yield _butt(section, layer.control, joint)


def _butt(section: Drawn, control: Control, joint: Joint) -> SitePlace:
    asked = [ask.TIGHT_BUTT]
    if control is not Control.HEAT:
        asked = _filled(section, joint)
        asked += [ask.SEALED_AS_DRAWN] if joint.sealed else []
        asked = asked or [ask.MEETS_TIGHT]
    both = section.named.both(joint.a, joint.b)
    return SitePlace(
        key=f"meet:{section.parts((joint.a, joint.b), joint.at)}",
        title=title(say("{both} meet", both=both)),
        controls=(control,),
        pieces=(joint.a, joint.b),
        at=joint.at,
        along=section.along((control,), joint.at),
        questions=said(asked),
        extent=((joint.at, joint.at),),
    )


def _filled(section: Drawn, joint: Joint) -> list[ask.Question]:
    """Return what to look at of a coat or a foam that one of the two is made of."""
    products = [section.product(name) for name in (joint.a, joint.b)]
    asked = [q for each in products if each.bond is Bond.FLUID for q in of_product(each)]
    if any(each.kind is Kind.INSULATION and each.bond is Bond.ADHERED for each in products):
        asked.append(ask.FOAM_FULL)
        asked += [ask.FOAM_BOWED] if any(each.kind is Kind.OPENING for each in products) else []
    return asked


def _has_own_place(section: Drawn, joint: Joint) -> bool:
    """Whether a joint is looked at with its tape or bead, or with what passes through."""
    products = (section.product(joint.a), section.product(joint.b))
    return any(each.kind in _OWN_PLACES or is_bead(each) for each in products)


def _is_whole(section: Drawn, joint: Joint) -> bool:
    return joined_in_works(section.product(joint.a), section.product(joint.b))
