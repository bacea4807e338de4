"""Pictures under a section as marks: at their place on the sheet, cut off at the frame."""

import pytest

from enclosure_app.drawing.marks import points_of
from enclosure_app.drawing.placement import Placement
from enclosure_app.drawing.sheet.pictures import picture_marks
from enclosure_app.drawing.theme import load_theme
from enclosure_app.model.section import Section
from enclosure_app.model.underlay import Underlay

FRAME = ((0.0, 0.0), (1000.0, 0.0), (1000.0, 1000.0), (0.0, 1000.0))
SECTION = Section("Eave", FRAME, (), {})
TENTH = Placement(10.0, (500.0, 500.0), (100.0, 80.0))


def under(**more: object) -> Underlay:
    return Underlay("scan.png", "png", b"", size=(400.0, 400.0), **more)  # type: ignore[arg-type]


def marks(*underlays: Underlay, section: Section = SECTION):  # noqa: ANN201
    return list(picture_marks(underlays, section, TENTH, load_theme()))


def test_it_stands_where_it_lies_at_the_scale_of_the_sheet() -> None:
    (mark,) = marks(under(at=(300.0, 200.0), mm_per_pixel=2.0, strength=0.5))
    assert mark.at == pytest.approx((80.0, 50.0))
    assert mark.pixel == pytest.approx(0.2)
    assert mark.share == pytest.approx(load_theme().underlay / 2)
    assert mark.within == ((50, 30), (150, 30), (150, 130), (50, 130))
    assert points_of(mark) == mark.within


def test_what_is_hidden_elsewhere_or_beside_the_frame_is_left_out() -> None:
    assert marks(under(shown=False), under(section="Rake"), under(at=(1000.0, 0.0))) == []
    assert len(marks(under(), under(section="Eave"))) == 2
    assert marks(under(), section=Section("Eave", (), (), {})) == []
