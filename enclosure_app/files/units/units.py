"""In what units a drawing is drawn: what the file says, weighed against what it shows.

Text heights: details are plotted at 1:1 to 1:50 with letters some 1.8 to 5 mm high (ISO 3098-1
gives 1.8, 2.5, 3.5 and 5 mm; the range of scales is common practice, no source). Sections are
between 0.3 m and 60 m across (common practice, no source).
"""

import re
from collections import Counter
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from math import log
from types import MappingProxyType

import numpy as np

from enclosure_app.errors import EnclosureError
from enclosure_app.files.dxf.raw import RawDimension
from enclosure_app.language import say, written
from enclosure_app.model.drawing import Note, NoteLevel, Units

HEADER: Mapping[int, Units] = MappingProxyType(
    {1: Units.IN, 2: Units.FT, 4: Units.MM, 5: Units.CM, 6: Units.M, 21: Units.FT, 22: Units.IN}
)
"""The codes of $INSUNITS (DXF reference, header variables) that a section may be drawn in."""

NAMES: Mapping[Units, str] = MappingProxyType(
    {
        Units.MM: "millimetres",
        Units.CM: "centimetres",
        Units.M: "metres",
        Units.IN: "inches",
        Units.FT: "feet",
    }
)
ACROSS = (300.0, 60_000.0)  # mm
USUAL = 4000.0  # mm, the middle of what sections are across (common practice, no source)
ACROSS_SHEET = (50.0, 1_000_000.0)  # mm, where the letters confirm the unit
LETTERS = (1.5, 260.0)  # mm, as they stand on a detail drawn full size
SURE_LETTERS = (8.0, 200.0)  # mm, at the usual 1:5 to 1:50
NEAR = 0.02  # how closely a dimension's text has to say what is measured
THICKNESS = 0.3  # how closely a drawn thickness has to be the product's


@dataclass(frozen=True, slots=True)
class Evidence:
    """What a drawing shows of its units; lengths in drawing units.

    `thicknesses` holds pairs of a drawn thickness and the product's in mm. `extent` is the
    larger side of what was mapped, `high` how high that is. `metric` is $MEASUREMENT, None where
    absent.
    """

    file: str
    insunits: int = 0
    metric: bool | None = None
    dimensions: tuple[RawDimension, ...] = ()
    heights: tuple[float, ...] = ()
    thicknesses: tuple[tuple[float, float], ...] = ()
    extent: float = 0.0
    high: float = 0.0


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
    usual = header is not None and _usual(evidence, header)
    shown = _by_dimensions(evidence.dimensions)
    shown = shown or _by_thickness(evidence.thicknesses, 3 if usual else 2)
    if header is None:
        return _without_header(evidence, shown or _by_elimination(evidence))
    if (shown is None and usual) or (shown is not None and shown[0] is header):
        return header, ()
    if usual and shown is not None:
        raise UnitsError(_disagrees(evidence, header, shown[1], shown[0]), evidence)
    both_odd = _odd_letters(evidence, header) and not _fits(evidence.extent * header.in_mm, ACROSS)
    shown = shown or (_by_elimination(evidence) if both_odd else None)
    if shown is None or not _fits(evidence.extent * shown[0].in_mm, ACROSS):
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
    shown = _by_dimensions(evidence.dimensions) or _by_thickness(evidence.thicknesses, 1)
    header = HEADER.get(evidence.insunits)

    def unlikely(unit: Units) -> tuple[bool, bool, bool, bool, bool, bool, float]:
        across = evidence.extent * unit.in_mm
        return (
            shown is None or shown[0] is not unit,
            not _fits(across, ACROSS),
            _odd_letters(evidence, unit),
            header is not unit,
            unit is Units.CM,  # rare
            evidence.metric is not None and unit.imperial is evidence.metric,
            abs(log(across / USUAL)) if across > 0 else 0.0,
        )

    return tuple(sorted(Units, key=unlikely))


def called(units: Units) -> str:
    """Return the name of a unit, in the plural."""
    return say(NAMES[units])


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


def length_written(text: str) -> tuple[float, Units | None] | None:
    """Return the number that a dimension's text writes and its unit, None where it writes none.

    Feet and inches (``5'-4 1/2"``) come in inches; a bare number has no unit.
    """
    plain = _FRACTIONS.sub(lambda m: _GLYPHS[m.group()], text.strip())
    match = _FEET.fullmatch(plain)
    if match and (match["feet"] or match["mark"]):
        inches = float(match["feet"] or 0) * 12 + _mixed(match["inches"] or "")
        return inches, Units.IN
    match = _PLAIN.fullmatch(plain)
    if not match:
        return None
    unit = match["unit"]
    return float(match["number"].replace(",", ".")), Units(unit.lower()) if unit else None


def _without_header(
    evidence: Evidence, shown: tuple[Units, str] | None
) -> tuple[Units, tuple[Note, ...]]:
    if shown is not None and _fits(evidence.extent * shown[0].in_mm, ACROSS):
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


def _usual(evidence: Evidence, unit: Units) -> bool:
    """Whether a section is usual in `unit`; several on one sheet are when their letters are."""
    if _odd_letters(evidence, unit):
        return False
    across = evidence.extent * unit.in_mm
    lettered = len(evidence.heights) > 2 and _fits(
        float(np.median(evidence.heights)) * unit.in_mm, SURE_LETTERS
    )
    return _fits(across, ACROSS) or (lettered and _fits(across, ACROSS_SHEET))


