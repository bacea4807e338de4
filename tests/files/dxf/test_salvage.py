"""Damaged tags cost their own entity and nothing else."""

import io

import ezdxf
import pytest

from enclosure_app.files.dxf.salvage import as_text, mended
from enclosure_app.files.dxf.words import printable

HEAD = b"0\nSECTION\n2\nENTITIES\n"
LINE = b"0\nLINE\n8\nW\n10\n1.0\n20\n2.0\n11\n3.0\n21\n4.0\n"
TAIL = b"0\nENDSEC\n0\nEOF\n"


def test_a_sound_file_stays_as_it_is() -> None:
    assert mended(HEAD + LINE + TAIL) == (HEAD + LINE + TAIL, 0)


@pytest.mark.parametrize("wrong", [b"10\nabc\n", b"62\nred\n", b"62\n\n", b"310\nXYZ\n"])
def test_an_entity_with_a_value_of_the_wrong_type_is_dropped(wrong: bytes) -> None:
    assert mended(HEAD + LINE + b"0\nLINE\n" + wrong + LINE + TAIL) == (
        HEAD + LINE + LINE + TAIL, 1,
    )  # fmt: skip


def test_lines_that_are_no_group_code_are_skipped() -> None:
    assert mended(HEAD + b"noise\n" + LINE + TAIL) == (HEAD + LINE + TAIL, 0)


def test_what_is_cut_off_is_dropped_and_its_section_closed() -> None:
    assert mended(HEAD + LINE + LINE[:20]) == (HEAD + LINE + b"0\nENDSEC\n", 1)


def test_sections_that_draw_nothing_are_left_out() -> None:
    objects = b"0\nSECTION\n2\nOBJECTS\n0\nDICTIONARY\n5\nC\n0\nENDSEC\n"
    assert mended(HEAD + LINE + b"0\nENDSEC\n" + objects + b"0\nEOF\n")[0] == HEAD + LINE + TAIL


def test_header_variables_without_a_name_are_dropped() -> None:
    header = b"0\nSECTION\n2\nHEADER\n9\n$INSUNITS\n70\n4\n"
    assert mended(header + b"9\n7\n70\n1\n" + TAIL) == (header + TAIL, 1)


def test_windows_line_ends_are_accepted() -> None:
    assert mended((HEAD + LINE + TAIL).replace(b"\n", b"\r\n"))[0] == HEAD + LINE + TAIL


@pytest.mark.parametrize("release", ["R12", "R2000", "R2018"])
def test_a_binary_file_says_the_same_as_text(release: str) -> None:
    drawing = ezdxf.new(release)
    drawing.layers.add("Wände")
    drawing.modelspace().add_line((1.25, 2), (3, 4), dxfattribs={"layer": "Wände"})
    stream = io.BytesIO()
    drawing.write(stream, fmt="bin")
    text = as_text(stream.getvalue())
    again = ezdxf.read(io.StringIO(text.decode("ascii")))
    (line,) = again.modelspace()
    assert (line.dxf.start.x, printable(line.dxf.layer)) == (1.25, "Wände")


def test_a_binary_file_cut_short_gives_what_came_before() -> None:
    stream = io.BytesIO()
    ezdxf.new("R2000").write(stream, fmt="bin")
    data = stream.getvalue()
    whole, part = as_text(data), as_text(data[: len(data) // 2 + 1])
    assert whole.startswith(part)
    assert len(part) > len(whole) // 4
