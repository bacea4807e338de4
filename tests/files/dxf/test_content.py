"""Layouts are chosen by name, and what cannot be chosen is refused."""

from collections.abc import Callable

import pytest
from ezdxf.document import Drawing

from enclosure_app.errors import EnclosureError
from enclosure_app.files.dxf.content import Content, content
from enclosure_app.files.dxf.raw import RawPath
from tests.files.dxf.drawn import opened

Reread = Callable[..., Content]


def texts(read: Content) -> list[str]:
    return [note.text for note in read.notes]


def test_a_paper_layout_is_read_by_its_name_and_said_where_it_is_not(
    drawing: Drawing, reread: Reread
) -> None:
    sheet = drawing.layouts.new("Sheet ä")
    sheet.add_line((0, 0), (7, 0))
    sheet.add_viewport((5, 5), (3, 3), (0, 0), 10)
    drawing.modelspace().add_line((0, 0), (1, 0))
    assert texts(reread(drawing)) == [
        "The paper layout “Sheet ä” was not read; it holds 1 entity."
    ]
    (line,) = reread(drawing, layout="sheet Ä").items
    assert isinstance(line, RawPath)
    assert line.points == ((0.0, 0.0), (7.0, 0.0))


def test_an_unknown_layout_is_refused_with_those_there_are(drawing: Drawing) -> None:
    with pytest.raises(EnclosureError, match="no layout “A1”: choose one of “Layout1”, “Model”"):
        content(opened(drawing), layout="A1")


@pytest.mark.parametrize("sagitta", [0.0, -1.0, float("nan"), float("inf")])
def test_the_sagitta_has_to_be_a_positive_number(sagitta: float, drawing: Drawing) -> None:
    with pytest.raises(ValueError, match="positive"):
        content(opened(drawing), sagitta=sagitta)
