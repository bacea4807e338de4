"""The form beside the drawing."""

import pytest
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from enclosure_app.errors import EnclosureError
from enclosure_app.model.drawing import Units
from enclosure_app.window.parts.sizes_form import SizesForm
from enclosure_app.window.typed.typed_size import Asked

ASKED = (Asked("wide", "Width", 300.0, 100.0, 900.0), Asked("high", "Height", 50.0, 10.0, 99.0))


@pytest.fixture
def form(qtbot: QtBot) -> SizesForm:
    shown = SizesForm()
    qtbot.addWidget(shown)
    return shown


def typed(qtbot: QtBot, form: SizesForm, name: str, text: str) -> None:
    form.fields[name].selectAll()
    qtbot.keyClicks(form.fields[name], text)


def test_a_size_is_taken_when_the_hand_rests(form: SizesForm, qtbot: QtBot) -> None:
    taken: list = []
    form.ask("Part", ASKED, Units.MM, taken.append)
    typed(qtbot, form, "wide", "450")
    assert taken == []
    qtbot.waitUntil(lambda: bool(taken), timeout=2000)
    assert taken == [{"wide": 450.0, "high": 50.0}]


def test_enter_takes_it_at_once_and_escape_goes(form: SizesForm, qtbot: QtBot) -> None:
    taken: list = []
    form.ask("Part", ASKED, Units.MM, taken.append)
    typed(qtbot, form, "high", "20")
    qtbot.keyClick(form.fields["high"], Qt.Key.Key_Return)
    assert taken == [{"wide": 300.0, "high": 20.0}]
    with qtbot.waitSignal(form.closed):
        qtbot.keyClick(form.fields["high"], Qt.Key.Key_Escape)
    assert form.isHidden()


def test_what_cannot_be_is_told_in_one_sentence_until_it_is_mended(
    form: SizesForm, qtbot: QtBot
) -> None:
    taken: list = []
    form.ask("Part", ASKED, Units.MM, taken.append)
    typed(qtbot, form, "wide", "9000")
    form.take_now()
    assert form.wrong.text() == "Width is 9 000 mm: choose between 100 mm and 900 mm.".replace(
        "9 000", "9\u202f000"
    )
    assert taken == []
    typed(qtbot, form, "wide", "800")
    form.take_now()
    assert form.wrong.isHidden()
    assert taken == [{"wide": 800.0, "high": 50.0}]


def test_what_is_refused_later_is_told_too(form: SizesForm) -> None:
    def refuse(values) -> None:  # noqa: ANN001
        raise EnclosureError("That cannot be drawn.")

    form.ask("Part", ASKED, Units.MM, refuse)
    form.take_now()
    assert form.wrong.text() == "That cannot be drawn."


def test_every_field_has_a_name_and_tells_its_range(form: SizesForm) -> None:
    taken: list = []
    form.ask("Part", ASKED, Units.IN, taken.append)
    assert form.fields["high"].accessibleName() == "Height"
    assert form.fields["high"].toolTip() == 'Between 3/8" and 3 7/8"'
