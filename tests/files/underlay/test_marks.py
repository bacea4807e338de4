"""Pens and layers of a PDF page."""

from typing import Any

import pytest

from enclosure_app.files.underlay.marks import Pen, hidden_layers, layer_of, pen_of
from enclosure_app.files.underlay.paths import objects
from enclosure_app.files.underlay.pdfium import opened, page_of
from tests.made_pdf import made_pdf


def handles(page: Any) -> list[Any]:  # noqa: ANN401
    return [handle for handle, _ in objects(page)]


@pytest.mark.parametrize(
    ("ink", "name"),
    [
        ("0 G", "0.35 mm"),
        ("0.5 G", "0.35 mm"),
        ("1 0 0 RG", "0.35 mm red"),
        ("0.84 0.37 0 RG", "0.35 mm orange"),
        ("0 0.45 0.7 RG", "0.35 mm blue"),
        ("1 0 0.1 RG", "0.35 mm red"),
        ("1 1 0 RG", "0.35 mm yellow"),
        ("0 0.6 0 RG", "0.35 mm green"),
        ("0 0 0.9 RG", "0.35 mm blue"),
        ("0.8 0 0.8 RG", "0.35 mm magenta"),
    ],
)
def test_a_pen_is_named_by_width_and_hue(ink: str, name: str) -> None:
    data = made_pdf(f"{ink} 1 w 0 0 m 9 9 l S")
    with opened(data, "") as document, page_of(document, 0, "") as page:
        pen = pen_of(handles(page)[0], 1.0)
    assert pen.name == name
    assert pen.seen


def test_a_fill_is_no_stroke() -> None:
    assert Pen(stroked=False, seen=True, width=1.0, hue="red").name == "filled red"


def test_layers_that_show_nothing_are_found_and_everything_is_shown_afterwards() -> None:
    content = "/OC /L0 BDC 9 9 m 99 9 l S EMC /OC /L1 BDC 9 19 m 99 19 l S EMC 0 0 m 9 9 l S"
    data = made_pdf(content, layers=("Shown", "Häuser"), hidden=("Häuser",))
    with opened(data, "") as document, page_of(document, 0, "") as page:
        before = page.render().to_numpy().copy()
        names = [layer_of(handle) for handle in handles(page)]
        hidden = hidden_layers(page, handles(page))
        after = page.render().to_numpy()
    assert names[0] == "Shown"
    assert names[2] == ""
    assert hidden == {names[1]}
    assert (before == after).all()


def test_a_page_without_layers_hides_none() -> None:
    with opened(made_pdf("0 0 m 9 9 l S"), "") as document, page_of(document, 0, "") as page:
        assert hidden_layers(page, handles(page)) == frozenset()
