"""The command that writes marked-up sheets."""

import sys
from dataclasses import replace
from datetime import datetime
from pathlib import Path
from typing import TYPE_CHECKING, Unpack

import click

from enclosure_app.cli.complaints import own_faults_in_words
from enclosure_app.cli.judging import checker, keep_inputs, must_end
from enclosure_app.cli.options import FILE, SheetAsked, day, reading_options
from enclosure_app.cli.projects import judged
from enclosure_app.cli.statuses import status
from enclosure_app.cli.terminal import say, with_progress
from enclosure_app.errors import EnclosureError
from enclosure_app.files.project.named import is_project

if TYPE_CHECKING:
    from enclosure_app.drawing.sheet.job import SheetJob
    from enclosure_app.model.report import DrawingResult

_Order = tuple[tuple["DrawingResult", ...], "SheetJob"]


@click.command("sheet")
@click.argument("files", type=FILE, nargs=-1, required=True, metavar="FILE...")
@click.option("-o", "--output", type=FILE, required=True, metavar="PDF", help="File to write.")
@click.option(
    "--paper",
    metavar="NAME",
    help="Paper: A4 to A0, ANSI B to ANSI E. Else A3; ANSI B for a project in feet or inches.",
)
@click.option("--scale", metavar="1:N", help="Scale; without it, the largest usual one that fits.")
@click.option("--project", default="", help="Project, for the title block.")
@click.option("--revision", default="", help="Revision, for the title block.")
@click.option("--who", default="", help="Who issues the sheet, for the title block.")
@click.option(
    "--date", "day", callback=day, metavar="YYYY-MM-DD", help="Date of issue; else today."
)
@click.option(
    "--cover/--no-cover",
    default=None,
    help="Begin with a cover: sheets, counts and sign-offs. Else only for several drawings.",
)
@reading_options
def sheet(files: tuple[Path, ...], output: Path, **asked: Unpack[SheetAsked]) -> int:
    """Check drawings, or a project, and write their marked-up sheets as one PDF.

    A project brings its title, its verdicts and who signed; reading options are for drawings.
    """
    from enclosure_app.model.report import Report
    from enclosure_app.reports.pdf.report import write_sheets
    from enclosure_app.reports.text_report import summary

    keep_inputs(output, (*files, asked["layers"]))
    must_end(output, ".pdf")
    projects = [file for file in files if is_project(file)]
    if projects and len(files) > 1:
        raise EnclosureError(f"{projects[0]}: a project is issued alone; name no other file.")
    results, job = _of_project(projects[0], asked) if projects else _of_drawings(files, asked)
    with own_faults_in_words(str(output)):
        write_sheets(output, results, job)
    say(f"{output} is written: {summary(Report(results))}", sys.stdout)
    return status(results)


def _of_drawings(files: tuple[Path, ...], asked: SheetAsked) -> _Order:
    """Return what is found in drawings, and the order for their sheets."""
    from enclosure_app.drawing.sheet.job import SheetJob

    check_file = checker(asked, linework=True)
    results = []
    for file in with_progress(files, "Checking"):
        with own_faults_in_words(str(file)):
            results.append(check_file(file))
    job = SheetJob(
        paper=asked["paper"] or "A3",
        scale=asked["scale"],
        project=asked["project"],
        revision=asked["revision"],
        who=asked["who"],
        date=_date(asked),
        cover=len(files) > 1 if asked["cover"] is None else asked["cover"],
    )
    return tuple(results), job


def _of_project(file: Path, asked: SheetAsked) -> _Order:
    """Return what is found in a project with what was decided, and the order for its sheets."""
    from enclosure_app.drawing.sheet.setup import SheetSetup
    from enclosure_app.window.filing.printing import drawn, job_for

    with own_faults_in_words(str(file)):
        now = judged(file)
    setup = SheetSetup(
        paper=asked["paper"] or "",
        scale=asked["scale"] or "",
        revision=asked["revision"],
        who=asked["who"],
        cover=asked["cover"],
    )
    job = job_for(now.project, setup)
    title = asked["project"] or job.project
    return (drawn(now.project, now.result.sections),), replace(
        job, project=title, date=_date(asked)
    )


def _date(asked: SheetAsked) -> str:
    return f"{asked['day'] or datetime.now().astimezone().date()}"
