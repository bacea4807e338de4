"""Guesses from the names of layers and from the texts that mark the sides."""

import tomllib
from time import process_time

import pytest
from hypothesis import given
from hypothesis import strategies as st

from enclosure_app.files.dxf.raw import Tag
from enclosure_app.files.maps.catalogue import load_products
from enclosure_app.files.maps.guesses import (
    Sureness,
    guess_of,
    guess_row,
    mark_of,
    names_furniture,
)
from enclosure_app.files.maps.layer_map import LayerMap, LayerRow
from enclosure_app.resources import resource

PRODUCTS = load_products()


def guessed(name: str) -> str | None:
    row = guess_row(name, PRODUCTS)
    return row and (row.product or row.role)


@pytest.mark.parametrize(
    ("name", "expected"),
    [
        # US national standard: discipline, major, minor (pattern second-hand, codes from memory)
        ("A-DETL-MEMB", "self-adhered-sheet"),
        ("A-DETL-ROOF-MEMB", "single-ply-roofing"),
        ("A-DETL-WRAP", "housewrap"),
        ("A-WALL-WRB", "housewrap"),
        ("A-DETL-AVB", "vapour-retarder"),
        ("A-WALL-INSUL", "mineral-wool"),
        ("A-DETL-INSL-RIGD", "xps"),
        ("A-DETL-GYP", "gypsum-board"),
        ("A-DETL-GYPB-N", "gypsum-board"),
        ("A-DETL-SHTG", "plywood"),
        ("A-DETL-FLSH-HEAD", "head-flashing"),
        ("A-DETL-FLSH", "base-flashing"),
        ("A-DETL-UNDL-EAVE", "eave-membrane"),
        ("A-DETL-UNDL", "underlayment"),
        ("A-DETL-PIPE-COLR", "pipe-collar"),
        ("A-GLAZ", "glass"),
        ("S-FNDN-2", "concrete"),
        ("S-BEAM-4", "framing"),
        ("C-TOPO", "soil"),
        ("A-ANNO-DIMS", "note"),
        ("G-ANNO-REVC-IDEN", "note"),
        ("A-DETL-MBND", "ignore"),
        ("A-DETL-MEMB-MBND", "ignore"),
        ("A-DETL-BRKL", "break"),
        ("CROP", "frame"),
        # plain words
        ("drip edge", "drip-edge"),
        ("DripEdge", "drip-edge"),
        ("DRIPEDGE", "drip-edge"),
        ("Roof_membrane (new)", "single-ply-roofing"),
        ("cladding air space", "air-space"),
        ("Vented air space", "vented-air-space"),
        ("capillary break", "capillary-break"),
        ("steel frame", "steel-framing"),
        ("Membrane notes", "note"),
        ("Gypsum air barrier", "gypsum-air-barrier"),
        # German, with the umlauts typed either way
        ("Dampfsperre", "vapour-retarder"),
        ("Dampfbremsfolie", "vapour-retarder"),
        ("Wärmedämmung", "mineral-wool"),
        ("WAERMEDAEMMUNG", "mineral-wool"),
        ("Aufsparrendämmung", "mineral-wool"),
        ("Perimeterdämmung", "xps"),
        ("Kelleraußenabdichtung", "waterproofing-sheet"),
        ("Unterspannbahn", "permeable-underlayment"),
        ("Traufblech", "drip-edge"),
        # French
        ("Pare-vapeur", "vapour-retarder"),
        ("PARE PLUIE", "housewrap"),
        ("Fenêtre", "window-frame"),
        ("Béton armé", "concrete"),
        # Spanish
        ("Barrera de vapor", "vapour-retarder"),
        ("Tela asfáltica", "bituminous-roofing"),
        ("HORMIGÓN", "concrete"),
        # Italian
        ("Freno vapore", "vapour-retarder"),
        ("Guaina bituminosa", "bituminous-roofing"),
        ("Cartongesso", "gypsum-board"),
        # Polish
        ("Paroizolacja", "vapour-retarder"),
        ("Wełna mineralna", "mineral-wool"),
        ("Obróbka blacharska", "base-flashing"),
        # Swedish, Norwegian, Finnish
        ("Ångspärr", "vapour-retarder"),
        ("Vindskydd", "housewrap"),
        ("Dampsperre", "vapour-retarder"),
        ("Vindsperre", "housewrap"),
        ("Takstein", "roof-tiles"),
        ("Höyrynsulku", "vapour-retarder"),
        ("Tuulensuojakipsilevy", "housewrap"),
        ("Lämmöneriste", "mineral-wool"),
        # Russian
        ("Пароизоляция", "vapour-retarder"),
        ("УТЕПЛИТЕЛЬ", "mineral-wool"),
        ("Гипсокартон", "gypsum-board"),
    ],
)
def test_a_name_is_read_as_the_trade_reads_it(name: str, expected: str) -> None:
    """Common practice, no source."""
    assert guessed(name) == expected


