"""Guesses from words: what a layer's name suggests, and which text marks inside or outside.

The words stand in ``resources/layer_guesses.toml`` and ``resources/mark_words.toml``. They are
read when the first guess is asked for, since most drawings come with a layer map.
"""

import re
import tomllib
import unicodedata
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass, field
from enum import StrEnum
from functools import cache, lru_cache
from typing import Any, Literal

from enclosure_app.files.maps.catalogue import load_products
from enclosure_app.model.layer import LayerRow, exactly
from enclosure_app.model.product import Product
from enclosure_app.resources import resource

Meaning = tuple[str, str]
"""``("product", key)`` or ``("role", name)``."""
Rank = tuple[int, int, int]
"""Class (notes go before products), letters that were found (as a negative), order of the file."""

Hit = tuple[Rank, Meaning, str]
"""What a phrase means that was found in a name, and the phrase."""

_LONGEST = 48  # letters; more of a name are not compared with any word
_FIRST = ("note", "ignore")
_ATTACHED = re.compile(r"\||\$\d+\$")
_HUMP = re.compile(r"(?<=[a-zà-ÿ])(?=[A-ZÀ-Þ])")
_WORD = re.compile(r"[^\W_]+")
_PLAIN = str.maketrans({"ł": "l", "ø": "o", "æ": "ae", "œ": "oe", "đ": "d", "ı": "i"})
_SPELT_OUT = str.maketrans({"ä": "ae", "ö": "oe", "ü": "ue", "å": "aa", "ø": "oe"})
_ISO_13567 = re.compile(r"[A-Z][A-Z0-9-](?=[0-9-]*\d)[0-9-]{6}([A-Z0-9-]{2})")


class Sureness(StrEnum):
    """How far a guess is to be trusted.

    `SURE`: the word is all of the name, or two words of it, and nothing in it says otherwise.
    `LIKELY`: one word of several says so. `DOUBTFUL`: another word says something else.
    """

    SURE = "sure"
    LIKELY = "likely"
    DOUBTFUL = "doubtful"


@dataclass(frozen=True, slots=True)
class Guess:
    """What the name of a layer suggests, the words in it that do, and how sure that is.

    `others` are the products and roles that other words of the name suggest.
    """

    row: LayerRow
    words: str
    sureness: Sureness
    others: tuple[str, ...] = ()


def guess_row(layer_name: str, products: Mapping[str, Product]) -> LayerRow | None:
    """Return a row for what the name of a layer suggests, None where it suggests nothing.

    Args:
        layer_name: The name as the drawing has it.
        products: What may be guessed; a product that is not in there is not.
    """
    guess = guess_of(layer_name, products)
    return guess.row if guess else None


def guess_of(layer_name: str, products: Mapping[str, Product]) -> Guess | None:
    """Return what the name of a layer suggests and why, None where it suggests nothing.

    Args:
        layer_name: The name as the drawing has it.
        products: What may be guessed; a product that is not in there is not.
    """
    found = _found(layer_name)
    if found is None:
        return None
    what, key = found.meaning
    if what == "product" and key not in products:
        return None
    match = exactly(layer_name)
    row = LayerRow(match, role=key) if what == "role" else LayerRow(match, product=key)
    return Guess(row, found.words, found.sureness, found.others)


def mark_of(text: str) -> Literal["inside", "outside"] | None:
    """Return the side that a text marks: the whole text must be one of the words."""
    words = " ".join(_words(text))
    if words in _mark_words("inside"):
        return "inside"
    return "outside" if words in _mark_words("outside") else None


@lru_cache(maxsize=1 << 12)
def names_furniture(layer_name: str) -> bool:
    """Whether the name of a layer says that furniture is drawn on it."""
    exact, heads = _furniture_words()
    words = _words(_HUMP.sub(" ", _ATTACHED.split(layer_name)[-1]))
    return any(word in exact or word.startswith(heads) for word in words)


