"""Products that a layer map adds, or changes: what is taken from the catalogue and what is not."""

import pytest

from enclosure_app.errors import ListedError
from enclosure_app.files.maps.catalogue import load_products
from enclosure_app.files.maps.products import own_products
from enclosure_app.files.maps.tables import Complaints
from enclosure_app.files.maps.toml_lines import TomlLines
from enclosure_app.model.product import Bond, Control, Kind, Product


def own(**tables: object) -> dict[str, Product]:
    """The products as read; raises what is wrong with them."""
    complaints = Complaints("map.toml", TomlLines({}))
    products = own_products(tables, complaints)
    complaints.raise_if_any()
    return products


def test_a_product_of_the_catalogue_keeps_what_the_map_does_not_name() -> None:
    felt, usual = own(felt={"min_lap_mm": 100})["felt"], load_products()["felt"]
    assert (felt.name, felt.bond, felt.permeance_ng) == (usual.name, usual.bond, 57.2)
    assert felt.min_lap_mm == 100
    assert felt.source == f"map.toml; other figures: {usual.source}"
    assert not felt.confirmed


def test_the_sd_of_the_map_takes_the_place_of_the_catalogues_permeance() -> None:
    """They are two measures of one thing, and the office's own figures count as confirmed."""
    felt = own(felt={"sd_m": 1.5, "thickness_mm": 1})["felt"]
    assert (felt.sd_m, felt.permeance_ng) == (1.5, None)
    assert (felt.source, felt.confirmed) == ("map.toml", True)


def test_a_new_name_alone_leaves_the_catalogues_source() -> None:
    felt = own(felt={"name": "Black paper"})["felt"]
    assert (felt.name, felt.source) == ("Black paper", load_products()["felt"].source)
    assert not felt.confirmed


def test_the_map_may_name_its_own_source_and_doubt_it() -> None:
    felt = own(felt={"min_lap_mm": 90, "source": "office guide", "confirmed": False})["felt"]
    assert (felt.source, felt.confirmed) == ("office guide", False)


@pytest.mark.parametrize(
    ("bond", "kind"),
    [
        (Bond.ADHERED, Kind.SHEET),
        (Bond.FLUID, Kind.FLUID),
        (Bond.FASTENED, Kind.SHEET),
        (Bond.LOOSE, Kind.SHEET),
        (Bond.SEALANT, Kind.SEALANT),
        (Bond.TAPE, Kind.TAPE),
        (Bond.RIGID, Kind.BOARD),
    ],
)
def test_a_new_product_is_of_the_usual_kind_for_its_bond(bond: Bond, kind: Kind) -> None:
    new = own(new={"name": "New", "controls": ["air"], "bond": str(bond)})["new"]
    assert (new.key, new.kind, new.drawn) == ("new", kind, "line")
    assert new.controls == {Control.AIR}


def test_a_product_may_control_nothing() -> None:
    new = own(new={"name": "New", "controls": [], "bond": "rigid", "kind": "cladding"})["new"]
    assert (new.controls, new.kind) == (frozenset(), Kind.CLADDING)


@pytest.mark.parametrize(
    ("table", "sentence"),
    [
        ({"name": "X"}, "is not in the catalogue, so it needs 'controls' and 'bond' as well."),
        ({"sd_m": 1, "permeance_ng": 1}, "has both 'permeance_ng' and 'sd_m'; keep one of them."),
    ],
)
def test_fields_that_do_not_go_together_are_said(table: object, sentence: str) -> None:
    with pytest.raises(ListedError) as caught:
        own(x=table)
    assert caught.value.sentences == (f"map.toml, line 1: [products.x] {sentence}",)


def test_a_figure_that_the_map_calls_unknown_is_not_taken_from_the_catalogue() -> None:
    felt = own(felt={"min_lap_mm": 90, "unknown": ["permeance_ng", "thickness_mm"]})["felt"]
    assert (felt.permeance_ng, felt.thickness_mm, felt.min_lap_mm) == (None, None, 90)


def test_a_figure_cannot_be_given_and_unknown() -> None:
    with pytest.raises(ListedError, match="gives 'sd_m' and calls it unknown"):
        own(felt={"sd_m": 1.0, "unknown": ["sd_m"]})
    with pytest.raises(ListedError, match="did you mean 'sd_m'"):
        own(felt={"unknown": ["sd"]})
