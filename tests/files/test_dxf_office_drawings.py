"""Reads drawings that nobody of the project drew, and compares with a walk of its own.

The walk below uses what the DXF library offers for exploding blocks (`virtual_entities`) and for
extents (`ezdxf.bbox`), none of which the reader itself uses.
"""

import json
from collections import Counter
from collections.abc import Iterable, Iterator
from pathlib import Path

import pytest
from ezdxf import bbox
from ezdxf.entities import DXFGraphic, Insert
from ezdxf.math import BoundingBox, area
from ezdxf.path import Path as Outline
from ezdxf.path import from_hatch

from enclosure_app.errors import EnclosureError
from enclosure_app.files.dxf.content import Content, content
from enclosure_app.files.dxf.document import Document, open_document
from enclosure_app.files.dxf.raw import RawPath

SAGITTA = 0.01
DRAWN = {
    "LINE", "CIRCLE", "ARC", "ELLIPSE", "SPLINE", "LWPOLYLINE", "POLYLINE", "HATCH", "SOLID",
    "TRACE", "3DFACE",
}  # fmt: skip
WRITTEN = {"TEXT", "MTEXT", "ATTRIB", "DIMENSION"}
Box = tuple[float, float, float, float]


@pytest.fixture(scope="module")
def opened(office_drawings: Path) -> list[tuple[Path, Document | str]]:
    """Return every drawing of the folder, or the sentence that refuses it."""
    return [(path, _opened(path)) for path in sorted(office_drawings.rglob("*.dxf"))]


@pytest.fixture
def documents(opened: list[tuple[Path, Document | str]]) -> list[tuple[str, Document]]:
    return [(path.name, document) for path, document in opened if isinstance(document, Document)]


def test_every_office_drawing_is_read_or_refused_in_one_sentence(
    opened: list[tuple[Path, Document | str]],
) -> None:
    assert opened
    for path, document in opened:
        if isinstance(document, str):
            assert document.startswith(f"“{path}” ")
            assert document.count(". ") == 0
            continue
        read = content(document, all_layers=True)
        said = [note.text for note in (*document.notes, *read.notes)]
        json.dumps([said, read.layers, [repr(item) for item in read.items]]).encode("ascii")
        "\n".join((*said, *read.layers, *map(repr, read.items))).encode("utf-8")
        assert all(text.endswith(".") for text in said)


def test_every_drawn_entity_of_the_office_drawings_is_read_in_its_place(
    documents: list[tuple[str, Document]],
) -> None:
    """Entity by entity, in order: the box of what was read against the library's own box."""
    for name, document in documents:
        expected = [
            (entity.dxftype(), box)
            for entity in _walk(document, document.drawing.modelspace())
            if entity.dxftype() in DRAWN and (box := _library_box(entity)) is not None
        ]
        found = list(_read_boxes(content(document, sagitta=SAGITTA)))
        assert [kind for kind, _ in found] == [kind for kind, _ in expected], name
        for (kind, mine), (_, theirs) in zip(found, expected, strict=True):
            # The library draws arcs as Bezier curves, which are off by some 3 in 10 000.
            slack = 2e-3 * max(theirs[2] - theirs[0], theirs[3] - theirs[1]) + 2 * SAGITTA
            off = max(abs(one - two) for one, two in zip(mine, theirs, strict=True))
            assert off <= slack, (name, kind, mine, theirs)


def test_every_text_and_dimension_of_the_office_drawings_is_read(
    documents: list[tuple[str, Document]],
) -> None:
    for name, document in documents:
        expected: Counter[str] = Counter()
        for entity in _walk(document, document.drawing.modelspace()):
            kind = entity.dxftype()
            if kind == "DIMENSION" or (kind in WRITTEN and entity.plain_text().strip()):
                expected[kind] += 1
        found: Counter[str] = Counter()
        for item in content(document).items:
            if not isinstance(item, RawPath):
                kind = item.tag.kind
                found["DIMENSION" if kind.endswith("DIMENSION") else kind] += 1
        assert found == expected, name


def _opened(path: Path) -> Document | str:
    try:
        return open_document(path)
    except EnclosureError as refusal:
        return str(refusal)


def _walk(
    document: Document, entities: Iterable[DXFGraphic], around: str = "0"
) -> Iterator[DXFGraphic]:
    """Yield what is visible, exploding inserts."""
    for entity in entities:
        own = entity.dxf.layer
        layer = around if own == "0" else own
        state = document.drawing.layers.get(layer) if layer in document.drawing.layers else None
        if entity.dxf.get("invisible", 0) or (state and state.is_frozen()):
            continue
        if isinstance(entity, Insert):
            for one in entity.multi_insert() if entity.mcount > 1 else [entity]:
                yield from _walk(document, one.virtual_entities(), layer)
                yield from _walk(document, one.attribs, layer)
        elif not (state and state.is_off()):
            yield entity


def _library_box(entity: DXFGraphic) -> Box | None:
    """Return the box from above; None for surface meshes and what has no length (or area)."""
    if entity.dxftype() == "POLYLINE" and (entity.is_polygon_mesh or entity.is_poly_face_mesh):
        return None
    box: BoundingBox = bbox.extents([entity])
    if not box.has_data or (box.size.x == 0 and box.size.y == 0):
        return None
    if entity.dxftype() == "HATCH" and not any(map(_has_area, from_hatch(entity))):
        return None
    return box.extmin.x, box.extmin.y, box.extmax.x, box.extmax.y


def _has_area(ring: Outline) -> bool:
    """One drawing holds four hatches whose three corners lie on one line."""
    corners = list(ring.flattening(SAGITTA))
    near = [corner - corners[0] for corner in corners]
    return area(near) > 1e-9 * max(corner.magnitude for corner in near) ** 2


def _read_boxes(read: Content) -> Iterator[tuple[str, Box]]:
    """Yield the box of each entity, joining the regions that a hatch came to."""
    boxes: dict[str, tuple[str, list[float], list[float]]] = {}
    for item in read.items:
        if isinstance(item, RawPath):
            handle = item.tag.handle.split(".")[0]
            _, xs, ys = boxes.setdefault(handle, (item.tag.kind, [], []))
            xs.extend(x for x, _ in item.points)
            ys.extend(y for _, y in item.points)
    for kind, xs, ys in boxes.values():
        yield kind, (min(xs), min(ys), max(xs), max(ys))
