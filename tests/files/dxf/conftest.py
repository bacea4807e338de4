"""A drawing that the tests of reading draw in."""

import ezdxf
import pytest
from ezdxf.document import Drawing


@pytest.fixture
def drawing() -> Drawing:
    """Return an empty drawing with a layer to be seen, one that is off, and one that is frozen."""
    drawing = ezdxf.new("R2010")
    drawing.layers.add("WALL")
    drawing.layers.add("OFF").off()
    drawing.layers.add("COLD").freeze()
    return drawing
