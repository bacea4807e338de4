"""The boathouse wall with people's verdicts and photographs, for tests of what is handed over."""

from types import MappingProxyType

from enclosure_app.model.report import DrawingResult
from enclosure_app.model.said.decision import Decision, State
from enclosure_app.model.said.photograph import Photograph
from tests.drawing import eave

SILL = Photograph(b"jpeg one", (4, 3), "IMG_0042.JPG")
AGAIN = Photograph(b"jpeg two", (4, 3), "site/IMG_0042.jpg")
NAMELESS = Photograph(b"jpeg three", (4, 3))
PHOTOGRAPHS = {each.key: each for each in (SILL, AGAIN, NAMELESS)}

MENDED = Decision(
    eave.GAP.key, State.MENDED, "Ida", "2026-03-02T10:15:00+02:00", "=taped, both sides",
    about=eave.GAP.message, photographs=(SILL.key, NAMELESS.key), id="a" * 32,
)  # fmt: skip
GONE = Decision(
    "gap:old.end+w1.start", State.ACCEPTED, "Per", "2026-02-01T08:00:00+00:00", "- it stands",
    about="The old strip stops 5 mm short.", id="b" * 32,
)  # fmt: skip


def result() -> DrawingResult:
    """Return the wall with one finding mended and one accepted that is no longer found."""
    decided = MappingProxyType({MENDED.key: MENDED, GONE.key: GONE})
    return eave.drawing(eave.result(decisions=decided))
