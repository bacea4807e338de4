"""The whole sheet: everything in its own box, at a true scale, on as many pages as it takes."""

from dataclasses import replace
from functools import cache
from math import dist

import pytest

from enclosure_app.drawing.clipping import clip_line
from enclosure_app.drawing.marks import Anchor, Flag, Label, Mark, Overlay, Stroke, points_of
from enclosure_app.drawing.placement import Box
from enclosure_app.drawing.scales import parse_scale
from enclosure_app.drawing.section.details import arrange
from enclosure_app.drawing.sheet.job import PAPERS, SheetJob, paper_size
from enclosure_app.drawing.sheet.layout import areas
from enclosure_app.drawing.sheet.sheet import Page, compose_sheets, ribbons_on
from enclosure_app.drawing.theme import load_theme
from enclosure_app.drawing.typeface import text_width
from enclosure_app.errors import EnclosureError
from enclosure_app.model.drawing import Units
from enclosure_app.model.product import Control
from enclosure_app.model.report import DrawingResult
from enclosure_app.model.said.decision import Decision, State
from tests.drawing import eave

THEME = load_theme()
JOB = SheetJob("A3", None, "Boathouse", "B", "M. Ferreira", "2026-11-25")


def pages(result: DrawingResult | None = None, **order: object) -> tuple[Page, ...]:
    return compose_sheets((result or eave.drawing(),), replace(JOB, **order), THEME)


@cache
def crowd(paper: str = "A3") -> tuple[Page, ...]:
    """The sheets of a wall with forty findings."""
    return pages(eave.drawing(eave.crowded()), paper=paper)


def everything(page: Page) -> tuple[Mark, ...]:
    return page.numbered(1, 1, THEME)


def texts(page: Page) -> list[str]:
    return [m.text for m in everything(page) if isinstance(m, Label)]


def extent(label: Label) -> Box:
    """The box of an upright label."""
    width = text_width(label.text, label.size, bold=label.bold)
    left = (
        label.at[0]
        - {Anchor.START: 0.0, Anchor.MIDDLE: 0.5, Anchor.END: 1.0}[label.anchor] * width
    )
    return Box(left, label.at[1], left + width, label.at[1] + label.size)


@pytest.mark.parametrize("paper", PAPERS)
@pytest.mark.parametrize("crowded", [False, True])
def test_nothing_leaves_the_border(paper: str, crowded: bool) -> None:
    for page in crowd(paper) if crowded else pages(paper=paper):
        border = areas(paper_size(paper), 2).border
        for mark in everything(page):
            assert all(border.holds(p, 0.01) for p in points_of(mark)), mark
            if isinstance(mark, Label) and not mark.angle:
                box = extent(mark)
                assert border.holds((box.left, box.bottom), 0.01), mark.text
                assert border.holds((box.right, box.top), 0.01), mark.text


@pytest.mark.parametrize(
    ("scale", "ratio"), [(None, 20), ("1:20", 20), ("1:50", 50), ("1:100", 100)]
)
def test_lengths_on_paper_are_true(scale: str | None, ratio: float) -> None:
    """The frame is 1600 mm by 2940 mm, and so it is on the paper, divided by the scale."""
    (page,) = pages(scale=scale)
    frame = next(m for m in page.marks if isinstance(m, Stroke) and m.source == "frame")
    sides = [dist(a, b) for a, b in zip(frame.points, frame.points[1:], strict=False)]
    assert sides[:2] == pytest.approx([1600 / ratio, 2940 / ratio])


def test_an_imperial_drawing_gets_an_imperial_scale_and_feet_and_inches() -> None:
    (page,) = pages(eave.drawing(units=Units.IN), paper="ANSI B")
    assert '1/2" = 1\'-0"' in texts(page)
    assert "feet and inches" in texts(page)
    assert '2 3/8"' in texts(page)


def test_the_scale_bar_is_as_long_as_it_says() -> None:
    (page,) = pages()
    parts = [m for m in page.marks if isinstance(m, Stroke) and m.source == "scale"]
    xs = [x for m in parts for x, _ in m.points]
    assert "800 mm" in texts(page)
    assert max(xs) - min(xs) == pytest.approx(800 / 20)


