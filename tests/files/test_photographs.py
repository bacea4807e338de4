"""A photograph is kept upright, small, and without what tells of the person who took it."""

from io import BytesIO
from pathlib import Path

import pytest
from PIL import Image, ImageDraw
from PIL.ImageCms import ImageCmsProfile, createProfile

from enclosure_app.errors import EnclosureError
from enclosure_app.files.photographs import (
    LONGEST,
    load_photograph,
    load_photographs,
    read_photograph,
)
from enclosure_app.progress import listening

PLACE, CAMERA, ORIENTATION, DETAILS = 0x8825, 0x0110, 0x0112, 0x8769
TAKEN, OFFSET = 0x9003, 0x9011


def marked(size: tuple[int, int] = (400, 300)) -> Image.Image:
    """A white picture whose upper left quarter is black."""
    image = Image.new("RGB", size, "white")
    ImageDraw.Draw(image).rectangle((0, 0, size[0] // 2 - 1, size[1] // 2 - 1), fill="black")
    return image


def photographed(
    image: Image.Image, orientation: int = 1, details: dict[int, str] | None = None, **how: object
) -> bytes:
    """As a telephone writes it: with place, camera and a time."""
    exif = Image.Exif()
    exif[ORIENTATION], exif[CAMERA] = orientation, "Phone of Ida"
    exif.get_ifd(PLACE)[2] = (60.0, 10.0, 15.0)
    for tag, value in (details or {}).items():
        exif.get_ifd(DETAILS)[tag] = value
    held = BytesIO()
    image.save(held, "JPEG", exif=exif, quality=95, **how)
    return held.getvalue()


def opened(data: bytes) -> Image.Image:
    image = Image.open(BytesIO(data))
    image.load()
    return image


TURNED = {
    1: None, 2: Image.Transpose.FLIP_LEFT_RIGHT, 3: Image.Transpose.ROTATE_180,
    4: Image.Transpose.FLIP_TOP_BOTTOM, 5: Image.Transpose.TRANSPOSE,
    6: Image.Transpose.ROTATE_90, 7: Image.Transpose.TRANSVERSE, 8: Image.Transpose.ROTATE_270,
}  # fmt: skip


@pytest.mark.parametrize("orientation", TURNED)
def test_it_stands_upright_however_the_telephone_was_held(orientation: int) -> None:
    """Orientations 1 to 8 as EXIF 2.32, section 4.6.4, names them."""
    turn = TURNED[orientation]
    stored = marked() if turn is None else marked().transpose(turn)
    photograph = read_photograph(photographed(stored, orientation), "a.jpg")
    assert photograph.size == (400, 300)
    image = opened(photograph.data).convert("L")
    corners = [image.getpixel(at) for at in ((50, 50), (350, 50), (50, 250), (350, 250))]
    assert [each > 128 for each in corners] == [False, True, True, True]


def test_nothing_tells_where_and_with_what_it_was_taken() -> None:
    data = photographed(marked(), details={TAKEN: "2026:03:02 10:15:30", OFFSET: "+02:00"})
    assert b"Phone of Ida" in data
    photograph = read_photograph(data, "a.jpg")
    image = opened(photograph.data)
    assert dict(image.getexif()) == {}
    assert dict(image.getexif().get_ifd(PLACE)) == {}
    assert b"Ida" not in photograph.data
    assert b"Exif" not in photograph.data
    assert photograph.taken == "2026-03-02T10:15:30+02:00"


@pytest.mark.parametrize(
    ("details", "taken"),
    [
        ({TAKEN: "2026:03:02 10:15:30"}, "2026-03-02T10:15:30"),
        ({TAKEN: "2026:03:02 10:15:30", OFFSET: "summer"}, "2026-03-02T10:15:30"),
        ({TAKEN: "0000:00:00 00:00:00"}, ""),
        ({}, ""),
    ],
)
def test_the_cameras_time_is_kept_as_far_as_it_knows_it(
    details: dict[int, str], taken: str
) -> None:
    assert read_photograph(photographed(marked(), details=details), "a.jpg").taken == taken


def test_it_is_shrunk_to_what_is_of_use_and_a_small_one_is_not_enlarged() -> None:
    large = read_photograph(photographed(marked((4000, 3000))), "a.jpg")
    assert large.size == opened(large.data).size == (LONGEST, LONGEST * 3 // 4)
    assert opened(large.data).format == "JPEG"
    assert read_photograph(photographed(marked((40, 30))), "a.jpg").size == (40, 30)


def test_the_same_file_is_the_same_photograph() -> None:
    data = photographed(marked())
    assert read_photograph(data, "a.jpg").key == read_photograph(data, "b.jpg").key
    other = photographed(marked((402, 300)))
    assert read_photograph(other, "a.jpg").key != read_photograph(data, "a.jpg").key


def test_colours_keep_their_meaning() -> None:
    profile = ImageCmsProfile(createProfile("sRGB")).tobytes()
    kept = read_photograph(photographed(marked(), icc_profile=profile), "a.jpg")
    assert opened(kept.data).info["icc_profile"] == profile


def test_what_shines_through_is_white_and_grey_stays_grey() -> None:
    held = BytesIO()
    Image.new("RGBA", (20, 20), (0, 0, 0, 0)).save(held, "PNG")
    assert opened(read_photograph(held.getvalue(), "a.png").data).getpixel((5, 5)) == (255,) * 3
    assert opened(read_photograph(photographed(marked().convert("L")), "a").data).mode == "L"


def test_sixteen_bits_of_grey_are_no_white_sheet() -> None:
    held = BytesIO()
    Image.new("I;16", (20, 20), 0x8000).save(held, "PNG")
    assert opened(read_photograph(held.getvalue(), "a.png").data).getpixel((5, 5)) == 128


def test_of_several_pictures_in_one_file_the_first_is_the_photograph() -> None:
    held = BytesIO()
    Image.new("RGB", (40, 30), "red").save(
        held, "MPO", save_all=True, append_images=[Image.new("RGB", (4, 3), "blue")]
    )
    photograph = read_photograph(held.getvalue(), "a.jpg")
    assert photograph.size == (40, 30)
    red, _, blue = opened(photograph.data).getpixel((5, 5))
    assert (red > 200, blue < 50) == (True, True)


@pytest.mark.parametrize(
    ("data", "sentence"),
    [
        (b"", "a.jpg: this is no photograph that can be read; save it as JPEG"),
        (b"\0\0\0\x18ftypheic", "a.jpg: photographs of this kind (HEIC) cannot be read; save it"),
        (photographed(marked())[:900], "a.jpg: the photograph was cut short or is damaged;"),
    ],
)
def test_what_cannot_be_read_is_refused_in_one_sentence(data: bytes, sentence: str) -> None:
    with pytest.raises(EnclosureError) as caught:
        read_photograph(data, "a.jpg")
    assert str(caught.value).startswith(sentence)


def test_it_is_read_from_a_file(tmp_path: Path) -> None:
    path = tmp_path / "site.jpg"
    path.write_bytes(photographed(marked()))
    assert load_photograph(path).name == "site.jpg"
    with pytest.raises(EnclosureError, match=r"no\.jpg: the file cannot be read"):
        load_photograph(tmp_path / "no.jpg")


def test_of_several_files_the_good_ones_are_taken_and_each_bad_one_has_its_sentence(
    tmp_path: Path,
) -> None:
    Image.new("RGB", (40, 30), "red").save(tmp_path / "a.jpg")
    Image.new("RGB", (40, 30), "blue").save(tmp_path / "b.png")
    (tmp_path / "cut.jpg").write_bytes((tmp_path / "a.jpg").read_bytes()[:300])
    (tmp_path / "phone.heic").write_bytes(b"\0\0\0\x18ftypheic\0\0\0\0mif1heic")
    (tmp_path / "really.heic").write_bytes((tmp_path / "a.jpg").read_bytes())
    names = ["a.jpg", "cut.jpg", "gone.jpg", "phone.heic", "b.png", "really.heic"]
    heard: list[float] = []
    with listening(heard.append):
        taken = load_photographs([tmp_path / name for name in names])
    assert [each.name for each in taken.photographs] == ["a.jpg", "b.png", "really.heic"]
    begun = [sentence.split(":")[0] for sentence in taken.refused]
    assert begun == ["cut.jpg", "gone.jpg", "phone.heic"]
    assert "HEIC" in taken.refused[2]
    assert all(sentence.endswith(".") and "\n" not in sentence for sentence in taken.refused)
    assert heard == pytest.approx([k / 6 for k in range(6)])
