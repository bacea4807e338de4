"""The rule books: the figures, their sources, and the wrong figures that go round."""

import ast
from math import hypot, radians, tan
from pathlib import Path

import pytest

import enclosure_app
from enclosure_app.errors import EnclosureError
from enclosure_app.files.maps.rule_book import books, limit_units, load_limits, unused_figures

ASKING = ("rules", "network", "planning", "model/limits.py")
"""Where figures are asked for, by their names."""

IN = 25.4
NAMES = [
    "wall-lap",
    "wall-end-lap",
    "roof-lap",
    "roof-lap-low",
    "roof-lap-low-slope-limit",
    "roof-minimum-slope",
    "roof-end-lap",
    "roof-lap-adhered",
    "roof-end-lap-adhered",
    "low-slope-lap",
    "below-grade-lap",
    "air-lap",
    "flashing-lap",
    "upturn",
    "upturn-low-slope",
    "upturn-low-slope-limit",
    "eave-cover-inside",
    "eave-cover-along",
    "eave-cover-steep-slope",
    "eave-cover-steep-along",
    "eave-wall-line",
    "drip-clear",
    "drip-edge-below-deck",
    "sill-back-dam",
    "sill-slope",
    "level-slope",
    "cladding-above-roof",
    "cladding-above-ground",
]


def value(book: str, name: str) -> float:
    return load_limits(book).figure(name).value


@pytest.mark.parametrize("book", list(books()))
def test_every_book_answers_for_every_name(book: str) -> None:
    figures = load_limits(book).figures
    assert set(figures) == set(limit_units())
    assert set(NAMES) <= set(figures)
    for name, figure in figures.items():
        assert (figure.name, figure.unit) == (name, limit_units()[name])
        assert figure.source, name
        assert figure.value >= 0, name


@pytest.mark.parametrize("book", list(books()))
def test_nothing_from_memory_or_second_hand_counts_as_confirmed(book: str) -> None:
    doubtful = ("from memory", "second-hand", "no source", "unresolved", "no figure")
    for figure in load_limits(book).figures.values():
        if any(word in f"{figure.source} {figure.edition}" for word in doubtful):
            assert not figure.confirmed, figure.name
            assert figure.basis.endswith("(unconfirmed)"), figure.name
        elif not figure.confirmed:
            assert figure.source.startswith("no such clause"), figure.name


