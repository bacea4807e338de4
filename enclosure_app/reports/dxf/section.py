"""What is marked in one section of a drawing: laps, lifts, the way in, faults, numbered flags."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from enclosure_app.drawing.lengths import format_length
from enclosure_app.drawing.marks import Flag
from enclosure_app.drawing.placement import Placement, box_around
from enclosure_app.drawing.polylines import unit
from enclosure_app.drawing.section.flags import Site
from enclosure_app.drawing.section.section_marks import ring_radius
from enclosure_app.drawing.sheet.findings_table import title
from enclosure_app.drawing.theme import Theme
from enclosure_app.model.drawing import Units
from enclosure_app.model.finding import Finding
from enclosure_app.model.place import Point, Points
from enclosure_app.model.report import Continuity, JointKind, LayerResult, SectionResult
from enclosure_app.reports.dxf.entities import Ring, Shape, Told, Way, Words
from enclosure_app.reports.dxf.flags import Flags
from enclosure_app.reports.dxf.layers import FLAGS, layer_of
from enclosure_app.reports.dxf.room import Room
from enclosure_app.reports.dxf.scale import on_paper, scale_of
from enclosure_app.reports.names import urn


@dataclass(frozen=True, slots=True)
class Look:
    """How all sections of a drawing are marked: its units, the pens, where hyperlinks lead.

    Without a `sheet` they name the finding, within the `scope` of a project or a drawing.
    """

    units: Units
    theme: Theme
    sheet: str = ""
    scope: str = ""


class SectionMarker:
    """Marks one section; sizes are those of the sheet times the section's scale."""

    def __init__(self, result: SectionResult, look: Look, room: Room) -> None:
        self.result, self.look, self.room = result, look, room
        self.units, self.theme = look.units, look.theme
        self.ratio = scale_of(result, look.units, room)

    def shapes(self) -> Iterator[Shape]:
        """Yield the marks of the section, in mm."""
        for layer in self.result.layers.values():
            yield from self._layer(layer)
        for finding in self.result.findings:
            yield from self._run(finding)
        yield from self._flags()

    def _layer(self, layer: LayerResult) -> Iterator[Shape]:
        """Yield where a layer laps and is lifted, and the way in where it is open."""
        on, what = layer_of(layer.control), layer.control.value
        for joint in layer.joints:
            if joint.kind is JointKind.LAP and joint.on_trace:
                outline = _apart((*joint.run_a, *reversed(_along(joint.run_a, joint.run_b))))
                if len(outline) > 1:
                    yield Way(on, outline, Told(f"lap {what}"), closed=len(outline) > 2)
        for lift in layer.lifts:
            yield from self._measured(on, (lift.start, lift.end), lift.width, f"lift {what}")
        way = _apart(layer.way_in)
        if layer.continuity is not Continuity.CONTINUOUS and len(way) > 1:
            yield Way(on, way, Told(f"opening {what}"))

    def _measured(self, on: str, ends: Points, width: float, what: str) -> Iterator[Shape]:
        """Yield a line between two places with its length beside it."""
        if ends[0] == ends[1]:
            return
        yield Way(on, ends, Told(what), weight=self.theme.pen("cap").width)
        x, y = unit(*ends)
        off = 2.2 * self.ratio
        middle = (ends[0][0] + ends[1][0]) / 2 - y * off, (ends[0][1] + ends[1][1]) / 2 + x * off
        height = self.theme.small * self.ratio
        text = format_length(width, self.units)
        yield Words(on, text, middle, height, Told(what), centred=True)

    def _run(self, finding: Finding) -> Iterator[Shape]:
        """Yield the lines that show a fault."""
        for run in map(_apart, finding.extent):
            if len(run) > 1:
                weight = self.theme.severity(finding.severity).width
                yield Way(layer_of(finding.control), run, self._told(finding), weight=weight)

    def _flags(self) -> Iterator[Shape]:
        """Yield a numbered flag beside the frame for each finding, its leader, a ring at its place."""
        result, ratio = self.result, self.ratio
        place = Placement(ratio)
        radius = ring_radius(result.findings)
        sites = [
            Site(number, place.point(f.at), f.severity, radius, f.key, result.state(f))
            for number, f in enumerate(result.findings, 1)
        ]
        area = on_paper(box_around(result.section.frame), ratio)
        flags = Flags(ratio, self.theme, self.room).placed(sites, area)
        for flag, finding in zip(flags, result.findings, strict=True):
            yield from self._flag(flag, finding, place)
            told, width = self._told(finding), flag.edge.width
            yield Ring(FLAGS, finding.at, radius * ratio, told, width)

    def _flag(self, flag: Flag, finding: Finding, place: Placement) -> Iterator[Shape]:
        told = self._told(finding)
        if flag.leader:
            leader = _apart(tuple(map(place.back, flag.leader.points)))
            yield Way(FLAGS, leader, told)
        shape = tuple(map(place.back, flag.shape))
        yield Way(FLAGS, shape, told, closed=True, weight=flag.edge.width)
        height = self.theme.medium * self.ratio
        yield Words(FLAGS, str(flag.number), place.back(flag.at), height, told, centred=True)

    def _told(self, finding: Finding) -> Told:
        return told_of(finding, self.result, self.look)


def told_of(finding: Finding, result: SectionResult, look: Look) -> Told:
    """Return what a mark of a finding says, and where its link leads."""
    link = look.sheet or urn(finding, result.section.name, look.scope)
    return Told(finding.key, link, f"{title(finding)}: {finding.message}")


def _along(run: Points, other: Points) -> Points:
    """Return `other` in the direction in which `run` goes."""
    if not run or not other:
        return other
    ahead = (run[-1][0] - run[0][0]) * (other[-1][0] - other[0][0])
    ahead += (run[-1][1] - run[0][1]) * (other[-1][1] - other[0][1])
    return other if ahead >= 0 else other[::-1]


def _apart(points: Sequence[Point]) -> Points:
    """Return points without those that stand where the one before stands."""
    return tuple(p for k, p in enumerate(points) if k == 0 or p != points[k - 1])
