"""Pictures: read upright, kept no larger than of use, refused in a sentence."""

from io import BytesIO

import numpy as np
import pytest
from PIL import Image, ImageDraw

from enclosure_app.errors import EnclosureError
from enclosure_app.files.underlay import image as underlay_image
from enclosure_app.files.underlay.image import (
    Picture,
    frames_in,
    kept_picture,
    megabytes,
    read_picture,
)


def drawing(wide: int = 300, high: int = 200, mode: str = "L") -> Image.Image:
    """Return a white sheet with a dark line near its upper edge."""
    image = Image.new(mode, (wide, high), "white")
    ImageDraw.Draw(image).line([(0, 20), (wide, 20)], fill="black", width=6)
    return image


def noise(wide: int, high: int, *, colour: bool = True) -> Image.Image:
    shape = (high, wide, 3) if colour else (high, wide)
    return Image.fromarray(np.random.default_rng(7).integers(0, 255, shape, dtype=np.uint8))


def saved(image: Image.Image, kind: str = "PNG", **more: object) -> bytes:
    held = BytesIO()
    image.save(held, kind, **more)
    return held.getvalue()


def decoded(picture: Picture) -> Image.Image:
    image = Image.open(BytesIO(picture.data))
    assert image.format == {"png": "PNG", "jpeg": "JPEG"}[picture.kind]
    assert image.size == picture.size
    return image


def test_a_small_picture_is_kept_byte_for_byte() -> None:
    data = saved(drawing())
    assert read_picture(data, "a.png") == Picture(data, "png", (300, 200))
    data = saved(drawing(mode="RGB"), "JPEG")
    assert read_picture(data, "a.jpg") == Picture(data, "jpeg", (300, 200))


@pytest.mark.parametrize(
    ("dpi", "paper"), [(300, 25.4 / 300), (200, 0.127), (72, 0.0), (96, 0.0), (9000, 0.0)]
)
def test_a_scan_knows_its_paper_and_a_camera_does_not(dpi: int, paper: float) -> None:
    picture = read_picture(saved(drawing(), dpi=(dpi, dpi)), "a.png")
    assert picture.paper_mm == pytest.approx(paper, rel=1e-3)
    assert picture.mm_per_pixel == pytest.approx(paper or 25.4 / 96, rel=1e-3)


@pytest.mark.parametrize("orientation", [1, 3, 6, 8])
def test_a_photograph_is_turned_upright(orientation: int) -> None:
    """The dark edge, stored turned, must come out at the top (EXIF 2.3: 3 by 180, 6 and 8 by 90)."""
    turns = {1: 0, 3: 180, 6: 90, 8: 270}[orientation]
    stored = drawing(mode="RGB").rotate(turns, expand=True)
    exif = Image.Exif()
    exif[0x0112] = orientation
    picture = read_picture(saved(stored, "JPEG", exif=exif), "a.jpg")
    assert picture.size == (300, 200)
    upright = np.asarray(decoded(picture).convert("L"))
    assert upright[20].mean() < 60
    assert upright[180].mean() > 240


def test_a_picture_with_too_many_dots_is_made_smaller_and_says_so(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    monkeypatch.setattr(underlay_image, "LONGEST", 600)
    picture = read_picture(saved(drawing(1500, 1000), dpi=(300, 300)), "wall.png")
    assert picture.size == (600, 400)
    assert picture.paper_mm == pytest.approx(25.4 / 300 * 2.5, rel=1e-3)
    (note,) = picture.notes
    assert note.startswith("wall.png had 1500 × 1000 dots and ")
    assert "it is kept with 600 × 400 dots and" in note


def test_a_photograph_kept_as_png_becomes_a_jpeg_and_a_drawing_stays_lossless() -> None:
    data = saved(noise(900, 700))
    assert len(data) > 1_500_000
    picture = read_picture(data, "site.png")
    assert picture.kind == "jpeg"
    assert len(picture.data) < 0.8 * len(data)
    assert picture.notes
    assert kept_picture(drawing(2000, 1500), 0.0).kind == "png"


def test_a_scan_in_colour_without_colours_is_kept_grey() -> None:
    kept = kept_picture(noise(90, 70, colour=False).convert("RGB"), 0.0)
    assert decoded(kept).mode == "L"
    assert decoded(kept_picture(noise(90, 70), 0.0)).mode == "RGB"


def test_what_is_transparent_is_white() -> None:
    clear = Image.new("RGBA", (40, 30), (0, 0, 0, 0))
    assert np.asarray(decoded(read_picture(saved(clear), "a.png"))).min() == 255


@pytest.mark.parametrize("kind", ["TIFF", "BMP", "WEBP", "GIF"])
def test_other_kinds_are_kept_as_png_or_jpeg(kind: str) -> None:
    picture = read_picture(saved(drawing(mode="RGB"), kind), "a")
    assert np.asarray(decoded(picture).convert("L"))[20].mean() < 60


def test_sixteen_bits_of_a_scanner_are_seen() -> None:
    deep = Image.fromarray((np.arange(10_000, dtype=np.uint16) * 6).reshape(100, 100))
    shown = np.asarray(decoded(read_picture(saved(deep, "TIFF"), "a.tif")))
    assert (shown.min(), shown.max()) == (0, 255)


def test_pages_of_a_tiff_are_read_one_by_one() -> None:
    white, black = Image.new("L", (40, 30), 255), Image.new("L", (20, 30), 0)
    data = saved(white, "TIFF", save_all=True, append_images=[black])
    assert frames_in(data, "a.tif") == 2
    assert read_picture(data, "a.tif", 1).size == (20, 30)
    assert read_picture(data, "a.tif", 0).size == (40, 30)
    with pytest.raises(EnclosureError, match="there is no page 3; it has 2"):
        read_picture(data, "a.tif", 2)


@pytest.mark.parametrize(
    ("data", "sentence"),
    [
        (b"", "a.png: the file is empty; scan or export the picture again."),
        (b"no picture at all", "a.png: this is no picture that can be read, or it is damaged"),
        (saved(noise(300, 200))[:5000], "a.png: the picture was cut short or is damaged; scan"),
        (saved(noise(300, 200), "JPEG")[:900], "a.png: the picture was cut short or is damaged"),
    ],
    ids=["empty", "rubbish", "half a png", "half a jpeg"],
)
def test_what_cannot_be_read_is_said_in_a_sentence(data: bytes, sentence: str) -> None:
    with pytest.raises(EnclosureError) as caught:
        read_picture(data, "a.png")
    assert str(caught.value).startswith(sentence)


def test_a_picture_beyond_all_bounds_is_refused_before_it_is_read(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    monkeypatch.setattr(Image, "MAX_IMAGE_PIXELS", 1000)
    with pytest.raises(EnclosureError, match="too many dots to be read; scan it at 300"):
        read_picture(saved(drawing()), "a.png")


def test_a_large_picture_below_that_bound_raises_no_warning(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    monkeypatch.setattr(Image, "MAX_IMAGE_PIXELS", 40_000)
    assert read_picture(saved(drawing()), "a.png").size == (300, 200)


def test_bytes_in_words() -> None:
    assert (megabytes(31_240_000), megabytes(4_300)) == ("31.2 MB", "4 kB")
