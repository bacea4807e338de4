"""Lines of a PDF page, against their places worked out by hand from ISO 32000-1's operators."""

from math import dist

import pytest

from enclosure_app.files.underlay import paths as underlay_paths
from enclosure_app.files.underlay.paths import TooManyLinesError, page_strokes
from enclosure_app.files.underlay.pdfium import POINT_MM, opened, page_of
from enclosure_app.model.section import Stroke
from tests.made_pdf import made_pdf

WIDE, HIGH = 420.0, 595.0


def strokes(content: str, *, hide: frozenset[str] = frozenset(), **more: object) -> list[Stroke]:
    with opened(made_pdf(content, **more), "a.pdf") as document, page_of(document, 0, "") as page:  # type: ignore[arg-type]
        return list(page_strokes(page, hide, lambda _: None))


def points(stroke: Stroke) -> list[tuple[float, float]]:
    return [(round(x / POINT_MM, 2), round(y / POINT_MM, 2)) for x, y in stroke.points]


def lone(content: str, **more: object) -> list[tuple[float, float]]:
    (stroke,) = strokes(content, **more)  # type: ignore[arg-type]
    return points(stroke)


def test_a_line_is_as_long_as_on_paper() -> None:
    (stroke,) = strokes("1 w 72 72 m 144 72 l S")
    assert dist(*stroke.points) == pytest.approx(25.4)
    assert stroke.points[0] == pytest.approx((25.4, 25.4))
    assert stroke.layer == "0.35 mm"


def test_a_box_is_a_closed_run_and_what_was_scaled_is_scaled() -> None:
    assert lone("q 2 0 0 2 10 20 cm 0 0 50 30 re S Q") == [
        (10, 20), (110, 20), (110, 80), (10, 80), (10, 20),
    ]  # fmt: skip


def test_a_pen_is_as_wide_as_it_is_shown() -> None:
    (stroke,) = strokes("q 0.5 0 0 0.5 0 0 cm 0 0 1 RG 2.834 w 9 9 m 99 9 l S Q")
    assert stroke.layer == "0.50 mm blue"


def test_a_form_is_drawn_where_its_matrices_put_it() -> None:
    """The form's own matrix moves by 3, the page's by 10 at twice the size."""
    form = "q 1 0 0 1 5 5 cm 0 0 m 10 0 l S Q"
    assert lone("q 2 0 0 2 10 10 cm /Fm0 Do Q", form=form) == [(26, 20), (46, 20)]


def test_a_curve_is_followed_within_a_twentieth_of_a_point() -> None:
    run = lone("100 300 m 100 355.2285 144.7715 400 200 400 c S")
    assert run[0] == (100, 300)
    assert run[-1] == (200, 400)
    assert 6 < len(run) < 40
    assert all(dist(point, (200, 300)) == pytest.approx(100, abs=0.06) for point in run)


@pytest.mark.parametrize(
    ("rotate", "expected"),
    [
        (0, [(20, 30), (120, 30)]),
        (90, [(30, WIDE - 20), (30, WIDE - 120)]),
        (180, [(WIDE - 20, HIGH - 30), (WIDE - 120, HIGH - 30)]),
        (270, [(HIGH - 30, 20), (HIGH - 30, 120)]),
    ],
)
def test_a_turned_page_has_its_lines_turned(
    rotate: int, expected: list[tuple[float, float]]
) -> None:
    assert lone("20 30 m 120 30 l S", rotate=rotate) == expected


def test_a_cropped_page_is_counted_from_its_crop_and_cut_there() -> None:
    assert lone("0 30 m 500 30 l S", box="/CropBox [20 10 220 210]") == [(0, 20), (200, 20)]


def test_what_a_clip_hides_is_cut_off() -> None:
    assert lone("q 0 0 50 50 re W n 10 25 m 200 25 l S Q") == [(10, 25), (50, 25)]
    assert strokes("q 0 0 50 50 re W n 60 25 m 200 25 l S Q") == []


def test_what_covers_or_is_no_line_is_left_out() -> None:
    assert strokes("1 1 1 RG 10 10 m 90 10 l S") == []  # white on white
    assert strokes("0 0 420 595 re f") == []  # the ground of the page
    assert strokes("10 10 m 12 10 l 11 12 l f") == []  # a letter or an arrowhead
    assert strokes("10 10 m 90 10 l n") == []  # drawn with nothing


def test_the_edge_of_what_is_filled_is_a_line() -> None:
    (stroke,) = strokes("10 10 80 20 re f")
    assert stroke.layer == "filled"
    assert points(stroke)[:2] == [(10, 10), (90, 10)]


def test_lines_written_one_after_the_other_are_one_run() -> None:
    joined = "10 10 m 90 10 l S 90 10 m 90 80 l S"
    assert lone(joined) == [(10, 10), (90, 10), (90, 80)]
    assert len(strokes("10 10 m 90 10 l S 2 w 90 10 m 90 80 l S")) == 2


def test_layers_keep_their_names_and_those_that_are_off_are_left_out() -> None:
    content = "/OC /L0 BDC 9 9 m 99 9 l S EMC /OC /L1 BDC 9 19 m 99 19 l S EMC"
    names = ("A-WALL-MEMB", "A-ANNO")
    both = strokes(content, layers=names)
    assert [stroke.layer for stroke in both] == ["A-WALL-MEMB", "A-ANNO"]
    assert [s.layer for s in strokes(content, layers=names, hide=frozenset(["A-ANNO"]))] == [
        "A-WALL-MEMB"
    ]


def test_too_many_lines_are_none(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(underlay_paths, "MOST", 3)
    with pytest.raises(TooManyLinesError):
        strokes(" ".join(f"0 {n * 9} m 99 {n * 9} l S" for n in range(5)))


def test_it_tells_how_far_it_is_and_can_be_stopped() -> None:
    content = " ".join(f"0 {n / 9} m 99 {n / 9} l S" for n in range(2000))
    heard: list[float] = []

    class StoppedError(Exception):
        pass

    def tell(share: float) -> None:
        heard.append(share)
        if share > 0.5:
            raise StoppedError

    data = made_pdf(content)
    with (
        pytest.raises(StoppedError),
        opened(data, "") as document,
        page_of(document, 0, "") as page,
    ):
        page_strokes(page, frozenset(), tell)
    assert heard == [0.0, 0.2, 0.4, 0.6]
