"""JSON is laid out for people: one thing on one line."""

import json

import pytest
from hypothesis import given
from hypothesis import strategies as st

from enclosure_app.files.project.json_text import laid_out

values = st.recursive(
    st.none() | st.booleans() | st.integers() | st.floats(-1e9, 1e9) | st.text(),
    lambda inner: st.lists(inner) | st.dictionaries(st.text(), inner),
)


@given(values)
def test_what_is_laid_out_is_the_same_json(value: object) -> None:
    assert json.loads(laid_out(value)) == value


def test_things_stand_on_a_line_each_and_their_fields_beside_each_other() -> None:
    value = {"title": "Дом", "pieces": [{"name": "a", "at": [1, 2]}, {"name": "b"}], "none": []}
    assert laid_out(value) == (
        '{\n "title": "Дом",\n "pieces": [\n  {"name": "a", "at": [1, 2]},\n  {"name": "b"}\n ],\n'
        ' "none": []\n}\n'
    )


@pytest.mark.parametrize("value", [float("nan"), float("inf"), -float("inf")])
def test_a_number_that_is_not_finite_is_refused(value: float) -> None:
    with pytest.raises(ValueError, match="not JSON compliant"):
        laid_out({"pieces": [{"at": [value, 0.0]}]})
