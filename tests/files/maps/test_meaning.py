"""What a layer means comes from the map, or from its name."""

from enclosure_app.files.dxf.raw import Tag
from enclosure_app.files.maps.catalogue import load_products
from enclosure_app.files.maps.layer_map import LayerMap, LayerRow
from enclosure_app.files.maps.meaning import Meaning, layers_named
from enclosure_app.model.drawing import NoteLevel
from enclosure_app.model.place import Line
from enclosure_app.model.section import Piece

MAP = LayerMap(
    (
        LayerRow("SHEET", product="housewrap"),
        LayerRow("CROP", role="frame"),
        LayerRow("NOTES", role="note"),
        LayerRow("HIDE", role="ignore"),
        LayerRow("MIXED", product="osb", linetype="DASHED"),
    ),
    load_products(),
)


def tag(layer: str, linetype: str = "CONTINUOUS") -> Tag:
    return Tag("LINE", "1", layer, linetype)


def test_without_linework_only_what_is_mapped_is_wanted() -> None:
    meaning = Meaning(MAP, linework=False)
    layers = ("SHEET", "CROP", "NOTES", "HIDE", "OTHER")
    assert [meaning.wanted(tag(layer)) for layer in layers] == [True, True, False, False, False]


def test_with_linework_everything_is_wanted_even_what_is_to_be_ignored_today() -> None:
    meaning = Meaning(MAP, linework=True)
    layers = ("SHEET", "CROP", "NOTES", "HIDE", "OTHER")
    assert [meaning.wanted(tag(layer)) for layer in layers] == [True] * 5


def test_layers_of_which_nothing_is_said_are_one_note() -> None:
    meaning = Meaning(MAP, linework=False)
    for each in (tag("OTHER"), tag("MORE"), tag("MIXED"), tag("MIXED", "DASHED"), tag("SHEET")):
        meaning.wanted(each)
    assert [(n.level, n.text) for n in meaning.notes(())] == [
        (NoteLevel.IGNORED, "Nothing is said of layers “MORE”, “OTHER”: linework only.")
    ]


def test_guesses_are_one_note_for_each_product() -> None:
    meaning = Meaning(None, linework=False)
    row = meaning.row(tag("HOUSEWRAP"))
    assert row is not None
    assert row.product == "housewrap"
    line = Line(((0, 0), (1, 0)))
    pieces = [Piece(f"{i}", "housewrap", line, layer=layer) for i, layer in enumerate("BAA")]
    name = meaning.products["housewrap"].name
    assert [(n.level, n.text) for n in meaning.notes(pieces)] == [
        (NoteLevel.GUESSED, f"Taken for {name}: layers “A”, “B”.")
    ]


def test_many_layers_are_shown_in_part() -> None:
    assert layers_named(f"L{k}" for k in range(10_000)).endswith("and 9992 more")
    assert layers_named(["X", "X"]) == "layer “X”"
