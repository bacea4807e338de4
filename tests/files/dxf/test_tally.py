"""Counts become one sentence for each reason."""

import pytest

from enclosure_app.files.dxf.tally import Group, Tally
from enclosure_app.model.drawing import NoteLevel


def said(tally: Tally) -> list[str]:
    assert all(note.level is NoteLevel.IGNORED for note in tally.notes())
    return [note.text for note in tally.notes()]


def test_nothing_left_out_is_nothing_said() -> None:
    assert said(Tally()) == []


@pytest.mark.parametrize(
    ("kind", "count", "words"),
    [
        ("POINT", 1, "1 point"),
        ("XLINE", 2, "2 endless construction lines"),
        ("ACAD_PROXY_ENTITY", 3, "3 objects of an add-on program"),
        ("MESH", 2, "2 surface meshes"),
        ("WIPEOUT", 2, "2 masking areas"),
        ("SHAPE", 2, "2 shape symbols"),
        ("ODD", 1, "1 ODD entity"),
        ("ODD", 2, "2 ODD entities"),
    ],
)
def test_kinds_are_named_and_counted(kind: str, count: int, words: str) -> None:
    tally = Tally()
    for number in range(count):
        tally.leave_out(kind, f"A{number}")
    assert said(tally) == [f"Left out: {words} (first: A0)."]


def test_kinds_with_one_name_are_one_note() -> None:
    tally = Tally()
    tally.leave_out("3DSOLID", "A")
    tally.leave_out("BODY", "B")
    assert said(tally) == ["Left out: 2 solids (first: A)."]


def test_a_single_hidden_layer_is_spoken_of_as_one() -> None:
    tally = Tally()
    tally.hidden.update({"GRID": 12})
    assert said(tally) == [
        "Left out: 12 entities on a layer that is frozen or switched off: “GRID”. "
        "To read them as well, add --all-layers."
    ]


def test_the_first_handle_is_kept() -> None:
    group = Group()
    for handle in ("2F", "3A"):
        group.add(handle)
    assert (group.count, group.first) == (2, "2F")
