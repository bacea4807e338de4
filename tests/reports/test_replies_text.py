"""Answers of reviewers as text: what, by whom, when, and what is not certain."""

from dataclasses import replace

from enclosure_app.files.replies.answers import Outcome
from enclosure_app.files.replies.proposal import Proposal
from enclosure_app.model.said.decision import State
from enclosure_app.reports.replies_text import replies_text

MENDED = Proposal(
    "gap:a.end+b.start", State.MENDED, "Zoë", "2026-12-01T09:30:00+01:00", "Taped.\nBoth sides.",
    "Eave", "eave.dxf", note="The sheet stops 30 mm short.\nMeasured 30 mm.",
)  # fmt: skip


def test_a_verdict_is_told_with_its_words() -> None:
    assert replies_text((MENDED,), width=80) == (
        "Eave (eave.dxf)\n"
        "\n"
        "  gap:a.end+b.start: The sheet stops 30 mm short.\n"
        "    Mended by Zoë, 2026-12-01 09:30 (UTC+01:00): Taped. Both sides.\n"
        "\n"
        "1 answer: 1 with a verdict, 0 not sure. Nothing was taken over.\n"
    )


def test_what_is_not_sure_says_why_and_stands_under_its_own_head() -> None:
    note = Proposal("", None, "", "", "No flashing\x07here", page=3, doubt="It is about nothing.")
    told = replies_text((MENDED, replace(MENDED, state=None), note), width=80)
    assert told.count("Eave (eave.dxf)") == 1
    assert "    Remark by Zoë, 2026-12-01" in told
    assert "At no finding\n\n  page 3\n    Remark: No flashing here\n" in told
    assert "    Not sure: It is about nothing.\n" in told
    assert told.endswith("3 answers: 1 with a verdict, 1 not sure. Nothing was taken over.\n")


def test_lines_are_no_longer_than_they_may_be() -> None:
    long = replace(MENDED, remark="word " * 60)
    assert max(map(len, replies_text((long,), width=60).splitlines())) <= 60


def test_no_answers_are_said_too() -> None:
    assert replies_text((), width=80) == "Nobody answered anything.\n"


def test_held_against_a_project_each_answer_says_what_it_comes_to() -> None:
    changed = replace(MENDED, who="Per", doubt="Ida decided since: Open.")
    told = replies_text(
        (MENDED, changed, replace(MENDED, who="Ann", doubt="Known.")),
        width=80,
        outcomes=(Outcome.MATCHES, Outcome.CHANGED, Outcome.SAID),
    )
    assert "    In the project: it matches, and can be taken over as it is.\n" in told
    assert (
        "    Not sure: Ida decided since: Open.\n"
        "    In the project: changed since; look before it is taken over.\n"
    ) in told
    assert "    Note: Known.\n    In the project: already said; nothing would change.\n" in told
    assert told.endswith(
        "Held against the project: 1 can be taken over, 1 changed since, 1 already said.\n"
    )


def test_a_note_that_is_gone_is_no_answer() -> None:
    lost = Proposal("gap:x", None, "", "", "", "Eave", "eave.dxf", doubt="It is gone.", lost=True)
    assert replies_text((lost,), width=80) == (
        "Eave (eave.dxf)\n"
        "\n"
        "  gap:x\n"
        "    Please look: It is gone.\n"
        "\n"
        "Nobody answered anything.\n"
        "Notes are no longer in the file: ask whether that was meant.\n"
    )
