"""The findings as a BCF file (version 2.1), for a coordinator's program to take in as issues.

A section drawing has no place in a building model, so topics have a picture but no camera: the
standard asks for none, and one on the sheet's plane would lead to a place that is not meant.
"""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from datetime import datetime
from io import BytesIO
from pathlib import Path
from types import MappingProxyType
from typing import TYPE_CHECKING
from zipfile import ZIP_DEFLATED, ZIP_STORED, ZipFile, ZipInfo

from enclosure_app.files.atomic import write_atomically
from enclosure_app.model.finding import Finding
from enclosure_app.model.report import SectionResult
from enclosure_app.model.said.photograph import Photograph
from enclosure_app.progress import gone_through
from enclosure_app.reports.bcf import markup
from enclosure_app.reports.bcf.topics import Found, Topic, all_labels, topics_of
from enclosure_app.reports.names import guid
from enclosure_app.reports.photograph_names import file_names

if TYPE_CHECKING:
    from enclosure_app.reports.bcf.snapshot import Pictures


@dataclass(frozen=True, slots=True)
class BcfJob:
    """One order for a BCF file: of which project, and when it is handed over.

    `scope` is the project's own `id`, the same in every copy.
    """

    project: str
    when: datetime
    scope: str = ""
    photographs: Mapping[str, Photograph] = field(default_factory=lambda: MappingProxyType({}))


def write_bcf(path: Path, found: Sequence[Found], job: BcfJob) -> None:
    """Write the findings of drawings, with their verdicts and photographs, as a BCF file to `path`.

    Raises:
        EnclosureError: `path` cannot be written.
        StoppedError: it is wanted no more.
    """
    write_atomically(path, bcf_bytes(found, job))


def bcf_bytes(found: Sequence[Found], job: BcfJob) -> bytes:
    """Return the bytes of a BCF file: the same for the same findings, words and moment.

    Raises:
        StoppedError: it is wanted no more.
    """
    stream = BytesIO()
    with ZipFile(stream, "w") as archive:
        for name, data in _files(found, job):
            packed = name.endswith((".png", ".jpg"))
            entry = ZipInfo(name, job.when.timetuple()[:6])
            entry.compress_type = ZIP_STORED if packed else ZIP_DEFLATED
            archive.writestr(entry, data)
    return stream.getvalue()


def _files(found: Sequence[Found], job: BcfJob) -> Iterator[tuple[str, bytes]]:
    """Yield the name and the bytes of every file that is packed together."""
    ident = str(guid("project", job.scope or job.project))
    yield "bcf.version", markup.version()
    yield "project.bcfp", markup.project(ident, job.project)
    yield "extensions.xsd", markup.extensions(all_labels())
    names = file_names(job.photographs)
    pictures = _Pictures(found)
    for topic in gone_through(topics_of(found, job.when), 0.0, 1.0, each=1):
        folder = str(topic.guid)
        yield f"{folder}/markup.bcf", markup.markup(topic, names)
        if topic.finding:
            yield f"{folder}/{markup.SNAPSHOT}", pictures.of(topic, topic.finding)
        for key in markup.photographs_of(topic, names):
            yield f"{folder}/{names[key]}", job.photographs[key].data


class _Pictures:
    """Draws the pictures of topics, with Qt, which is loaded only here; section by section."""

    def __init__(self, found: Sequence[Found]) -> None:
        results = [each.result for each in found]
        self._units = {id(s): r.drawing.units for r in results for s in r.sections}
        self._of: SectionResult | None = None
        self._pictures: Pictures | None = None

    def of(self, topic: Topic, finding: Finding) -> bytes:
        """Return the picture of a topic's finding, as a PNG."""
        from enclosure_app.reports.bcf.snapshot import Pictures  # noqa: PLC0415

        if self._pictures is None or self._of is not topic.section:
            self._of = topic.section
            self._pictures = Pictures(topic.section, self._units[id(topic.section)])
        return self._pictures.of(finding, topic.index)
