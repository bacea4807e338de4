"""Joints to look at on site: laps of sheets, tapes and beads, and what only meets."""

from collections.abc import Iterator
from dataclasses import replace

from enclosure_app.language import say
from enclosure_app.model.limits import Limit
from enclosure_app.model.product import Bond, Control, Kind
from enclosure_app.model.report import Joint, JointKind
from enclosure_app.network.details.drainage import METAL, required_lap
from enclosure_app.network.joints.joints import joined_in_works
from enclosure_app.network.joints.laps import Lap, Sheet
from enclosure_app.planning.site_list import questions as ask
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
    """Yield each lap of two sheets or metals along the walk of each layer."""
    for layer in section.walked:
        for joint in joints_walked(layer):
            if joint.kind is JointKind.LAP and not _has_own_place(section, layer.control, joint):
                yield _lap(section, layer.control, joint)


def _lap(section: Drawn, control: Control, joint: Joint) -> SitePlace:
    over, under = _outer_first(joint)
    return SitePlace(
        key=f"lap:{section.parts((joint.a, joint.b), joint.at)}",
        title=title(_called(section, joint)),
        controls=(control,),
        pieces=(over, under),
        at=joint.at,
        along=section.along((control,), joint.at),
        questions=_of_lap(section, control, joint),
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


def _of_lap(section: Drawn, control: Control, joint: Joint) -> tuple[ask.Question, ...]:
    """Return what to look at: the order and the width of the lap, then how its sheets hold."""
    over, under = _words(section, joint)
    asked = [_width(section, joint)] if joint.length > 0 else []
    if over and joint.over and control is Control.WATER and section.upright:
        asked.insert(0, _order(joint))
    asked += _holding(section, joint)
    products = section.product(joint.a), section.product(joint.b)
    if joint.sealed and not any(product.bond.seals for product in products):
        asked.append(ask.SEALED_AS_DRAWN)
    return said(asked, over=over, under=under)


def _order(joint: Joint) -> ask.Question:
    """Return what to look at about the order: a drawing that has it wrong is never to be followed."""
    if joint.upper == joint.over:
        return ask.LAP_ORDER
    return ask.LAP_AGAINST if joint.upper else ask.LAP_AS_DRAWN


def _holding(section: Drawn, joint: Joint) -> tuple[ask.Question, ...]:
    """Return what to look at about what holds a lap: its outer sheet, else whichever is bonded.

    Metal has a place of its own.
    """
    names = (joint.over,) if joint.over else (joint.a, joint.b)
    products = [section.product(name) for name in names]
    asked = (ask.of_product(each) for each in products if each.kind not in METAL)
    return tuple(question for several in asked for question in several)


def _width(section: Drawn, joint: Joint) -> ask.Question:
    required = _required(section, joint)
    least = required.value if required else None
    source = required.basis if required else ask.LAP_WIDTH.source
    return replace(ask.LAP_WIDTH, drawn=joint.length, least=least, source=source)


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
        questions=said(ask.of_product(product)),
        extent=lines_of(section, (name,)),
    )


def butts(section: Drawn) -> Iterator[SitePlace]:
    """Yield where two pieces meet without a lap and without a bead, along the walk of a layer."""
    for layer in section.walked:
        for joint in joints_walked(layer):
            meets = joint.kind in (JointKind.BUTT, JointKind.TEE)
            held = _has_own_place(section, layer.control, joint)
            if meets and not _is_whole(section, joint) and not held:
                yield _butt(section, layer.control, joint)


def _butt(section: Drawn, control: Control, joint: Joint) -> SitePlace:
    asked = [ask.TIGHT_BUTT]
    if control is not Control.HEAT:
        asked = [ask.SEALED_AS_DRAWN] if joint.sealed else []
        coats = (section.product(name) for name in (joint.a, joint.b))
        asked += [q for each in coats if each.bond is Bond.FLUID for q in ask.of_product(each)]
        asked = asked or [ask.TIGHT_BUTT]
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


def _has_own_place(section: Drawn, control: Control, joint: Joint) -> bool:
    """Whether a joint is looked at with its tape or bead, or with what passes through.

    Insulation only has to lie tight to a pipe; it is looked at where the two meet.
    """
    products = (section.product(joint.a), section.product(joint.b))
    if control is not Control.HEAT and any(each.kind in _OWN_PLACES for each in products):
        return True
    return any(is_bead(each) for each in products)


def _is_whole(section: Drawn, joint: Joint) -> bool:
    return joined_in_works(section.product(joint.a), section.product(joint.b))
