"""Where on a sheet each finding is: what a note or a bookmark of the PDF is put to."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from enclosure_app.drawing.placement import Box, Placement, box_around
from enclosure_app.drawing.polylines import distinct
from enclosure_app.drawing.section.section_marks import ring_radius
from enclosure_app.model.finding import Finding
from enclosure_app.model.place import Point, Points
from enclosure_app.model.report import SectionResult
from enclosure_app.model.said.decision import Decision

_AREAS = frozenset({"ponding"})  # what is found there has an extent all round
RIM = 1.0  # mm on paper that the box reaches beyond what it holds


@dataclass(frozen=True, slots=True)
class FindingPlace:
    """One finding on a sheet, in sheet mm: its number, its ring, and the lines that show it.

    `line` has two or more points, or none where the finding is a place only; it is `closed` where
    it goes round an area.
    """

    number: int
    finding: Finding
    at: Point
    ring: float
    line: Points = ()
    closed: bool = False
    decision: Decision | None = None

    @property
    def box(self) -> Box:
        """The box around the ring and the line."""
        x, y = self.at
        corners = (x - self.ring, y - self.ring), (x + self.ring, y + self.ring)
        return box_around((*corners, *self.line)).inset(-RIM)


def finding_places(
    result: SectionResult,
    findings: Sequence[Finding],
    numbers: Mapping[str, int],
    placement: Placement,
) -> tuple[FindingPlace, ...]:
    """Return where `findings` of a section are on a sheet, in their order."""
    radius = ring_radius(findings)
    return tuple(
        FindingPlace(
            numbers[finding.key],
            finding,
            placement.point(finding.at),
            radius,
            *_shown(finding, placement),
            result.decisions.get(finding.key),
        )
        for finding in findings
    )


def _shown(finding: Finding, placement: Placement) -> tuple[Points, bool]:
    """Return the line that shows a finding, and whether it goes round an area.

    Of a lap it is the run of the outer sheet.
    """
    closed = finding.rule in _AREAS
    run = finding.extent[0] if finding.extent else ()
    if len(finding.extent) > 1 and all(len(each) == 1 for each in finding.extent):
        run = tuple(each[0] for each in finding.extent)
    line = distinct(placement.points((finding.at, *run) if closed else run))
    return (line, closed and len(line) > 2) if len(line) > 1 else ((), False)
