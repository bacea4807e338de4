"""The XML files in a BCF file (buildingSMART, BCF-XML 2.1): version, project, and one markup a topic."""

import re
from collections.abc import Sequence
from datetime import UTC, datetime
from xml.etree import ElementTree as ET

from enclosure_app.reports.bcf.topics import STATES, TYPES, Comment, Topic
from enclosure_app.reports.names import guid

VERSION = "2.1"
SNAPSHOT = "snapshot.png"
_XS = "http://www.w3.org/2001/XMLSchema"
_NO_XML = re.compile("[^\t\n\r\u0020-\ud7ff\ue000-\ufffd\U00010000-\U0010ffff]")  # XML 1.0, 2.2


def version() -> bytes:
    """Return the file that says which version of the standard this is."""
    root = ET.Element("Version", VersionId=VERSION)
    _put(root, "DetailedVersion", VERSION)
    return _written(root)


def project(ident: str, name: str) -> bytes:
    """Return the file that says which project the topics are of."""
    root = ET.Element("ProjectExtension")
    _put(ET.SubElement(root, "Project", ProjectId=_clean(ident)), "Name", name)
    _put(root, "ExtensionSchema", "extensions.xsd")
    return _written(root)


def extensions(labels: Sequence[str]) -> bytes:
    """Return the schema of the words that topics of this program are sorted by."""
    ET.register_namespace("xs", _XS)
    root = ET.Element(f"{{{_XS}}}schema")
    redefined = ET.SubElement(root, f"{{{_XS}}}redefine", schemaLocation="markup.xsd")
    for name, words in (("TopicType", TYPES), ("TopicStatus", STATES), ("TopicLabel", labels)):
        kind = ET.SubElement(redefined, f"{{{_XS}}}simpleType", name=name)
        limits = ET.SubElement(kind, f"{{{_XS}}}restriction", base=name)
        for word in words:
            ET.SubElement(limits, f"{{{_XS}}}enumeration", value=word)
    return _written(root)


def markup(topic: Topic, names: dict[str, str]) -> bytes:
    """Return the file of one topic; `names` are the files of photographs, by their keys."""
    root = ET.Element("Markup")
    file = ET.SubElement(ET.SubElement(root, "Header"), "File", isExternal="true")
    _put(file, "Filename", topic.file)
    _topic(root, topic, names)
    for comment in topic.comments:
        _comment(root, comment, topic, names)
    if topic.finding:
        view = ET.SubElement(root, "Viewpoints", Guid=str(topic.view))
        _put(view, "Snapshot", SNAPSHOT)
        _put(view, "Index", "0")
    return _written(root)


def _topic(root: ET.Element, topic: Topic, names: dict[str, str]) -> None:
    words = {"Guid": str(topic.guid), "TopicType": topic.kind, "TopicStatus": topic.state}
    element = ET.SubElement(root, "Topic", words)
    _put(element, "Title", topic.title)
    _put(element, "Index", str(topic.index))
    for label in topic.labels:
        _put(element, "Labels", label)
    _put(element, "CreationDate", _moment(topic.created))
    _put(element, "CreationAuthor", topic.author)
    if topic.comments:
        last = max(topic.comments, key=lambda comment: comment.at)
        _put(element, "ModifiedDate", _moment(last.at))
        _put(element, "ModifiedAuthor", last.author)
    _put(element, "Description", topic.description)
    for key in photographs_of(topic, names):
        document = ET.SubElement(element, "DocumentReference", isExternal="false")
        document.set("Guid", str(guid("photograph", key)))
        _put(document, "ReferencedDocument", names[key])
        _put(document, "Description", names[key])


def photographs_of(topic: Topic, names: dict[str, str]) -> tuple[str, ...]:
    """Return the keys of the photographs that were put to a topic and that are there, each once."""
    keys = (key for comment in topic.comments for key in comment.photographs)
    return tuple(dict.fromkeys(key for key in keys if key in names))


def _comment(root: ET.Element, comment: Comment, topic: Topic, names: dict[str, str]) -> None:
    element = ET.SubElement(root, "Comment", Guid=str(comment.guid))
    shown = [names[key] for key in comment.photographs if key in names]
    text = f"{comment.text} [{', '.join(shown)}]" if shown else comment.text
    _put(element, "Date", _moment(comment.at))
    _put(element, "Author", comment.author)
    _put(element, "Comment", text)
    if topic.finding:
        ET.SubElement(element, "Viewpoint", Guid=str(topic.view))


def _put(parent: ET.Element, name: str, text: str) -> None:
    ET.SubElement(parent, name).text = _clean(text)


def _clean(text: str) -> str:
    """Return a text without what no XML may hold."""
    return _NO_XML.sub(" ", text)


def _moment(at: datetime) -> str:
    return f"{at.astimezone(UTC):%Y-%m-%dT%H:%M:%S}Z"


def _written(root: ET.Element) -> bytes:
    ET.indent(root)
    return bytes(ET.tostring(root, encoding="utf-8", xml_declaration=True)) + b"\n"
