"""Small PDF files, written object by object as ISO 32000-1 has them, for tests."""

from collections.abc import Sequence

FONT = b"<< /Type /Font /Subtype /Type1 /BaseFont /Helvetica >>"


def stream(content: bytes, words: str = "") -> bytes:
    return f"<< {words} /Length {len(content)} >>\nstream\n".encode() + content + b"\nendstream"


def made_pdf(  # noqa: PLR0913  what a page may be
    *contents: str,
    size: tuple[float, float] = (420.0, 595.0),
    rotate: int = 0,
    box: str = "",
    form: str = "",
    layers: Sequence[str] = (),
    hidden: Sequence[str] = (),
) -> bytes:
    """Return a PDF with a page for each content.

    `form` is a form that pages may draw as ``/Fm0 Do``, moved by its own matrix by 3 to the right.
    `layers` may be drawn on as ``/OC /L0 BDC ... EMC``; those that are also `hidden` are off.
    """
    layer_at = {name: 4 + i for i, name in enumerate(layers)}
    first = 4 + len(layers)
    off = " ".join(f"{layer_at[name]} 0 R" for name in hidden)
    every = " ".join(f"{at} 0 R" for at in layer_at.values())
    kids = " ".join(f"{first + 1 + 2 * i} 0 R" for i in range(len(contents)))
    properties = " ".join(f"/L{i} {at} 0 R" for i, at in enumerate(layer_at.values()))
    media = f"/MediaBox [0 0 {size[0]} {size[1]}] /Rotate {rotate} {box}"
    resources = f"<< /Font << /F1 3 0 R >> /XObject << /Fm0 {first} 0 R >> /Properties << {properties} >> >>"
    objects = [
        f"<< /Type /Catalog /Pages 2 0 R /OCProperties << /OCGs [{every}] "
        f"/D << /Order [{every}] /OFF [{off}] >> >> >>".encode(),
        f"<< /Type /Pages /Kids [{kids}] /Count {len(contents)} >>".encode(),
        FONT,
        *(f"<< /Type /OCG /Name ({name}) >>".encode() for name in layers),
        stream(
            form.encode(),
            "/Type /XObject /Subtype /Form /BBox [0 0 500 500] /Matrix [1 0 0 1 3 0]",
        ),
    ]
    for content in contents:
        page = f"<< /Type /Page /Parent 2 0 R {media} /Resources {resources} "
        objects.append((page + f"/Contents {len(objects) + 2} 0 R >>").encode())
        objects.append(stream(content.encode()))
    return _file(objects)


def _file(objects: Sequence[bytes]) -> bytes:
    out, places = b"%PDF-1.7\n", []
    for number, each in enumerate(objects, 1):
        places.append(len(out))
        out += f"{number} 0 obj\n".encode() + each + b"\nendobj\n"
    table = "".join(f"{place:010d} 00000 n \n" for place in places)
    head = f"xref\n0 {len(objects) + 1}\n0000000000 65535 f \n{table}"
    tail = f"trailer << /Size {len(objects) + 1} /Root 1 0 R >>\nstartxref\n{len(out)}\n%%EOF"
    return out + (head + tail).encode()
