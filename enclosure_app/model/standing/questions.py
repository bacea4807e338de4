"""The questions that a revised drawing left open: one for each thing that nobody can place."""

from enclosure_app.model.project import Project
from enclosure_app.model.said.carried import Subject
from enclosure_app.model.said.decision import Decision
from enclosure_app.model.said.question import Question
from enclosure_app.model.said.remark import Remark
from enclosure_app.model.said.site_check import SiteCheck
from enclosure_app.model.standing.whereabouts import homeless


def open_questions(project: Project) -> tuple[Question, ...]:
    """Return what is to be asked about what something was said of, oldest first: findings, then looks.

    `edits.say_where` answers one. Where only one of two copies of a project knows more, its
    question is taken; where nobody does, the sentence of what was said is all there is.
    """
    asked = {
        (each.on_list, each.earlier): each
        for each in project.questions
        if each.revision == project.revision
    }
    return tuple(
        asked.get((listed, subject)) or _bare(project, subject, on_list=listed)
        for listed in (False, True)
        for subject in homeless(project, on_list=listed)
    )


def _bare(project: Project, subject: Subject, *, on_list: bool) -> Question:
    said: list[Decision | Remark | SiteCheck] = (
        [*project.site_checks] if on_list else [*project.decisions, *project.remarks]
    )
    about = (each.about for each in said if (each.revision, each.section, each.key) == subject)
    return Question(subject, next(filter(None, about), subject.key), on_list=on_list)
