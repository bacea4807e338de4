"""What a person decided, and which of it needs a reason."""

from enclosure_app.model.said.decision import State


def test_a_verdict_that_lets_stand_needs_a_reason() -> None:
    assert [state for state in State if state.needs_reason] == [State.ACCEPTED, State.NO_FAULT]
