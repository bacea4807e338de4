"""The command that tells what reviewers answered in a marked-up PDF."""

import sys
from pathlib import Path
from typing import TYPE_CHECKING

import click

from enclosure_app.cli.complaints import own_faults_in_words
from enclosure_app.cli.judging import keep_inputs
from enclosure_app.cli.options import FILE
from enclosure_app.cli.projects import judged
from enclosure_app.cli.statuses import NOTHING_WRONG, status
from enclosure_app.cli.terminal import say, text_width
from enclosure_app.errors import EnclosureError
from enclosure_app.files.project.named import is_project

if TYPE_CHECKING:
    from enclosure_app.files.replies.answers import Outcome
    from enclosure_app.files.replies.proposal import Proposal

_Told = tuple[tuple["Proposal", ...], tuple["Outcome", ...] | None]


@click.command("replies")
@click.argument("file", type=FILE, metavar="PDF")
@click.option(
    "--against",
    type=FILE,
    metavar="PROJECT",
    help="Say what each answer would do to this project: match, changed since, already said.",
)
@click.option(
    "--json",
    "json_path",
    type=FILE,
    metavar="PATH",
    help="Write the answers as JSON as well; - writes JSON to standard output and nothing else.",
)
def replies(file: Path, against: Path | None, json_path: Path | None) -> int:
    """Tell what reviewers answered in a marked-up PDF, and what is proposed from it.

    Nothing is taken over. With a project, the exit status is 1 where that has faults, as for check.
    """
    from enclosure_app.files.replies.replies import read_replies
    from enclosure_app.reports.json_report import write_json
    from enclosure_app.reports.replies_json import replies_json
    from enclosure_app.reports.replies_text import replies_text

    keep_inputs(json_path, (file, against))
    with own_faults_in_words(str(file)):
        read = read_replies(file)
    (proposals, outcomes), exit_status = _held(read, against)
    text = replies_json(proposals, str(file), str(against) if against else None, outcomes)
    if str(json_path) == "-":
        say(text, sys.stdout)
        return exit_status
    say(replies_text(proposals, width=text_width(), outcomes=outcomes), sys.stdout)
    if json_path:
        write_json(json_path, text)
    return exit_status


def _held(read: tuple["Proposal", ...], against: Path | None) -> tuple[_Told, int]:
    """Return what each answer comes to in a project, and the exit status."""
    if against is None:
        return (read, None), NOTHING_WRONG
    from enclosure_app.files.replies.answers import held_against

    if not is_project(against):
        raise EnclosureError(
            f"{against} is no project: name the file that was saved, NAME.enclosure.json."
        )
    with own_faults_in_words(str(against)):
        now = judged(against)
    found = [finding for section in now.result.sections for finding in section.findings]
    held = held_against(now.project, found, read)
    told = tuple(each.proposal for each in held), tuple(each.outcome for each in held)
    return told, status((now.result,))
