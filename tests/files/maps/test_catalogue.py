"""The catalogue against handbook figures (all from memory until somebody has the documents)."""

import tomllib
from time import process_time

import pytest

from enclosure_app.files.maps.catalogue import load_products
from enclosure_app.model.product import Bond, Control, Kind, Product
from enclosure_app.resources import resource

PERM = 57.2  # ng/(Pa·s·m²) in one US perm; ASTM E96 factor, from memory
AIR = 200.0  # ng/(m·s·Pa), still air, EN ISO 13788, from memory
PRODUCTS = load_products()


def permeance(product: Product) -> float:
    """ng/(Pa·s·m²), whichever way the product states it."""
    if product.permeance_ng is not None:
        return product.permeance_ng
    assert product.sd_m is not None
    return AIR / product.sd_m


def controls(letters: str) -> set[Control]:
    names = {"W": Control.WATER, "A": Control.AIR, "V": Control.VAPOUR, "H": Control.HEAT}
    return {names[letter] for letter in letters}


@pytest.mark.parametrize(
    ("letters", "keys"),
    [
        ("WAV", "self-adhered-sheet self-adhered-underlayment eave-membrane bituminous-roofing"),
        ("WAV", "fluid-impermeable flashing-tape butyl-tape glass pipe pipe-collar"),
        ("WA", "self-adhered-permeable housewrap fluid-permeable seam-tape sealant"),
        ("WA", "compression-gasket window-frame door-frame single-ply-roofing"),
        ("W", "building-paper felt underlayment roof-felt drip-edge apron-flashing sill-pan"),
        ("W", "step-flashing kick-out-flashing head-flashing base-flashing counter-flashing"),
        ("W", "through-wall-flashing coping weep-screed roof-drain"),
        ("AV", "vapour-retarder smart-vapour-retarder foil-tape acoustic-sealant"),
        ("AV", "bituminous-vapour-control"),
        ("WV", "damp-proofing waterproofing-sheet capillary-break"),
        ("V", "slab-vapour-retarder"),
        ("A", "sill-gasket sealed-sheathing gypsum-air-barrier concrete duct"),
        ("H", "mineral-wool glass-fibre cellulose eps xps pir wood-fibre cellular-glass"),
        ("AH", "open-cell-foam"),
        ("AVH", "closed-cell-foam"),
        ("", "plywood osb gypsum-board gypsum-sheathing cement-board fibreboard roof-deck"),
        ("", "framing ledger engineered-wood steel-framing brick block beam soil gravel"),
        ("", "lap-siding brick-veneer metal-panel stucco shingles roof-tiles metal-roofing"),
        ("", "fascia-board soffit trim gutter drainage-mat ventilation-mat"),
        ("", "air-space vented-air-space"),
    ],
)
def test_a_product_controls_what_the_trade_relies_on_it_for(letters: str, keys: str) -> None:
    """Common practice, no source."""
    for key in keys.split():
        assert PRODUCTS[key].controls == controls(letters), key


def test_claddings_and_structure_are_no_control_layer() -> None:
    """Claddings leak, and framing stands between the layers."""
    for product in PRODUCTS.values():
        if product.kind in (Kind.CLADDING, Kind.FRAMING, Kind.MASONRY, Kind.GROUND, Kind.MAT):
            assert not product.controls, product.key


@pytest.mark.parametrize(
    ("key", "thickness_mm", "resistance_factor"),
    [
        ("gypsum-board", 12.5, 10),
        ("plywood", 12.5, 200),
        ("osb", 11, 50),
        ("cement-board", 12.5, 50),
        ("fibreboard", 12.5, 10),
        ("mineral-wool", 140, 1),
        ("eps", 100, 60),
        ("xps", 50, 150),
        ("pir", 100, 60),
        ("phenolic", 80, 50),
        ("closed-cell-foam", 75, 60),
        ("brick", 102, 16),
        ("concrete", 200, 130),
        ("stucco", 20, 10),
        ("bituminous-roofing", 4, 50_000),
        ("damp-proofing", 2, 50_000),
        ("single-ply-roofing", 1.5, 6_000),
    ],
)
def test_sd_is_resistance_factor_times_thickness(
    key: str, thickness_mm: float, resistance_factor: float
) -> None:
    """ISO 10456:2007 tables 3 and 4, dry cup, from memory; brick EN 1745, from memory."""
    product = PRODUCTS[key]
    assert product.thickness_mm == thickness_mm
    assert product.sd_m == pytest.approx(resistance_factor * thickness_mm / 1000)


@pytest.mark.parametrize(
    ("key", "low", "high"),
    [
        ("gypsum-board", 0.21, 0.25),
        ("plywood", 0.13, 0.13),
        ("osb", 0.13, 0.13),
        ("mineral-wool", 0.032, 0.044),
        ("eps", 0.030, 0.040),
        ("xps", 0.027, 0.037),
        ("pir", 0.022, 0.030),
        ("phenolic", 0.020, 0.025),
        ("cellular-glass", 0.038, 0.055),
        ("framing", 0.12, 0.13),
        ("concrete", 2.0, 2.5),
        ("brick", 0.77, 0.77),
        ("steel-framing", 50, 50),
        ("lead-flashing", 35, 35),
        ("gravel", 2.0, 2.0),
        ("soil", 1.5, 1.5),
    ],
)
def test_conductivity_lies_in_the_range_of_the_table(key: str, low: float, high: float) -> None:
    """ISO 10456:2007 tables 3 and 4, from memory."""
    conductivity = PRODUCTS[key].conductivity
    assert conductivity is not None
    assert low <= conductivity <= high


