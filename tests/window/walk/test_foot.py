"""The foot of the walk: on and back, closer and wider."""

from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from enclosure_app.window.walk.foot import Foot

LEFT = Qt.MouseButton.LeftButton


def test_every_button_tells_its_way(qtbot: QtBot) -> None:
    foot = Foot()
    qtbot.addWidget(foot)
    for button, signal, told in (
        (foot.onward, foot.stepped, [1]),
        (foot.before, foot.stepped, [-1]),
        (foot.closer, foot.zoomed, [1.5]),
        (foot.wider, foot.zoomed, [1 / 1.5]),
        (foot.whole, foot.all_wanted, []),
    ):
        with qtbot.waitSignal(signal) as heard:
            qtbot.mouseClick(button, LEFT)
        assert heard.args == told
        assert button.accessibleName()


def test_the_ends_are_ends_and_what_is_done_offers_the_next(qtbot: QtBot) -> None:
    foot = Foot()
    qtbot.addWidget(foot)
    foot.show_where(first=True, last=False, done=True)
    assert (foot.before.isEnabled(), foot.onward.isEnabled()) == (False, True)
    assert foot.onward.objectName() == "main"
    foot.show_where(first=False, last=True, done=False)
    assert (foot.before.isEnabled(), foot.onward.isEnabled()) == (True, False)
    assert foot.onward.objectName() == ""
