"""The languages of the window: which there are, which one is spoken, and where it is chosen."""

from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtCore import QCoreApplication, QLibraryInfo, QLocale, QTranslator

from enclosure_app.language import ENGLISH, Language, speak
from enclosure_app.resources import resource

AS_SYSTEM = ""  # what is kept while the person has chosen none
_WORDS = "Words"  # the context of all that is said below the window


@dataclass(frozen=True, slots=True)
class Tongue:
    """One language: its code, its name in itself, and how it writes names and numbers."""

    code: str
    name: str
    capitals: bool = False
    groups: str = ","
    point: str = "."


TONGUES = (
    Tongue("en", "English"),
    Tongue("de", "Deutsch", capitals=True, groups="\u202f", point=","),
)


def tongue_of(wanted: str, system: Sequence[str] | None = None) -> Tongue:
    """Return the language that is wanted, or the first of the system's that is there, or English.

    Args:
        wanted: A code, or `AS_SYSTEM`.
        system: The languages that the person has told the system, such as ``de-AT``.
    """
    told = QLocale.system().uiLanguages() if system is None else system
    codes = [wanted] if wanted else [each.split("-")[0].lower() for each in told]
    known = {tongue.code: tongue for tongue in TONGUES}
    return next((known[code] for code in codes if code in known), TONGUES[0])


def speak_in(application: QCoreApplication, tongue: Tongue) -> None:
    """Say everything in this language from now on: the window, its findings, and Qt's own words."""
    for old in application.findChildren(QTranslator):
        application.removeTranslator(old)
        old.setParent(None)
    QLocale.setDefault(QLocale(tongue.code))
    if tongue.code == "en":
        speak(ENGLISH)
        return
    qts = QLibraryInfo.path(QLibraryInfo.LibraryPath.TranslationsPath)
    for name, folder in ((f"qtbase_{tongue.code}", qts), (tongue.code, _folder())):
        translator = QTranslator(application)
        if translator.load(name, folder):
            application.installTranslator(translator)
    speak(Language(_translated, tongue.capitals, tongue.groups, tongue.point, tongue.code))


def _folder() -> str:
    return str(resource("languages"))


def _translated(text: str) -> str:
    return QCoreApplication.translate(_WORDS, text)