def test_a_scale_that_does_not_fit_is_refused_with_the_one_that_does() -> None:
    with pytest.raises(
        EnclosureError,
        match=r"“Boathouse, north wall at the slip” does not fit on A3 at 1:5; use 1:20.",
    ):
        pages(scale="1:5")


def test_an_unknown_paper_is_refused_with_the_known_ones() -> None:
    with pytest.raises(
        EnclosureError, match=r"“A9” is not known; use one of A4, A3, A2, A1, A0, ANSI B, ANSI C"
    ):
        pages(paper="A9")


@pytest.mark.parametrize("paper", ["A3", "A4"])
def test_forty_findings_are_all_flagged_and_all_in_the_table(paper: str) -> None:
    made = crowd(paper)
    assert len(made) > 1
    words = [text for page in made for text in texts(page)]
    for number in range(1, 41):
        assert any(text.startswith(f"Place number {number}:") for text in words)
    leaders = {m.number for page in made for m in page.marks if isinstance(m, Flag) and m.leader}
    assert leaders == set(range(1, 41))


def test_the_first_page_says_how_many_rows_are_on_the_next() -> None:
    first, second = crowd()
    rows = sum(t.startswith("Place number") for t in texts(first))
    assert f"{40 - rows} more on the next sheet" in texts(first)
    assert not [t for t in texts(second) if t.endswith("more on the next sheet")]


def test_more_findings_than_flags_fit_around_a_drawing_repeat_the_drawing() -> None:
    made = pages(eave.drawing(eave.crowded(90)), paper="A4")
    drawn = [
        p for p in made if any(isinstance(m, Stroke) and m.source == "frame" for m in p.marks)
    ]
    flagged = [{m.number for m in p.marks if isinstance(m, Flag) and m.leader and len(m.leader.points) == 3
                and m.leader.points[0][1] > p.height / 3} for p in drawn]  # fmt: skip
    assert len(drawn) > 1
    assert set().union(*flagged) >= set(range(1, 91))


def test_the_table_holds_what_was_measured_and_required_and_what_is_unconfirmed() -> None:
    (page,) = pages()
    words = texts(page)
    for text in ("Fault · short lap, water", "60 mm", "100 mm", "Remark · no drip, water",
                 "Rule book: wall sheets, vertical face (unconfirmed)"):  # fmt: skip
        assert text in words


def test_the_title_block_says_what_it_was_told() -> None:
    (page,) = pages()
    words = page.numbered(2, 7, THEME)
    found = [m.text for m in words if isinstance(m, Label)]
    for text in ("Boathouse", "boathouse.dxf", "Boathouse, north wall at the slip", "1:20", "mm",
                 "B", "M. Ferreira", "2026-11-25", "2 of 7"):  # fmt: skip
        assert text in found


@pytest.mark.parametrize(
    ("title", "file", "shown"),
    [
        ("North wall", "boathouse.dxf", "North wall (boathouse.dxf)"),
        ("boathouse", "boathouse.dxf", "boathouse.dxf"),
        ("Boathouse", "drawing-7.dxf", "drawing-7.dxf"),  # as the project is called
        ("North wall", "", "North wall"),
    ],
)
def test_the_drawing_is_named_without_saying_a_name_twice(
    title: str, file: str, shown: str
) -> None:
    result = eave.drawing(file=file)
    titled = replace(result, drawing=replace(result.drawing, title=title))
    assert {page.titles.drawing for page in pages(titled)} == {shown}


def test_the_caution_is_on_every_page() -> None:
    for page in crowd():
        whole = " ".join(texts(page))
        for words in ("aid to judgement", "Local codes", "Work at height", "rot or mould"):
            assert words in whole


def test_the_legend_explains_only_what_is_used() -> None:
    words = texts(pages()[0])
    for text in ("water layer: continuous", "air layer: broken", "heat layer", "way of a drop",
                 "way in, air", "fault", "doubt", "remark"):  # fmt: skip
        assert text in words
    calm = texts(
        pages(eave.drawing(eave.result(findings=(), rain=(), layers={eave.W: eave.WATER})))[0]
    )
    for text in ("fault", "doubt", "remark", "way of a drop", "way in, air"):
        assert text not in calm


