"""Project files known by their names."""

from pathlib import Path


def is_project(path: Path) -> bool:
    """Whether a file is a project, by its name."""
    return path.name.casefold().endswith(".json")
