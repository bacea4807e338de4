"""From a file to a project, and the figures that a project is judged by."""

from dataclasses import replace
from types import MappingProxyType

import pytest

from enclosure_app.errors import EnclosureError
from enclosure_app.files.maps.layer_map import load_layer_map
from enclosure_app.files.maps.rule_book import load_limits
from enclosure_app.files.projects import Wish, limits_of, new_project, read_project
from enclosure_app.model.drawing import Units
from enclosure_app.model.finding import Severity
from enclosure_app.resources import sample
from enclosure_app.rules import RULES


def test_a_drawing_without_a_map_comes_with_what_its_layers_are_guessed_to_be() -> None:
    project = read_project(sample("wall-base.dxf"))
    assert project.title
    assert project.units is Units.IN
    assert [section.name for section in project.sections] == ["WALL BASE AT RAFT EDGE"]
    assert project.sections[0].strokes
    assert project.layers


def test_a_map_brings_its_rows_its_book_and_its_figures() -> None:
    layers = load_layer_map(sample("layers.toml"), [rule.name for rule in RULES])
    mapped = replace(layers, book="nbc-2020", limits={"upturn": 120.0})
    project = read_project(sample("wall-base.dxf"), Wish(layer_map=mapped))
    assert project.layers == mapped.rows
    assert project.book == "nbc-2020"
    assert project.figures == {"upturn": 120.0}


def test_units_that_were_said_go_before_those_of_the_file() -> None:
    feet = read_project(sample("wall-base.dxf"), Wish(units=Units.FT))
    inches = read_project(sample("wall-base.dxf"))
    assert feet.units is Units.FT
    x = max(x for x, _ in inches.sections[0].frame)
    assert max(x for x, _ in feet.sections[0].frame) == pytest.approx(12 * x)


@pytest.mark.parametrize(("units", "side"), [(Units.MM, 2000.0), (Units.IN, 8 * 304.8)])
def test_an_empty_sheet_is_as_large_as_a_detail_of_a_wall(units: Units, side: float) -> None:
    project = new_project(units, "New section")
    (section,) = project.sections
    assert section.name == project.title == "New section"
    assert max(x for x, _ in section.frame) == side
    assert section.frame_drawn
    assert section.products


def test_the_projects_own_figures_and_levels_go_before_the_books() -> None:
    book = limits_of(new_project(Units.MM, "New section"))
    assert book.figure("upturn") == load_limits().figure("upturn")
    project = replace(
        new_project(Units.MM, "New section"),
        figures=MappingProxyType({"upturn": 250.0}),
        severities=MappingProxyType({"gap": Severity.REMARK}),
    )
    own = limits_of(project)
    assert own.figure("upturn").value == 250.0
    assert own.figure("upturn").basis == "this project's own figure"
    assert own.severities["gap"] is Severity.REMARK


def test_a_book_that_is_not_there_is_refused() -> None:
    with pytest.raises(EnclosureError, match="There is no rule book"):
        limits_of(replace(new_project(Units.MM, "New section"), book="nbc-1066"))
