"""Notes read: proposals agree with what the samples' own layer maps say, and with a real sheet."""

from collections.abc import Iterator
from dataclasses import replace
from functools import cache
from pathlib import Path

import pytest

from enclosure_app.files.maps.catalogue import load_products
from enclosure_app.files.maps.layer_map import load_layer_map
from enclosure_app.files.reading import ReadOptions, read_drawing
from enclosure_app.model.place import Area, Line
from enclosure_app.model.section import Piece, Section, Stroke, Text
from enclosure_app.planning.notes.reading import Proposal, all_notes, proposals
from enclosure_app.resources import sample

FIRST = ("balcony-ledger", "eave-overhang", "wall-base", "window")
SECOND = ("eave-flush", "parapet", "rake", "ridge", "roof-to-wall")
FRAME = ((0, 0), (2000, 0), (2000, 1000), (0, 1000))


@cache
def sections(name: str) -> tuple[Section, ...]:
    """A sample read without its frames, since its notes stand outside them."""
    maps = "layers.toml" if name in FIRST else "layers-second-office.toml"
    layer_map = load_layer_map(sample(maps))
    layer_map = replace(layer_map, rows=tuple(r for r in layer_map.rows if r.role != "frame"))
    how = ReadOptions(layer_map=layer_map, linework=True, require_marks=False)
    return read_drawing(sample(f"{name}.dxf"), how).sections


def read_notes() -> Iterator[tuple[Section, Proposal]]:
    for name in (*FIRST, *SECOND):
        for section in sections(name):
            yield from ((section, each) for each in all_notes(section, section.products))


def test_leaders_of_the_samples_touch_what_their_note_names() -> None:
    """Of the leaders whose note names a product nine in ten touch one of that family."""
    wrong, right = [], 0
    for section, each in read_notes():
        if not each.product:
            continue
        meant = section.by_name[each.pieces[0]].product if each.pieces else ""
        kind = section.products[each.product].kind
        if meant and section.products[meant].kind is kind:
            right += 1
        else:
            wrong.append((each.text, each.product, meant))
    assert right > 60
    assert right / (right + len(wrong)) >= 0.9, wrong


def test_leaders_of_the_samples_are_followed() -> None:
    """Each sample has between six and twelve notes; nearly all name a product."""
    read = [each for _, each in read_notes()]
    assert len([each for each in read if each.product]) / len(read) > 0.95


def test_a_real_sheet_with_exploded_leaders_is_read(office_drawings: Path) -> None:
    """13 details, 160 texts, no leader entity; 9 texts point at nothing (titles, remarks)."""
    path = office_drawings / "sections" / "wall_details_inches.dxf"
    drawing = read_drawing(path, ReadOptions(linework=True, require_marks=False))
    (section,) = drawing.sections
    found = all_notes(section, load_products())
    assert len({each.text for each in found}) > 60
    assert len(found) > 145
    barriers = [each for each in found if each.product == "vapour-retarder"]
    hidden = [
        each
        for each in barriers
        if any(section.strokes[i].layer == "A-DETL-HDLN" for i in each.strokes[:2])
    ]
    assert len(hidden) >= 4
    assert {each.product for each in found} >= {
        "gypsum-board", "steel-framing", "acoustic-sealant", "glass-fibre", "mineral-wool"
    }  # fmt: skip


def section(*pieces: Piece, strokes: tuple[Stroke, ...] = (), text: str = "PLYWOOD") -> Section:
    note = Text(text, (1000, 500), 20, layer="N")
    leader = Stroke(((300, 400), (900, 510), (970, 510)), "N")
    return Section(
        "one", FRAME, pieces, load_products(), strokes=(leader, *strokes), texts=(note,)
    )


SHEET = Piece("sheet", "housewrap", Line(((303, 0), (303, 1000))))
BOARD = Piece("board", "plywood", Area(((280, 0), (302, 0), (302, 1000), (280, 1000))))


def test_a_sheet_at_the_tip_comes_before_the_board_that_holds_it() -> None:
    (found,) = proposals(section(BOARD, SHEET))
    assert (found.product, found.tip, found.pieces) == ("plywood", (300, 400), ("sheet", "board"))


def test_the_stroke_at_the_tip_is_meant() -> None:
    near, far = Stroke(((304, 0), (304, 900)), "W"), Stroke(((360, 0), (360, 900)), "W")
    (found,) = proposals(section(strokes=(far, near)))
    assert found.strokes == (2,)


def test_a_note_that_points_at_nothing_is_less_sure() -> None:
    (nothing,) = proposals(section())
    (something,) = proposals(section(BOARD))
    assert nothing.confidence < something.confidence


def test_notes_without_a_product_are_not_proposed() -> None:
    assert proposals(section(BOARD, text="SEE PLAN")) == ()


def test_other_products_than_the_sections_own_can_be_proposed() -> None:
    bare = replace(section(BOARD), products={})
    assert proposals(bare) == ()
    with_catalogue = proposals(bare, load_products())
    assert [each.product for each in with_catalogue] == ["plywood"]


@pytest.mark.parametrize("name", ["eave-flush", "window"])
def test_proposals_come_the_surest_first(name: str) -> None:
    (found, *_) = [proposals(each) for each in sections(name)]
    assert [e.confidence for e in found] == sorted((e.confidence for e in found), reverse=True)
