"""Nothing that was said is lost, nothing stands twice, and the order of uniting never matters."""

from dataclasses import replace

from hypothesis import given, settings

from enclosure_app.model.project import Project
from enclosure_app.model.said.carried import Carried, Subject
from enclosure_app.model.said.decision import Decision, State
from enclosure_app.model.said.photograph import Photograph
from enclosure_app.planning.merging import united
from tests.planning.merging.histories import copies
from tests.planning.revision.walls import project, wall

MANY = settings(max_examples=100, deadline=None)
SAID = ("decisions", "remarks", "site_checks", "sign_offs", "carried")


def said(of: Project) -> dict[str, object]:
    return {name: getattr(of, name) for name in (*SAID, "photographs", "id")}


@MANY
@given(copies())
def test_everything_said_in_either_copy_is_there_once(pair: tuple[Project, Project]) -> None:
    both = united(*pair)
    for name in SAID:
        ours, theirs, held = (getattr(each, name) for each in (*pair, both))
        assert {*held} == {*ours, *theirs}
        assert len(held) == len({each.id for each in held}) == len({*held})
    assert {*both.photographs} == {*pair[0].photographs, *pair[1].photographs}
    named = {key for each in both.decisions for key in each.photographs}
    assert named <= {*both.photographs}


@MANY
@given(copies())
def test_it_does_not_matter_which_copy_comes_first(pair: tuple[Project, Project]) -> None:
    ours, theirs = pair
    assert said(united(ours, theirs)) == said(united(theirs, ours))


@MANY
@given(copies())
def test_uniting_again_changes_nothing(pair: tuple[Project, Project]) -> None:
    both = united(*pair)
    assert united(both, pair[1]) == both == united(both, both)
    assert said(united(pair[0], both)) == said(both)


@MANY
@given(copies(3))
def test_three_copies_may_be_united_in_any_order(three: tuple[Project, Project, Project]) -> None:
    a, b, c = three
    assert (
        said(united(united(a, b), c))
        == said(united(a, united(b, c)))
        == said(united(united(c, a), b))
    )


@MANY
@given(copies())
def test_no_answer_stands_before_what_it_answers(pair: tuple[Project, Project]) -> None:
    decisions = united(*pair).decisions
    places = {each.id: at for at, each in enumerate(decisions)}
    assert all(places[name] < places[each.id] for each in decisions for name in each.after)


def test_a_section_renamed_in_one_copy_gives_one_reading_of_what_was_said() -> None:
    one = Decision("gap:a", State.MENDED, "Ida", section="Eave", id="1")
    ours = replace(project(wall()), decisions=(one,))
    theirs = replace(project(wall()), decisions=(replace(one, section="North eave"),))
    assert united(ours, theirs).decisions == united(theirs, ours).decisions == (one,)


def test_sayings_without_a_name_of_a_file_written_by_hand_are_kept_too() -> None:
    ours = replace(project(wall()), decisions=(Decision("gap:a", State.MENDED, "Ida"),))
    theirs = replace(project(wall()), decisions=(Decision("gap:a", State.OPEN, "Ida"),))
    assert {e.state for e in united(ours, theirs).decisions} == {State.MENDED, State.OPEN}
    assert united(ours, ours).decisions == ours.decisions


def test_one_picture_of_two_files_is_one() -> None:
    a, b = Photograph(b"x", (1, 1), "b.jpg"), Photograph(b"x", (1, 1), "a.jpg")
    ours = replace(project(wall()), photographs={a.key: a})
    theirs = replace(project(wall()), photographs={b.key: b})
    assert united(ours, theirs).photographs == united(theirs, ours).photographs == {a.key: b}


def test_links_are_united_too() -> None:
    link = Carried(Subject("", "Wall", "a"), Subject("B", "Wall", "b"), id="1")
    ours = replace(project(wall()), carried=(link,))
    theirs = replace(project(wall()), carried=(link, replace(link, id="2")))
    assert united(ours, theirs).carried == theirs.carried
