"""Groups in the form, the version and the letters of the file that they go into."""

import pytest
from ezdxf.lldxf.tagger import binary_tags_loader

from enclosure_app.files.dxf.records import SIGNATURE, DxfRecords
from enclosure_app.reports.dxf.tags import LONGEST, encoded, fits_a_line, plain, shortened
from tests.reports.dxf_drawings import written


def bare(version: str = "AC1015", page: str = "ANSI_1252", end: str = "\n") -> DxfRecords:
    lines = ["  0", "SECTION", "  2", "HEADER", "  9", "$ACADVER", "  1", version]
    lines += ["  9", "$DWGCODEPAGE", "  3", page] if page else []
    lines += ["  0", "ENDSEC", "  0", "SECTION", "  2", "ENTITIES", "  0", "ENDSEC", "  0", "EOF"]
    return DxfRecords((end.join(lines) + end).encode())


def test_lines_are_written_with_the_files_ends() -> None:
    tags = [(0, "TEXT"), (62, 5), (10, 0.1), (1001, "X")]
    assert (
        encoded(tags, bare(end="\r\n"))
        == b"  0\r\nTEXT\r\n 62\r\n5\r\n 10\r\n0.1\r\n1001\r\nX\r\n"
    )


@pytest.mark.parametrize(
    ("value", "text"),
    [
        (0.0, b"0.0"),
        (-12.5, b"-12.5"),
        (1e-7, b"0.0000001"),
        (1234567.125, b"1234567.125"),
        (1e-12, b"0.0"),
    ],
)
def test_numbers_have_a_point_and_no_exponent(value: float, text: bytes) -> None:
    assert encoded([(10, value)], bare()) == b" 10\n" + text + b"\n"


@pytest.mark.parametrize(
    ("version", "page", "text", "written_as"),
    [
        ("AC1015", "ANSI_1252", "größer", b"gr\xf6\xdfer"),
        ("AC1015", "ANSI_1252", "жук", rb"\U+0436\U+0443\U+043A"),
        ("AC1015", "ANSI_1251", "жук", b"\xe6\xf3\xea"),
        ("AC1009", "", "größer", rb"gr\U+00F6\U+00DFer"),
        ("AC1009", "dos850", "ö", rb"\U+00F6"),
        ("AC1021", "ANSI_1252", "жук 🏠", "жук 🏠".encode()),
        ("AC1015", "ANSI_1252", "🏠", rb"\U+D83C\U+DFE0"),
    ],
)
def test_letters_are_those_of_the_code_page_or_escaped(
    version: str, page: str, text: str, written_as: bytes
) -> None:
    assert encoded([(1, text)], bare(version, page)) == b"  1\n" + written_as + b"\n"


@pytest.mark.parametrize("version", ["R12", "R2000", "R2018"])
def test_binary_groups_are_read_by_the_library(version: str) -> None:
    data = written(version, "binary")
    tags = [(0, "TEXT"), (62, 5), (370, -3), (10, 0.1), (1, "wall"), (1001, "X"), (1000, "words")]
    tags = tags[:2] + tags[3:] if version == "R12" else tags
    header = data[: data.index(b"ENDSEC")]
    read = list(binary_tags_loader(header + b"ENDSEC\x00" + encoded(tags, DxfRecords(data))))
    assert header.startswith(SIGNATURE)
    assert [(tag.code, tag.value) for tag in read[-len(tags) :]] == tags


def test_words_are_put_in_letters_of_line_fonts() -> None:
    assert plain("4 1/2″ × 3′ – “so” ≥ 1 m") == '4 1/2" x 3\' - "so" >= 1 m'
    assert plain("a\nb\tc\x00") == "a b c "
    assert plain("50 %%d ^J") == "50 % %d ^ J"
    assert plain("\udce4") == "�"


def test_long_words_are_cut_however_they_are_written() -> None:
    assert shortened("a" * LONGEST) == "a" * LONGEST
    assert shortened("a" * 400) == "a" * (LONGEST - 3) + "..."
    assert shortened("жук " * 20) == ("жук " * 20)[:43].rstrip() + "..."
    assert fits_a_line("a" * LONGEST)
    assert not fits_a_line("ж" * 36)
