"""What a walk came to, in sentences: what is left, what is to be mended, what nobody can say."""

from collections.abc import Sequence

from enclosure_app.drawing.unsure_words import why_unsure
from enclosure_app.drawing.verdict_words import gone_line
from enclosure_app.language import say
from enclosure_app.model.drawing import Units
from enclosure_app.model.finding import begun
from enclosure_app.model.product import layer_words
from enclosure_app.window.walk.stops import Round, Stop

_NAMED = 6  # stops are named as long as they are so few


def summary(walked: Round, units: Units) -> tuple[str, ...]:
    """Return what a walk came to, a sentence a line; nothing where all is well."""
    told = []
    if walked.left:
        told.append(open_words(walked.left))
    if walked.to_be_mended:
        told.append(say("To be mended: {places}.", places=named(walked.to_be_mended)))
    told += [
        say(
            "The {layer} could not be judged: {why}",
            layer=layer_words(each.control),
            why=why_unsure(each, units),
        )
        for each in walked.result.unjudged
    ]
    gone = [gone_line(each) for each in walked.result.no_longer_found]
    if gone:
        told.append(
            say("Decided about, and no longer found: {findings}", findings="; ".join(gone))
        )
    return tuple(told)


def open_words(stops: Sequence[Stop]) -> str:
    """Return in a sentence which stops are left open."""
    return say("Left open: {places}.", places=named(stops))


def named(stops: Sequence[Stop]) -> str:
    """Return the names of stops; of many, the first ones and how many more there are."""
    names = [name_of(stop) for stop in stops]
    first = list(dict.fromkeys(names))[:_NAMED]
    told, more = "; ".join(first), sum(name not in first for name in names)
    return say("{names} and {count} more", names=told, count=more) if more else told


def name_of(stop: Stop) -> str:
    """Return what a stop is called in a list."""
    if stop.finding is not None:
        what = say(stop.finding.rule.replace("-", " "))
        return say("finding {number} ({what})", number=stop.number, what=what)
    return begun(stop.place.title) if stop.place else ""
