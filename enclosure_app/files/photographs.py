"""Takes in a photograph: upright as it was taken, no larger than of use, and without its traces.

A telephone writes into a photograph where it was taken and with which telephone. That is about the
person, not about the joint, and a project goes through many hands: only the picture and the time
are kept. The place is told by the finding. Colours keep the meaning that the camera gave them.
"""

import struct
import warnings
import zlib
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime
from io import BytesIO
from pathlib import Path
from typing import TYPE_CHECKING

from enclosure_app.errors import EnclosureError
from enclosure_app.files.content import unreadable_told
from enclosure_app.language import say
from enclosure_app.model.said.photograph import Photograph
from enclosure_app.progress import gone_through

if TYPE_CHECKING:
    from PIL import Image

FORMATS = ("JPEG", "PNG", "WEBP", "TIFF", "BMP", "GIF")
LONGEST = 2000
"""Dots along the longer side of a photograph that is kept: half a metre wide, it tells 0.25 mm."""

_QUALITY = 82
_UNSOUND = (OSError, SyntaxError, ValueError, EOFError, struct.error, zlib.error)
_EXIF, _TAKEN, _OFFSET = 0x8769, 0x9003, 0x9011  # EXIF's own tags; the last two stand in the first
_CAMERA_TIME = "%Y:%m:%d %H:%M:%S"


@dataclass(frozen=True, slots=True)
class TakenIn:
    """What came of several files: the photographs, and a sentence for each file that is none."""

    photographs: tuple[Photograph, ...] = ()
    refused: tuple[str, ...] = ()


def load_photographs(paths: Sequence[Path]) -> TakenIn:
    """Read photographs from files, those that can be read whatever the others are.

    How far it is is told after each (`progress`).
    """
    taken, refused = list[Photograph](), list[str]()
    for path in gone_through(paths, 0.0, 1.0, each=1):
        try:
            taken.append(load_photograph(path))
        except EnclosureError as error:
            refused.append(str(error))
    return TakenIn(tuple(taken), tuple(refused))


def load_photograph(path: Path) -> Photograph:
    """Read a photograph from a file.

    Raises:
        EnclosureError: it is not there, cannot be read, or is no picture.
    """
    with unreadable_told(path):
        return read_photograph(path.read_bytes(), path.name)


def read_photograph(data: bytes, name: str) -> Photograph:
    """Return the photograph in a file; the same file always gives the same photograph.

    Args:
        data: The bytes of the file.
        name: Its name, which is kept, and for messages.

    Raises:
        EnclosureError: it is empty, damaged, no picture that can be read, or too large.
    """
    image = _opened(data, name)
    try:
        taken = _taken(image)
        # a JPEG is read at half its size in a tenth of the time
        image.draft("RGB", _fitted(image.size))
        small = _upright(image)
    except _UNSOUND:
        raise EnclosureError(
            say("{file}: the photograph was cut short or is damaged; copy it again.", file=name)
        ) from None
    return Photograph(_jpeg(small), small.size, name, taken)


def _opened(data: bytes, name: str) -> "Image.Image":
    from PIL import Image  # noqa: PLC0415  only when a photograph is opened

    try:
        with warnings.catch_warnings():
            warnings.simplefilter("ignore", Image.DecompressionBombWarning)
            return Image.open(BytesIO(data), formats=FORMATS)
    except Image.DecompressionBombError:
        raise EnclosureError(
            say("{file}: the photograph has too many dots to be read; make it smaller.", file=name)
        ) from None
    except _UNSOUND:
        if _is_heic(data):
            raise EnclosureError(
                say(
                    "{file}: photographs of this kind (HEIC) cannot be read; save it as JPEG "
                    "(telephones ask for it as the most compatible kind).",
                    file=name,
                )
            ) from None
        raise EnclosureError(
            say(
                "{file}: this is no photograph that can be read; save it as JPEG (telephones ask "
                "for it as the most compatible kind).",
                file=name,
            )
        ) from None


def _fitted(size: tuple[int, int]) -> tuple[int, int]:
    """Return a size of the same shape that is `LONGEST` along its longer side."""
    share = LONGEST / max(size)
    return max(round(size[0] * share), 1), max(round(size[1] * share), 1)


def _is_heic(data: bytes) -> bool:
    """Whether a file says so at its start: ISO 23008-12 names these brands of ISO 14496-12."""
    return data[4:8] == b"ftyp" and data[8:12] in (b"heic", b"heix", b"heim", b"mif1", b"msf1")


def _taken(image: "Image.Image") -> str:
    """Return when a photograph was taken, as the camera tells it: ISO 8601, "" where it does not."""
    exif = image.getexif().get_ifd(_EXIF)
    try:
        at = datetime.strptime(str(exif.get(_TAKEN, "")).strip("\0 "), _CAMERA_TIME)  # noqa: DTZ007
        return datetime.fromisoformat(f"{at.isoformat()}{_offset(exif)}").isoformat()
    except ValueError:
        return ""


def _offset(exif: dict[int, object]) -> str:
    """Return the camera's offset from UTC, "" where it does not know one."""
    offset = str(exif.get(_OFFSET, "")).strip("\0 ")
    try:
        datetime.strptime(offset, "%z")
    except ValueError:
        return ""
    return offset


def _upright(image: "Image.Image") -> "Image.Image":
    """Return a photograph turned as it was taken, without transparency, no larger than of use."""
    from PIL import Image, ImageOps  # noqa: PLC0415  see `_opened`

    profile = image.info.get("icc_profile") if image.mode in ("RGB", "L") else None
    turned = ImageOps.exif_transpose(image)
    if "A" in turned.mode or "transparency" in turned.info:
        above = turned.convert("RGBA")
        turned = Image.alpha_composite(Image.new("RGBA", above.size, "white"), above)
    if turned.mode.startswith("I"):  # sixteen bits of grey
        turned = turned.convert("I").point(lambda value: value * (1 / 256)).convert("L")
    turned = turned if turned.mode == "L" else turned.convert("RGB")
    turned.thumbnail((LONGEST, LONGEST), Image.Resampling.LANCZOS)
    turned.info = {"icc_profile": profile} if profile else {}
    return turned


def _jpeg(image: "Image.Image") -> bytes:
    held, profile = BytesIO(), image.info.get("icc_profile")
    # not optimised: that saves a thirtieth, and holds up all other work for a tenth of a second
    image.save(held, "JPEG", quality=_QUALITY, exif=b"", icc_profile=profile)
    return held.getvalue()
