"""The rows of the list as they are painted: flags, badges, words."""

import pytest
from PySide6.QtCore import QRect
from PySide6.QtGui import QColor, QImage, QPainter
from PySide6.QtWidgets import QListView, QStyle, QStyleOptionViewItem
from pytestqt.qtbot import QtBot

from enclosure_app.model.drawing import Units
from enclosure_app.model.finding import Severity
from enclosure_app.model.said.decision import Decision, State
from enclosure_app.window.dress import dress
from enclosure_app.window.findings.findings_delegate import FindingsDelegate
from enclosure_app.window.findings.findings_model import ROW, FindingsModel
from tests.drawing import eave


@pytest.fixture
def view(qtbot: QtBot, qapp: object) -> QListView:
    dress(qapp, dark=False)  # type: ignore[arg-type]
    made = QListView()
    qtbot.addWidget(made)
    made.setModel(FindingsModel(made))
    made.setItemDelegate(FindingsDelegate(made))
    made.resize(350, 700)
    return made


def painted(view: QListView, row: int, *, width: int = 350, more: int = 0) -> QImage:
    """Return a row as it is painted, in a room that is so many dots higher than it asks for."""
    option = QStyleOptionViewItem()
    option.initFrom(view)
    option.widget = view
    index = view.model().index(row, 0)
    high = view.itemDelegate().sizeHint(option, index).height() + more
    image = QImage(width, high, QImage.Format.Format_RGB32)
    image.fill(QColor("#ffffff"))
    option.rect = QRect(0, 0, width, high)
    option.state = QStyle.StateFlag.State_Enabled
    painter = QPainter(image)
    view.itemDelegate().paint(painter, option, index)
    painter.end()
    return image


def flag(image: QImage) -> QImage:
    return image.copy(8, 4, 44, 40)


def test_severities_differ_by_the_shape_of_the_flag(view: QListView) -> None:
    findings = [
        next(f for f in eave.result().findings if f.severity is severity)
        for severity in (Severity.FAULT, Severity.DOUBT, Severity.REMARK)
    ]
    model = view.model()
    model.show(eave.result(findings=tuple(findings)), Units.MM)
    images = [
        flag(painted(view, row)).convertToFormat(QImage.Format.Format_Mono) for row in range(3)
    ]
    assert all(a != b for i, a in enumerate(images) for b in images[:i])


@pytest.mark.parametrize("state", [state for state in State if state is not State.OPEN])
def test_a_verdict_stands_on_the_flag(view: QListView, state: State) -> None:
    view.model().show(eave.result(), Units.MM)
    plain = flag(painted(view, 1))
    decided = {eave.SHORT.key: Decision(eave.SHORT.key, state, "Ida", remark="So.")}
    view.model().show(eave.result(decisions=decided), Units.MM)
    assert flag(painted(view, 1)) != plain


def test_a_long_sentence_makes_a_higher_row(view: QListView) -> None:
    view.model().show(eave.result(), Units.MM)
    wide = painted(view, 0).height()
    view.resize(200, 700)
    view.show()
    assert painted(view, 0, width=200).height() > wide


def test_no_line_of_a_sentence_is_cut_off_at_any_width(view: QListView) -> None:
    view.show()
    view.model().show(eave.result(), Units.MM)
    for width in range(250, 420, 3):
        view.resize(width + view.width() - view.viewport().width(), 700)
        assert view.viewport().width() == width
        as_asked = painted(view, 0, width=width)
        higher = painted(view, 0, width=width, more=40)
        words = QRect(0, 0, width, as_asked.height() - 2)  # without the line below it
        assert higher.copy(words) == as_asked.copy(words), width


def test_where_nothing_may_be_there_the_list_says_so(view: QListView) -> None:
    index = view.model().index
    view.model().show(eave.result(), Units.MM)
    rows = [index(row, 0).data(ROW) for row in range(view.model().rowCount())]
    told = {row.rule: view.itemDelegate().needed(row) for row in rows}
    assert told["gap"] == "none allowed"
    assert told["short-lap"] == "of 100 mm"


def test_what_is_gone_is_painted_without_a_number(view: QListView) -> None:
    gone = {"gap:x": Decision("gap:x", State.MENDED, about="A gap.")}
    view.model().show(eave.result(findings=(), decisions=gone), Units.MM)
    image = painted(view, 0)
    assert image.pixelColor(14, 24) == QColor("#ffffff")  # no flag
    assert image.pixelColor(26, 24) != QColor("#ffffff")  # the badge
