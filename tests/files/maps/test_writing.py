"""A layer map that is written and read again is the same map."""

from pathlib import Path
from tempfile import TemporaryDirectory
from types import MappingProxyType

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from enclosure_app.errors import EnclosureError
from enclosure_app.files.maps.catalogue import load_products
from enclosure_app.files.maps.layer_map import LayerMap, load_layer_map
from enclosure_app.files.maps.products import FIGURES
from enclosure_app.files.maps.rule_book import books, limit_units
from enclosure_app.files.maps.writing import map_of, map_text, save_layer_map
from enclosure_app.files.projects import Wish, read_project
from enclosure_app.model.finding import Severity
from enclosure_app.model.layer import LayerRow, Role
from enclosure_app.model.product import Bond, Control, Kind, Product
from enclosure_app.resources import sample

texts = (
    st.text(min_size=1, max_size=12)
    .filter(str.strip)
    .filter(lambda text: not any(0xD800 <= ord(char) <= 0xDFFF for char in text))
)
figures = st.none() | st.floats(1e-9, 1e9)


@st.composite
def products(draw: st.DrawFn) -> Product:
    """Return a product that a map may hold: new, or another one under a key of the catalogue."""
    sd = draw(figures)
    return Product(
        key=draw(st.sampled_from(["felt", "osb", "eps"]) | texts),
        name=draw(texts),
        controls=draw(st.frozensets(st.sampled_from(Control))),
        bond=draw(st.sampled_from(Bond)),
        kind=draw(st.sampled_from(Kind)),
        drawn=draw(st.sampled_from(["line", "area", "either"])),
        min_lap_mm=draw(figures),
        thickness_mm=draw(figures),
        permeance_ng=None if sd is not None else draw(figures),
        sd_m=sd,
        conductivity=draw(figures),
        source=draw(texts),
        confirmed=draw(st.booleans()),
    )


@st.composite
def maps(draw: st.DrawFn) -> LayerMap:
    own = {product.key: product for product in draw(st.lists(products(), max_size=3))}
    known = {**load_products(), **own}
    meant = st.sampled_from([*known][-5:] + [*known][:3]).map(lambda key: {"product": key})
    role = st.sampled_from([*Role]).map(lambda role: {"role": role})
    row = st.builds(
        lambda match, what, **more: LayerRow(match, **what, **more),
        texts,
        meant | role,
        linetype=st.none() | texts,
        color=st.none() | st.integers(1, 255),
        block=st.none() | texts,
        handles=st.lists(texts, max_size=2).map(tuple),
    )
    limits = st.sampled_from([name for name, unit in limit_units().items() if unit == "mm"])
    return LayerMap(
        tuple(draw(st.lists(row, max_size=4))),
        MappingProxyType(known),
        limits=MappingProxyType(draw(st.dictionaries(limits, st.floats(0, 1e6), max_size=2))),
        book=draw(st.none() | st.sampled_from([*books()])),
        severities=MappingProxyType(
            draw(st.dictionaries(texts, st.sampled_from(Severity), max_size=2))
        ),
    )


@settings(max_examples=60, deadline=None)
@given(maps())
def test_what_is_written_reads_the_same(layer_map: LayerMap) -> None:
    with TemporaryDirectory() as folder:
        path = Path(folder) / "map.toml"
        save_layer_map(layer_map, path)
        assert load_layer_map(path) == layer_map


@pytest.mark.parametrize("name", ["layers.toml", "layers-second-office.toml"])
def test_an_offices_map_comes_back_as_it_was_though_in_other_words(
    name: str, tmp_path: Path
) -> None:
    layer_map = load_layer_map(sample(name))
    save_layer_map(layer_map, tmp_path / name)
    assert load_layer_map(tmp_path / name) == layer_map


def test_only_products_that_the_program_lacks_are_written_each_with_what_is_known() -> None:
    own = Product(
        "own", "Blue wrap", frozenset({Control.AIR}), Bond.FASTENED, Kind.SHEET, sd_m=0.2,
        source="maker's sheet", confirmed=True,
    )  # fmt: skip
    rows = (LayerRow("A-WRAP", product="own", linetype="DASHED"),)
    assert map_text(LayerMap(rows, {**load_products(), "own": own})).splitlines()[2:] == [
        "[products.own]",
        'name = "Blue wrap"',
        'controls = ["air"]',
        'bond = "fastened"',
        'kind = "sheet"',
        'drawn = "line"',
        "sd_m = 0.2",
        'source = "maker\'s sheet"',
        "confirmed = true",
        "",
        "[[layers]]",
        'match = "A-WRAP"',
        'linetype = "DASHED"',
        'product = "own"',
    ]


def test_a_figure_of_the_catalogue_that_is_not_known_is_said_to_be_unknown() -> None:
    felt = load_products()["felt"]
    bare = Product("felt", felt.name, felt.controls, felt.bond, felt.kind, source="office")
    text = map_text(LayerMap((), {**load_products(), "felt": bare}))
    lacking = [name for name in FIGURES if getattr(felt, name) is not None]
    assert lacking
    assert f"unknown = {str(lacking).replace(chr(39), chr(34))}" in text


def test_a_project_read_with_a_map_gives_that_map_back() -> None:
    layer_map = load_layer_map(sample("layers.toml"))
    project = read_project(sample("parapet.dxf"), Wish(layer_map))
    assert map_of(project) == layer_map


def test_a_folder_that_refuses_is_told(tmp_path: Path) -> None:
    with pytest.raises(EnclosureError):
        save_layer_map(LayerMap((), load_products()), tmp_path / "no" / "map.toml")