def test_a_sheet_without_findings_says_so() -> None:
    (page,) = pages(eave.drawing(eave.result(findings=())))
    assert "nothing found" in texts(page)
    assert "Nothing was found by the checks that were run." in texts(page)


def test_two_sections_have_a_sheet_each() -> None:
    other = eave.result(section=eave.section("Gable"))
    made = pages(eave.drawing(eave.result(), other))
    assert [p.titles.section for p in made] == ["Boathouse, north wall at the slip", "Gable"]


def test_long_names_are_shortened_and_stay_in_their_cells() -> None:
    long = "A very long name of a section that nobody could read out in one breath " * 3
    (page,) = pages(eave.drawing(eave.result(section=eave.section(long))), project=long)
    assert [t for t in texts(page) if t.endswith("…")]


def test_the_same_order_gives_the_same_marks() -> None:
    assert pages() == pages()


def test_no_text_in_a_detail_is_cut_off() -> None:
    (page,) = pages()
    result, size = eave.result(), paper_size("A3")
    free = areas(size, len(ribbons_on(result, size))).drawing
    made = arrange(result, result.findings, free, parse_scale("1:20"), Units.MM)
    for detail in made.details:
        inside = [
            m
            for m in page.marks
            if isinstance(m, Label) and detail.box.holds(m.at) and not m.angle
        ]
        for label in inside:
            box = extent(label)
            assert detail.box.holds((box.left, box.bottom)), label.text
            assert detail.box.holds((box.right, box.top)), label.text


def test_leaders_do_not_run_through_details() -> None:
    for paper in ("A3", "A4"):
        for page in crowd(paper):
            squares = [
                Box(*m.points[0], *m.points[2])
                for m in page.marks
                if isinstance(m, Stroke) and m.source == "detail"
            ]
            leaders = [m.leader for m in page.marks if isinstance(m, Flag) and m.leader]
            for square in squares:
                for leader in leaders:
                    assert not list(clip_line(leader.points, square.inset(0.1)))


def test_a_finding_far_outside_the_frame_leaves_nothing_beyond_the_border() -> None:
    stray = replace(eave.GAP, at=(90_000.0, -40_000.0), extent=(((90_000, 0), (90_000, 30)),))
    border = areas(paper_size("A3"), 2).border
    for page in pages(eave.drawing(eave.result(findings=(stray, eave.SHORT)))):
        for mark in page.marks:
            assert all(border.holds(p, 0.01) for p in points_of(mark)), mark


def test_lines_in_a_name_become_one_line() -> None:
    (page,) = pages(eave.drawing(eave.result(section=eave.section("North\nwall\tat  the slip"))))
    assert "North wall at the slip" in texts(page)


def test_a_sheet_without_findings_says_which_layer_could_not_be_judged() -> None:
    (page,) = pages(eave.drawing(eave.unsure()))
    told = texts(page)
    assert "air could not be judged" in told
    assert any(text.startswith("The air layer could not be judged.") for text in told)
    assert not any(text.startswith(("nothing found", "Nothing was found")) for text in told)


def test_verdicts_are_on_every_flag_of_their_finding_and_in_the_table() -> None:
    decided = {
        eave.SHORT.key: Decision(eave.SHORT.key, State.TO_BE_MENDED, "Ida"),
        "gap:gone": Decision("gap:gone", State.ACCEPTED, remark="Cold roof.", about="An old gap."),
    }
    made = pages(eave.drawing(eave.result(decisions=decided)))
    flags = [m for page in made for m in everything(page) if isinstance(m, Flag)]
    states = {flag.source: set() for flag in flags}
    for flag in flags:
        states[flag.source].add(flag.state)
    assert states.pop(eave.SHORT.key) == {State.TO_BE_MENDED}
    assert set().union(*states.values()) == {State.OPEN}
    told = [text for page in made for text in texts(page)]
    assert told.count("To be mended by Ida") == 1
    assert told.count("No longer found: An old gap.") == 1
    assert told.count("Accepted: Cold roof.") == 1


def test_water_and_air_are_unrolled_always_and_other_layers_where_something_was_found() -> None:
    a3, a4 = paper_size("A3"), paper_size("A4")
    clean = eave.result(findings=(eave.SHORT,))
    assert ribbons_on(clean, a3) == (Control.WATER, Control.AIR)
    doubted = eave.result(findings=(eave.SHORT, eave.STOPS))
    assert ribbons_on(doubted, a3) == (Control.WATER, Control.AIR, Control.VAPOUR)
    assert ribbons_on(doubted, a4) == (Control.WATER, Control.AIR)  # there is no room


