"""All pages of one order: the cover, where one is wanted, and the sheets. PDF and print paint these."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from enclosure_app.drawing.marks import Mark
from enclosure_app.drawing.sheet.cover import Cover, compose_cover
from enclosure_app.drawing.sheet.job import SheetJob
from enclosure_app.drawing.sheet.sheet import Page, compose_sheets
from enclosure_app.drawing.theme import Theme
from enclosure_app.errors import EnclosureError
from enclosure_app.language import say
from enclosure_app.model.report import DrawingResult


@dataclass(frozen=True, slots=True)
class Paper:
    """One page as it is painted: its size in mm, and all its marks in painting order."""

    width: float
    height: float
    marks: tuple[Mark, ...]


@dataclass(frozen=True, slots=True)
class SheetSet:
    """The pages of a cover, none where it was not wanted, and the sheets that follow."""

    covers: tuple[Cover, ...]
    sheets: tuple[Page, ...]

    def painted_covers(self) -> Iterator[Paper]:
        """Yield the pages of the cover."""
        for cover in self.covers:
            yield Paper(cover.width, cover.height, cover.marks)

    def painted_sheets(self, theme: Theme) -> Iterator[Paper]:
        """Yield the sheets, each with which one of how many it is."""
        for number, sheet in enumerate(self.sheets, 1):
            marks = sheet.numbered(number, len(self.sheets), theme)
            yield Paper(sheet.width, sheet.height, marks)

    def papers(self, theme: Theme) -> Iterator[Paper]:
        """Yield all pages in their order."""
        yield from self.painted_covers()
        yield from self.painted_sheets(theme)


def compose_set(results: Sequence[DrawingResult], job: SheetJob, theme: Theme) -> SheetSet:
    """Return the pages of an order.

    Raises:
        EnclosureError: there is nothing to draw; paper or scale is not known or does not fit.
    """
    sheets = compose_sheets(results, job, theme)
    if not sheets:
        raise EnclosureError(say("There is no section to draw; map a layer of the drawing first."))
    return SheetSet(compose_cover(sheets, job, theme) if job.cover else (), sheets)
