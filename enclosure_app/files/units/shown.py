"""Which units a drawing shows: by its dimensions, by how thick boards are, or as the only ones left.

Each answer comes with the words that say why.
"""

from collections import Counter
from collections.abc import Sequence

from enclosure_app.files.dxf.raw import RawDimension
from enclosure_app.files.units.evidence import SURE_LETTERS, Evidence, has_usual_extent, lies_in
from enclosure_app.files.units.written import called, length_written
from enclosure_app.language import say
from enclosure_app.model.drawing import Units

Shown = tuple[Units, str]
"""Units, and what shows them."""

NEAR = 0.02  # how closely a dimension's text has to say what is measured
THICKNESS = 0.3  # how closely a drawn thickness has to be the product's


def by_dimensions(dimensions: Sequence[RawDimension]) -> Shown | None:
    """Return the units in which most texts of dimensions write what is measured there."""
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


def _by_round_numbers(dimensions: Sequence[RawDimension]) -> Shown | None:
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


def by_thickness(pairs: Sequence[tuple[float, float]], least: int) -> Shown | None:
    """Return the units in which boards are as thick as their products are.

    Args:
        pairs: Drawn thicknesses, and those of the products in mm.
        least: How many different pairs have to agree.
    """
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


def by_elimination(evidence: Evidence) -> Shown | None:
    """Return the one unit in which letters and extent are usual and that $MEASUREMENT allows."""
    fits = [
        unit
        for unit in Units
        if has_usual_extent(evidence, unit)
        and (high := evidence.letters(unit)) is not None
        and lies_in(high, SURE_LETTERS)
        and unit.imperial is not evidence.metric
    ]
    if len(fits) != 1 or fits[0] is Units.CM:  # too rare a unit to be left over by chance
        return None
    return fits[0], say(
        "only so are its texts ({tall:.0f} mm high) and its extent usual",
        tall=evidence.letters(fits[0]),
    )
