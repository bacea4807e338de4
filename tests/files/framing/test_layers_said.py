"""What the layers of an open project are is said anew: the same as reading the drawing so."""

from dataclasses import replace
from itertools import product as every
from pathlib import Path
from typing import Any

import pytest
from hypothesis import given as given_any
from hypothesis import settings
from hypothesis import strategies as st

from enclosure_app.files.framing.drawn_lines import drawn_of
from enclosure_app.files.framing.layers_said import guessed_rows, layers_of, said, with_products
from enclosure_app.files.maps.catalogue import load_products
from enclosure_app.files.maps.layer_map import load_layer_map
from enclosure_app.files.reading import ReadOptions, read_drawing
from enclosure_app.model.drawing import Units
from enclosure_app.model.edits import move_point, set_product
from enclosure_app.model.layer import LayerRow, Role, rows_saying
from enclosure_app.model.place import Area, Line
from enclosure_app.model.product import Bond, Kind, Product
from enclosure_app.model.project import Project, project_from
from enclosure_app.model.section import Piece, Section, Stroke
from enclosure_app.resources import sample

FIRST, SECOND = "layers.toml", "layers-second-office.toml"
SAMPLES = (
    "parapet",
    "pipe-through-wall",
    "window",
    "four-sections",
    "eave-flush",
    "rake",
    "wall-base",
)


def read(file: str, office: str | None = None) -> Project:
    layer_map = load_layer_map(sample(office)) if office else None
    options = ReadOptions(layer_map=layer_map, linework=True, require_marks=False)
    project = project_from(read_drawing(sample(file), options))
    rows = layer_map.rows if layer_map else guessed_rows(project)
    return replace(project, layers=rows)


def content(project: Project) -> dict[str, Any]:
    """Return what a project holds, whatever the order."""
    return {
        section.name: (
            section.frame,
            section.frame_drawn,
            {(p.name, p.product, p.shape, p.handles, p.layer) for p in section.pieces},
            set(section.strokes),
            set(section.taken),
            set(section.breaks),
            (section.inside, section.outside),
        )
        for section in project.sections
    }


def mapped_as(file: str) -> str:
    """Return which office's map knows the layers of a sample: the one that finds a frame."""
    for office in (FIRST, SECOND):
        if any(section.frame_drawn for section in read(file, office).sections):
            return office
    raise AssertionError(file)


@pytest.mark.parametrize("file", SAMPLES)
def test_a_map_over_an_open_drawing_gives_what_reading_the_drawing_with_it_gives(
    file: str,
) -> None:
    name = f"{file}.dxf"
    office = mapped_as(name)
    layer_map = load_layer_map(sample(office))
    read_so = read(name, office)
    assert any(section.pieces for section in read_so.sections)
    opened = said(read(name), layer_map.rows, layer_map.products)
    assert content(opened.project) == content(read_so)
    assert opened.project.layers == layer_map.rows


def test_layers_that_mean_the_same_leave_the_sections_the_very_same_objects() -> None:
    project = read("parapet.dxf")
    rows = (*project.layers, LayerRow("no such layer", role=Role.IGNORE))
    assert said(project, rows).project.sections[0] is project.sections[0]


FRAME = ((0.0, 0.0), (1000.0, 0.0), (1000.0, 1000.0), (0.0, 1000.0))
RING = ((100.0, 100.0), (300.0, 100.0), (300.0, 150.0), (100.0, 150.0), (100.0, 100.0))


def project(
    *strokes: Stroke, pieces: tuple[Piece, ...] = (), rows: tuple[LayerRow, ...] = ()
) -> Project:
    section = Section("s", FRAME, pieces, load_products(), strokes=strokes, frame_drawn=True)
    return Project("", Units.MM, (section,), layers=rows)


def saying(given: Project, layer: str, **what: str) -> Project:
    return said(given, rows_saying(given.layers, [layer], **what)).project


def pieces(given: Project) -> dict[str, Piece]:
    return dict(given.sections[0].by_name)


def test_linework_becomes_one_piece_of_each_run_and_linework_again() -> None:
    strokes = (
        Stroke(((100, 100), (200, 100)), "A", "1"),
        Stroke(((200, 100), (200, 300)), "A", "2"),
        Stroke(((500, 500), (600, 500)), "A", "3"),
        Stroke(((500, 600), (600, 600)), "B", "4"),
    )
    given = project(*strokes)
    sheets = saying(given, "A", product="housewrap")
    assert pieces(sheets)["1"].shape == Line(((100, 100), (200, 100), (200, 300)))
    assert set(pieces(sheets)) == {"1", "3"}
    assert sheets.sections[0].strokes == (strokes[3],)
    assert set(drawn_of(sheets.sections[0])) == set(strokes)
    back = saying(sheets, "A", role=Role.LINEWORK)
    assert pieces(back) == {}
    assert set(back.sections[0].strokes) == set(strokes)
    assert back.layers == ()


