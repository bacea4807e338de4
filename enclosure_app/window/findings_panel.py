"""What is wrong: how the layers run, the findings in walking order, and what to do about one."""

from collections.abc import Sequence

from PySide6.QtCore import QModelIndex, Qt, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import (
    QAbstractItemView,
    QHBoxLayout,
    QLabel,
    QListView,
    QPushButton,
    QStackedWidget,
    QVBoxLayout,
    QWidget,
)

from enclosure_app.model.finding import Finding, Severity
from enclosure_app.model.report import SectionResult
from enclosure_app.window.canvas.look import Look
from enclosure_app.window.findings_delegate import FindingsDelegate
from enclosure_app.window.findings_model import ROW, FindingsModel, Row
from enclosure_app.window.layer_strip import LayerStrip
from enclosure_app.window.rule_page import RulePage
from enclosure_app.window.words import control_word, severity_count

_SHOWN = (Severity.FAULT, Severity.DOUBT, Severity.REMARK)


class FindingsPanel(QWidget):
    """The right-hand panel. `asked`: go to this finding; `chosen`: show this control alone."""

    asked = Signal(object)
    chosen = Signal(object)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("findings")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self._look = Look()
        self.model = FindingsModel(self)
        self.strip = LayerStrip(self)
        self.list = self._made_list()
        self.advice = _AdviceBox(self)
        self.rule = RulePage(self)
        self.nothing = QLabel(self)
        self.nothing.setWordWrap(True)
        self.nothing.setObjectName("quiet")
        self.nothing.setMargin(14)
        self.nothing.setAlignment(Qt.AlignmentFlag.AlignTop)
        self.filters = {severity: self._filter() for severity in _SHOWN}
        self._lay_out()
        self.model.counted.connect(self._count)
        self.strip.chosen.connect(self.chosen)
        self.advice.why.connect(self._show_rule)
        self.rule.closed.connect(self._show_list)

    def show_result(self, result: SectionResult, look: Look) -> None:
        """Show what was found in a section; the finding that was chosen stays so."""
        chosen, self._look = self.current, look
        self.rule.show_look(look)
        self.strip.show_result(result, look)
        self.strip.choose(look.only)
        self.model.control = look.only
        self.model.show(result.findings, look.units)
        at = self.model.place_of(chosen.key) if chosen else -1
        self._choose(at)
        self.nothing.setText(self._why_empty(result))

    @property
    def current(self) -> Finding | None:
        """The finding that is chosen."""
        index = self.list.currentIndex()
        row: Row | None = index.data(ROW) if index.isValid() else None
        return row.finding if row else None

    def choose(self, key: str) -> None:
        """Choose the finding with this key, as if it had been clicked."""
        self._choose(self.model.place_of(key))

    def step(self, by: int) -> None:
        """Choose the next finding, or the one before, and go there."""
        count = self.model.rowCount()
        if count:
            index = self.list.currentIndex()
            now = index.row() if index.isValid() else (-1 if by > 0 else 0)
            self._choose((now + by) % count)
            self._go(self.list.currentIndex())

    def _choose(self, row: int) -> None:
        index = self.model.index(row) if row >= 0 else QModelIndex()
        self.list.setCurrentIndex(index)
        if row >= 0:
            self.list.scrollTo(index)
        self._tell()

    def _made_list(self) -> QListView:
        view = QListView(self)
        view.setModel(self.model)
        view.setItemDelegate(FindingsDelegate(view))
        view.setUniformItemSizes(False)
        view.setResizeMode(QListView.ResizeMode.Adjust)
        view.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        view.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        view.setMouseTracking(True)
        view.setAccessibleName(self.tr("What is wrong, in walking order"))
        view.clicked.connect(self._go)
        view.activated.connect(self._go)
        view.selectionModel().currentChanged.connect(self._tell)
        return view

    def _filter(self) -> QPushButton:
        button = QPushButton(self)
        button.setCheckable(True)
        button.setChecked(True)
        button.toggled.connect(self._refilter)
        return button

    def _lay_out(self) -> None:
        filters = QHBoxLayout()
        filters.setContentsMargins(12, 8, 12, 8)
        filters.setSpacing(6)
        for button in self.filters.values():
            filters.addWidget(button)
        filters.addStretch(1)
        whole = QWidget(self)
        column = QVBoxLayout(whole)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addLayout(filters)
        column.addWidget(self.nothing, 1)
        column.addWidget(self.list, 1)
        column.addWidget(self.advice)
        self.pages = QStackedWidget(self)
        self.pages.addWidget(whole)
        self.pages.addWidget(self.rule)
        outer = QVBoxLayout(self)
        outer.setContentsMargins(0, 0, 0, 0)
        outer.setSpacing(0)
        outer.addWidget(self.strip)
        outer.addWidget(self.pages, 1)

    def _count(self) -> None:
        for severity, button in self.filters.items():
            count = self.model.count(severity)
            button.setText(severity_count(severity, count))
            button.setEnabled(count > 0)
        empty = self.model.rowCount() == 0
        self.nothing.setVisible(empty)
        self.list.setVisible(not empty)
        self._tell()

    def _why_empty(self, result: SectionResult) -> str:
        if self.model.total:
            return self.tr("Nothing of what is shown is wrong; other findings are filtered out.")
        if not result.section.pieces:
            return self.tr("Nothing is judged yet. Say what the lines are, or draw a sheet.")
        if not (result.section.inside and result.section.outside):
            return self.tr("Nothing is judged yet. Say which side is inside and which is outside.")
        if result.unjudged:
            return self._what_is_unsure(result)
        return self.tr("Nothing is wrong here: every layer can be followed from end to end.")

    def _what_is_unsure(self, result: SectionResult) -> str:
        told = self.tr("The {} layer could not be judged. {}")
        lines = [told.format(control_word(r.control).lower(), r.why) for r in result.unjudged]
        return "\n\n".join([*lines, self.tr("Nothing else was found.")])

    def _refilter(self) -> None:
        hidden = frozenset(s for s, button in self.filters.items() if not button.isChecked())
        self.model.filter_by(self.model.control, hidden)

    def _go(self, index: QModelIndex) -> None:
        row: Row | None = index.data(ROW)
        if row:
            self.asked.emit(row.finding)

    def _tell(self, *_: Sequence[QModelIndex]) -> None:
        self.advice.show_finding(self.current)

    def _show_rule(self, name: str) -> None:
        self.rule.show_rule(name, self._look)
        self.pages.setCurrentIndex(1)
        self.rule.back.setFocus()

    def _show_list(self) -> None:
        self.pages.setCurrentIndex(0)
        self.list.setFocus()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Give every row the height that its sentence needs at the new width."""
        super().resizeEvent(event)
        self.list.doItemsLayout()


class _AdviceBox(QWidget):
    """What to do about one finding, where the figure is from, and the way to the rule's page."""

    why = Signal(str)

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self._rule = ""
        self._advice = QLabel(self)
        self._basis = QLabel(self)
        self._basis.setObjectName("small")
        for label in (self._advice, self._basis):
            label.setWordWrap(True)
            label.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        self.button = QPushButton(self.tr("Why?"), self)
        self.button.setToolTip(
            self.tr("Show the rule's page: why it matters and where it is from")
        )
        self.button.clicked.connect(lambda: self.why.emit(self._rule))
        line = QHBoxLayout()
        line.addWidget(self._basis, 1)
        line.addWidget(self.button, 0, Qt.AlignmentFlag.AlignBottom)
        column = QVBoxLayout(self)
        column.setContentsMargins(14, 10, 12, 12)
        column.addWidget(self._advice)
        column.addLayout(line)
        self.hide()

    def show_finding(self, finding: Finding | None) -> None:
        """Show what to do about a finding; nothing without one."""
        self.setVisible(finding is not None)
        if finding is None:
            return
        self._rule = finding.rule
        self._advice.setText(finding.advice)
        self._basis.setText(finding.basis)
