"""One of two drawings that are looked at side by side: its name, a place in it, and what is there."""

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLabel, QVBoxLayout, QWidget

from enclosure_app.drawing.lengths import format_length
from enclosure_app.model.place import Point
from enclosure_app.model.project import Project
from enclosure_app.model.report import SectionResult
from enclosure_app.window.canvas.ink.look import Look
from enclosure_app.window.canvas.underlay.layer import lying_under
from enclosure_app.window.revising.rows import Told
from enclosure_app.window.walk.place_view import PlaceView

_LEAST = (160, 120)  # dots of a picture, on a small screen
_LINES = 3  # of words that both sides keep room for, so that pictures stay as large


class Side(QWidget):
    """Shows a section of one drawing, zoomed to a place, with the sentence about it below."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._look = Look()
        self.title = QLabel(self)
        self.title.setObjectName("panel-title")
        self.place = PlaceView(self)
        self.place.setMinimumSize(*_LEAST)
        kept = self.place.sizePolicy()
        kept.setRetainSizeWhenHidden(True)
        self.place.setSizePolicy(kept)
        self.told = QLabel(self)
        self.told.setWordWrap(True)
        self.told.setAlignment(Qt.AlignmentFlag.AlignTop)
        for label in (self.title, self.told):
            label.setTextFormat(Qt.TextFormat.PlainText)
        self.told.setMinimumHeight(_LINES * self.told.fontMetrics().lineSpacing())
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self.title)
        column.addWidget(self.place, 1)
        column.addWidget(self.told)

    def show_section(self, project: Project, result: SectionResult | None, look: Look) -> None:
        """Show a section, or nothing where the drawing has none."""
        self._look = look
        self.place.setVisible(result is not None)
        if result:
            self.place.show_result(result, look, lying_under(project, result.section))

    def show_finding(self, finding: Told, sentence: str) -> None:
        """Go to a finding, and say what is said of it."""
        self.place.go_to(finding.at, finding.extent)
        self.told.setText("\n".join(filter(None, (sentence, self._figures(finding)))))

    def _figures(self, finding: Told) -> str:
        """Return what was measured against what is required, in the project's units."""
        if finding.measured is None:
            return ""
        measured = format_length(finding.measured, self._look.units)
        if finding.required is None:
            return self.tr("Measured {}").format(measured)
        required = format_length(finding.required, self._look.units)
        return self.tr("Measured {}, required {}").format(measured, required)

    def show_nothing(self, at: Point | None, sentence: str) -> None:
        """Go to where something would be, or show the whole section, and say why it is not there."""
        if at is None:
            self.place.go_nowhere()
        else:
            self.place.go_to(at, ())
        self.told.setText(sentence)
