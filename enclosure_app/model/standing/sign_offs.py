"""Who signed a section, and whether it is still what was signed."""

from dataclasses import dataclass

from enclosure_app.model.project import Project
from enclosure_app.model.said.carried import WHOLE, Subject
from enclosure_app.model.said.sign_off import SignOff, drawn_sum, fingerprint
from enclosure_app.model.section import Section
from enclosure_app.model.standing.standing import standing
from enclosure_app.model.standing.whereabouts import Trail, subject_of


@dataclass(frozen=True, slots=True)
class Signed:
    """A sign-off that stands; `changed` where the drawing is not what was signed any more."""

    sign_off: SignOff
    changed: bool


def signed(project: Project, section: Section) -> tuple[Signed, ...]:
    """Return the sign-offs of a section that nobody took back, in the order they were given.

    Those of an earlier drawing count where the section is surely the same one.
    """
    trail, here = Trail(project), Subject(project.revision, section.name, WHOLE)
    given = [each for each in project.sign_offs if trail.now(subject_of(each)) == here]
    if not given:
        return ()
    same = {drawn_sum(section)}
    if any(each.drawn not in same for each in given):
        same.add(fingerprint(section))  # what was kept of a section in earlier files
    return tuple(
        Signed(each, changed=each.drawn not in same)
        for each in standing(given)
        if not each.withdrawn
    )