def _by_dimensions(dimensions: Sequence[RawDimension]) -> tuple[Units, str] | None:
    read = [(unit, each) for each in dimensions for unit in [_unit_of(each)] if unit is not None]
    if not read:
        return _by_round_numbers(dimensions)
    ((best, times),) = Counter(unit for unit, _ in read).most_common(1)
    if times < 0.6 * len(read):
        return None
    sample = next(each for unit, each in read if unit is best)
    says = " ".join(sample.text.split())
    return (
        best,
        say(
            "its dimensions read as {units} ({measured:g} is dimensioned {says})",
            units=called(best),
            measured=sample.measured,
            says=says,
        ),
    )


def _unit_of(dimension: RawDimension) -> Units | None:
    """Return the drawing unit in which the measured length is what the text writes."""
    written = length_written(dimension.text)
    if written is None or written[0] <= 0 or dimension.measured <= 0:
        return None
    number, unit = written
    ratio = number / dimension.measured
    if unit is None and abs(ratio - 1) <= NEAR:
        return None  # says only that the drawing and its texts use the same unit
    pairs = [(w, d) for w in ((unit,) if unit else Units) for d in Units]
    found = {d for w, d in pairs if abs(ratio * w.in_mm / d.in_mm - 1) <= NEAR / 4}
    return found.pop() if len(found) == 1 else None


def _by_round_numbers(dimensions: Sequence[RawDimension]) -> tuple[Units, str] | None:
    """Judge bare numbers: whole ones of three digits and more are written in millimetres."""
    bare = [
        (each, number[0])
        for each in dimensions
        for number in [length_written(each.text)]
        if number is not None and number[1] is None
    ]
    same = [(each, n) for each, n in bare if each.measured and abs(n / each.measured - 1) <= NEAR]
    whole = [(each, n) for each, n in same if n == int(n)]
    if len(whole) < 2 or len(whole) < 0.8 * len(same) or max(n for _, n in whole) < 250:
        return None
    says = max(whole, key=lambda pair: pair[1])[0].text.strip()
    return Units.MM, say("its dimensions read as millimetres ({says})", says=says)


def _by_thickness(pairs: Sequence[tuple[float, float]], least: int) -> tuple[Units, str] | None:
    different = {(round(drawn, 3), known) for drawn, known in pairs}
    fits = Counter(
        unit
        for drawn, known in different
        for unit in Units
        if drawn > 0 and abs(drawn * unit.in_mm / known - 1) <= THICKNESS
    )
    if not fits:
        return None
    best, times = fits.most_common(1)[0]
    if times < max(least, 0.6 * len(different)) or list(fits.values()).count(times) > 1:
        return None
    return best, say(
        "what it draws is as thick as its products are in {units}", units=called(best)
    )


def _by_elimination(evidence: Evidence) -> tuple[Units, str] | None:
    """Return the one unit in which letters and extent are usual and that $MEASUREMENT allows."""
    if len(evidence.heights) < 3:
        return None
    high = float(np.median(evidence.heights))
    fits = [
        unit
        for unit in Units
        if _fits(evidence.extent * unit.in_mm, ACROSS)
        and _fits(high * unit.in_mm, SURE_LETTERS)
        and unit.imperial is not evidence.metric
    ]
    if len(fits) != 1 or fits[0] is Units.CM:  # too rare a unit to be left over by chance
        return None
    tall = high * fits[0].in_mm
    return fits[0], say(
        "only so are its texts ({tall:.0f} mm high) and its extent usual", tall=tall
    )


def _odd_letters(evidence: Evidence, unit: Units) -> bool:
    if len(evidence.heights) < 3:
        return False
    return not _fits(float(np.median(evidence.heights)) * unit.in_mm, LETTERS)


def _oddities(evidence: Evidence, unit: Units) -> str:
    says = []
    if not _fits(evidence.extent * unit.in_mm, ACROSS):
        says.append(_across(evidence, unit))
    if _odd_letters(evidence, unit):
        tall = float(np.median(evidence.heights)) * unit.in_mm
        high = written(f"{tall:.{0 if tall >= 10 else 2}f}")
        says.append(say("its texts would be {high} mm high", high=high))
    return say(" and ").join(says)


def _across(evidence: Evidence, unit: Units) -> str:
    across = evidence.extent * unit.in_mm / 1000
    return say("the section would be {across:.4g} m across", across=across)


def _disagrees(evidence: Evidence, header: Units, why: str, shown: Units | None = None) -> str:
    other = shown or next(
        (u for u in Units if u is not header and _fits(evidence.extent * u.in_mm, ACROSS)),
        Units.MM,
    )
    return say(
        "{file} says {header}, but {why}: say which with --units {other} or --units {units}.",
        file=evidence.file,
        header=called(header),
        why=why,
        other=other.value,
        units=header.value,
    )


def _fits(length: float, bounds: tuple[float, float]) -> bool:
    return bounds[0] <= length <= bounds[1]


def _mixed(text: str) -> float:
    """Return the value of ``4``, ``1/2`` or ``4 1/2``."""
    halves = (part.partition("/") for part in text.replace("-", " ").split())
    return sum(float(over) / float(under or 1) for over, _, under in halves)


_GLYPHS = {
    "½": " 1/2",
    "¼": " 1/4",
    "¾": " 3/4",
    "⅛": " 1/8",
    "⅜": " 3/8",
    "⅝": " 5/8",
    "⅞": " 7/8",
}
_FRACTIONS = re.compile("[" + "".join(_GLYPHS) + "]")
_FEET = re.compile(
    r"(?:(?P<feet>\d+(?:\.\d+)?)\s*(?:'|′|ft)\s*-?\s*)?"
    r"(?:(?P<inches>\d+(?:\.\d+)?(?:[\s-]+\d+/\d+)?|\s*\d+/\d+)\s*(?P<mark>\"|''|″|in)?)?",
    re.I,
)
_PLAIN = re.compile(r"(?P<number>\d+(?:[.,]\d+)?)\s*(?P<unit>mm|cm|m)?", re.I)
