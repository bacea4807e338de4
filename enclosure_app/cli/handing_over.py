"""The commands that hand over what was found: marks in the office's drawing, tables, BCF."""

import sys
from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import UTC, datetime
from pathlib import Path
from typing import TYPE_CHECKING, Unpack

import click

from enclosure_app.cli.complaints import own_faults_in_words
from enclosure_app.cli.judging import checker, keep_inputs, must_end
from enclosure_app.cli.options import FILE, Asked, reading_options
from enclosure_app.cli.projects import judged
from enclosure_app.cli.statuses import status
from enclosure_app.cli.terminal import say, with_progress
from enclosure_app.errors import EnclosureError
from enclosure_app.files.project.named import is_project

if TYPE_CHECKING:
    from enclosure_app.model.report import DrawingResult
    from enclosure_app.reports.handed_over import HandedOver


class MarkAsked(Asked):
    """What the options of marking say as well."""

    drawing: tuple[Path, ...]
    link: str


class TableAsked(Asked):
    """What the options of tables say as well."""

    site: bool
    photographs: Path | None


@click.command("mark")
@click.argument("files", type=FILE, nargs=-1, required=True, metavar="FILE...")
@click.option(
    "-o",
    "--output",
    type=FILE,
    required=True,
    metavar="DXF|FOLDER",
    help="File to write; of several drawings, the folder to write them to.",
)
@click.option(
    "--drawing",
    type=FILE,
    multiple=True,
    metavar="DXF",
    help="A drawing of a project that has moved; may be repeated.",
)
@click.option(
    "--link", default="", metavar="PDF", help="Where hyperlinks lead; else a PDF of that name."
)
@reading_options
def mark(files: tuple[Path, ...], output: Path, **asked: Unpack[MarkAsked]) -> int:
    """Check drawings and write them again, unchanged, with what was found marked in them.

    FILE is a drawing or a project; marks are on layers that begin with ENCLOSURE-CHECK-. Each
    drawing is written to a file of its own.
    """
    from enclosure_app.model.report import Report
    from enclosure_app.reports.text_report import summary

    markings = _markings(_handed(files, output, asked), files, asked["drawing"])
    _must_be_used(asked["drawing"], markings)
    outputs = _outputs(output, [each.source for each in markings])
    for marking, path in zip(markings, outputs, strict=True):
        keep_inputs(path, [each.source for each in markings])
        with own_faults_in_words(str(path)):
            for name in _written(marking, path, asked["link"]):
                say(f"{name} is not drawn in {marking.source} and was left out.", sys.stderr)
        say(f"{path} is written: {summary(Report((marking.result,)))}", sys.stdout)
    return status(each.result for each in markings)


@dataclass(frozen=True, slots=True)
class _Marking:
    """One drawing that is to be marked: where it is, and what was found in it."""

    source: Path
    result: "DrawingResult"
    scope: str


def _markings(
    handed: Sequence["HandedOver"], files: Sequence[Path], moved: Sequence[Path]
) -> list[_Marking]:
    return [
        _Marking(
            file if not is_project(file) else _source(file, result, each.results, moved),
            result,
            each.project.id,
        )
        for file, each in zip(files, handed, strict=True)
        for result in each.results
    ]


def _must_be_used(moved: Sequence[Path], markings: Sequence[_Marking]) -> None:
    """Refuse a drawing that was named for a project and takes no drawing's place there."""
    for path in moved:
        if all(each.source != path for each in markings):
            raise EnclosureError(
                f"{path}: no project that is to be marked has a drawing of this name; give the "
                "moved drawing the name that it had, or leave --drawing out."
            )


def _written(marking: _Marking, path: Path, link: str) -> tuple[str, ...]:
    """Write one drawing; return the names of sections that are not drawn in it."""
    from enclosure_app.reports.dxf.marks import MarkJob, write_dxf
    from enclosure_app.reports.dxf.source import sheet_beside

    job = MarkJob(link or sheet_beside(path, marking.source), marking.scope)
    return write_dxf(path, marking.source, marking.result, job)


