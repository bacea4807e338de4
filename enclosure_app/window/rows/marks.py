"""What rows of lists are painted with: their ground, and controls by hue, pattern and word."""

from PySide6.QtCore import QPointF, QRect, Qt
from PySide6.QtGui import QIcon, QPainter, QPalette, QPixmap
from PySide6.QtWidgets import QStyle, QStyleOptionViewItem

from enclosure_app.model.product import Control, Product
from enclosure_app.window.canvas.ink.line_pens import line_pen
from enclosure_app.window.canvas.ink.look import screen_theme
from enclosure_app.window.words.labels import control_word

SWATCH = 20  # dots long
_GAP, _AFTER = 4, 9
_THICK = 3.2


def controls_of(product: Product) -> list[Control]:
    """Return what a product controls, in the usual order."""
    return [control for control in Control if control in product.controls]


def is_dark(palette: QPalette) -> bool:
    """Whether the list that wears this palette is dark."""
    return palette.color(QPalette.ColorRole.Base).lightness() < 128


def control_icon(control: Control, palette: QPalette) -> QIcon:
    """Return the mark of a control for a button, sharp at twice the size too."""
    picture = QPixmap(2 * SWATCH, 2 * SWATCH)
    picture.setDevicePixelRatio(2.0)
    picture.fill(Qt.GlobalColor.transparent)
    painter = QPainter(picture)
    pen = screen_theme(dark=is_dark(palette)).control(control)
    painter.setPen(line_pen(pen, _THICK))
    painter.drawLine(QPointF(0, SWATCH / 2), QPointF(SWATCH, SWATCH / 2))
    painter.end()
    return QIcon(picture)


def paint_controls(
    painter: QPainter, room: QRect, controls: list[Control], palette: QPalette, *, words: bool
) -> int:
    """Paint the marks of controls from the left of a room; return where what follows may begin.

    They have their `words` beside them only where there is room for all of these.
    """
    theme, x = screen_theme(dark=is_dark(palette)), room.left()
    advance = painter.fontMetrics().horizontalAdvance
    needed = sum(SWATCH + _GAP + advance(control_word(each)) + _AFTER for each in controls)
    words = words and needed - _AFTER <= room.width()
    for control in controls:
        middle = room.center().y() + 0.5
        painter.setPen(line_pen(theme.control(control), _THICK))
        painter.drawLine(QPointF(x, middle), QPointF(x + SWATCH, middle))
        x += SWATCH + _GAP
        if words:
            text = control_word(control)
            box = QRect(x, room.top(), room.right() - x, room.height())
            painter.setPen(palette.color(QPalette.ColorRole.Text))
            painter.drawText(box, Qt.AlignmentFlag.AlignVCenter, text)
            x += advance(text) + _AFTER
    return x


def paint_ground(painter: QPainter, option: QStyleOptionViewItem) -> None:
    """Paint the ground of a row that is chosen, and a ring about the one that keys act on."""
    palette: QPalette = option.palette
    state: QStyle.StateFlag = option.state
    if state & QStyle.StateFlag.State_Selected:
        painter.fillRect(option.rect, palette.color(QPalette.ColorRole.Highlight))
        bar = QRect(option.rect.left(), option.rect.top(), 3, option.rect.height())
        painter.fillRect(bar, palette.color(QPalette.ColorRole.Link))
    if state & QStyle.StateFlag.State_HasFocus:
        painter.setPen(palette.color(QPalette.ColorRole.Link))
        painter.drawRect(option.rect.adjusted(0, 0, -1, -1))
