"""What every role on a sheet looks like, read from ``resources/theme.toml``."""

import tomllib
from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache
from pathlib import Path
from types import MappingProxyType
from typing import Any

from enclosure_app.model.finding import Severity
from enclosure_app.model.product import Control, Kind
from enclosure_app.resources import resource


@dataclass(frozen=True, slots=True)
class Pen:
    """How a line is drawn: `colour` as ``#rrggbb``, `width` and `dash` (on, off, ...) in mm."""

    colour: str
    width: float
    dash: tuple[float, ...] = ()


@dataclass(frozen=True, slots=True)
class AreaLook:
    """A light fill and the hatches over it, each an angle in degrees and a distance in mm."""

    colour: str
    hatch: tuple[tuple[float, float], ...] = ()


@dataclass(frozen=True, slots=True)
class Theme:
    """Every pen, fill and lettering size of a sheet; heights of capitals in mm."""

    pens: Mapping[str, Pen]
    areas: Mapping[str, AreaLook]
    tints: Mapping[str, tuple[str, str, str]]
    small: float
    medium: float
    large: float
    ink: str
    quiet: str
    paper: str
    flag: str
    halo: float
    underlay: float

    def pen(self, role: str) -> Pen:
        """Return the pen of `role`; a missing one is a bug in the theme."""
        return self.pens[role]

    def control(self, control: Control) -> Pen:
        """Return the pen of one control."""
        return self.pens[control.value]

    def severity(self, severity: Severity) -> Pen:
        """Return the pen whose weight tells the severity; a finding that is off is a remark."""
        name = Severity.REMARK if severity is Severity.OFF else severity
        return self.pens[name.value]

    def area(self, kind: Kind) -> AreaLook:
        """Return the look of an area of `kind`."""
        return self.areas.get(kind.value, self.areas["other"])

    def halo_pen(self, width: float) -> Pen:
        """Return a pen of paper that clears the ground on both sides of a line of `width` mm."""
        return Pen(self.paper, width + 2 * self.halo)


@cache
def load_theme(path: Path | None = None) -> Theme:
    """Read a theme; without a `path` the one that is shipped."""
    file = path or resource("theme.toml")
    return _theme(tomllib.loads(file.read_text(encoding="utf-8")))


def _theme(data: Mapping[str, Any]) -> Theme:
    text, paper = data["text"], data["paper"]
    return Theme(
        pens=MappingProxyType({name: _pen(row) for name, row in data["pens"].items()}),
        areas=MappingProxyType({name: _area(row) for name, row in data["areas"].items()}),
        tints=MappingProxyType({name: (a, b, c) for name, (a, b, c) in data["tints"].items()}),
        small=text["small"],
        medium=text["medium"],
        large=text["large"],
        ink=text["colour"],
        quiet=text["quiet"],
        paper=paper["colour"],
        flag=paper["flag"],
        halo=paper["halo"],
        underlay=paper["underlay"],
    )


def _pen(row: Mapping[str, Any]) -> Pen:
    return Pen(row["colour"], row["width"], tuple(row.get("dash", ())))


def _area(row: Mapping[str, Any]) -> AreaLook:
    return AreaLook(row["colour"], tuple((angle, step) for angle, step in row.get("hatch", ())))
