"""In what units a drawing is drawn: what the file says, weighed against what it shows."""

from collections.abc import Mapping
from math import log
from types import MappingProxyType

from enclosure_app.errors import EnclosureError
from enclosure_app.files.units.evidence import (
    Evidence,
    has_odd_letters,
    has_usual_extent,
    is_too_small_a_room,
    is_usual,
)
from enclosure_app.files.units.shown import Shown, by_dimensions, by_elimination, by_thickness
from enclosure_app.files.units.written import called
from enclosure_app.language import say, written
from enclosure_app.model.drawing import Note, NoteLevel, Units

HEADER: Mapping[int, Units] = MappingProxyType(
    {1: Units.IN, 2: Units.FT, 4: Units.MM, 5: Units.CM, 6: Units.M, 21: Units.FT, 22: Units.IN}
)
"""The codes of $INSUNITS (DXF reference, header variables) that a section may be drawn in."""

USUAL = 4000.0  # mm, the middle of what sections are across (common practice, no source)


class UnitsError(EnclosureError):
    """The units of a drawing cannot be told: `evidence` is what it shows of them."""

    def __init__(self, said: str, evidence: Evidence) -> None:
        super().__init__(said)
        self.evidence = evidence


def judge_units(evidence: Evidence) -> tuple[Units, tuple[Note, ...]]:
    """Return the drawing's units, with a note where they are not what the file says.

    Raises:
        UnitsError: the file says nothing and shows too little, or says one thing and shows
            another.
    """
    header = HEADER.get(evidence.insunits)
    usual = header is not None and is_usual(evidence, header)
    shown = by_dimensions(evidence.dimensions)
    shown = shown or by_thickness(evidence.thicknesses, 3 if usual else 2)
    if header is None:
        return _without_header(evidence, shown or by_elimination(evidence))
    if (shown is None and usual) or (shown is not None and shown[0] is header):
        return header, ()
    if usual and shown is not None:
        raise UnitsError(_disagrees(evidence, header, shown[1], shown[0]), evidence)
    both_odd = has_odd_letters(evidence, header) and not has_usual_extent(evidence, header)
    shown = shown or (by_elimination(evidence) if both_odd else None)
    if shown is None or not has_usual_extent(evidence, shown[0]):
        raise UnitsError(_disagrees(evidence, header, _oddities(evidence, header)), evidence)
    text = say(
        "The file says {header}, but is read in {units}: {shown}, and {odd}.",
        header=called(header),
        units=called(shown[0]),
        shown=shown[1],
        odd=_oddities(evidence, header),
    )
    return shown[0], (Note(NoteLevel.GUESSED, text),)


def likely_units(evidence: Evidence) -> tuple[Units, ...]:
    """Return all units, the one that a drawing is most likely drawn in first.

    What its dimensions or boards say comes first, then what the file says; then units in which
    it is as large as sections are, its letters as high, and measured as the file says.
    """
    shown = by_dimensions(evidence.dimensions) or by_thickness(evidence.thicknesses, 1)
    header = HEADER.get(evidence.insunits)

    def unlikely(unit: Units) -> tuple[bool, bool, bool, bool, bool, bool, float]:
        across = evidence.across(unit)
        return (
            shown is None or shown[0] is not unit,
            not has_usual_extent(evidence, unit),
            has_odd_letters(evidence, unit),
            header is not unit,
            unit is Units.CM,  # rare
            evidence.metric is not None and unit.imperial is evidence.metric,
            abs(log(across / USUAL)) if across > 0 else 0.0,
        )

    return tuple(sorted(Units, key=unlikely))


def told_units(units: Units, evidence: Evidence) -> tuple[Note, ...]:
    """Return a note where the person says other units than the file."""
    header = HEADER.get(evidence.insunits)
    if header in (None, units):
        return ()
    text = say(
        "The file says {header}; it is read in {units}, as told.",
        header=called(header),
        units=called(units),
    )
    return (Note(NoteLevel.READ, text),)


def _without_header(evidence: Evidence, shown: Shown | None) -> tuple[Units, tuple[Note, ...]]:
    if shown is not None and has_usual_extent(evidence, shown[0]):
        text = say(
            "The file names no units; read in {units}: {shown}.",
            units=called(shown[0]),
            shown=shown[1],
        )
        return shown[0], (Note(NoteLevel.GUESSED, text),)
    if shown is None:
        raise UnitsError(
            say(
                "{file} does not say in which units it is drawn: say so with --units mm, cm, m, in "
                "or ft.",
                file=evidence.file,
            ),
            evidence,
        )
    raise UnitsError(
        say(
            "{file} does not say in which units it is drawn ({shown}, but {across}): say so with "
            "--units mm, cm, m, in or ft.",
            file=evidence.file,
            shown=shown[1],
            across=_across(evidence, shown[0]),
        ),
        evidence,
    )


def _oddities(evidence: Evidence, unit: Units) -> str:
    says = []
    if not has_usual_extent(evidence, unit):
        says.append(_across(evidence, unit))
    tall = evidence.letters(unit)
    if tall is not None and has_odd_letters(evidence, unit):
        high = written(f"{tall:.{0 if tall >= 10 else 2}f}")
        says.append(say("its texts would be {high} mm high", high=high))
    return say(" and ").join(says)


def _across(evidence: Evidence, unit: Units) -> str:
    if is_too_small_a_room(evidence, unit):
        return say(
            "what it draws with furniture (layer {layer}) would be {high:.3g} m high",
            layer=evidence.furniture,
            high=evidence.drawn_high * unit.in_mm / 1000,
        )
    return say("the section would be {across:.4g} m across", across=evidence.across(unit) / 1000)


def _disagrees(evidence: Evidence, header: Units, why: str, shown: Units | None = None) -> str:
    """Return the question; where nothing shows other units, any may be the right ones."""
    if shown is None:
        return say(
            "{file} says {header}, but {why}: say which it is with --units mm, cm, m, in or ft.",
            file=evidence.file,
            header=called(header),
            why=why,
        )
    return say(
        "{file} says {header}, but {why}: say which with --units {other} or --units {units}.",
        file=evidence.file,
        header=called(header),
        why=why,
        other=shown.value,
        units=header.value,
    )
