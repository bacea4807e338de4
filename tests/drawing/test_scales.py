"""Standard scales."""

import pytest

from enclosure_app.drawing.scales import (
    IMPERIAL,
    METRIC,
    Scale,
    fits,
    largest_that_fits,
    parse_scale,
)
from enclosure_app.errors import EnclosureError
from enclosure_app.model.drawing import Units


@pytest.mark.parametrize(
    ("text", "ratio"),
    [("1:10", 10), (" 1 : 50 ", 50), ("3\" = 1'-0\"", 4), ("1 1/2\"=1'", 8), ("3/4\" = 1'-0\"", 16), ("1:48", 48)],
)  # fmt: skip
def test_a_scale_is_understood_however_it_is_written(text: str, ratio: float) -> None:
    assert parse_scale(text).ratio == ratio


@pytest.mark.parametrize("scale", [*METRIC, *IMPERIAL])
def test_every_scale_is_read_back_from_its_own_words(scale: Scale) -> None:
    assert parse_scale(scale.text).ratio == scale.ratio


def test_inches_to_the_foot_are_true() -> None:
    """So many inches on paper are one foot: 12 inches divided by them is the ratio."""
    for scale in IMPERIAL:
        inches = sum(eval(part) for part in scale.text.split('"')[0].split())  # noqa: S307
        assert scale.ratio == pytest.approx(12 / inches)


def test_a_scale_of_ones_own_is_refused_with_the_standard_ones() -> None:
    with pytest.raises(EnclosureError, match=r"“1:7” is not a standard one; use one of 1:1, 1:2"):
        parse_scale("1:7")


def test_the_largest_scale_that_fits_is_chosen() -> None:
    assert largest_that_fits((1600, 2940), (250, 180), Units.MM).text == "1:20"
    assert largest_that_fits((1600, 2940), (250, 180), Units.IN).text == '1/2" = 1\'-0"'


def test_what_just_fits_fits() -> None:
    assert fits((2500, 1800), (250, 180), METRIC[3])
    assert not fits((2501, 1800), (250, 180), METRIC[3])


def test_a_section_as_large_as_a_town_is_refused() -> None:
    with pytest.raises(EnclosureError, match="too large for this paper"):
        largest_that_fits((900_000, 1000), (250, 180), Units.MM)
