"""A form reads what it writes, and names every place of a value that is wrong."""

from dataclasses import dataclass
from enum import StrEnum

import pytest

from enclosure_app.files.project import forms as form
from enclosure_app.files.project.forms import Form, Mistakes


class Colour(StrEnum):
    GREEN = "green"
    RED = "red"


@dataclass(frozen=True)
class Post:
    at: tuple[float, float]
    colour: Colour = Colour.RED
    names: tuple[str, ...] = ()


POST = form.record(Post, at=form.point, colour=form.word(Colour), names=form.several(form.text))


@pytest.mark.parametrize(
    ("how", "value", "written"),
    [
        (form.text, "a", "a"),
        (form.flag, True, True),
        (form.whole, 3, 3),
        (form.number, 3, 3.0),
        (form.base64, b"\x00\xff", "AP8="),
        (form.points, ((1, 2.5),), [[1.0, 2.5]]),
        (form.maybe(form.number), None, None),
        (form.word(Colour), Colour.GREEN, "green"),
        (form.any_order(form.text), frozenset({"b", "a"}), ["a", "b"]),
        (form.by_name(form.whole), {"a": 1}, {"a": 1}),
        (POST, Post((1.0, 2.0), Colour.GREEN, ("x",)), None),
    ],
)
def test_what_is_written_is_read_again(how: Form[object], value: object, written: object) -> None:
    text = how.write(value)
    if value is not None and written is not None:
        assert text == written
    assert how.read(text) == value


def test_a_field_with_a_usual_value_may_be_left_out() -> None:
    assert POST.read({"at": [1, 2]}) == Post((1.0, 2.0))


@pytest.mark.parametrize(
    ("how", "value", "found"),
    [
        (form.whole, 1.0, [((), "must be a whole number, not 1.0.")]),
        (form.whole, True, [((), "must be a whole number, not true.")]),
        (form.number, "x" * 60, [((), f"must be a number, not '{'x' * 36}....")]),
        (form.points, [[1, 2, 3]], [((0,), "must be a point [x, y], not a list of 3.")]),
        (
            form.points,
            [[1, 2], [1, "2"], None],
            [
                ((1, 1), "must be a number, not '2'."),
                ((2,), "must be a point [x, y], not null."),
            ],
        ),
        (form.points, ["12"], [((0,), "must be a point [x, y], not '12'.")]),
        (form.points, {}, [((), "must be a list of points [[x, y], ...], not an object.")]),
        (form.counted(form.points, 2, 2), [[0, 0]] * 3, [((), "must hold 2 points, not 3.")]),
        (form.word(Colour), "gren", [((), "cannot be 'gren'; did you mean 'green'?")]),
        (form.word(Colour), 5, [((), "cannot be 5; use green, red.")]),
        (
            form.several(POST),
            [{"at": [1, 2]}, {"at": [1, None], "names": [1]}, {}],
            [
                ((1, "at", 1), "must be a number, not null."),
                ((1, "names", 0), "must be a text in quotes, not 1."),
                ((2,), "lacks 'at': add it."),
            ],
        ),
        (
            POST,
            {"at": [1, 2], "color": "red"},
            [(("color",), "is not known here; did you mean 'colour'?")],
        ),
    ],
)
def test_every_place_that_is_wrong_is_named(
    how: Form[object], value: object, found: list[object]
) -> None:
    with pytest.raises(Mistakes) as caught:
        how.read(value)
    assert list(caught.value.found) == found


def test_a_brief_record_leaves_out_what_is_as_usual_and_reads_the_same() -> None:
    brief = form.brief(
        Post, at=form.point, colour=form.word(Colour), names=form.several(form.text)
    )
    for post, keys in (
        (Post((0.0, 0.0)), {"at"}),
        (Post((1.0, 2.0), Colour.GREEN), {"at", "colour"}),
        (Post((1.0, 2.0), names=("a",)), {"at", "names"}),
    ):
        written = brief.write(post)
        assert set(written) == keys
        assert brief.read(written) == post
