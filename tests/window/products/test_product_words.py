"""What is said of a product, in words."""

from dataclasses import replace

import pytest

from enclosure_app.files.maps.catalogue import load_products
from enclosure_app.model.drawing import Units
from enclosure_app.window.products.product_words import (
    figures_told,
    held_words,
    length_words,
    sought_words,
    source_words,
    told_words,
    units_of,
)

FELT = load_products()["felt"]


@pytest.mark.parametrize(
    ("mm", "imperial", "words"),
    [
        (0.8, False, "0.8 mm"),
        (0.8, True, "0.8 mm"),  # thinner than a sixteenth of an inch
        (140.0, True, '5 1/2"'),
        (12.5, False, "12.5 mm"),
        (None, True, ""),
    ],
)
def test_a_thickness_is_told_as_it_is_read(mm: float | None, imperial: bool, words: str) -> None:
    assert length_words(mm, imperial=imperial) == words


def test_figures_are_told_in_three_digits_and_those_that_are_known() -> None:
    lapped = replace(FELT, min_lap_mm=101.6, conductivity=0.2)
    assert figures_told(lapped, imperial=True) == ['laps 4" at least', "1 perm", "0.2 W/(m·K)"]
    assert figures_told(FELT, imperial=False) == ["57.2 ng"]


def test_where_figures_are_from_and_whether_anybody_read_them_there() -> None:
    assert source_words(replace(FELT, source="x", confirmed=True)) == "x"
    assert source_words(replace(FELT, source="x", confirmed=False)) == "x (unconfirmed)"
    assert source_words(replace(FELT, source="")) == "no source (unconfirmed)"


def test_everything_in_one_line() -> None:
    told = told_words(FELT, imperial=False)
    assert told.startswith("water · fastened, 0.8 mm · 57.2 ng · ")
    assert told_words(load_products()["framing"], imperial=False).startswith("controls nothing")
    assert held_words(replace(FELT, thickness_mm=None), imperial=False) == "fastened"


def test_words_to_find_it_by_are_small() -> None:
    words = sought_words(FELT)
    assert words == words.casefold()
    assert {"felt", "water", "fastened", "sheet"} <= set(words.split())


def test_products_are_told_in_inches_or_mm() -> None:
    assert (units_of(imperial=True), units_of(imperial=False)) == (Units.IN, Units.MM)
