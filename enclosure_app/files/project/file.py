"""Keeps a project in one JSON file and reads it again (README, "The project file")."""

import json
import re
from collections.abc import Mapping
from dataclasses import replace
from pathlib import Path
from typing import Any

from enclosure_app.errors import EnclosureError, ListedError
from enclosure_app.files.atomic import write_atomically
from enclosure_app.files.content import content_of
from enclosure_app.files.dxf.memory import kept_in_use
from enclosure_app.files.project import as_json
from enclosure_app.files.project.forms import Mistakes, Place, wrong
from enclosure_app.files.project.json_text import laid_out
from enclosure_app.files.project.migrations import FORMAT, migrated
from enclosure_app.language import say
from enclosure_app.model.project import Project

SUFFIX = ".enclosure.json"
"""How the name of a project file ends."""

_HALVES = "backslashreplace"  # half a character of a damaged text becomes \\udc80, as JSON has it
_BEGUN = re.compile(r"[\\\w.+-]{0,8}\s*")  # nothing more, or the beginning of one value
_MOST = 20  # so many mistakes are told one by one


def save_project(project: Project, path: Path) -> None:
    """Write a project to `path`, so that a crash leaves the old file or the new one, whole.

    All but linework and pictures is read back before it is kept: a file that would not open
    never takes the place of one that does.

    Raises:
        EnclosureError: the folder or the disk refuses, or the project holds something that no
            project can (a coordinate that is no number); the old file is as it was.
    """
    write_atomically(path, project_bytes(project, path.name))


def load_project(path: Path) -> Project:
    """Read a project.

    Every section knows the program's products besides those of the file, so that they can be
    chosen.

    Raises:
        EnclosureError: the file is not there, is no project, was cut short, or is of a newer
            format.
        ListedError: several places of it are wrong; one sentence for each.
    """
    no_file = say("{file}: this is not a file; name a project file.", file=path.name or path)
    return project_of(content_of(path, no_file), path.name)


def project_bytes(project: Project, file: str) -> bytes:
    """Return the content of the project's file; one project always gives the same bytes.

    Args:
        project: The project.
        file: The name of the file, for messages.

    Raises:
        EnclosureError: the project holds something that no project can.
    """
    text = _laid_out(project, file)
    project_of(_laid_out(_without_linework(project), file).encode("utf-8", _HALVES), file)
    return text.encode("utf-8", _HALVES)


def _laid_out(project: Project, file: str) -> str:
    try:
        with kept_in_use():
            return laid_out({"format": FORMAT, **as_json.written(project)})
    except ValueError:
        raise EnclosureError(
            say(
                "{file}: the project is not saved, because a number in it is not finite: undo the"
                " last change.",
                file=file,
            )
        ) from None


def _without_linework(project: Project) -> Project:
    """Return the project without what is shown only: much of it, and nothing that can be amiss.

    Photographs stay, without their dots: what was said has to find them.
    """
    sections = tuple(
        replace(section, strokes=(), texts=(), taken=()) for section in project.sections
    )
    photographs = {key: replace(each, data=b"") for key, each in project.photographs.items()}
    return replace(project, sections=sections, underlays=(), photographs=photographs)


def project_of(data: bytes, file: str) -> Project:
    """Return the project that the content of a file holds (see `load_project`).

    Raises:
        ListedError: something in it is wrong: each place in one sentence.
    """
    table = _table(data, file)
    version = _version(table, file)
    body = {key: value for key, value in table.items() if key != "format"}
    try:
        with kept_in_use():
            return as_json.read(migrated(body, version))
    except Mistakes as mistakes:
        raise ListedError(_sentences(mistakes, file)) from None


def _table(data: bytes, file: str) -> dict[str, Any]:
    table = _parsed(data, file)
    if not isinstance(table, dict) or "format" not in table:
        raise EnclosureError(
            say(
                '{file}: this is JSON but no project (it has no "format"); open a file whose name'
                " ends in {ending}.",
                file=file,
                ending=SUFFIX,
            )
        )
    return table


def _parsed(data: bytes, file: str) -> Any:  # noqa: ANN401  JSON
    try:
        text = data.decode("utf-8-sig")
        with kept_in_use():
            return json.loads(text, object_pairs_hook=_once)
    except UnicodeDecodeError as error:
        line = data[: error.start].count(b"\n") + 1
        raise EnclosureError(
            say(
                "{file}, line {line}: this is not UTF-8 text; open the project file itself, or a "
                "copy of it.",
                file=file,
                line=line,
            )
        ) from None
    except json.JSONDecodeError as error:
        raise EnclosureError(_unsound(error, file)) from None
    except RecursionError:
        raise EnclosureError(
            say("{file}: the brackets are nested too deeply for a project.", file=file)
        ) from None
    except Mistakes as mistakes:
        raise EnclosureError(f"{file}: {mistakes.found[0][1]}") from None
    except ValueError:  # the reader refuses whole numbers of thousands of digits
        raise EnclosureError(
            say("{file}: a number in it is too long; open a copy.", file=file)
        ) from None


def _once(pairs: list[tuple[str, Any]]) -> dict[str, Any]:
    """Make an object of its keys and values; a key that comes twice would lose one silently."""
    table = dict(pairs)
    if len(table) < len(pairs):
        keys = [key for key, _ in pairs]
        twice = next(key for key in keys if keys.count(key) > 1)
        raise wrong(
            say('the key "{key}" stands twice in one object; keep one of them.', key=twice)
        )
    return table


def _unsound(error: json.JSONDecodeError, file: str) -> str:
    if not error.doc.strip():
        return say("{file}: the file is empty; open the autosave or a copy.", file=file)
    begun = error.pos and _BEGUN.fullmatch(error.doc, error.pos)
    if begun or error.msg.startswith("Unterminated string"):
        return say(
            "{file}, line {lineno}: the file was cut short there; open the autosave or a copy.",
            file=file,
            lineno=error.lineno,
        )
    return say(
        "{file}, line {lineno}, column {colno}: this is not sound JSON ({msg}); mend it "
        "there, or open a copy.",
        file=file,
        lineno=error.lineno,
        colno=error.colno,
        msg=error.msg,
    )


def _version(table: Mapping[str, Any], file: str) -> int:
    version = table["format"]
    if isinstance(version, bool) or not isinstance(version, int) or version < 1:
        raise EnclosureError(
            say(
                '{file}: "format" must be a whole number from 1 to {newest}.',
                file=file,
                newest=FORMAT,
            )
        )
    if version > FORMAT:
        raise EnclosureError(
            say(
                "{file} was saved by a newer version (format {version}); this program reads up to"
                " {newest}: update it.",
                file=file,
                version=version,
                newest=FORMAT,
            )
        )
    return version


def _sentences(mistakes: Mistakes, file: str) -> tuple[str, ...]:
    told = [f"{file}: {_written(place)} {text}" for place, text in mistakes.found[:_MOST]]
    left = len(mistakes.found) - _MOST
    if left > 0:
        told.append(
            say("{file}: {left} more places are wrong; mend these first.", file=file, left=left)
        )
    return tuple(told)


def _written(place: Place) -> str:
    """Return a place as people write it: ``sections[0].pieces[3].product``."""
    path = "".join(f"[{step}]" if isinstance(step, int) else f".{step}" for step in place)
    return path.lstrip(".") or say("the project")
