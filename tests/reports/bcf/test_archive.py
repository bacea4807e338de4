"""A BCF file: held against the published schema, and read back by a library that did not write it.

The schema of BCF-XML 2.1 (buildingSMART) is the one that the package `bcf-api-xml` carries; the same
package's reader takes the file in.
"""

from collections.abc import Iterator
from dataclasses import replace
from datetime import UTC, datetime
from importlib.util import find_spec
from io import BytesIO
from pathlib import Path
from typing import Any
from zipfile import ZipFile

import pytest
from bcf_api_xml import to_json
from lxml import etree
from PySide6.QtGui import QImage

from enclosure_app.errors import EnclosureError
from enclosure_app.model.report import DrawingResult
from enclosure_app.model.said.decision import Decision
from enclosure_app.model.said.remark import Remark
from enclosure_app.progress import Progress, StoppedError, listening
from enclosure_app.reports.bcf.archive import BcfJob, bcf_bytes, write_bcf
from enclosure_app.reports.bcf.topics import Found
from enclosure_app.reports.names import finding_guid
from tests.drawing import eave
from tests.reports.decided import GONE, MENDED, NAMELESS, PHOTOGRAPHS, SILL, result

WHEN = datetime(2026, 3, 5, 9, 30, tzinfo=UTC)
ASKED = Remark(MENDED.key, "Per", "2026-03-03T07:00:00+01:00", "Show the other side.", id="c" * 32)
NAME = eave.section().name


def said(key: str, section: str) -> tuple[Decision | Remark, ...]:
    assert section == NAME
    return {MENDED.key: (MENDED, ASKED), GONE.key: (GONE,)}.get(key, ())


JOB = BcfJob("Boathouse", WHEN, "1f2e", PHOTOGRAPHS)
FOUND = [Found(result(), "1f2e", said)]


@pytest.fixture(scope="module")
def archive() -> Iterator[ZipFile]:
    with ZipFile(BytesIO(bcf_bytes(FOUND, JOB))) as opened:
        yield opened


@pytest.fixture(scope="module")
def read() -> dict[str, dict[str, Any]]:
    topics = to_json(BytesIO(bcf_bytes(FOUND, JOB)))
    return {topic["guid"]: topic for topic in topics}


def schema_file(name: str) -> Path:
    spec = find_spec("bcf_api_xml")
    assert spec is not None
    assert spec.submodule_search_locations
    return Path(spec.submodule_search_locations[0]) / "Schemas" / name


@pytest.mark.parametrize(
    ("ends", "schema"),
    [
        ("bcf.version", "version.xsd"),
        ("project.bcfp", "project.xsd"),
        ("markup.bcf", "markup.xsd"),
    ],
)
def test_every_file_is_valid_against_the_published_schema(
    archive: ZipFile, ends: str, schema: str
) -> None:
    rules = etree.XMLSchema(etree.parse(schema_file(schema)))
    names = [name for name in archive.namelist() if name.endswith(ends)]
    assert len(names) == (7 if ends == "markup.bcf" else 1)
    for name in names:
        rules.assertValid(etree.fromstring(archive.read(name)))


def test_topics_keep_to_the_words_of_their_own_extension_of_the_schema(
    archive: ZipFile, tmp_path: Path
) -> None:
    (tmp_path / "markup.xsd").write_bytes(schema_file("markup.xsd").read_bytes())
    (tmp_path / "extensions.xsd").write_bytes(archive.read("extensions.xsd"))
    rules = etree.XMLSchema(etree.parse(tmp_path / "extensions.xsd"))
    for name in archive.namelist():
        if name.endswith("markup.bcf"):
            rules.assertValid(etree.fromstring(archive.read(name)))
    other = archive.read(next(n for n in archive.namelist() if n.endswith("markup.bcf")))
    wrong = etree.fromstring(other.replace(b'TopicStatus="Mended"', b'TopicStatus="Forgotten"'))
    assert not rules.validate(wrong)


def test_another_reader_finds_every_finding_under_its_name(
    read: dict[str, dict[str, Any]],
) -> None:
    found = eave.result().findings
    names = [str(finding_guid(each.key, NAME, "1f2e")) for each in found]
    assert set(read) == {*names, str(finding_guid(GONE.key, NAME, "1f2e"))}
    for number, (name, finding) in enumerate(zip(names, found, strict=True), 1):
        topic = read[name]
        assert topic["topic_type"] == finding.severity.value.capitalize()
        assert topic["index"] == str(number)
        assert topic["description"].startswith(finding.message)
        assert finding.advice in topic["description"]


