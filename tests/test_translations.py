"""Every text that a person reads can be said in another language, and is said in German."""

import ast
import re
import sys
from collections.abc import Iterator
from importlib.util import module_from_spec, spec_from_file_location
from pathlib import Path
from string import Formatter
from types import ModuleType

import pytest
from PySide6.QtCore import QTranslator

ROOT = Path(__file__).parent.parent
PACKAGE = ROOT / "enclosure_app"
LANGUAGES = ROOT / "resources" / "languages"


def loaded() -> ModuleType:
    """Return the script that gathers the texts, which stands outside the package."""
    spec = spec_from_file_location("languages_script", ROOT / ".ci" / "languages.py")
    assert spec is not None
    assert spec.loader is not None
    module = module_from_spec(spec)
    sys.modules[spec.name] = module  # its dataclasses look themselves up there
    spec.loader.exec_module(module)
    return module


SCRIPT = loaded()
TEXTS = SCRIPT.gathered()
FILES = sorted(LANGUAGES.glob("*.ts"))
HOW = "run .venv/bin/python .ci/languages.py and translate what it names"
PLACE = re.compile(r"\{[^{}]*\}")


def said(path: Path) -> dict[tuple[str, str], str]:
    words: dict[tuple[str, str], str] = SCRIPT.translations(path)
    return words


def translated(path: Path) -> list[tuple[str, str]]:
    return [(source, words) for (_, source), words in said(path).items() if words]


@pytest.mark.parametrize("path", FILES, ids=lambda path: path.stem)
def test_every_text_is_translated_and_none_that_is_gone(path: Path) -> None:
    words = said(path)
    missing = [text for text in TEXTS if not words.get(text)]
    assert [text.source for text in missing] == [], HOW
    assert [text for text in words if text not in TEXTS] == [], HOW


@pytest.mark.parametrize("path", FILES, ids=lambda path: path.stem)
def test_a_translation_has_the_same_places_for_values(path: Path) -> None:
    odd = [
        (source, words)
        for source, words in translated(path)
        if set(PLACE.findall(source)) != set(PLACE.findall(words))
        or (source.count("{}") != words.count("{}"))
    ]
    assert odd == []


@pytest.mark.parametrize("path", FILES, ids=lambda path: path.stem)
def test_a_translation_begins_and_ends_as_the_text_does(path: Path) -> None:
    """Spaces at either end, the three dots of what asks further, the full stop, the menu's letter."""
    ends = (" ", "…", ".", ":")
    odd = [
        (source, words)
        for source, words in translated(path)
        if source[:1].isspace() != words[:1].isspace()
        or any(source.endswith(end) != words.endswith(end) for end in ends)
        or source.count("&") != words.count("&")
    ]
    assert odd == []


@pytest.mark.parametrize("path", FILES, ids=lambda path: path.stem)
def test_what_the_window_loads_was_compiled_from_these_texts(path: Path) -> None:
    translator = QTranslator()
    assert translator.load(str(path.with_suffix(".qm")))
    stale = [
        (context, source)
        for (context, source), words in said(path).items()
        if translator.translate(context, source) != words
    ]
    assert stale == [], HOW


def test_every_language_of_the_window_has_its_texts() -> None:
    from enclosure_app.window.languages import TONGUES  # noqa: PLC0415  Qt's widgets stay out

    assert {tongue.code for tongue in TONGUES} == {"en", *(path.stem for path in FILES)}


def test_every_place_in_a_text_is_given_its_value() -> None:
    """A name that was mistyped would be found only by whoever meets that sentence."""
    odd = []
    for path in sorted(PACKAGE.rglob("*.py")):
        for call in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
            if isinstance(call, ast.Call) and name_of(call) in ("say", "say_count"):
                odd += [f"{path.name}:{call.lineno}: {text}" for text in amiss(call)]
    assert odd == []


def amiss(call: ast.Call) -> Iterator[str]:
    """Yield the literal texts of a call whose named places are not those of its values."""
    given = {each.arg for each in call.keywords}
    counted = {"count"} if name_of(call) == "say_count" else set()
    for each in call.args:
        if isinstance(each, ast.Constant) and isinstance(each.value, str) and None not in given:
            places = {name for _, name, _, _ in Formatter().parse(each.value) if name}
            if places - counted != given:
                yield each.value


