"""What reviewers answered in a marked-up PDF, as JSON for other programs.

The contract is ``resources/replies.schema.json``.
"""

import json
from collections.abc import Sequence
from itertools import zip_longest
from typing import Any

from enclosure_app import __version__
from enclosure_app.files.replies.answers import Outcome
from enclosure_app.files.replies.proposal import Proposal

SCHEMA = 1


def replies_json(
    proposals: Sequence[Proposal],
    pdf: str,
    project: str | None = None,
    outcomes: Sequence[Outcome] | None = None,
) -> str:
    """Return the proposals as JSON text in plain ASCII, which every stream can take.

    Args:
        proposals: What was read.
        pdf: The file it was read from.
        project: The project it was held against, if any.
        outcomes: What each of `proposals` comes to in that project.
    """
    told = zip_longest(proposals, outcomes or ())
    report = {
        "schema": SCHEMA,
        "program": f"enclosure-app {__version__}",
        "pdf": pdf,
        "project": project,
        "answers": [_answer(proposal, outcome) for proposal, outcome in told],
    }
    return json.dumps(report, indent=2, allow_nan=False) + "\n"


def _answer(proposal: Proposal, outcome: Outcome | None) -> dict[str, Any]:
    return {
        "drawing": proposal.drawing,
        "section": proposal.section,
        "revision": proposal.revision,
        "key": proposal.key or None,
        "page": proposal.page,
        "who": proposal.who,
        "when": proposal.when or None,
        "verdict": proposal.state.value if proposal.state else None,
        "remark": proposal.remark,
        "note": None if proposal.lost else proposal.note,
        "sure": proposal.sure,
        "doubt": proposal.doubt,
        "outcome": outcome.value if outcome else None,
    }
