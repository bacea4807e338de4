"""The command line: reads what was typed, walks the road, writes what came out.

The road is ``read -> check -> show or write``. Everything heavy (the DXF reader, the checker, Qt)
is imported inside the command that needs it, so that ``--help`` answers at once.
"""

import os
import sys
from collections.abc import Callable, Iterable, Sequence
from dataclasses import replace
from datetime import datetime
from difflib import get_close_matches
from pathlib import Path
from types import MappingProxyType
from typing import TYPE_CHECKING, Unpack

import click

from enclosure_app import __version__
from enclosure_app.cli_options import FILE, Asked, SheetAsked, reading_options
from enclosure_app.errors import EnclosureError
from enclosure_app.reports.complaints import complain, own_faults_in_words, usage_sentence
from enclosure_app.reports.terminal import reflowed, say, takes_colour, text_width, with_progress

if TYPE_CHECKING:
    from enclosure_app.files.layer_map import LayerMap
    from enclosure_app.model.limits import Limits
    from enclosure_app.model.report import DrawingResult

NOTHING_WRONG, FAULTS, UNUSABLE = 0, 1, 2
STOPPED = 130  # what shells report for a program that was stopped from the keyboard

_PROGRAM = "enclosure-app"


def main(arguments: Sequence[str] | None = None) -> int:
    """Run the command line and return its exit status; no error leaves as a traceback."""
    first, *more = (arguments if arguments is not None else sys.argv[1:]) or [""]
    if first == "read-apart":
        return _read_apart(*more)
    try:
        with own_faults_in_words("This command"):
            return int(_commands.main(arguments, prog_name=_PROGRAM, standalone_mode=False) or 0)
    except EnclosureError as error:
        complain(error)
    except click.ClickException as error:
        say(usage_sentence(error), sys.stderr)
    except (click.Abort, KeyboardInterrupt):
        say("Stopped.", sys.stderr)
        return STOPPED
    return UNUSABLE


def _read_apart(language: str = "en") -> int:
    """Read drawings for the window, as its own process."""
    from enclosure_app.window.reading_apart import serve

    serve(language)
    return NOTHING_WRONG


class _Commands(click.Group):
    """The commands; a first word that is no command is a file to open in the window."""

    def resolve_command(
        self, ctx: click.Context, args: list[str]
    ) -> tuple[str | None, click.Command | None, list[str]]:
        """Return the command for the first word, or the window for a file."""
        word = args[0]
        if word in self.commands or word.startswith("-"):
            return super().resolve_command(ctx, args)
        if not Path(word).suffix and not Path(word).exists():
            names = ", ".join(sorted(self.commands))
            raise click.UsageError(f"{word} is neither a file nor a command ({names}).", ctx)
        return "window", _window, args


@click.group(
    cls=_Commands,
    invoke_without_command=True,
    context_settings={"help_option_names": ["-h", "--help"]},
)
@click.version_option(__version__, prog_name=_PROGRAM, message="%(prog)s %(version)s")
@click.pass_context
def _commands(context: click.Context) -> int:
    """Check building sections for continuity of the water, air, vapour and heat layers.

    Without a command, or with a FILE alone, the window opens.

    Exit status: 0 nothing at fault level, 1 faults found, 2 the input cannot be used.
    """
    return NOTHING_WRONG if context.invoked_subcommand else _open_window()


@click.command("window")
@click.argument("files", type=FILE, nargs=-1, required=True)
@click.option("--layers", type=FILE, metavar="MAP", help="Layer map: what DXF layers mean.")
def _window(files: tuple[Path, ...], layers: Path | None) -> int:
    """Open the window on a project, or on drawings."""
    for file in files:
        if not file.exists():
            raise EnclosureError(f"{file}: there is no such file; name a drawing or a project.")
    return _open_window(files, layers)


def _open_window(files: tuple[Path, ...] = (), layers: Path | None = None) -> int:
    """Open the window; Qt is loaded only now."""
    if not _has_screen():
        raise EnclosureError(
            "There is no screen to open the window on: check a drawing with `enclosure-app check "
            "FILE`, or write its marked-up sheet with `enclosure-app sheet FILE -o OUT.pdf`."
        )
    from enclosure_app.files.layer_map import load_layer_map
    from enclosure_app.window.application import run

    if layers:
        load_layer_map(layers, _rule_names())  # refused here, where it was typed
    return run((*files, *([layers] if layers else ())))


def _has_screen() -> bool:
    """Whether there is something to open a window on."""
    named = ("DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM")
    return sys.platform in ("win32", "darwin") or any(map(os.environ.get, named))


@_commands.command("check")
@click.argument("files", type=FILE, nargs=-1, required=True, metavar="FILE...")
@click.option(
    "--json",
    "json_path",
    type=FILE,
    metavar="PATH",
    help="Write the report as JSON as well; - writes JSON to standard output and nothing else.",
)
@reading_options
def _check(files: tuple[Path, ...], json_path: Path | None, **asked: Unpack[Asked]) -> int:
    """Check drawings and report what was found, in walking order."""
    from enclosure_app.model.report import Report
    from enclosure_app.reports.json_report import json_text, write_json
    from enclosure_app.reports.text_report import write_text

    _keep_inputs(json_path, (*files, asked["layers"]))
    check_file = _checker(asked)
    results = []
    for file in with_progress(files, "Checking"):
        try:
            with own_faults_in_words(str(file)):
                results.append(check_file(file))
        except EnclosureError as error:
            complain(error, file)
    report = Report(tuple(results))
    if results and str(json_path) == "-":
        say(json_text(report), sys.stdout)
    elif results:
        colour = takes_colour(sys.stdout)
        say(write_text(report, width=text_width(), colour=colour), sys.stdout)
        if json_path:
            write_json(json_path, report)
    return UNUSABLE if len(results) < len(files) else _status(results)


