"""The layer map: what it means, and every mistake said in one go with its line."""

from collections.abc import Callable
from pathlib import Path
from textwrap import dedent
from time import process_time

import pytest

from enclosure_app.errors import EnclosureError, ListedError
from enclosure_app.files.dxf.raw import Tag
from enclosure_app.files.maps.catalogue import load_products
from enclosure_app.files.maps.layer_map import LayerMap, LayerRow, load_layer_map
from enclosure_app.model.finding import Severity
from enclosure_app.model.product import Bond, Control, Kind

Write = Callable[[str | bytes], Path]


@pytest.fixture
def write(tmp_path: Path) -> Write:
    def written(text: str | bytes) -> Path:
        path = tmp_path / "map.toml"
        path.write_bytes(text if isinstance(text, bytes) else dedent(text).encode())
        return path

    return written


def tag(layer: str, **more: object) -> Tag:
    return Tag(kind="LINE", **{"handle": "1A", "layer": layer, **more})


def mapped(*rows: LayerRow) -> LayerMap:
    return LayerMap(rows, load_products())


GOOD = """
    book = "nbc-2020"

    [products.wall-sheet]
    name = "Wall sheet"
    controls = ["air", "water"]
    bond = "adhered"
    min_lap_mm = 100

    [[layers]]
    match = "A-ROOF-MEMB*"
    product = "wall-sheet"

    [[layers]]
    match = "CROP"
    role = "frame"

    [limits]
    wall-lap = 75
    eave-cover-steep-slope = 0.5

    [severity]
    short-lap = "doubt"
"""


def test_a_sound_map_is_read_as_written(write: Write) -> None:
    read = load_layer_map(write(GOOD))
    assert read.rows == (
        LayerRow("A-ROOF-MEMB*", product="wall-sheet"),
        LayerRow("CROP", role="frame"),
    )
    sheet = read.products["wall-sheet"]
    assert sheet.controls == {Control.AIR, Control.WATER}
    assert (sheet.bond, sheet.kind, sheet.drawn) == (Bond.ADHERED, Kind.SHEET, "line")
    assert (sheet.min_lap_mm, sheet.source, sheet.confirmed) == (100, "map.toml", True)
    assert read.products["osb"] is load_products()["osb"]
    assert dict(read.limits) == {"wall-lap": 75.0, "eave-cover-steep-slope": 0.5}
    assert read.book == "nbc-2020"
    assert dict(read.severities) == {"short-lap": Severity.DOUBT}


def test_a_byte_order_mark_and_windows_line_ends_are_read(write: Write) -> None:
    path = write(b'\xef\xbb\xbf[[layers]]\r\nmatch = "A"\r\nproduct = "felt"\r\n')
    assert load_layer_map(path).rows == (LayerRow("A", product="felt"),)


WRONG = """
    colour = "red"
    book = "irc-2012"
    [products.new]
    controls = ["air", "wind"]
    [products.felt]
    permeance_ng = 5
    sd_m = 3
    [products.osb]
    bond = "glued"
    kind = "plank"
    thickness_mm = -3
    sd_m = nan
    conductivity = "high"
    [products.eps]
    min_lap_mm = true
    drawn = "dot"
    [[layers]]
    match = "A"
    prodct = "felt"
    [[layers]]
    match = "B"
    product = "felts"
    [[layers]]
    match = "C"
    product = "felt"
    role = "frame"
    [[layers]]
    product = "felt"
    [[layers]]
    match = 7
    color = 300
    role = "border"
    handles = "2F"
    [[layers]]
    match = "D"
    [limits]
    wall-lop = 3
    wall-lap = inf
    eave-cover-steep-slope = 8
    eave-wall-line = 2
    [severity]
    gap = "loud"
    gop = "fault"
"""


def test_everything_wrong_is_said_in_one_go_with_its_line(write: Write) -> None:
    with pytest.raises(ListedError) as caught:
        load_layer_map(write(WRONG), rules=("gap", "short-lap"))
    assert [one.removeprefix("map.toml, line ") for one in caught.value.sentences] == [
        "2: unknown key 'colour' in the layer map; use one of products, layers, limits, severity, book.",
        "3: 'book' in the layer map cannot be 'irc-2012'; did you mean 'irc-2024'?",
        "4: [products.new] is not in the catalogue, so it needs 'name' and 'bond' as well.",
        "5: 'controls' in [products.new] cannot be 'wind'; use one of water, air, vapour, heat.",
        "6: [products.felt] has both 'permeance_ng' and 'sd_m'; keep one of them.",
        "10: 'bond' in [products.osb] cannot be 'glued'; use one of adhered, fluid, fastened, loose, sealant, tape, rigid.",
        "11: 'kind' in [products.osb] cannot be 'plank'; use one of sheet, underlayment, eave-membrane, roofing, fluid, tape, sealant, gasket, board, flashing, drip-edge, sill-pan, insulation, framing, masonry, concrete, glass, opening, cladding, mat, air-space, penetration, collar, drain, ground.",
        "12: 'thickness_mm' in [products.osb] is -3; it cannot be negative.",
        "13: 'sd_m' in [products.osb] is nan; write a finite number.",
        "14: 'conductivity' in [products.osb] must be a number without quotes, not 'high'.",
        "16: 'min_lap_mm' in [products.eps] must be a number without quotes, not true.",
        "17: 'drawn' in [products.eps] cannot be 'dot'; use one of line, area, either.",
        "20: unknown key 'prodct' in [[layers]]; did you mean 'product'?",
        "23: unknown product 'felts'; did you mean 'felt'?",
        "24: [[layers]] has both 'product' and 'role'; keep one of them.",
        "28: [[layers]] needs 'match', a pattern for the names of layers.",
        "31: 'match' in [[layers]] must be a text in quotes.",
        "32: 'color' in [[layers]] must be a colour index from 1 to 255, not 300.",
        "33: 'role' in [[layers]] cannot be 'border'; use one of frame, break, note, ignore, linework.",
        "34: 'handles' in [[layers]] must be a list of texts in quotes.",
        "35: [[layers]] has neither 'product' nor 'role'; say what the layer is.",
        "38: unknown key 'wall-lop' in [limits]; did you mean 'wall-lap'?",
        "39: 'wall-lap' in [limits] is inf; write a finite number.",
        "40: 'eave-cover-steep-slope' in [limits] is 8; write a slope as rise over run (4:12 is 0.3333).",
        "41: 'eave-wall-line' in [limits] is 2; write 1 or 0.",
        "43: 'gap' in [severity] cannot be 'loud'; use one of fault, doubt, remark, off.",
        "44: unknown key 'gop' in [severity]; did you mean 'gap'?",
    ]


