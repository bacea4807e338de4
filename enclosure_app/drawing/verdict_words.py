"""What was decided about a finding, in words: on the sheet and on the screen the same."""

from enclosure_app.language import later, say
from enclosure_app.model.said.decision import Decision, State

_WORDS = {
    State.OPEN: later("Open"),
    State.TO_BE_MENDED: later("To be mended"),
    State.MENDED: later("Mended"),
    State.ACCEPTED: later("Accepted"),
    State.NO_FAULT: later("Not a fault"),
}


def state_word(state: State) -> str:
    """Return the word for a verdict, with a capital."""
    return say(_WORDS[state])


def verdict_line(decision: Decision) -> str:
    """Return what was decided, by whom, when and why: ``Mended by Ida, 2026-03-02: Taped.``."""
    told = state_word(decision.state)
    if decision.who:
        told = say("{state} by {who}", state=told, who=decision.who)
    if decision.when:
        told = f"{told}, {decision.when[:10]}"
    return f"{told}: {decision.remark}" if decision.remark else told


def gone_line(decision: Decision) -> str:
    """Return what an earlier finding was about: its sentence, or its key where none was kept."""
    return decision.about or decision.key
