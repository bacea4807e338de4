"""The XML of BCF: what stands where, in the order that the schema asks for (see test_bcf.py)."""

from dataclasses import replace
from datetime import UTC, datetime, timedelta, timezone
from xml.etree import ElementTree as ET

from enclosure_app.reports.bcf.markup import markup, photographs_of, project, version
from enclosure_app.reports.bcf.topics import Found, Topic, topics_of
from enclosure_app.reports.photograph_names import file_names
from tests.reports.decided import NAMELESS, PHOTOGRAPHS, SILL, result

NOW = datetime(2026, 3, 5, 1, 30, tzinfo=timezone(timedelta(hours=2)))


def topic() -> Topic:
    return topics_of([Found(result())], NOW)[0]


def test_moments_are_written_in_utc() -> None:
    root = ET.fromstring(markup(replace(topic(), comments=(), created=NOW), {}))  # noqa: S314
    assert root.findtext("Topic/CreationDate") == "2026-03-04T23:30:00Z"


def test_a_topic_leads_to_its_picture_and_its_comment_too() -> None:
    root = ET.fromstring(markup(topic(), {}))  # noqa: S314  our own
    view = root.find("Viewpoints")
    assert view is not None
    assert [child.tag for child in view] == ["Snapshot", "Index"]
    comment = root.find("Comment/Viewpoint")
    assert comment is not None
    assert comment.attrib == view.attrib


def test_only_photographs_that_are_there_are_named() -> None:
    assert photographs_of(topic(), {SILL.key: "a.jpg"}) == (SILL.key,)
    names = file_names(PHOTOGRAPHS)
    root = ET.fromstring(markup(topic(), names))  # noqa: S314  our own
    told = [each.findtext("ReferencedDocument") for each in root.iter("DocumentReference")]
    assert told == [names[SILL.key], names[NAMELESS.key]]
    text = root.findtext("Comment/Comment") or ""
    assert text.endswith(f"[{names[SILL.key]}, {names[NAMELESS.key]}]")


def test_the_version_and_the_project_are_said() -> None:
    assert ET.fromstring(version()).attrib == {"VersionId": "2.1"}  # noqa: S314  our own
    root = ET.fromstring(project("1f2e", "Boat\x07house"))  # noqa: S314  our own
    assert root.findtext("Project/Name") == "Boat house"
    assert root.findtext("ExtensionSchema") == "extensions.xsd"
    assert NOW.astimezone(UTC).hour == 23
