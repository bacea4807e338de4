"""Title block, heading, caution, scale bar."""

import pytest

from enclosure_app.drawing.marks import Fill, Label, Mark, Stroke, points_of
from enclosure_app.drawing.placement import Box
from enclosure_app.drawing.scales import IMPERIAL, METRIC, Scale
from enclosure_app.drawing.sheet.job import SheetJob
from enclosure_app.drawing.sheet.title_block import (
    Titles,
    caution_height,
    caution_marks,
    heading_marks,
    scale_bar,
    tally,
    title_height,
    title_marks,
)
from enclosure_app.drawing.theme import load_theme
from enclosure_app.drawing.typeface import text_width
from enclosure_app.model.drawing import Units
from enclosure_app.model.said.decision import Decision, State
from tests.drawing import eave

THEME = load_theme()
COLUMN = Box(300, 10, 400, 280)


def words(marks: list[Mark]) -> list[str]:
    return [m.text for m in marks if isinstance(m, Label)]


def test_a_field_that_is_not_known_is_a_dash() -> None:
    titles = Titles(SheetJob(), "a.dxf", "Eave", "1:10", "mm", (), 1, 2)
    found = words(list(title_marks(COLUMN, titles, THEME)))
    assert found.count("–") == 4  # project, revision, who, date
    assert found[found.index("Scale") + 1] == "1:10"
    assert found[found.index("Sheet") + 1] == "1 of 2"


@pytest.mark.parametrize("count", [0, 1, 4, 12, 40])
def test_the_title_block_stands_at_the_foot_of_its_column(count: int) -> None:
    signed = tuple(f"Ida Østby the {k}th, 2026-03-02" for k in range(count))
    titles = Titles(SheetJob(project="x" * 300), "a.dxf", "Eave", "1:10", "mm", signed)
    high = title_height(titles, COLUMN.width, THEME)
    foot = Box(COLUMN.left, COLUMN.bottom, COLUMN.right, COLUMN.bottom + high)
    for mark in title_marks(COLUMN, titles, THEME):
        assert all(foot.holds(p) for p in points_of(mark))
        if isinstance(mark, Label):
            right = mark.at[0] + text_width(mark.text, mark.size, bold=mark.bold)
            assert right <= COLUMN.right


def test_everybody_who_signed_the_section_stands_in_its_title_block() -> None:
    signed = tuple(f"Ida the {k}th, 2026-03-02" for k in range(12))
    for names in (signed[:1], signed[:4], signed):
        titles = Titles(SheetJob(), "a.dxf", "Eave", "1:10", "mm", names)
        found = words(list(title_marks(COLUMN, titles, THEME)))
        assert "; ".join(names) in " ".join(found)
    many = Titles(SheetJob(), "a.dxf", "Eave", "1:10", "mm", signed * 6)
    assert any(text.endswith("…") for text in words(list(title_marks(COLUMN, many, THEME))))
    none = words(
        list(title_marks(COLUMN, Titles(SheetJob(), "a.dxf", "Eave", "1:10", "mm"), THEME))
    )
    assert none[none.index("Signed off") + 1] == "not signed"


def test_the_caution_takes_the_height_it_says() -> None:
    height = caution_height(90.0, THEME)
    box = Box(0, 0, 90, height)
    labels = [m for m in caution_marks(box, THEME) if isinstance(m, Label)]
    assert labels[0].at[1] < height
    assert labels[-1].at[1] > 0
    text = " ".join(m.text for m in labels)
    assert "licensed professionals" in text
    assert "fall protection" in text


def test_the_heading_tells_how_much_was_found() -> None:
    assert words(list(heading_marks(eave.result(), Box(0, 0, 200, 9), THEME))) == [
        "Boathouse, north wall at the slip", "4 faults, 1 doubt, 1 remark",
    ]  # fmt: skip
    assert tally(eave.result(findings=())) == "nothing found"


def test_a_layer_that_could_not_be_judged_is_never_told_as_clean() -> None:
    assert tally(eave.unsure()) == "air could not be judged"
    assert tally(eave.unsure(eave.SHORT)) == "1 fault, air could not be judged"


@pytest.mark.parametrize("units", [Units.MM, Units.M, Units.IN])
@pytest.mark.parametrize("scale", [*METRIC, *IMPERIAL[:-1]])
def test_a_scale_bar_is_handy_at_every_scale(scale: Scale, units: Units) -> None:
    bar = [m for m in scale_bar(0.0, 0.0, scale, units, THEME) if isinstance(m, Fill)]
    assert len(bar) == 4
    xs = [x for m in bar for x, _ in m.rings[0]]
    assert 30 <= max(xs) - min(xs) <= 105


def test_the_parts_of_a_scale_bar_take_turns() -> None:
    marks = list(scale_bar(0.0, 0.0, METRIC[3], Units.MM, THEME))
    colours = [m.colour for m in marks if isinstance(m, Fill)]
    assert colours == [THEME.ink, THEME.paper, THEME.ink, THEME.paper]
    ends = [m.points[1][0] for m in marks if isinstance(m, Stroke)]
    assert ends == pytest.approx([10.0, 20.0, 30.0, 40.0])
    assert words(marks) == ["0", "200 mm", "400 mm", "1:10"]


def test_the_tally_says_how_much_was_decided() -> None:
    decided = {eave.SHORT.key: Decision(eave.SHORT.key, State.MENDED)}
    assert tally(eave.result(decisions=decided)) == "4 faults, 1 doubt, 1 remark, 1 decided"
