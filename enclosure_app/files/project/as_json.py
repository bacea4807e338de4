"""What stands in a project file: the form of each part of a project, in the newest format.

README, "The project file", describes the same for people. Whoever adds a field adds it here, in
the README and, once a version has been given away, a step to `project_migrations`.
"""

from collections.abc import Mapping
from dataclasses import replace
from math import hypot
from typing import Any

from enclosure_app.files.maps.rule_book import books, limit_units, unknown_book
from enclosure_app.files.maps.tables import meant
from enclosure_app.files.project import forms as form
from enclosure_app.files.project import sayings as said
from enclosure_app.files.project.forms import Form, brief, record, several
from enclosure_app.files.project.products import kept, products_in
from enclosure_app.language import say
from enclosure_app.model.drawing import Note, NoteLevel, Units
from enclosure_app.model.finding import Severity
from enclosure_app.model.layer import LayerRow, Role
from enclosure_app.model.place import Area, Line, Point, Shape
from enclosure_app.model.product import Bond, Control, Kind, Product
from enclosure_app.model.project import Project
from enclosure_app.model.section import Break, Piece, Section, Stroke, Text
from enclosure_app.model.states import past_of
from enclosure_app.model.underlay import Underlay

ABOUT = (
    "A project of enclosure-app. Lengths are millimetres, y up; angles are degrees, anticlockwise; "
    "units are those of the drawing."
)

_LINE: dict[str, Form[Any]] = {
    "line": form.counted(form.points, 2),
    "width": form.number,
    "closed": form.flag,
}
_AREA: dict[str, Form[Any]] = {
    "area": form.counted(form.points, 3),
    "holes": several(form.counted(form.points, 3)),
}


def _read_shape(value: object) -> Shape:
    table = form.table_of(value)
    if "area" in table:
        held = form.read_table(table, _AREA, ["area"])
        return Area(held["area"], held.get("holes", ()))
    held = form.read_table(table, _LINE, ["line"])
    return Line(held["line"], held.get("width", 0.0), held.get("closed", False))


def _write_shape(shape: Shape) -> dict[str, Any]:
    if isinstance(shape, Area):
        return _written({"area": shape.outer, "holes": shape.holes}, _AREA)
    return _written({"line": shape.points, "width": shape.width, "closed": shape.closed}, _LINE)


def _written(held: Mapping[str, object], forms: Mapping[str, Form[Any]]) -> dict[str, Any]:
    return {name: forms[name].write(value) for name, value in held.items()}


def _read_pair(value: object) -> tuple[str, str]:
    names = sorted(several(form.text).read(value))
    if len(names) != 2:
        raise form.wrong(say("must name two pieces."))
    return (names[0], names[1])


def _read_down(value: object) -> Point:
    down = form.point.read(value)
    if abs(hypot(*down) - 1.0) > 1e-6:
        raise form.wrong(say("must be one long, such as [0, -1], or null for a plan."))
    return down


def _read_products(value: object) -> Mapping[str, Product]:
    table = form.table_of(value)
    if doubled := [key for key, each in table.items() if isinstance(each, dict) and "key" in each]:
        text = say("is not known here: the name before the product is its key.")
        raise form.Mistakes(*[((key, "key"), text) for key in doubled])
    named = {
        key: {**each, "key": key} if isinstance(each, dict) else each
        for key, each in table.items()
    }
    return form.by_name(_PRODUCT).read(named)


def _write_products(products: Mapping[str, Product]) -> dict[str, Any]:
    written = {key: _PRODUCT.write(product) for key, product in products.items()}
    return {
        key: {name: value for name, value in fields.items() if name != "key"}
        for key, fields in written.items()
    }