# ---- nothing goes past ---------------------------------------------------------------------------

_SAYS = {
    "say",
    "say_count",
    "later",
    "word",
    "tr",
    "translate",
    "QT_TRANSLATE_NOOP",
    "control_tip",
}
_SHOWN_BY = {  # what Qt shows or reads aloud
    "addAction", "addItem", "addItems", "addMenu", "addRow", "addTab", "drawText", "insertItem",
    "setAccessibleDescription", "setAccessibleName", "setHeaderLabels", "setHtml", "setLabelText",
    "setPlaceholderText", "setPrefix", "setPlainText", "setStatusTip", "setSuffix", "setTabText",
    "setText", "setTitle", "setToolTip", "setWhatsThis", "setWindowTitle", "showMessage",
    "getOpenFileName", "getOpenFileNames", "getSaveFileName", "createUndoAction",
    "createRedoAction", "setApplicationDisplayName", "apply", "edit", "ask",
    "QAction", "QCheckBox", "QDockWidget", "QGroupBox", "QLabel", "QMenu", "QProgressDialog",
    "QPushButton", "QRadioButton", "QToolBar", "QToolButton", "Step",
}  # fmt: skip
_TOLD_BY = {"EnclosureError", "ListedError", "HeldError", "Note", "wrong", "Label", "Entry"}
_TOLD_AS = {"message", "advice", "why"}
_NO_TEXT = re.compile(  # tags, endings of files, names of formats, names of actions
    r"<[^>]*>|&\w+;|\*\.\w+|\b(DXF|PDF|CSV|JSON|TOML)\b|\b[a-z]+(_[a-z]*)+\b"
)
_WORD = re.compile(r"[A-Za-z]{3,}")
_NO_WORDS = {"2 perm, 57 ng, sd 0.2 m", "enclosure-app"}


def name_of(call: ast.Call) -> str:
    func = call.func
    return func.attr if isinstance(func, ast.Attribute) else getattr(func, "id", "")


def bare(node: ast.AST) -> Iterator[str]:
    """Yield literal texts with words in them that nothing translates."""
    if isinstance(node, ast.Constant):
        yield from worded(node.value)
    elif isinstance(node, ast.Call):
        yield from (text for each in within(node) for text in bare(each))
    elif not isinstance(node, ast.Subscript | ast.Compare | ast.Dict):  # those hold keys
        yield from (text for child in ast.iter_child_nodes(node) for text in bare(child))


def worded(value: object) -> Iterator[str]:
    """Yield a value if it is a text with words in it, and no name of an action."""
    if isinstance(value, str) and value not in _NO_WORDS:
        plain = _NO_TEXT.sub("", value)
        if _WORD.search(plain):
            yield value


def within(call: ast.Call) -> Iterator[ast.AST]:
    """Yield what a call is given that may hold texts; what translates is given texts to translate."""
    if name_of(call) not in _SAYS:
        given = (*call.args, *(keyword.value for keyword in call.keywords))
        yield from (each for each in given if not isinstance(each, ast.Constant))


def past_translation(path: Path, calls: set[str], keywords: set[str]) -> Iterator[str]:
    tree = ast.parse(path.read_text(encoding="utf-8"))
    for call in ast.walk(tree):
        if not isinstance(call, ast.Call):
            continue
        shown = list(call.args) if name_of(call) in calls else []
        shown += [each.value for each in call.keywords if each.arg in keywords]
        for argument in shown:
            for text in bare(argument):
                yield f"{path.relative_to(ROOT)}:{call.lineno}: {text!r}"


def test_the_window_shows_no_text_that_goes_past_translation() -> None:
    files = sorted((PACKAGE / "window").rglob("*.py"))
    assert [text for path in files for text in past_translation(path, _SHOWN_BY, set())] == []


@pytest.mark.parametrize("part", ["rules", "files", "model", "drawing", "planning", "network"])
def test_nothing_below_the_window_tells_a_person_anything_past_translation(part: str) -> None:
    files = sorted((PACKAGE / part).rglob("*.py"))
    assert [text for path in files for text in past_translation(path, _TOLD_BY, _TOLD_AS)] == []
