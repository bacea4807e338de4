"""What was said of things of the earlier drawing, in a few words, for who looks for their own."""

from collections.abc import Iterable, Iterator, Sequence

from PySide6.QtCore import QCoreApplication

from enclosure_app.drawing.verdict_words import state_word, verdict_line
from enclosure_app.model.project import Project
from enclosure_app.model.standing.site_checks import seen_in
from enclosure_app.model.standing.standing import standing
from enclosure_app.model.standing.verdicts import contested_in, verdicts_in
from enclosure_app.model.standing.whereabouts import Trail, Whereabouts, subject_of
from enclosure_app.window.revising.laying import About
from enclosure_app.window.walk.looks import look_line, seen_word


class Said:
    """What was said of one section."""

    def __init__(self, project: Project, section: str) -> None:
        self._verdicts = verdicts_in(project, section)
        self._contested = contested_in(project, section)
        self._seen = seen_in(project, section)
        trail = Trail(project)
        places = (trail.now(subject_of(each)) for each in project.remarks)
        self._remarked = {
            each.key
            for each in places
            if not isinstance(each, Whereabouts) and each.section in ("", section)
        }

    def of_finding(self, key: str) -> str:
        """Return the verdict on a finding and whose it is, or that there is a remark; "" else."""
        if verdict := self._verdicts.get(key):
            several = self._contested.get(key, (verdict,))
            names = ", ".join(dict.fromkeys(each.who for each in several if each.who))
            return " · ".join(filter(None, (state_word(verdict.state), names)))
        return say("Remark") if key in self._remarked else ""

    def of_looks(self, keys: Iterable[str]) -> str:
        """Return what was seen of items of one place, and by whom."""
        looks = [self._seen[key] for key in keys if key in self._seen]
        seen = dict.fromkeys(seen_word(each.seen) for each in looks)
        names = dict.fromkeys(each.who for each in looks if each.who)
        return " · ".join(filter(None, (", ".join(seen), ", ".join(names))))


def of_earlier(project: Project, abouts: Sequence[About]) -> Iterator[str]:
    """Yield what was said of things of an earlier drawing that nobody can place now, line by line."""
    earlier = {each.earlier for each in abouts}
    if abouts[0].on_list:
        looks = [each for each in standing(project.site_checks) if subject_of(each) in earlier]
        yield from dict.fromkeys(map(look_line, looks))
        return
    for verdict in standing(project.decisions):
        if subject_of(verdict) in earlier:
            yield verdict_line(verdict)
    for remark in project.remarks:
        if subject_of(remark) in earlier:
            yield " · ".join(filter(None, (remark.who, remark.remark)))


def say(text: str) -> str:
    """Return a text in the window's language."""
    return QCoreApplication.translate("RevisedRows", text)
