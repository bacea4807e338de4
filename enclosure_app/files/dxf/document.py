"""Opens a DXF file, whole, damaged or binary, and says what had to be repaired."""

import re
import struct
from collections.abc import Callable
from dataclasses import dataclass, replace
from io import BytesIO
from pathlib import Path

from ezdxf import recover
from ezdxf.document import Drawing
from ezdxf.filemanagement import dxf_file_info, read, readfile
from ezdxf.lldxf.const import DXFError

from enclosure_app.errors import EnclosureError
from enclosure_app.files.dxf.memory import kept_in_use
from enclosure_app.files.dxf.notes import audit_notes, heard
from enclosure_app.files.dxf.salvage import as_text, mended
from enclosure_app.files.dxf.words import printable
from enclosure_app.language import later, say, say_count
from enclosure_app.model.drawing import Note, NoteLevel
from enclosure_app.progress import told_text

# What the library raises on damaged files (found by cutting and scrambling files, see the tests).
_UNREADABLE = (
    DXFError,
    ValueError,
    TypeError,
    KeyError,
    IndexError,
    AttributeError,
    OverflowError,
    AssertionError,
    StopIteration,
    struct.error,
    OSError,  # how the library says that a file is no DXF
)
PARSED = 0.25
"""The share of reading a drawing that is done when its file is read through."""
Attempt = Callable[[Path], tuple[Drawing, tuple[Note, ...]]]
_ENTITIES = re.compile(rb"ENTITIES\s*[\r\n\x00]")
_BINARY = b"AutoCAD Binary DXF\r\n\x1a\x00"
_FOREIGN = {
    b"%PDF": later("a PDF"),
    b"PK\x03\x04": later("a ZIP archive"),
    b"\x89PNG": later("a picture"),
    b"\xff\xd8\xff": later("a picture"),
}


@dataclass(frozen=True, slots=True)
class Document:
    """An opened drawing.

    `insunits` is $INSUNITS (0: not said), `measurement` is $MEASUREMENT (0 imperial, 1 metric, None
    where absent), `version` the release of the format such as ``R2013``, `layouts` the names of
    the paper layouts. A file that is `cut_short` stops in the middle of what it draws.
    """

    drawing: Drawing
    notes: tuple[Note, ...]
    insunits: int
    measurement: int | None
    version: str
    layouts: tuple[str, ...]
    cut_short: bool = False


def open_document(path: Path) -> Document:
    """Open a DXF file (R12 to R2018, ASCII or binary, any code page).

    A file that does not follow the format is repaired as far as possible; what was repaired is in
    the notes.

    Raises:
        EnclosureError: there is no such file, it may not be read, it is no DXF, or nothing of it
            can be saved.
    """
    head = _head(path)
    attempts = _attempts(path, head)
    with heard() as remarks, kept_in_use():
        for attempt in attempts:
            remarks.forget()
            try:
                drawing, repairs = attempt(path)
                notes = (*repairs, *remarks.notes())
                return replace(_document(drawing, head, notes), cut_short=_is_cut_short(path))
            except _UNREADABLE:
                continue
    raise EnclosureError(_beyond_repair(path))


def _document(drawing: Drawing, head: bytes, notes: tuple[Note, ...]) -> Document:
    names = drawing.layouts.names_in_taborder()
    return Document(
        drawing=drawing,
        notes=notes,
        insunits=_whole(drawing, "$INSUNITS", head) or 0,
        measurement=_whole(drawing, "$MEASUREMENT", head),
        version=drawing.acad_release,
        layouts=tuple(printable(name) for name in names if name.casefold() != "model"),
    )


def _whole(drawing: Drawing, name: str, head: bytes) -> int | None:
    """Return a header variable, if the file itself sets it: the library adds values of its own."""
    value = drawing.header.get(name) if name.encode() in head else None
    return value if isinstance(value, int) else None


