"""What was seen on site, after the drawing was revised: of the joints that are still the same."""

from collections import defaultdict
from collections.abc import Sequence
from dataclasses import replace

from enclosure_app.model.project import Project
from enclosure_app.planning.revision.comparing import Revision, subjects_in
from enclosure_app.planning.revision.looks import LooksMatched
from enclosure_app.planning.site_list.listing import SiteList


def looks_carried(
    revision: Revision, before: Project, old: Sequence[SiteList], new: Sequence[SiteList]
) -> Revision:
    """Return the revision with what was seen of items of the site list carried on, where certain.

    A joint that was changed in any way is asked about where it may be another one; where it is
    gone, what was seen of it stays in the history, under its earlier name.

    Args:
        revision: What became of the findings (`compared`).
        before: The project of the earlier drawing.
        old: The site lists of its sections.
        new: Those of the later drawing's.
    """
    olds, news = ({each.section: each for each in lists} for lists in (old, new))
    looked: dict[str, list[str]] = defaultdict(list)
    for subject in subjects_in(before, on_list=True):
        looked[subject.section].append(subject.key)
    rows = [
        LooksMatched(
            revision, before, each, (olds.get(each.old), news.get(each.new)), looked[each.old]
        )
        for each in revision.sections
    ]
    project = revision.project
    links = {each.id: each for each in project.carried}
    links |= {each.id: each for row in rows for each in row.links()}
    questions = {each.id: each for each in project.questions}
    questions |= {each.id: each for row in rows for each in row.questions()}
    project = replace(project, carried=tuple(links.values()), questions=tuple(questions.values()))
    sections = tuple(replace(row.section, looks=tuple(row.places())) for row in rows)
    return replace(revision, project=project, sections=sections)
