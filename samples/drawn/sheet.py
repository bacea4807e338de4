"""A sheet to draw details on: pieces, notes, dimensions and titles of one drawing.

Details are written in millimetres; the sheet moves them to where a section stands and writes
drawing units.
"""

from itertools import pairwise
from pathlib import Path

import ezdxf
from drawn.expected import Expected, Fault, SectionExpected
from drawn.lengths import written
from drawn.office import Office, add_dimension_style, new_drawing
from drawn.patterns import PATTERNS, Pattern
from drawn.shapes import Point, Points, box, offset
from ezdxf.enums import TextEntityAlignment
from ezdxf.lldxf.const import DXF2000
from ezdxf.render import hatching

UNITS = {1.0: "mm", 25.4: "in", 304.8: "ft", 1000.0: "m"}


class Sheet:
    """One drawing in the making."""

    def __init__(
        self, office: Office, title: str, *, version: str, unit_mm: float, scale: float
    ) -> None:
        self.office = office
        self.unit_mm = unit_mm
        self.scale = scale
        self.doc = new_drawing(office, version, unit_mm)
        self.space = self.doc.modelspace()
        self.modern = self.doc.dxfversion >= DXF2000
        self.origin: Point = (0.0, 0.0)
        add_dimension_style(self.doc, self._paper(2.2))
        self.expected = Expected("", office.layer_map, UNITS[unit_mm], unit_mm, version, title)

    # Places

    def at(self, point: Point) -> Point:
        """Return the drawing units of a place given in the section's millimetres."""
        x, y = self.origin
        return (round((point[0] + x) / self.unit_mm, 6), round((point[1] + y) / self.unit_mm, 6))

    def many(self, points: Points) -> Points:
        """Return the drawing units of several places."""
        return [self.at(p) for p in points]

    # Pieces

    def area(self, product: str, points: Points, *, hatch: bool = True) -> None:
        """Draw a closed outline on the product's layer, with its hatch on the pattern layer."""
        self._poly(points, self.office.products[product], close=True)
        if hatch and product in PATTERNS:
            self.hatch(points, PATTERNS[product])

    def filled(self, product: str, points: Points) -> None:
        """Draw an area as a hatch on the product's layer; its outline is linework beyond."""
        hatch = self.space.add_hatch(dxfattribs={"layer": self.office.products[product]})
        self._set_pattern(hatch, PATTERNS[product])
        hatch.paths.add_polyline_path(self.many(points), is_closed=True)
        self._poly(points, self.office.roles["beyond"], close=True)

    def line(self, product: str, points: Points, *, width: float = 0.0) -> None:
        """Draw the run of a sheet, bare or with a drawn thickness in mm."""
        self._poly(points, self.office.products[product], width=width)

    def strip(self, product: str, points: Points, thickness: float = 1.6) -> None:
        """Draw the run of a sheet as a thin closed outline about the given middle line."""
        half = thickness / 2
        outline = [*offset(points, half), *reversed(offset(points, -half))]
        self._poly(outline, self.office.products[product], close=True)

    def segments(self, product: str, points: Points) -> None:
        """Draw the run of a sheet as single lines, end to end."""
        layer = {"layer": self.office.products[product]}
        for start, end in pairwise(self.many(points)):
            self.space.add_line(start, end, dxfattribs=layer)

    def member(self, points: Points, product: str = "framing") -> None:
        """Put in the block of a crossed timber; `points` are the corners of an upright box."""
        (left, bottom), (right, top) = self.at(points[0]), self.at(points[2])
        self.space.add_blockref(
            "MEMBER",
            (left, bottom),
            dxfattribs={
                "layer": self.office.products[product],
                "xscale": right - left,
                "yscale": top - bottom,
            },
        )

    # What only the eye reads

    def hatch(self, points: Points, pattern: Pattern) -> None:
        """Hatch an outline; a drawing too old for hatches gets the single lines."""
        layer = {"layer": self.office.roles["pattern"]}
        if self.modern:
            hatch = self.space.add_hatch(color=256, dxfattribs=layer)
        else:
            hatch = ezdxf.entities.Hatch.new(dxfattribs=layer)
        self._set_pattern(hatch, pattern)
        hatch.paths.add_polyline_path(self.many(points), is_closed=True)
        if not self.modern:
            for start, end in hatching.hatch_entity(hatch, jiggle_origin=False):
                self.space.add_line(start.vec2.round(6), end.vec2.round(6), dxfattribs=layer)

    def beyond(self, points: Points, *, close: bool = False) -> None:
        """Draw linework that no layer takes part in, such as a stud beyond the cut."""
        self._poly(points, self.office.roles["beyond"], close=close)

    def text(self, text: str, at: Point, *, height: float = 2.5, role: str = "note") -> None:
        """Write one line of text; `height` is mm on paper."""
        self.space.add_text(
            text,
            height=self._paper(height),
            dxfattribs={"layer": self.office.roles[role], "style": "DETAIL"},
        ).set_placement(self.at(at), align=TextEntityAlignment.LEFT)

    def notes(self, x: float, span: Point, notes: list[tuple[str, Point]]) -> None:
        """Write notes in a column at `x` within `span` (bottom, top), led to their tips.

        Each stands as close to the height of its tip as the others leave it.
        """
        bottom, level = span
        ordered = sorted(notes, key=lambda note: -note[1][1])
        rest = sum(self._deep(words) for words, _ in ordered)
        for words, tip in ordered:
            level = max(min(level, tip[1]), bottom + rest)
            lines = words.split("\n")
            for number, line in enumerate(lines):
                self.text(line, (x, level - 3.6 * self.scale * number), height=2.2)
            self._leader(tip, (x, level), max(map(len, lines)))
            level -= self._deep(words)
            rest -= self._deep(words)

    def _deep(self, words: str) -> float:
        return (3.6 * (words.count("\n") + 1) + 2.4) * self.scale

    def title_block(self, at: Point, number: str, scale_text: str) -> None:
        """Write the office's title block with its lower left corner at `at`."""
        step = self.scale
        x, y = at
        self._poly(box(x, y, x + 90 * step, y + 30 * step), self.office.roles["title"], close=True)
        rows = (
            (PROJECT, 3.0, 24.0),
            (CLIENT, 2.0, 19.5),
            (f"{self.office.title}   {self.office.architect}", 2.2, 14.0),
            (f"{self.expected.title.upper()}   {scale_text}", 2.2, 9.0),
            (f"SHEET {number}   FOR TRYING THE PROGRAM, NOT FOR BUILDING", 2.0, 4.0),
        )
        for words, height, up in rows:
            self.text(words, (x + 3 * step, y + up * step), height=height, role="title")

    def dimension(self, start: Point, end: Point, base: Point, angle: float = 0.0) -> None:
        """Dimension between two places with a text in the drawing's own units."""
        measured = abs(end[0] - start[0]) if angle == 0 else abs(end[1] - start[1])
        self.space.add_linear_dim(
            base=self.at(base),
            p1=self.at(start),
            p2=self.at(end),
            angle=angle,
            text=written(measured, self.unit_mm),
            dimstyle="DETAIL",
            dxfattribs={"layer": self.office.roles["dimension"]},
        ).render()

    def break_line(self, start: Point, end: Point, *, zig: float = 14.0) -> None:
        """Draw one break line with a zig-zag in its middle."""
        mid = ((start[0] + end[0]) / 2, (start[1] + end[1]) / 2)
        upright = start[0] == end[0]
        jag = [(-zig, 0.0), (-zig / 2, zig), (zig / 2, -zig), (zig, 0.0)]
        if upright:
            jag = [(y, x) for x, y in jag]
        points = [start, *((mid[0] + dx, mid[1] + dy) for dx, dy in jag), end]
        self._poly(points, self.office.roles["break"])

    def frame(self, title: str, corners: Points, scale_text: str) -> None:
        """Draw a section's frame with its title below, and begin what is expected of it."""
        self._poly(corners, self.office.roles["frame"], close=True)
        (left, bottom), (right, top) = corners[0], corners[2]
        step = self.scale
        self.text(title.upper(), (left, bottom - 8 * step), height=4, role="title")
        self.text(scale_text, (left, bottom - 13 * step), height=2.5, role="title")
        x, y = self.origin
        placed = (left + x, bottom + y, right + x, top + y)
        self.expected.sections.append(SectionExpected(title, placed))

    def marks(self, inside: Point, outside: Point) -> None:
        """Write INSIDE and OUTSIDE."""
        self.text("INSIDE", inside, height=3)
        self.text("OUTSIDE", outside, height=3)

    # What is expected

    def fault(
        self, rule: str, control: str, at: Point, told: str, *, within: float = 25.0
    ) -> None:
        """Record a fault of the section drawn last."""
        section = self.expected.sections[-1]
        place = (at[0] + self.origin[0], at[1] + self.origin[1])
        self.expected.faults.append(Fault(rule, control, place, section.title, told, within))
        if rule in ("gap", "stops-short"):
            section.verdicts[control] = "broken"

    def save(self, path: Path) -> None:
        """Write the drawing; the expected file name is taken from the path."""
        self.expected.file = path.name
        self.expected.binary = path.stem in BINARY
        for name in ("ACDBPLACEHOLDER", "LAYOUT"):  # else their order changes from run to run
            self.doc.classes.add_class(name)
        self.doc.saveas(path, fmt="bin" if self.expected.binary else "asc")

    # In private

    def _paper(self, mm: float) -> float:
        return mm * self.scale / self.unit_mm

    def _poly(self, points: Points, layer: str, *, close: bool = False, width: float = 0) -> None:
        attributes = {"layer": layer}
        drawn = width / self.unit_mm
        if self.modern:
            poly = self.space.add_lwpolyline(self.many(points), close=close, dxfattribs=attributes)
            if width:
                poly.dxf.const_width = drawn
            return
        old = self.space.add_polyline2d(self.many(points), close=close, dxfattribs=attributes)
        if width:
            old.dxf.default_start_width = old.dxf.default_end_width = drawn

    def _set_pattern(self, hatch: "ezdxf.entities.Hatch", pattern: Pattern) -> None:
        scale = pattern.spacing * self.scale / self.unit_mm
        lines = [
            [angle, base, offset_by, dashes]
            for angle, base, offset_by, dashes in pattern.lines(scale)
        ]
        hatch.set_pattern_fill(pattern.name, scale=1.0, definition=lines)

    def _leader(self, tip: Point, at: Point, letters: int) -> None:
        """Lead from the near end of a note's first line to its tip."""
        x, y = at
        step = self.scale
        beside = x - step if tip[0] < x else x + letters * 2.0 * step + step
        level = (beside, y + step)
        elbow = (beside + (-3 if tip[0] < x else 3) * step, y + step)
        layer = {"layer": self.office.roles["note"]}
        points = [tip, elbow, level]
        if self.modern:
            self.space.add_leader(self.many(points), dimstyle="DETAIL", dxfattribs=layer)
            return
        self._poly(points, layer["layer"])
        self._arrow(tip, elbow)

    def _arrow(self, tip: Point, behind: Point) -> None:
        """Draw the exploded arrow head of a leader as a filled triangle."""
        long, half = 2.2 * self.scale, 0.4 * self.scale
        dx, dy = behind[0] - tip[0], behind[1] - tip[1]
        length = (dx * dx + dy * dy) ** 0.5
        ux, uy = dx / length, dy / length
        foot = (tip[0] + ux * long, tip[1] + uy * long)
        sides = [
            (foot[0] - uy * half, foot[1] + ux * half),
            (foot[0] + uy * half, foot[1] - ux * half),
        ]
        self.space.add_solid(
            self.many([tip, *sides, sides[1]]), dxfattribs={"layer": self.office.roles["note"]}
        )


PROJECT = "VARROWMOOR FIELD STATION"
CLIENT = "VARROWMOOR UPLAND WEATHER TRUST"
BINARY = {"ridge", "roof-to-wall-faulty"}
"""The drawings that are kept as binary DXF."""
