"""The canvas: the drawing itself, which is the window. Looks, pans, zooms, and hands on the mouse."""

from dataclasses import replace

from PySide6.QtCore import QEvent, QPoint, QPointF, QRectF, QSize, QSizeF, Qt, Signal
from PySide6.QtGui import (
    QCursor,
    QFocusEvent,
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPaintEvent,
    QRegion,
    QResizeEvent,
)
from PySide6.QtWidgets import QWidget

from enclosure_app.drawing.placement import Box, box_around
from enclosure_app.model.place import Point
from enclosure_app.model.report import SectionResult
from enclosure_app.window.canvas.camera import Camera
from enclosure_app.window.canvas.catching.aids import Ray, kept_ray
from enclosure_app.window.canvas.catching.grid import seen_spacing
from enclosure_app.window.canvas.catching.snapping import Ask, Catch, Snapper
from enclosure_app.window.canvas.ink.look import Look
from enclosure_app.window.canvas.key_hand import KeyHand
from enclosure_app.window.canvas.overlay import Overlay
from enclosure_app.window.canvas.picture.rainfall import Rainfall
from enclosure_app.window.canvas.picture_view import PictureView
from enclosure_app.window.canvas.tools.tool import Pointer, Tool
from enclosure_app.window.canvas.underlay.layer import (
    lying_under,
)
from enclosure_app.window.canvas.workplace import Workplace

_REACH = 10.0  # dots within which something is caught
_SURROUND = 0.1  # of a frame's longer side, that is seen round it
_CLOSER = 1.25  # times: so much nearer than all a frame has to be, to be worth a look of its own


