"""The trade's words, each explained in a sentence: what tooltips all over the window teach."""

import re
from collections.abc import Mapping
from functools import cache

from enclosure_app.language import later, say

_WORDS = (
    (later("sheet"), later("A membrane, underlayment or housewrap: comes in rolls, is laid in courses.")),
    (later("lap"), later("Where two sheets run side by side, one over the other.")),
    (later("over"), later("The outer sheet of a lap lies over the other one; it goes on later.")),
    (later("under"), later("The inner sheet of a lap lies under the other one; it goes on first.")),
    (later("lift"), later("A place where a pen that follows the layer has to leave it; its length is the gap.")),
    (later("gap"), later("Two pieces that neither touch nor lap: the layer stops and starts again.")),
    (later("trace"), later("The way of a pen along a layer from one cut end to the other.")),
    (later("opening"), later("The widest way from outside to inside that crosses no piece of the layer.")),
    (later("frame"), later("The outline inside which one section is judged.")),
    (later("cut end"), later("An end on the frame: the layer goes on in the next drawing.")),
    (later("upturn"), later("The leg of a roof's sheet that turns up a wall.")),
    (later("fold"), later("Where a sheet changes its direction round an edge or into a corner.")),
    (later("joint"), later("Where two pieces of one layer meet: lapped, end to end, or end to face.")),
    (later("sealed"), later("Closed by glue, coat, tape or bead, so that no air passes.")),
    (later("bead"), later("A line of sealant or foam that closes a joint.")),
    (later("tape"), later("A glued strip over a joint.")),
    (later("flashing"), later("A bent strip, mostly metal, that leads water out over an edge.")),
    (later("apron"), later("A flashing where a roof meets a wall above it.")),
    (later("drip edge"), later("A strip along a roof's edge from which drops fall clear.")),
    (later("underlayment"), later("The sheet on the deck below the roof's covering.")),
    (later("eave"), later("The lower edge of a roof.")),
    (later("fascia"), later("The board along the ends of the rafters at the eave.")),
    (later("soffit"), later("The underside of a roof that overhangs.")),
    (later("rake"), later("The edge of a roof that runs up the slope.")),
    (later("ridge"), later("The upper edge where two slopes meet.")),
    (later("parapet"), later("A wall that stands up past the roof's edge.")),
    (later("sill"), later("The lower edge of a window's or door's opening; or the timber on a footing.")),
    (later("pan"), later("A tray under a window that leads water out.")),
    (later("reverse"), later("Lapped against the run of water: it gets in behind the lower sheet.")),
    (later("rain route"), later("The way of a drop from where it lands to where it leaves.")),
    (later("collar"), later("A sleeve that seals a pipe to the sheet it passes through.")),
)  # fmt: skip

_FIGURES: Mapping[str, str] = {
    "wall-lap": later("Lap of wall sheets"),
    "wall-end-lap": later("End lap of wall sheets, side by side"),
    "roof-lap": later("Lap of underlayment on a steep roof"),
    "roof-lap-low": later("Lap of underlayment on a flatter roof"),
    "roof-lap-low-slope-limit": later("Slope from which a roof is steep for laps"),
    "roof-minimum-slope": later("Flattest roof for covering on underlayment"),
    "roof-end-lap": later("End lap of underlayment"),
    "roof-lap-adhered": later("Lap of self-adhered underlayment"),
    "roof-end-lap-adhered": later("End lap of self-adhered underlayment"),
    "low-slope-lap": later("Lap of a low-slope roof membrane"),
    "below-grade-lap": later("Lap below ground and under slabs"),
    "air-lap": later("Lap of air-barrier sheets that are clamped"),
    "flashing-lap": later("Lap over the leg of a flashing"),
    "upturn": later("Upturn at a wall above a steep roof"),
    "upturn-low-slope": later("Upturn at a wall above a low-slope roof"),
    "upturn-low-slope-limit": later("Slope from which a roof is steep for upturns"),
    "eave-cover-inside": later("Eave membrane: how far past the wall line"),
    "eave-wall-line": later("Eave membrane: wall line at the inner face"),
    "eave-cover-along": later("Eave membrane: least length up the slope"),
    "eave-cover-steep-slope": later("Eave membrane: slope that counts as steep"),
    "eave-cover-steep-along": later("Eave membrane: least length on a steep slope"),
    "eave-underlayment-over-drip-edge": later("Eave: underlayment over the drip edge"),
    "rake-underlayment-over-drip-edge": later("Rake: underlayment over the drip edge"),
    "drip-clear": later("Drip: how far clear of the wall"),
    "drip-edge-below-deck": later("Drip edge: how far below the deck"),
    "drip-edge-onto-deck": later("Drip edge: how far onto the deck"),
    "drip-edge-lap": later("Drip edge: lap of its lengths"),
    "sill-back-dam": later("Sill pan: height of the back"),
    "sill-fall": later("Sill pan: fall to the outside"),
    "sill-slope": later("Sill pan: slope to the outside"),
    "touch": later("Check: pieces this near touch"),
    "lap-reach": later("Check: lapped sheets are drawn this near"),
    "driving-rain": later("Check: how slanting rain arrives"),
    "level-slope": later("Check: what is flatter is level"),
    "low-slope-minimum": later("Flattest low-slope roof"),
    "cladding-above-roof": later("Cladding above a roof"),
    "cladding-above-ground": later("Cladding above the ground"),
    "cladding-above-paving": later("Cladding above paving"),
    "weep-screed-above-ground": later("Weep screed above the ground"),
    "weep-screed-above-paving": later("Weep screed above paving"),
    "render-above-ground": later("Render above the ground"),
    "foundation-above-ground": later("Foundation above the ground"),
    "foundation-above-ground-veneer": later("Foundation above the ground, behind veneer"),
    "framing-above-ground": later("Framing above the ground"),
    "dpc-above-ground": later("Damp-proof course above the ground"),
}


def explained(text: str, most: int = 3) -> str:
    """Return the trade's words that stand in a text, one a line with its sentence, in their order.

    No more than `most` are taught at once; "" where a text has none.
    """
    found = []
    for known, sentence in _WORDS:
        place = _pattern(say(known)).search(text)
        if place:
            found.append((place.start(), f"{_begun(say(known))}: {say(sentence)}"))
    return "\n".join(line for _, line in sorted(found)[:most])


def taught(text: str, *others: str) -> str:
    """Return a tooltip: a text, and below it what its words and those of `others` mean."""
    return "\n".join(filter(None, (text, explained(" ".join((text, *others))))))


def meaning(known: str) -> str:
    """Return the sentence that explains one of the words; a word that is not known is a bug."""
    return say(dict(_WORDS)[known])


def figure_words(name: str) -> str:
    """Return what a figure of the rule book is called."""
    return say(_FIGURES[name]) if name in _FIGURES else _begun(name.replace("-", " "))


@cache
def _pattern(known: str) -> re.Pattern[str]:
    """Return what finds a word, also in the plural, and never within another word."""
    return re.compile(rf"(?<!\w){re.escape(known)}(?:s|ped|es)?(?!\w)", re.IGNORECASE)


def _begun(known: str) -> str:
    return known[:1].upper() + known[1:]
