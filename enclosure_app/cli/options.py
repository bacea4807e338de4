"""What several commands let a person type: how drawings are read, and what goes onto a sheet."""

from collections.abc import Callable
from datetime import date
from math import isfinite
from pathlib import Path
from typing import TypedDict, TypeVar

import click

FILE = click.Path(path_type=Path, readable=False)  # whoever reads it says why it cannot be
_LEVELS = ("fault", "doubt", "remark", "off")
Point = tuple[float, float]
_Command = TypeVar("_Command", bound=Callable[..., object])


class Asked(TypedDict):
    """What the reading options say, as typed."""

    layers: Path | None
    units: str | None
    inside: tuple[Point, ...]
    outside: tuple[Point, ...]
    all_layers: bool
    layout: str
    plan: bool
    book: str | None
    severity: tuple[tuple[str, str], ...]


class SheetAsked(Asked):
    """What the options of the sheet say as well."""

    paper: str | None
    scale: str | None
    project: str
    revision: str
    who: str
    day: date | None
    cover: bool | None


def day(_context: click.Context, _option: click.Parameter, typed: str | None) -> date | None:
    """Read a day typed as YYYY-MM-DD."""
    try:
        return date.fromisoformat(typed) if typed else None
    except ValueError as error:
        raise click.BadParameter(f"{typed} is no day; type it as in 2026-03-24.") from error


def _points(
    _context: click.Context, _option: click.Parameter, typed: tuple[str, ...]
) -> tuple[Point, ...]:
    """Read points typed as X,Y."""
    return tuple(_point(text) for text in typed)


def _point(text: str) -> Point:
    try:
        x, y = (float(number) for number in text.split(","))
    except ValueError:
        x = y = float("nan")
    if not (isfinite(x) and isfinite(y)):
        raise click.BadParameter(f"{text} is not a point; type two numbers as in 120,35.5.")
    return x, y


def _levels(
    _context: click.Context, _option: click.Parameter, typed: tuple[str, ...]
) -> tuple[tuple[str, str], ...]:
    """Read severities typed as RULE=LEVEL."""
    pairs = tuple((rule, level) for rule, _, level in (text.partition("=") for text in typed))
    for text, (_, level) in zip(typed, pairs, strict=True):
        if level not in _LEVELS:
            raise click.BadParameter(
                f"{text} sets no level; type it as in gap=doubt, with one of {', '.join(_LEVELS)}."
            )
    return pairs


_READING = (
    click.option("--layers", type=FILE, metavar="MAP", help="Layer map: what DXF layers mean."),
    click.option(
        "--units",
        type=click.Choice(["mm", "cm", "m", "in", "ft"]),
        help="Units of a drawing that does not say, or says it wrongly.",
    ),
    click.option(
        "--inside",
        callback=_points,
        metavar="X,Y",
        multiple=True,
        help="A point inside, in the drawing's own units; may be repeated.",
    ),
    click.option(
        "--outside",
        callback=_points,
        metavar="X,Y",
        multiple=True,
        help="A point outside, in the drawing's own units; may be repeated.",
    ),
    click.option("--all-layers", is_flag=True, help="Read layers that are switched off too."),
    click.option("--layout", default="Model", show_default=True, help="Layout to read."),
    click.option("--plan", is_flag=True, help="The drawing is a plan: nothing runs downhill."),
    click.option("--book", metavar="NAME", help="Rule book that the required figures come from."),
    click.option(
        "--severity",
        callback=_levels,
        metavar="RULE=LEVEL",
        multiple=True,
        help="How loud a rule is: fault, doubt, remark or off; may be repeated.",
    ),
)


def reading_options(command: _Command) -> _Command:
    """Give a command the options that say how drawings are read."""
    for option in reversed(_READING):
        command = option(command)
    return command
