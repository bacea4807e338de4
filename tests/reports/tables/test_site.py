"""The site list as rows: every item of every place, with what was seen of it."""

from datetime import UTC, datetime

from enclosure_app.files.maps.rule_book import load_limits
from enclosure_app.model.drawing import Units
from enclosure_app.model.said.site_check import Seen, SiteCheck
from enclosure_app.planning.site_list.listing import site_list
from enclosure_app.reports.tables.site import SeenList, limits_of_the_list, site_table
from enclosure_app.reports.tables.table import Value
from tests.drawing import eave
from tests.reports.decided import PHOTOGRAPHS, SILL

ASKED = site_list(eave.result(), load_limits())
ITEMS = [(place, key, question) for place in ASKED.places for key, question in place.items]


def rows(seen: dict[str, SiteCheck], units: Units = Units.MM) -> list[dict[str, Value]]:
    table = site_table([SeenList(ASKED, seen)], units, PHOTOGRAPHS)
    heads = [column.head for column in table.columns]
    return [dict(zip(heads, row, strict=True)) for row in table.rows]


def test_every_item_has_a_row_in_walking_order() -> None:
    made = rows({})
    assert len(ITEMS) > 10
    assert [row["Key"] for row in made] == [key for _, key, _ in ITEMS]
    assert [row["What to look at"] for row in made] == [question.text for *_, question in ITEMS]
    assert {row["Seen"] for row in made} == {"not looked at"}
    assert made[0]["Place"] == ASKED.places[0].title


def test_what_was_seen_stands_with_its_item_alone() -> None:
    key = ITEMS[3][1]
    when = "2026-03-02T10:15:00+02:00"
    look = SiteCheck(key, Seen.NOT_IN_ORDER, "Ida", when, "wrinkled", photographs=(SILL.key,))
    seen = [row for row in rows({key: look}) if row["Seen"] != "not looked at"]
    (row,) = seen
    assert (row["Key"], row["Seen"], row["By whom"], row["Remark"]) == (
        key,
        "not in order",
        "Ida",
        "wrinkled",
    )
    assert row["When (UTC)"] == datetime(2026, 3, 2, 8, 15, tzinfo=UTC)
    assert row["Photographs"] == f"IMG_0042-{SILL.key[:8]}.jpg"


def test_figures_are_in_the_drawings_units() -> None:
    measured = next(n for n, (*_, question) in enumerate(ITEMS) if question.drawn)
    drawn = ITEMS[measured][2].drawn
    assert drawn is not None
    assert rows({}, Units.IN)[measured]["As drawn (in)"] == round(drawn / 25.4, 3)


def test_the_list_says_what_it_is_not() -> None:
    assert limits_of_the_list().startswith("This list reminds;")
