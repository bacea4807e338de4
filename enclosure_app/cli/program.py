"""The command line: reads what was typed, walks the road, writes what came out.

The road is ``read -> check -> show or write``. Everything heavy (the DXF reader, the checker, Qt)
is imported inside the command that needs it, so that ``--help`` answers at once.
"""

import os
import sys
from collections.abc import Sequence
from pathlib import Path

import click

from enclosure_app import __version__
from enclosure_app.cli.checking import check
from enclosure_app.cli.complaints import complain, own_faults_in_words, usage_sentence
from enclosure_app.cli.explaining import explain
from enclosure_app.cli.handing_over import exchange, mark, table
from enclosure_app.cli.judging import rule_names
from enclosure_app.cli.options import FILE
from enclosure_app.cli.replying import replies
from enclosure_app.cli.sheets import sheet
from enclosure_app.cli.statuses import NOTHING_WRONG, STOPPED, UNUSABLE
from enclosure_app.cli.terminal import say
from enclosure_app.errors import EnclosureError

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
    from enclosure_app.window.apart.reading import serve

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
    from enclosure_app.files.maps.layer_map import load_layer_map
    from enclosure_app.window.application import run

    if layers:
        load_layer_map(layers, rule_names())  # refused here, where it was typed
    return run((*files, *([layers] if layers else ())))


def _has_screen() -> bool:
    """Whether there is something to open a window on."""
    named = ("DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM")
    return sys.platform in ("win32", "darwin") or any(map(os.environ.get, named))


for _command in (check, sheet, replies, mark, table, exchange, explain):
    _commands.add_command(_command)
