"""What is handed over to others from one project: its tables, and the order for its BCF file."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from datetime import datetime
from pathlib import PurePath
from types import MappingProxyType

from enclosure_app.drawing.sheet.title_block import CAUTION
from enclosure_app.language import say
from enclosure_app.model.limits import Limits
from enclosure_app.model.project import Project
from enclosure_app.model.report import DrawingResult
from enclosure_app.model.said.photograph import Photograph
from enclosure_app.model.standing.site_checks import seen_in
from enclosure_app.model.standing.verdicts import history_of
from enclosure_app.planning.site_list.listing import site_list
from enclosure_app.reports.bcf.archive import BcfJob
from enclosure_app.reports.bcf.topics import Said
from enclosure_app.reports.tables.findings import findings_table, units_of
from enclosure_app.reports.tables.site import SeenList, limits_of_the_list, site_table
from enclosure_app.reports.tables.table import Table


@dataclass(frozen=True, slots=True)
class HandedOver:
    """A project, what was found in it with what was decided, and the figures it was judged by.

    `scope` is that of `names.finding_guid`.
    """

    project: Project
    result: DrawingResult
    limits: Limits
    scope: str = ""

    @property
    def site_lists(self) -> tuple[SeenList, ...]:
        """The site list of every section, with what was seen."""
        return tuple(
            SeenList(site_list(each, self.limits), seen_in(self.project, each.section.name))
            for each in self.result.sections
        )

    def bcf_job(self, when: datetime) -> BcfJob:
        """Return the order for a BCF file that is handed over at a moment."""
        name = self.project.title or PurePath(self.project.source).stem

        def history(key: str, section: str) -> tuple[Said, ...]:
            return history_of(self.project, key, section)

        return BcfJob(name, when, self.scope, history, self.project.photographs)


@dataclass(frozen=True, slots=True)
class Tables:
    """The tables of one or several projects, and what has to be said with them."""

    findings: Table
    site: Table
    about: tuple[str, ...]
    photographs: Mapping[str, Photograph] = field(default_factory=lambda: MappingProxyType({}))


def tables_of(handed: Sequence[HandedOver], when: datetime) -> Tables:
    """Return the tables of everything that is handed over, made at a moment."""
    results = [each.result for each in handed]
    photographs = {key: p for each in handed for key, p in each.project.photographs.items()}
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
        findings_table(results, photographs),
        site_table(lists, units, photographs),
        about,
        MappingProxyType(photographs),
    )