@pytest.mark.parametrize(
    "name",
    [
        "0",
        "",
        "A-WALL",
        "A-WALL-5",
        "A-ROOF",
        "A-FLOR",
        "A-DETL",
        "A-DETL-THIN",
        "A-DETL-HDLN",
        "A-DETL-GENF",
        "A-WALL-PATT-1",
        "A-CLNG",
        "Layer1",
        "Thermal break",
        "INSIDE",
        "---",
    ],
)
def test_a_name_that_says_nothing_of_a_product_is_not_guessed(name: str) -> None:
    """A wall layer holds whole walls; to take it for a control layer would be a false alarm."""
    assert guess_row(name, PRODUCTS) is None


def test_frame_means_the_outline_only_as_the_whole_name() -> None:
    assert guessed("Frame") == "frame"
    assert guessed("Window frame") == "window-frame"
    assert guessed("Frame wall") is None


def test_what_an_attached_drawing_puts_before_the_name_does_not_count() -> None:
    assert guessed("insulation|A-DETL-MEMB") == "self-adhered-sheet"
    assert guessed("concrete$0$A-DETL-MEMB") == "self-adhered-sheet"


def test_texts_and_dimensions_of_iso_13567_are_notes() -> None:
    """Agent, six characters of element, two of presentation (from memory)."""
    assert guessed("A-210---T-") == "note"
    assert guessed("A-37411-D-N") == "note"
    assert guessed("A-210---E-") is None


def test_a_product_that_the_map_does_not_know_is_not_guessed() -> None:
    assert guess_row("Dampfsperre", {"felt": PRODUCTS["felt"]}) is None
    assert guess_row("CROP", {}) == LayerRow("CROP", role="frame")


def test_every_guess_names_a_product_that_there_is() -> None:
    with resource("layer_guesses.toml").open("rb") as file:
        tables = tomllib.load(file)
    assert set(tables["products"]) <= set(PRODUCTS)
    assert set(tables["roles"]) | set(tables["whole"]) == {"frame", "break", "note", "ignore"}


@pytest.mark.parametrize("key", list(PRODUCTS))
def test_a_product_is_known_by_its_key(key: str) -> None:
    guess = guessed(f"A-DETL-{key.upper()}")
    assert guess == ("framing" if key == "beam" else key)


@given(st.text(max_size=40), st.sampled_from(["", "membrane", "[drip edge]", "*soil?"]))
def test_a_guessed_row_is_for_its_own_layer(noise: str, word: str) -> None:
    """Signs that mean something in a pattern are taken as they are."""
    name = f"{noise} {word}"
    row = guess_row(name, PRODUCTS)
    if row:
        rows = LayerMap((row,), PRODUCTS)
        assert rows.row_for(Tag("LINE", "1", name)) is row
        assert rows.row_for(Tag("LINE", "1", f"{name}x")) is None


def test_a_name_that_is_no_sound_text_is_borne() -> None:
    assert guessed("D\udce4mmung membrane") == "self-adhered-sheet"


def test_ten_thousand_names_are_guessed_in_a_moment() -> None:
    names = [f"A-DETL-INSL-{n}-Gelände" for n in range(10_000)]
    start = process_time()
    for name in names:
        guess_row(name, PRODUCTS)
    assert process_time() - start < 1.5