class Canvas(PictureView):
    """Shows one section and lets a tool work on it.

    `pointed` says where the mouse is (a Point, None when it left).
    """

    pointed = Signal(object)
    asked_menu = Signal(QPoint, object)

    def __init__(self, place: Workplace, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.place = place
        self.tool: Tool = Tool(place)
        self.tool.changed.connect(self.update)
        self.overlay = Overlay(place)
        self.rain = Rainfall(self)
        self.rain.moved.connect(self.update)
        self.catching = True
        self.caught: Catch | None = None
        self._look = Look()
        self._snapper: Snapper | None = None
        self._grip: QPointF | None = None
        self._space = False
        self._be_reached()
        place.picked_changed.connect(self.update)
        place.aided.connect(self.update)
        place.resized.connect(self.fit)
        place.document.changed.connect(self._look_below)

    def _be_reached(self) -> None:
        """Be reached by mouse and keys, and by who reads the screen aloud."""
        self.setObjectName("drawing")
        self.setAccessibleName(self.tr("Drawing"))
        self.setMouseTracking(True)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setMinimumSize(QSize(240, 180))
        self.key_hand = KeyHand(self)

    # ---- what is shown -------------------------------------------------------------------------

    def show_result(self, result: SectionResult, look: Look) -> None:
        """Show the result of a section; the office's lines are kept while they stay the same."""
        self._look = look
        under = lying_under(self.place.document.project, self.place.section)
        self.show_scene(result, look, under)
        self.overlay.look = look
        self.rain.show_result(result, look)

    def fit(self) -> None:
        """Show all of the section."""
        box = self.content()
        if box:
            self.look_from(self.camera.fitted(box))

    def fit_in_turn(self) -> None:
        """Show the frame with what is round it; where that is seen, or is nearly all, show all."""
        section, box = self.place.section, self.content()
        if section is None or box is None:
            return
        whole = self.camera.fitted(box)
        around = box_around(section.frame) if section.frame else box
        near = self.camera.fitted(around.inset(-_SURROUND * max(around.width, around.height)))
        closer = near.zoom > _CLOSER * whole.zoom
        self.look_from(near if closer and self.camera != near else whole)

    def content(self) -> Box | None:
        """Return the box around all that the section holds."""
        section = self.place.section
        if section is None:
            return None
        lines = self.scene.linework.box if self.scene else None
        under = lying_under(self.place.document.project, section)
        points = [*section.frame, *(lines.ring if lines else ())]
        points += [corner for each in under for corner in each.outline]
        return box_around(points) if points else None

    def go_to(self, at: Point, across: float = 600.0) -> None:
        """Bring a place into the middle of the view, close enough to see `across` mm around it."""
        side = min(self.camera.size.width(), self.camera.size.height())
        zoom = max(self.camera.zoom, side / across)
        self.look_from(Camera(at, zoom, self.camera.size))

    def flags(self) -> list[tuple[QRectF, str]]:
        """Return where flags are seen, in dots of the view, and the keys of their findings."""
        return self.backing.flags(self.camera)

    def take_tool(self, tool: Tool) -> None:
        """Work with another tool from now on."""
        self.tool.put_away()
        self.tool.changed.disconnect(self.update)
        self.tool = tool
        tool.changed.connect(self.update)
        self.caught = None
        self._show_cursor()
        self.update()

    def _look_below(self) -> None:
        """Paint anew when other pictures lie under the drawing, before it is judged again."""
        under = lying_under(self.place.document.project, self.place.section)
        if self.scene and under != self.scene.underlays:
            self.below.forget_others(self.place.document.project.underlays)
            self.scene = replace(self.scene, underlays=under)
            self.renew()

    # ---- Qt's events ---------------------------------------------------------------------------

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint the picture, and over it what the tool does and what is picked."""
        painter = QPainter(self)
        painter.fillRect(event.rect(), self.overlay.paper)
        if self.scene:
            self.backing.paint(painter, self.camera)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        self._paint_rain(painter)
        self.overlay.paint(painter, self.camera, self.scene.result if self.scene else None)
        self.tool.paint(painter, self.camera)
        if self.caught:
            self.overlay.paint_catch(painter, self.camera, self.caught)

    def _paint_rain(self, painter: QPainter) -> None:
        """Paint the drops, but none over a flag or our own words."""
        painter.save()
        painter.setClipRegion(QRegion(self.rect()) - self.backing.written(self.camera))
        self.rain.paint(painter, self.camera)
        painter.restore()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Keep the same place in the middle."""
        first = event.oldSize().width() <= 1
        self.camera = self.camera.resized(QSizeF(event.size()))
        if first:
            self.fit()
        self.renew_soon()

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Pan with the middle button or with space held, else hand the press to the tool."""
        self.setFocus()
        if event.button() == Qt.MouseButton.MiddleButton or self._space:
            self._grip = event.position()
            self.setCursor(Qt.CursorShape.ClosedHandCursor)
        elif event.button() == Qt.MouseButton.LeftButton:
            self.tool.press(self._pointer(event.position(), event.modifiers()))
        elif event.button() == Qt.MouseButton.RightButton:
            pointer = self._pointer(event.position(), event.modifiers())
            self.asked_menu.emit(event.globalPosition().toPoint(), pointer)

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        """Pan, or hand the move to the tool."""
        if self._grip is not None:
            self.look_from(self.camera.panned(event.position() - self._grip))
            self._grip = event.position()
            return
        pointer = self._pointer(event.position(), event.modifiers())
        self.tool.move(pointer)
        self.pointed.emit(pointer.at)
        if self.tool.catches:
            self.update()

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        """Stop panning, or hand the release to the tool."""
        if self._grip is not None:
            self._grip = None
            self._show_cursor()
        elif event.button() == Qt.MouseButton.LeftButton:
            self.tool.release(self._pointer(event.position(), event.modifiers()))

    def mouseDoubleClickEvent(self, event: QMouseEvent) -> None:
        """Hand a double click to the tool."""
        if event.button() == Qt.MouseButton.LeftButton:
            self.tool.double(self._pointer(event.position(), event.modifiers()))

    def event(self, event: QEvent) -> bool:
        """Keep keys from the menus that the tool wants."""
        override = event.type() == QEvent.Type.ShortcutOverride
        if override and isinstance(event, QKeyEvent) and self.tool.wants(event):
            event.accept()
            return True
        return super().event(event)

    def focusNextPrevChild(self, onward: bool) -> bool:
        """Let Tab offer what the tool has to choose from; else it goes to the next panel."""
        return self.tool.turn(onward=onward) or super().focusNextPrevChild(onward)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Hand keys to the tool; Escape gives up, space is the hand that moves the paper."""
        if self.tool.key(event):
            self.update()
            return
        if event.key() == Qt.Key.Key_Space and not event.isAutoRepeat():
            self._space = True
            self._show_cursor()
        elif event.key() == Qt.Key.Key_Escape:
            self._give_up(event)
        elif not self._moved_by_arrow(event):
            super().keyPressEvent(event)

    def _give_up(self, event: QKeyEvent) -> None:
        """Give up what was begun, else the tool; with neither, Escape is for the window."""
        tool = self.tool
        if not tool.cancel():
            tool.done.emit()
            event.setAccepted(self.tool is not tool)

    def keyReleaseEvent(self, event: QKeyEvent) -> None:
        """Let the paper go when space comes up."""
        if event.key() == Qt.Key.Key_Space and not event.isAutoRepeat():
            self._space = False
            self._show_cursor()
        else:
            super().keyReleaseEvent(event)

    def focusOutEvent(self, event: QFocusEvent) -> None:
        """Let the paper go: the key that comes up is heard elsewhere."""
        self._space = False
        self._show_cursor()
        super().focusOutEvent(event)

    def leaveEvent(self, event: QEvent) -> None:
        """Say that the mouse is elsewhere."""
        del event
        self.caught = None
        self.pointed.emit(None)
        self.update()

    # ---- the mouse -----------------------------------------------------------------------------

    def _pointer(self, dot: QPointF, keys: Qt.KeyboardModifier) -> Pointer:
        bare = self.camera.place(dot)
        ray = self._ray(bare, keys)
        self.caught = self._catch(bare, ray) if self.tool.catches and self.catching else None
        return Pointer(dot, bare, self.camera, self.caught, keys, ray)

    def _ray(self, bare: Point, keys: Qt.KeyboardModifier) -> Ray | None:
        """Return what a line is kept to: angles are kept, or Shift is held, which turns that round."""
        anchor, aids = self.tool.anchor, self.place.aids
        shift = bool(keys & Qt.KeyboardModifier.ShiftModifier)
        if anchor is None or anchor == bare or aids.kept is shift:
            return None
        return kept_ray(anchor, bare, aids.step, self.tool.along)

    def _catch(self, bare: Point, ray: Ray | None) -> Catch | None:
        section, aids, tool = self.place.section, self.place.aids, self.tool
        if section is None:
            return None
        last = self._snapper
        moving = bool(tool.without)
        if (
            last is None
            or last.without != tool.without
            or (last.section is not section and not moving)
        ):
            self._snapper = last = Snapper(section, tool.without)
        units = self.place.document.project.units
        return last.catch(
            Ask(
                at=bare,
                reach=_REACH / self.camera.zoom,
                anchor=tool.anchor,
                beside=aids.beside if tool.catches_beside else 0.0,
                ray=ray,
                grid=seen_spacing(aids.spacing(units), self.camera.zoom) if aids.grid_shown else 0,
            )
        )

    def _moved_by_arrow(self, event: QKeyEvent) -> bool:
        steps = {
            Qt.Key.Key_Left: QPointF(60, 0),
            Qt.Key.Key_Right: QPointF(-60, 0),
            Qt.Key.Key_Up: QPointF(0, 60),
            Qt.Key.Key_Down: QPointF(0, -60),
        }
        step = steps.get(Qt.Key(event.key()))
        if step is not None:
            self.look_from(self.camera.panned(step))
        return step is not None

    def _show_cursor(self) -> None:
        shape = Qt.CursorShape.OpenHandCursor if self._space else self.tool.cursor
        self.setCursor(QCursor(shape))
