"""The project: all that people have made of drawings, as one immutable value."""

from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from types import MappingProxyType
from uuid import uuid4

from enclosure_app.model.drawing import Drawing, Note, Units
from enclosure_app.model.finding import Severity
from enclosure_app.model.layer import LayerRow
from enclosure_app.model.said.carried import Carried
from enclosure_app.model.said.decision import Decision
from enclosure_app.model.said.photograph import Photograph
from enclosure_app.model.said.question import Question
from enclosure_app.model.said.remark import Remark
from enclosure_app.model.said.sign_off import SignOff
from enclosure_app.model.said.site_check import SiteCheck
from enclosure_app.model.section import Section
from enclosure_app.model.underlay import Underlay


@dataclass(frozen=True, slots=True)
class Project:
    """One project. Every edit is a pure function from project to project.

    `source` names the drawing it was read from, "" for one sketched from nothing; a section that is
    of another one says so (`Section.file`). `figures` and `severities` are the project's own over
    the rule book `book`. `layouts` are those of the source. `layers` says what the layers are; the
    first row that holds for a line wins.

    What people said is only ever added to: `decisions`, `remarks`, `site_checks`, `sign_offs`, in
    the order they were made, and the `photographs` that they name, by key
    (`model.standing.verdicts`). `revision` tells the drawing from those that it took the place of,
    and `carried` which of their findings are found here, `questions` of which nobody knows
    (`model.standing.questions`). `past` are the states that its parts were in when it was kept
    (`model.states`). `id` is the same in all copies of one project; two projects that hold the
    same are equal all the same, whatever they were.
    """

    title: str
    units: Units
    sections: tuple[Section, ...]
    source: str = ""
    notes: tuple[Note, ...] = ()
    book: str = ""
    figures: Mapping[str, float] = field(default_factory=lambda: MappingProxyType({}))
    severities: Mapping[str, Severity] = field(default_factory=lambda: MappingProxyType({}))
    decisions: tuple[Decision, ...] = ()
    underlays: tuple[Underlay, ...] = ()
    layouts: tuple[str, ...] = ()
    layers: tuple[LayerRow, ...] = ()
    remarks: tuple[Remark, ...] = ()
    site_checks: tuple[SiteCheck, ...] = ()
    sign_offs: tuple[SignOff, ...] = ()
    photographs: Mapping[str, Photograph] = field(default_factory=lambda: MappingProxyType({}))
    revision: str = ""
    carried: tuple[Carried, ...] = ()
    questions: tuple[Question, ...] = ()
    past: tuple[str, ...] = field(default=(), compare=False)
    id: str = field(default_factory=lambda: uuid4().hex, compare=False)


def project_from(drawing: Drawing) -> Project:
    """Return a project that holds what was read from a drawing, and nothing else.

    It is called the same whenever the drawing is read, so that what is handed over of it today
    and tomorrow is known to be of one project before anybody saves it.
    """
    project = Project(
        title=drawing.title,
        units=drawing.units,
        sections=drawing.sections,
        source=drawing.file,
        notes=drawing.notes,
        layouts=drawing.layouts,
    )
    return replace(project, id=drawing.identity) if drawing.identity else project


def drawing_of(project: Project) -> Drawing:
    """Return the drawing that the checker is to judge: ``drawing_of(project_from(d)) == d``."""
    return Drawing(
        file=project.source,
        units=project.units,
        sections=project.sections,
        notes=project.notes,
        layouts=project.layouts,
        title=project.title,
        identity=project.id,
    )
