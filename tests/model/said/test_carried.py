"""A subject is a key in a section of one revision."""

from enclosure_app.model.said.carried import Carried, Subject


def test_a_link_by_the_program_bears_no_name() -> None:
    link = Carried(Subject("", "Eave", "gap:a"), Subject("B", "Eave", ""))
    assert (link.who, link.on_list, link.later.key) == ("", False, "")
    assert link.earlier == ("", "Eave", "gap:a")