@_commands.command("sheet")
@click.argument("files", type=FILE, nargs=-1, required=True, metavar="FILE...")
@click.option("-o", "--output", type=FILE, required=True, metavar="PDF", help="File to write.")
@click.option("--paper", default="A3", show_default=True, help="Paper: A4, A3, ANSI B, ANSI D.")
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
def _sheet(files: tuple[Path, ...], output: Path, **asked: Unpack[SheetAsked]) -> int:
    """Check drawings and write their marked-up sheets as one PDF."""
    from enclosure_app.drawing.job import SheetJob
    from enclosure_app.model.report import Report
    from enclosure_app.reports.pdf_report import write_sheets
    from enclosure_app.reports.text_report import summary

    _keep_inputs(output, (*files, asked["layers"]))
    check_file = _checker(asked, linework=True)
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
    return _status(results)


@_commands.command("replies")
@click.argument("file", type=FILE, metavar="PDF")
def _replies(file: Path) -> int:
    """Tell what reviewers answered in a marked-up PDF, and what is proposed from it."""
    from enclosure_app.files.pdf_replies import read_replies
    from enclosure_app.reports.replies_text import replies_text

    with own_faults_in_words(str(file)):
        proposals = read_replies(file)
    say(replies_text(proposals, width=text_width()), sys.stdout)
    return NOTHING_WRONG


@_commands.command("explain")
@click.argument("rule", required=False)
def _explain(rule: str | None) -> int:
    """Explain a RULE: what it finds, why it matters, what to draw; without RULE, list them."""
    from enclosure_app.rules import RULES
    from enclosure_app.rules.rule import page

    rules = {known.name: known for known in RULES}
    if rule is None:
        wide = max(map(len, rules))
        told = {name: page(known).splitlines()[0] for name, known in rules.items()}
        lines = [f"{name:{wide}}  {told[name].partition(': ')[2]}" for name in rules]
        say("\n".join(lines), sys.stdout)
    else:
        _must_be_rule(rule, list(rules))
        say(reflowed(page(rules[rule]), text_width()), sys.stdout)
    return NOTHING_WRONG


def _checker(asked: Asked, *, linework: bool = False) -> Callable[[Path], "DrawingResult"]:
    """Return what reads and checks one file as asked for; a layer map is read only once.

    `linework` also keeps the office's own lines, which only a sheet shows.
    """
    from enclosure_app.checker import check_drawing
    from enclosure_app.files.dxf_memory import kept_in_use
    from enclosure_app.files.layer_map import load_layer_map
    from enclosure_app.files.reading import ReadOptions, read_drawing
    from enclosure_app.model.drawing import Units

    rules = _rule_names()
    for rule, _ in asked["severity"]:
        _must_be_rule(rule, rules)
    layer_map = load_layer_map(asked["layers"], rules) if asked["layers"] else None
    options = ReadOptions(
        layer_map=layer_map,
        units=Units(asked["units"]) if asked["units"] else None,
        all_layers=asked["all_layers"],
        layout=asked["layout"],
        plan=asked["plan"],
        inside=asked["inside"],
        outside=asked["outside"],
        linework=linework,
    )
    limits = _limits(asked, layer_map)

    def check(file: Path) -> "DrawingResult":
        with kept_in_use():
            return check_drawing(read_drawing(file, options), limits)

    return check


def _limits(asked: Asked, layer_map: "LayerMap | None") -> "Limits":
    """Return the rule book; the layer map goes over it, and what was typed over both."""
    from enclosure_app.files.rule_book import load_limits
    from enclosure_app.model.finding import Severity

    severities = {rule: Severity(level) for rule, level in asked["severity"]}
    book = asked["book"] or (layer_map.book if layer_map else None)
    limits = load_limits(book) if book else load_limits()
    if layer_map:
        limits = limits.overridden(layer_map.limits, f"layer map {asked['layers']}")
        severities = {**layer_map.severities, **severities}
    return replace(limits, severities=MappingProxyType({**limits.severities, **severities}))


def _rule_names() -> list[str]:
    from enclosure_app.rules import RULES

    return [rule.name for rule in RULES]


def _must_be_rule(name: str, names: Sequence[str]) -> None:
    if name not in names:
        near = get_close_matches(name, names, n=1)
        mend = f"did you mean {near[0]}?" if near else f"the rules are {', '.join(names)}."
        raise EnclosureError(f"No rule is called {name}; {mend}")


def _keep_inputs(output: Path | None, inputs: Iterable[Path | None]) -> None:
    """Refuse to write over a drawing or a layer map that is to be read."""
    there = [file for file in inputs if file and file.exists()]
    if output and output.exists() and any(file.samefile(output) for file in there):
        raise EnclosureError(
            f"{output} is a file to be read; name another one to write to, so that it is kept."
        )


def _status(results: Iterable["DrawingResult"]) -> int:
    found = (f for result in results for section in result.sections for f in section.findings)
    return FAULTS if any(finding.severity == "fault" for finding in found) else NOTHING_WRONG
