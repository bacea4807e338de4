"""The window speaks the person's language; so do its findings, Qt's own words and the numbers."""

from collections.abc import Iterator

import pytest
from PySide6.QtCore import QCoreApplication, QLocale
from pytestqt.qtbot import QtBot

from enclosure_app.drawing.lengths import format_length
from enclosure_app.language import say
from enclosure_app.model.drawing import Units
from enclosure_app.window.languages import AS_SYSTEM, TONGUES, speak_in, tongue_of
from enclosure_app.window.products.product_figures import thickness_text
from enclosure_app.window.typed.typed_length import read_length
from enclosure_app.window.typed.typed_size import Asked, read_size, written_size

ENGLISH, GERMAN = TONGUES


@pytest.fixture
def german(qtbot: QtBot) -> Iterator[None]:
    application = QCoreApplication.instance()
    assert application is not None
    speak_in(application, GERMAN)
    yield
    speak_in(application, ENGLISH)


@pytest.mark.parametrize(
    ("wanted", "system", "code"),
    [
        ("de", ["en-GB"], "de"),
        ("en", ["de-AT"], "en"),
        (AS_SYSTEM, ["de-AT", "en-GB"], "de"),
        (AS_SYSTEM, ["is-IS", "de-CH"], "de"),
        (AS_SYSTEM, ["is-IS"], "en"),
        (AS_SYSTEM, [], "en"),
        ("xx", ["de-AT"], "en"),
    ],
)
def test_what_is_chosen_goes_before_what_the_system_speaks(
    wanted: str, system: list[str], code: str
) -> None:
    assert tongue_of(wanted, system).code == code


@pytest.mark.usefixtures("german")
def test_findings_and_menus_and_qts_own_buttons_are_german() -> None:
    assert say("{both} lap by less than is required.", both="A und B") == (
        "A und B überlappen sich weniger als gefordert."
    )
    assert QCoreApplication.translate("Actions", "&File") == "&Datei"
    assert QCoreApplication.translate("QPlatformTheme", "Cancel") == "Abbrechen"


@pytest.mark.usefixtures("german")
def test_lengths_are_written_with_a_comma() -> None:
    assert format_length(1234.5, Units.M) == "1,234 m"
    assert format_length(12345.0, Units.MM) == "12\u202f345 mm"
    assert QLocale().decimalPoint() == ","


@pytest.mark.usefixtures("qtbot")
def test_english_comes_back_whole() -> None:
    application = QCoreApplication.instance()
    assert application is not None
    speak_in(application, GERMAN)
    speak_in(application, ENGLISH)
    assert QCoreApplication.translate("Actions", "&File") == "&File"
    assert format_length(1234.5, Units.M) == "1.234 m"


@pytest.mark.usefixtures("german")
@pytest.mark.parametrize("units", list(Units))
@pytest.mark.parametrize("mm", [0.6, 12.5, 1234.5, 25.4])
def test_what_is_written_with_a_comma_is_read_with_one(mm: float, units: Units) -> None:
    text = thickness_text(mm, units)
    assert "." not in text
    assert read_length(text, units) == pytest.approx(mm, rel=1e-5)


@pytest.mark.usefixtures("german")
def test_a_pitch_is_read_as_it_is_written() -> None:
    asked = Asked("pitch", "Pitch of the roof", 0.5, 0.1, 1.2, "slope")
    text = written_size(asked, 0.5, Units.MM)
    assert text == "26,6°"
    assert read_size(asked, text, Units.MM) == pytest.approx(0.5, abs=0.002)
