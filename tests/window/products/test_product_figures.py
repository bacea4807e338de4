"""Figures of products as people type them.

Perm and Btu·in/(h·ft²·°F): conversion factors of NIST SP 811, appendix B, from memory.
"""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from enclosure_app.errors import EnclosureError
from enclosure_app.files.maps.catalogue import load_products
from enclosure_app.model.drawing import Units
from enclosure_app.window.products.product_figures import (
    conductivity_text,
    read_conductivity,
    read_thickness,
    read_vapour,
    thickness_text,
    vapour_text,
)


@pytest.mark.parametrize(
    ("text", "units", "mm"),
    [
        ("12.5", Units.MM, 12.5),
        ("12,5 mm", Units.M, 12.5),
        ("12.5", Units.M, 12.5),  # boards are not told in metres
        ("4 in", Units.MM, 101.6),
        ('1/2"', Units.IN, 12.7),
        ("4", Units.FT, 101.6),
        ("5 cm", Units.IN, 50.0),
        ("  ", Units.MM, None),
    ],
)
def test_a_thickness_is_mm_or_inches(text: str, units: Units, mm: float | None) -> None:
    assert read_thickness(text, units, "Thickness") == pytest.approx(mm)


def test_what_is_no_length_is_told_with_its_field_and_an_example() -> None:
    with pytest.raises(EnclosureError, match="Least lap: “wide” is no length"):
        read_thickness("wide", Units.MM, "Least lap")


@pytest.mark.parametrize(
    ("text", "ng", "sd"),
    [
        ("2 perm", 114.427, None),
        ("0.1 US perms", 5.72135, None),
        ("57 ng", 57.0, None),
        ("57.2 ng/(Pa·s·m²)", 57.2, None),
        ("sd 0,2 m", None, 0.2),
        ("sd=1500", None, 1500.0),
        ("", None, None),
    ],
)
def test_how_open_to_vapour_is_perm_or_ng_or_sd(
    text: str, ng: float | None, sd: float | None
) -> None:
    permeance, metres = read_vapour(text)
    assert permeance == pytest.approx(ng)
    assert metres == pytest.approx(sd)


@pytest.mark.parametrize("text", ["2", "0.2 m", "sd 2 perm", "-1 perm", "open", "1 perm-inch"])
def test_a_bare_number_does_not_say_how_open_to_vapour_it_is(text: str) -> None:
    with pytest.raises(EnclosureError, match="has no unit that is known"):
        read_vapour(text)


@pytest.mark.parametrize(
    ("text", "value"),
    [("0.035", 0.035), ("0,035 W/(m·K)", 0.035), ("1 Btu", 0.1442279), ("", None)],
)
def test_conductivity(text: str, value: float | None) -> None:
    assert read_conductivity(text) == pytest.approx(value)


@pytest.mark.parametrize("text", ["R-20", "sd 1", "good", "-1"])
def test_what_is_no_conductivity_is_told(text: str) -> None:
    with pytest.raises(EnclosureError, match="Conductivity"):
        read_conductivity(text)


@given(st.floats(1e-3, 1e4), st.sampled_from(Units))
def test_a_thickness_reads_as_it_is_written(mm: float, units: Units) -> None:
    assert read_thickness(thickness_text(mm, units), units, "") == pytest.approx(mm, rel=1e-5)


@pytest.mark.parametrize("units", [Units.MM, Units.IN])
def test_every_product_of_the_catalogue_reads_as_it_is_written(units: Units) -> None:
    for product in load_products().values():
        permeance, sd = read_vapour(vapour_text(product, units))
        conductivity = read_conductivity(conductivity_text(product))
        wanted = (product.permeance_ng, product.sd_m, product.conductivity)
        for read, held in zip((permeance, sd, conductivity), wanted, strict=True):
            assert (read is None) == (held is None)
            assert read is None or read == pytest.approx(held, rel=1e-4)
