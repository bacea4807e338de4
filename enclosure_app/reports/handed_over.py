"""What is handed over to others from one project: its tables, and the order for its BCF file."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field, replace
from datetime import datetime
from pathlib import PurePath
from types import MappingProxyType

from enclosure_app.drawing.sheet.title_block import CAUTION
from enclosure_app.language import say
from enclosure_app.model.limits import Limits
from enclosure_app.model.project import Project
from enclosure_app.model.report import DrawingResult, SectionResult
from enclosure_app.model.said.photograph import Photograph
from enclosure_app.model.said.remark import Remark
from enclosure_app.model.standing.site_checks import seen_in
from enclosure_app.model.standing.standing import new_id
from enclosure_app.model.standing.verdicts import history_of
from enclosure_app.planning.site_list.listing import site_list
from enclosure_app.reports.bcf.archive import BcfJob
from enclosure_app.reports.bcf.topics import Found, Said
from enclosure_app.reports.tables.findings import findings_table, units_of
from enclosure_app.reports.tables.site import SeenList, limits_of_the_list, site_table
from enclosure_app.reports.tables.table import Table


@dataclass(frozen=True, slots=True)
class HandedOver:
    """A project, what was found in it with what was decided, and the figures it was judged by."""

    project: Project
    result: DrawingResult
    limits: Limits

    @property
    def name(self) -> str:
        """What others call it."""
        return self.project.title or PurePath(self.project.source).stem

    @property
    def results(self) -> tuple[DrawingResult, ...]:
        """What was found in each of its drawings, in their order."""
        return by_drawing(self.result)

    @property
    def site_lists(self) -> tuple[SeenList, ...]:
        """The site list of every section, with what was seen."""
        return tuple(
            SeenList(
                site_list(each, self.limits),
                seen_in(self.project, each.section.name),
                result.drawing.file,
            )
            for result in self.results
            for each in result.sections
        )

    def remarks(self, key: str, section: str) -> tuple[Remark, ...]:
        """Return what was said of a finding without deciding, earliest first."""
        said = history_of(self.project, key, section)
        return tuple(each for each in said if isinstance(each, Remark))

    @property
    def found(self) -> tuple[Found, ...]:
        """What was found in each of its drawings, with everything that was said of it."""

        def history(key: str, section: str) -> tuple[Said, ...]:
            return history_of(self.project, key, section)

        return tuple(Found(each, self.project.id, history) for each in self.results)


def by_drawing(result: DrawingResult) -> tuple[DrawingResult, ...]:
    """Return what was found in each of the drawings that the sections of a project are of."""
    files: dict[str, list[SectionResult]] = {}
    for each in result.sections:
        files.setdefault(each.section.file or result.drawing.file, []).append(each)
    return tuple(
        replace(
            result,
            drawing=replace(
                result.drawing, file=file, sections=tuple(each.section for each in sections)
            ),
            sections=tuple(sections),
        )
        for file, sections in files.items()
    ) or (result,)


def bcf_of(handed: Sequence[HandedOver], when: datetime) -> tuple[tuple[Found, ...], BcfJob]:
    """Return what a BCF file is to hold of everything that is handed over at a moment."""
    scopes = [each.project.id for each in handed]
    job = BcfJob(
        project=", ".join(dict.fromkeys(each.name for each in handed)),
        when=when,
        scope=scopes[0] if len(scopes) == 1 else new_id(*scopes),
        photographs=_photographs(handed),
    )
    return tuple(found for each in handed for found in each.found), job


def _photographs(handed: Sequence[HandedOver]) -> Mapping[str, Photograph]:
    every = (each.project.photographs.items() for each in handed)
    return MappingProxyType({key: photograph for held in every for key, photograph in held})


@dataclass(frozen=True, slots=True)
class Tables:
    """The tables of one or several projects, and what has to be said with them."""

    findings: Table
    site: Table
    about: tuple[str, ...]
    photographs: Mapping[str, Photograph] = field(default_factory=lambda: MappingProxyType({}))


def tables_of(handed: Sequence[HandedOver], when: datetime) -> Tables:
    """Return the tables of everything that is handed over, made at a moment."""
    results = [result for each in handed for result in each.results]
    remarks = [each.remarks for each in handed for _ in each.results]
    photographs = _photographs(handed)
    units = units_of(results)
    lists = [listed for each in handed for listed in each.site_lists]
    files = ", ".join(PurePath(result.drawing.file).name for result in results)
    about = (
        say("Drawings: {files}", files=files),
        say("Written: {when} UTC", when=f"{when:%Y-%m-%d %H:%M}"),
        say(CAUTION),
        limits_of_the_list(),
    )
    return Tables(
        findings_table(results, photographs, remarks),
        site_table(lists, units, photographs),
        about,
        photographs,
    )
