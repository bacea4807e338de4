"""One place of the site list, large: what it is, what to look at, and what to beware of."""

from collections.abc import Mapping

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLabel, QVBoxLayout, QWidget

from enclosure_app.model.drawing import Units
from enclosure_app.model.said.site_check import SiteCheck
from enclosure_app.planning.site_list.places import SitePlace
from enclosure_app.window.walk.looks import Looks
from enclosure_app.window.words.labels import control_word


class PlaceCard(QWidget):
    """Shows a place and takes what was seen there."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.kind, self.name = self._label("kind"), self._label("asked")
        self.cautions = self._label("caution")
        self.looks = Looks(self)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(9)
        for part in (self.kind, self.name, self.looks, self.cautions):
            column.addWidget(part)

    def show_place(self, place: SitePlace, units: Units, seen: Mapping[str, SiteCheck]) -> None:
        """Show a place and what was seen there."""
        controls = ", ".join(control_word(control) for control in place.controls)
        self.kind.setText(self.tr("Look here · {}").format(controls))
        self.name.setText(place.title)
        self.looks.show_place(place, units, seen)
        self.cautions.setText("\n".join(place.cautions))
        self.cautions.setVisible(bool(place.cautions))

    def _label(self, name: str) -> QLabel:
        label = QLabel(self)
        label.setObjectName(name)
        label.setWordWrap(True)
        label.setTextFormat(Qt.TextFormat.PlainText)
        return label
