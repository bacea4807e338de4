"""A proposal is sure as long as nothing is doubted."""

from enclosure_app.files.replies.proposal import Proposal
from enclosure_app.model.said.decision import State


def test_a_doubt_wants_somebody_to_look() -> None:
    plain = Proposal("gap:a+b", State.MENDED, "Zoë", "", "")
    assert plain.sure
    assert not Proposal("gap:a+b", State.MENDED, "Zoë", "", "", doubt="Per disagrees.").sure
    assert not plain.lost
