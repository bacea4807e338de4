"""How loud each rule is in this project: one row and one choice for each."""

from collections.abc import Mapping

from PySide6.QtCore import QSignalBlocker, Qt, Signal
from PySide6.QtWidgets import QComboBox, QGridLayout, QLabel, QScrollArea, QVBoxLayout, QWidget

from enclosure_app.model.finding import Severity
from enclosure_app.window.words.labels import rule_name, severity_word, word


class RulesPage(QWidget):
    """`chosen`: the rule, and its severity (None: as the rule or its book says)."""

    chosen = Signal(str, object)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        told = QLabel(
            self.tr(
                "What is found by a rule is a fault, a doubt to look at by eye, or a remark; a "
                "rule that is off finds nothing. This is kept in the project and can be undone."
            ),
            self,
        )
        told.setWordWrap(True)
        told.setObjectName("quiet")
        self.choices: dict[str, QComboBox] = {}
        column = QVBoxLayout(self)
        column.addWidget(told)
        column.addWidget(self._made_rows())

    def show_severities(self, own: Mapping[str, Severity], usual: Mapping[str, Severity]) -> None:
        """Show the project's `own` severities over the `usual` ones of its rule book."""
        for rule, choice in self.choices.items():
            blocker = QSignalBlocker(choice)
            usual_word = word(usual.get(rule, self._said[rule]).value)
            choice.setItemText(0, self.tr("as usual ({})").format(usual_word))
            choice.setCurrentIndex(choice.findData(own.get(rule, "")))
            blocker.unblock()

    def _made_rows(self) -> QScrollArea:
        from enclosure_app.rules import RULES  # noqa: PLC0415  after the window is seen
        from enclosure_app.rules.rule import page_parts  # noqa: PLC0415  as above

        self._said = {rule.name: rule.severity for rule in RULES}
        rows = QWidget(self)
        rows.setObjectName("panel")
        grid = QGridLayout(rows)
        grid.setColumnStretch(0, 1)
        for row, rule in enumerate(RULES):
            name = QLabel(rule_name(rule.name), rows)
            name.setToolTip(word(page_parts(rule)[0]))
            choice = self._made_choice(rule.name)
            name.setBuddy(choice)
            grid.addWidget(name, row, 0)
            grid.addWidget(choice, row, 1)
        grid.setRowStretch(len(RULES), 1)
        area = QScrollArea(self)
        area.setFocusPolicy(Qt.FocusPolicy.NoFocus)  # it follows what the keys reach
        area.setWidgetResizable(True)
        area.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        area.setWidget(rows)
        return area

    def _made_choice(self, rule: str) -> QComboBox:
        choice = QComboBox(self)
        choice.setAccessibleName(self.tr("How loud: {}").format(rule_name(rule)))
        choice.addItem("", "")
        for severity in Severity:
            choice.addItem(severity_word(severity), severity)
        choice.setFocusPolicy(Qt.FocusPolicy.StrongFocus)  # the wheel scrolls the page
        choice.activated.connect(lambda _: self._choose(rule))
        self.choices[rule] = choice
        return choice

    def _choose(self, rule: str) -> None:
        data = self.choices[rule].currentData()
        self.chosen.emit(rule, Severity(data) if data else None)