def test_a_piece_that_was_given_another_product_by_hand_stays() -> None:
    given = project(
        Stroke(((100, 100), (200, 100)), "A", "1"), Stroke(((100, 300), (200, 300)), "A", "2")
    )
    sheets = saying(given, "A", product="housewrap")
    by_hand = set_product(sheets, 0, ["1"], "felt")
    for what in ({"product": "building-paper"}, {"role": Role.LINEWORK}, {"role": Role.IGNORE}):
        rows = rows_saying(by_hand.layers, ["A"], **what)
        after = said(by_hand, rows)
        assert pieces(after.project)["1"].product == "felt"
        assert after.by_hand == 1
        assert all(stroke.handle != "1" for stroke in after.project.sections[0].strokes)


def test_a_piece_that_was_moved_keeps_its_place_when_its_layer_is_of_another_product() -> None:
    given = saying(project(Stroke(((100, 100), (200, 100)), "A", "1")), "A", product="housewrap")
    moved = move_point(given, 0, "1", 1, (250.0, 120.0))
    after = saying(moved, "A", product="felt")
    assert pieces(after)["1"].shape == Line(((100, 100), (250, 120)))
    assert pieces(after)["1"].product == "felt"


def test_an_outline_is_a_board_of_one_product_and_a_closed_sheet_of_another() -> None:
    given = project(Stroke(RING, "A", "1"))
    board = saying(given, "A", product="plywood")
    assert isinstance(pieces(board)["1"].shape, Area)
    sheet = saying(board, "A", product="housewrap")
    assert pieces(sheet)["1"].shape == Line(
        ((100, 100), (300, 100), (300, 150), (100, 150)), closed=True
    )


def test_a_patch_with_a_hole_becomes_one_area_and_is_two_rings_of_linework_again() -> None:
    hole = ((150.0, 110.0), (200.0, 110.0), (200.0, 140.0), (150.0, 140.0), (150.0, 110.0))
    patch = tuple(Stroke(ring, "A", "1", filled=True) for ring in (RING, hole))
    after = saying(project(*patch), "A", product="concrete")
    shape = pieces(after)["1"].shape
    assert isinstance(shape, Area)
    assert len(shape.holes) == 1
    back = saying(after, "A", role=Role.LINEWORK)
    assert set(back.sections[0].strokes) == set(patch)


def test_what_is_ignored_is_not_shown_and_not_lost() -> None:
    stroke = Stroke(((100, 100), (200, 100)), "A", "1")
    hidden = saying(project(stroke), "A", role=Role.IGNORE)
    assert hidden.sections[0].strokes == ()
    assert layers_of(hidden) == ("A",)
    assert saying(hidden, "A", role=Role.NOTE).sections[0].strokes == (stroke,)


def test_a_row_may_be_for_lines_of_one_colour_or_linetype_only() -> None:
    given = project(
        Stroke(((100, 100), (200, 100)), "A", "1", color=3),
        Stroke(((100, 200), (200, 200)), "A", "2", linetype="DASHED"),
        Stroke(((100, 300), (200, 300)), "A", "3"),
    )
    rows = (
        LayerRow("A", product="felt", color=3),
        LayerRow("*", product="housewrap", linetype="dash*"),
        LayerRow("A", product="building-paper"),
    )
    after = said(given, rows).project
    products = {name: piece.product for name, piece in pieces(after).items()}
    assert products == {"1": "felt", "2": "housewrap", "3": "building-paper"}


def test_what_the_frame_cuts_becomes_a_piece_up_to_the_frame_and_is_whole_again() -> None:
    across = Stroke(((-500, 500), (500, 500)), "A", "1")
    inner = Stroke(((0, 500), (500, 500)), "A", "1")
    given = project(inner)
    section = replace(given.sections[0], taken=(across,))
    given = replace(given, sections=(section,))
    sheet = saying(given, "A", product="housewrap")
    assert pieces(sheet)["1"].shape == Line(((0, 500), (500, 500)))
    back = saying(sheet, "A", role=Role.LINEWORK).sections[0]
    assert (back.strokes, back.taken) == ((inner,), (across,))


def test_pieces_of_an_older_project_whose_lines_were_not_kept_change_too() -> None:
    old = (Piece("1", "housewrap", Line(((100, 100), (200, 100)), width=2.0), ("1",), "A"),)
    given = project(pieces=old, rows=(LayerRow("A", product="housewrap"),))
    assert pieces(saying(given, "A", product="felt"))["1"].product == "felt"
    after = saying(given, "A", role=Role.LINEWORK).sections[0]
    assert after.pieces == ()
    assert [s.points for s in after.strokes] == [((100, 100), (200, 100))]


def test_what_was_drawn_by_hand_is_of_no_layer_and_stays() -> None:
    own = (Piece("drawn-1", "felt", Line(((100, 100), (200, 100)))),)
    given = project(Stroke(((100, 300), (200, 300)), "A", "1"), pieces=own)
    after = saying(saying(given, "A", product="housewrap"), "A", role=Role.IGNORE)
    assert pieces(after) == {"drawn-1": own[0]}


def test_an_offices_own_product_comes_with_its_rows() -> None:
    own = Product("own", "Own", frozenset(), Bond.LOOSE, Kind.SHEET)
    given = project(Stroke(((100, 300), (200, 300)), "A", "1"))
    after = said(given, (LayerRow("A", product="own"),), {"own": own})
    assert (after.made, pieces(after.project)["1"].product) == (1, "own")
    assert after.project.sections[0].products["own"] is own


