"""Writes what is handed over from a project that is open: all that takes long, for a thread."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import UTC, datetime
from pathlib import Path

from enclosure_app.files.projects import limits_of
from enclosure_app.model.project import Project
from enclosure_app.model.report import SectionResult
from enclosure_app.reports.bcf.archive import write_bcf
from enclosure_app.reports.dxf.marks import MarkJob, write_dxf
from enclosure_app.reports.dxf.source import sheet_beside
from enclosure_app.reports.handed_over import HandedOver, bcf_of, tables_of
from enclosure_app.reports.photograph_names import write_photographs
from enclosure_app.reports.tables.csv_file import write_csv
from enclosure_app.reports.tables.xlsx_file import write_xlsx
from enclosure_app.window.filing.printing import drawn


@dataclass(frozen=True, slots=True)
class Open:
    """A project as it stands, and what was found in it."""

    project: Project
    results: tuple[SectionResult, ...]

    @property
    def handed(self) -> HandedOver:
        """What is handed over of it.

        Raises:
            EnclosureError: there is no such rule book.
        """
        found = drawn(self.project, self.results)
        return HandedOver(self.project, found, limits_of(self.project))


def mark(paths: Sequence[Path], sources: Sequence[Path], opened: Open) -> Sequence[str]:
    """Write the drawings of a project again with what was found marked in them.

    `paths` and `sources` are those of its drawings, in their order. Returns the names of sections
    that are not drawn in theirs.

    Raises:
        EnclosureError: as for `reports.dxf.marks.write_dxf`.
    """
    handed = opened.handed
    left_out: list[str] = []
    for path, source, result in zip(paths, sources, handed.results, strict=True):
        job = MarkJob(sheet_beside(path, source), handed.project.id)
        left_out += write_dxf(path, source, result, job)
    return left_out


def tabulate(path: Path, opened: Open) -> Path | None:
    """Write findings and site list as a workbook, or the findings as CSV, by how the name ends.

    Photographs go into a folder beside it, which is returned where there are any.

    Raises:
        EnclosureError: the disk refuses.
    """
    made = tables_of([opened.handed], datetime.now(UTC))
    if path.suffix.casefold() == ".csv":
        write_csv(path, made.findings)
    else:
        write_xlsx(path, (made.findings, made.site), made.about)
    if not made.photographs:
        return None
    folder = path.with_name(f"{path.stem}-photographs")
    write_photographs(folder, made.photographs)
    return folder


def exchange(path: Path, opened: Open) -> None:
    """Write the findings as BCF.

    Raises:
        EnclosureError: the disk refuses.
    """
    write_bcf(path, *bcf_of([opened.handed], datetime.now(UTC)))
