"""What of a section is judged: the pieces that come within its frame, and what is found in it.

Who draws a frame round a part of a large drawing asks about that part alone.
"""

from collections.abc import Sequence
from dataclasses import replace

import numpy as np
from numpy.typing import NDArray

from enclosure_app.geometry.outlines.clipping import boxes_of, inside_of, reaching, reaching_points
from enclosure_app.model.finding import Finding
from enclosure_app.model.place import Area
from enclosure_app.model.section import Piece, Section
from enclosure_app.network.fabric.bodies import solid_of


def framed(section: Section, reach: float, last: tuple[Section, Section] | None = None) -> Section:
    """Return a section with only the pieces that come within `reach` mm of its frame's inside.

    It is the very same where all of them do. `last` is an earlier state of it and what was
    returned of that: pieces that are still the same objects are not looked at again.
    """
    known: dict[int, bool] = {}
    if last is not None and last[0].frame == section.frame:
        kept = {id(piece) for piece in last[1].pieces}
        known = {id(piece): id(piece) in kept for piece in last[0].pieces}
    new = [piece for piece in section.pieces if id(piece) not in known]
    known |= dict(zip(map(id, new), _come_within(new, section, reach).tolist(), strict=True))
    if all(known[id(piece)] for piece in section.pieces):
        return section
    return replace(section, pieces=tuple(p for p in section.pieces if known[id(p)]))


def _come_within(pieces: Sequence[Piece], section: Section, reach: float) -> NDArray[np.bool_]:
    """Return which pieces come within the frame; in an upright one few have to be looked at closely."""
    found = inside_of(boxes_of([_run(piece) for piece in pieces]), section.frame)
    close = np.flatnonzero(~found)
    solids = [solid_of(pieces[number].shape) for number in close.tolist()]
    found[close] = reaching(solids, section.frame, reach)
    return found


def _run(piece: Piece) -> Sequence[tuple[float, float]]:
    return piece.shape.outer if isinstance(piece.shape, Area) else piece.shape.points


def in_frame(findings: Sequence[Finding], section: Section, reach: float) -> list[Finding]:
    """Return the findings that lie within `reach` mm of the frame's inside, wholly or in part."""
    places = [[f.at, *(point for run in f.extent for point in run)] for f in findings]
    near = reaching_points([point for each in places for point in each], section.frame, reach)
    ends = np.cumsum([len(each) for each in places], dtype=np.intp)
    starts = ends - [len(each) for each in places]
    return [
        finding
        for finding, start, end in zip(findings, starts.tolist(), ends.tolist(), strict=True)
        if near[start:end].any()
    ]
