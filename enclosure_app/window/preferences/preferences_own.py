"""What is a person's own and not the project's: name, motion, light, copies."""

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QComboBox, QFormLayout, QLabel, QLineEdit, QWidget

from enclosure_app.window.settings import Settings

_COPIES = (5, 10, 20, 60, 300, 600)  # seconds
_MINUTE = 60


class OwnPage(QWidget):
    """Shows a person's settings. `changed`: one of them is another now."""

    changed = Signal()

    def __init__(self, settings: Settings, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._settings = settings
        self.who, self.motion, self.ground = QLineEdit(self), QComboBox(self), QComboBox(self)
        self.copies = QComboBox(self)
        self._fill_choices()
        self._lay_out()
        self.show_settings()
        self._connect()

    def show_settings(self) -> None:
        """Show the settings as they are now."""
        settings = self._settings
        self.who.setText(settings.who)
        self.motion.setCurrentIndex(max(self.motion.findData(settings.motion), 0))
        self.ground.setCurrentIndex(max(self.ground.findData(settings.ground), 0))
        nearest = min(_COPIES, key=lambda seconds: abs(seconds - settings.copy_after))
        self.copies.setCurrentIndex(self.copies.findData(nearest))

    def _fill_choices(self) -> None:
        for words, data in (
            (self.tr("as the system wants it"), "as_system"),
            (self.tr("for some seconds"), "on"),
            (self.tr("never: still pictures"), "off"),
        ):
            self.motion.addItem(words, data)
        for words, data in (
            (self.tr("as the system wants it"), "as_system"),
            (self.tr("light"), "day"),
            (self.tr("dark"), "night"),
        ):
            self.ground.addItem(words, data)

        for seconds in _COPIES:
            words = self.tr("{} seconds") if seconds < _MINUTE else self.tr("{} min")
            told = words.format(seconds if seconds < _MINUTE else seconds // _MINUTE)
            self.copies.addItem(told, seconds)

    def _lay_out(self) -> None:
        told = QLabel(
            self.tr("These are yours: they go with you to every project on this computer."), self
        )
        told.setWordWrap(True)
        told.setObjectName("quiet")
        self.who.setPlaceholderText(self.tr("is put beside every verdict"))
        form = QFormLayout(self)
        form.setLabelAlignment(Qt.AlignmentFlag.AlignVCenter)
        form.addRow(told)
        form.addRow(self.tr("Your name"), self.who)
        form.addRow(self.tr("Drops run"), self.motion)
        form.addRow(self.tr("The window is"), self.ground)
        form.addRow(self.tr("A copy of unsaved work after"), self.copies)

    def _connect(self) -> None:
        self.who.editingFinished.connect(self._take_name)
        for choice in (self.motion, self.ground, self.copies):
            choice.activated.connect(self._take)

    def _take_name(self) -> None:
        """Take the name, unless the line was only left again."""
        if self.who.isModified():
            self.who.setModified(False)
            self._settings.who = self.who.text()
            self.changed.emit()

    def _take(self) -> None:
        settings = self._settings
        settings.motion = str(self.motion.currentData())
        settings.ground = str(self.ground.currentData())
        settings.copy_after = int(self.copies.currentData())
        self.changed.emit()
