"""Gathers every text that a person reads, keeps the translations in step, and compiles them.

    .venv/bin/python .ci/languages.py          gather, and write resources/languages/*.ts and *.qm
    .venv/bin/python .ci/languages.py --left   only say what is not translated yet

A text is found where it is given to `self.tr`, to `say`, `say_count` and `later` of
`enclosure_app.language`, to a module's own `say`, or to `word`; what stands in tables (products,
rules' pages, menus, sizes of ready-made parts) is read out of the tables.
"""

import ast
import sys
import sysconfig
from collections.abc import Iterator
from dataclasses import dataclass, field
from importlib import import_module
from pathlib import Path
from subprocess import run
from typing import NamedTuple
from xml.etree import ElementTree as ET

ROOT = Path(__file__).resolve().parents[1]
PACKAGE = ROOT / "enclosure_app"
LANGUAGES = ROOT / "resources" / "languages"
WORDS = "Words"  # the context of all that is said below the window
_COUNTED = {"say": (0,), "later": (0,), "say_count": (1, 2), "word": (0,)}


class Text(NamedTuple):
    """One text: where it belongs, and its English words."""

    context: str
    source: str


@dataclass(slots=True)
class Gatherer:
    """Collects texts, each with the files that say it."""

    found: dict[Text, set[str]] = field(default_factory=dict)
    strange: list[str] = field(default_factory=list)

    def add(self, context: str, source: str, file: str) -> None:
        """Keep one text; empty ones and bare signs need no translation."""
        if any(letter.isalpha() for letter in source):
            self.found.setdefault(Text(context, source), set()).add(file)


def gathered() -> dict[Text, set[str]]:
    """Return every text of the program with the files that say it."""
    return searched().found


def searched() -> Gatherer:
    """Return what was found in the whole program, and what is said that cannot be read there."""
    gatherer = Gatherer()
    contexts = {path: _own_context(_tree(path)) for path in sorted(PACKAGE.rglob("*.py"))}
    for path in contexts:
        _of_file(path, contexts, gatherer)
    for context, source, file in _of_tables():
        gatherer.add(context, source, file)
    return gatherer


# ---- what stands in the code ---------------------------------------------------------------------


def _tree(path: Path) -> ast.Module:
    return ast.parse(path.read_text(encoding="utf-8"))


def _own_context(tree: ast.Module) -> str:
    """Return the context of the `say` that a module defines, "" where it defines none."""
    constants = {
        node.targets[0].id: node.value.value
        for node in tree.body
        if isinstance(node, ast.Assign)
        and isinstance(node.targets[0], ast.Name)
        and isinstance(node.value, ast.Constant)
    }
    for node in tree.body:
        if isinstance(node, ast.FunctionDef) and node.name in ("say", "word"):
            for call in ast.walk(node):
                if isinstance(call, ast.Call) and ast.unparse(call.func).endswith(
                    "Application.translate"
                ):
                    context = call.args[0]
                    named = isinstance(context, ast.Name)
                    return str(constants[context.id] if named else ast.literal_eval(context))
    return ""


def _speakers(tree: ast.Module, own: str, contexts: dict[Path, str]) -> dict[str, str]:
    """Return the names by which a module says things, each with its context."""
    speakers = dict.fromkeys(("say", "word"), own) if own else {}
    for node in tree.body:
        if not isinstance(node, ast.ImportFrom) or not node.module:
            continue
        path = ROOT / f"{node.module.replace('.', '/')}.py"
        below = node.module == "enclosure_app.language"
        context = WORDS if below else contexts.get(path, "")
        names = [alias.asname or alias.name for alias in node.names]
        speakers |= {name: context for name in names if name in _COUNTED and context}
    return speakers


def _of_file(path: Path, contexts: dict[Path, str], gatherer: Gatherer) -> None:
    tree = _tree(path)
    file = path.relative_to(ROOT).as_posix()
    speakers = _speakers(tree, contexts[path], contexts)
    for owner, call in _calls(tree, ""):
        name = _name(call.func)
        if isinstance(call.func, ast.Attribute):
            if name == "tr":
                if _name(call.func.value) != "self":  # nobody knows here what class it is
                    gatherer.strange.append(f"{file}:{call.lineno} {ast.unparse(call)}")
                _keep(call, (0,), owner, file, gatherer)
        elif name == "QT_TRANSLATE_NOOP":
            _keep(call, (1,), ast.literal_eval(call.args[0]), file, gatherer)
        elif name in speakers:
            _keep(call, _COUNTED[name], speakers[name], file, gatherer)


