"""Checks drawings: every rule on every section, and how each control layer runs."""

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass, replace
from operator import is_
from types import MappingProxyType
from typing import TypeVar

import numpy as np

from enclosure_app.geometry.rims.rows import unlike
from enclosure_app.language import say
from enclosure_app.model.drawing import Drawing
from enclosure_app.model.finding import Finding, Severity
from enclosure_app.model.limits import Limits
from enclosure_app.model.place import Points
from enclosure_app.model.pose import Pose, settle, settle_again
from enclosure_app.model.product import Control
from enclosure_app.model.report import (
    Continuity,
    DrawingResult,
    Joint,
    LayerResult,
    Lift,
    RainRoute,
    Run,
    SectionResult,
)
from enclosure_app.model.section import Section
from enclosure_app.network.again import concerned, moved_between, question_again
from enclosure_app.network.fabric.framed import framed, in_frame
from enclosure_app.network.layer import NOT_BETWEEN, Layer
from enclosure_app.network.network import Network, question
from enclosure_app.progress import go_on, part, tell
from enclosure_app.rules import RULES

_QUESTIONED = 0.9  # share of a check after which the rules are asked
AGREE = 0.1  # mm: how far the two proofs of continuity may differ


def check_drawing(drawing: Drawing, limits: Limits) -> DrawingResult:
    """Check every section of a drawing."""
    results = (check_section(section, limits) for section in drawing.sections)
    named = tuple(
        replace(
            result,
            findings=tuple(replace(f, drawing=drawing.file) for f in result.findings),
        )
        for result in results
    )
    return DrawingResult(drawing, named)


def check_section(section: Section, limits: Limits) -> SectionResult:
    """Check one section; its marks must lie in the frame."""
    return check(section, limits).result


Found = dict[str, list[Finding]]  # the findings of each rule, where the settled section has them


@dataclass(frozen=True, slots=True)
class Check:
    """The result of a check, and what it was found by, for the next check of the same section."""

    result: SectionResult
    limits: Limits
    judged: Section  # with the pieces in its frame only
    settled: Section
    pose: Pose
    network: Network
    found: Found


def few_moved(last: Check, section: Section, limits: Limits) -> bool:
    """Whether a section differs from that of its last check by no more than a few moved pieces."""
    if last.limits is not limits:
        return False
    return moved_between(last.judged, _judged(section, limits, last)) is not None


def _judged(section: Section, limits: Limits, last: Check | None) -> Section:
    same = last is not None and last.limits is limits
    before = (last.result.section, last.judged) if last and same else None
    return framed(section, limits.tolerances.touch, before)


def check(section: Section, limits: Limits, last: Check | None = None) -> Check:
    """Check one section; its marks must lie in the frame.

    `last` is the check of it before a change. The result is the very same with it and without;
    where only a few pieces have moved it is found much sooner.
    """
    judged, moved = _judged(section, limits, last), None
    if last is not None and last.limits is limits:
        moved = moved_between(last.judged, judged)
    if last is None or moved is None:
        settled, pose = settle(judged)
        with part(0.0, _QUESTIONED):
            network = question(settled, limits.tolerances)
    else:
        pose = last.pose
        settled = settle_again(judged, last.judged, last.settled, pose)
        network = question_again(last.network, settled, moved)
    tell(_QUESTIONED)
    found = _found(network, limits, last, moved)
    seen = in_frame([f for each in found.values() for f in each], settled, limits.tolerances.touch)
    ordered = _keys_apart(_in_walking_order(network, seen))
    result = SectionResult(
        section=section,
        layers=MappingProxyType(_layers(network, pose, last)),
        rain=_rain(network, pose, last),
        order=network.order.sequence if not network.order.cycles else (),
        findings=tuple(_drawn(finding, section, pose) for finding in ordered),
    )
    return Check(result, limits, judged, settled, pose, network, found)


