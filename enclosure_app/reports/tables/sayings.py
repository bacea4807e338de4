"""What somebody said of a finding or saw on site, as the cells of a row: who, when, why, pictures."""

from collections.abc import Iterable, Mapping

from enclosure_app.language import say
from enclosure_app.model.said.decision import Decision
from enclosure_app.model.said.remark import Remark
from enclosure_app.model.said.site_check import SiteCheck
from enclosure_app.reports.tables.table import Column, Value, moment_value


def said_columns(head: str) -> tuple[Column, ...]:
    """Return the columns of what was said, under its own head, and by whom, when and why."""
    return (
        Column(head, 18),
        Column(say("By whom"), 16),
        Column(say("When (UTC)"), 17),
        Column(say("Remark"), 40),
        Column(say("Photographs"), 30),
    )


def said_cells(
    word: str, said: Decision | SiteCheck | None, names: Mapping[str, str]
) -> tuple[Value, ...]:
    """Return the cells for these columns; `names` are those of photographs, by their keys."""
    if said is None:
        return word, None, None, None, None
    shown = _shown(said.photographs, names)
    return word, said.who or None, moment_value(said.when), said.remark or None, shown or None


def remarks_cell(remarks: Iterable[Remark], names: Mapping[str, str]) -> Value:
    """Return what was said without deciding, a line for each: who, which day, words, photographs."""
    return "\n".join(_line(each, names) for each in remarks) or None


def _line(remark: Remark, names: Mapping[str, str]) -> str:
    shown = _shown(remark.photographs, names)
    whose = ", ".join(filter(None, (remark.who, remark.when[:10])))
    words = " ".join(filter(None, (remark.remark, f"({shown})" if shown else "")))
    return ": ".join(filter(None, (whose, words)))


def _shown(photographs: Iterable[str], names: Mapping[str, str]) -> str:
    return ", ".join(names.get(key, key) for key in photographs)
