"""ByLayer, ByBlock and layer 0 are replaced by what is drawn."""

import ezdxf
import pytest
from ezdxf.document import Drawing

from enclosure_app.files.dxf.styles import Style, Styles


@pytest.fixture
def drawing() -> Drawing:
    drawing = ezdxf.new("R2010", setup=["linetypes"])
    drawing.layers.add("A-Wall", color=3, linetype="Dashed")
    drawing.layers.add("OFF", color=5).off()
    drawing.layers.add("COLD").freeze()
    return drawing


INSERT = Style("A-Wall", "HIDDEN", 6)


@pytest.mark.parametrize(
    ("written", "insert", "drawn"),
    [
        (("A-Wall", "BYLAYER", 256), None, ("A-Wall", "DASHED", 3)),
        (("a-wall", "ByLayer", 256), None, ("A-Wall", "DASHED", 3)),
        (("A-Wall", "Center", 1), None, ("A-Wall", "CENTER", 1)),
        (("A-Wall", "BYBLOCK", 0), None, ("A-Wall", "CONTINUOUS", 7)),
        (("A-Wall", "BYBLOCK", 0), INSERT, ("A-Wall", "HIDDEN", 6)),
        (("0", "BYLAYER", 256), INSERT, ("A-Wall", "DASHED", 3)),
        (("0", "BYLAYER", 256), None, ("0", "CONTINUOUS", 7)),
        (("0", "BYBLOCK", 2), INSERT, ("A-Wall", "HIDDEN", 2)),
        (("NOWHERE", "BYLAYER", 256), INSERT, ("NOWHERE", "CONTINUOUS", 7)),
    ],
)
def test_properties_are_resolved(
    written: tuple[str, str, int],
    insert: Style | None,
    drawn: tuple[str, str, int],
    drawing: Drawing,
) -> None:
    style = Styles(drawing, all_layers=False).under(insert)[written]
    assert (style.layer, style.linetype, style.color) == drawn


def test_layers_that_are_off_keep_their_colour(drawing: Drawing) -> None:
    style = Styles(drawing, all_layers=False).layer("OFF")
    assert (style.off, style.frozen, style.color) == (True, False, 5)
    assert Styles(drawing, all_layers=False).layer("COLD").frozen


def test_all_layers_are_visible_on_demand(drawing: Drawing) -> None:
    styles = Styles(drawing, all_layers=True)
    assert not styles.layer("OFF").off
    assert not styles.layer("COLD").frozen


def test_layer_0_in_a_block_is_off_with_the_layer_of_the_insert(drawing: Drawing) -> None:
    styles = Styles(drawing, all_layers=False)
    insert = styles.layer("OFF")
    assert styles.under(insert)["0", "BYLAYER", 256].off
    assert not styles.under(insert)["A-Wall", "BYLAYER", 256].off
