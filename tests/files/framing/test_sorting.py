"""Everything that is read ends up where it belongs."""

from enclosure_app.files.dxf.raw import RawLeader, RawPath, RawText, Tag
from enclosure_app.files.framing.sorting import Sorting, strokes_of
from enclosure_app.files.maps.catalogue import load_products
from enclosure_app.files.maps.layer_map import LayerMap, LayerRow
from enclosure_app.files.maps.meaning import Meaning

MAP = LayerMap(
    (
        LayerRow("SHEET", product="housewrap"),
        LayerRow("CROP", role="frame"),
        LayerRow("CUT", role="break"),
        LayerRow("HIDE", role="ignore"),
    ),
    load_products(),
)
RUN = ((0.0, 0.0), (0.0, 900.0))


def path(layer: str, handle: str, *, closed: bool = False) -> RawPath:
    points = (*RUN, (400.0, 900.0)) if closed else RUN
    return RawPath(Tag("LWPOLYLINE", handle, layer), points, closed=closed)


ITEMS = [
    path("SHEET", "1"),
    path("CROP", "2", closed=True),
    path("CUT", "3"),
    path("HIDE", "4"),
    path("A-ANNO", "5"),
    RawText(Tag("TEXT", "6", "A-ANNO"), "INSIDE", (10.0, 10.0)),
    RawLeader(Tag("LEADER", "7", "A-ANNO"), RUN),
]


def test_each_layer_is_what_the_map_says() -> None:
    material, notes = (
        Sorting(Meaning(MAP, linework=False), linework=False).take_all(ITEMS).material()
    )
    assert [(piece.name, piece.product) for piece in material.pieces] == [("1", "housewrap")]
    assert [frame.tag.handle for frame in material.frames] == ["2"]
    assert [line.tag.handle for line in material.breaks] == ["3"]
    assert [text.text for text in material.texts] == ["INSIDE"]
    assert [stroke.handle for stroke in material.strokes] == ["7"]  # leaders are always shown
    assert material.taken == ()
    assert notes == ()


def test_linework_is_shown_and_the_rest_is_kept_beside_it() -> None:
    sorting = Sorting(Meaning(MAP, linework=True), linework=True).take_all(ITEMS)
    material, _ = sorting.material()
    assert [stroke.handle for stroke in material.strokes] == ["5", "7"]
    assert [stroke.handle for stroke in material.taken] == ["1", "2", "3", "4"]


def test_a_ring_comes_back_to_its_start_and_a_patch_has_its_holes() -> None:
    ring = path("CROP", "2", closed=True)
    assert [stroke.points for stroke in strokes_of(ring)] == [(*ring.points, ring.points[0])]
    hole = ((1.0, 1.0), (2.0, 1.0), (2.0, 2.0))
    patch = RawPath(ring.tag, ring.points, filled=True, holes=(hole,))
    assert [stroke.points[-1] for stroke in strokes_of(patch)] == [ring.points[0], hole[0]]
    assert all(stroke.filled for stroke in strokes_of(patch))
