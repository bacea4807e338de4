"""The project: everything that a person has made of one drawing, as one immutable value."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from enum import StrEnum
from math import cos, radians, sin
from types import MappingProxyType
from uuid import uuid4

from enclosure_app.model.carried import Carried
from enclosure_app.model.drawing import Drawing, Note, Units
from enclosure_app.model.finding import Severity
from enclosure_app.model.layer import LayerRow
from enclosure_app.model.photograph import Photograph
from enclosure_app.model.place import Point, Points
from enclosure_app.model.question import Question
from enclosure_app.model.remark import Remark
from enclosure_app.model.section import Section
from enclosure_app.model.sign_off import SignOff
from enclosure_app.model.site_check import SiteCheck


class State(StrEnum):
    """What a person decided about a finding."""

    OPEN = "open"
    TO_BE_MENDED = "to be mended"
    MENDED = "mended"
    ACCEPTED = "accepted"
    NO_FAULT = "not a fault"

    @property
    def needs_reason(self) -> bool:
        """Whether it lets stand what was found, so that somebody has to say why."""
        return self in (State.ACCEPTED, State.NO_FAULT)


@dataclass(frozen=True, slots=True)
class Decision:
    """One verdict about the finding with `key`: what, by whom, when (`model.moment`), and why.

    `section` is the name of the section it was found in, since two sections may have pieces of the
    same name ("": any); `about` the finding's sentence as it was then, for when it is gone.
    `photographs` are keys of the project's. `revision` is that of the drawing it was found in.

    `id` is its own for good, in every copy of the project; `after` are the verdicts that were
    known when it was made and that it takes the place of. `edits.set_decision` gives all three.
    """

    key: str
    state: State
    who: str = ""
    when: str = ""
    remark: str = ""
    section: str = ""
    about: str = ""
    photographs: tuple[str, ...] = ()
    revision: str = ""
    id: str = ""
    after: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Underlay:
    """A picture under the drawing: `data` is the file's bytes, `kind` ``png``, ``jpeg`` or ``pdf``.

    It is drawn with its lower left corner `at` (mm), `mm_per_pixel` large, turned by `angle`
    degrees anticlockwise; a pixel of a PDF page is a point of 1/72 inch. `size` is its width and
    height in pixels, and `paper_mm` what one pixel measures on its paper, 0 where nobody knows.
    Until somebody says how large it is, it is not `to_scale`.

    It lies under the section called `section`, "" for all of them. Lines and notes of its page have
    handles that begin with `key` and a colon. `strength` is 0 to 1: how much of the usual paleness
    it is painted with. One that is `locked` is not changed by accident.
    """

    name: str
    kind: str
    data: bytes
    at: Point = (0.0, 0.0)
    mm_per_pixel: float = 1.0
    angle: float = 0.0
    page: int = 0
    size: tuple[float, float] = (0.0, 0.0)
    paper_mm: float = 0.0
    to_scale: bool = False
    section: str = ""
    key: str = ""
    shown: bool = True
    locked: bool = False
    strength: float = 1.0

    @property
    def outline(self) -> Points:
        """Its four corners in mm, anticlockwise from the lower left."""
        x, y = self.at
        across = self.mm_per_pixel * cos(radians(self.angle))
        up = self.mm_per_pixel * sin(radians(self.angle))
        wide, high = self.size
        corners = ((0.0, 0.0), (wide, 0.0), (wide, high), (0.0, high))
        return tuple((x + across * u - up * v, y + up * u + across * v) for u, v in corners)


@dataclass(frozen=True, slots=True)
class Project:
    """One project. Every edit is a pure function from project to project.

    `source` names the drawing it was read from, "" for one sketched from nothing. `figures` and
    `severities` are the project's own over the rule book `book`. `layouts` are those of the
    source. `layers` says what the layers of the source are; the first row that holds for a line
    wins.

    What people said is only ever added to: `decisions`, `remarks`, `site_checks`, `sign_offs`, in
    the order they were made, and the `photographs` that they name, by key (`model.verdicts`).
    `revision` tells the drawing from those that it took the place of, and `carried` which of
    their findings are found here, `questions` of which nobody knows (`model.questions`). `id` is the same in all copies of one project; two projects
    that hold the same are equal all the same.
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
    id: str = field(default_factory=lambda: uuid4().hex, compare=False)


def project_from(drawing: Drawing) -> Project:
    """Return a project that holds what was read from a drawing, and nothing else."""
    return Project(
        title=drawing.title,
        units=drawing.units,
        sections=drawing.sections,
        source=drawing.file,
        notes=drawing.notes,
        layouts=drawing.layouts,
    )


def drawing_of(project: Project) -> Drawing:
    """Return the drawing that the checker is to judge: ``drawing_of(project_from(d)) == d``."""
    return Drawing(
        file=project.source,
        units=project.units,
        sections=project.sections,
        notes=project.notes,
        layouts=project.layouts,
        title=project.title,
    )
