"""Marks go between a drawing's bytes and come out again; a library that knows nothing of this reads both."""

import re
from pathlib import Path

import ezdxf
import pytest
from ezdxf.document import Drawing
from ezdxf.enums import TextEntityAlignment
from ezdxf.math import Vec3
from hypothesis import given, settings
from hypothesis import strategies as st

from enclosure_app.drawing.theme import load_theme
from enclosure_app.errors import EnclosureError
from enclosure_app.files.dxf.content import content
from enclosure_app.files.dxf.document import open_document
from enclosure_app.files.dxf.words import printable
from enclosure_app.reports.dxf.entities import Shape
from enclosure_app.reports.dxf.layers import FLAGS, WORDS, mark_layers
from enclosure_app.reports.dxf.splice import MODEL, with_marks, without_marks
from tests.reports.dxf_drawings import FORMS, FREE, SHAPES, VERSIONS, inventory, written

LAYERS = mark_layers(load_theme())


def put(data: bytes, shapes: tuple[Shape, ...] = SHAPES) -> bytes:
    return with_marks(data, {MODEL: shapes}, LAYERS)


def insertions(before: bytes, after: bytes) -> list[bytes]:
    """Return what stands in `after` between the bytes of `before`, line by line, else fail."""
    lines, rest, found = before.splitlines(), after.splitlines(), list[bytes]()
    at = 0
    for line in rest:
        if at < len(lines) and line == lines[at]:
            at += 1
        else:
            found.append(line)
    assert at == len(lines), f"a line of the original is gone: {lines[at]!r}"
    return found


def ours(doc: Drawing) -> list[str]:
    names = (FLAGS, WORDS)
    return [each.dxftype() for each in doc.modelspace() if each.dxf.layer in names]


@pytest.mark.parametrize("form", FORMS)
@pytest.mark.parametrize("version", VERSIONS)
def test_everything_of_the_office_stays_and_the_marks_are_read(
    version: str, form: str, tmp_path: Path
) -> None:
    before, after = tmp_path / "before.dxf", tmp_path / "after.dxf"
    before.write_bytes(written(version, form))
    after.write_bytes(put(before.read_bytes()))
    doc, old = ezdxf.readfile(after), ezdxf.readfile(before)
    assert inventory(after, FREE) == inventory(before, FREE)
    assert len(doc.audit().errors) == len(old.audit().errors) == 0
    assert len(doc.audit().fixes) == len(old.audit().fixes)
    handles = [each.dxf.handle for each in doc.entitydb.values() if each.is_alive]
    assert len(handles) == len(set(handles))
    corner = ["LINE"] * 3 if version in ("R12", "R13") else ["LWPOLYLINE"]
    assert ours(doc) == ["LINE", *corner, "CIRCLE", "TEXT", "TEXT"]
    text, number = doc.modelspace().query("TEXT")[-2:]
    assert (printable(text.plain_text()), text.dxf.height) == ("Größe 30 mm, жук", 2.5)
    assert number.get_hyperlink()[:2] == ("eave.pdf", "Gap: the sheet stops 30 mm short.")
    assert number.get_placement()[1].isclose((-4, 1.5))
    ring = doc.modelspace().query("CIRCLE")[-1]
    assert ring.dxf.center.isclose((5, 5))
    assert ring.dxf.radius == 3.25
    assert "PE_URL" in doc.appids
    assert doc.layers.get(FLAGS).dxf.linetype.upper() == "CONTINUOUS"


@pytest.mark.parametrize("form", FORMS)
@pytest.mark.parametrize("version", VERSIONS)
def test_marks_are_replaced_and_come_out_again(version: str, form: str) -> None:
    data = written(version, form)
    once = put(data)
    assert put(once) == once
    assert put(put(data, SHAPES[:2]), SHAPES) == once
    assert put(without_marks(once)) == once
    assert b"gap:2F.end" not in without_marks(once)
    assert without_marks(data) == data


