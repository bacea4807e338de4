"""Answers as JSON keep to their contract."""

import json
from dataclasses import replace

import jsonschema
import pytest

from enclosure_app.files.replies.answers import Outcome
from enclosure_app.files.replies.proposal import Proposal
from enclosure_app.model.said.decision import State
from enclosure_app.reports.replies_json import replies_json
from enclosure_app.resources import resource

MENDED = Proposal(
    "gap:a+b", State.MENDED, "Zoë", "2026-12-01T09:30:00+01:00", "Taped.", "Eave", "eave.dxf", "r1",
    page=2, note="A gap.",
)  # fmt: skip
LOST = Proposal("gap:c+d", None, "", "", "", "Eave", "eave.dxf", doubt="It is gone.", lost=True)
NOTE = Proposal("", None, "Per", "", "No flashing", page=3, doubt="It is about nothing.")
SCHEMA = json.loads(resource("replies.schema.json").read_text(encoding="utf-8"))


def test_what_was_read_is_told_whole() -> None:
    told = json.loads(replies_json((MENDED, LOST, NOTE), "back.pdf"))
    jsonschema.validate(told, SCHEMA)
    first, lost, note = told["answers"]
    assert (told["pdf"], told["project"]) == ("back.pdf", None)
    assert first == {
        "drawing": "eave.dxf", "section": "Eave", "revision": "r1", "key": "gap:a+b", "page": 2,
        "who": "Zoë", "when": "2026-12-01T09:30:00+01:00", "verdict": "mended", "remark": "Taped.",
        "note": "A gap.", "sure": True, "doubt": "", "outcome": None,
    }  # fmt: skip
    assert (lost["note"], lost["sure"], lost["verdict"]) == (None, False, None)
    assert (note["key"], note["when"], note["page"]) == (None, None, 3)


@pytest.mark.parametrize("outcome", Outcome)
@pytest.mark.parametrize("state", State)
def test_every_verdict_and_every_outcome_is_in_the_contract(
    outcome: Outcome, state: State
) -> None:
    text = replies_json((replace(MENDED, state=state),), "a.pdf", "a.enclosure.json", (outcome,))
    told = json.loads(text)
    jsonschema.validate(told, SCHEMA)
    assert told["answers"][0]["outcome"] == outcome.value
    assert text.isascii()
