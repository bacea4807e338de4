"""What there is to tell of each layer of a project."""

from dataclasses import replace

from enclosure_app.files.maps.catalogue import load_products
from enclosure_app.files.maps.guesses import Sureness
from enclosure_app.model.drawing import Units
from enclosure_app.model.layer import LayerRow, Role
from enclosure_app.model.place import Line
from enclosure_app.model.project import Project
from enclosure_app.model.section import Piece, Section, Stroke, Text
from enclosure_app.window.canvas.made_ready import made_of
from enclosure_app.window.lines.layers_told import LayersTold, layers_by_handle

FRAME = ((0.0, 0.0), (100.0, 0.0), (100.0, 100.0), (0.0, 100.0))
RUN = ((0.0, 5.0), (50.0, 5.0))
SECTION = Section(
    "s",
    FRAME,
    (
        Piece("1", "housewrap", Line(RUN), ("1",), "A-WRAP"),
        Piece("2", "felt", Line(RUN), ("2",), "A-WRAP"),
        Piece("drawn-1", "felt", Line(RUN)),
    ),
    load_products(),
    strokes=(
        Stroke(RUN, "a-other", "3"),
        Stroke(RUN, "a-other", "3"),
        Stroke(RUN, "a-other", "4"),
    ),
    taken=(Stroke(RUN, "A-WRAP", "1"), Stroke(RUN, "A-WRAP", "2"), Stroke(RUN, "HIDE", "5")),
    texts=(Text("note", (5.0, 5.0), layer="A-ANNO"), Text("note", (5.0, 5.0), layer="a-other")),
)
PROJECT = Project(
    "",
    Units.MM,
    (SECTION,),
    layers=(
        LayerRow("A-*", product="felt", color=3),
        LayerRow("A-WRAP", product="housewrap"),
        LayerRow("HIDE", role=Role.IGNORE),
    ),
)


def test_each_layer_is_told_once_by_name_with_what_is_on_it() -> None:
    told = {each.name: each for each in LayersTold().of(PROJECT)}
    assert [*told][:4] == ["A-ANNO", "a-other", "A-WRAP", "HIDE"]
    amounts = {n: (each.lines, each.texts) for n, each in told.items() if not each.drawn}
    assert amounts == {"A-ANNO": (0, 1), "a-other": (2, 1), "A-WRAP": (2, 0), "HIDE": (1, 0)}
    assert told["A-WRAP"].meant == "housewrap"
    assert told["HIDE"].meant == Role.IGNORE
    assert told["a-other"].meant == Role.LINEWORK
    guess = told["A-WRAP"].guess
    assert guess is not None
    assert (guess.row.product, guess.sureness) == ("housewrap", Sureness.LIKELY)


def test_narrower_rows_and_pieces_given_by_hand_are_counted() -> None:
    told = {each.name: each for each in LayersTold().of(PROJECT)}
    assert (told["A-WRAP"].narrower, told["A-WRAP"].by_hand) == (1, 0)  # felt by its colour
    whole = replace(PROJECT, layers=PROJECT.layers[1:])
    assert {each.name: each.by_hand for each in LayersTold().of(whole)}["A-WRAP"] == 1


def test_what_is_drawn_is_counted_again_only_where_it_is_another() -> None:
    layers = LayersTold()
    first = layers.of(PROJECT)
    kept = layers._drawn[0]  # noqa: SLF001  whether it is counted again is the point
    moved = replace(SECTION, pieces=SECTION.pieces[:-1])
    assert layers.of(replace(PROJECT, sections=(moved,))) == first[:-1]
    assert layers._drawn[0] is kept  # noqa: SLF001  as above
    fewer = replace(SECTION, strokes=SECTION.strokes[:1])
    again = {each.name: each.lines for each in layers.of(replace(PROJECT, sections=(fewer,)))}
    assert again["a-other"] == 1


def test_what_was_drawn_here_on_no_layer_is_told_by_product_after_the_layers() -> None:
    more = (Piece("drawn-2", "felt", Line(RUN)), Piece("drawn-3", "housewrap", Line(RUN)))
    section = replace(SECTION, pieces=(*SECTION.pieces, *more))
    rows = LayersTold().of(replace(PROJECT, sections=(section,)))[4:]
    assert [(row.drawn, row.meant, row.lines) for row in rows] == [
        ("felt", "felt", 2),
        ("housewrap", "housewrap", 1),
    ]
    assert [row.name for row in rows] == [section.products[row.drawn].name for row in rows]
    assert len({row.row for row in rows}) == 2


def test_an_empty_project_has_no_layers() -> None:
    assert LayersTold().of(Project("", Units.MM, ())) == ()


def test_lines_without_a_handle_and_pieces_whose_lines_were_not_kept_count_too() -> None:
    old = Piece("9", "felt", Line(RUN), ("9",), "OLD")
    nameless = (Stroke(RUN, "A"), Stroke(RUN, "A"))
    section = replace(SECTION, pieces=(old,), strokes=nameless, taken=(), texts=())
    told = {
        each.name: each.lines for each in LayersTold().of(replace(PROJECT, sections=(section,)))
    }
    assert told == {"A": 2, "OLD": 1}


def test_what_many_lines_take_long_to_tell_is_made_ready_with_the_drawing() -> None:
    assert layers_by_handle(SECTION.strokes) == {"3": "a-other", "4": "a-other"}
    told = {each.name: each.lines for each in LayersTold().of(PROJECT)}
    made = made_of(SECTION.strokes, layers_by_handle)
    assert made is made_of(SECTION.strokes, layers_by_handle)
    assert set(made) == {"3", "4"}, "what is on other layers is not added to what is kept"
    assert told["a-other"] == 2
