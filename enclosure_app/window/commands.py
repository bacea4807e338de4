"""What every action of the menus does, by the name it has in the table of actions."""

from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path

from PySide6.QtCore import QObject
from PySide6.QtPrintSupport import QPrintDialog
from PySide6.QtWidgets import QDialog, QFileDialog, QMainWindow, QTextBrowser, QVBoxLayout

from enclosure_app.errors import EnclosureError
from enclosure_app.model.product import Control
from enclosure_app.window import printing
from enclosure_app.window.actions import keys_html
from enclosure_app.window.bars import MessageBar
from enclosure_app.window.canvas.canvas import Canvas
from enclosure_app.window.canvas.tools.select import Select
from enclosure_app.window.canvas.workplace import Workplace
from enclosure_app.window.checking import Checking
from enclosure_app.window.document import Document
from enclosure_app.window.filing import Filing
from enclosure_app.window.findings_panel import FindingsPanel
from enclosure_app.window.giving import given_product
from enclosure_app.window.noting import Noting
from enclosure_app.window.pages import about_html
from enclosure_app.window.toolbox import Toolbox

_CLOSER = 1.4


@dataclass(frozen=True, slots=True)
class Parts:
    """The parts of one window that its actions work on."""

    window: QMainWindow
    document: Document
    place: Workplace
    checking: Checking
    filing: Filing
    canvas: Canvas
    findings: FindingsPanel
    messages: MessageBar
    toolbox: Toolbox
    noting: Noting
    show_ground: Callable[[str], None]


