"""What rows say of each line."""

from enclosure_app.files.maps.catalogue import load_products
from enclosure_app.files.maps.line_meanings import Meanings
from enclosure_app.model.layer import LayerRow, Role
from enclosure_app.model.section import Stroke

RUN = ((0.0, 0.0), (1.0, 0.0))


def test_the_first_row_that_holds_says_what_a_line_is_and_none_leaves_it_linework() -> None:
    rows = (
        LayerRow("*", product="felt", handles=("2F",)),
        LayerRow("A", product="housewrap", color=3),
        LayerRow("a*", role=Role.NOTE, block="door*"),
        LayerRow("A", product="plywood"),
    )
    meanings = Meanings(rows, load_products())
    assert meanings.of(Stroke(RUN, "Z", "2f/1A")) == "felt"
    assert meanings.of(Stroke(RUN, "A", "1", color=3)) == "housewrap"
    assert meanings.of(Stroke(RUN, "AB", "1", block="DOOR-2")) == Role.NOTE
    assert meanings.of(Stroke(RUN, "A", "1")) == "plywood"
    assert meanings.of(Stroke(RUN, "B", "1")) == Role.LINEWORK


def test_lines_drawn_alike_mean_the_same_where_no_single_line_is_named() -> None:
    meanings = Meanings((LayerRow("A", product="felt"),), load_products())
    assert meanings.of(Stroke(RUN, "A", "1")) == meanings.of(Stroke(RUN, "A", "2")) == "felt"
