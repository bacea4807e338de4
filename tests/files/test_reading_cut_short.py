"""A drawing that stops in the middle is not judged; one that lacks only its last line is."""

from pathlib import Path

import pytest

from enclosure_app.errors import EnclosureError
from enclosure_app.files.maps.layer_map import load_layer_map
from enclosure_app.files.reading import ReadOptions, read_drawing
from enclosure_app.resources import sample

WHOLE = sample("eave-flush.dxf")
OPTIONS = ReadOptions(layer_map=load_layer_map(sample("layers-second-office.toml")))


@pytest.mark.parametrize("share", [0.1, 0.5, 0.9])
def test_a_drawing_cut_short_in_its_entities_is_refused(tmp_path: Path, share: float) -> None:
    """Pieces are missing, and a clean report would be a lie."""
    data = WHOLE.read_bytes()
    start = data.index(b"ENTITIES")
    end = data.index(b"ENDSEC", start)
    cut = tmp_path / "cut.dxf"
    cut.write_bytes(data[: start + int(share * (end - start))])
    with pytest.raises(EnclosureError, match=r"cut short in the middle of what it draws"):
        read_drawing(cut, OPTIONS)


def test_a_drawing_that_lacks_only_its_end_mark_is_judged(tmp_path: Path) -> None:
    data = WHOLE.read_bytes()
    cut = tmp_path / "cut.dxf"
    cut.write_bytes(data[: data.rindex(b"EOF")])
    found, whole = read_drawing(cut, OPTIONS), read_drawing(WHOLE, OPTIONS)
    assert found.sections[0].pieces == whole.sections[0].pieces