@dataclass(slots=True)
class _Lexicon:
    """The words by how they are compared: as they are, at the beginning, at the end of a word."""

    iso_notes: frozenset[str]
    whole: dict[str, Meaning] = field(default_factory=dict)
    exact: dict[str, tuple[Rank, Meaning]] = field(default_factory=dict)
    heads: dict[str, tuple[Rank, Meaning]] = field(default_factory=dict)
    tails: dict[str, tuple[Rank, Meaning]] = field(default_factory=dict)
    starts: set[str] = field(default_factory=set)  # the first two letters of all but the tails

    def add(self, phrase: str, meaning: Meaning) -> None:
        """Take up one phrase of the file; the first meaning of a phrase stands."""
        table = self.exact
        if phrase.endswith("*"):
            table = self.heads
        elif phrase.startswith("*"):
            table = self.tails
        order = len(self.exact) + len(self.heads) + len(self.tails)
        for words in _spellings(phrase):
            rank = (int(meaning[1] not in _FIRST), -len(words), order)
            table.setdefault(words, (rank, meaning))
            table.setdefault(words.replace(" ", ""), (rank, meaning))
            self.starts.add(words[:2])

    def hits(self, words: list[str]) -> Iterator[Hit]:
        """Yield every phrase that is found in the words of a name."""
        for first, word in enumerate(words):
            if word[:2] in self.starts:
                yield from self._begin(" ".join(words[first:])[:_LONGEST])
            for start in range(max(len(word) - 2, 0)):
                if word[start:] in self.tails:
                    yield (*self.tails[word[start:]], word[start:])

    def _begin(self, rest: str) -> Iterator[Hit]:
        """Yield every phrase that stands at the beginning of `rest`."""
        for end in range(2, len(rest) + 1):
            if rest[:end] in self.heads:
                yield (*self.heads[rest[:end]], rest[:end])
            if rest[end : end + 1] in ("", " ") and rest[:end] in self.exact:
                yield (*self.exact[rest[:end]], rest[:end])


@dataclass(frozen=True, slots=True)
class _Found:
    meaning: Meaning
    words: str
    sureness: Sureness
    others: tuple[str, ...] = ()


@lru_cache(maxsize=1 << 16)
def _found(layer_name: str) -> _Found | None:
    name = _ATTACHED.split(layer_name)[-1]
    lexicon = _lexicon()
    iso = _ISO_13567.match(name)
    if iso and iso[1] in lexicon.iso_notes:
        return _Found(("role", "note"), iso[1], Sureness.SURE)
    words = _words(name)
    if whole := lexicon.whole.get(" ".join(words)):
        return _Found(whole, " ".join(words), Sureness.SURE)
    hits = [
        *lexicon.hits(words),
        *(lexicon.hits(_words(_HUMP.sub(" ", name))) if _HUMP.search(name) else ()),
    ]
    return _weighed(sorted(hits), len("".join(words))) if hits else None


def _weighed(hits: list[Hit], letters: int) -> _Found:
    """Return the first of the hits, and how sure it is beside the others."""
    (kind, _, _), meaning, words = hits[0]
    others = [
        each[1]
        for (other_kind, *_), each, said in hits
        if each != meaning and other_kind == kind and said not in words
    ]
    sureness = Sureness.LIKELY
    if others:
        sureness = Sureness.DOUBTFUL
    elif " " in words or len(words) == letters or meaning[0] == "role":
        sureness = Sureness.SURE
    return _Found(meaning, words, sureness, tuple(dict.fromkeys(others)))


@cache
def _lexicon() -> _Lexicon:
    tables = _read("layer_guesses.toml")
    lexicon = _Lexicon(frozenset(tables["iso_13567"]["note"]))
    for role, phrase in _phrases(tables["whole"]):
        lexicon.whole.update(dict.fromkeys(_spellings(phrase), ("role", role)))
    for what, table in (("role", tables["roles"]), ("product", tables["products"])):
        for key, phrase in _phrases(table):
            lexicon.add(phrase, (what, key))
    for key in load_products():
        lexicon.add(key, ("product", key))
    return lexicon


def _phrases(table: Mapping[str, Iterable[str]]) -> Iterator[tuple[str, str]]:
    return ((key, phrase) for key, phrases in table.items() for phrase in phrases)


@cache
def _furniture_words() -> tuple[frozenset[str], tuple[str, ...]]:
    """Return the words themselves, and those that longer words begin with."""
    phrases = _read("layer_guesses.toml")["rooms"]["furniture"]
    exact = [each for each in phrases if not each.endswith("*")]
    heads = [each for each in phrases if each.endswith("*")]
    spelt = ({w for each in some for w in _spellings(each)} for some in (exact, heads))
    return frozenset(next(spelt)), tuple(next(spelt))


@cache
def _mark_words(side: str) -> frozenset[str]:
    languages = _read("mark_words.toml").values()
    return frozenset(
        words for one in languages for text in one[side] for words in _spellings(text)
    )


def _read(name: str) -> dict[str, Any]:
    with resource(name).open("rb") as file:
        return tomllib.load(file)


def _spellings(phrase: str) -> set[str]:
    """The phrase in plain letters, and as it is spelt where umlauts cannot be typed."""
    spelt_out = phrase.casefold().translate(_SPELT_OUT)
    return {" ".join(_words(phrase)), " ".join(_words(spelt_out))}


def _words(text: str) -> list[str]:
    """Cut a text into words of plain small letters, without accents."""
    letters = unicodedata.normalize("NFKD", text.casefold())
    bare = "".join(one for one in letters if not unicodedata.combining(one))
    return _WORD.findall(bare.translate(_PLAIN))
