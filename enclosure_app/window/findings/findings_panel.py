"""What is wrong: how the layers run, the findings in walking order, and what to do about one."""

from collections.abc import Sequence

from PySide6.QtCore import QModelIndex, Qt, QTimer, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import (
    QAbstractItemView,
    QLabel,
    QListView,
    QStackedWidget,
    QVBoxLayout,
    QWidget,
)

from enclosure_app.drawing.unsure_words import why_unsure
from enclosure_app.model.finding import Finding
from enclosure_app.model.report import SectionResult
from enclosure_app.model.said.decision import State
from enclosure_app.window.canvas.ink.look import Look
from enclosure_app.window.findings.advice_box import AdviceBox
from enclosure_app.window.findings.findings_delegate import FindingsDelegate
from enclosure_app.window.findings.findings_filter import FindingsFilter
from enclosure_app.window.findings.findings_model import ROW, AnyRow, FindingsModel, Row
from enclosure_app.window.findings.layer_strip import LayerStrip
from enclosure_app.window.findings.rule_page import RulePage
from enclosure_app.window.words.labels import control_within


class FindingsPanel(QWidget):
    """The right-hand panel. `asked`: go to this finding; `chosen`: show this control alone.

    `decided`: the row that a verdict is about, its state, the reason, and who decides.
    """

    asked = Signal(object)
    chosen = Signal(object)
    decided = Signal(object, object, str, str)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("findings")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self._look = Look()
        self._quiet = False  # while other findings are put into the list
        self.model = FindingsModel(self)
        self.strip = LayerStrip(self)
        self.list = self._made_list()
        self.advice = AdviceBox(self)
        self.rule = RulePage(self)
        self.nothing = QLabel(self)
        self.nothing.setWordWrap(True)
        self.nothing.setObjectName("quiet")
        self.nothing.setMargin(14)
        self.nothing.setAlignment(Qt.AlignmentFlag.AlignTop)
        self.filter = FindingsFilter(self.model, self)
        self._lay_out()
        self.model.counted.connect(self._count)
        self.strip.chosen.connect(self.chosen)
        self.advice.why.connect(self._show_rule)
        self.advice.verdict.decided.connect(self._decide)
        self.rule.closed.connect(self._show_list)

    def show_result(self, result: SectionResult, look: Look) -> None:
        """Show what was found in a section; the finding that was chosen stays so."""
        chosen, self._look = self.current_row, look
        scrolled = self.list.verticalScrollBar().value()
        self.rule.show_look(look)
        self.strip.show_result(result, look)
        self.strip.choose(look.only)
        self._quiet = True
        self.model.filter_by(control=look.only)
        self.model.show(result, look.units)
        at = self.model.place_of(chosen.key) if chosen else -1
        self.list.setCurrentIndex(self.model.index(at) if at >= 0 else QModelIndex())
        self._quiet = False
        self.nothing.setText(self._why_empty(result))
        self._count()
        self.list.verticalScrollBar().setValue(scrolled)

    def show_checking(self, *, stopped: bool = False) -> None:
        """Say that what is drawn is being judged, or is not, where nothing else is to be read."""
        judged = self.tr("What is drawn is being judged.")
        self.nothing.setText(self.tr("What is drawn is not judged.") if stopped else judged)

    @property
    def current(self) -> Finding | None:
        """The finding that is chosen."""
        row = self.current_row
        return row.finding if isinstance(row, Row) else None

    @property
    def current_row(self) -> AnyRow | None:
        """The row that is chosen, of a finding or of a verdict without one."""
        index = self.list.currentIndex()
        row: AnyRow | None = index.data(ROW) if index.isValid() else None
        return row

    def choose(self, key: str) -> None:
        """Choose the finding with this key, as if it had been clicked."""
        self.pages.setCurrentIndex(0)
        self._choose(self.model.place_of(key))

    def step(self, by: int) -> None:
        """Choose the next finding, or the one before, and go there."""
        count = len(self.model.rows)
        if count:
            index = self.list.currentIndex()
            self.pages.setCurrentIndex(0)
            now = index.row() if index.isValid() else (-1 if by > 0 else 0)
            self._choose((now + by) % count)
            self._go(self.list.currentIndex())

    def _choose(self, row: int) -> None:
        index = self.model.index(row) if row >= 0 else QModelIndex()
        self.list.setCurrentIndex(index)
        self._moved()

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
        view.selectionModel().currentChanged.connect(self._moved)
        return view

    def _lay_out(self) -> None:
        whole = QWidget(self)
        column = QVBoxLayout(whole)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addWidget(self.filter)
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
        empty = self.model.rowCount() == 0
        self.nothing.setVisible(empty)
        self.list.setVisible(not empty)
        self._tell()

    def _why_empty(self, result: SectionResult) -> str:
        if self.model.total or self.model.total_gone:
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
        units = self._look.units
        lines = [
            told.format(control_within(each.control), why_unsure(each, units))
            for each in result.unjudged
        ]
        return "\n\n".join([*lines, self.tr("Nothing else was found.")])

    def decide(self, state: State) -> None:
        """Give the finding that is chosen a verdict, or ask for what is lacking."""
        if self.current_row is not None:
            self._show_list()
            self.advice.verdict.choose(state)

    def _decide(self, state: State, reason: str, who: str) -> None:
        row = self.current_row
        if row is not None:
            self.decided.emit(row, state, reason, who)

    def _go(self, index: QModelIndex) -> None:
        row: AnyRow | None = index.data(ROW)
        if isinstance(row, Row):
            self.asked.emit(row.finding)

    def _tell(self) -> None:
        """Show what to do about the row that is chosen."""
        if not self._quiet:
            self.advice.show_row(self.current_row)

    def _moved(self, *_: Sequence[QModelIndex]) -> None:
        """Show what to do about another row, and keep that row in sight."""
        self._tell()
        if not self._quiet:
            QTimer.singleShot(0, self.list, lambda: self.list.scrollTo(self.list.currentIndex()))

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
