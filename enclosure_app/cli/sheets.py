"""The commands for marked-up sheets: they are written, and what reviewers answered is read back."""

import sys
from datetime import datetime
from pathlib import Path
from typing import Unpack

import click

from enclosure_app.cli.judging import checker, keep_inputs
from enclosure_app.cli.options import FILE, SheetAsked, reading_options
from enclosure_app.cli.statuses import NOTHING_WRONG, status
from enclosure_app.reports.complaints import own_faults_in_words
from enclosure_app.reports.terminal import say, text_width, with_progress


@click.command("sheet")
@click.argument("files", type=FILE, nargs=-1, required=True, metavar="FILE...")
@click.option("-o", "--output", type=FILE, required=True, metavar="PDF", help="File to write.")
@click.option(
    "--paper", default="A3", show_default=True, help="Paper: A4 to A0, ANSI B to ANSI E."
)
@click.option("--scale", metavar="1:N", help="Scale; without it, the largest usual one that fits.")
@click.option("--project", default="", help="Project, for the title block.")
@click.option("--revision", default="", help="Revision, for the title block.")
@click.option("--who", default="", help="Who issues the sheet, for the title block.")
@click.option(
    "--date", "day", type=click.DateTime(["%Y-%m-%d"]), help="Date of issue; else today."
)
@click.option(
    "--cover/--no-cover",
    default=None,
    help="Begin with a cover: sheets, counts and sign-offs. Else only for several drawings.",
)
@reading_options
def sheet(files: tuple[Path, ...], output: Path, **asked: Unpack[SheetAsked]) -> int:
    """Check drawings and write their marked-up sheets as one PDF."""
    from enclosure_app.drawing.sheet.job import SheetJob
    from enclosure_app.model.report import Report
    from enclosure_app.reports.pdf.report import write_sheets
    from enclosure_app.reports.text_report import summary

    keep_inputs(output, (*files, asked["layers"]))
    check_file = checker(asked, linework=True)
    job = SheetJob(
        paper=asked["paper"],
        scale=asked["scale"],
        project=asked["project"],
        revision=asked["revision"],
        who=asked["who"],
        date=f"{asked['day'] or datetime.now().astimezone():%Y-%m-%d}",
        cover=len(files) > 1 if asked["cover"] is None else asked["cover"],
    )
    results = []
    for file in with_progress(files, "Checking"):
        with own_faults_in_words(str(file)):
            results.append(check_file(file))
    with own_faults_in_words(str(output)):
        write_sheets(output, tuple(results), job)
    say(f"{output} is written: {summary(Report(tuple(results)))}", sys.stdout)
    return status(results)


@click.command("replies")
@click.argument("file", type=FILE, metavar="PDF")
def replies(file: Path) -> int:
    """Tell what reviewers answered in a marked-up PDF, and what is proposed from it."""
    from enclosure_app.files.replies.replies import read_replies
    from enclosure_app.reports.replies_text import replies_text

    with own_faults_in_words(str(file)):
        proposals = read_replies(file)
    say(replies_text(proposals, width=text_width()), sys.stdout)
    return NOTHING_WRONG
