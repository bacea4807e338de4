"""Copies of pieces, in place and elsewhere."""

from dataclasses import replace

from enclosure_app.files.maps.catalogue import load_products
from enclosure_app.model.drawing import Units
from enclosure_app.model.edits import doubled, put_in
from enclosure_app.model.place import Area, Line
from enclosure_app.model.project import Project
from enclosure_app.model.section import Piece, Section


def test_copies_have_names_of_their_own_and_the_originals_stay() -> None:
    pieces = tuple(Piece(n, "felt", Line(((0.0, 0.0), (9.0, 0.0)))) for n in ("a", "b"))
    before = Project("p", Units.MM, (Section("s", (), pieces, load_products()),))
    after, names = doubled(before, 0, ("b",))
    section = after.sections[0]
    assert section.pieces[:2] == pieces
    assert [section.by_name[name].shape for name in names] == [pieces[1].shape]
    assert not set(names) & {"a", "b"}


def test_pieces_are_put_into_another_section_with_their_products() -> None:
    felt = load_products()["felt"]
    own = replace(felt, key="own-felt", name="Own felt")
    hole = ((2.0, 2.0), (4.0, 2.0), (4.0, 4.0))
    pieces = (
        Piece("a", "own-felt", Line(((0.0, 0.0), (9.0, 0.0))), ("1F",), "A-MEMB"),
        Piece("b", "felt", Area(((0.0, 0.0), (9.0, 0.0), (9.0, 9.0), (0.0, 9.0)), (hole,))),
    )
    there = Section("there", (), (), load_products())
    before = Project("p", Units.MM, (Section("here", (), pieces, {}), there))
    after = put_in(before, "there", pieces, {"own-felt": own, "felt": felt}, (10.0, -5.0))
    first, second = after.sections[1].pieces
    assert (first.name, first.handles, first.layer) == ("copy-1", (), "")
    assert first.shape == Line(((10.0, -5.0), (19.0, -5.0)))
    assert isinstance(second.shape, Area)
    assert second.shape.holes[0][0] == (12.0, -3.0)
    assert after.sections[1].products["own-felt"] is own
    assert after.sections[0] is before.sections[0]


def test_a_list_of_products_that_knows_them_all_stays_the_very_same() -> None:
    pieces = (Piece("a", "felt", Line(((0.0, 0.0), (9.0, 0.0)))),)
    before = Project("p", Units.MM, (Section("s", (), (), load_products()),))
    after = put_in(before, 0, pieces, load_products())
    assert after.sections[0].products is before.sections[0].products
