"""A photograph is called by its content."""

from hashlib import sha256

from enclosure_app.model.said.photograph import Photograph, missing


def test_the_same_picture_has_the_same_key_whatever_the_file_was_called() -> None:
    one, again = Photograph(b"abc", (3, 2), "a.jpg"), Photograph(b"abc", (3, 2), "copy of a.jpg")
    assert one.key == again.key == sha256(b"abc").hexdigest()
    assert Photograph(b"abd", (3, 2)).key != one.key


def test_photographs_that_are_missing_are_told_of() -> None:
    assert str(missing(("a", "b"))).startswith("2 photographs are not in the project")
