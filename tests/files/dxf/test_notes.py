"""Repairs and remarks of the library in the user's words, one for each kind."""

import logging

import ezdxf
import pytest
from ezdxf.audit import AuditError, Auditor

from enclosure_app.files.dxf.notes import audit_notes, heard
from enclosure_app.model.drawing import Note, NoteLevel

LIBRARY = logging.getLogger("ezdxf")


def test_repairs_are_grouped_and_counted() -> None:
    auditor = Auditor(ezdxf.new())
    for _ in range(500):
        auditor.fixed_error(AuditError.INVALID_OWNER_HANDLE, "Invalid owner")
    auditor.fixed_error(AuditError.UNDEFINED_BLOCK, "Undefined")
    auditor.add_error(AuditError.INVALID_HATCH_BOUNDARY_PATH, "Bad")
    assert audit_notes(auditor) == (
        Note(NoteLevel.REPAIRED, "Repaired: entity with an invalid owner (500 times)."),
        Note(NoteLevel.REPAIRED, "Repaired: use of a block that is not defined (1 time)."),
        Note(
            NoteLevel.IGNORED,
            "Could not be repaired: hatch with an invalid boundary (1 time).",
        ),
    )


@pytest.mark.parametrize("code", [*AuditError, 99_999])
def test_every_kind_of_repair_has_words(code: int) -> None:
    auditor = Auditor(ezdxf.new())
    auditor.fixed_error(code, "x")
    (note,) = audit_notes(auditor)
    assert "_" not in note.text
    assert "AuditError" not in note.text


def test_remarks_are_held_back_and_grouped(caplog: pytest.LogCaptureFixture) -> None:
    with heard() as remarks:
        LIBRARY.warning("Found non-unique entity handle #C, data validation is required.")
        LIBRARY.warning("Found non-unique entity handle #D, data validation is required.")
        LIBRARY.warning("Something odd in line 17.")
        LIBRARY.warning("Something odd in line 42.")
    assert [note.text for note in remarks.notes()] == [
        "Read all the same: handle given to several entities (2 times).",
        "Read all the same: Something odd in line … (2 times).",
    ]
    assert caplog.records == []


def test_remarks_of_a_failed_attempt_are_forgotten() -> None:
    with heard() as remarks:
        LIBRARY.warning("Ignoring BLOCK without name #2E.")
        remarks.forget()
    assert remarks.notes() == ()


def test_the_library_logs_again_afterwards(caplog: pytest.LogCaptureFixture) -> None:
    with heard():
        pass
    LIBRARY.warning("loud")
    assert [record.message for record in caplog.records] == ["loud"]
