"""A project keeps the products that it needs and knows the program's besides."""

from dataclasses import replace

from enclosure_app.files.maps.catalogue import load_products
from enclosure_app.files.project import as_json
from enclosure_app.files.project.file import project_bytes, project_of
from tests.files.project.kept import PROJECT, read_again, table_of, with_own_product


def test_a_product_in_use_stays_as_it_was_kept_when_the_programs_list_changes() -> None:
    table = table_of()
    table["products"]["housewrap"]["sd_m"] = 0.35
    project = read_again(table)
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
    table = as_json.written(with_own_product())
    assert [*table["products"]] == ["housewrap", "ours"]
    assert table["sections"][0]["products"] == {}


def test_sections_without_products_of_their_own_share_one_list() -> None:
    project = replace(PROJECT, sections=PROJECT.sections * 2)
    first, second = project_of(project_bytes(project, "p"), "p").sections
    assert first.products is second.products
