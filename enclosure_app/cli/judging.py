"""Reads and checks what was named, as it was asked for."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from difflib import get_close_matches
from pathlib import Path
from types import MappingProxyType
from typing import TYPE_CHECKING

from enclosure_app.cli.options import Asked
from enclosure_app.errors import EnclosureError

if TYPE_CHECKING:
    from enclosure_app.files.maps.layer_map import LayerMap
    from enclosure_app.files.reading import ReadOptions
    from enclosure_app.model.limits import Limits
    from enclosure_app.model.report import DrawingResult


@dataclass(frozen=True, slots=True)
class Checker:
    """Reads and checks one file after another, all in the same way."""

    options: "ReadOptions"
    limits: "Limits"

    def __call__(self, file: Path) -> "DrawingResult":
        """Return what was found in one drawing.

        Raises:
            EnclosureError: it cannot be read.
        """
        from enclosure_app.checker import check_drawing
        from enclosure_app.files.dxf.memory import kept_in_use
        from enclosure_app.files.reading import read_drawing

        with kept_in_use():
            return check_drawing(read_drawing(file, self.options), self.limits)


def checker(asked: Asked, *, linework: bool = False) -> Checker:
    """Return what reads and checks one file as asked for; a layer map is read only once.

    `linework` also keeps the office's own lines, which only a sheet shows.
    """
    from enclosure_app.files.maps.layer_map import load_layer_map
    from enclosure_app.files.reading import ReadOptions
    from enclosure_app.model.drawing import Units

    rules = rule_names()
    for rule, _ in asked["severity"]:
        must_be_rule(rule, rules)
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
    return Checker(options, _limits(asked, layer_map))


def _limits(asked: Asked, layer_map: "LayerMap | None") -> "Limits":
    """Return the rule book; the layer map goes over it, and what was typed over both."""
    from enclosure_app.files.maps.rule_book import load_limits
    from enclosure_app.model.finding import Severity

    severities = {rule: Severity(level) for rule, level in asked["severity"]}
    book = asked["book"] or (layer_map.book if layer_map else None)
    limits = load_limits(book) if book else load_limits()
    if layer_map:
        limits = limits.overridden(layer_map.limits, f"layer map {asked['layers']}")
        severities = {**layer_map.severities, **severities}
    return replace(limits, severities=MappingProxyType({**limits.severities, **severities}))


def rule_names() -> list[str]:
    """Return the names of all rules."""
    from enclosure_app.rules import RULES

    return [rule.name for rule in RULES]


def must_be_rule(name: str, names: Sequence[str]) -> None:
    """Refuse a name that no rule has.

    Raises:
        EnclosureError: no rule is called so.
    """
    if name not in names:
        near = get_close_matches(name, names, n=1)
        mend = f"did you mean {near[0]}?" if near else f"the rules are {', '.join(names)}."
        raise EnclosureError(f"No rule is called {name}; {mend}")


def keep_inputs(output: Path | None, inputs: Iterable[Path | None]) -> None:
    """Refuse to write over a drawing or a layer map that is to be read.

    Raises:
        EnclosureError: an output is one of the inputs.
    """
    there = [file for file in inputs if file and file.exists()]
    if output and output.exists() and any(file.samefile(output) for file in there):
        raise EnclosureError(
            f"{output} is a file to be read; name another one to write to, so that it is kept."
        )


def must_end(output: Path, *endings: str) -> None:
    """Refuse to write to a folder, or to a file whose ending says that it holds something else.

    Raises:
        EnclosureError: `output` has none of the endings, which are written as in ``.pdf``.
    """
    wanted = f"name a file that ends in {' or '.join(endings)}."
    if output.is_dir():
        raise EnclosureError(f"{output} is a folder: {wanted}")
    if output.suffix.casefold() not in endings:
        raise EnclosureError(f"{output}: {wanted}")
