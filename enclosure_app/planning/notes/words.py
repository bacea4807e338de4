"""What a note names: the words of the trade in a text, as a product.

The words stand in ``resources/note_words.toml`` and, in more languages, among the layer names of
``resources/layer_guesses.toml``.
"""

import re
import tomllib
import unicodedata
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from functools import cache
from typing import Any

from enclosure_app.model.product import Product
from enclosure_app.resources import resource

_WORD = re.compile(r"[^\W_]+")
_KEY = re.compile(r"^\s*\(?\*?[A-Z0-9]{1,4}\)?\s*=\s*|^\s*\(\d\)\s*|\*")  # "(B) = ...", "(2) ..."
_CLAUSE = re.compile(r"[,;:()]")
_PLAIN = str.maketrans({"ł": "l", "ø": "o", "æ": "ae", "œ": "oe", "đ": "d", "ı": "i", "&": " "})
_SURE, _PLACED = 1.0, 0.5  # a product that is named first, and one named only as a place


@dataclass(frozen=True, slots=True)
class Named:
    """The product that a text names: its key, the words that said so, and how sure that is."""

    product: str
    words: str
    confidence: float


def named_in(text: str, products: Mapping[str, Product]) -> Named | None:
    """Return the product of `products` that a note names, None where it names none."""
    clauses = [_words(clause) for clause in _CLAUSE.split(_KEY.sub("", text))]
    table = _table()
    if any(_begins(clauses[0], 0, phrase) for phrase in table.nothing):
        return None
    own = {tuple(_words(product.name)): key for key, product in products.items()}
    for part, trust in _parts(clauses, table):
        found = _best(part, own, table, products)
        if found is not None:
            key, phrase = found
            share = 0.8 if len(phrase) == 1 else 1.0
            return Named(key, " ".join(phrase), trust * share)
    return None


@dataclass(frozen=True, slots=True)
class _Table:
    place: frozenset[tuple[str, ...]]
    other: frozenset[tuple[str, ...]]
    nothing: frozenset[tuple[str, ...]]
    products: Mapping[tuple[str, ...], str]
    longest: int


@cache
def _table() -> _Table:
    own, layers = _read("note_words.toml"), _read("layer_guesses.toml")
    products: dict[tuple[str, ...], str] = {}
    for table in (own["products"], layers["products"]):
        for key, phrases in table.items():
            for phrase in phrases:
                words = tuple(_words(phrase))
                if "*" not in phrase and words:
                    products.setdefault(words, key)
    place, other, nothing = (
        frozenset(tuple(_words(phrase)) for phrase in own[kind])
        for kind in ("place", "other", "nothing")
    )
    return _Table(place, other, nothing, products, max(map(len, products)))


def _parts(clauses: list[list[str]], table: _Table) -> Iterator[tuple[list[str], float]]:
    """Yield what a note names, up to its first word of place, and then all that follows."""
    words = clauses[0]
    cut = next(
        (i for i in range(1, len(words)) if any(_begins(words, i, p) for p in table.place)),
        len(words),
    )
    yield words[:cut], _SURE
    for rest in (words[cut:], *clauses[1:]):
        yield rest, _PLACED


def _best(
    words: list[str],
    own: Mapping[tuple[str, ...], str],
    table: _Table,
    products: Mapping[str, Product],
) -> tuple[str, tuple[str, ...]] | None:
    """Return the longest words that are a product, the last where two are as long.

    The last, because what a thing is stands behind what it is like: "2x10 ledger".
    """
    for size in range(min(table.longest, len(words)), 0, -1):
        for first in range(len(words) - size, -1, -1):
            phrase = tuple(words[first : first + size])
            key = own.get(phrase) or table.products.get(phrase)
            if key is None or key not in products:
                continue
            about = any(_begins(words, first + size, each) for each in table.other)
            return None if about else (key, phrase)
    return None


def _begins(words: list[str], at: int, phrase: tuple[str, ...]) -> bool:
    return tuple(words[at : at + len(phrase)]) == phrase


def _read(name: str) -> dict[str, Any]:
    with resource(name).open("rb") as file:
        return tomllib.load(file)


def _words(text: str) -> list[str]:
    """Cut a text into plain small words, without accents."""
    letters = unicodedata.normalize("NFKD", text.casefold())
    bare = "".join(one for one in letters if not unicodedata.combining(one))
    return _WORD.findall(bare.translate(_PLAIN))