@pytest.mark.parametrize(
    ("key", "perms"),
    [("vapour-retarder", 0.06), ("felt", 1.0), ("roof-felt", 1.0), ("vapour-paint", 0.45)],
)
def test_us_permeances_are_converted(key: str, perms: float) -> None:
    """ASHRAE Fundamentals vapour table, from memory."""
    assert PRODUCTS[key].permeance_ng == pytest.approx(perms * PERM, rel=1e-4)


@pytest.mark.parametrize(
    ("key", "above", "most"),
    [
        ("vapour-retarder", 0, 0.1),
        ("self-adhered-sheet", 0, 0.1),
        ("eave-membrane", 0, 0.1),
        ("slab-vapour-retarder", 0, 0.1),
        ("kraft-facing", 0.1, 1.0),
        ("smart-vapour-retarder", 0.1, 1.0),
        ("closed-cell-foam", 0.1, 1.0),
        ("building-paper", 1.0, 10.0),
        ("fluid-permeable", 1.0, 10.0),
    ],
)
def test_products_fall_in_their_vapour_class(key: str, above: float, most: float) -> None:
    """IRC R702.7 classes, second-hand: I to 0.1 perm (5.72 ng), II to 1, III to 10 perm.

    A table that puts Class I at 57 ng is out by ten.
    """
    assert above * PERM < permeance(PRODUCTS[key]) <= most * PERM * 1.0001


@pytest.mark.parametrize("key", ["self-adhered-permeable", "housewrap", "permeable-underlayment"])
def test_vapour_open_sheets_are_open(key: str) -> None:
    """Over 10 perm; ISO 10456 table 5, breather membrane, from memory."""
    assert permeance(PRODUCTS[key]) > 10 * PERM


def test_every_vapour_layer_resists_vapour() -> None:
    """What claims to control vapour is Class I or II, or states no figure."""
    for product in PRODUCTS.values():
        stated = product.permeance_ng is not None or product.sd_m is not None
        if Control.VAPOUR in product.controls and stated:
            assert permeance(product) <= PERM * 1.0001, product.key


def test_only_products_with_a_figure_of_their_own_have_a_least_lap() -> None:
    """Roof sheets 4 in, common practice; slab sheet 6 in, IRC R506.2.3, second-hand."""
    laps = {key: one.min_lap_mm for key, one in PRODUCTS.items() if one.min_lap_mm is not None}
    assert laps == {
        "self-adhered-underlayment": 101.6,
        "eave-membrane": 101.6,
        "slab-vapour-retarder": 152.4,
    }


def test_no_figure_from_memory_counts_as_confirmed() -> None:
    doubtful = ("from memory", "second-hand", "no source")
    for product in PRODUCTS.values():
        assert product.source, product.key
        if any(word in product.source for word in doubtful):
            assert not product.confirmed, product.key


def test_no_product_states_vapour_twice_or_a_figure_that_is_not_above_zero() -> None:
    for product in PRODUCTS.values():
        assert None in (product.permeance_ng, product.sd_m), product.key
        figures = (product.thickness_mm, product.permeance_ng, product.sd_m, product.conductivity)
        assert all(figure > 0 for figure in figures if figure is not None), product.key


def test_sd_and_permeance_hold_for_a_thickness_that_is_stated() -> None:
    """Otherwise a piece drawn thicker could not be put in proportion. Panes and frames are whole."""
    for product in PRODUCTS.values():
        stated = product.permeance_ng is not None or product.sd_m is not None
        if stated and product.kind is not Kind.GLASS:
            assert product.thickness_mm is not None, product.key


def test_beads_and_gaskets_seal_where_they_touch() -> None:
    for product in PRODUCTS.values():
        if product.kind in (Kind.SEALANT, Kind.GASKET):
            assert product.bond is Bond.SEALANT, product.key


def test_the_catalogue_cannot_be_changed() -> None:
    with pytest.raises(TypeError):
        PRODUCTS["felt"] = PRODUCTS["osb"]


def test_the_names_are_told_apart() -> None:
    names = [product.name for product in PRODUCTS.values()]
    assert sorted(set(names)) == sorted(names)


def test_making_the_products_costs_little_next_to_reading_the_file() -> None:
    """8 ms are promised on a quiet machine; a test run is not quiet, so the two are compared."""
    text = resource("products.toml").read_text(encoding="utf-8")
    reading, loading = [], []
    for _ in range(5):
        start = process_time()
        tomllib.loads(text)
        reading.append(process_time() - start)
        load_products.cache_clear()
        start = process_time()
        load_products()
        loading.append(process_time() - start)
    assert min(loading) < 2.5 * min(reading)


def test_every_table_of_the_file_is_a_product() -> None:
    with resource("products.toml").open("rb") as file:
        tables = tomllib.load(file)
    assert list(tables) == ["products"]
    assert list(tables["products"]) == list(PRODUCTS)
