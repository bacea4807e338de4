"""What is proposed from a PDF that reviewers wrote into; nothing of it is applied by itself."""

from dataclasses import dataclass

from enclosure_app.model.said.decision import State


@dataclass(frozen=True, slots=True)
class Proposal:
    """What one person said in a PDF about one finding.

    `state` is None where nothing was decided. `when` is ISO 8601. `note` is what the finding's own
    note says, for the person who looks, and `measured` what was measured when it was issued, in mm,
    None where that is not known. `doubt` is one sentence, "" where all of it is certain; `key` is ""
    where it is about no finding that can be told.

    With `lost` nobody said anything: the finding's own note is not in the file any more.
    """

    key: str
    state: State | None
    who: str
    when: str
    remark: str
    section: str = ""
    drawing: str = ""
    revision: str = ""
    page: int = 1
    note: str = ""
    doubt: str = ""
    measured: float | None = None
    lost: bool = False

    @property
    def sure(self) -> bool:
        """Whether nobody has to look before it is taken over."""
        return not self.doubt