@pytest.mark.parametrize("form", ["lf", "crlf"])
@pytest.mark.parametrize("version", VERSIONS)
def test_only_the_next_free_handle_changes_among_the_bytes(version: str, form: str) -> None:
    data = written(version, form)
    before, after = data.splitlines(), put(data).splitlines()
    seed = before.index(b"$HANDSEED") + 2 if b"$HANDSEED" in before else None
    if seed:
        assert int(after[seed], 16) > int(before[seed], 16)
        after[seed] = before[seed]
    put_in = insertions(b"\n".join(before), b"\n".join(after))
    assert b"ENCLOSURE_CHECK" in put_in
    assert data.count(b"\r\n") in (0, len(before))
    assert put(data).count(b"\r\n") in (0, put(data).count(b"\n"))


def test_the_next_free_handle_lies_above_all_others() -> None:
    doc_bytes = put(written("R2010", "lf"))
    lines = doc_bytes.splitlines()
    free = int(lines[lines.index(b"$HANDSEED") + 2], 16)
    pairs = zip(lines[::2], lines[1::2], strict=False)
    assert free > max(
        int(value, 16)
        for code, value in pairs
        if code == b"  5" and value != lines[lines.index(b"$HANDSEED") + 2]
    )


@pytest.mark.parametrize("version", ["R2000", "R2007", "R2018"])
def test_new_entries_have_owners_and_what_layer_0_says_of_plotting(
    version: str, tmp_path: Path
) -> None:
    path = tmp_path / "marked.dxf"
    path.write_bytes(put(written(version, "lf")))
    doc = ezdxf.readfile(path)
    flags, zero = doc.layers.get(FLAGS), doc.layers.get("0")
    assert flags.dxf.owner == doc.layers.head.dxf.handle
    assert flags.dxf.get("plotstyle_handle") == zero.dxf.get("plotstyle_handle")
    assert flags.dxf.get("material_handle") == zero.dxf.get("material_handle")
    mark = doc.modelspace()[-1]
    assert mark.dxf.owner == doc.modelspace().layout_key


@pytest.mark.parametrize("version", ["R12", "R2000", "R2010", "R2018"])
def test_marks_are_what_the_library_itself_would_have_written(
    version: str, tmp_path: Path
) -> None:
    """A drawing that it can save whole is marked by it too, and both are read and compared."""
    plain, theirs, ours_ = (tmp_path / f"{name}.dxf" for name in ("plain", "theirs", "ours"))
    plain.write_bytes(written(version, "lf"))
    ours_.write_bytes(put(plain.read_bytes()))
    doc = ezdxf.readfile(plain)
    space, on = doc.modelspace(), {"layer": FLAGS}
    weight = {"lineweight": 70} if version != "R12" else {}
    space.add_line((0, 0), (10, 5), dxfattribs={**on, **weight})
    space.add_circle((5, 5), 3.25, dxfattribs=on)
    number = space.add_text("7", height=2.5, dxfattribs=on)
    number.set_placement((-4, 1.5), align=TextEntityAlignment.MIDDLE_CENTER)
    if version != "R12":
        space.add_lwpolyline([(0, 0), (10, 0), (10, 10)], close=True, dxfattribs=on)
    doc.saveas(theirs)
    spliced = [each for each in marks_in(ours_) if version != "R12" or each not in CHAIN]
    assert marks_in(theirs) == spliced


CHAIN = [  # the closed way, which R12 has as lines
    ("LINE", {"layer": FLAGS, "start": Vec3(a), "end": Vec3(b)})
    for a, b in (((0, 0), (10, 0)), ((10, 0), (10, 10)), ((10, 10), (0, 0)))
]


def marks_in(path: Path) -> list[tuple[str, dict[str, object]]]:
    """Return the kinds and attributes of what stands on the layer of flags, sorted by kind."""
    space = ezdxf.readfile(path).modelspace()
    apart = {"handle", "owner"}
    found = [
        (each.dxftype(), {k: v for k, v in each.dxfattribs().items() if k not in apart})
        for each in space
        if each.dxf.layer == FLAGS
    ]
    return sorted(found, key=lambda pair: pair[0])