def _head(path: Path) -> bytes:
    """Return the beginning of a file, or refuse it in one sentence."""
    name = _name(path)
    try:
        if path.is_dir():
            raise EnclosureError(say("{name} is a folder: name a DXF file in it.", name=name))
        if path.exists() and not path.is_file():
            raise EnclosureError(say("{name} is not a regular file: name a DXF file.", name=name))
        with path.open("rb") as file:
            head = file.read(65_536)
    except FileNotFoundError:
        raise EnclosureError(
            say("There is no file {name}: check its name and its folder.", name=name)
        ) from None
    except PermissionError:
        raise EnclosureError(
            say(
                "{name} may not be read: ask for the right to read it, or take a copy of your "
                "own.",
                name=name,
            )
        ) from None
    except (OSError, ValueError) as fault:
        reason = fault.strerror if isinstance(fault, OSError) else say("its name is not valid")
        raise EnclosureError(
            say("{name} cannot be opened ({reason}): check its name.", name=name, reason=reason)
        ) from None
    if not head.strip():
        raise EnclosureError(say("{name} is empty: export the drawing as DXF again.", name=name))
    return head


def _attempts(path: Path, head: bytes) -> tuple[Attempt, ...]:
    """Return the ways to read a file, each less strict than the one before."""
    binary = head.startswith(_BINARY)
    if b"SECTION" not in head:
        raise EnclosureError(_beyond_repair(path) if binary else _no_dxf(path, head))
    if binary:
        return _as_binary, _mended
    if not _has_end(path):
        # The library's repair drops the section that was cut short, drawing and all.
        return _as_written, _mended, _repaired
    return _as_written, _repaired, _mended


def _as_binary(path: Path) -> tuple[Drawing, tuple[Note, ...]]:
    return readfile(path), ()


def _as_written(path: Path) -> tuple[Drawing, tuple[Note, ...]]:
    encoding = dxf_file_info(path).encoding
    with told_text(path, encoding, "surrogateescape", PARSED) as text:
        return read(text), ()


def _repaired(path: Path) -> tuple[Drawing, tuple[Note, ...]]:
    drawing, auditor = recover.readfile(path)
    return drawing, (_warning(path), *audit_notes(auditor))


def _mended(path: Path) -> tuple[Drawing, tuple[Note, ...]]:
    data = path.read_bytes()
    text, lost = mended(as_text(data) if data.startswith(_BINARY) else data)
    drawing, auditor = recover.read(BytesIO(text))
    text_of_loss = say_count(
        lost,
        "Damaged beyond repair and left out: {count} part.",
        "Damaged beyond repair and left out: {count} parts.",
    )
    note = Note(NoteLevel.IGNORED, text_of_loss)
    return drawing, (_warning(path), *((note,) if lost else ()), *audit_notes(auditor))


def _has_end(path: Path) -> bool:
    with path.open("rb") as file:
        file.seek(max(0, path.stat().st_size - 1024))
        return b"EOF" in file.read()


def _is_cut_short(path: Path) -> bool:
    """Whether the file stops before, or in the middle of, the entities that it draws."""
    if _has_end(path):
        return False
    data = path.read_bytes()
    entities = _ENTITIES.search(data)
    return entities is None or b"ENDSEC" not in data[entities.end() :]


def _warning(path: Path) -> Note:
    if _has_end(path):
        text = say(
            "The file does not follow the DXF format and was repaired: look whether all is there."
        )
    else:
        text = say("The file has no end mark: what is there was read, but more may be missing.")
    return Note(NoteLevel.REPAIRED, text)


def _beyond_repair(path: Path) -> str:
    return say(
        "{name} is damaged so badly that nothing in it can be read: export the drawing as DXF "
        "again.",
        name=_name(path),
    )


def _no_dxf(path: Path, head: bytes) -> str:
    name = _name(path)
    if head[:4] == b"AC10" and head[4:6].isdigit():
        return say("{name} is a DWG drawing: save it as DXF and open that.", name=name)
    for start, what in _FOREIGN.items():
        if head.startswith(start):
            return say(
                "{name} is {what}, not a DXF drawing: export the drawing as DXF.",
                name=name,
                what=say(what),
            )
    return say(
        "{name} is not a DXF drawing: export the drawing as DXF, ASCII or binary.", name=name
    )


def _name(path: Path) -> str:
    return f"“{printable(str(path))}”"