def test_sections_that_shared_one_list_of_products_go_on_sharing_it() -> None:
    given = project()
    two = replace(given, sections=(given.sections[0], replace(given.sections[0], name="t")))
    own = Product("own", "Own", frozenset(), Bond.LOOSE, Kind.SHEET)
    first, second = with_products(two, {"own": own}).sections
    assert first.products is second.products


@pytest.mark.parametrize(("first", "then"), [*every(("housewrap", "plywood", "frame"), repeat=2)])
def test_names_stay_unique_whatever_is_said_in_turn(first: str, then: str) -> None:
    strokes = tuple(
        Stroke(tuple((x + 300.0 * n, y) for x, y in RING), layer, f"{layer}{n}")
        for layer in ("A", "B")
        for n in range(2)
    )
    given = project(*strokes)
    for layer, what in (("A", first), ("B", then), ("A", then), ("B", first)):
        kind = "role" if what == "frame" else "product"
        given = saying(given, layer, **{kind: what})
        names = [piece.name for section in given.sections for piece in section.pieces]
        titles = [section.name for section in given.sections]
        assert len(set(names)) == len(names)
        assert len(set(titles)) == len(titles)


def test_a_drawing_of_an_office_reads_the_same_by_guess_after_a_map_was_tried(
    tmp_path: Path,
) -> None:
    opened = read("parapet.dxf")
    tried = said(opened, rows_saying(opened.layers, layers_of(opened), role=Role.LINEWORK)).project
    assert all(section.pieces == () for section in tried.sections)
    assert content(said(tried, opened.layers).project) == content(opened)


def test_notes_tell_what_the_layers_are_taken_for_now() -> None:
    opened = read("parapet.dxf")
    told = {note.text for note in opened.notes}
    assert "Taken for Plywood: layer “Plywood”." in told
    after = saying(saying(opened, "Plywood", product="osb"), "Vented space", role=Role.LINEWORK)
    now = {note.text for note in after.notes}
    assert "Taken for Plywood: layer “Plywood”." not in now
    assert "Taken for Gypsum board: layer “Plasterboard”." in now
    (plain,) = (text for text in now if text.startswith("Nothing is said of"))
    assert "“Vented space”" in plain
    others = {note.text for note in opened.notes if not note.about}
    assert others == {note.text for note in after.notes if not note.about}


spots = st.sampled_from([(100.0, 100.0), (400.0, 100.0), (400.0, 300.0), (100.0, 300.0)])
boxes = st.sampled_from([100.0, 500.0]).map(
    lambda x: ((x, 100.0), (x + 200, 100.0), (x + 200, 250.0), (x, 250.0), (x, 100.0))
)
drawings = st.lists(
    st.one_of(
        st.builds(
            lambda a, b, layer: (Stroke((a, b), layer),), spots, spots, st.sampled_from("ABC")
        ).filter(lambda one: one[0].points[0] != one[0].points[1]),
        st.builds(
            lambda ring, layer, filled: (Stroke(ring, layer, filled=filled),),
            boxes,
            st.sampled_from("ABC"),
            st.booleans(),
        ),
    ),
    min_size=1,
    max_size=6,
).map(lambda many: tuple(replace(one, handle=f"{n + 1}") for n, (one,) in enumerate(many)))
MEANINGS = ("housewrap", "felt", "plywood", "osb", Role.LINEWORK, Role.IGNORE)
sayings = st.lists(st.tuples(st.sampled_from("ABC"), st.sampled_from(MEANINGS)), max_size=4)


def told(given: Project, layer: str, meant: str) -> Project:
    return saying(given, layer, **{"role" if meant in [*Role] else "product": meant})


@settings(deadline=None, max_examples=60)
@given_any(drawings, sayings)
def test_only_what_is_said_last_counts_and_no_line_is_lost(
    strokes: tuple[Stroke, ...], said_in_turn: list[tuple[str, str]]
) -> None:
    given = project(*strokes)
    there = given
    for layer, meant in said_in_turn:
        there = told(there, layer, meant)
        section = there.sections[0]
        assert set(drawn_of(section)) == set(strokes)
        assert len({piece.name for piece in section.pieces}) == len(section.pieces)
    last = dict(said_in_turn)
    for stroke in strokes:
        meant = last.get(stroke.layer, Role.LINEWORK)
        shown = stroke in there.sections[0].strokes
        assert shown == (meant == Role.LINEWORK)
        made = [p for p in there.sections[0].pieces if stroke.handle in p.handles]
        assert {piece.product for piece in made} <= {meant}
        outline = stroke.points[0] == stroke.points[-1]
        assert not outline or bool(made) == (meant not in [*Role])
    at_once = given
    for layer, meant in last.items():
        at_once = told(at_once, layer, meant)
    areas = [
        {(p.product, p.shape) for p in each.sections[0].pieces if isinstance(p.shape, Area)}
        for each in (there, at_once)
    ]
    assert areas[0] == areas[1]
