"""What is said of a layer, in words: what it is, what its name suggests, how sure that is."""

from collections.abc import Mapping, Sequence

from enclosure_app.files.maps.guesses import Guess, Sureness
from enclosure_app.language import in_sentence, later, say, say_count
from enclosure_app.model.layer import Role
from enclosure_app.model.product import Product
from enclosure_app.window.lines.layers_told import LayerTold

ROLES: Mapping[str, str] = {
    Role.FRAME: later("Frame of a section"),
    Role.BREAK: later("Break lines"),
    Role.NOTE: later("Notes"),
    Role.LINEWORK: later("Linework to snap to"),
    Role.IGNORE: later("Ignored"),
}
"""What each role is called."""

ROLE_TIPS: Mapping[str, str] = {
    Role.FRAME: later("Closed outlines: each is a section, judged inside it"),
    Role.BREAK: later("Two lines with a blank strip between: the drawing is cut short there"),
    Role.NOTE: later("Texts, leaders and dimensions: shown, and read by Read the notes"),
    Role.LINEWORK: later("Shown and snapped to, never judged"),
    Role.IGNORE: later("Not shown and not judged; nothing of it is lost"),
}
"""What each role does, in a sentence."""

_SURE: Mapping[Sureness, str] = {
    Sureness.SURE: later("sure"),
    Sureness.LIKELY: later("likely"),
    Sureness.DOUBTFUL: later("doubtful"),
}


def meant_word(meant: str, products: Mapping[str, Product]) -> str:
    """Return what a product's key or a role is called."""
    if meant in products:
        return say(products[meant].name)
    return say(ROLES.get(meant, meant))


def guessed_key(guess: Guess | None) -> str:
    """Return the product's key or the role that a guess suggests, "" for none."""
    return "" if guess is None else guess.row.product or guess.row.role or ""


def beside_words(meant: str, guess: Guess | None, products: Mapping[str, Product]) -> str:
    """Return in a few words how what a layer is stands beside what its name suggests."""
    if guess is None:
        return ""
    sure = say(_SURE[guess.sureness])
    if guessed_key(guess) == meant:
        return say("as named, {sure}", sure=sure)
    return say("named as {guess}?", guess=in_sentence(meant_word(guessed_key(guess), products)))


def difference_word(meant: str, guess: Guess | None) -> str:
    """Return in two words whether a layer is what its name suggests, "" where it suggests nothing."""
    if guess is None:
        return ""
    return say("as named") if guessed_key(guess) == meant else say("not as named")


def why_words(guess: Guess | None, products: Mapping[str, Product]) -> str:
    """Return in a sentence what a layer's name suggests, by which words, and how sure that is."""
    if guess is None:
        return say("Its name says nothing of what is drawn on it.")
    told = say(
        "“{words}” in its name suggests {guess}: {sure}.",
        words=guess.words,
        guess=in_sentence(meant_word(guessed_key(guess), products)),
        sure=say(_SURE[guess.sureness]),
    )
    if guess.others:
        others = ", ".join(in_sentence(meant_word(other, products)) for other in guess.others)
        told += " " + say("Other words suggest {others}.", others=others)
    return told


def drawn_words(lines: int, texts: int) -> str:
    """Return how much is drawn and written on a layer."""
    said = [say_count(lines, "{count} line", "{count} lines")] if lines or not texts else []
    if texts:
        said.append(say_count(texts, "{count} text", "{count} texts"))
    return ", ".join(said)


def pieces_words(count: int) -> str:
    """Return how many pieces were drawn here."""
    return say_count(count, "{count} piece drawn here", "{count} pieces drawn here")


def chosen_words(
    told: Sequence[LayerTold], picked: Sequence[str], products: Mapping[str, Product]
) -> str:
    """Return what there is to say of the layers that are chosen.

    Args:
        told: Those layers.
        picked: The layers that is on what is picked in the drawing, for where none is chosen.
        products: The products that layers may be of.
    """
    if not told and picked:
        return say("What is picked is on {layers}.", layers=", ".join(picked))
    if not told:
        return say("Choose a row to see it lit up, and say what it is.")
    if all(each.drawn for each in told):
        return pieces_words(sum(each.lines for each in told)) + "."
    if len(told) > 1:
        amount = drawn_words(sum(t.lines for t in told), sum(t.texts for t in told))
        return say("{count} layers: {amount}.", count=len(told), amount=amount)
    (only,) = told
    said = [why_words(only.guess, products)]
    if only.narrower:
        said.append(say("The map says otherwise of some of its lines, by how these are drawn."))
    if only.by_hand:
        said.append(say("By hand, other products were given: {count}.", count=only.by_hand))
    return " ".join(said)