_PRODUCT = record(
    Product,
    key=form.text,
    name=form.text,
    controls=form.any_order(form.word(Control)),
    bond=form.word(Bond),
    kind=form.word(Kind),
    drawn=form.text,
    min_lap_mm=form.maybe(form.number),
    thickness_mm=form.maybe(form.number),
    permeance_ng=form.maybe(form.number),
    sd_m=form.maybe(form.number),
    conductivity=form.maybe(form.number),
    source=form.text,
    confirmed=form.flag,
)
_PRODUCTS = Form(_read_products, _write_products)
_PIECE = record(
    Piece,
    name=form.text,
    product=form.text,
    shape=Form(_read_shape, _write_shape),
    handles=several(form.text),
    layer=form.text,
)
_STROKE = brief(
    Stroke,
    points=form.points,
    layer=form.text,
    handle=form.text,
    linetype=form.text,
    color=form.whole,
    block=form.text,
    width=form.number,
    filled=form.flag,
)
_NOTE = brief(Note, level=form.word(NoteLevel), text=form.text, about=form.text)
_ROW = brief(
    LayerRow,
    match=form.text,
    product=form.maybe(form.text),
    role=form.maybe(form.word(Role)),
    linetype=form.maybe(form.text),
    color=form.maybe(form.whole),
    block=form.maybe(form.text),
    handles=several(form.text),
)
_TEXT = record(
    Text,
    text=form.text,
    at=form.point,
    height=form.number,
    angle=form.number,
    layer=form.text,
    handle=form.text,
)
_ENDS = form.counted(form.points, 2, 2)
_SECTION = record(
    Section,
    name=form.text,
    file=form.text,
    frame=form.counted(form.points, 3),
    frame_drawn=form.flag,
    gravity=form.maybe(Form(_read_down, form.point.write)),
    inside=form.points,
    outside=form.points,
    breaks=several(record(Break, near=_ENDS, far=_ENDS)),
    sealed=form.any_order(Form(_read_pair, list)),
    products=_PRODUCTS,
    pieces=several(_PIECE),
    texts=several(_TEXT),
    strokes=several(_STROKE),
    taken=several(_STROKE),
)
_PROJECT = record(
    Project,
    id=form.text,
    title=form.text,
    units=form.word(Units),
    source=form.text,
    layouts=several(form.text),
    notes=several(_NOTE),
    book=form.text,
    layers=several(_ROW),
    figures=form.by_name(form.number),
    severities=form.by_name(form.word(Severity)),
    decisions=several(said.DECISION),
    remarks=several(said.REMARK),
    site_checks=several(said.SITE_CHECK),
    sign_offs=several(said.SIGN_OFF),
    revision=form.text,
    carried=several(said.CARRIED),
    questions=several(said.QUESTION),
    past=several(form.text),
    sections=several(_SECTION),
    underlays=several(
        record(
            Underlay,
            name=form.text,
            kind=form.text,
            data=form.base64,
            at=form.point,
            mm_per_pixel=form.number,
            angle=form.number,
            page=form.whole,
            size=form.point,
            paper_mm=form.number,
            to_scale=form.flag,
            section=form.text,
            key=form.text,
            shown=form.flag,
            locked=form.flag,
            strength=form.number,
        )
    ),
    photographs=form.by_name(said.PHOTOGRAPH),
)


def written(project: Project) -> dict[str, Any]:
    """Return a project as what ``json.dumps`` takes, without the number of the format."""
    shared, own = kept(project.sections)
    sections = tuple(
        replace(section, products=products)
        for section, products in zip(project.sections, own, strict=True)
    )
    past = tuple(sorted(past_of(project)))
    table = _PROJECT.write(replace(project, sections=sections, past=past))
    last = {name: table.pop(name) for name in ("sections", "underlays", "photographs")}
    return {"about": ABOUT, **table, "products": _PRODUCTS.write(shared), **last}


def read(table: Mapping[str, Any]) -> Project:
    """Return the project of a table in the newest format, without the number of the format.

    Raises:
        Mistakes: everything that is wrong.
    """
    rest = {key: value for key, value in table.items() if key not in ("about", "products")}
    found: list[tuple[form.Place, str]] = []
    shared: Mapping[str, Product] = {}
    try:
        shared = _PRODUCTS.read(table.get("products", {}))
    except form.Mistakes as mistakes:
        found += mistakes.within("products")
    try:
        project = _PROJECT.read(rest)
    except form.Mistakes as mistakes:
        raise form.Mistakes(*found, *mistakes.found) from None
    if found:
        raise form.Mistakes(*found)
    full = products_in(project.sections, shared)
    project = replace(project, sections=full)
    amiss = [*_sections_amiss(project), *_figures_amiss(project), *said.amiss(project)]
    if amiss:
        raise form.Mistakes(*amiss)
    return project


def _sections_amiss(project: Project) -> list[tuple[form.Place, str]]:
    """Name pieces without a product, and names that two pieces share."""
    found: list[tuple[form.Place, str]] = []
    for at, section in enumerate(project.sections):
        seen: set[str] = set()
        for number, piece in enumerate(section.pieces):
            place = ("sections", at, "pieces", number)
            if piece.product not in section.products:
                hint = meant(piece.product, section.products)
                text = say(
                    'is "{product}", which is no product of this file or the program',
                    product=piece.product,
                )
                found.append(((*place, "product"), text + hint))
            if piece.name in seen:
                text = say(
                    'is "{name}", as that of a piece before it: give it another.', name=piece.name
                )
                found.append(((*place, "name"), text))
            seen.add(piece.name)
    return found


def _figures_amiss(project: Project) -> list[tuple[form.Place, str]]:
    found: list[tuple[form.Place, str]] = []
    if project.book and project.book not in books():
        text = unknown_book(project.book)
        found.append((("book",), say("names a rule book that is not there. {text}", text=text)))
    if project.figures:
        known = limit_units()
        found += [
            (
                ("figures", name),
                say("is no figure of the rule books{hint}", hint=meant(name, known)),
            )
            for name in project.figures
            if name not in known
        ]
    return found
