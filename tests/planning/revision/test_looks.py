"""What became of looks: each joint is one, asked about once, with all that was seen of it."""

from dataclasses import replace
from math import dist

from enclosure_app.model import edits
from enclosure_app.model.place import Area
from enclosure_app.model.said.site_check import Seen, SiteCheck
from enclosure_app.model.standing.questions import open_questions
from enclosure_app.model.standing.site_checks import seen_in
from enclosure_app.planning.revision import Fate
from tests.planning.revision.test_sections import EAVE
from tests.planning.revision.test_site_lists import HANDLED, ITEMS, lists, looked_at, revised
from tests.planning.revision.walls import WALL, project


def test_an_item_is_compared_by_its_place_pieces_and_question() -> None:
    place = lists(project(HANDLED))[0].places[0]
    first = ITEMS[0]
    assert (first.at, first.pieces) == (place.at, frozenset(place.pieces))
    assert first.key == f"{place.key}:{place.questions[0].name}"
    assert first.what == (place.key.split(":")[0], place.questions[0].name)


def test_a_joint_that_may_be_another_one_is_asked_about_once_for_all_its_looks() -> None:
    """Its sheet begins a little higher: nobody can tell whether what was pressed down still is."""
    before = project(HANDLED)
    place = lists(before)[0].places[0]
    for key, _ in place.items:
        look = SiteCheck(key, Seen.IN_ORDER, "Ida", "2026-03-02T10:15:00+02:00", section=EAVE.name)
        before = edits.tick(before, look)
    name = sorted(place.pieces)[0]
    piece = HANDLED.by_name[name]
    points = [*(piece.shape.outer if isinstance(piece.shape, Area) else piece.shape.points)]
    nearest = min(range(len(points)), key=lambda n: dist(points[n], place.at))
    points[nearest] = (points[nearest][0], points[nearest][1] + 25.0)
    shape = replace(
        piece.shape, **{"outer" if isinstance(piece.shape, Area) else "points": tuple(points)}
    )
    changed = replace(
        HANDLED, pieces=tuple(replace(p, shape=shape) if p is piece else p for p in HANDLED.pieces)
    )
    done = revised(before, changed)
    (match,) = done.sections[0].looks
    assert (match.fate, match.old.key, match.new) == (Fate.NOT_SURE, place.key, None)
    assert {*match.old.keys} == {key for key, _ in place.items}
    questions = open_questions(done.project)
    assert {each.earlier.key for each in questions} == {*match.old.keys}
    assert all(each.on_list and each.about.startswith(place.title) for each in questions)
    assert {key.rpartition(":")[0] for each in questions for key in each.asked} == {
        each.key for each in match.asked
    }
    told = done.project
    for each in questions:
        told = edits.say_where(
            told, each.earlier, (EAVE.name, each.asked[0]), ("Jon", ""), on_list=True
        )
    assert open_questions(told) == ()
    assert {*seen_in(told, EAVE.name)} == {each.asked[0] for each in questions}


def test_where_the_section_is_not_known_again_every_look_is_asked_about() -> None:
    item = ITEMS[0]
    done = revised(looked_at(item.key), WALL)
    (match,) = next(each for each in done.sections if each.old == EAVE.name).looks
    assert (match.fate, match.asked) == (Fate.NOT_SURE, ())
    (question,) = open_questions(done.project)
    assert (question.earlier.key, question.section, question.at) == (item.key, "", None)