def test_what_was_found_in_the_vapour_layer_hangs_from_its_ribbon() -> None:
    (page,) = pages(eave.drawing(eave.result(findings=(eave.STOPS,))))
    foot = areas(paper_size("A3"), 3).ribbons[2]
    flags = [m for m in everything(page) if isinstance(m, Flag) and foot.holds(m.at)]
    assert [flag.source for flag in flags] == [eave.STOPS.key]


def test_marks_lie_on_the_overlay_of_what_they_show() -> None:
    """Sheets by their controls, the office's lines apart, what was found on top of its own."""
    (page,) = pages()
    by_source: dict[str, set[tuple[Overlay, ...]]] = {}
    for mark in page.marks:
        by_source.setdefault(mark.source, set()).add(mark.overlays)
    water, air = (Overlay.WATER,), (Overlay.AIR,)
    assert by_source["w2"] == {water, air, (*water, *air)}  # two bands, and the halo of both
    assert by_source["coat"] == {water}
    assert by_source["footing"] == {(Overlay.LINEWORK,)}
    assert by_source["wool"] == {(Overlay.LINEWORK,), (Overlay.HEAT,)}
    assert by_source["frame"] == {(Overlay.LINEWORK,)}
    assert by_source["rain"] == {water}
    assert by_source["lift:air"] == {air}
    assert by_source["border"] == by_source["detail"] == {()}
    gap = [m for m in page.marks if m.source == eave.GAP.key and not isinstance(m, Label)]
    loose = [m for m in gap if m.overlays != (Overlay.FINDINGS,)]
    assert all(isinstance(m, Flag) or m.points[0][0] > 300 for m in loose)  # in the table only
    assert all(m.overlays for m in page.marks if isinstance(m, Flag) and m.leader)


def test_each_sheet_names_the_file_that_its_section_is_of() -> None:
    """Several drawings opened as one project."""
    sections = [
        eave.result(section=replace(eave.section(name), file=file))
        for name, file in (("ridge", ""), ("eave: NORTH", "plans/eave.dxf"))
    ]
    joined = eave.drawing(*sections, file="plans/ridge.dxf")
    joined = replace(joined, drawing=replace(joined.drawing, title="Boathouse"))
    told = [page.titles.drawing for page in compose_sheets((joined,), SheetJob(), THEME)]
    assert told == ["Boathouse (ridge.dxf)", "Boathouse (eave.dxf)"]
    (alone,) = compose_sheets((eave.drawing(file="plans/ridge.dxf"),), SheetJob(), THEME)
    assert alone.titles.drawing == "ridge.dxf"


def test_a_page_is_painted_in_the_order_in_which_it_is_read() -> None:
    """Without tags, whatever reads a page aloud or copies its text keeps to that order."""
    (page,) = pages()
    told = [m.text for m in page.numbered(1, 1, THEME) if isinstance(m, Label)]
    first = eave.result().findings[0]
    wanted = [
        "Boathouse, north wall at the slip",
        "What was found",
        first.message.split()[0],
        "1:20",
        "Water",
        "water layer: continuous",
        "This sheet is an aid",
        "Project",
        "Signed off",
    ]
    at = [next(k for k, text in enumerate(told) if text.startswith(word)) for word in wanted]
    assert at == sorted(at)


@pytest.mark.parametrize("paper", ["A4", "A3"])
def test_long_remarks_take_more_sheets_and_no_finding_is_left_out(paper: str) -> None:
    result = eave.crowded(6)
    remark = f"{'A long story. ' * 150}The end."
    said = {
        f.key: Decision(f.key, State.ACCEPTED, "Ida", "2026-01-02", remark)
        for f in result.findings
    }
    made = pages(eave.drawing(replace(result, decisions=said)), paper=paper)
    told = " ".join(m.text for p in made for m in everything(p) if isinstance(m, Label))
    assert told.count("Ida, 2026-01-02") == told.count("The end.") == 6
    assert all(f.advice.split()[-1] in told for f in result.findings)
