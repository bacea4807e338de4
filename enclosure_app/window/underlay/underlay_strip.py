"""A strip above the drawing for what lies under it: how large it is, where, how pale, whether at all."""

from collections.abc import Callable
from functools import partial

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QAction, QActionGroup
from PySide6.QtWidgets import (
    QComboBox,
    QHBoxLayout,
    QLabel,
    QMenu,
    QPushButton,
    QSizePolicy,
    QWidget,
)

from enclosure_app.drawing.lengths import format_length
from enclosure_app.drawing.scales import IMPERIAL, METRIC
from enclosure_app.errors import EnclosureError
from enclosure_app.geometry.similarity import Similarity
from enclosure_app.model.edits import remove_underlay, set_paper_scale, show_underlay
from enclosure_app.model.project import Project
from enclosure_app.model.underlay import Underlay
from enclosure_app.window.canvas.tools.set_scale import offer_drawn
from enclosure_app.window.canvas.underlay.page_moving import edit_apart
from enclosure_app.window.canvas.workplace import Workplace

_STRENGTHS = (1.0, 0.75, 0.5, 0.25)
_LARGEST, _SMALLEST = 2.0, 100.0  # scales of paper that sections are drawn at


class UnderlayStrip(QWidget):
    """Shows one underlay of the section in view. `wanted`: the name of an action to do."""

    wanted = Signal(str)

    def __init__(self, place: Workplace, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._place = place
        self.setObjectName("strip")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self.setAccessibleName(self.tr("Under the drawing"))
        self.which = QComboBox(self)
        self.which.setAccessibleName(self.tr("Which picture under the drawing"))
        self.which.activated.connect(lambda _: self.refresh())
        self.words = QLabel(self)
        self.words.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)
        self.scale = self._button(self.tr("Set the scale"), lambda: self.wanted.emit("tool_scale"))
        self.scale.setToolTip(self.tr("Click two places, and type how far apart they truly are"))
        self.paper = self._button(self.tr("Paper scale"))
        self.paper.setMenu(self._made_scales())
        self.paper.setToolTip(self.tr("The scale that is written on the sheet of paper"))
        self.seen = self._button(self.tr("Hide"), self._show_or_hide)
        self.seen.setToolTip(self.tr("Hides the picture; the lines of its page stay"))
        self.more = self._button(self.tr("More"))
        self.more.setMenu(self._made_more())
        line = QHBoxLayout(self)
        line.setContentsMargins(14, 4, 10, 4)
        line.addWidget(self.which)
        line.addWidget(self.words, 1)
        for button in (self.scale, self.paper, self.seen, self.more):
            line.addWidget(button)
        place.document.changed.connect(self.refresh)
        place.turned.connect(self.refresh)
        self.refresh()

    @property
    def index(self) -> int | None:
        """Which underlay of the project is shown here, None where there is none."""
        held = self.which.currentData()
        return held if isinstance(held, int) else None

    def refresh(self) -> None:
        """Show what there is now."""
        there = self._there()
        self._name(there)
        self.setVisible(bool(there))
        underlay = self._underlay()
        if underlay is None:
            return
        told = self._told(underlay)
        self.words.setText(told)
        self.words.setToolTip(f"{underlay.name}\n{told}")
        self.seen.setText(self.tr("Hide") if underlay.shown else self.tr("Show"))
        for button in (self.scale, self.paper):
            button.setEnabled(underlay.shown and not underlay.locked)
        self.paper.setVisible(underlay.paper_mm > 0)
        self._lay.setEnabled(underlay.shown and not underlay.locked)
        self._remove.setEnabled(not underlay.locked)
        self._lock.setChecked(underlay.locked)
        for share, action in self._strengths.items():
            action.setChecked(abs(share - underlay.strength) < 0.01)

    # ---- how it is put together ----------------------------------------------------------------

    def _button(self, text: str, does: Callable[[], object] | None = None) -> QPushButton:
        button = QPushButton(text, self)
        if does:
            button.clicked.connect(lambda _=False: does())
        return button

    def _made_scales(self) -> QMenu:
        """Return the scales a sheet may have been plotted at, metric ones first."""
        menu = QMenu(self)
        for series in (METRIC, IMPERIAL):
            for scale in series:
                if _LARGEST <= scale.ratio <= _SMALLEST:
                    action = menu.addAction(scale.text)
                    action.triggered.connect(lambda _=False, by=scale.ratio: self._set_paper(by))
            menu.addSeparator()
        return menu

    def _made_more(self) -> QMenu:
        menu = QMenu(self)
        self._lay = menu.addAction(self.tr("Move or turn it"))
        self._lay.triggered.connect(lambda: self.wanted.emit("tool_lay"))
        self._lock = menu.addAction(self.tr("Locked where it lies"))
        self._lock.setCheckable(True)
        self._lock.triggered.connect(self._set_lock)
        menu.addSeparator()
        group = QActionGroup(menu)
        self._strengths: dict[float, QAction] = {}
        names = (self.tr("Strong"), self.tr("Paler"), self.tr("Pale"), self.tr("Faint"))
        for share, name in zip(_STRENGTHS, names, strict=True):
            action = menu.addAction(name)
            action.setCheckable(True)
            group.addAction(action)
            action.triggered.connect(lambda _=False, one=share: self._set_strength(one))
            self._strengths[share] = action
        menu.addSeparator()
        self._remove = menu.addAction(self.tr("Remove it, and its lines"))
        self._remove.triggered.connect(self._take_away)
        menu.addAction(self.tr("Put another one under the drawing…")).triggered.connect(
            lambda: self.wanted.emit("put_underlay")
        )
        return menu

    # ---- what is shown -------------------------------------------------------------------------

    def _there(self) -> list[tuple[int, Underlay]]:
        section = self._place.section
        names = (section.name, "") if section else ()
        under = enumerate(self._place.document.project.underlays)
        return [(index, each) for index, each in under if each.section in names]

    def _name(self, there: list[tuple[int, Underlay]]) -> None:
        """Name what there is; the last one that came is shown."""
        keys = [(each.name, index) for index, each in there]
        if keys != [(self.which.itemText(i), self.which.itemData(i)) for i in range(self._count)]:
            more = len(keys) > self._count
            kept = self.which.currentIndex()
            self.which.clear()
            for name, index in keys:
                self.which.addItem(name, index)
            last = len(keys) - 1
            self.which.setCurrentIndex(last if more or kept > last else kept)
        self.which.setVisible(len(keys) > 1)

    @property
    def _count(self) -> int:
        return self.which.count()

    def _underlay(self) -> Underlay | None:
        index, there = self.index, self._place.document.project.underlays
        return there[index] if index is not None and index < len(there) else None

    def _told(self, underlay: Underlay) -> str:
        parts = [self._told_scale(underlay)]
        if not underlay.shown:
            parts = [self.tr("Hidden")]
        if underlay.locked:
            parts.append(self.tr("locked"))
        if self._count == 1:
            parts.append(underlay.name)
        return "  ·  ".join(parts)

    def _told_scale(self, underlay: Underlay) -> str:
        if not underlay.to_scale:
            paper = self.tr("Not to scale: lengths are the paper's")
            return paper if underlay.paper_mm else self.tr("Not to scale: its size is not known")
        if underlay.paper_mm:
            ratio = underlay.mm_per_pixel / underlay.paper_mm
            return self.tr("To scale, 1:{:.4g} on paper").format(ratio)
        wide = underlay.size[0] * underlay.mm_per_pixel
        units = self._place.document.project.units
        return self.tr("To scale, {} wide").format(format_length(wide, units))

    # ---- what is done --------------------------------------------------------------------------

    def _show_or_hide(self) -> None:
        underlay = self._underlay()
        if underlay:
            text = self.tr("Hide the picture") if underlay.shown else self.tr("Show the picture")
            self._do(text, lambda p, i: show_underlay(p, i, shown=not underlay.shown))

    def _set_lock(self, locked: bool) -> None:
        text = self.tr("Lock the picture") if locked else self.tr("Unlock the picture")
        self._do(text, lambda p, i: show_underlay(p, i, locked=locked))

    def _set_strength(self, share: float) -> None:
        text = self.tr("Paint the picture paler or stronger")
        self._do(text, lambda p, i: show_underlay(p, i, strength=share))

    def _take_away(self) -> None:
        self._do(self.tr("Remove the picture"), remove_underlay)

    def _set_paper(self, ratio: float) -> None:
        underlay, index = self._underlay(), self.index
        if underlay is None or index is None:
            return
        text = self.tr("Set the scale of the paper")

        def then() -> None:
            factor = underlay.paper_mm * ratio / underlay.mm_per_pixel
            self._place.resized.emit()
            offer_drawn(self._place, index, Similarity.about(underlay.at, factor))

        edit_apart(self._place, text, partial(set_paper_scale, index=index, ratio=ratio), then)

    def _do(self, text: str, change: Callable[[Project, int], Project]) -> bool:
        index = self.index
        if index is None:
            return False
        try:
            after = change(self._place.document.project, index)
        except EnclosureError as error:
            self._place.refuse(error)
            return False
        self._place.document.apply(text, after)
        return True
