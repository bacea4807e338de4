"""The names under which photographs of a project are handed over: their own where they differ."""

import re
from collections import Counter
from collections.abc import Mapping
from pathlib import Path, PurePath

from enclosure_app.files.atomic import made_folder, write_atomically
from enclosure_app.model.said.photograph import Photograph

_UNSAFE = re.compile(r'[\x00-\x1f<>:"/\\|?*]')  # what one file system or another refuses


def file_names(photographs: Mapping[str, Photograph]) -> dict[str, str]:
    """Return a file's name for each photograph, by its key; no two are the same.

    It is the name of the file that it came from, with a little of its key where two have one name
    or it has none.
    """
    stems = {key: _stem(photograph.name) for key, photograph in photographs.items()}
    used = Counter(stem.casefold() for stem in stems.values())
    return {
        key: f"{stem or 'photograph'}-{key[:8]}.jpg"
        if not stem or used[stem.casefold()] > 1
        else f"{stem}.jpg"
        for key, stem in stems.items()
    }


def _stem(name: str) -> str:
    return _UNSAFE.sub("_", PurePath(name.replace("\\", "/")).stem).strip(" .")


def write_photographs(folder: Path, photographs: Mapping[str, Photograph]) -> None:
    """Write photographs into a folder, which is made where it is not there, under these names.

    Raises:
        EnclosureError: the folder cannot be made, or the disk refuses.
    """
    made_folder(folder)
    for key, name in file_names(photographs).items():
        write_atomically(folder / name, photographs[key].data)
