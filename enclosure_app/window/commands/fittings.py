"""The fittings of one window that what its menus do works on."""

from collections.abc import Callable
from dataclasses import dataclass

from PySide6.QtWidgets import QMainWindow

from enclosure_app.window.apart.working import Working
from enclosure_app.window.canvas.canvas import Canvas
from enclosure_app.window.canvas.toolbox import Toolbox
from enclosure_app.window.canvas.workplace import Workplace
from enclosure_app.window.checking import Checking
from enclosure_app.window.document import Document
from enclosure_app.window.filing.filing import Filing
from enclosure_app.window.filing.keeping import Keeping
from enclosure_app.window.filing.units_asking import UnitsAsking
from enclosure_app.window.findings.findings_panel import FindingsPanel
from enclosure_app.window.lines.layer_maps import LayerMaps
from enclosure_app.window.lines.lines_panel import LinesPanel
from enclosure_app.window.lines.noting import Noting
from enclosure_app.window.parts.sizes_form import SizesForm
from enclosure_app.window.settings import Settings
from enclosure_app.window.stage.walking import Walking
from enclosure_app.window.surround.bars import MessageBar
from enclosure_app.window.surround.name_strip import NameStrip
from enclosure_app.window.surround.section_row import SectionRow
from enclosure_app.window.underlay.underlaying import Underlaying


@dataclass(frozen=True, slots=True)
class Fittings:
    """The fittings of one window that its actions work on."""

    window: QMainWindow
    document: Document
    place: Workplace
    checking: Checking
    filing: Filing
    sections: SectionRow
    working: Working
    canvas: Canvas
    findings: FindingsPanel
    lines: LinesPanel
    messages: MessageBar
    toolbox: Toolbox
    sizes: SizesForm
    naming: NameStrip
    noting: Noting
    underlaying: Underlaying
    settings: Settings
    keeping: Keeping
    show_ground: Callable[[str], None]
    maps: LayerMaps
    units: UnitsAsking
    walking: Walking
