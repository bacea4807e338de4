"""Saves two projects in turn, is killed at random moments, and says what then stood in the file.

Run by ``test_atomic.py`` in an interpreter of its own: arguments are the folder, the number of
kills and the seed. Each kill hits a forked process, so that nothing has to be imported anew.
"""

import json
import os
import random
import signal
import sys
import time
from collections import Counter
from pathlib import Path

from enclosure_app.files.maps.catalogue import load_products
from enclosure_app.files.project.file import load_project, save_project
from enclosure_app.model.drawing import Units
from enclosure_app.model.place import Line
from enclosure_app.model.project import Project
from enclosure_app.model.section import Piece, Section
from enclosure_app.model.underlay import Underlay

FRAME = ((0.0, 0.0), (900.0, 0.0), (900.0, 900.0))


def project(title: str, pieces: int) -> Project:
    """Return a project with some pieces and half a megabyte of underlay."""
    lines = (Line(((0.0, float(n)), (900.0, n / 3))) for n in range(pieces))
    drawn = tuple(Piece(f"drawn-{n}", "housewrap", line) for n, line in enumerate(lines, 1))
    scan = Underlay("scan.png", "png", title.encode() * 250_000)
    return Project(
        title, Units.MM, (Section("Eave", FRAME, drawn, load_products()),), underlays=(scan,)
    )


def save_for_ever(path: Path, projects: tuple[Project, Project]) -> None:
    """Save one after the other until killed."""
    while True:
        for each in projects:
            save_project(each, path)


def main(folder: Path, kills: int, seed: int) -> None:
    """Kill as many savings; print what stood in the file and what lay beside it, as JSON."""
    chance = random.Random(seed)  # noqa: S311  no secret
    projects = (project("A1", 20), project("B2", 30))
    path = folder / "house.enclosure.json"
    save_project(projects[0], path)
    whole = {}
    began = time.monotonic()
    for each in projects:
        save_project(each, folder / "whole")
        whole[(folder / "whole").read_bytes()] = each
    a_turn = time.monotonic() - began  # however busy the machine is
    found = Counter[str](A1=0, B2=0, torn=0)
    for _ in range(kills):
        child = os.fork()
        if child == 0:
            save_for_ever(path, projects)
        time.sleep(chance.uniform(0.0, 3 * a_turn))
        os.kill(child, signal.SIGKILL)
        os.waitpid(child, 0)
        held = whole.get(path.read_bytes())
        found[held.title if held and load_project(path) == held else "torn"] += 1
    found["parts"] = sum(each.suffix == ".part" for each in folder.iterdir())
    json.dump(found, sys.stdout)


if __name__ == "__main__":
    main(Path(sys.argv[1]), int(sys.argv[2]), int(sys.argv[3]))
