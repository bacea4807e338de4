"""Histories at random: what people say in copies of one project, in any order."""

from collections.abc import Callable
from dataclasses import replace

from hypothesis import strategies as st

from enclosure_app.model import edits
from enclosure_app.model.project import Project
from enclosure_app.model.said.decision import Decision, State
from enclosure_app.model.said.photograph import Photograph
from enclosure_app.model.said.remark import Remark
from enclosure_app.model.said.site_check import Seen, SiteCheck
from tests.planning.revision.walls import project, wall

Step = tuple[int, int, int, int]
STEPS = st.lists(
    st.tuples(st.integers(0, 4), st.integers(0, 2), st.integers(0, 4), st.integers(0, 5)),
    max_size=5,
)
PEOPLE = ("Ida", "Jon", "Mara", "Nils", "Ole")


def stepped(before: Project, who: str, step: Step) -> Project:
    """One saying: a verdict, a remark, a look, a sign-off, or one taken back."""
    kind, about, word, minute = step
    when = f"2026-03-02T10:0{minute}:00+02:00"
    key, words = f"gap:air:{about}", f"word {word}"
    picture = Photograph(bytes([word]), (1, 1), f"{who}.jpg")
    does: list[Callable[[], Project]] = [
        lambda: edits.set_decision(
            before, Decision(key, [*State][word], who, when, words, "Wall"), [picture]
        ),
        lambda: edits.add_remark(before, Remark(key, who, when, words, "Wall"), [picture]),
        lambda: edits.tick(
            before, SiteCheck(key, [*Seen][word % 4], who, when, words, "Wall"), [picture]
        ),
        lambda: edits.sign(before, "Wall", who, when, words),
        lambda: edits.set_decision(before, Decision(key, State.OPEN, who, when, section="Wall")),
    ]
    return does[kind]()


def told(before: Project, who: str, steps: list[Step]) -> Project:
    for step in steps:
        before = stepped(before, who, step)
    return before


@st.composite
def copies(draw: st.DrawFn, number: int = 2) -> tuple[Project, ...]:
    """Copies of one project, each with a history that they share and one of their own."""
    common = told(project(wall()), "Ida", draw(STEPS))
    return tuple(told(replace(common), PEOPLE[n + 1], draw(STEPS)) for n in range(number))