def _keep(
    call: ast.Call, places: tuple[int, ...], context: str, file: str, gatherer: Gatherer
) -> None:
    for place in places:
        if place < len(call.args):
            text = call.args[place]
            for each in (text.body, text.orelse) if isinstance(text, ast.IfExp) else (text,):
                if isinstance(each, ast.Constant) and isinstance(each.value, str):
                    gatherer.add(context, each.value, file)
                else:
                    gatherer.strange.append(f"{file}:{call.lineno} {ast.unparse(each)}")


def _calls(node: ast.AST, owner: str) -> Iterator[tuple[str, ast.Call]]:
    """Yield every call with the class in which it stands."""
    for child in ast.iter_child_nodes(node):
        inside = child.name if isinstance(child, ast.ClassDef) else owner
        if isinstance(child, ast.Call):
            yield inside, child
        yield from _calls(child, inside)


def _name(node: ast.expr) -> str:
    if isinstance(node, ast.Attribute):
        return node.attr
    return node.id if isinstance(node, ast.Name) else ""


# ---- what stands in tables -----------------------------------------------------------------------


def _of_tables() -> Iterator[tuple[str, str, str]]:
    """Yield context, text and file of what is said from tables."""
    yield from _of_the_trade()
    yield from _of_readers()
    yield from _of_parts()
    yield from _of_menus()


def _of_the_trade() -> Iterator[tuple[str, str, str]]:
    model = import_module("enclosure_app.model.product")
    finding = import_module("enclosure_app.model.finding")
    report = import_module("enclosure_app.model.report")
    file = "resources/products.toml"
    for product in import_module("enclosure_app.files.maps.catalogue").load_products().values():
        yield WORDS, product.name, file
        yield WORDS, product.source, file
    for kind in (model.Control, finding.Severity):
        for each in kind:
            yield WORDS, each.value.capitalize(), "enclosure_app/model"
    for kind in (model.Control, finding.Severity, report.Continuity, model.Bond):
        for each in kind:
            yield WORDS, each.value, "enclosure_app/model"
    for each in model.Kind:
        yield WORDS, each.value.replace("-", " "), "enclosure_app/model"
    for each in finding.Severity:
        yield WORDS, f"{each.value}s", "enclosure_app/model/finding.py"
    yield from _of_rules()
    yield from _of_books()


def _of_books() -> Iterator[tuple[str, str, str]]:
    """Yield names, sources and notes of the rule books, which stand in a table."""
    rule_book = import_module("enclosure_app.files.maps.rule_book")
    for book, name in rule_book.books().items():
        yield WORDS, name, "resources/limits.toml"
        for limit in rule_book.load_limits(book).figures.values():
            for text in (limit.source, limit.edition, limit.note):
                yield WORDS, text, "resources/limits.toml"


def _of_rules() -> Iterator[tuple[str, str, str]]:
    rule_module = import_module("enclosure_app.rules.rule")
    for rule in import_module("enclosure_app.rules").RULES:
        file = f"enclosure_app/rules/{rule.name.replace('-', '_')}.py"
        name = rule.name.replace("-", " ")
        summary, parts = rule_module.page_parts(rule)
        for text in (name, name.capitalize(), summary, *(text for part in parts for text in part)):
            yield WORDS, text, file


def _of_readers() -> Iterator[tuple[str, str, str]]:
    notes = import_module("enclosure_app.files.dxf.notes")
    tally = import_module("enclosure_app.files.dxf.tally")
    units = import_module("enclosure_app.files.units.written")
    lines = import_module("enclosure_app.model.edits.lines")
    sections = import_module("enclosure_app.model.edits.sections")
    texts = [*notes._FOUND.values(), *(words for _, words in notes._REMARKS)]  # noqa: SLF001
    texts += [text for pair in tally._OTHER_THINGS.values() for text in pair]  # noqa: SLF001
    texts += [*units.NAMES.values(), *(end.value for end in lines.End)]
    texts += [side.value for side in sections.Side]
    for text in texts:
        yield WORDS, text, "enclosure_app/files"