@pytest.mark.parametrize(
    ("book", "name", "expected", "confirmed"),
    [
        # IRC R905.2.8.3, read in 2015 and 2018
        ("irc-2021", "upturn", 4 * IN, True),
        # IBC 1507.10.1 to .15.1 as in Minnesota Rules 1305.1507, read
        ("irc-2021", "low-slope-minimum", 0.25 / 12, True),
        # IRC 2018 R703.9.2 item 8, read
        ("irc-2021", "render-above-ground", 6 * IN, True),
        # US Navy NAVEDTRA 14044 vol. 2 fig. 3-14, read
        ("practice", "roof-lap", 2 * IN, True),
        ("practice", "roof-lap-low", 19 * IN, True),
        ("practice", "roof-end-lap", 4 * IN, True),
        # US DOE Building America step and kick-out guide, read
        ("practice", "upturn", 4 * IN, True),
        ("irc-2021", "cladding-above-roof", 1 * IN, True),
        # Ontario code 9.26.5.1 (1), 9.26.4.4, 9.26.4.6, 9.27.2.4 and NBC 2020 9.25.3.3, read
        ("nbc-2020", "eave-cover-inside", 300, True),
        ("nbc-2020", "eave-cover-along", 900, True),
        ("nbc-2020", "flashing-lap", 100, True),
        ("nbc-2020", "upturn-low-slope", 150, True),
        ("nbc-2020", "cladding-above-roof", 50, True),
        ("nbc-2020", "cladding-above-ground", 200, True),
        ("nbc-2020", "air-lap", 100, True),
        # IRC Table R905.1.1(2), R905.2.2, second-hand or from memory
        ("irc-2021", "roof-lap", 2 * IN, False),
        ("irc-2021", "roof-lap-low", 19 * IN, False),
        ("irc-2021", "roof-end-lap", 4 * IN, False),
        ("irc-2021", "roof-lap-low-slope-limit", 4 / 12, False),
        ("irc-2021", "roof-minimum-slope", 2 / 12, False),
        # IRC R905.2.8.5 and R905.1.2, from memory
        ("irc-2021", "drip-edge-below-deck", 0.25 * IN, False),
        ("irc-2021", "flashing-lap", 2 * IN, False),
        ("irc-2021", "eave-cover-inside", 24 * IN, False),
        ("irc-2021", "eave-cover-steep-slope", 8 / 12, False),
        ("irc-2021", "eave-cover-steep-along", 36 * IN, False),
        ("irc-2021", "weep-screed-above-ground", 4 * IN, False),
        # NRCA manual practice, from memory
        ("irc-2021", "upturn-low-slope", 8 * IN, False),
        # BS 6229:2018 cl. 4.5, second-hand; DIN 18531-1:2017, from memory
        ("eu", "upturn-low-slope", 150, False),
        ("eu", "upturn", 100, False),
        ("eu", "upturn-low-slope-limit", tan(radians(5)), False),
        # common practice, no source
        ("irc-2021", "roof-lap-adhered", 4 * IN, False),
        ("irc-2021", "roof-end-lap-adhered", 6 * IN, False),
        ("irc-2021", "sill-back-dam", 0.25 * IN, False),
    ],
)
def test_a_figure_is_the_published_one(
    book: str, name: str, expected: float, *, confirmed: bool
) -> None:
    figure = load_limits(book).figure(name)
    assert figure.value == pytest.approx(expected)
    assert figure.confirmed is confirmed


def test_wall_laps_are_not_swapped() -> None:
    """A page says 6 in for horizontal and 2 in for vertical laps of R703.2: the reverse holds."""
    assert value("irc-2021", "wall-lap") == pytest.approx(2 * IN)
    assert value("irc-2021", "wall-end-lap") == pytest.approx(6 * IN)


def test_the_air_barrier_lap_is_not_that_of_earlier_canadian_editions() -> None:
    assert value("nbc-2020", "air-lap") != 50
    assert value("nbc-2020", "air-lap") == 100


def test_the_order_at_the_drip_edge_is_not_turned_round() -> None:
    """A checklist has it over the underlayment at eaves and under it at rakes."""
    for book in books():
        assert value(book, "eave-underlayment-over-drip-edge") == 1
        assert value(book, "rake-underlayment-over-drip-edge") == 0


def test_a_quarter_in_twelve_is_not_two_per_cent() -> None:
    """The code prints "(2-percent slope)"; a roof of 2.0 % is flatter than 1/4:12."""
    for name in ("level-slope", "low-slope-minimum"):
        assert value("irc-2021", name) == pytest.approx(1 / 48)
        assert value("irc-2021", name) > 0.02
    assert load_limits().tolerances.level == pytest.approx(1 / 48)


@pytest.mark.parametrize("book", list(books()))
def test_the_settings_of_the_check_stand_in_the_books(book: str) -> None:
    settings = load_limits(book).tolerances
    assert (settings.touch, settings.lap_reach, settings.driving_angle) == (2.0, 15.0, 30.0)


def test_exactly_four_in_twelve_is_not_below_the_limit_of_low_slopes() -> None:
    assert not value("irc-2021", "roof-lap-low-slope-limit") > 4 / 12


@pytest.mark.parametrize(
    ("overhang", "wall", "rise", "published"),
    [(12, 6, 6, 47), (12, 6, 8, 50.5), (12, 6, 12, 59.375)],
)
def test_the_eave_figures_give_the_published_lengths(
    overhang: float, wall: float, rise: float, published: float
) -> None:
    """Three lengths from a trade article (second-hand), to 1/8 in, counted from the inner face."""
    assert value("irc-2021", "eave-wall-line") == 1
    level = overhang + wall + value("irc-2021", "eave-cover-inside") / IN
    along = level * hypot(12, rise) / 12
    if rise / 12 >= value("irc-2021", "eave-cover-steep-slope"):
        along = max(along, value("irc-2021", "eave-cover-steep-along") / IN)
    assert along == pytest.approx(published, abs=1 / 8)


