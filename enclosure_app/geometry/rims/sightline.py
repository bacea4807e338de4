"""What a level line of sight meets on its way."""

from collections.abc import Sequence

import numpy as np

from enclosure_app.geometry.rims.rims import Floats, rims_of
from enclosure_app.geometry.rims.solids import Solid


def level_crossings(solids: Sequence[Solid], height: float) -> Floats:
    """Return the x of every place where the rims of `solids` cross the level line y = `height`."""
    rims = rims_of(solids)
    (ax, ay), (bx, by) = rims.start.T, rims.end.T
    spans = (ay <= height) != (by <= height)
    share = (height - ay[spans]) / (by[spans] - ay[spans])
    return np.asarray(ax[spans] + share * (bx[spans] - ax[spans]))
