"""Rows that say what layers are, and how one more saying is put among them."""

from hypothesis import given
from hypothesis import strategies as st

from enclosure_app.model.layer import (
    LayerRow,
    Role,
    exactly,
    narrower_rows,
    row_of,
    rows_saying,
)

names = st.text("ABc-*?[]1", min_size=1, max_size=6)
rows_of_any = st.lists(
    st.builds(
        LayerRow,
        match=names | names.map(exactly) | st.just("*"),
        product=st.sampled_from(["felt", "plywood"]),
        color=st.sampled_from([None, None, 3]),
    ),
    max_size=6,
)


@given(names, names)
def test_an_exact_pattern_is_for_that_name_alone_in_any_case(name: str, other: str) -> None:
    row = LayerRow(exactly(name))
    assert row.named_for(name.swapcase())
    assert row.named_for(other) == (name.casefold() == other.casefold())


@given(rows_of_any, names, names)
def test_what_is_said_of_a_layer_holds_for_it_and_for_no_other(
    rows: list[LayerRow], layer: str, other: str
) -> None:
    after = rows_saying(rows, [layer], product="concrete")
    said = row_of(after, layer)
    assert said is not None
    assert said.product == "concrete"
    if other.casefold() != layer.casefold():
        before = row_of(rows, other)
        now = row_of(after, other)
        assert (before and before.product) == (now and now.product)


@given(rows_of_any, names)
def test_narrower_rows_stand_whatever_is_said(rows: list[LayerRow], layer: str) -> None:
    narrow = [row for row in rows if row.narrowed]
    for what in ({"product": "concrete"}, {"role": Role.LINEWORK}, {"role": Role.NOTE}):
        after = rows_saying(rows, [layer], **what)
        assert [row for row in after if row.narrowed] == narrow
        assert narrower_rows(after, layer) == narrower_rows(rows, layer)


@given(rows_of_any, names)
def test_linework_is_written_down_only_where_another_row_would_say_something(
    rows: list[LayerRow], layer: str
) -> None:
    after = rows_saying(rows, [layer], role=Role.LINEWORK)
    said = row_of(after, layer)
    assert said is None or said.role == Role.LINEWORK
    without = [row for row in after if row is not said]
    assert said is None or row_of(without, layer) or narrower_rows(without, layer)


def test_linework_keeps_out_narrower_rows_that_did_not_reach_the_layer_before() -> None:
    narrow = LayerRow("*", product="felt", color=3)
    rows = (LayerRow("1", product="felt"), narrow)
    after = rows_saying(rows, ["1"], role=Role.LINEWORK)
    assert after == (LayerRow("1", role=Role.LINEWORK), narrow)
    assert narrower_rows(after, "1") == ()


def test_saying_it_again_replaces_the_row_in_its_place() -> None:
    rows = (LayerRow("A", product="felt"), LayerRow("B", role=Role.NOTE))
    after = rows_saying(rows, ["a"], product="plywood")
    assert after == (LayerRow("a", product="plywood"), rows[1])


def test_notes_and_linework_are_shown() -> None:
    assert [role for role in Role if role.shown] == [Role.NOTE, Role.LINEWORK]