def test_a_row_with_a_product_that_is_itself_wrong_is_not_blamed(write: Write) -> None:
    text = '[products.mine]\nname = "Mine"\n[[layers]]\nmatch = "A"\nproduct = "mine"\n'
    with pytest.raises(ListedError) as caught:
        load_layer_map(write(text))
    assert caught.value.sentences == (
        "map.toml, line 1: [products.mine] is not in the catalogue, so it needs 'controls' and 'bond' as well.",
    )


def test_a_misspelt_table_is_found_where_it_first_stands(write: Write) -> None:
    with pytest.raises(ListedError) as caught:
        load_layer_map(write('[limits]\n\n[product.x]\nname = "X"\n[layers]\nmatch = "A"\n'))
    assert caught.value.sentences == (
        "map.toml, line 3: unknown key 'product' in the layer map; did you mean 'products'?",
        "map.toml, line 5: 'layers' in the layer map must be written as [[layers]], once for each row.",
    )


@pytest.mark.parametrize(
    ("text", "sentence"),
    [
        (
            "[[layers]\n",
            "map.toml: this is not sound TOML: Expected ']]' at the end of an array declaration (at line 1, column 9).",
        ),
        (
            b'a = 1\nb = "\xe9"\n',
            "map.toml, line 2: the file is not UTF-8 text; save it as UTF-8.",
        ),
        ("a = " + "[" * 20_000, "map.toml: the brackets are nested too deeply."),
    ],
)
def test_a_file_that_is_no_toml_is_refused_in_one_sentence(
    write: Write, text: str | bytes, sentence: str
) -> None:
    with pytest.raises(EnclosureError) as caught:
        load_layer_map(write(text))
    assert str(caught.value) == sentence


def test_a_file_that_is_not_there_and_a_folder_are_refused(tmp_path: Path) -> None:
    with pytest.raises(EnclosureError, match=r"^none\.toml: there is no such file in "):
        load_layer_map(tmp_path / "none.toml")
    with pytest.raises(EnclosureError, match=r": this is not a file; name a file in TOML\.$"):
        load_layer_map(tmp_path)


def test_the_first_row_that_matches_wins_whatever_the_case() -> None:
    rows = mapped(LayerRow("a-*memb?", product="felt"), LayerRow("A-*", role="note"))
    assert rows.row_for(tag("A-Roof-MEMB1")) is rows.rows[0]
    assert rows.row_for(tag("A-ROOF-MEMB")) is rows.rows[1]
    assert rows.row_for(tag("S-BEAM")) is None


def test_a_row_is_narrowed_by_linetype_colour_and_block() -> None:
    rows = mapped(
        LayerRow("0", product="felt", linetype="hidden*"),
        LayerRow("0", product="osb", color=3),
        LayerRow("0", product="pipe", block="VENT-?"),
    )
    assert rows.row_for(tag("0", linetype="HIDDEN2", color=3)) is rows.rows[0]
    assert rows.row_for(tag("0", color=3)) is rows.rows[1]
    assert rows.row_for(tag("0", block="vent-1")) is rows.rows[2]
    assert rows.row_for(tag("0")) is None


@pytest.mark.parametrize(
    ("handle", "found"),
    [
        ("2F", True),
        ("2f", True),
        ("2F/3A", True),
        ("2F/3A#2", True),
        ("2F#2", True),
        ("2FA", False),
        ("3A/2F", False),
    ],
)
def test_a_handle_takes_its_entity_and_what_came_in_with_its_block(
    handle: str, *, found: bool
) -> None:
    rows = mapped(LayerRow("*", product="felt", handles=("2F",)), LayerRow("0", role="ignore"))
    row = rows.row_for(tag("0", handle=handle))
    assert row is rows.rows[0 if found else 1]


def test_a_row_by_handles_alone_needs_no_pattern(write: Write) -> None:
    read = load_layer_map(write('[[layers]]\nhandles = ["2F"]\nproduct = "felt"\n'))
    assert read.rows == (LayerRow("*", product="felt", handles=("2F",)),)


def test_fifty_thousand_entities_are_looked_up_in_a_moment() -> None:
    """50 ms are promised on a quiet machine and 13 were measured; a test run is not quiet."""
    rows = mapped(*(LayerRow(f"A-{n}*", product="felt") for n in range(40)))
    tags = [tag(f"A-{n % 500}", handle=str(n)) for n in range(50_000)]
    start = process_time()
    for one in tags:
        rows.row_for(one)
    assert process_time() - start < 0.15
