"""Who signed is told with the day, with what changed since, and with the remark."""

from enclosure_app.drawing.sheet.job import SheetJob
from enclosure_app.drawing.sheet.signatures import signatures, signed_of
from enclosure_app.model.said.sign_off import SignOff
from enclosure_app.model.standing.sign_offs import Signed

IDA = Signed(SignOff("Eave", "Ida", "2026-03-02T10:00:00+01:00"), changed=False)
PER = Signed(SignOff("Eave", "Per", "2026-03-03", "without\nthe gutter"), changed=True)
NAMELESS = Signed(SignOff("Wall", "Ada"), changed=False)
JOB = SheetJob(signed=(("Eave", IDA), ("Wall", NAMELESS), ("Eave", PER)))


def test_a_section_has_its_own_signatures_in_their_order() -> None:
    assert signed_of(JOB, "Eave") == (IDA, PER)
    assert signed_of(JOB, "Roof") == ()


def test_each_says_who_when_whether_it_was_changed_since_and_the_remark() -> None:
    assert signatures([IDA, PER, NAMELESS]) == (
        "Ida, 2026-03-02",
        "Per, 2026-03-03 (changed since): without the gutter",
        "Ada",
    )
    assert signatures([]) == ("not signed",)
