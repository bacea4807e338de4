"""Laps, tapes, beads and butts on the site list: which sheet over which, how wide, how bonded."""

from enclosure_app.checker import check_section
from enclosure_app.model.product import Control
from enclosure_app.model.section import Section
from enclosure_app.planning.site_list.listing import site_list
from enclosure_app.planning.site_list.places import SitePlace
from enclosure_app.planning.site_list.questions import Question
from tests.faulty_wall import WALL
from tests.rules.junctions import US, box, rake, run, section, wall_lap

OPEN = "self-adhered-permeable"


def place(drawn: Section, key: str) -> SitePlace:
    found = {each.key: each for each in site_list(check_section(drawn, US), US).places}
    assert key in found, list(found)
    return found[key]


def question(drawn: Section, key: str, name: str) -> Question:
    return next(each for each in place(drawn, key).questions if each.name == name)


def test_the_width_of_a_lap_is_told_beside_what_the_rule_book_asks_for() -> None:
    width = question(WALL, "lap:w3.high+w4.low", "lap-width")
    assert (round(width.drawn or 0), width.least) == (30, 50.8)
    assert width.source.startswith("IRC R703.2")


def test_the_sheet_that_goes_on_uphill_is_to_lie_over_the_other() -> None:
    order = question(WALL, "lap:w1.face+w2.face", "lap-order")
    assert order.text.startswith("Does housewrap lie over self-adhered sheet")
    same = question(WALL, "lap:w3.high+w4.low", "lap-order")
    assert same.text.startswith("Does the upper self-adhered sheet lie over the lower one")


def test_a_reversed_lap_is_never_asked_to_be_built_as_drawn() -> None:
    reversed_lap = place(WALL, "lap:w4.face+w5.face")
    assert " over " not in reversed_lap.title
    order = question(WALL, "lap:w4.face+w5.face", "lap-order")
    assert order.text.startswith(
        "The drawing has the lower one over the upper self-adhered sheet, against"
    )


def test_what_is_looked_at_follows_from_how_the_outer_sheet_is_bonded() -> None:
    stuck = place(wall_lap(160, of=OPEN), "lap:low.face+up.face")
    nailed = place(wall_lap(160, of="housewrap"), "lap:low.face+up.face")
    assert {"pressed-down", "flat-edge", "clean-and-dry"} <= {q.name for q in stuck.questions}
    assert {"fasteners", "caps", "no-tears"} <= {q.name for q in nailed.questions}


def test_a_lap_that_a_person_declared_sealed_is_looked_at_for_that() -> None:
    drawn = section(*wall_lap(160, of="housewrap").pieces, sealed=[("low", "up")])
    names = [q.name for q in place(drawn, "lap:low.face+up.face").questions]
    assert "sealed-as-drawn" in names
    bare = [q.name for q in place(wall_lap(160, of="housewrap"), "lap:low.face+up.face").questions]
    assert "sealed-as-drawn" not in bare


def test_a_tape_is_one_place_whatever_it_joins() -> None:
    drawn = section(
        run("low", "housewrap", (0, -500), (0, -2)),
        run("up", "housewrap", (0, 2), (0, 500)),
        run("T", "seam-tape", (-1.5, -30), (-1.5, 30)),
    )
    tape = place(drawn, "bead:T")
    assert tape.title == "Seam tape for sheets and boards on housewrap"
    assert set(tape.pieces) == {"T", "low", "up"}
    assert abs(tape.at[1]) < 20
    assert {"centred", "tape-ends"} <= {q.name for q in tape.questions}


def test_a_bead_between_boards_is_looked_at_for_its_backing_and_its_shape() -> None:
    drawn = section(
        box("low", "sealed-sheathing", (0, -500), (12, -6)),
        box("up", "sealed-sheathing", (0, 6), (12, 500)),
        box("B", "sealant", (0, -6), (8, 6)),
    )
    names = [q.name for q in place(drawn, "bead:B").questions]
    assert names == ["clean-and-dry", "backing", "tooled", "bead-size"]


def test_insulation_is_to_lie_tight() -> None:
    drawn = section(
        run("sheet", OPEN, (-10, -500), (-10, 500)),
        box("low", "xps", (0, -500), (80, 0)),
        box("up", "mineral-wool", (0, 0), (80, 500)),
    )
    meet = place(drawn, "meet:low.face+up.face")
    assert meet.title == "Extruded polystyrene and mineral wool meet"
    assert [q.name for q in meet.questions] == ["tight-butt"]