def test_dashes_are_as_long_in_a_drawing_that_stretches_all_lines(tmp_path: Path) -> None:
    lengths = []
    for scale in (1.0, 25.0):
        doc = ezdxf.new("R2010")
        doc.header["$LTSCALE"] = scale
        path = tmp_path / "scaled.dxf"
        doc.saveas(path)
        path.write_bytes(with_marks(path.read_bytes(), {MODEL: SHAPES}, LAYERS, 10.0))
        kind = ezdxf.readfile(path).linetypes.get("ENCLOSURE-CHECK-AIR")
        lengths.append(kind.pattern_tags.tags.get_first_value(49) * scale)
    assert lengths == pytest.approx([24.0, 24.0])


def test_a_drawing_of_entities_alone_gets_tables(tmp_path: Path) -> None:
    path = tmp_path / "bare.dxf"
    path.write_bytes(
        b"0\nSECTION\n2\nENTITIES\n0\nLINE\n8\nwall\n10\n0\n20\n0\n11\n9\n21\n9\n0\nENDSEC\n0\nEOF\n"
    )
    path.write_bytes(put(path.read_bytes()))
    doc = ezdxf.readfile(path)
    assert {FLAGS, WORDS} <= {layer.dxf.name for layer in doc.layers}
    assert len(ours(doc)) == 7
    assert put(path.read_bytes()) == path.read_bytes()


def test_lines_without_handles_keep_the_names_that_a_reader_gives_them(tmp_path: Path) -> None:
    path = tmp_path / "bare.dxf"
    line = b"0\nLINE\n8\nwall\n10\n0\n20\n0\n11\n9\n21\n9\n"
    path.write_bytes(b"0\nSECTION\n2\nENTITIES\n" + line * 40 + b"0\nENDSEC\n0\nEOF\n")
    before = content(open_document(path)).items
    path.write_bytes(put(path.read_bytes()))
    assert content(open_document(path)).items == before


def test_what_a_person_drew_on_a_layer_of_marks_is_kept(tmp_path: Path) -> None:
    path = tmp_path / "marked.dxf"
    path.write_bytes(put(written("R2010", "lf")))
    doc = ezdxf.readfile(path)
    doc.modelspace().add_point((77, 77), dxfattribs={"layer": FLAGS})
    doc.layers.get(FLAGS).off()
    doc.saveas(path)
    path.write_bytes(put(path.read_bytes()))
    again = ezdxf.readfile(path)
    assert again.modelspace().query("POINT")[0].dxf.location.isclose((77, 77))
    assert sorted(ours(again)) == ["CIRCLE", "LINE", "LWPOLYLINE", "POINT", "TEXT", "TEXT"]
    assert again.layers.get(FLAGS).is_off()


def test_a_file_that_a_library_cannot_save_is_marked_all_the_same(tmp_path: Path) -> None:
    """Its objects and its add-on's entity hold what nobody here understands."""
    path = tmp_path / "odd.dxf"
    data = written("R2013", "lf").replace(
        b"  0\nENDSEC\n  0\nEOF", b"  0\nODDLY_MADE\n  5\nABCE\n  1\nx\n  0\nENDSEC\n  0\nEOF"
    )
    path.write_bytes(put(data))
    assert b"ODDLY_MADE\n  5\nABCE\n  1\nx\n" in path.read_bytes()
    assert b"ACAD_PROXY_ENTITY\n  5\nABCD\n" in path.read_bytes()
    assert len(ours(ezdxf.readfile(path))) == 5


@pytest.mark.parametrize("form", FORMS)
def test_a_file_that_stops_in_the_middle_is_refused_in_one_sentence(form: str) -> None:
    data = written("R2000", form)
    end = data.rfind(b"ENTITIES") + 300
    with pytest.raises(
        EnclosureError, match=r"stops before the end .* get the whole file again\."
    ):
        put(data[:end])


@pytest.mark.parametrize("form", FORMS)
@pytest.mark.parametrize("version", VERSIONS)
def test_marks_stand_in_the_layout_that_was_checked(
    version: str, form: str, tmp_path: Path
) -> None:
    """The layout shown last stands among the entities, any other within its block."""
    path = tmp_path / "sheets.dxf"
    path.write_bytes(written(version, form))
    before = inventory(path, FREE)
    names = [each.name for each in ezdxf.readfile(path).layouts]
    for name in names:
        block = ezdxf.readfile(path).layout(name).block_record_name
        path.write_bytes(with_marks(path.read_bytes(), {block: SHAPES}, LAYERS))
        doc = ezdxf.readfile(path)
        found = {
            each.name: [e.dxftype() for e in each if e.dxf.layer == FLAGS] for each in doc.layouts
        }
        assert [each for each, kinds in found.items() if kinds] == [name]
        assert found[name][-2:] == ["CIRCLE", "TEXT"]
        assert inventory(path, FREE) == before
        assert not doc.audit().errors
    assert len(names) == (2 if version in ("R12", "R13", "R14") else 3)


