"""Places on a sheet, in mm from its lower left corner, are places on the page in points."""

import pikepdf
import pytest

from enclosure_app.drawing.placement import Box
from enclosure_app.reports.pdf.ground import Ground


def test_a_sheet_hangs_from_the_upper_edge_of_its_page() -> None:
    """Qt rounds a page to whole points: what is over or lacks is at the foot."""
    pdf = pikepdf.new()
    page = pdf.add_blank_page(page_size=(842, 596))
    ground = Ground(page, 210.0)
    assert ground.point((0.0, 210.0)) == (0.0, 596.0)
    assert ground.point((25.4, 210.0 - 25.4)) == pytest.approx((72.0, 524.0))
    box = ground.box(Box(0.0, 184.6, 25.4, 210.0))
    assert box == pytest.approx((0.0, 524.0, 72.0, 596.0), abs=0.002)


def test_a_page_that_begins_elsewhere_is_followed_there() -> None:
    pdf = pikepdf.new()
    page = pdf.add_blank_page(page_size=(842, 596))
    page.mediabox = pikepdf.Array([10, 20, 852, 616])
    assert Ground(page, 210.0).point((0.0, 210.0)) == (10.0, 616.0)
