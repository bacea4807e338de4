"""A revised drawing laid over an earlier one: what is the same, and what was said that still holds.

A verdict is about a place in a building. When the office sends the drawing again, pieces may have
moved, been split, joined, renumbered or drawn from the other side, and names mean little. What is
certain is carried on; what is not is asked about; nothing is dropped, and nothing is given to
another finding.

    after = brought_over(before, drawing)              the revised drawing as a project; what is of
                                                       its other drawings stays as it is
    revision = compared(before, found, after, anew)    with what the checks of both found
    revision = looks_carried(revision, before, lists, anew_lists)      what was seen on site, too
    revision.project                                   what was said, carried on where certain
"""

from enclosure_app.planning.revision.bringing import brought_over
from enclosure_app.planning.revision.comparing import Revision, SectionRevision, compared
from enclosure_app.planning.revision.drawings import (
    TakenPlace,
    files_of,
    left_as_they_are,
    taken_place,
)
from enclosure_app.planning.revision.likeness import Same, likeness
from enclosure_app.planning.revision.names import issue_name
from enclosure_app.planning.revision.pieces import How, PieceMatch
from enclosure_app.planning.revision.renumbered import RowsNow, rows_now
from enclosure_app.planning.revision.site_lists import looks_carried
from enclosure_app.planning.revision.spots import Fate, FindingMatch, LookedAt, LookMatch

__all__ = [
    "Fate",
    "FindingMatch",
    "How",
    "LookMatch",
    "LookedAt",
    "PieceMatch",
    "Revision",
    "RowsNow",
    "Same",
    "SectionRevision",
    "TakenPlace",
    "brought_over",
    "compared",
    "files_of",
    "issue_name",
    "left_as_they_are",
    "likeness",
    "looks_carried",
    "rows_now",
    "taken_place",
]