@pytest.mark.parametrize(
    "handle", [b"FFFFFFFF", b"FFFFFFFFFFFFFFF", b"7FFFFFFFFFFFFFFF", b"FFFFFFFFFFFFFFFF"]
)
@pytest.mark.parametrize("version", ["R12", "R2000", "R2018"])
def test_handles_that_are_nearly_used_up_leave_some_above_them(
    version: str, handle: bytes, tmp_path: Path
) -> None:
    path = tmp_path / "high.dxf"
    data = written(version, "lf").replace(b"  5\n2F\n", b"  5\n" + handle + b"\n", 1)
    assert handle in data
    once = put(data)
    assert put(once) == once
    path.write_bytes(once)
    handles = re.findall(rb"^  5\n([0-9A-F]+)$", once, re.MULTILINE)
    assert len(set(handles)) == len(handles)
    assert max(map(len, handles)) <= 16
    assert not ezdxf.readfile(path).audit().errors


def test_a_layout_that_the_file_does_not_hold_is_refused_in_one_sentence() -> None:
    with pytest.raises(EnclosureError, match="save it again as DXF"):
        with_marks(written("R2000", "lf"), {"*Paper_Space9": SHAPES}, LAYERS)


@settings(max_examples=25, deadline=None)
@given(
    st.text(st.characters(exclude_categories=()), max_size=300),
    st.sampled_from(["R12", "R2000", "R2013"]),
    st.sampled_from(FORMS),
)
def test_any_words_can_be_written(words: str, version: str, form: str) -> None:
    told = SHAPES[0].told.__class__(words, words, words)
    shapes = (SHAPES[3].__class__(WORDS, words, (0.0, 0.0), 1.0, told),)
    data = written(version, form)
    once = put(data, shapes)
    assert put(once, SHAPES) == put(data)


@settings(max_examples=60, deadline=None)
@given(
    st.lists(
        st.tuples(st.floats(0, 1), st.binary(min_size=1, max_size=6)), min_size=1, max_size=8
    ),
    st.sampled_from(["R12", "R2000", "R2018"]),
    st.sampled_from(FORMS),
)
def test_a_damaged_file_is_refused_or_keeps_every_line(
    damage: list[tuple[float, bytes]], version: str, form: str
) -> None:
    data = bytearray(written(version, form))
    for where, scraps in damage:
        at = int(where * (len(data) - len(scraps)))
        data[at : at + len(scraps)] = scraps
    damaged = bytes(data)
    try:
        once = put(damaged)
    except EnclosureError:
        return
    if form != "binary":
        insertions(b"\n".join(without_seed(damaged)), b"\n".join(without_seed(once)))


def without_seed(data: bytes) -> list[bytes]:
    """Return the lines of a file without the next free handle, which alone may be another one."""
    lines = data.splitlines()
    seeds = {at + 2 for at, line in enumerate(lines) if line == b"$HANDSEED"}
    return [line for at, line in enumerate(lines) if at not in seeds]


def test_every_office_drawing_takes_marks(office_drawings: Path, tmp_path: Path) -> None:
    marked = 0
    for path in sorted(office_drawings.rglob("*.dxf")):
        if path.stat().st_size > 700_000:
            continue  # the large ones are tried with the whole road
        after = tmp_path / path.name
        after.write_bytes(put(path.read_bytes()))
        assert put(after.read_bytes()) == after.read_bytes(), path.name
        before, now = open_document(path), open_document(after)
        assert content(now, all_layers=True) == content(before, all_layers=True), path.name
        assert now.notes == before.notes, path.name
        assert len(now.drawing.audit().errors) == len(before.drawing.audit().errors), path.name
        marked += 1
    assert marked > 10
