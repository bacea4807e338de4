"""What people said stands in the file, short where nothing unusual is to be told."""

import pytest

from enclosure_app.errors import ListedError
from enclosure_app.files.project.file import project_bytes, project_of
from enclosure_app.files.project.sayings import DECISION, PHOTOGRAPH, SIGN_OFF
from enclosure_app.model import edits
from enclosure_app.model.drawing import Units
from enclosure_app.model.project import Project
from enclosure_app.model.said.decision import Decision, State
from enclosure_app.model.said.photograph import Photograph
from enclosure_app.model.said.remark import Remark
from enclosure_app.model.said.sign_off import SignOff

PICTURE = Photograph(b"jpeg", (4, 3), "IMG_1.jpg", "2026-03-02T10:15:00+02:00")
SAID = Decision("gap:a", State.MENDED, "Ida", "2026-03-02T10:15:00+02:00")


def test_what_is_usual_is_left_out() -> None:
    assert DECISION.write(SAID) == {
        "key": "gap:a",
        "state": "mended",
        "who": "Ida",
        "when": "2026-03-02T10:15:00+02:00",
    }
    assert SIGN_OFF.write(SignOff("Eave", "Ida")) == {"section": "Eave", "who": "Ida"}
    assert PHOTOGRAPH.read(PHOTOGRAPH.write(PICTURE)) == PICTURE


def test_a_photograph_shown_five_times_stands_in_the_file_once() -> None:
    project = Project("House", Units.MM, ())
    for _ in range(5):
        project = edits.set_decision(project, SAID, [PICTURE])
    data = project_bytes(project, "p")
    assert data.count(b"anBlZw==") == 1
    assert project_of(data, "p") == project
    assert project_of(data, "p").id == project.id


def _with(text: str, by: str) -> bytes:
    project = edits.add_remark(Project("House", Units.MM, ()), Remark("gap:a"), [PICTURE])
    written = project_bytes(project, "p").decode()
    assert text in written
    return written.replace(text, by, 1).encode()


@pytest.mark.parametrize(
    ("text", "by", "sentence"),
    [
        (
            f'"photographs": ["{PICTURE.key}"]',
            '"photographs": ["abc"]',
            "remarks[0].photographs[0] names a photograph that is not in the file: remove it",
        ),
        ('"size": [4, 3]', '"size": [4]', f"photographs.{PICTURE.key}.size must be a width and a"),
        ('"carried": []', '"carried": [{"earlier": ["a"], "later": ["", "", ""]}]',
         "carried[0].earlier must hold a revision, a section and a key."),
        ('"site_checks": []', '"site_checks": [{"key": "a", "seen": "fine"}]',
         "site_checks[0].seen cannot be 'fine'; use one of not looked at, in order,"),
    ],
)  # fmt: skip
def test_what_is_wrong_is_said_with_its_place(text: str, by: str, sentence: str) -> None:
    with pytest.raises(ListedError) as caught:
        project_of(_with(text, by), "p")
    assert caught.value.sentences[0].startswith(f"p: {sentence}")
