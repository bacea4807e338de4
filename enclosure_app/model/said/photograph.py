"""A photograph that was taken on site, kept in the project."""

from dataclasses import dataclass
from hashlib import sha256

from enclosure_app.errors import EnclosureError
from enclosure_app.language import say_count


@dataclass(frozen=True, slots=True)
class Photograph:
    """A photograph: `data` is a JPEG file's bytes, upright as it was taken, `size` its dots.

    `name` is that of the file it came from; `taken` the camera's own time, "" where the file does
    not say. Where it was taken and by which camera is not kept (`files.photographs`).
    """

    data: bytes
    size: tuple[int, int]
    name: str = ""
    taken: str = ""

    @property
    def key(self) -> str:
        """What it is called in a project: the SHA-256 of its bytes, so that one is kept once."""
        return sha256(self.data).hexdigest()


def missing(names: tuple[str, ...]) -> EnclosureError:
    """Return the refusal of photographs that nobody took in."""
    return EnclosureError(
        say_count(
            len(names),
            "A photograph is not in the project: take it in again.",
            "{count} photographs are not in the project: take them in again.",
        )
    )
