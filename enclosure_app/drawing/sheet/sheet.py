"""Composes the sheets of one drawing: pages of marks in sheet mm, ready to be painted."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from pathlib import PurePath

from enclosure_app.drawing.clipping import clipped
from enclosure_app.drawing.marks import Mark, Overlay, Stroke, on, overlays_of, tagged
from enclosure_app.drawing.placement import Box, Placement, box_around
from enclosure_app.drawing.ribbon.ribbon import ribbon_marks
from enclosure_app.drawing.scales import Scale, fits, largest_that_fits, parse_scale, series
from enclosure_app.drawing.section.details import Arrangement, arrange, detail_marks
from enclosure_app.drawing.section.flags import LANE, Site, capacity, place_flags
from enclosure_app.drawing.section.places import FindingPlace, finding_places
from enclosure_app.drawing.section.section_marks import (
    View,
    frame_box,
    ring_radius,
    section_marks,
)
from enclosure_app.drawing.sheet.continuation import fill_column, table_columns
from enclosure_app.drawing.sheet.findings_table import (
    TableRow,
    gone_rows,
    head_marks,
    more_words,
    no_findings,
    rows,
)
from enclosure_app.drawing.sheet.job import SheetJob, paper_size
from enclosure_app.drawing.sheet.layout import Areas, areas
from enclosure_app.drawing.sheet.legend import legend_height, legend_marks
from enclosure_app.drawing.sheet.pictures import picture_marks
from enclosure_app.drawing.sheet.signatures import signatures, signed_of
from enclosure_app.drawing.sheet.title_block import (
    Titles,
    caution_height,
    caution_marks,
    heading_marks,
    scale_bar,
    tally,
    title_height,
    title_marks,
)
from enclosure_app.drawing.tags import Role, Tag
from enclosure_app.drawing.theme import Theme
from enclosure_app.errors import EnclosureError
from enclosure_app.language import say
from enclosure_app.model.drawing import Units
from enclosure_app.model.finding import Finding
from enclosure_app.model.product import Control, layer_words
from enclosure_app.model.report import DrawingResult, SectionResult
from enclosure_app.model.said.decision import Decision
from enclosure_app.progress import gone_through

RIBBONS = (Control.WATER, Control.AIR)  # that every sheet has
_FOUND = (Overlay.FINDINGS,)
_TALL = 250.0  # mm: paper with room for the ribbons of other layers too, where these have faults


@dataclass(frozen=True, slots=True)
class Page:
    """One sheet of paper: its size in mm, its marks in painting order, and its title block.

    `places` are the findings that are flagged on it. `drawing` and `section` say which section of
    which results it shows; a section may take several sheets.
    """

    width: float
    height: float
    marks: tuple[Mark, ...]
    titles: Titles
    title_box: Box
    drawing: DrawingResult
    section: SectionResult
    places: tuple[FindingPlace, ...] = ()

    def numbered(self, sheet: int, sheets: int, theme: Theme) -> tuple[Mark, ...]:
        """Return all marks, with a title block that says which sheet of how many this is."""
        titles = replace(self.titles, sheet=sheet, sheets=sheets)
        return (*self.marks, *title_marks(self.title_box, titles, theme))


def compose_sheets(
    results: Sequence[DrawingResult], job: SheetJob, theme: Theme
) -> tuple[Page, ...]:
    """Return the sheets of all drawings, section by section.

    Raises:
        EnclosureError: the paper or scale is not known, or a section does not fit at the scale.
    """
    wanted = [(section, result) for result in results for section in result.sections]
    return tuple(
        page
        for section, result in gone_through(wanted, 0.0, 1.0, each=1)
        for page in compose_section(section, result, job, theme)
    )


def compose_section(
    result: SectionResult, drawing: DrawingResult, job: SheetJob, theme: Theme
) -> tuple[Page, ...]:
    """Return the sheets of one section: drawings with their findings, and what is left of the table.

    Raises:
        EnclosureError: as for `compose_sheets`.
    """
    size = paper_size(job.paper)
    place = areas(size, len(ribbons_on(result, size)))
    scale = _scale(result, drawing.drawing.units, job, place.drawing)
    sheet = _Sheet(result, drawing, job, theme, size, place, scale)
    most = max(capacity(place.drawing), 1)
    chunks = [result.findings[i : i + most] for i in range(0, len(result.findings), most)] or [()]
    pages: list[Page] = []
    for chunk in chunks:
        gone = result.no_longer_found if chunk is chunks[-1] else ()
        pages += _pages(sheet, chunk, gone)
    return tuple(pages)


def ribbons_on(result: SectionResult, size: tuple[float, float]) -> tuple[Control, ...]:
    """Return the layers that are unrolled on the sheets of a section, on paper of `size` mm.

    Water and air always are; vapour and heat where something was found in them.
    """
    found = {finding.control for finding in result.findings} if size[1] >= _TALL else set()
    return tuple(
        control
        for control, layer in sorted(
            result.layers.items(), key=lambda pair: list(Control).index(pair[0])
        )
        if control in RIBBONS or (control in found and layer.walk)
    )


@dataclass(frozen=True, slots=True)
class _Sheet:
    """What all parts of one section's sheets need to know."""

    result: SectionResult
    drawing: DrawingResult
    job: SheetJob
    theme: Theme
    size: tuple[float, float]
    areas: Areas
    scale: Scale

    @property
    def units(self) -> Units:
        return self.drawing.drawing.units

    @property
    def numbers(self) -> dict[str, int]:
        return {f.key: i for i, f in enumerate(self.result.findings, 1)}

    @property
    def titles(self) -> Titles:
        drawing = self.drawing.drawing
        file = PurePath(self.result.section.file or drawing.file).name
        known = drawing.title in ("", self.job.project, PurePath(file).stem)
        name = f"{drawing.title} ({file})" if file and not known else file or drawing.title
        section = self.result.section.name
        units = say("feet and inches") if self.units.imperial else self.units.value
        signed = signatures(signed_of(self.job, section))
        return Titles(self.job, name, section, self.scale.text, units, signed)


