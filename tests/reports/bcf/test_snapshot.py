"""The picture of a finding: its place in the middle, with its flag, on white paper."""

from dataclasses import replace

import pytest
from PySide6.QtGui import QColor, QImage

from enclosure_app.drawing.theme import load_theme
from enclosure_app.model.drawing import Units
from enclosure_app.model.finding import Finding
from enclosure_app.reports.bcf import snapshot
from enclosure_app.reports.bcf.snapshot import FOOT, RIM, SIDE, Pictures
from tests.drawing import eave

RESULT = eave.result()


def picture(finding: Finding, units: Units = Units.MM) -> QImage:
    image = QImage.fromData(Pictures(RESULT, units).of(finding, 1), "PNG")
    assert not image.isNull()
    return image


def colours(image: QImage, across: tuple[float, float], down: tuple[float, float]) -> set[str]:
    """Return the colours in a part of a picture, given in mm from its upper left corner."""
    dots = image.width() / (SIDE + 2 * RIM)
    xs, ys = (range(int(a * dots), int(b * dots)) for a, b in (across, down))
    return {image.pixelColor(x, y).name() for x in xs for y in ys}


def apart(one: QColor, other: QColor) -> int:
    """Return by how much two colours differ in the channel in which they differ most."""
    a, b = one.getRgb(), other.getRgb()
    return max(abs(x - y) for x, y in zip(a[:3], b[:3], strict=True))


@pytest.mark.parametrize("units", [Units.MM, Units.IN])
@pytest.mark.parametrize("finding", RESULT.findings, ids=lambda finding: finding.rule)
def test_the_place_of_a_finding_is_in_the_middle(finding: Finding, units: Units) -> None:
    image = picture(finding, units)
    middle = RIM + SIDE / 2
    assert colours(image, (middle - 12, middle + 12), (middle - 12, middle + 12)) != {"#ffffff"}


def test_its_flag_stands_in_the_corner_and_its_scale_below() -> None:
    image = picture(eave.GAP)
    flag = QColor(load_theme().flag)
    corner = map(QColor, colours(image, (RIM, RIM + 9), (RIM, RIM + 8)))
    assert min(apart(each, flag) for each in corner) <= 8  # of 255: the palette is a small one
    below = (RIM + SIDE + 1, RIM + SIDE + FOOT)
    assert colours(image, (RIM, RIM + 15), below) != {"#ffffff"}
    (paper,) = colours(image, (RIM + 60, RIM + 120), below)
    assert apart(QColor(paper), QColor("#ffffff")) <= 1


@pytest.mark.parametrize("top", [1500.0, 1900.0, 2600.0])
def test_a_fault_as_long_as_the_wall_is_shown_whole_and_as_large_as_may_be(top: float) -> None:
    middle = (-1.5, (150 + top) / 2)
    long = replace(eave.STOPS, extent=(((-1.5, 150), (-1.5, top)),), at=middle)
    made = Pictures(eave.result(findings=(long,)), Units.MM).of(long, 1)
    image, half = QImage.fromData(made, "PNG"), RIM + SIDE / 2
    for off in (-18, 18):  # mm: drawn there, so that it takes a quarter of the square at least
        assert len(colours(image, (half - 2, half + 2), (half + off - 1, half + off + 1))) > 2


def test_what_is_drawn_once_for_all_is_as_if_it_were_drawn_for_each() -> None:
    together = Pictures(RESULT, Units.MM)
    for finding in RESULT.findings:
        alone = Pictures(replace(RESULT, findings=(finding,)), Units.MM)
        one, other = (QImage.fromData(each.of(finding, 1), "PNG") for each in (together, alone))
        off = differences(one, other)  # lines are smoothed a little otherwise where they are cut
        assert sum(each > 8 for each in off) < 0.005 * len(off), finding.rule


def test_a_section_too_large_to_be_painted_once_is_painted_for_each(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    once = picture(eave.GAP)
    monkeypatch.setattr(snapshot, "_MOST_DOTS", 0)
    off = differences(once, picture(eave.GAP))
    assert sum(each > 8 for each in off) < 0.005 * len(off)


def differences(one: QImage, other: QImage) -> list[int]:
    """Return by how much every fifth dot of two pictures differs."""
    places = [(x, y) for x in range(0, one.width(), 5) for y in range(0, one.height(), 5)]
    return [apart(one.pixelColor(x, y), other.pixelColor(x, y)) for x, y in places]
