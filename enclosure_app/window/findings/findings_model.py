"""What is wrong, as a list in walking order, what was decided about it, and which of it is shown."""

from dataclasses import dataclass, field, replace
from typing import Any

from PySide6.QtCore import (
    QAbstractListModel,
    QCoreApplication,
    QModelIndex,
    QObject,
    QPersistentModelIndex,
    Qt,
    Signal,
)

from enclosure_app.drawing.lengths import format_length
from enclosure_app.drawing.verdict_words import gone_line, verdict_line
from enclosure_app.model.drawing import Units
from enclosure_app.model.finding import Finding, Severity
from enclosure_app.model.product import Control
from enclosure_app.model.report import SectionResult
from enclosure_app.model.said.decision import Decision, State
from enclosure_app.window.words.labels import control_word, rule_name, severity_word
from enclosure_app.window.words.trade import explained

ROW = Qt.ItemDataRole.UserRole
Index = QModelIndex | QPersistentModelIndex


@dataclass(frozen=True, slots=True)
class Row:
    """One finding with its number, and its lengths in the drawing's units ("" where none)."""

    number: int
    finding: Finding
    measured: str = ""
    required: str = ""
    decision: Decision | None = None

    @property
    def heading(self) -> str:
        """What kind of fault it is and in which layer."""
        control = control_word(self.finding.control)
        name = rule_name(self.finding.rule)
        return f"{name} · {control}" if control else name

    @property
    def key(self) -> str:
        """The key of the finding."""
        return self.finding.key

    @property
    def rule(self) -> str:
        """The name of the rule that found it."""
        return self.finding.rule

    @property
    def sentence(self) -> str:
        """What is wrong, and where."""
        return self.finding.message

    @property
    def advice(self) -> str:
        """What to do about it."""
        return self.finding.advice

    @property
    def basis(self) -> str:
        """Where the required figure is from, "" without one."""
        return self.finding.basis

    @property
    def state(self) -> State:
        """What was decided about it."""
        return self.decision.state if self.decision else State.OPEN

    @property
    def told(self) -> str:
        """How severe it is, and what was decided."""
        severity = severity_word(self.finding.severity)
        return (
            f"{severity} · {_decided(self.decision)}" if self.state is not State.OPEN else severity
        )

    @property
    def spoken(self) -> str:
        """The row in one sentence, for those who hear it."""
        lengths = f" {self.measured}" + (f" / {self.required}" if self.required else "")
        return f"{self.number}. {self.told}: {self.heading}. {self.sentence}{lengths}"


@dataclass(frozen=True, slots=True)
class GoneRow:
    """A verdict whose finding is no longer found: it is never dropped without a word."""

    decision: Decision
    measured: str = ""
    required: str = ""
    basis: str = ""

    @property
    def key(self) -> str:
        """The key that the finding had."""
        return self.decision.key

    @property
    def rule(self) -> str:
        """The name of the rule that found it then."""
        return self.decision.key.partition(":")[0]

    @property
    def advice(self) -> str:
        """What to do about the verdict."""
        return say(
            "This was decided about something that is no longer found. Take the verdict back to "
            "leave it out of this list; it stays in the project's history."
        )

    @property
    def heading(self) -> str:
        """What kind of fault it was."""
        return rule_name(self.rule)

    @property
    def sentence(self) -> str:
        """What was wrong."""
        return gone_line(self.decision)

    @property
    def state(self) -> State:
        """What was decided about it."""
        return self.decision.state

    @property
    def told(self) -> str:
        """That it is gone, and what was decided."""
        return f"{say('No longer found')} · {_decided(self.decision)}"

    @property
    def spoken(self) -> str:
        """The row in one sentence, for those who hear it."""
        return f"{self.told}: {self.heading}. {self.sentence}"


AnyRow = Row | GoneRow


@dataclass(frozen=True, slots=True)
class Filter:
    """What is shown: None and "" let everything pass.

    `gone` shows what is no longer found and nothing else.
    """

    control: Control | None = None
    hidden: frozenset[Severity] = frozenset()
    rule: str = ""
    state: State | None = None
    gone: bool = False

    def passes(self, row: AnyRow) -> bool:
        """Whether a row is shown."""
        if self.state not in (None, row.state):
            return False
        if isinstance(row, GoneRow):
            return self.rule in ("", row.rule)
        finding = row.finding
        return not self.gone and (
            self.control in (None, finding.control or self.control)
            and finding.severity not in self.hidden
            and self.rule in ("", row.rule)
        )


