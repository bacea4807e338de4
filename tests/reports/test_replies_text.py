"""Answers of reviewers as text: what, by whom, when, and what is not certain."""

from dataclasses import replace

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
