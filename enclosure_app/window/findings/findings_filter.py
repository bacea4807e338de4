"""What of the findings is shown: by severity, by rule, by verdict."""

from PySide6.QtCore import QSignalBlocker
from PySide6.QtWidgets import QComboBox, QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from enclosure_app.drawing.verdict_words import state_word
from enclosure_app.model.finding import Severity
from enclosure_app.model.said.decision import State
from enclosure_app.window.findings.findings_model import FindingsModel
from enclosure_app.window.surround.flow_layout import FlowLayout
from enclosure_app.window.words.labels import rule_name, severity_count

_SHOWN = (Severity.FAULT, Severity.DOUBT, Severity.REMARK)
_GONE = "no longer found"


class FindingsFilter(QWidget):
    """Narrows what a model shows. By which control is said in the strip above."""

    def __init__(self, model: FindingsModel, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._model = model
        self.severities = {severity: self._made_button() for severity in _SHOWN}
        self.rules = self._made_choice(self.tr("By which rule"))
        self.verdicts = self._made_choice(self.tr("By what was decided"))
        self._lay_out()
        model.counted.connect(self._count)
        self.rules.activated.connect(self._choose)
        self.verdicts.activated.connect(self._choose)
        self._count()

    def clear(self) -> None:
        """Let everything pass."""
        for button in self.severities.values():
            button.setChecked(True)
        self._model.filter_by(hidden=frozenset(), rule="", state=None, gone=False)

    def _made_button(self) -> QPushButton:
        button = QPushButton(self)
        button.setCheckable(True)
        button.setChecked(True)
        button.toggled.connect(self._toggle)
        return button

    def _made_choice(self, name: str) -> QComboBox:
        choice = QComboBox(self)
        choice.setAccessibleName(name)
        choice.setToolTip(name)
        choice.setSizeAdjustPolicy(
            QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon
        )
        choice.setMinimumContentsLength(8)
        return choice

    def _lay_out(self) -> None:
        buttons, choices = FlowLayout(), QHBoxLayout()
        for button in self.severities.values():
            buttons.addWidget(button)
        for choice in (self.rules, self.verdicts):
            choices.addWidget(choice, 1)
        column = QVBoxLayout(self)
        column.setContentsMargins(12, 8, 12, 8)
        column.setSpacing(6)
        for line in (buttons, choices):
            line.setSpacing(6)
            column.addLayout(line)

    def _count(self) -> None:
        for severity, button in self.severities.items():
            count = self._model.count(severity)
            button.setText(severity_count(severity, count))
            button.setEnabled(count > 0)
        self._fill_rules()
        self._fill_verdicts()

    def _fill_rules(self) -> None:
        found, chosen = self._model.rules, self._model.filter.rule
        names = [*found, *([chosen] if chosen and chosen not in found else [])]
        rows = [(f"{rule_name(name)} ({found.get(name, 0)})", name) for name in names]
        _fill(self.rules, [(self.tr("Every rule"), ""), *rows], chosen)

    def _fill_verdicts(self) -> None:
        counts, filter_now = self._model.states, self._model.filter
        chosen = _GONE if filter_now.gone else filter_now.state.value if filter_now.state else ""
        rows = [
            (f"{state_word(state)} ({counts.get(state, 0)})", state.value)
            for state in State
            if state in counts or state.value == chosen
        ]
        gone = self._model.total_gone
        if gone or filter_now.gone:
            rows.append((self.tr("No longer found ({})").format(gone), _GONE))
        _fill(self.verdicts, [(self.tr("Every verdict"), ""), *rows], chosen)

    def _toggle(self) -> None:
        hidden = {s for s, button in self.severities.items() if not button.isChecked()}
        self._model.filter_by(hidden=frozenset(hidden))

    def _choose(self) -> None:
        verdict = str(self.verdicts.currentData() or "")
        self._model.filter_by(
            rule=str(self.rules.currentData() or ""),
            gone=verdict == _GONE,
            state=State(verdict) if verdict not in ("", _GONE) else None,
        )


def _fill(choice: QComboBox, rows: list[tuple[str, str]], chosen: str) -> None:
    """Offer other rows, the chosen one still chosen."""
    if [(choice.itemText(i), choice.itemData(i)) for i in range(choice.count())] == rows:
        return
    blocker = QSignalBlocker(choice)
    choice.clear()
    for words, data in rows:
        choice.addItem(words, data)
    choice.setCurrentIndex(max(choice.findData(chosen), 0))
    choice.setEnabled(len(rows) > 1)
    blocker.unblock()