def test_one_strip_that_lies_over_two_is_asked_once_how_it_holds() -> None:
    """A wall sheet over the leg of a flashing, and over the lower wall sheet behind that."""
    drawn = section(
        run("low", OPEN, (0, -500), (0, 100)),
        run("F", "base-flashing", (-3, 120), (-3, 0), (-70, -8), (-78, -30)),
        run("up", OPEN, (-6, 20), (-6, 500)),
    )
    laps = [p for p in site_list(check_section(drawn, US), US).places if p.pieces[0] == "up"]
    assert {p.pieces[1] for p in laps} == {"F", "low"}
    pressed = [p.pieces[1] for p in laps for q in p.questions if q.name == "pressed-down"]
    assert len(pressed) == 1
    assert all("lap-width" in [q.name for q in p.questions] for p in laps)


def test_metal_has_no_line_to_go_by() -> None:
    drawn = section(
        run("low", OPEN, (0, -500), (0, 150)),
        run("F", "base-flashing", (-3, 120), (-3, 0), (-70, -8), (-78, -30)),
        run("up", OPEN, (-6, 20), (-6, 500)),
    )
    assert "line" not in question(drawn, "lap:F.face+up.face", "lap-width").text
    sheets = question(wall_lap(160, of=OPEN), "lap:low.face+up.face", "lap-width")
    assert "line marked on the sheet" in sheets.text


def test_a_lap_that_a_tape_closes_is_looked_at_for_that_at_the_tape() -> None:
    low, up = wall_lap(160, of="housewrap").pieces
    tape = run("T", "seam-tape", (-4, -110), (-4, -85), (-1, -79), (-1, -50))
    drawn = section(low, up, tape)
    assert place(drawn, "bead:T").pieces[0] == "T"
    names = {q.name for q in place(drawn, "lap:low.face+up.face").questions}
    assert "sealed-as-drawn" not in names


def test_foam_beside_a_frame_is_looked_at_for_what_foam_does() -> None:
    drawn = section(
        run("s", OPEN, (0, -500), (0, 0), (50, 0)),
        box("f", "closed-cell-foam", (50, -3), (70, 20)),
        box("w", "window-frame", (0, 20), (70, 500)),
    )
    names = [q.name for q in place(drawn, "meet:f.face+w.face").questions]
    assert names[:2] == ["foam-full", "foam-bowed"]
    assert "tight-butt" not in names


def test_what_only_touches_is_told_to_be_closed_not_to_be_warm() -> None:
    drawn = section(
        box("low", "sealed-sheathing", (0, -500), (12, 0)),
        box("up", "sealed-sheathing", (0, 0), (12, 500)),
    )
    (asked,) = place(drawn, "meet:low.face+up.face").questions
    assert asked.name == "meets-tight"
    assert "warmth" not in asked.why


def test_along_a_rake_the_metal_lies_over_the_sheet_as_drawn() -> None:
    order = question(rake(metal_over=True), "lap:D.face+U.face", "lap-order")
    assert order.text == "Does drip edge lie over roof underlayment, as drawn?"


def test_metal_nailed_on_boards_is_no_lap() -> None:
    drawn = section(
        box("deck", "sealed-sheathing", (-400, -12), (500, 0)),
        run("D", "drip-edge", (-300, 2), (-406, 2), (-406, -80), (-416, -92)),
        outside=[(-100, 300)],
        inside=[(-100, -300)],
    )
    keys = [each.key for each in site_list(check_section(drawn, US), US).places]
    assert "metal:D" in keys
    assert not any(key.startswith("lap:") for key in keys)


def test_metal_beside_the_trace_is_looked_at_where_it_laps_the_sheets_on_it() -> None:
    drawn = section(
        run("low", OPEN, (0, -500), (0, 150)),
        run("F", "base-flashing", (-3, 120), (-3, 0), (-70, -8), (-78, -30)),
        run("up", OPEN, (-6, 20), (-6, 500)),
    )
    result = check_section(drawn, US)
    assert "F" not in result.layers[Control.WATER].pieces
    pairs = [set(p.pieces) for p in site_list(result, US).places if p.key.startswith("lap:")]
    assert {"F", "up"} in pairs
    assert {"F", "low"} in pairs
