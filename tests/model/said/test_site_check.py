"""What can be seen of an item, in words of our own."""

from enclosure_app.model.said.site_check import Seen, SiteCheck


def test_an_item_that_nobody_can_see_is_neither_right_nor_wrong() -> None:
    assert {Seen.HIDDEN} & {Seen.IN_ORDER, Seen.NOT_IN_ORDER} == set()
    assert SiteCheck("a", Seen("could not be seen")).seen is Seen.HIDDEN