def _scale(result: SectionResult, units: Units, job: SheetJob, room: Box) -> Scale:
    """Return the scale that was ordered, or the largest that fits."""
    frame = box_around(result.section.frame)
    size, free = (frame.width, frame.height), (room.width, room.height)
    if job.scale is None:
        return largest_that_fits(size, free, units)
    scale = parse_scale(job.scale)
    if not fits(size, free, scale):
        best = next((s for s in series(units) if fits(size, free, s)), None)
        advice = say("use {scale}", scale=best.text) if best else say("use larger paper")
        raise EnclosureError(
            say(
                "The section “{name}” does not fit on {paper} at {scale}; {advice}.",
                name=result.section.name,
                paper=job.paper,
                scale=scale.text,
                advice=advice,
            )
        )
    return scale


def _pages(
    sheet: _Sheet, findings: tuple[Finding, ...], gone: tuple[Decision, ...]
) -> Iterator[Page]:
    """Yield one sheet with the drawing and the flags of `findings`, then the rest of their table.

    What was decided about findings that are `gone` stands at the end of the table.
    """
    theme, column = sheet.theme, sheet.areas.column
    look = (sheet.units, theme)
    found = rows(findings, sheet.numbers, column.width, look, sheet.result.decisions)
    left: tuple[TableRow, ...] = (*found, *gone_rows(gone, column.width, theme))
    foot, table = _column(sheet)
    filled = fill_column(left, table, theme)
    made, placement = _arranged(sheet, findings)
    # In the order in which it is to be read: what reads a page aloud keeps to the painting order.
    marks = [*_paper(sheet), *heading_marks(sheet.result, sheet.areas.heading, theme)]
    marks += head_marks(table, theme) if left else no_findings(sheet.result, table, look)
    marks += filled.marks
    left = filled.left
    if left:
        marks.append(more_words(len(left), table, theme))
    marks += tagged(_pictured(sheet), _drawing(sheet, findings, made, placement))
    marks += (*_ribbons(sheet, findings), *foot)
    yield _page(sheet, marks, finding_places(sheet.result, findings, sheet.numbers, placement))
    while left:
        marks, left = _continued(sheet, left)
        yield _page(sheet, marks)


def _page(sheet: _Sheet, marks: list[Mark], places: tuple[FindingPlace, ...] = ()) -> Page:
    width, height = sheet.size
    titles, column = sheet.titles, sheet.areas.column
    return Page(width, height, tuple(marks), titles, column, sheet.drawing, sheet.result, places)


def _paper(sheet: _Sheet) -> Iterator[Mark]:
    box, pen = sheet.areas.border, sheet.theme.pen("border")
    yield Stroke(box.ring, pen, "border", closed=True)
    x = sheet.areas.column.left - 3.0
    yield Stroke(((x, box.bottom), (x, box.top)), sheet.theme.pen("table"), "border")


