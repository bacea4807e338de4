"""Bytes between bytes: everything else stays."""

from enclosure_app.reports.dxf.edits import Edit, bare, edited


def test_edits_are_made_in_the_order_of_their_places() -> None:
    edits = [Edit(4, 6, b"XY"), Edit(0, 0, b"<"), Edit(8, 8, b">"), Edit(4, 4, b"_")]
    assert edited(b"abcdefgh", edits) == b"<abcd_XYgh>"
    assert edited(b"abc", []) == b"abc"


def test_a_value_is_replaced_without_the_blanks_around_it() -> None:
    data = b"  5\r\n  2F \r\n"
    start, end = bare(data, 5, 10)
    assert data[start:end] == b"2F"