@pytest.mark.parametrize(
    "text",
    [
        "INSIDE",
        "Interior",
        "int.",
        "(inside)",
        " inside: ",
        "Innen",
        "INTÉRIEUR",
        "interieur",
        "adentro",
        "INTERNO",
        "Binnen",
        "Insida",
        "Innvendig",
        "indvendigt",
        "Sisäpuoli",
        "wewnątrz",
        "uvnitř",
        "belső",
        "Внутри",
        "всередині",
        "εσωτερικό",
        "İÇ",
        "פנים",
        "داخل",
        "室内",
        "屋内",
        "실내",
    ],
)
def test_words_for_inside_mark_it(text: str) -> None:
    assert mark_of(text) == "inside"


@pytest.mark.parametrize(
    "text",
    [
        "OUTSIDE",
        "Exterior",
        "EXT",
        "“outside”",
        "Außen",
        "AUSSEN",
        "Extérieur",
        "fuera",
        "ESTERNO",
        "buiten",
        "Utsida",
        "utvendig",
        "UDVENDIG",
        "Ulkopuoli",
        "ZEWNĄTRZ",
        "venku",
        "külső",
        "Снаружи",
        "УЛИЦА",
        "έξω",
        "DIŞ",
        "dış",
        "חוץ",
        "خارج",
        "室外",
        "屋外",
        "실외",
    ],
)
def test_words_for_outside_mark_it(text: str) -> None:
    assert mark_of(text) == "outside"


@pytest.mark.parametrize(
    "text",
    [
        "",
        "...",
        "INSIDE CORNER",
        "see exterior elevation",
        "INT/EXT",
        "interior paint",
        "in",
        "ut",
        "inside\noutside",
        "EST",
        "intern",
    ],
)
def test_the_whole_text_has_to_be_the_word(text: str) -> None:
    assert mark_of(text) is None


def test_no_word_marks_both_sides_and_twelve_languages_are_known() -> None:
    with resource("mark_words.toml").open("rb") as file:
        languages = tomllib.load(file)
    for sides in languages.values():
        assert {mark_of(word) for word in sides["inside"]} == {"inside"}
        assert {mark_of(word) for word in sides["outside"]} == {"outside"}
    assert {"en", "de", "fr", "es", "it", "pl", "sv", "no", "fi", "ru", "nl", "pt"} <= set(
        languages
    )


@pytest.mark.parametrize(
    ("name", "words", "sureness", "others"),
    [
        ("Vapour barrier", "vapour barrier", Sureness.SURE, ()),
        ("A-WALL-VAPOUR-BARRIER-N", "vapour barrier", Sureness.SURE, ()),
        ("CROP", "crop", Sureness.SURE, ()),
        ("A-ANNO-TEXT", "anno", Sureness.SURE, ()),
        ("A-DETL-MEMB", "memb", Sureness.LIKELY, ()),
        ("Plywood glass", "plywood", Sureness.DOUBTFUL, ("glass",)),
    ],
)
def test_a_guess_says_which_words_it_is_made_by_and_how_sure_it_is(
    name: str, words: str, sureness: Sureness, others: tuple[str, ...]
) -> None:
    guess = guess_of(name, load_products())
    assert guess is not None
    assert (guess.words, guess.sureness, guess.others) == (words, sureness, others)


def test_a_name_that_says_nothing_gives_no_guess() -> None:
    assert guess_of("A-WALL", load_products()) is None


@pytest.mark.parametrize(
    "name", ["I-FURN", "Furniture", "plan|I-FURN-FREE", "Möbelierung", "MOEBEL", "02_mobilier"]
)
def test_layers_of_furniture_are_known(name: str) -> None:
    assert names_furniture(name)


@pytest.mark.parametrize("name", ["A-WALL", "furnace", "A-FURRING", "Moebius", ""])
def test_other_layers_are_not_of_furniture(name: str) -> None:
    assert not names_furniture(name)
