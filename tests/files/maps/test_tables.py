"""The checks of single values, and how complaints are put together."""

import pytest

from enclosure_app.errors import ListedError
from enclosure_app.files.maps import tables as wants
from enclosure_app.files.maps.tables import Check, Complaints, meant, title
from enclosure_app.files.maps.toml_lines import KeyPath, locate


@pytest.mark.parametrize(
    ("check", "value"),
    [
        (wants.text, "a"),
        (wants.texts, ["a", "b"]),
        (wants.number, 0),
        (wants.number, 2.5),
        (wants.positive, 0.1),
        (wants.slope, 1.5),
        (wants.setting, 0),
        (wants.flag, False),
        (wants.aci, 255),
        (wants.one_of(["air", "water"]), "air"),
        (wants.some_of(["air", "water"]), []),
        (wants.some_of(["air", "water"]), ["water", "air"]),
    ],
)
def test_a_sound_value_passes(check: Check, value: object) -> None:
    assert check(value) == ""


@pytest.mark.parametrize(
    ("check", "value", "wrong"),
    [
        (wants.text, "  ", "must be a text in quotes."),
        (wants.texts, [], "must be a list of texts in quotes."),
        (wants.texts, ["a", 1], "must be a list of texts in quotes."),
        (wants.number, "5", "must be a number without quotes, not '5'."),
        (wants.number, False, "must be a number without quotes, not false."),
        (wants.number, float("inf"), "is inf; write a finite number."),
        (wants.number, -0.5, "is -0.5; it cannot be negative."),
        (wants.positive, 0, "is 0; it must be more than that."),
        (wants.positive, -1, "is -1; it cannot be negative."),
        (wants.slope, 4, "is 4; write a slope as rise over run (4:12 is 0.3333)."),
        (wants.setting, 0.5, "is 0.5; write 1 or 0."),
        (wants.flag, 1, "must be true or false, not 1."),
        (wants.aci, 256, "must be a colour index from 1 to 255, not 256."),
        (wants.aci, True, "must be a colour index from 1 to 255, not true."),
        (wants.one_of(["air", "water"]), "Air", "cannot be 'Air'; did you mean 'air'?"),
        (wants.one_of(["air", "water"]), 3, "cannot be 3; use air, water."),
        (wants.some_of(["air"]), "air", "must be a list, such as [\"air\"], not 'air'."),
        (wants.some_of(["air", "heat"]), ["air", "hot"], "cannot be 'hot'; use one of air, heat."),
        (wants.text, ["x" * 90], "must be a text in quotes."),
        (wants.flag, "x" * 90, f"must be true or false, not '{'x' * 36}...."),
    ],
)
def test_what_is_wrong_is_said_in_words(check: Check, value: object, wrong: str) -> None:
    assert check(value) == wrong


def test_a_word_that_is_like_none_of_many_gets_no_list() -> None:
    assert meant("zzz", [f"word-{n}" for n in range(31)]) == "."


@pytest.mark.parametrize(
    ("path", "written"),
    [
        ((), "the layer map"),
        (("limits",), "[limits]"),
        (("products", "felt"), "[products.felt]"),
        (("layers", 3), "[[layers]]"),
    ],
)
def test_a_table_is_named_as_a_person_writes_it(path: KeyPath, written: str) -> None:
    assert title(path) == written


def test_complaints_come_in_the_order_of_the_lines() -> None:
    complaints = Complaints("m.toml", locate("a = 1\nb = 2\n"))
    complaints.raise_if_any()
    complaints.say(("b",), "second.")
    complaints.say(("a",), "first.")
    with pytest.raises(ListedError) as caught:
        complaints.raise_if_any()
    assert caught.value.sentences == ("m.toml, line 1: first.", "m.toml, line 2: second.")
