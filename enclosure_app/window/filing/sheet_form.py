"""Sets up the sheets: what stands in their title block, their paper and scale. It applies at once."""

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import (
    QComboBox,
    QDialog,
    QFormLayout,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from enclosure_app.drawing.scales import series
from enclosure_app.drawing.sheet.job import PAPERS
from enclosure_app.drawing.sheet.setup import SheetSetup, usual_paper
from enclosure_app.model.drawing import Units

_WIDE = 420


class SheetForm(QDialog):
    """Stands beside the drawing.

    `changed`: something is set up otherwise; `wanted`: the name of the action to go on with.
    """

    changed = Signal(object)
    wanted = Signal(str)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setWindowTitle(self.tr("Set up the sheets"))
        self.who, self.revision = QLineEdit(self), QLineEdit(self)
        self.paper, self.scale, self.cover = QComboBox(self), QComboBox(self), QComboBox(self)
        self.who.setPlaceholderText(self.tr("who issues the sheets"))
        self.revision.setPlaceholderText(self.tr("such as B"))
        for words, choice in (
            (self.tr("before several sections"), None),
            (self.tr("always"), True),
            (self.tr("never"), False),
        ):
            self.cover.addItem(words, choice)
        self._lay_out()
        self._connect()

    @property
    def setup(self) -> SheetSetup:
        """What is set up now."""
        return SheetSetup(
            paper=str(self.paper.currentData() or ""),
            scale=str(self.scale.currentData() or ""),
            revision=self.revision.text().strip(),
            who=self.who.text().strip(),
            cover=self.cover.currentData(),
        )

    def show_setup(self, setup: SheetSetup, units: Units) -> None:
        """Show what is set up for a project that is drawn in `units`."""
        usual = self.tr("{} (as usual)").format(usual_paper(units))
        _fill(self.paper, usual, tuple(PAPERS), setup.paper)
        scales = tuple(scale.text for scale in series(units))
        _fill(self.scale, self.tr("the largest that fits"), scales, setup.scale)
        self.who.setText(setup.who)
        self.revision.setText(setup.revision)
        self.cover.setCurrentIndex(self.cover.findData(setup.cover))

    def _lay_out(self) -> None:
        told = QLabel(self.tr("This holds for the PDF, the print preview and the print."), self)
        told.setObjectName("quiet")
        told.setWordWrap(True)
        form = QFormLayout()
        form.setLabelAlignment(Qt.AlignmentFlag.AlignVCenter)
        form.addRow(self.tr("Issued by"), self.who)
        form.addRow(self.tr("Revision"), self.revision)
        form.addRow(self.tr("Paper"), self.paper)
        form.addRow(self.tr("Scale"), self.scale)
        form.addRow(self.tr("A cover"), self.cover)
        column = QVBoxLayout(self)
        column.addWidget(told)
        column.addLayout(form)
        column.addLayout(self._buttons())
        self.setMinimumWidth(_WIDE)

    def _buttons(self) -> QHBoxLayout:
        line = QHBoxLayout()
        line.addStretch(1)
        for words, action in (
            (self.tr("Close"), ""),
            (self.tr("Print preview"), "preview"),
            (self.tr("Write the PDF…"), "write_pdf"),
        ):
            button = QPushButton(words, self)
            button.setObjectName("main" if action == "write_pdf" else action)
            button.setDefault(action == "write_pdf")
            button.clicked.connect(lambda _=False, one=action: self._go_on(one))
            line.addWidget(button)
        return line

    def _go_on(self, action: str) -> None:
        self.close()
        if action:
            self.wanted.emit(action)

    def _connect(self) -> None:
        for line in (self.who, self.revision):
            line.textEdited.connect(lambda _: self.changed.emit(self.setup))
        for choice in (self.paper, self.scale, self.cover):
            choice.activated.connect(lambda _: self.changed.emit(self.setup))


def _fill(box: QComboBox, usual: str, names: tuple[str, ...], chosen: str) -> None:
    """Offer names after the usual choice, with the one that was chosen, where it is still offered."""
    box.clear()
    box.addItem(usual, "")
    for name in names:
        box.addItem(name, name)
    box.setCurrentIndex(max(box.findData(chosen), 0))