def _arranged(sheet: _Sheet, findings: tuple[Finding, ...]) -> tuple[Arrangement, Placement]:
    """Return how the drawing and its details share the paper, and where the drawing stands."""
    made = arrange(sheet.result, findings, sheet.areas.drawing, sheet.scale, sheet.units)
    middle = box_around(sheet.result.section.frame).centre
    return made, Placement(sheet.scale.ratio, middle, made.drawing.centre)


def _pictured(sheet: _Sheet) -> Tag:
    """Return what is read instead of the drawing."""
    words = say(
        "Drawing of the section “{name}” at {scale}: {tally}.",
        name=sheet.result.section.name,
        scale=sheet.scale.text,
        tally=tally(sheet.result),
    )
    return Tag(Role.FIGURE, "drawing", words=words)


def _drawing(
    sheet: _Sheet, findings: tuple[Finding, ...], made: Arrangement, placement: Placement
) -> Iterator[Mark]:
    """Yield the drawing with its flags, its details, and the scale bar."""
    theme, free = sheet.theme, sheet.areas.drawing
    view = View(placement, sheet.units, theme, elsewhere=made.told(sheet.scale, findings))
    shown = replace(sheet.result, findings=findings)
    yield from picture_marks(sheet.drawing.underlays, shown.section, placement, theme)
    yield from clipped(section_marks(shown, view), free.inset(-LANE))
    frame = frame_box(sheet.result, placement)
    lanes = frame if capacity(frame) >= len(findings) else made.drawing
    yield from on(_FOUND, place_flags(_sites(sheet, findings, placement), lanes, theme))
    for detail in made.details:
        yield from detail_marks(detail, shown, sheet.numbers, view)
    foot = sheet.areas.foot
    yield from scale_bar(foot.left, foot.bottom, sheet.scale, sheet.units, theme)


def _sites(sheet: _Sheet, findings: tuple[Finding, ...], placement: Placement) -> list[Site]:
    radius, numbers = ring_radius(findings), sheet.numbers
    return [
        Site(
            numbers[f.key],
            placement.point(f.at),
            f.severity,
            radius,
            f.key,
            sheet.result.state(f),
        )
        for f in findings
    ]


def _ribbons(sheet: _Sheet, findings: tuple[Finding, ...]) -> Iterator[Mark]:
    layers = [sheet.result.layers[c] for c in ribbons_on(sheet.result, sheet.size)]
    shown = replace(sheet.result, findings=findings)
    for layer, box in zip(layers, sheet.areas.ribbons, strict=True):
        yield Stroke(
            ((box.left, box.top + 0.3), (box.right, box.top + 0.3)),
            sheet.theme.pen("rule"),
            "ribbon",
        )
        look = (sheet.units, sheet.theme)
        ribbon = ribbon_marks(shown, layer, sheet.numbers, box.inset(0, 0.6), look)
        words = say(
            "The {layer} laid out straight: {continuity}.",
            layer=layer_words(layer.control),
            continuity=say(layer.continuity.value),
        )
        told = Tag(Role.FIGURE, layer.control, words=words)
        yield from tagged(told, on(overlays_of(layer.control), ribbon))


def _column(sheet: _Sheet) -> tuple[list[Mark], Box]:
    """Return what stands at the foot of the column, and the box that is left for the table."""
    theme, column = sheet.theme, sheet.areas.column
    title = title_height(sheet.titles, column.width, theme)
    caution = column.bottom + title + caution_height(column.width, theme) + 1.0
    legend = caution + legend_height(sheet.result)
    marks = [*legend_marks(sheet.result, Box(column.left, caution, column.right, legend), theme)]
    marks += caution_marks(Box(column.left, column.bottom, column.right, caution), theme)
    return marks, Box(column.left, legend + 4.0, column.right, column.top)


def _continued(
    sheet: _Sheet, left: tuple[TableRow, ...]
) -> tuple[list[Mark], tuple[TableRow, ...]]:
    """Return the marks of a sheet full of rows, and the rows that are still left."""
    theme, column = sheet.theme, sheet.areas.column
    foot, table = _column(sheet)
    marks = [*_paper(sheet), *heading_marks(sheet.result, sheet.areas.heading, theme)]
    for box in (*table_columns(sheet.areas, column.width), table):
        filled = fill_column(left, box, theme, whole=box is not table)
        if not filled.marks:
            break
        marks += (*head_marks(box, theme), *filled.marks)
        left = filled.left
    if left:
        marks.append(more_words(len(left), table, theme))
    return [*marks, *foot], left