def _layers(network: Network, pose: Pose, last: Check | None) -> dict[Control, LayerResult]:
    """Return the result of each layer; what is as it was the last time is the very same object."""
    told: dict[int, LayerResult] = {}
    found = {}
    for control, layer in network.layers.items():
        known = told.get(id(layer.work)) if layer.work else None
        if known is None:
            known = _layer_result(layer, pose, _as_drawn(layer, pose, last))
        told[id(layer.work)] = known
        found[control] = replace(known, control=control)
    return found


@dataclass(frozen=True, slots=True)
class _Drawn:
    """The steps and joints of a layer in the drawing's coordinates."""

    walk: tuple[Run | Lift, ...] = ()
    joints: tuple[Joint, ...] = ()


def _as_drawn(layer: Layer, pose: Pose, last: Check | None) -> _Drawn:
    if layer.walk is None:
        return _Drawn()
    before = last.network.layers[layer.control] if last and last.pose == pose else None
    if last is None or before is None or before.walk is None:
        return _Drawn(
            tuple(_drawn_step(step, pose) for step in layer.walk.steps),
            tuple(_drawn_joint(joint, pose) for joint in layer.joints),
        )
    drawn = last.result.layers[layer.control]
    return _Drawn(
        _each_again(layer.walk.steps, (before.walk.steps, drawn.walk), pose, _drawn_step),
        _each_again(layer.joints, (before.joints, drawn.joints), pose, _drawn_joint),
    )


T = TypeVar("T")


def _each_again(
    items: tuple[T, ...],
    last: tuple[tuple[T, ...], tuple[T, ...]],
    pose: Pose,
    draw: Callable[[T, Pose], T],
) -> tuple[T, ...]:
    """Return what is drawn of each of `items`; `last` are items drawn before, and as drawn."""
    old, drawn = last
    if len(items) == len(old):
        again = list(drawn)
        for place in unlike(old, items):
            again[place] = draw(items[place], pose)
        return tuple(again)
    table = {id(was): known for was, known in zip(old, drawn, strict=True)}
    return tuple(table.get(id(item)) or draw(item, pose) for item in items)


def _found(
    network: Network, limits: Limits, last: Check | None, moved: frozenset[str] | None
) -> Found:
    """Return the findings of every rule that is not off; those of the last check where they stand."""
    names = concerned(last.network, network, moved) if last and moved is not None else None
    near = network.about(names) if names is not None else network
    found: Found = {}
    for rule in RULES:
        level = limits.severities.get(rule.name)
        go_on()
        if level is not Severity.OFF:
            seen = rule.check(near if rule.local else network, limits)
            found[rule.name] = [_at_level(finding, level) for finding in seen]
            if last and names is not None and rule.local:
                old = last.found[rule.name]
                found[rule.name] += [each for each in old if names.isdisjoint(each.pieces)]
    return found


def _at_level(finding: Finding, level: Severity | None) -> Finding:
    return finding if level is None else replace(finding, severity=level)


def _in_walking_order(network: Network, found: Sequence[Finding]) -> list[Finding]:
    placed: list[Finding] = []
    for control in Control:
        own = [f for f in found if (f.control or Control.WATER) is control]
        if own:
            along = network.layers[control].along(np.array([f.at for f in own]))
            placed += [
                replace(finding, along=float(at)) for finding, at in zip(own, along, strict=True)
            ]
    return sorted(placed, key=_walking_order)


def _walking_order(finding: Finding) -> tuple[object, ...]:
    """Return what findings are ordered by: never by which was found first."""
    place = (round(finding.along, 1), finding.rule, finding.control or "", finding.key)
    return (*place, finding.at, finding.pieces, finding.measured or 0.0, finding.extent)


