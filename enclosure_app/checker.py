"""Checks drawings: every rule on every section, and how each control layer runs."""

from collections.abc import Iterable, Sequence
from dataclasses import replace
from types import MappingProxyType

import numpy as np

from enclosure_app.language import say
from enclosure_app.model.drawing import Drawing
from enclosure_app.model.finding import Finding, Severity
from enclosure_app.model.limits import Limits
from enclosure_app.model.pose import Pose, settle
from enclosure_app.model.product import Control
from enclosure_app.model.report import (
    DrawingResult,
    Joint,
    LayerResult,
    Lift,
    RainRoute,
    Run,
    SectionResult,
    Verdict,
)
from enclosure_app.model.section import Section
from enclosure_app.network.layer import Layer
from enclosure_app.network.network import Network, question
from enclosure_app.rules import RULES

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
    settled, pose = settle(section)
    network = question(settled, limits.tolerances)
    layers = {control: _result(layer, pose) for control, layer in network.layers.items()}
    rain = network.rain.routes if network.rain else ()
    return SectionResult(
        section=section,
        layers=MappingProxyType(layers),
        rain=tuple(_drawn_route(route, pose) for route in rain),
        order=network.order.sequence if not network.order.cycles else (),
        findings=tuple(_drawn(f, section, pose) for f in _findings(network, limits)),
    )


def _findings(network: Network, limits: Limits) -> list[Finding]:
    """Return the findings of every rule that is not off, in walking order, each key once."""
    found: list[Finding] = []
    for rule in RULES:
        level = limits.severities.get(rule.name)
        if level is not Severity.OFF:
            found += (_at_level(finding, level) for finding in rule.check(network, limits))
    return _keys_apart(_in_walking_order(network, found))


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
    return sorted(placed, key=lambda f: (round(f.along, 1), f.rule, f.control or "", f.key))


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


def _result(layer: Layer, pose: Pose) -> LayerResult:
    if layer.trace is None or layer.walk is None or layer.opening is None:
        verdict = Verdict.UNSURE if layer.why else Verdict.ABSENT
        return LayerResult(layer.control, verdict, why=layer.why)
    bottleneck, opening = layer.trace.bottleneck, layer.opening.width
    verdict, why = _verdict(bottleneck, opening, layer.lifts)
    return LayerResult(
        layer.control,
        verdict,
        walk=tuple(_drawn_step(step, pose) for step in layer.walk.steps),
        joints=tuple(_drawn_joint(joint, pose) for joint in layer.joints),
        bottleneck=bottleneck,
        opening=opening,
        way_in=pose.all_drawn(layer.opening.path) if opening > 0 else (),
        why=why,
    )


def _verdict(bottleneck: float, opening: float, lifts: Sequence[Lift]) -> tuple[Verdict, str]:
    if abs(bottleneck - opening) > AGREE:
        return Verdict.UNSURE, (
            say(
                "The trace says that the widest gap is {bottleneck:.1f} mm and the opening says "
                "{opening:.1f} mm: one of them is wrong, so look at this layer yourself.",
                bottleneck=bottleneck,
                opening=opening,
            )
        )
    return (Verdict.BROKEN, "") if lifts else (Verdict.CONTINUOUS, "")


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


def _drawn_route(route: RainRoute, pose: Pose) -> RainRoute:
    return RainRoute(pose.all_drawn(route.points), route.pieces, route.end)
