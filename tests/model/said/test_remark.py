"""A remark has no verdict in it."""

from dataclasses import fields

from enclosure_app.model.said.decision import Decision
from enclosure_app.model.said.remark import Remark


def test_a_remark_has_the_fields_of_a_verdict_without_a_state() -> None:
    told = {each.name for each in fields(Remark)}
    assert {each.name for each in fields(Decision)} - told == {"state", "after"}
    assert told < {each.name for each in fields(Decision)}
