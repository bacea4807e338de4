"""Reads a photograph or a scan, upright as it was taken, and keeps it no larger than of use.

Pictures are kept as PNG or JPEG, whichever is smaller for what they show. One with more dots than
anybody can tell apart on a screen is made smaller, and the reader says so.
"""

import struct
import warnings
import zlib
from dataclasses import dataclass, replace
from io import BytesIO
from typing import TYPE_CHECKING

from enclosure_app.errors import EnclosureError
from enclosure_app.language import say

if TYPE_CHECKING:
    from PIL import Image

FORMATS = ("PNG", "JPEG", "TIFF", "BMP", "WEBP", "GIF")
LONGEST = 6000
"""Dots along the longer side of a picture that is kept: A1 at 180 to the inch."""

_LIGHT = 1_500_000  # bytes up to which a picture is kept as it is
_WORTH = 0.8  # of the bytes: less is gained by writing it anew
_LOSSLESS = 1.2  # times as large as a JPEG may a PNG be and still be kept
_QUALITY = 85
_SCANNED = (100.0, 2400.0)  # dots per inch that tell the size of the paper; 72 and 96 tell nothing
_SCREEN_MM = 25.4 / 96
_GREY = 12  # of 255: colours of a scan that lie no further apart are grey
_UPRIGHT = 1  # EXIF's number for a picture that is stored as it is seen
_ORIENTATION = 0x0112  # EXIF's tag
_UNSOUND = (OSError, SyntaxError, ValueError, EOFError, struct.error, zlib.error)


@dataclass(frozen=True, slots=True)
class Picture:
    """A picture to be kept: `kind` is ``png`` or ``jpeg``, `size` in dots.

    `paper_mm` is what a dot measures on the paper, 0 where the file does not say.
    """

    data: bytes
    kind: str
    size: tuple[int, int]
    paper_mm: float = 0.0
    notes: tuple[str, ...] = ()

    @property
    def mm_per_pixel(self) -> float:
        """How large a dot is drawn before anybody says how large it is."""
        return self.paper_mm or _SCREEN_MM


def read_picture(data: bytes, name: str, page: int = 0) -> Picture:
    """Return the picture in a file.

    Args:
        data: The bytes of the file.
        name: Its name, for messages.
        page: Which page of a TIFF file, from 0.

    Raises:
        EnclosureError: it is empty, damaged, no picture, or too large to be read.
    """
    image, frames = _opened(data, name)
    if not 0 <= page < frames:
        raise EnclosureError(
            say(
                "{file}: there is no page {page}; it has {pages}, choose one of them.",
                file=name,
                page=page + 1,
                pages=frames,
            )
        )
    whole = image.size
    try:
        image.seek(page)
        paper_mm = _paper(image)
        usable = frames == 1 and _is_usable(image)
        image.draft("RGB" if image.mode != "L" else "L", (LONGEST, LONGEST))
        image.load()
    except _UNSOUND:
        raise EnclosureError(_damaged(name)) from None
    if usable and len(data) <= _LIGHT:
        return Picture(data, _kind(image), whole, paper_mm)
    small = _upright(image)
    paper_mm *= max(whole) / max(small.size)
    kept = kept_picture(small, paper_mm)
    if usable and small.size == whole and len(kept.data) > _WORTH * len(data):
        return Picture(data, _kind(image), whole, paper_mm)
    return _told(kept, name, whole, len(data))


def kept_picture(image: "Image.Image", paper_mm: float) -> Picture:
    """Return an image as PNG, or as JPEG where that is much smaller."""
    image = _plain(image)
    png, jpeg = BytesIO(), BytesIO()
    image.save(png, "PNG")
    (image.convert("L") if image.mode == "1" else image).save(jpeg, "JPEG", quality=_QUALITY)
    lossless = len(png.getvalue()) <= _LOSSLESS * len(jpeg.getvalue())
    chosen, kind = (png, "png") if lossless else (jpeg, "jpeg")
    return Picture(chosen.getvalue(), kind, image.size, paper_mm)


def small_image(data: bytes, name: str, page: int, most: int) -> bytes:
    """Return a small picture of a picture as PNG, `most` dots along its longer side.

    Raises:
        EnclosureError: it cannot be read.
    """
    image, held = _opened(data, name)[0], BytesIO()
    try:
        image.seek(page)
        image.thumbnail((most, most))
    except _UNSOUND:
        raise EnclosureError(_damaged(name)) from None
    _plain(_upright(image)).save(held, "PNG", compress_level=1)
    return held.getvalue()


def frames_in(data: bytes, name: str) -> int:
    """Return how many pages a picture has: more than one in some TIFF files.

    Raises:
        EnclosureError: it is no picture.
    """
    return _opened(data, name)[1]


def megabytes(count: int) -> str:
    """Return a number of bytes in words."""
    if count < 100_000:
        return say("{size:.0f} kB", size=count / 1e3)
    return say("{size:.1f} MB", size=count / 1e6)


