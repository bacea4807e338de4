"""An error is its sentence; a list of errors keeps them apart."""

import pytest

from enclosure_app.errors import EnclosureError, ListedError


def test_a_list_of_sentences_reads_as_lines_and_is_one_error() -> None:
    with pytest.raises(EnclosureError) as caught:
        raise ListedError(("The first.", "The second."))
    assert str(caught.value) == "The first.\nThe second."
    assert isinstance(caught.value, ListedError)
    assert caught.value.sentences == ("The first.", "The second.")
