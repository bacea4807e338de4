"""Edits of a page with very many lines: made in a thread, so that the window goes on meanwhile.

What is painted and caught of the lines is made there too. Where something was changed meanwhile,
the edit is made anew of what is there then.
"""

from collections.abc import Callable
from functools import partial

from shiboken6 import isValid

from enclosure_app.errors import EnclosureError
from enclosure_app.files.dxf.memory import kept_in_use, set_aside
from enclosure_app.model.project import Project
from enclosure_app.model.section import Section
from enclosure_app.window.apart.underlay_work import Work
from enclosure_app.window.canvas.catching.segments import stroke_segments
from enclosure_app.window.canvas.made_ready import made_of
from enclosure_app.window.canvas.picture.linework import Linework
from enclosure_app.window.canvas.workplace import Workplace

MANY = 3000  # lines of a section from which its pages are moved in a thread

Made = Callable[[Project], Project]

_under_way: list[Work] = []


def lines_ready(make: Callable[[], Project]) -> Project:
    """Return a project that is made, its lines ready to be painted and caught; for a thread."""
    with kept_in_use():
        project = make()
        for section in project.sections:
            made_of(section.strokes, Linework)
            made_of(section.strokes, stroke_segments)
    if any(is_large(section) for section in project.sections):
        set_aside()
    return project


def is_large(section: Section | None) -> bool:
    """Whether a section has so many lines that moving them would keep the window waiting."""
    return section is not None and len(section.strokes) + len(section.taken) >= MANY


def edit_apart(
    place: Workplace,
    text: str,
    edit: Made,
    then: Callable[[], object],
    gesture: int = -1,
) -> None:
    """Make an edit of a page, at once or in a thread, and go on with `then` once it is made."""
    document, before, opening = place.document, place.document.project, place.document.opening

    def take(after: Project) -> None:
        if not isValid(place) or document.opening != opening:
            return  # of what was open before
        if document.project is not before:
            edit_apart(place, text, edit, then, gesture)
            return
        document.apply(text, after, gesture=gesture)
        then()

    if is_large(place.section):
        work = Work(lambda _: lines_ready(partial(edit, before)))
        _under_way.append(work)  # somebody has to keep it until it is done
        work.done.connect(take)
        work.failed.connect(lambda why: place.refused.emit(why) if isValid(place) else None)
        for ended in (work.done, work.failed):
            ended.connect(lambda _: _under_way.remove(work))
        work.start()
        return
    try:
        after = edit(before)
    except EnclosureError as error:
        place.refuse(error)
    else:
        take(after)
