"""The name that a drawing has for good, so that what is said of it today is known tomorrow."""

import re
from collections.abc import Iterator
from hashlib import sha256
from pathlib import Path

from enclosure_app.errors import EnclosureError
from enclosure_app.files.dxf.own_marks import drawn_records, own_records
from enclosure_app.files.dxf.records import DxfRecords

_HEADER = 65_536  # bytes within which the header says it
_SAID = re.compile(rb"\$FINGERPRINTGUID[\s\x00\x022]+?\{?([0-9A-Fa-f-]{36})")
_NOBODY = b"0-"  # what a template says, and a program that is not to tell one run from another


def identity_of(path: Path) -> tuple[str, ...]:
    """Return what tells a drawing from others, as the parts of a name.

    A drawing says it itself from R2000 on, and goes on saying so when it is changed (DXF reference,
    "$FINGERPRINTGUID: set at creation time, uniquely identifies a particular drawing"); since
    copies say the same, the name of its file belongs to it. One that says nothing is told by all
    that is drawn in it, without the marks of this program.
    """
    data = path.read_bytes()
    said = _SAID.search(data, 0, _HEADER)  # the library would make one up where there is none
    if said and said[1].strip(_NOBODY):
        return said[1].decode("ascii").upper(), path.name
    return (sha256(b"".join(_drawn(data))).hexdigest(),)


def _drawn(data: bytes) -> Iterator[bytes]:
    """Yield what a file draws, record by record; all of it where there are no records."""
    try:
        file = DxfRecords(data)
    except EnclosureError:
        yield data
        return
    own = set(own_records(file))
    yield from (data[r.start : r.end] for r in drawn_records(file) if r not in own)