def test_a_steep_eave_without_overhang_is_governed_by_the_length_along_the_slope() -> None:
    """Computed: 24 in level at 8:12 is 28.8 in along the slope, and 36 in are asked for."""
    along = value("irc-2021", "eave-cover-inside") / IN * hypot(12, 8) / 12
    assert along == pytest.approx(28.84, abs=0.01)
    assert value("irc-2021", "eave-cover-steep-along") / IN == pytest.approx(36)


def test_the_canadian_eave_figures_give_the_computed_length() -> None:
    """Overhang 400 and 190 to the inner face, slope 1:3: 938.1 mm, more than the least 900."""
    along = (400 + 190 + value("nbc-2020", "eave-cover-inside")) * hypot(3, 1) / 3
    assert max(along, value("nbc-2020", "eave-cover-along")) == pytest.approx(938.1, abs=0.05)
    assert value("nbc-2020", "eave-cover-steep-along") == 0


def test_the_clause_in_doubt_for_2024_says_so_and_the_rest_is_that_of_2021() -> None:
    late, early = load_limits("irc-2024"), load_limits("irc-2021")
    doubt = late.figure("eave-cover-steep-along")
    assert doubt.note.startswith("Unresolved")
    assert doubt.basis == "IRC R905.1.2, second-hand, 2024 (unconfirmed)"
    differing = {name for name in late.figures if late.figures[name] != early.figures[name]}
    assert differing == {"eave-cover-steep-along"}


def test_a_figure_without_one_in_the_book_is_common_practice() -> None:
    for book in ("irc-2021", "nbc-2020", "eu"):
        assert load_limits(book).figure("drip-clear") == load_limits("practice").figure(
            "drip-clear"
        )


def test_figures_are_in_the_rise_and_run_of_the_book() -> None:
    """British underlay table, from memory: degrees are turned into rise over run."""
    assert value("eu", "roof-lap-low-slope-limit") == pytest.approx(0.26795, abs=1e-5)


def test_the_books_have_names() -> None:
    assert books()["irc-2021"] == "International Residential Code 2021 (US)"
    assert list(books()) == ["practice", "irc-2021", "irc-2024", "nbc-2020", "eu"]
    assert load_limits().book == "irc-2021"


def test_a_book_that_is_not_there_is_refused_with_the_nearest_name() -> None:
    with pytest.raises(EnclosureError) as caught:
        load_limits("nbc-2015")
    assert str(caught.value) == "There is no rule book 'nbc-2015'; did you mean 'nbc-2020'?"


def test_the_figures_cannot_be_changed() -> None:
    figures = load_limits().figures
    with pytest.raises(TypeError):
        figures["upturn"] = figures["wall-lap"]


def test_every_figure_is_asked_for_or_marked_as_unused() -> None:
    """A figure that is offered and asked for by nobody would be a setting that does nothing."""
    asked = set().union(*map(_texts_in, _asking_files()))
    figures = {*limit_units()}
    assert figures - asked == {*unused_figures()}


def _asking_files() -> list[Path]:
    package = Path(enclosure_app.__file__).parent
    rooms = [package / each for each in ASKING]
    return [
        file
        for room in rooms
        for file in ([room] if room.is_file() else room.rglob("*.py"))
        if "limits" in file.read_text(encoding="utf-8")
    ]


def _texts_in(file: Path) -> set[str]:
    """Return the texts of a module's code, each as a whole: docstrings hold other words too."""
    tree = ast.parse(file.read_text(encoding="utf-8"))
    constants = (each for each in ast.walk(tree) if isinstance(each, ast.Constant))
    return {each.value for each in constants if isinstance(each.value, str)}