def test_verdicts_and_remarks_are_comments_with_their_moments_in_utc(
    read: dict[str, dict[str, Any]],
) -> None:
    topic = read[str(finding_guid(MENDED.key, NAME, "1f2e"))]
    assert topic["topic_status"] == "Mended"
    assert [(c["author"], str(c["date"])) for c in topic["comments"]] == [
        ("Ida", "2026-03-02 08:15:00+00:00"),
        ("Per", "2026-03-03 06:00:00+00:00"),
    ]
    assert topic["comments"][0]["comment"].startswith("Mended by Ida, 2026-03-02: =taped")
    assert topic["comments"][1]["comment"] == "Show the other side."
    assert (topic["modified_author"], str(topic["creation_date"])) == (
        "Per",
        "2026-03-02 08:15:00+00:00",
    )


def test_what_is_no_longer_found_is_told_without_a_picture(
    read: dict[str, dict[str, Any]],
) -> None:
    topic = read[str(finding_guid(GONE.key, NAME, "1f2e"))]
    assert (topic["topic_type"], topic["topic_status"]) == ("No longer found", "Accepted")
    assert (topic["description"], topic["viewpoints"]) == (f"No longer found: {GONE.about}", [])


def test_every_finding_has_its_picture_and_the_photographs_that_were_taken(
    archive: ZipFile,
) -> None:
    for finding in eave.result().findings:
        folder = finding_guid(finding.key, NAME, "1f2e")
        picture = QImage.fromData(archive.read(f"{folder}/snapshot.png"), "PNG")
        assert (picture.width(), picture.height()) == (860, 898)
    folder = finding_guid(MENDED.key, NAME, "1f2e")
    photographs = [n for n in archive.namelist() if n.endswith(".jpg")]
    assert photographs == [
        f"{folder}/IMG_0042-{SILL.key[:8]}.jpg", f"{folder}/photograph-{NAMELESS.key[:8]}.jpg",
    ]  # fmt: skip
    assert archive.read(photographs[0]) == SILL.data


def test_a_later_export_says_more_of_the_same_topics() -> None:
    later = bcf_bytes([Found(eave.drawing(), "1f2e")], replace(JOB, when=WHEN.replace(month=4)))
    with ZipFile(BytesIO(later)) as opened:
        folders = {name.partition("/")[0] for name in opened.namelist() if "/" in name}
    assert folders == {str(finding_guid(f.key, NAME, "1f2e")) for f in eave.result().findings}


def test_the_same_gives_the_same_bytes() -> None:
    assert bcf_bytes(FOUND, JOB) == bcf_bytes(FOUND, JOB)


def test_a_verdict_without_a_history_is_told_all_the_same() -> None:
    topics = {
        t["guid"]: t
        for t in to_json(BytesIO(bcf_bytes([Found(result(), "1f2e")], BcfJob("", WHEN, "1f2e"))))
    }
    (comment,) = topics[str(finding_guid(MENDED.key, NAME, "1f2e"))]["comments"]
    assert comment["author"] == "Ida"


def test_any_words_make_sound_xml() -> None:
    odd = replace(eave.GAP, message="bell\x07 <&> \udce4 \U0001f3e0", advice="\x00")
    drawing: DrawingResult = eave.drawing(eave.result(findings=(odd,)))
    (topic,) = to_json(BytesIO(bcf_bytes([Found(drawing)], BcfJob("<&>", WHEN))))
    assert topic["description"].startswith("bell  <&>   \U0001f3e0")


def test_it_is_written_whole_or_not_at_all(tmp_path: Path) -> None:
    path = tmp_path / "findings.bcf"
    write_bcf(path, FOUND, JOB)
    assert path.read_bytes() == bcf_bytes(FOUND, JOB)
    with pytest.raises(EnclosureError, match="cannot be written"):
        write_bcf(
            tmp_path / "none" / "out.bcf", [Found(eave.drawing(eave.result(findings=())))], JOB
        )


def test_it_ends_when_it_is_wanted_no_more(tmp_path: Path) -> None:
    progress = Progress()
    progress.stop()
    with pytest.raises(StoppedError), listening(progress.tell):
        write_bcf(tmp_path / "out.bcf", FOUND, JOB)
    assert list(tmp_path.iterdir()) == []
