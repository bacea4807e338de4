"""The groups of plain entities, in the order that the DXF reference gives and the library writes."""

import ezdxf
import pytest
from ezdxf.lldxf.tagwriter import TagCollector

from enclosure_app.reports.dxf.entities import Entity, Host, Ring, Told, Way, Words, entities
from enclosure_app.reports.dxf.layers import FLAGS

NONE = Told("gap:1.end")
LINKED = Told("gap:1.end", "eave.pdf", "The sheet stops.")


def codes(entity: Entity) -> list[int]:
    return [code for code, _ in entity.tags if code < 1000]


@pytest.mark.parametrize(
    ("shape", "kind"),
    [
        (Way(FLAGS, ((0, 0), (9, 9)), NONE, weight=0.35), "LINE"),
        (Way(FLAGS, ((0, 0), (9, 9), (9, 0)), NONE, closed=True, weight=0.35), "LWPOLYLINE"),
        (Ring(FLAGS, (0, 0), 5, NONE, weight=0.35), "CIRCLE"),
        (Words(FLAGS, "wall", (0, 0), 2.5, NONE, centred=True), "TEXT"),
    ],
)
def test_groups_come_in_the_order_in_which_the_library_writes_them(
    shape: object, kind: str
) -> None:
    doc = ezdxf.new("R2010")
    like = {"LINE": {"start": (0, 0), "end": (9, 9)}, "CIRCLE": {"radius": 5}}
    attributes = {"layer": FLAGS, "lineweight": 35, **like.get(kind, {})}
    if kind == "TEXT":
        del attributes["lineweight"]
        made = doc.modelspace().add_text("wall", height=2.5, dxfattribs=attributes)
        made.set_placement((0, 0), align=ezdxf.enums.TextEntityAlignment.MIDDLE_CENTER)
    elif kind == "LWPOLYLINE":
        made = doc.modelspace().add_lwpolyline(
            [(0, 0), (9, 9), (9, 0)], format="xy", close=True, dxfattribs=attributes
        )
    else:
        made = doc.modelspace().new_entity(kind, attributes)
    collector = TagCollector(dxfversion="AC1024")
    made.export_dxf(collector)
    theirs = [code for code, _ in ((t.code, t.value) for t in collector.tags)]
    (ours,) = entities(shape, Host("AC1024", "1F"))  # type: ignore[arg-type]
    optional = {43, 42, 40, 41, 38, 50, 51, 7, 71, 39} - (
        {40} if kind in ("TEXT", "CIRCLE") else set()
    )
    assert codes(ours) == [code for code in theirs if code not in (optional | {5})]
    assert ours.tags[0] == (0, kind)


def test_old_versions_have_no_classes_no_owners_and_no_weights() -> None:
    (line,) = entities(Way(FLAGS, ((0, 0), (9, 9)), NONE, weight=0.7), Host("AC1009", "1F"))
    assert codes(line) == [0, 8, 10, 20, 30, 11, 21, 31]


@pytest.mark.parametrize("version", ["AC1009", "AC1012"])
def test_a_closed_way_is_a_chain_of_lines_before_there_are_polylines(version: str) -> None:
    way = Way(FLAGS, ((0, 0), (9, 0), (9, 9)), NONE, closed=True)
    ends = []
    for line in entities(way, Host(version)):
        groups = dict(line.tags)
        ends.append((groups[10], groups[20], groups[11], groups[21]))
    assert ends == [(0, 0, 9, 0), (9, 0, 9, 9), (9, 9, 0, 0)]


def test_a_link_stands_where_cad_programs_look_for_it() -> None:
    (ring,) = entities(Ring(FLAGS, (1, 2), 3, LINKED), Host("AC1015"))
    doc = ezdxf.new()
    theirs = doc.modelspace().add_circle((1, 2), 3)
    theirs.set_hyperlink("eave.pdf", "The sheet stops.")
    own = [(t.code, t.value) for t in theirs.get_xdata("PE_URL")]
    assert ring.tags[-5:] == [(1001, "PE_URL"), *own]
    assert ring.tags[-7:-5] == [(1001, "ENCLOSURE_CHECK"), (1000, "gap:1.end")]


def test_a_handle_comes_first() -> None:
    (ring,) = entities(Ring(FLAGS, (1, 2), 3, NONE), Host("AC1015"))
    assert ring.numbered("2F")[:3] == [(0, "CIRCLE"), (5, "2F"), (100, "AcDbEntity")]
