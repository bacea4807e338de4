"""What two copies differ in and what was united, in the words of the window."""

from typing import Any

from PySide6.QtCore import QCoreApplication

from enclosure_app.drawing.verdict_words import state_word, verdict_line
from enclosure_app.model.finding import Severity
from enclosure_app.model.project import Project
from enclosure_app.model.said.decision import Decision
from enclosure_app.model.said.moment import shown
from enclosure_app.model.said.remark import Remark
from enclosure_app.model.underlay import Underlay
from enclosure_app.planning.merging import Difference, Part
from enclosure_app.window.merging.joining import Counts
from enclosure_app.window.words.labels import rule_name, severity_word
from enclosure_app.window.words.trade import figure_words


def title_of(difference: Difference) -> str:
    """Return what two copies differ in."""
    name = difference.name
    words = {
        Part.DRAWING: say("The two copies are of different revisions of the drawing"),
        Part.SECTION: _section_words(difference),
        Part.TITLE: say("The title"),
        Part.UNITS: say("The units"),
        Part.BOOK: say("The rule book"),
        Part.FIGURE: say("Required figure: {}"),
        Part.LEVEL: say("How loud the rule is: {}"),
        Part.LAYERS: say("What the layers are"),
        Part.UNDERLAY: say("Picture under the drawing: {}").format(name),
    }
    told = words[difference.part]
    if difference.part is Part.FIGURE:
        return told.format(figure_words(name))
    return told.format(rule_name(name)) if difference.part is Part.LEVEL else told


def _section_words(difference: Difference) -> str:
    if difference.ours is None:
        return say("{} was taken away here, and drawn on in the other copy").format(
            difference.name
        )
    if difference.theirs is None:
        return say("{} was taken away in the other copy, and drawn on here").format(
            difference.name
        )
    return say("{} is drawn differently").format(difference.name)


def value_words(part: Part, value: Any) -> str:  # noqa: ANN401  whatever a project holds
    """Return what something is in one copy."""
    if value is None:
        return say("not in this copy")
    if isinstance(value, Severity):
        return severity_word(value)
    if isinstance(value, Underlay):
        return value.name
    if part is Part.LAYERS:
        return say("{} rows").format(len(value))
    if isinstance(value, float):
        return f"{value:g}"
    return str(value) or say("the usual one")


def verdict_words(decision: Decision) -> str:
    """Return a verdict whole: what, who, when, and why."""
    head = (state_word(decision.state), decision.who, shown(decision.when))
    told = " · ".join(filter(None, head))
    return f"{told}\n{decision.remark}" if decision.remark else told


def counts_words(counts: Counts) -> str:
    """Return what comes without a question."""
    told = [
        _few(counts.verdicts, say("1 verdict"), say("{} verdicts")),
        _few(counts.remarks, say("1 remark"), say("{} remarks")),
        _few(counts.looks, say("1 look on site"), say("{} looks on site")),
        _few(counts.signatures, say("1 signature"), say("{} signatures")),
        _few(counts.photographs, say("1 photograph"), say("{} photographs")),
        _few(counts.sections, say("1 section"), say("{} sections")),
        _few(
            counts.drawn,
            say("1 section that was drawn on in there"),
            say("{} sections that were drawn on in there"),
        ),
        _few(
            counts.away,
            say("1 section goes, which was taken away there"),
            say("{} sections go, which were taken away there"),
        ),
        _few(counts.pictures, say("1 picture"), say("{} pictures")),
        _few(counts.settings, say("1 setting"), say("{} settings")),
        _few(counts.links, say("1 answer about a revision"), say("{} answers about a revision")),
    ]
    return ", ".join(filter(None, told)) or say("nothing that is new here")


def new_words(ours: Project, both: Project) -> list[str]:
    """Return each verdict and remark that comes without a question: of what, and what it says."""
    mine: list[Decision | Remark] = [*ours.decisions, *ours.remarks]
    every: list[Decision | Remark] = [*both.decisions, *both.remarks]
    known = {each.id for each in mine}
    return [_said(each) for each in every if each.id not in known]


def _said(said: Decision | Remark) -> str:
    about = " · ".join(filter(None, (said.section, said.about or said.key)))
    words = verdict_line(said) if isinstance(said, Decision) else remark_line(said)
    return f"{about}\n{words}"


def remark_line(remark: Remark) -> str:
    """Return a remark with whose it is."""
    pictures = _few(len(remark.photographs), say("1 photograph"), say("{} photographs"))
    return " · ".join(filter(None, (remark.who, remark.remark, pictures)))


def _few(count: int, one: str, many: str) -> str:
    if count <= 0:
        return ""
    return one if count == 1 else many.format(count)


def say(text: str) -> str:
    """Return a text in the window's language."""
    return QCoreApplication.translate("MergingWords", text)
