"""Every control has its own layer, told by hue and by line; names hold in every version."""

import re

import ezdxf
from ezdxf.colors import DXF_DEFAULT_COLORS, int2rgb

from enclosure_app.drawing.theme import load_theme
from enclosure_app.model.product import Control
from enclosure_app.reports.dxf.layers import FLAGS, WORDS, layer_of, line_type_tags, mark_layers

LAYERS = {layer.name: layer for layer in mark_layers(load_theme())}
# DXF reference, R12: up to 31 letters, figures, $, _ and -; from R2000 on these are valid too.
OLD_NAME = re.compile(r"[A-Z0-9$_-]{1,31}")


def test_names_are_valid_in_the_oldest_version() -> None:
    assert all(OLD_NAME.fullmatch(name) for name in LAYERS)
    assert set(LAYERS) == {*map(layer_of, Control), FLAGS, WORDS}
    assert layer_of(None) == FLAGS


def test_controls_differ_by_colour_and_by_line() -> None:
    looks = [LAYERS[layer_of(control)] for control in Control]
    assert len({look.number for look in looks}) == len({look.dashes for look in looks}) == 4


def test_the_number_of_the_palette_is_near_to_the_hue_of_the_sheet() -> None:
    """The palette is the one that the DXF library ships."""
    for control in Control:
        layer = LAYERS[layer_of(control)]
        shown = int2rgb(DXF_DEFAULT_COLORS[layer.number])
        meant = int2rgb(int(layer.colour[1:], 16))
        strongest = max(range(3), key=lambda k: meant[k])
        assert shown[strongest] == max(shown), control


def test_what_a_version_does_not_know_is_left_out() -> None:
    layer = LAYERS[layer_of(Control.AIR)]
    like_0 = [(390, "F")]
    assert [code for code, _ in layer.tags("AC1009", like_0)] == [70, 62, 6]
    assert [code for code, _ in layer.tags("AC1015", like_0)] == [70, 62, 6, 370, 390]
    assert [code for code, _ in layer.tags("AC1018", like_0)] == [70, 62, 420, 6, 370, 390]


def test_a_line_type_is_as_long_as_its_parts() -> None:
    tags = line_type_tags(LAYERS[layer_of(Control.HEAT)], 10.0, modern=True)
    lengths = [value for code, value in tags if code == 49]
    assert dict(tags)[40] == sum(abs(float(value)) for value in lengths) == 51.0
    assert (lengths, dict(tags)[73]) == ([32.0, -7.0, 5.0, -7.0], 4)
    doc = ezdxf.new()
    doc.linetypes.add("SAME", [51.0, 32.0, -7.0, 5.0, -7.0])
    same = doc.linetypes.get("SAME").pattern_tags.tags
    assert [value for code, value in same if code == 49] == lengths
