"""The typeface of the PDF: the shipped font files, and the system's fonts for other scripts."""

from functools import cache

from PySide6.QtGui import QFont, QFontDatabase

from enclosure_app.drawing.typeface import FAMILY, em, font_files


@cache
def _register() -> str:
    """Register the shipped font files and return their family."""
    for path in font_files():
        if QFontDatabase.addApplicationFont(str(path)) < 0:
            raise RuntimeError(
                f"The font file {path.name} cannot be used; install the program anew."
            )
    return FAMILY


def font(size: float, dots_per_mm: float, *, bold: bool) -> QFont:
    """Return the font whose capitals are `size` mm high on a device of that resolution."""
    face = QFont(_register())
    face.setPixelSize(max(round(em(size) * dots_per_mm), 1))
    face.setBold(bold)
    face.setHintingPreference(QFont.HintingPreference.PreferNoHinting)
    # Letters joined to one sign (fi, fl) could not be searched for.
    face.setFeature(QFont.Tag("liga"), 0)
    return face
