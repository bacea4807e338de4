"""Where an underlay lies."""

import pytest

from enclosure_app.model.underlay import Underlay


def test_its_corners_turn_about_the_lower_left_one() -> None:
    page = Underlay(
        "page", "pdf", b"", at=(10.0, 20.0), mm_per_pixel=2.0, size=(30.0, 5.0), angle=90.0
    )
    wanted = ((10, 20), (10, 80), (0, 80), (0, 20))
    for corner, there in zip(page.outline, wanted, strict=True):
        assert corner == pytest.approx(there)
