"""Drawings of every version and form, with what CAD programs put into them, for tests of marking."""

from collections import Counter
from io import BytesIO, StringIO
from pathlib import Path

import ezdxf
from ezdxf.document import Drawing

from enclosure_app.files.dxf.document import open_document
from enclosure_app.reports.dxf.entities import Ring, Shape, Told, Way, Words
from enclosure_app.reports.dxf.layers import FLAGS, WORDS, layer_of

VERSIONS = ("R12", "R13", "R14", "R2000", "R2004", "R2007", "R2010", "R2013", "R2018")
FORMS = ("lf", "crlf", "binary")
FREE = 0xB000  # the next free handle of what is drawn here; a reader gives its own from there on
_OLDER = {"R13": b"AC1012", "R14": b"AC1014"}  # which the library reads but does not write

TOLD = Told("gap:2F.end+31.start", "eave.pdf", "Gap: the sheet stops 30 mm short.")
SHAPES: tuple[Shape, ...] = (
    Way(FLAGS, ((0.0, 0.0), (10.0, 5.0)), TOLD, weight=0.7),
    Way(layer_of(None), ((0.0, 0.0), (10.0, 0.0), (10.0, 10.0)), TOLD, closed=True),
    Ring(FLAGS, (5.0, 5.0), 3.25, TOLD),
    Words(WORDS, "Größe 30 mm, жук", (1.0, 1.5), 2.5, TOLD),
    Words(FLAGS, "7", (-4.0, 1.5), 2.5, TOLD, centred=True),
)


def drawn(version: str) -> Drawing:
    """Return a drawing with blocks, layouts, extended data and texts in other scripts."""
    doc = ezdxf.new(version if version not in _OLDER else "R2000", setup=True)
    doc.layers.add("Стена", color=3)
    doc.appids.add("BUREAU")
    block = doc.blocks.new("WINDOW")
    block.add_line((0, 0), (30, 0), dxfattribs={"layer": "Стена"})
    block.add_attdef("NUMBER", (0, 0), "0")
    space = doc.modelspace()
    line = space.add_line((0, 0), (100, 0), dxfattribs={"layer": "Стена"})
    line.set_xdata("BUREAU", [(1000, "kept"), (1040, 3.5)])
    insert = space.add_blockref("WINDOW", (10, 10))
    insert.add_auto_attribs({"NUMBER": "W-1"})
    space.add_text("Изоляция ⌀ 30", dxfattribs={"height": 5})
    space.add_circle((50, 50), 10)
    doc.layout("Layout1").add_text("paper")
    if version not in ("R12", *_OLDER):
        doc.layouts.new("Лист 2").add_text("second sheet")
    if version != "R12":
        space.add_lwpolyline([(0, 0), (5, 5), (9, 1)])
        space.add_mtext("drawn in three\nlines", dxfattribs={"layer": "Стена"})
    doc.entitydb.handles.reset(f"{FREE:X}")  # handles below that may stand in the file by hand
    return doc


def written(version: str, form: str) -> bytes:
    """Return the bytes of `drawn` in a form, with an object of an add-on where there may be one."""
    doc = drawn(version)
    if form == "binary":
        stream = BytesIO()
        doc.write(stream, fmt="bin")
        data = stream.getvalue()
    else:
        text = StringIO()
        doc.write(text)
        data = with_proxy(text.getvalue(), version).encode(doc.output_encoding, "dxfreplace")
    data = data.replace(b"AC1015", _OLDER.get(version, b"AC1015"))
    return data.replace(b"\n", b"\r\n") if form == "crlf" else data


def with_proxy(text: str, version: str) -> str:
    """Put an object of an add-on program in front of the entities, as it is kept by others."""
    if version in ("R12", *_OLDER):
        return text
    proxy = (
        "  0\nACAD_PROXY_ENTITY\n  5\nABCD\n100\nAcDbEntity\n  8\n0\n100\nAcDbProxyEntity\n"
        " 90\n      498\n 91\n      500\n 92\n        4\n310\n0A0B0C0D\n 94\n        0\n"
    )
    return text.replace("  2\nENTITIES\n", "  2\nENTITIES\n" + proxy, 1)


def inventory(path: Path, below: int | None = None) -> Counter[tuple[str, str, str]]:
    """Return every entity of every layout and block by place, kind and handle, without marks.

    With `below` handles from there on are left out: the library gives them to what it makes of its
    own while it reads an old version.
    """
    doc = open_document(path).drawing
    found: Counter[tuple[str, str, str]] = Counter()
    for place in (*doc.layouts, *doc.blocks):
        for entity in place:
            own = entity.dxf.get("layer", "0").startswith("ENCLOSURE-CHECK-")
            if not own and (below is None or int(entity.dxf.handle, 16) < below):
                found[place.name, entity.dxftype(), entity.dxf.handle] += 1
    return found
