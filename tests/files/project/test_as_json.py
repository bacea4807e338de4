"""Every field of a project stands in its file, and what is wrong there is said with its place."""

from collections.abc import Callable
from dataclasses import fields
from typing import Any

import pytest

from enclosure_app.errors import ListedError
from enclosure_app.files.maps.catalogue import load_products
from enclosure_app.files.project import as_json
from enclosure_app.model.project import Project
from enclosure_app.model.section import Piece, Section
from tests.files.project.kept import read_again, table_of, with_own_product

OFFICE = {
    "name": "Office sheet",
    "controls": ["air", "water"],
    "bond": "adhered",
    "kind": "sheet",
}


def test_every_field_of_the_model_stands_in_the_file() -> None:
    """Whoever adds a field to one of these is told here that it would be lost in the file."""
    table = as_json.written(with_own_product())
    section = table["sections"][0]
    parts = {
        Project: {*table} - {"about", "products"},
        Section: {*section},
        Piece: {*section["pieces"][0]},
    }
    for kind, held in parts.items():
        assert held == {each.name for each in fields(kind) if each.init}
    product = next(iter(table["products"].values()))
    assert {*product, "key"} == {each.name for each in fields(load_products()["osb"])}


def _set(*steps: str | int, to: object) -> Callable[[dict[str, Any]], None]:
    def change(table: dict[Any, Any]) -> None:
        for step in steps[:-1]:
            table = table[step]
        table[steps[-1]] = to

    return change


EAVE = ("sections", 0)


@pytest.mark.parametrize(
    ("change", "sentence"),
    [
        (_set("title", to=5), "title must be a text in quotes, not 5."),
        (_set("units", to="yard"), "units cannot be 'yard'; use one of mm, cm, m, in, ft."),
        (_set("colour", to=1), "colour is not known here; use one of id, title, units, source"),
        (_set("titel", to="x"), "titel is not known here; did you mean 'title'?"),
        (_set(*EAVE, "name", to=None), "sections[0].name must be a text in quotes, not null."),
        (_set(*EAVE, "frame", to=[[0, 0], [1, 1]]), "sections[0].frame must hold 3 points or"),
        (_set(*EAVE, "frame", 2, to=[0]), "sections[0].frame[2] must be a point [x, y], not a"),
        (
            _set(*EAVE, "frame", 2, 1, to=float("nan")),
            "sections[0].frame[2][1] is nan: write a finite number.",
        ),
        (
            _set(*EAVE, "inside", to=[[10**400, 0]]),
            "sections[0].inside[0][0] is too large: write a finite number.",
        ),
        (_set(*EAVE, "inside", to=[[True, 0]]), "sections[0].inside[0][0] must be a number, not"),
        (_set(*EAVE, "inside", to=[["1", 0]]), "sections[0].inside[0][0] must be a number, not"),
        (_set(*EAVE, "inside", to="5,5"), "sections[0].inside must be a list of points"),
        (_set(*EAVE, "gravity", to=[0, -2]), "sections[0].gravity must be one long, such as"),
        (_set(*EAVE, "sealed", to=[["a"]]), "sections[0].sealed[0] must name two pieces."),
        (_set(*EAVE, "sealed", to=[["a", 1]]), "sections[0].sealed[0][1] must be a text in"),
        (
            _set(*EAVE, "pieces", 0, "product", to="housewarp"),
            'sections[0].pieces[0].product is "housewarp", which is no product of this file or '
            "the program; did you mean 'housewrap'?",
        ),
        (
            _set(*EAVE, "pieces", 0, "shape", to={"line": [[0, 0]]}),
            "sections[0].pieces[0].shape.line must hold 2 points or more, not 1.",
        ),
        (
            _set(*EAVE, "pieces", 0, "shape", to={}),
            "sections[0].pieces[0].shape lacks 'line': add it.",
        ),
        (
            _set(*EAVE, "pieces", 0, to=[]),
            "sections[0].pieces[0] must be an object {...}, not a list of 0.",
        ),
        (_set(*EAVE, "pieces", to={}), "sections[0].pieces must be a list, not an object."),
        (_set(*EAVE, to={"name": "x"}), "sections[0] lacks 'frame' and 'pieces' and 'products'"),
        (_set("products", "x", to={**OFFICE, "bond": "glued"}), "products.x.bond cannot be"),
        (_set("products", "x", to={**OFFICE, "sd_m": "1"}), "products.x.sd_m must be a number"),
        (_set("products", "x", to={**OFFICE, "key": "y"}), "products.x.key is not known here"),
        (
            _set("products", "x", to={**OFFICE, "confirmed": 1}),
            "products.x.confirmed must be true or false, not 1.",
        ),
        (_set("severities", to={"gap": "loud"}), "severities.gap cannot be 'loud'; use one of"),
        (
            _set("figures", to={"side-lap": 5}),
            "figures.side-lap is no figure of the rule books",
        ),
        (_set("book", to="irc-2012"), "book names a rule book that is not there. There is no"),
        (
            _set("underlays", to=[{"name": "a", "kind": "png", "data": "@@"}]),
            "underlays[0].data is not sound base64: the picture is damaged;",
        ),
        (
            _set("underlays", to=[{"name": "a", "kind": "png", "data": "", "page": 1.5}]),
            "underlays[0].page must be a whole number, not 1.5.",
        ),
    ],
)
def test_what_is_wrong_is_said_with_its_place(
    change: Callable[[dict[str, Any]], None], sentence: str
) -> None:
    table = table_of()
    change(table)
    with pytest.raises(ListedError) as caught:
        read_again(table)
    assert len(caught.value.sentences) == 1
    assert caught.value.sentences[0].startswith(f"p: {sentence}")


def test_every_mistake_is_told_at_once() -> None:
    table = table_of()
    table["units"] = "yard"
    table["products"]["housewrap"]["bond"] = 5
    table["sections"][0]["frame"][1] = "here"
    table["sections"][0]["pieces"] += [{"name": 5}, {"product": "osb", "shape": {"arc": 1}}]
    with pytest.raises(ListedError) as caught:
        read_again(table)
    places = [sentence.split()[1] for sentence in caught.value.sentences]
    assert places == [
        "products.housewrap.bond",
        "units",
        "sections[0].frame[1]",
        "sections[0].pieces[1]",
        "sections[0].pieces[2]",
    ]


def test_of_very_many_mistakes_only_the_first_are_told() -> None:
    table = table_of()
    table["sections"][0]["inside"] = [[None, 0]] * 500
    with pytest.raises(ListedError) as caught:
        read_again(table)
    assert len(caught.value.sentences) == 21
    assert caught.value.sentences[-1] == "p: 480 more places are wrong; mend these first."


def test_two_pieces_of_one_name_are_refused() -> None:
    table = table_of()
    table["sections"][0]["pieces"] *= 2
    with pytest.raises(ListedError, match=r'pieces\[1\]\.name is "2F", as that of a piece before'):
        read_again(table)
