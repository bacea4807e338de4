"""Finding the line of a key in a TOML file that a person wrote."""

import pytest

from enclosure_app.files.maps.toml_lines import KeyPath, locate

TEXT = '''# a comment with [brackets] and = signs
book = "x"

[products.a]  # [no.table]
name = """several lines
[not.a.table]
key = 1"""
controls = [
  "air",  # ] not the end
  "water"]
"we=ird".deep = 1
[[layers]]
match = "# [x]"

[[ layers ]]
match = '[[y'
[layers.inner]
q = 1
[[layers]]
row = {a = 1, b = [1, 2]}
["odd ] name"]
last = \'\'\'it''\'\'\'
end = 2
'''


@pytest.mark.parametrize(
    ("path", "line"),
    [
        (("book",), 2),
        (("products", "a"), 4),
        (("products", "a", "name"), 5),
        (("products", "a", "controls"), 8),
        (("products", "a", "we=ird", "deep"), 11),
        (("layers", 0), 12),
        (("layers", 0, "match"), 13),
        (("layers", 1), 15),
        (("layers", 1, "match"), 16),
        (("layers", 1, "inner", "q"), 18),
        (("layers", 2), 19),
        (("layers", 2, "row", "a"), 20),
        (("odd ] name",), 21),
        (("odd ] name", "last"), 22),
        (("odd ] name", "end"), 23),
    ],
)
def test_each_key_is_found_on_its_line(path: KeyPath, line: int) -> None:
    assert locate(TEXT).line_of(path) == line


def test_a_key_that_is_not_there_has_the_line_of_its_table() -> None:
    assert locate(TEXT).line_of(("layers", 1, "colour")) == 15
    assert locate(TEXT).line_of(("nowhere",)) == 1


def test_windows_line_ends_count_once() -> None:
    assert locate("a = 1\r\n\r\nb = 2\r\n").line_of(("b",)) == 3
