"""What a line of a PDF page is drawn with: its pen, and the layer that the PDF names."""

import ctypes
from colorsys import rgb_to_hsv
from dataclasses import dataclass
from typing import TYPE_CHECKING, Any

from enclosure_app.files.underlay.pdfium import POINT_MM

if TYPE_CHECKING:
    from pypdfium2 import PdfPage

_PALEST = 248  # of 255: what is paler than that in every colour covers, it does not draw
_HUES = (  # degrees up to which a hue is called so
    (15, "red"), (45, "orange"), (70, "yellow"), (165, "green"), (195, "cyan"), (265, "blue"),
    (335, "magenta"), (360, "red"),
)  # fmt: skip
_GREY = 0.25  # saturation or value under which no hue is named
_ROOM = 256  # letters of a layer's name that are read
_DOTS = 0.6  # for one point: enough to see whether a layer shows anything


@dataclass(frozen=True, slots=True)
class Pen:
    """How a path is drawn; `width` in mm of paper."""

    stroked: bool
    seen: bool
    width: float
    hue: str

    @property
    def name(self) -> str:
        """How a layer is called that holds everything of this pen."""
        told = f"{self.width:.2f} mm" if self.stroked else "filled"
        return f"{told} {self.hue}".rstrip()


def pen_of(handle: Any, factor: float) -> Pen:  # noqa: ANN401  PDFium's handles have no types
    """Return how a path object is drawn, whose own space is shown `factor` times as large."""
    from pypdfium2 import raw  # noqa: PLC0415  only when a PDF is open

    fill, stroke = ctypes.c_int(), ctypes.c_int()
    raw.FPDFPath_GetDrawMode(handle, fill, stroke)
    if not (fill.value or stroke.value):
        return Pen(stroked=False, seen=False, width=0.0, hue="")
    parts = [ctypes.c_uint() for _ in range(4)]
    ask = raw.FPDFPageObj_GetStrokeColor if stroke.value else raw.FPDFPageObj_GetFillColor
    ask(handle, *parts)
    red, green, blue, solid = (part.value for part in parts)
    seen = solid > 0 and min(red, green, blue) < _PALEST
    width = ctypes.c_float()
    raw.FPDFPageObj_GetStrokeWidth(handle, width)
    hue = _hue(red, green, blue)
    return Pen(bool(stroke.value), seen, width.value * factor * POINT_MM, hue)


def layer_of(handle: Any) -> str:  # noqa: ANN401
    """Return the name of the layer that an object lies on, "" for none (optional content)."""
    from pypdfium2 import raw  # noqa: PLC0415  only when a PDF is open

    for number in range(max(raw.FPDFPageObj_CountMarks(handle), 0)):
        mark = raw.FPDFPageObj_GetMark(handle, number)
        if _read(lambda *room, m=mark: raw.FPDFPageObjMark_GetName(m, *room)) == "OC":
            name = _read(
                lambda *room, m=mark: raw.FPDFPageObjMark_GetParamStringValue(m, b"Name", *room)
            )
            if name:
                return name
    return ""


def hidden_layers(page: "PdfPage", handles: list[Any]) -> frozenset[str]:
    """Return the layers of a page of which nothing is shown.

    PDFium does not tell; so everything is switched off but one layer, and the page is looked at.

    Args:
        page: The page.
        handles: Its objects.
    """
    from pypdfium2 import raw  # noqa: PLC0415  only when a PDF is open

    by_layer: dict[str, list[Any]] = {}
    for handle in handles:
        if layer := layer_of(handle):
            by_layer.setdefault(layer, []).append(handle)
    if not by_layer:
        return frozenset()
    for handle in handles:
        raw.FPDFPageObj_SetIsActive(handle, 0)
    found = frozenset(name for name, own in by_layer.items() if _is_blank(raw, page, own))
    for handle in handles:
        raw.FPDFPageObj_SetIsActive(handle, 1)
    return found


def _is_blank(raw: Any, page: "PdfPage", handles: list[Any]) -> bool:  # noqa: ANN401
    for handle in handles:
        raw.FPDFPageObj_SetIsActive(handle, 1)
    bitmap = page.render(scale=_DOTS, grayscale=True)
    blank = bool((bitmap.to_numpy() == 255).all())
    bitmap.close()
    for handle in handles:
        raw.FPDFPageObj_SetIsActive(handle, 0)
    return blank


def _hue(red: int, green: int, blue: int) -> str:
    hue, saturation, value = rgb_to_hsv(red / 255, green / 255, blue / 255)
    if min(saturation, value) < _GREY:
        return ""
    return next(name for most, name in _HUES if hue * 360 <= most)


def _read(ask: Any) -> str:  # noqa: ANN401
    """Return a text that PDFium writes into a buffer."""
    buffer, size = (ctypes.c_ushort * _ROOM)(), ctypes.c_ulong()
    if not ask(buffer, ctypes.sizeof(buffer), size):
        return ""
    return bytes(buffer)[: size.value].decode("utf-16-le", "replace").rstrip("\0")
