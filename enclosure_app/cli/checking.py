"""The command that checks drawings and reports what was found."""

import sys
from contextlib import nullcontext
from dataclasses import replace
from pathlib import Path
from typing import TYPE_CHECKING, Unpack

import click

from enclosure_app.cli.complaints import complain, own_faults_in_words
from enclosure_app.cli.judging import checker, keep_inputs
from enclosure_app.cli.options import FILE, Asked, reading_options
from enclosure_app.cli.projects import judged
from enclosure_app.cli.statuses import UNUSABLE, status
from enclosure_app.cli.terminal import say, takes_colour, text_width, with_progress
from enclosure_app.errors import EnclosureError
from enclosure_app.files.project.named import is_project

if TYPE_CHECKING:
    from enclosure_app.model.report import DrawingResult


@click.command("check")
@click.argument("files", type=FILE, nargs=-1, required=True, metavar="FILE...")
@click.option(
    "--json",
    "json_path",
    type=FILE,
    metavar="PATH",
    help="Write the report as JSON as well; - writes JSON to standard output and nothing else.",
)
@reading_options
def check(files: tuple[Path, ...], json_path: Path | None, **asked: Unpack[Asked]) -> int:
    """Check drawings or projects and report what was found, in walking order."""
    from enclosure_app.files.dxf.memory import kept_in_use, set_aside

    # of a single drawing nothing is let go of before the program ends
    with kept_in_use() if len(files) == 1 else nullcontext():
        found = _check(files, json_path, asked)
        set_aside()  # nor is it looked through then
        return found


def _check(files: tuple[Path, ...], json_path: Path | None, asked: Asked) -> int:
    from enclosure_app.model.report import Report
    from enclosure_app.reports.json_report import json_text, write_json
    from enclosure_app.reports.text_report import write_text

    keep_inputs(json_path, (*files, asked["layers"]))
    check_file = checker(asked)
    results: list[DrawingResult] = []
    unusable = 0
    for file in with_progress(files, "Checking"):
        try:
            with own_faults_in_words(str(file)):
                results += _of_project(file) if is_project(file) else (check_file(file),)
        except EnclosureError as error:
            unusable += 1
            complain(error, file)
    report = Report(tuple(results))
    if results and str(json_path) == "-":
        say(json_text(report), sys.stdout)
    elif results:
        colour = takes_colour(sys.stdout)
        say(write_text(report, width=text_width(), colour=colour), sys.stdout)
        if json_path:
            write_json(json_path, json_text(report))
    return UNUSABLE if unusable else status(results)


def _of_project(file: Path) -> tuple["DrawingResult", ...]:
    """Return what is found in each drawing of a project; what was sketched is in its file."""
    from enclosure_app.reports.handed_over import by_drawing

    result = judged(file).result
    drawing = replace(result.drawing, file=result.drawing.file or str(file))
    return by_drawing(replace(result, drawing=drawing))
