"""How marks that this program wrote into a drawing are told from what the office drew.

They stand on layers whose names begin with `PREFIX`, and each carries extended data under the name
`APPLICATION`. Checking passes them over, so that a marked drawing is judged like the unmarked one,
and the next marking replaces them. What a person drew on such a layer carries none: it is passed
over too, but said so, and never removed.
"""

from collections.abc import Iterator

from enclosure_app.files.dxf.records import DxfRecords, Record

PREFIX = "ENCLOSURE-CHECK-"
APPLICATION = "ENCLOSURE_CHECK"


def is_own_layer(name: str) -> bool:
    """Whether a layer is one of those that marks are written on, in any case of letters."""
    return name[: len(PREFIX)].upper() == PREFIX


def own_records(file: DxfRecords) -> Iterator[Record]:
    """Yield the records of marks, wherever a program that read and wrote them has put them."""
    return (each for each in drawn_records(file) if _is_own(file, each))


def drawn_records(file: DxfRecords) -> Iterator[Record]:
    """Yield the records of everything that is drawn, in blocks and outside them."""
    for name in ("BLOCKS", "ENTITIES"):
        if name in file.sections:
            yield from file.inside(file.sections[name])


def _is_own(file: DxfRecords, record: Record) -> bool:
    written = file.data[record.start : record.end]
    if APPLICATION.encode() not in written:
        return False
    tags = list(file.tags(record))
    layer = next((tag.text for tag in tags if tag.code == 8), "")
    return is_own_layer(layer) and any(t.code == 1001 and t.text == APPLICATION for t in tags)
