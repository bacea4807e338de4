"""The page about the program says what it does, and what it does not."""

import pytest

from enclosure_app import __version__
from enclosure_app.window.menus.about_page import about_html


@pytest.mark.usefixtures("qapp")
def test_the_page_says_which_version_it_is_and_where_its_limits_are() -> None:
    page = about_html()
    assert __version__ in page
    for words in ("whether rain finds a way in", "local codes", "protection against falls"):
        assert words.casefold() in page.casefold()
