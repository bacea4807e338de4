"""Reads a drawing: the one entry from a DXF file to sections."""

from collections.abc import Iterable
from dataclasses import dataclass, replace
from pathlib import Path

from enclosure_app.errors import EnclosureError, ListedError
from enclosure_app.files.dxf.content import Content, content
from enclosure_app.files.dxf.document import Document, open_document
from enclosure_app.files.dxf.identity import identity_of
from enclosure_app.files.dxf.memory import kept_in_use
from enclosure_app.files.dxf.raw import Raw, RawPath
from enclosure_app.files.dxf.scaling import in_mm, scaled
from enclosure_app.files.framing.gaps import KINDS, break_lines_at, gaps_in
from enclosure_app.files.framing.marks import Marks, missing
from enclosure_app.files.framing.sections import Material, sections_of
from enclosure_app.files.framing.sorting import Sorting
from enclosure_app.files.maps.guesses import mark_of
from enclosure_app.files.maps.layer_map import LayerMap
from enclosure_app.files.maps.meaning import Meaning, layers_named
from enclosure_app.files.units.gathering import evidence_of
from enclosure_app.files.units.judging import HEADER, judge_units, told_units
from enclosure_app.language import say
from enclosure_app.model.drawing import Drawing, Note, Units
from enclosure_app.model.place import Points
from enclosure_app.model.standing.standing import new_id

SAGITTA = 0.1  # mm between a curve and the polyline that stands for it


@dataclass(frozen=True, slots=True)
class ReadOptions:
    """What the person says about a drawing, and how much of it is wanted.

    `inside` and `outside` are marks in the drawing's own coordinates and units. `linework` also
    delivers what is no piece. `require_marks` refuses sections that lack a mark; without it (and
    with `linework`) a drawing of which nothing is mapped can be read too.
    """

    layer_map: LayerMap | None = None
    units: Units | None = None
    inside: Points = ()
    outside: Points = ()
    all_layers: bool = False
    layout: str = "Model"
    linework: bool = False
    plan: bool = False
    require_marks: bool = True


@kept_in_use()
def read_drawing(path: Path, options: ReadOptions | None = None) -> Drawing:
    """Read the sections of one DXF file.

    Raises:
        EnclosureError: the file cannot be read, its units cannot be told, nothing in it is mapped
            to a product, or a mark is missing.
    """
    options = options or ReadOptions()
    document = open_document(path)
    if document.cut_short and options.require_marks:
        raise EnclosureError(_cut_short(path))
    meaning = Meaning(options.layer_map, linework=options.linework)
    units, content_read, notes = _in_units(path, document, meaning, options)
    material, more = _material(content_read.items, meaning, options, units.in_mm)
    material = _with_breaks(material, document, meaning, options, units.in_mm)
    if not material.pieces and (options.require_marks or not options.linework):
        raise EnclosureError(_nothing_mapped(path, content_read.layers))
    sections, said = sections_of(material, mark_of)
    lacking = missing(str(path), sections) if options.require_marks else ()
    if lacking:
        raise ListedError(lacking)
    return Drawing(
        file=str(path),
        units=units,
        sections=sections,
        notes=(
            *document.notes,
            *content_read.notes,
            *notes,
            *meaning.notes(material.pieces),
            *more,
            *said,
        ),
        layouts=document.layouts,
        identity=new_id(*identity_of(path)),
    )


def _in_units(
    path: Path, document: Document, meaning: Meaning, options: ReadOptions
) -> tuple[Units, Content, tuple[Note, ...]]:
    """Read the layout and tell its units; curves are read again if they came out too coarse."""
    assumed = options.units or HEADER.get(document.insunits) or Units.MM

    def read(units: Units) -> Content:
        return content(
            document,
            layout=options.layout,
            all_layers=options.all_layers,
            wanted=meaning.wanted,
            sagitta=SAGITTA / units.in_mm,
        )

    found = read(assumed)
    evidence = evidence_of(path, document, found.items, meaning)
    if options.units:
        return options.units, found, told_units(options.units, evidence)
    if evidence.extent == 0:
        raise EnclosureError(_nothing_mapped(path, found.layers))
    units, notes = judge_units(evidence)
    return units, (found if units is assumed else read(units)), notes


def _material(
    items: Iterable[Raw], meaning: Meaning, options: ReadOptions, factor: float
) -> tuple[Material, tuple[Note, ...]]:
    """Sort what was read by what it is for, in mm."""
    sorting = Sorting(meaning, linework=options.linework)
    material, notes = sorting.take_all(in_mm(item, factor) for item in items).material()
    told = Marks(scaled(options.inside, factor), scaled(options.outside, factor))
    return replace(material, told=told, plan=options.plan), notes


def _with_breaks(
    material: Material, document: Document, meaning: Meaning, options: ReadOptions, factor: float
) -> Material:
    """Look for break lines in the linework where runs stop and go on in the same line."""
    gaps = gaps_in(material.pieces)
    if not gaps:
        return material
    linework = content(
        document,
        layout=options.layout,
        all_layers=options.all_layers,
        wanted=lambda tag: tag.kind in KINDS and meaning.is_linework(tag),
        sagitta=SAGITTA / factor,
    )
    paths = [in_mm(item, factor) for item in linework.items if isinstance(item, RawPath)]
    found = break_lines_at(gaps, [path for path in paths if isinstance(path, RawPath)])
    return replace(material, found_breaks=found)


def _cut_short(path: Path) -> str:
    return say(
        "{file} is cut short in the middle of what it draws, so pieces are missing and nothing can "
        "be judged: get the whole file again.",
        file=path,
    )


def _nothing_mapped(path: Path, layers: Iterable[str]) -> str:
    names = set(layers)
    if not names:
        return say("{file} holds nothing that is drawn: choose another layout or file.", file=path)
    return say(
        "{file}: nothing says which lines are which product (it has {layers}): say so with "
        "--layers MAP.toml.",
        file=path,
        layers=layers_named(names),
    )
