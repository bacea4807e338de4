"""The commands that hand over what was found: marks in the office's drawing, tables, BCF."""

import sys
from collections.abc import Sequence
from dataclasses import replace
from datetime import UTC, datetime
from pathlib import Path
from typing import TYPE_CHECKING, Unpack

import click

from enclosure_app.cli.judging import checker, keep_inputs
from enclosure_app.cli.options import FILE, Asked, reading_options
from enclosure_app.cli.statuses import status
from enclosure_app.errors import EnclosureError
from enclosure_app.reports.complaints import own_faults_in_words
from enclosure_app.reports.terminal import say, with_progress

if TYPE_CHECKING:
    from enclosure_app.reports.handed_over import HandedOver

_TABLES = (".csv", ".xlsx")


class MarkAsked(Asked):
    """What the options of marking say as well."""

    drawing: Path | None
    link: str


class TableAsked(Asked):
    """What the options of tables say as well."""

    site: bool
    photographs: Path | None


@click.command("mark")
@click.argument("file", type=FILE)
@click.option("-o", "--output", type=FILE, required=True, metavar="DXF", help="File to write.")
@click.option(
    "--drawing", type=FILE, metavar="DXF", help="The drawing of a project that has moved."
)
@click.option(
    "--link", default="", metavar="PDF", help="Where hyperlinks lead; else a PDF of that name."
)
@reading_options
def mark(file: Path, output: Path, **asked: Unpack[MarkAsked]) -> int:
    """Check a drawing and write it again, unchanged, with what was found marked in it.

    FILE is a drawing or a project; marks are on layers that begin with ENCLOSURE-CHECK-.
    """
    from enclosure_app.model.report import Report
    from enclosure_app.reports.dxf.marks import MarkJob, write_dxf
    from enclosure_app.reports.dxf.source import sheet_beside
    from enclosure_app.reports.text_report import summary

    if asked["layout"].casefold() != "model":
        raise EnclosureError("Marks are written into the model only; leave --layout out.")
    (handed,) = _handed([file], output, asked)
    source = asked["drawing"] or _source(file, handed)
    job = MarkJob(asked["link"] or sheet_beside(output, source), handed.scope)
    with own_faults_in_words(str(output)):
        left_out = write_dxf(output, source, handed.result, job)
    for name in left_out:
        say(f"{name} is not drawn in {source} and was left out.", sys.stderr)
    say(f"{output} is written: {summary(Report((handed.result,)))}", sys.stdout)
    return status((handed.result,))


@click.command("table")
@click.argument("files", type=FILE, nargs=-1, required=True, metavar="FILE...")
@click.option(
    "-o", "--output", type=FILE, required=True, metavar="CSV|XLSX", help="File to write."
)
@click.option("--site", is_flag=True, help="Write the site list into a CSV, not the findings.")
@click.option(
    "--photographs", type=FILE, metavar="FOLDER", help="Write a project's photographs there."
)
@reading_options
def table(files: tuple[Path, ...], output: Path, **asked: Unpack[TableAsked]) -> int:
    """Check drawings or projects and write what was found as a table, with verdicts.

    An XLSX holds the findings and the site list, a CSV one of the two.
    """
    from enclosure_app.reports.handed_over import tables_of
    from enclosure_app.reports.photograph_names import write_photographs
    from enclosure_app.reports.tables.csv_file import write_csv
    from enclosure_app.reports.tables.xlsx_file import write_xlsx

    ending = output.suffix.casefold()
    if ending not in _TABLES:
        raise EnclosureError(f"{output}: name a file that ends in .csv or .xlsx.")
    handed = _handed(files, output, asked)
    with own_faults_in_words(str(output)):
        made = tables_of(handed, datetime.now(UTC))
        chosen = made.site if asked["site"] else made.findings
        if ending == ".xlsx":
            write_xlsx(output, (made.findings, made.site), made.about)
        else:
            write_csv(output, chosen)
        if asked["photographs"]:
            write_photographs(asked["photographs"], made.photographs)
    found, seen = len(made.findings.rows), len(made.site.rows)
    say(f"{output} is written: {found} rows of findings, {seen} of the site list.", sys.stdout)
    return status(each.result for each in handed)


@click.command("exchange")
@click.argument("file", type=FILE)
@click.option("-o", "--output", type=FILE, required=True, metavar="BCF", help="File to write.")
@reading_options
def exchange(file: Path, output: Path, **asked: Unpack[Asked]) -> int:
    """Check a drawing or a project and write its findings as BCF 2.1, for a coordinator."""
    from enclosure_app.model.report import Report
    from enclosure_app.reports.bcf.archive import write_bcf
    from enclosure_app.reports.text_report import summary

    (handed,) = _handed([file], output, asked)
    with own_faults_in_words(str(output)):
        write_bcf(output, (handed.result,), handed.bcf_job(datetime.now(UTC)))
    say(f"{output} is written: {summary(Report((handed.result,)))}", sys.stdout)
    return status((handed.result,))


def _handed(files: Sequence[Path], output: Path, asked: Asked) -> list["HandedOver"]:
    """Return what is handed over of each file, read and checked as asked for."""
    keep_inputs(output, (*files, asked["layers"]))
    made = []
    for file in with_progress(files, "Checking"):
        with own_faults_in_words(str(file)):
            made.append(_project(file) if _is_project(file) else _drawing(file, asked))
    return made


def _is_project(file: Path) -> bool:
    return file.name.casefold().endswith(".json")


def _drawing(file: Path, asked: Asked) -> "HandedOver":
    from enclosure_app.model.project import project_from
    from enclosure_app.reports.handed_over import HandedOver

    check = checker(asked, linework=True)
    result = check(file)
    return HandedOver(project_from(result.drawing), result, check.limits, file.name)


def _project(file: Path) -> "HandedOver":
    """Read a project, with its own layers and figures, and what was decided."""
    from enclosure_app.checker import check_drawing
    from enclosure_app.files.opening import limits_of
    from enclosure_app.files.project.file import load_project
    from enclosure_app.model.project import drawing_of
    from enclosure_app.model.standing.verdicts import with_verdicts
    from enclosure_app.reports.handed_over import HandedOver

    project = load_project(file)
    limits = limits_of(project)
    drawn = tuple(s for s in project.sections if s.pieces and len(s.frame) > 2)
    result = check_drawing(drawing_of(replace(project, sections=drawn)), limits)
    decided = tuple(with_verdicts(each, project) for each in result.sections)
    return HandedOver(project, replace(result, sections=decided), limits, project.id)


def _source(file: Path, handed: "HandedOver") -> Path:
    """Return the drawing that is to be marked."""
    from enclosure_app.reports.dxf.source import drawing_of_project

    if not _is_project(file):
        return file
    source = drawing_of_project(handed.project.source, file)
    if source is None:
        missing = handed.project.source or "a drawing, from which it would have been read,"
        raise EnclosureError(
            f"{file}: {missing} is not there to be marked; name the drawing with --drawing DXF."
        )
    return source
