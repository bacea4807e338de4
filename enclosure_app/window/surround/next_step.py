"""What to do next, in one sentence: the program always offers one sensible step."""

from collections.abc import Iterator
from dataclasses import dataclass

from PySide6.QtCore import QCoreApplication

from enclosure_app.model.finding import Severity
from enclosure_app.model.report import Continuity, SectionResult
from enclosure_app.model.section import Section
from enclosure_app.window.words.labels import control_within

_CORNERS = 3  # of a frame, at least


@dataclass(frozen=True, slots=True)
class Step:
    """A sentence, and the action that does it with the word on its button ("" for none)."""

    text: str
    action: str = ""
    button: str = ""


def say(text: str) -> str:
    """Return a text in the window's language."""
    return QCoreApplication.translate("Step", text)


def next_step(result: SectionResult) -> Step:
    """Return the next sensible step for a section."""
    return next(_before_it_is_judged(result), None) or _after_the_marks(result)


def stopped_step(*, known: bool) -> Step:
    """Return the next step where a check was stopped; `known` says whether there was one before."""
    before = say("Checking was stopped. What is listed is of the drawing before its last change.")
    never = say("Checking was stopped: nothing is known of this drawing yet.")
    return Step(before if known else never, "check_now", say("Check now"))


def _before_it_is_judged(result: SectionResult) -> Iterator[Step]:
    section = result.section
    if not section.pieces:
        yield _first_sheet(section)
    if not section.outside:
        yield Step(
            say("Nothing says which side is outside. Click a place outside the building."),
            "tool_outside",
            say("Mark outside"),
        )
    if not section.inside:
        yield Step(
            say("Nothing says which side is inside. Click a place inside the building."),
            "tool_inside",
            say("Mark inside"),
        )
    if len(section.frame) < _CORNERS:
        yield Step(
            say("Nothing says where the section is judged. Draw a frame around it."),
            "tool_frame",
            say("Draw the frame"),
        )
    if not result.layers:
        yield Step(say("What is drawn is being judged."))


def _first_sheet(section: Section) -> Step:
    if section.strokes:
        return Step(
            say(
                "Nothing says yet what the lines are. Let the notes say it, use a layer map, "
                "or pick a line and give it a product."
            ),
            "read_notes",
            say("Read the notes"),
        )
    return Step(
        say("The sheet is empty. Choose a product at the left and draw the first sheet."),
        "tool_sheet",
        say("Draw a sheet"),
    )


def _after_the_marks(result: SectionResult) -> Step:
    faults = [f for f in result.undecided if f.severity is Severity.FAULT]
    doubts = [f for f in result.undecided if f.severity is Severity.DOUBT]
    if faults:
        many = say("{} faults. Walk through them in order, from one end to the other.")
        one = say("One fault. Go and see it.")
        text = one if len(faults) == 1 else many.format(len(faults))
        return Step(text, "next_finding", say("Next finding"))
    if doubts:
        text = say("No faults, but {} to look at by eye.").format(len(doubts))
        return Step(text, "next_finding", say("Next finding"))
    if any(f.severity in (Severity.FAULT, Severity.DOUBT) for f in result.findings):
        text = say("Every fault and doubt has its verdict. Write the marked-up sheet.")
        return Step(text, "write_pdf", say("Write PDF…"))
    broken = [layer for layer in result.layers.values() if layer.continuity is Continuity.BROKEN]
    if broken:
        return Step(say("A layer is broken. Look where it opens."), "next_finding", say("Next"))
    if result.unjudged:
        named = ", ".join(control_within(layer.control) for layer in result.unjudged)
        text = say("Nothing was found, but a layer could not be judged: {}. Look at it by eye.")
        return Step(text.format(named), f"only_{result.unjudged[0].control.value}", say("Show it"))
    return Step(
        say("Nothing is wrong here. Write the marked-up sheet."), "write_pdf", say("Write PDF…")
    )