def _outputs(output: Path, sources: Sequence[Path]) -> tuple[Path, ...]:
    """Return where each marked drawing goes: into a folder where there are several, or one is named."""
    from enclosure_app.files.atomic import made_folder
    from enclosure_app.reports.dxf.source import marked_names

    if len(sources) == 1 and output.suffix and not output.is_dir():
        must_end(output, ".dxf")
        return (output,)
    if output.suffix.casefold() == ".dxf":
        raise EnclosureError(
            f"{output}: there are {len(sources)} drawings, each to be a file of its own; name a "
            "folder for them."
        )
    made_folder(output)
    return marked_names(sources, output)


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

    handed = _handed(files, output, asked, ".csv", ".xlsx")
    with own_faults_in_words(str(output)):
        made = tables_of(handed, datetime.now(UTC))
        if output.suffix.casefold() == ".xlsx":
            written = [made.findings, made.site]
            write_xlsx(output, written, made.about)
        else:
            written = [made.site if asked["site"] else made.findings]
            write_csv(output, written[0])
        if asked["photographs"]:
            write_photographs(asked["photographs"], made.photographs)
    told = ", ".join(f"{each.name.lower()}: {len(each.rows)}" for each in written)
    say(f"{output} is written ({told}).", sys.stdout)
    return status(each.result for each in handed)


@click.command("exchange")
@click.argument("files", type=FILE, nargs=-1, required=True, metavar="FILE...")
@click.option("-o", "--output", type=FILE, required=True, metavar="BCF", help="File to write.")
@reading_options
def exchange(files: tuple[Path, ...], output: Path, **asked: Unpack[Asked]) -> int:
    """Check drawings or projects and write their findings as BCF 2.1, for a coordinator."""
    from enclosure_app.model.report import Report
    from enclosure_app.reports.bcf.archive import write_bcf
    from enclosure_app.reports.handed_over import bcf_of
    from enclosure_app.reports.text_report import summary

    handed = _handed(files, output, asked, ".bcf", ".bcfzip")
    results = tuple(each.result for each in handed)
    with own_faults_in_words(str(output)):
        write_bcf(output, *bcf_of(handed, datetime.now(UTC)))
    say(f"{output} is written: {summary(Report(results))}", sys.stdout)
    return status(results)


def _handed(
    files: Sequence[Path], output: Path, asked: Asked, *endings: str
) -> list["HandedOver"]:
    """Return what is handed over of each file, read and checked as asked for."""
    keep_inputs(output, (*files, asked["layers"]))
    if endings:
        must_end(output, *endings)
    made = []
    for file in with_progress(files, "Checking"):
        with own_faults_in_words(str(file)):
            made.append(_project(file) if is_project(file) else _drawing(file, asked))
    return made


def _drawing(file: Path, asked: Asked) -> "HandedOver":
    from enclosure_app.model.project import project_from
    from enclosure_app.reports.handed_over import HandedOver

    check = checker(asked, linework=True)
    result = check(file)
    return HandedOver(project_from(result.drawing), result, check.limits)


def _project(file: Path) -> "HandedOver":
    """Read a project, with its own layers and figures, and what was decided."""
    from enclosure_app.files.projects import limits_of
    from enclosure_app.model.standing.verdicts import with_verdicts
    from enclosure_app.reports.handed_over import HandedOver

    now = judged(file)
    decided = tuple(with_verdicts(each, now.project) for each in now.result.sections)
    result = replace(now.result, sections=decided)
    return HandedOver(now.project, result, limits_of(now.project))


def _source(
    file: Path, result: "DrawingResult", every: Sequence["DrawingResult"], moved: Sequence[Path]
) -> Path:
    """Return the drawing of a project that is to be marked: the one that was named for it."""
    from enclosure_app.reports.dxf.source import drawing_of_project, file_name

    name = result.drawing.file
    named = [each for each in moved if each.name.casefold() == file_name(name).casefold()]
    if len(every) == 1:
        named += moved
    source = named[0] if named else drawing_of_project(name, file)
    if source is None:
        missing = name or "a drawing, from which it would have been read,"
        raise EnclosureError(
            f"{file}: {missing} is not there to be marked; name the drawing with --drawing DXF."
        )
    return source