@dataclass(frozen=True, slots=True)
class _All:
    rows: tuple[Row, ...] = ()
    gone: tuple[GoneRow, ...] = field(default=())


class FindingsModel(QAbstractListModel):
    """The findings of one section that pass the filter; numbers are those of the whole list.

    After them comes what was decided about findings that are no longer found.
    """

    counted = Signal()

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._all = _All()
        self._shown: tuple[AnyRow, ...] = ()
        self.filter = Filter()

    def show(self, result: SectionResult, units: Units) -> None:
        """Show the findings of another result."""
        rows = tuple(
            Row(
                number,
                finding,
                _length(finding.measured, units),
                _length(finding.required, units),
                result.decisions.get(finding.key),
            )
            for number, finding in enumerate(result.findings, 1)
        )
        self._all = _All(rows, tuple(GoneRow(each) for each in result.no_longer_found))
        self._refilter()

    def filter_by(self, **changes: Any) -> None:  # noqa: ANN401  the fields of Filter
        """Change the filter in some of its fields."""
        self.filter = replace(self.filter, **changes)
        self._refilter()

    def count(self, severity: Severity) -> int:
        """Return how many findings of a severity there are, shown or not."""
        return sum(row.finding.severity is severity for row in self._of_control())

    @property
    def rows(self) -> tuple[Row, ...]:
        """The findings that are shown."""
        return tuple(row for row in self._shown if isinstance(row, Row))

    @property
    def gone(self) -> tuple[GoneRow, ...]:
        """What is no longer found, as far as it is shown."""
        return tuple(row for row in self._shown if isinstance(row, GoneRow))

    @property
    def rules(self) -> dict[str, int]:
        """How often each rule found something in the controls that are shown, in walking order."""
        found: dict[str, int] = {}
        for row in self._of_control():
            found[row.finding.rule] = found.get(row.finding.rule, 0) + 1
        return found

    @property
    def states(self) -> dict[State, int]:
        """How often each verdict was given to what is found."""
        states = [row.state for row in self._of_control()]
        return {state: states.count(state) for state in State if state in states}

    @property
    def total(self) -> int:
        """How many findings there are, shown or not."""
        return len(self._all.rows)

    @property
    def total_gone(self) -> int:
        """How many verdicts there are about what is no longer found."""
        return len(self._all.gone)

    def place_of(self, key: str) -> int:
        """Return which row shows the finding with this key, or what was decided, -1 if none does."""
        keys = [row.key for row in self._shown]
        return keys.index(key) if key in keys else -1

    def rowCount(self, parent: Index | None = None) -> int:
        """Return how many rows are shown."""
        return 0 if parent is not None and parent.isValid() else len(self._shown)

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:  # noqa: ANN401
        """Return a row, or its sentence."""
        if not index.isValid() or index.row() >= len(self._shown):
            return None
        row = self._shown[index.row()]
        if role == ROW:
            return row
        if role == Qt.ItemDataRole.ToolTipRole:
            return _tip(row)
        spoken = (
            Qt.ItemDataRole.DisplayRole,
            Qt.ItemDataRole.AccessibleTextRole,
        )
        return row.spoken if role in spoken else None

    def _of_control(self) -> tuple[Row, ...]:
        alone = Filter(self.filter.control)
        return tuple(row for row in self._all.rows if alone.passes(row))

    def _refilter(self) -> None:
        self.beginResetModel()
        rows: tuple[AnyRow, ...] = (*self._all.rows, *self._all.gone)
        self._shown = tuple(row for row in rows if self.filter.passes(row))
        self.endResetModel()
        self.counted.emit()


def _tip(row: AnyRow) -> str:
    """Return the verdict whole, with when and why, and what the words of the row mean."""
    decided = row.decision if row.state is not State.OPEN else None
    told = verdict_line(decided) if decided else ""
    return "\n".join(filter(None, (told, explained(f"{row.heading} {row.sentence}"))))


def _length(mm: float | None, units: Units) -> str:
    return "" if mm is None else format_length(mm, units)


def _decided(decision: Decision | None) -> str:
    """Return what was decided and by whom, without when and why, for which there is no room."""
    return verdict_line(replace(decision, when="", remark="")) if decision else ""


def say(text: str) -> str:
    """Return a text in the window's language."""
    return QCoreApplication.translate("FindingsModel", text)
