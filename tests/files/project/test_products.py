"""A project keeps the products that it needs and knows the program's besides."""

import json
from dataclasses import replace
from typing import Any

from enclosure_app.files.maps.catalogue import load_products
from enclosure_app.files.project import as_json
from enclosure_app.files.project.file import project_bytes, project_of
from enclosure_app.model.drawing import Units
from enclosure_app.model.place import Line
from enclosure_app.model.project import Project
from enclosure_app.model.section import Piece, Section

WALL = Piece("2F", "housewrap", Line(((10.0, 0.0), (10.0, 2400.0))))
FRAME = ((0.0, 0.0), (500.0, 0.0), (500.0, 2500.0), (0.0, 2500.0))
PROJECT = Project("House", Units.MM, (Section("Eave", FRAME, (WALL,), load_products()),))


def test_a_product_in_use_stays_as_it_was_kept_when_the_programs_list_changes() -> None:
    table = _table()
    table["products"]["housewrap"]["sd_m"] = 0.35
    project = _read(table)
    assert project.sections[0].products["housewrap"].sd_m == 0.35
    assert project.sections[0].products["osb"] is load_products()["osb"]


def test_two_sections_may_know_one_key_for_different_products() -> None:
    other = replace(load_products()["housewrap"], name="Other", sd_m=0.1)
    second = replace(
        PROJECT.sections[0], name="Ridge", products={**load_products(), "housewrap": other}
    )
    project = replace(PROJECT, sections=(*PROJECT.sections, second))
    again = project_of(project_bytes(project, "p"), "p")
    assert [s.products["housewrap"].name for s in again.sections] == [
        "Housewrap, fastened",
        "Other",
    ]


def test_only_the_products_in_use_and_the_offices_own_stand_in_the_file() -> None:
    table = as_json.written(_rich())
    assert [*table["products"]] == ["housewrap", "ours"]
    assert table["sections"][0]["products"] == {}


def test_sections_without_products_of_their_own_share_one_list() -> None:
    project = replace(PROJECT, sections=PROJECT.sections * 2)
    first, second = project_of(project_bytes(project, "p"), "p").sections
    assert first.products is second.products


def _rich() -> Project:
    own = replace(load_products()["osb"], key="ours", name="Our board")
    section = replace(PROJECT.sections[0], products={**load_products(), "ours": own})
    return replace(PROJECT, sections=(section,))


def _table() -> dict[str, Any]:
    table: dict[str, Any] = json.loads(project_bytes(PROJECT, "p"))
    return table


def _read(table: dict[str, Any]) -> Project:
    return project_of(json.dumps(table).encode(), "p")