class Commands(QObject):
    """The doings of one window."""

    def __init__(self, parts: Parts) -> None:
        super().__init__(parts.window)
        self._parts = parts
        self.leaving = False

    # ---- files ---------------------------------------------------------------------------------

    def new_sheet(self) -> None:
        """Begin with an empty sheet."""
        self.ask_to_save(self._parts.filing.new_sheet)

    def open_file(self) -> None:
        """Ask for a file and open it."""
        self.ask_to_save(self._parts.filing.ask_what_to_open)

    def use_layer_map(self) -> None:
        """Read the drawing again with a layer map."""
        self.ask_to_save(self._parts.filing.use_layer_map)

    def save(self) -> None:
        """Save the project."""
        self._parts.filing.save()

    def save_as(self) -> None:
        """Save the project elsewhere."""
        self._parts.filing.save_as()

    def write_pdf(self) -> None:
        """Write the marked-up sheets, and say where they are."""
        parts = self._parts
        project = parts.document.project
        stem = Path(project.source or project.title or "section").with_suffix(".pdf").name
        title = self.tr("Write the marked-up sheet")
        name, _ = QFileDialog.getSaveFileName(parts.window, title, stem, "PDF (*.pdf)")
        if name:
            self.write_pdf_to(Path(name))

    def write_pdf_to(self, path: Path) -> None:
        """Write the marked-up sheets to a file."""
        parts = self._parts
        try:
            printing.write_pdf(path, parts.document.project, tuple(parts.checking.results))
        except EnclosureError as error:
            parts.messages.say(str(error))
            return
        parts.messages.say(self.tr("The sheet is written: {}").format(path))

    def preview(self) -> None:
        """Look at the sheets before they are printed."""
        parts = self._parts
        results = tuple(parts.checking.results)
        dialog = printing.preview(parts.window, parts.document.project, results)
        dialog.open()

    def print_sheets(self) -> None:
        """Ask for a printer, and print the sheets."""
        parts = self._parts
        printer = printing.made_printer(parts.document.project)
        if QPrintDialog(printer, parts.window).exec() != QDialog.DialogCode.Accepted:
            return
        results = tuple(parts.checking.results)
        try:
            printing.print_sheets(printer, parts.document.project, results)
        except EnclosureError as error:
            parts.messages.say(str(error))

    def close(self) -> None:
        """Close the window."""
        self._parts.window.close()

    def leave(self) -> None:
        """Close the window, whatever is not saved."""
        self.leaving = True
        self._parts.window.close()

    def ask_to_save(self, then: Callable[[], object]) -> None:
        """Go on with `then`, after asking in place what is to become of unsaved changes."""
        parts = self._parts
        if not parts.document.modified:
            then()
            return

        def save_first() -> None:
            if parts.filing.save():
                then()

        question = self.tr("What you changed since the last save is not kept yet.")
        answers = {self.tr("Save"): save_first, self.tr("Go on without saving"): then}
        parts.messages.ask(question, answers)

    # ---- editing -------------------------------------------------------------------------------

    def delete(self) -> None:
        """Remove what is picked, or what the tool in hand takes out."""
        if self._parts.place.picked:
            Select(self._parts.place).delete()

    def pick_all(self) -> None:
        """Pick every piece."""
        section = self._parts.place.section
        self._parts.place.pick(section.by_name if section else ())

    def pick_same(self) -> None:
        """Pick every piece of the same products as those that are picked."""
        place, section = self._parts.place, self._parts.place.section
        if section:
            products = {section.by_name[name].product for name in place.picked}
            place.pick([piece.name for piece in section.pieces if piece.product in products])

    def pick_none(self) -> None:
        """Pick nothing."""
        self._parts.place.pick(())

    def pick_layer(self, layer: str) -> None:
        """Pick everything on a layer of the drawing."""
        section = self._parts.place.section
        if section:
            names = [piece.name for piece in section.pieces if piece.layer == layer]
            lines = [stroke.handle for stroke in section.strokes if stroke.layer == layer]
            self._parts.place.pick(names, lines)

    def give_product(self) -> None:
        """Say that what is picked is made of the product that is chosen."""
        place = self._parts.place
        section = place.section
        if section is None or place.product not in section.products:
            return
        if not (place.picked or place.picked_lines):
            place.refused.emit(self.tr("Pick the lines first that are made of this product."))
            return
        text = self.tr("Make it {}").format(section.products[place.product].name)
        try:
            after = given_product(
                place.document.project,
                place.index,
                (place.picked, place.picked_lines),
                place.product,
            )
        except EnclosureError as error:
            place.refuse(error)
            return
        place.document.apply(text, after)

    def read_notes(self) -> None:
        """Read the drawing's notes, and offer what they say."""
        self._parts.noting.read()

    # ---- tools ---------------------------------------------------------------------------------

    def tool_select(self) -> None:
        """Pick and move."""
        self._parts.toolbox.take("select")

    def tool_points(self) -> None:
        """Edit points."""
        self._parts.toolbox.take("points")

    def tool_trace(self) -> None:
        """Trace a sheet along drawn lines."""
        self._parts.toolbox.take("trace")

    def tool_sheet(self) -> None:
        """Draw a sheet."""
        self._parts.toolbox.take("sheet")

    def tool_area(self) -> None:
        """Draw a board."""
        self._parts.toolbox.take("area")

    def tool_inside(self) -> None:
        """Mark inside."""
        self._parts.toolbox.take("inside")

    def tool_outside(self) -> None:
        """Mark outside."""
        self._parts.toolbox.take("outside")

    def tool_frame(self) -> None:
        """Draw the frame."""
        self._parts.toolbox.take("frame")

    def tool_measure(self) -> None:
        """Measure."""
        self._parts.toolbox.take("measure")

    def catching(self, on: bool) -> None:
        """Catch ends, middles and crossings, or not."""
        self._parts.canvas.catching = on

    # ---- looking -------------------------------------------------------------------------------

    def fit(self) -> None:
        """Show all."""
        self._parts.canvas.fit()

    def closer(self) -> None:
        """Look closer."""
        self._parts.canvas.zoom(_CLOSER)

    def wider(self) -> None:
        """Look wider."""
        self._parts.canvas.zoom(1 / _CLOSER)

    def only_all(self) -> None:
        """Show all control layers."""
        self._parts.place.show_only(None)

    def only_water(self) -> None:
        """Show the water layer alone."""
        self._parts.place.show_only(Control.WATER)

    def only_air(self) -> None:
        """Show the air layer alone."""
        self._parts.place.show_only(Control.AIR)

    def only_vapour(self) -> None:
        """Show the vapour layer alone."""
        self._parts.place.show_only(Control.VAPOUR)

    def only_heat(self) -> None:
        """Show the heat layer alone."""
        self._parts.place.show_only(Control.HEAT)

    def day(self) -> None:
        """Show everything light."""
        self._parts.show_ground("day")

    def night(self) -> None:
        """Show everything dark."""
        self._parts.show_ground("night")

    def as_system(self) -> None:
        """Show everything as the system wants it."""
        self._parts.show_ground("as_system")

    def full_screen(self, on: bool) -> None:
        """Use the whole screen, or not."""
        self._parts.window.showFullScreen() if on else self._parts.window.showNormal()

    # ---- findings and help ---------------------------------------------------------------------

    def next_finding(self) -> None:
        """Go to the next finding."""
        self._parts.findings.step(1)

    def last_finding(self) -> None:
        """Go to the finding before."""
        self._parts.findings.step(-1)

    def why(self) -> None:
        """Show the page of the rule of the finding that is chosen."""
        self._parts.findings.advice.button.click()

    def show_keys(self) -> None:
        """Show all keys on one page."""
        self._page(self.tr("All keys"), keys_html())

    def show_about(self) -> None:
        """Say what the program is and where its limits are."""
        self._page(self.tr("About"), about_html())

    def _page(self, title: str, html: str) -> None:
        page = QDialog(self._parts.window)
        page.setWindowTitle(title)
        page.resize(560, 640)
        text = QTextBrowser(page)
        text.setHtml(html)
        text.document().setDocumentMargin(18)
        column = QVBoxLayout(page)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(text)
        page.open()