def _keys_apart(findings: Iterable[Finding]) -> list[Finding]:
    """Number findings that bear the same key, in walking order."""
    count: dict[str, int] = {}
    apart = []
    for finding in findings:
        number = count[finding.key] = count.get(finding.key, 0) + 1
        key = f"{finding.key}#{number}" if number > 1 else finding.key
        apart.append(replace(finding, key=key))
    return apart


def _drawn(finding: Finding, section: Section, pose: Pose) -> Finding:
    return replace(
        finding,
        section=section.name,
        at=pose.drawn(finding.at),
        extent=tuple(pose.all_drawn(points) for points in finding.extent),
    )


def _layer_result(layer: Layer, pose: Pose, drawn: _Drawn) -> LayerResult:
    if layer.trace is None or layer.walk is None or layer.opening is None:
        continuity = Continuity.UNSURE if layer.why else Continuity.ABSENT
        return LayerResult(layer.control, continuity, why=layer.why)
    bottleneck, opening = layer.trace.bottleneck, layer.opening.width
    continuity = _continuity(bottleneck, opening, layer.lifts)
    unsure = continuity is Continuity.UNSURE
    return LayerResult(
        layer.control,
        continuity,
        walk=drawn.walk,
        joints=drawn.joints,
        bottleneck=bottleneck,
        opening=opening,
        way_in=pose.all_drawn(layer.opening.path) if opening > 0 else (),
        why=say(NOT_BETWEEN) if unsure and layer.opening.unhindered else "",
    )


def _continuity(bottleneck: float, opening: float, lifts: Sequence[Lift]) -> Continuity:
    if abs(bottleneck - opening) > AGREE:
        return Continuity.UNSURE
    return Continuity.BROKEN if lifts else Continuity.CONTINUOUS


def _drawn_step(step: Run | Lift, pose: Pose) -> Run | Lift:
    if isinstance(step, Run):
        return Run(step.piece, pose.all_drawn(step.points))
    return Lift(step.a, step.b, pose.drawn(step.start), pose.drawn(step.end))


def _drawn_joint(joint: Joint, pose: Pose) -> Joint:
    return replace(
        joint,
        at=pose.drawn(joint.at),
        run_a=pose.all_drawn(joint.run_a),
        run_b=pose.all_drawn(joint.run_b),
    )


def _rain(network: Network, pose: Pose, last: Check | None) -> tuple[RainRoute, ...]:
    """Return the routes as drawn; those that are as they were are the very same objects."""
    if network.rain is None:
        return ()
    known: dict[int, tuple[RainRoute, RainRoute]] = {}
    if last is not None and last.network.rain is not None and last.pose == pose:
        pairs = zip(last.network.rain.routes, last.result.rain, strict=True)
        known = {id(route.points): (route, drawn) for route, drawn in pairs}
        longest = max(known.values(), key=lambda each: len(each[0].points), default=None)
    else:
        longest = None
    return tuple(
        _drawn_route(route, pose, known.get(id(route.points)) or longest)
        for route in network.rain.routes
    )


def _drawn_route(
    route: RainRoute, pose: Pose, last: tuple[RainRoute, RainRoute] | None
) -> RainRoute:
    """Draw a route; `last` is one as found and as drawn, with which it may have places in common."""
    if last is None:
        return RainRoute(pose.all_drawn(route.points), route.pieces, route.end)
    old, drawn = last
    if (route.points, route.pieces, route.end) == (old.points, old.pieces, old.end):
        return drawn
    head = _in_common(route.points, old.points)
    least = min(len(route.points), len(old.points)) - head
    tail = min(_in_common(route.points[::-1], old.points[::-1]), least)
    middle = pose.all_drawn(route.points[head : len(route.points) - tail])
    points = (*drawn.points[:head], *middle, *drawn.points[len(old.points) - tail :])
    return RainRoute(points, route.pieces, route.end)


def _in_common(points: Points, others: Points) -> int:
    """Return how many points at the beginning are the very same objects."""
    same = list(map(is_, points, others))
    return same.index(False) if False in same else len(same)
