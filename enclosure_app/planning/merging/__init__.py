"""Two copies of one project, reviewed by two people, made one again.

All that either person said is in the result, once. Where they decided differently without knowing
of each other both verdicts stand side by side (`model.standing.verdicts.contested_in`) until somebody
decides again. Where both changed the drawing, or a setting, a person chooses.

    done = merged(ours, theirs)                   with our drawing where the two differ
    done.differences                              to be shown side by side
    merged(ours, theirs, chosen={...}).project    as was chosen
"""

from enclosure_app.planning.merging.differences import Difference, Drawn, Part, Side
from enclosure_app.planning.merging.merging import Merged, merged
from enclosure_app.planning.merging.united import united

__all__ = ["Difference", "Drawn", "Merged", "Part", "Side", "merged", "united"]
