"""Copies that stand where the originals do."""

from enclosure_app.files.catalogue import load_products
from enclosure_app.model.drawing import Units
from enclosure_app.model.edits import doubled
from enclosure_app.model.place import Line
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
