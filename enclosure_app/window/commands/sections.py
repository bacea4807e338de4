"""What Edit in the menu does with sections: their names, and which of them there are."""

from PySide6.QtCore import QObject

from enclosure_app.model.edits import remove_section, rename_section
from enclosure_app.window.commands.fittings import Fittings


class SectionCommands(QObject):
    """Naming and removing the section in view."""

    def __init__(self, fittings: Fittings) -> None:
        super().__init__(fittings.window)
        self._fittings = fittings

    def name_section(self) -> None:
        """Ask for another name of the section in view."""
        section = self._fittings.place.section
        if section is not None:
            self._fittings.naming.ask(self.tr("Name of the section"), section.name, self._name)

    def drop_section(self) -> None:
        """Remove the section in view, unless it is the only one."""
        place = self._fittings.place
        project, section = place.document.project, place.section
        if section is None:
            return
        if len(project.sections) == 1:
            place.refused.emit(
                self.tr("This is the only section: delete what is in it, or begin a new sheet.")
            )
            return
        text = self.tr("Remove {}").format(section.name)
        place.document.apply(text, remove_section(project, place.index))
        self._fittings.checking.check_now()

    def _name(self, name: str) -> None:
        place = self._fittings.place
        after = rename_section(place.document.project, place.index, name)
        place.document.apply(self.tr("Name the section"), after)
