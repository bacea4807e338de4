"""The questions of the site list: each is told apart by its name, and says where it is from."""

from enclosure_app.planning.site_list.questions import PRACTICE, QUESTIONS

ASKED_TWO_WAYS = {"lap-order", "lap-width", "fasteners", "fall", "drip"}
"""Which way depends on the drawing; what is looked at is one thing."""


def test_a_name_stands_for_one_thing() -> None:
    texts: dict[str, set[str]] = {}
    for question in QUESTIONS:
        texts.setdefault(question.name, set()).add(question.text)
    assert {name for name, said in texts.items() if len(said) > 1} == ASKED_TWO_WAYS


def test_every_question_says_where_it_is_from() -> None:
    assert {question.source for question in QUESTIONS} == {PRACTICE}
    assert all(question.text.endswith(("?", ".")) for question in QUESTIONS)


def test_names_are_put_in_their_places() -> None:
    order = next(each for each in QUESTIONS if "{over}" in each.text)
    told = order.said(over="housewrap", under="felt")
    assert told.text.startswith("Does housewrap lie over felt")
    assert told.name == order.name
