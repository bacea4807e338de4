"""Finds the files of `resources/` and `samples/`, in a checkout and in an installed wheel."""

from pathlib import Path

_PACKAGE = Path(__file__).parent


def resource(name: str) -> Path:
    """Return the path of one file (or folder) of `resources/`, such as ``products.toml``."""
    return _inside(_folder("resources"), name)


def sample(name: str) -> Path:
    """Return the path of one file of `samples/`."""
    return _inside(_folder("samples"), name)


def _folder(name: str) -> Path:
    installed = _PACKAGE / f"_{name}"
    return installed if installed.is_dir() else _PACKAGE.parent / name


def _inside(folder: Path, name: str) -> Path:
    path = (folder / name).resolve()
    if not path.is_relative_to(folder.resolve()):
        raise ValueError(f"{name!r} leads out of the folder {folder.name}.")
    return path