def _of_parts() -> Iterator[tuple[str, str, str]]:
    parts = import_module("enclosure_app.planning.parts")
    for part in parts.PARTS:
        for context in (WORDS, "Filing"):
            yield context, part.title, "enclosure_app/planning/parts"
        for size in parts.sizes_of(part.parameters):
            yield WORDS, size.words, "enclosure_app/planning/parts"


def _of_menus() -> Iterator[tuple[str, str, str]]:
    table = import_module("enclosure_app.window.menus.action_table")
    for row in table.TABLE:
        for text in (row.menu, row.text, row.tip):
            yield table.CONTEXT, text, "enclosure_app/window/menus/action_table.py"
    caution = import_module("enclosure_app.reports.text_report").CAUTION
    yield "Pages", caution, "enclosure_app/reports/text_report.py"
    start = import_module("enclosure_app.window.surround.start_page")
    for _, _, told in start.SAMPLES:
        for context in ("StartPage", "Filing"):
            yield context, told, "enclosure_app/window/surround/start_page.py"


# ---- the files of translations -------------------------------------------------------------------


def translations(path: Path) -> dict[Text, str]:
    """Return what a file of translations says; "" for what is not translated yet."""
    said: dict[Text, str] = {}
    if path.exists():
        tree = ET.parse(path)  # noqa: S314  our own file
        for context in tree.getroot().iter("context"):
            name = context.findtext("name") or ""
            for message in context.iter("message"):
                source = message.findtext("source") or ""
                said[Text(name, source)] = message.findtext("translation") or ""
    return said


def write_translations(
    path: Path, texts: dict[Text, set[str]], said: dict[Text, str], language: str
) -> None:
    """Write a file of translations: every text once, in order, with the files that say it."""
    root = ET.Element("TS", version="2.1", language=language, sourcelanguage="en")
    contexts: dict[str, ET.Element] = {}
    for text in sorted(texts):
        if text.context not in contexts:
            contexts[text.context] = ET.SubElement(root, "context")
            ET.SubElement(contexts[text.context], "name").text = text.context
        message = ET.SubElement(contexts[text.context], "message")
        for file in sorted(texts[text]):
            ET.SubElement(message, "location", filename=f"../../{file}")
        ET.SubElement(message, "source").text = text.source
        translation = ET.SubElement(message, "translation")
        translation.text = said.get(text, "")
        if not translation.text:
            translation.set("type", "unfinished")
    ET.indent(root, " ")
    head = '<?xml version="1.0" encoding="utf-8"?>\n<!DOCTYPE TS>\n'
    path.write_text(head + ET.tostring(root, "unicode") + "\n", encoding="utf-8")


def in_step(texts: dict[Text, set[str]], said: dict[Text, str]) -> dict[Text, str]:
    """Return the translations of all texts; one that moved elsewhere takes its translation along."""
    known = {text.source: words for text, words in said.items() if words}
    return {text: said.get(text) or known.get(text.source, "") for text in texts}


def compile_translations(path: Path) -> None:
    """Compile a file of translations with Qt's own compiler, which comes with PySide6."""
    compiler = Path(sysconfig.get_path("scripts")) / "pyside6-lrelease"
    run([compiler, "-silent", path, "-qm", path.with_suffix(".qm")], check=True)  # noqa: S603  our own paths


def main(arguments: list[str]) -> int:
    """Gather, and write or only tell; the exit status says whether something is left."""
    texts = gathered()
    left = 0
    for path in sorted(LANGUAGES.glob("*.ts")):
        said = in_step(texts, translations(path))
        missing = sorted(text for text, words in said.items() if not words)
        left += len(missing)
        for text in missing:
            print(f"{path.stem}: {text.context}: {text.source!r}")
        if "--left" not in arguments:
            write_translations(path, texts, said, path.stem)
            compile_translations(path)
    print(f"{len(texts)} texts, {left} to be translated.")
    return 1 if left else 0


if __name__ == "__main__":
    sys.path.insert(0, str(ROOT))
    sys.exit(main(sys.argv[1:]))
