"""Turns what the DXF library repairs and remarks into notes in the user's words."""

import logging
import re
from collections import Counter
from collections.abc import Iterable, Iterator
from contextlib import contextmanager

from ezdxf.audit import AuditError, Auditor, ErrorEntry

from enclosure_app.files.dxf.words import printable
from enclosure_app.language import later, say, say_count
from enclosure_app.model.drawing import Note, NoteLevel

_LOGGER = logging.getLogger("ezdxf")

# What was found, for one and for many; the note says how often, and whether it could be mended.
_FOUND = {
    AuditError.MISSING_REQUIRED_ROOT_DICT_ENTRY: "missing directory entry",
    AuditError.DUPLICATE_TABLE_ENTRY_NAME: "table entry named twice",
    AuditError.POINTER_TARGET_NOT_EXIST: "reference to something that is not in the file",
    AuditError.TABLE_NOT_FOUND: "missing table",
    AuditError.MISSING_SECTION_TAG: "section without a beginning",
    AuditError.MISSING_SECTION_NAME_TAG: "section without a name",
    AuditError.MISSING_ENDSEC_TAG: "section without an end (the file may have been cut short)",
    AuditError.FOUND_TAG_OUTSIDE_SECTION: "value outside every section",
    AuditError.REMOVED_UNSUPPORTED_SECTION: "section that this version of the format lacks",
    AuditError.REMOVED_UNSUPPORTED_TABLE: "table that this version of the format lacks",
    AuditError.REMOVED_INVALID_GRAPHIC_ENTITY: "entity with invalid data",
    AuditError.REMOVED_INVALID_DXF_OBJECT: "object with invalid data",
    AuditError.REMOVED_STANDALONE_ATTRIB_ENTITY: "attribute that belongs to no insert",
    AuditError.REMOVED_ENTITY_WITH_INVALID_OWNER_HANDLE: "entity that belongs to no layout",
    AuditError.UNDEFINED_LINETYPE: "use of a linetype that is not defined",
    AuditError.UNDEFINED_DIMENSION_STYLE: "use of a dimension style that is not defined",
    AuditError.UNDEFINED_TEXT_STYLE: "use of a text style that is not defined",
    AuditError.UNDEFINED_BLOCK: "use of a block that is not defined",
    AuditError.INVALID_BLOCK_REFERENCE_CYCLE: "block that contains itself",
    AuditError.ORPHANED_LAYOUT_ENTITY: "entity whose layout is missing",
    AuditError.ORPHANED_PAPER_SPACE_BLOCK_RECORD_ENTITY: "paper layout without a page setup",
    AuditError.INVALID_TABLE_HANDLE: "table with an invalid handle",
    AuditError.DECODING_ERROR: "text that does not fit the file's code page",
    AuditError.CREATED_MISSING_OBJECT: "missing object",
    AuditError.RESET_MLINE_STYLE: "multi-line without a style",
    AuditError.INVALID_INTEGER_VALUE: "invalid whole number",
    AuditError.INVALID_FLOATING_POINT_VALUE: "invalid number",
    AuditError.INVALID_OWNER_HANDLE: "entity with an invalid owner",
    AuditError.INVALID_LAYER_NAME: "invalid layer name",
    AuditError.INVALID_COLOR_INDEX: "invalid colour number",
    AuditError.INVALID_LINEWEIGHT: "invalid line weight",
    AuditError.INVALID_EXTRUSION_VECTOR: "invalid extrusion direction",
    AuditError.INVALID_MAJOR_AXIS: "ellipse without a valid axis",
    AuditError.INVALID_VERTEX_COUNT: "polyline with too few vertices",
    AuditError.INVALID_ELLIPSE_RATIO: "ellipse with an invalid ratio of its axes",
    AuditError.INVALID_SPLINE_DEFINITION: "spline with invalid data",
    AuditError.INVALID_HATCH_BOUNDARY_PATH: "hatch with an invalid boundary",
}

_REMARKS = (
    (re.compile("non-unique entity handle"), "handle given to several entities"),
    (re.compile("invalid handle"), "entity with an invalid handle"),
    (re.compile("BLOCK without name"), "block without a name"),
)


def audit_notes(auditor: Auditor) -> tuple[Note, ...]:
    """Return one note for each kind of repair and of fault that could not be repaired."""
    return (
        *_grouped(auditor.fixes, NoteLevel.REPAIRED, later("Repaired: {what}.")),
        *_grouped(auditor.errors, NoteLevel.IGNORED, later("Could not be repaired: {what}.")),
    )


class Remarks(logging.Handler):
    """Holds back what the library logs while a file is read, so that it becomes notes."""

    def __init__(self) -> None:
        super().__init__(logging.WARNING)
        self._messages: list[str] = []

    def emit(self, record: logging.LogRecord) -> None:
        """Keep one message."""
        self._messages.append(record.getMessage())

    def forget(self) -> None:
        """Drop what was logged in an attempt that failed."""
        self._messages.clear()

    def notes(self) -> tuple[Note, ...]:
        """Return one note for each kind of remark."""
        kinds = Counter(_kind(message) for message in self._messages)
        return tuple(
            Note(NoteLevel.REPAIRED, say("Read all the same: {what}.", what=_times(count, kind)))
            for kind, count in kinds.items()
        )


@contextmanager
def heard() -> Iterator[Remarks]:
    """Keep the library's log lines off the screen and return them as remarks."""
    remarks = Remarks()
    passed_on = _LOGGER.propagate
    _LOGGER.addHandler(remarks)
    _LOGGER.propagate = False
    try:
        yield remarks
    finally:
        _LOGGER.removeHandler(remarks)
        _LOGGER.propagate = passed_on


def _grouped(entries: Iterable[ErrorEntry], level: NoteLevel, told: str) -> Iterator[Note]:
    for code, count in Counter(entry.code for entry in entries).items():
        yield Note(level, say(told, what=_times(count, _words(code))))


def _words(code: int) -> str:
    try:
        known = AuditError(code)
    except ValueError:
        return say("fault of an unknown kind ({code})", code=code)
    words = _FOUND.get(known)
    return say(words) if words else known.name.lower().replace("_", " ")


def _kind(message: str) -> str:
    for pattern, words in _REMARKS:
        if pattern.search(message):
            return say(words)
    return printable(re.sub(r"[#\"']?\b[0-9A-F]*\d[0-9A-F]*\b[\"']?", "…", message).rstrip("."))


def _times(count: int, words: str) -> str:
    return say_count(count, "{what} ({count} time)", "{what} ({count} times)", what=words)