def _opened(data: bytes, name: str) -> tuple["Image.Image", int]:
    from PIL import Image  # noqa: PLC0415  only when a picture is opened

    if not data:
        raise EnclosureError(
            say("{file}: the file is empty; scan or export the picture again.", file=name)
        )
    try:
        with warnings.catch_warnings():
            warnings.simplefilter("ignore", Image.DecompressionBombWarning)
            image = Image.open(BytesIO(data), formats=FORMATS)
    except Image.DecompressionBombError:
        raise EnclosureError(
            say(
                "{file}: the picture has too many dots to be read; scan it at 300 to the inch, or "
                "cut out the part that is needed.",
                file=name,
            )
        ) from None
    except _UNSOUND:
        raise EnclosureError(
            say(
                "{file}: this is no picture that can be read, or it is damaged; save it as PNG or "
                "JPEG.",
                file=name,
            )
        ) from None
    frames = getattr(image, "n_frames", 1) if image.format == "TIFF" else 1
    return image, int(frames)


def _damaged(name: str) -> str:
    return say(
        "{file}: the picture was cut short or is damaged; scan or export it again.", file=name
    )


def _is_usable(image: "Image.Image") -> bool:
    """Whether the file can be kept as it is: of a kind that is kept, upright, not too large."""
    upright = image.getexif().get(_ORIENTATION, _UPRIGHT) == _UPRIGHT
    plain = image.mode in ("1", "L", "P", "RGB")
    known = image.format in ("PNG", "JPEG") and "transparency" not in image.info
    return known and plain and upright and max(image.size) <= LONGEST


def _upright(image: "Image.Image") -> "Image.Image":
    """Return an image turned as it was taken, and no larger than of use."""
    from PIL import Image, ImageOps  # noqa: PLC0415  see `_opened`

    turned = ImageOps.exif_transpose(image)
    if max(turned.size) > LONGEST:
        turned = turned.convert("L") if turned.mode == "1" else turned
        turned = turned.convert("RGB") if turned.mode == "P" else turned
        turned.thumbnail((LONGEST, LONGEST), Image.Resampling.LANCZOS)
    return turned


def _plain(image: "Image.Image") -> "Image.Image":
    """Return an image without transparency, colour profiles and colours that nobody sees."""
    from PIL import Image  # noqa: PLC0415  see `_opened`

    if image.mode in ("1", "L"):
        return image
    if image.mode.startswith("I") or image.mode == "F":
        return _sixteen_bits(image)
    if "A" in image.mode or "transparency" in image.info:
        above = image.convert("RGBA")
        below = Image.new("RGBA", image.size, "white")
        image = Image.alpha_composite(below, above)
    image = image.convert("RGB")
    return image.convert("L") if _is_grey(image) else image


def _sixteen_bits(image: "Image.Image") -> "Image.Image":
    import numpy as np  # noqa: PLC0415  see `_opened`
    from PIL import Image  # noqa: PLC0415  see `_opened`

    values = np.asarray(image, dtype=np.float64)
    top = max(float(values.max()), 1.0)
    return Image.fromarray((values * (255.0 / top)).astype(np.uint8))


def _is_grey(image: "Image.Image") -> bool:
    from PIL import ImageChops  # noqa: PLC0415  see `_opened`

    look = image.copy()
    look.thumbnail((800, 800))
    red, green, blue = look.split()
    apart = (ImageChops.difference(red, green), ImageChops.difference(green, blue))
    return all(not each.point(lambda value: value > _GREY).getbbox() for each in apart)


def _paper(image: "Image.Image") -> float:
    across = float(image.info.get("dpi", (0.0, 0.0))[0])
    least, most = _SCANNED
    return 25.4 / across if least <= across <= most else 0.0


def _kind(image: "Image.Image") -> str:
    return "png" if image.format == "PNG" else "jpeg"


def _told(kept: Picture, name: str, size: tuple[int, int], weight: int) -> Picture:
    """Return the picture with a note of what was made of it, where it is smaller in any way."""
    if max(kept.size) == max(size) and len(kept.data) > _WORTH * weight:
        return kept
    if kept.size == size:
        lighter = say(
            "{file} had {bytes}; it is kept with {kept_bytes}.",
            file=name,
            bytes=megabytes(weight),
            kept_bytes=megabytes(len(kept.data)),
        )
        return replace(kept, notes=(lighter,))
    note = say(
        "{file} had {dots} dots and {bytes}; it is kept with {kept_dots} dots and {kept_bytes}.",
        file=name,
        dots=f"{size[0]} × {size[1]}",
        bytes=megabytes(weight),
        kept_dots=f"{kept.size[0]} × {kept.size[1]}",
        kept_bytes=megabytes(len(kept.data)),
    )
    return replace(kept, notes=(note,))
