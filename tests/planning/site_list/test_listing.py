"""The site list of whole sections: places in walking order, one key each, in builders' words."""

from dataclasses import replace

import pytest

from enclosure_app.checker import check_section
from enclosure_app.model.place import Area
from enclosure_app.model.pose import settle
from enclosure_app.model.product import Control
from enclosure_app.model.report import SectionResult
from enclosure_app.model.section import Piece, Section
from enclosure_app.planning.site_list.listing import SiteList, site_list
from tests.faulty_wall import WALL
from tests.rules.junctions import US, box, head, run, section, wall_lap


def listed(drawn: Section) -> SiteList:
    return site_list(check_section(drawn, US), US)


def asked(drawn: Section, key: str) -> list[str]:
    place = listed(drawn).place(key)
    assert place is not None, [each.key for each in listed(drawn).places]
    return [question.name for question in place.questions]


def test_the_places_of_a_wall_come_in_walking_order_with_what_they_are() -> None:
    told = [(place.key, place.title) for place in listed(WALL).places]
    assert told == [
        ("fold:roof.1", "Fold of single-ply roof membrane"),
        ("lap:roof.face+w1.face", "Self-adhered sheet over single-ply roof membrane"),
        ("lap:w1.face+w2.face", "Housewrap over self-adhered sheet"),
        ("lap:w2.face+w3.face", "Self-adhered sheet over housewrap"),
        ("lap:w3.high+w4.low", "The upper self-adhered sheet over the lower one"),
        ("lap:w4.face+w5.face", "Two pieces of self-adhered sheet"),
        ("through:pipe", "Pipe through self-adhered sheet and kraft facing of a batt"),
    ]
    along = [place.along for place in listed(WALL).places]
    assert along == sorted(along)


def test_a_place_of_several_controls_is_looked_at_once() -> None:
    place = listed(WALL).place("lap:w1.face+w2.face")
    assert place is not None
    assert place.controls == (Control.WATER, Control.AIR)
    assert place.at == pytest.approx((-6.0, 270.0), abs=3)


def test_keys_say_nothing_of_where_a_section_is_drawn() -> None:
    elsewhere = settle(WALL)[0]  # the frame's lower left corner comes to the origin
    assert elsewhere.frame != WALL.frame
    assert [p.key for p in listed(elsewhere).places] == [p.key for p in listed(WALL).places]


def test_keys_and_words_are_the_same_whichever_way_sheets_were_drawn() -> None:
    turned = replace(WALL, pieces=tuple(map(_backwards, WALL.pieces)))
    told = [(p.key, p.title, p.questions) for p in listed(turned).places]
    assert told == [(p.key, p.title, p.questions) for p in listed(WALL).places]


def _backwards(piece: Piece) -> Piece:
    shape = piece.shape
    if isinstance(shape, Area):
        return piece
    return replace(piece, shape=replace(shape, points=shape.points[::-1]))


def test_every_question_is_said_with_a_reason_and_a_source() -> None:
    for place in (*listed(WALL).places, *listed(head(over=True, taped=True)).places):
        assert place.questions, place.key
        for question in place.questions:
            assert "{" not in question.text + question.why, question.name
            assert "?" in question.text, question.name
            assert question.source


def test_a_plan_has_its_list_too_without_what_only_gravity_asks() -> None:
    plan = section(*wall_lap(160, of="self-adhered-permeable").pieces, gravity=None)
    assert asked(plan, "lap:low.face+up.face") == [
        "lap-width", "clean-and-dry", "pressed-down", "flat-edge",
    ]  # fmt: skip


def test_a_sound_drawing_is_looked_at_as_well() -> None:
    drawn = wall_lap(160, of="self-adhered-permeable")
    result = check_section(drawn, US)
    assert result.findings == ()
    assert [place.key for place in site_list(result, US).places] == ["lap:low.face+up.face"]


def test_places_of_one_key_are_numbered_in_walking_order() -> None:
    wavy = section(
        run("low", "self-adhered-permeable", (0, -500), (0, 500)),
        run(
            "patch",
            "self-adhered-permeable",
            (-4, -300),
            (-4, -200),
            (-90, -150),
            (-4, -100),
            (-4, 0),
        ),
    )
    keys = [place.key for place in listed(wavy).places]
    assert len(keys) == len(set(keys))


def test_roofs_say_to_look_from_where_one_stands_safely() -> None:
    fold = listed(WALL).place("fold:roof.1")
    assert fold is not None
    assert any("guard rails" in caution for caution in fold.cautions)
    assert any("mould" in caution for caution in fold.cautions)


def test_without_a_walk_there_is_nothing_to_look_at() -> None:
    unmarked = replace(wall_lap(100), inside=(), outside=())
    nothing = SectionResult(unmarked, {})
    assert site_list(nothing, US) == SiteList("junction", ())


def cautions(made: Section) -> dict[str, str]:
    return {place.key: " ".join(place.cautions) for place in listed(made).places}


def test_what_stands_as_high_as_a_roof_says_so_whatever_it_is_made_of() -> None:
    told = cautions(
        section(
            run("low", "self-adhered-sheet", (0, -500), (0, 40)),
            run("up", "self-adhered-sheet", (-4, -40), (-4, 300)),
            run("roof", "underlayment", (-8, 200), (-8, 320), (500, 450)),
            run("base", "waterproofing-sheet", (2, -500), (2, -300)),
            inside=[(400, -400)],
        )
    )
    assert "guard rails" in told["lap:roof.face+up.face"]
    assert "guard rails" not in told["lap:low.face+up.face"]


def test_deep_below_the_ground_the_bank_is_told_of() -> None:
    deep = ((-500.0, -2000.0), (500.0, -2000.0), (500.0, 500.0), (-500.0, 500.0))
    told = cautions(
        section(
            run("low", "waterproofing-sheet", (0, -2000), (0, -1500)),
            run("mid", "waterproofing-sheet", (-4, -1600), (-4, 40)),
            run("up", "self-adhered-sheet", (-8, -60), (-8, 500)),
            box("soil", "soil", (-500, -2000), (-60, -100)),
            frame=deep,
            inside=[(400, -400)],
        )
    )
    assert "trench" in told["lap:low.face+mid.face"]
    assert "trench" not in told["lap:mid.face+up.face"]
