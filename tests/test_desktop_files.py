"""What a desktop is told of the program: its menu entry, its icon, and the files it opens."""

import shutil
import subprocess
import tomllib
from configparser import ConfigParser
from pathlib import Path
from xml.etree import ElementTree as ET

import pytest

from enclosure_app.files.project.file import SUFFIX

ROOT = Path(__file__).parent.parent
ENTRY = ROOT / "resources" / "enclosure-app.desktop"
MIME = ROOT / "resources" / "enclosure-app.mime.xml"


@pytest.fixture
def entry() -> ConfigParser:
    read = ConfigParser(interpolation=None, strict=True)
    read.optionxform = str  # type: ignore[assignment,method-assign]  keys keep their capitals
    read.read(ENTRY, encoding="utf-8")
    return read


def installed() -> dict[str, str]:
    """Return where a wheel puts files for the desktop, by the file in the checkout."""
    project = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))
    found: dict[str, str] = project["tool"]["hatch"]["build"]["targets"]["wheel"]["shared-data"]
    return found


def test_the_entry_starts_the_program_with_the_files_that_were_chosen(entry: ConfigParser) -> None:
    project = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))
    command, files = entry["Desktop Entry"]["Exec"].split()
    assert command in project["project"]["scripts"]
    assert files == "%F"


def test_what_is_read_is_read_in_german_too(entry: ConfigParser) -> None:
    keys = entry["Desktop Entry"]
    for key in ("Name", "GenericName", "Comment", "Keywords"):
        assert keys[f"{key}[de]"] != keys[key]


def test_a_wheel_brings_entry_icons_and_kinds_of_file_to_where_desktops_look(
    entry: ConfigParser,
) -> None:
    """The folders are those of the freedesktop.org base directory and icon theme specifications."""
    icon = entry["Desktop Entry"]["Icon"]
    assert set(installed().values()) == {
        f"share/applications/{ENTRY.name}",
        f"share/icons/hicolor/scalable/apps/{icon}.svg",
        f"share/icons/hicolor/256x256/apps/{icon}.png",
        "share/mime/packages/enclosure-app.xml",
    }
    assert [name for name in installed() if not (ROOT / name).is_file()] == []


def test_the_projects_own_kind_of_file_is_described(entry: ConfigParser) -> None:
    space = {"m": "http://www.freedesktop.org/standards/shared-mime-info"}
    kind = ET.parse(MIME).getroot().find("m:mime-type", space)  # noqa: S314  our own file
    assert kind is not None
    assert kind.attrib["type"] in entry["Desktop Entry"]["MimeType"].split(";")
    globs = [each.attrib["pattern"] for each in kind.findall("m:glob", space)]
    assert globs == [f"*{SUFFIX}"]


def test_the_entry_holds_to_the_standard() -> None:
    validate = shutil.which("desktop-file-validate")
    if validate is None:
        pytest.skip("desktop-file-validate is not here")
    told = subprocess.run([validate, str(ENTRY)], capture_output=True, text=True, check=False)
    assert (told.returncode, told.stdout + told.stderr) == (0, "")
