"""What is said of a product, in words: how it is held, its figures, where they are from."""

from enclosure_app.drawing.lengths import format_length
from enclosure_app.language import say
from enclosure_app.model.drawing import Units
from enclosure_app.model.product import Control, Product
from enclosure_app.window.products.product_figures import (
    conductivity_text,
    thickness_text,
    vapour_text,
)
from enclosure_app.window.words.labels import control_within, control_word, word

_THIN = 25.4 / 16  # mm: thinner is told in mm


def units_of(*, imperial: bool) -> Units:
    """Return the units that products are told in."""
    return Units.IN if imperial else Units.MM


def held_words(product: Product, *, imperial: bool) -> str:
    """Return in a few words how a product is held and how thick it is."""
    thick = length_words(product.thickness_mm, imperial=imperial)
    return ", ".join(filter(None, (word(product.bond.value), thick)))


def length_words(mm: float | None, *, imperial: bool) -> str:
    """Return a thickness or a lap to read: in inches to the sixteenth, or mm where it is thin."""
    if mm is None:
        return ""
    thin = mm < _THIN
    return format_length(mm, Units.IN) if imperial and not thin else thickness_text(mm, Units.MM)


def told_words(product: Product, *, imperial: bool) -> str:
    """Return all that there is to tell of a product, without its name."""
    controls = ", ".join(control_within(c) for c in Control if c in product.controls)
    parts = [controls or word("controls nothing"), held_words(product, imperial=imperial)]
    return " · ".join([*parts, *figures_told(product, imperial=imperial), source_words(product)])


def figures_told(product: Product, *, imperial: bool) -> list[str]:
    """Return a product's lap, how open to vapour and how warm it is, those that are known."""
    units = units_of(imperial=imperial)
    lap = length_words(product.min_lap_mm, imperial=imperial)
    told = [say("laps {lap} at least", lap=lap)] if lap else []
    return [*told, *filter(None, (vapour_text(product, units, 3), conductivity_text(product)))]


def source_words(product: Product) -> str:
    """Return where a product's figures are from, and whether anybody read them there."""
    source = say(product.source) or say("no source")
    return source if product.confirmed else say("{source} (unconfirmed)", source=source)


def sought_words(product: Product) -> str:
    """Return the words by which a product is found, small."""
    controls = " ".join(control.value for control in product.controls)
    parts = (
        product.name,
        say(product.name),
        product.key,
        product.kind.value,
        product.bond.value,
        word(product.bond.value),
        controls,
        " ".join(control_word(control) for control in product.controls),
    )
    return " ".join(parts).casefold()
