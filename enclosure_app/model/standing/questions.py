"""The questions that a revised drawing left open: one for each finding that nobody can place."""

from enclosure_app.model.project import Project
from enclosure_app.model.said.carried import Subject
from enclosure_app.model.said.decision import Decision
from enclosure_app.model.said.question import Question
from enclosure_app.model.said.remark import Remark
from enclosure_app.model.standing.whereabouts import homeless


def open_questions(project: Project) -> tuple[Question, ...]:
    """Return what is to be asked about findings of which something was said, oldest first.

    `edits.say_where` answers one. Where only one of two copies of a project knows more, its
    question is taken; where nobody does, the sentence of what was said is all there is.
    """
    asked = {each.earlier: each for each in project.questions if each.revision == project.revision}
    return tuple(asked.get(each) or _bare(project, each) for each in homeless(project))


def _bare(project: Project, subject: Subject) -> Question:
    said: list[Decision | Remark] = [*project.decisions, *project.remarks]
    about = (each.about for each in said if (each.revision, each.section, each.key) == subject)
    return Question(subject, next(filter(None, about), subject.key))
