"""Puts sections together: which pieces, marks and breaks belong to which frame."""

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, replace

import numpy as np

from enclosure_app.errors import EnclosureError
from enclosure_app.files.dxf.raw import RawPath, RawText
from enclosure_app.files.dxf.words import listed
from enclosure_app.files.framing.breaks import cut_off, ended_on, find_breaks
from enclosure_app.files.framing.extents import around_all, frame_around
from enclosure_app.files.framing.frames import Frame, drawn_frames
from enclosure_app.files.framing.marks import NO_MARKS, Marks, written
from enclosure_app.files.framing.titles import named
from enclosure_app.geometry.outlines.chaining import chain
from enclosure_app.geometry.outlines.clipping import (
    Boxes,
    boxes_of,
    clip_area,
    clip_run,
    overlapping,
    standing,
    within,
)
from enclosure_app.language import say, say_count
from enclosure_app.model.drawing import Note, NoteLevel
from enclosure_app.model.place import Area, Line, Points, Shape
from enclosure_app.model.product import Product
from enclosure_app.model.section import DOWN, Break, Piece, Section, Stroke, Text


@dataclass(frozen=True, slots=True)
class Material:
    """What a drawing holds, sorted by what it is for; every length in mm.

    `breaks` are called so by the layer map; `found_breaks` were recognised in other linework and
    count in pairs only. `told` are the marks that the person gives; `strokes` the linework that
    is shown only, `taken` what is drawn besides.
    """

    pieces: tuple[Piece, ...]
    products: Mapping[str, Product]
    frames: tuple[RawPath, ...] = ()
    breaks: tuple[RawPath, ...] = ()
    found_breaks: tuple[Points, ...] = ()
    texts: tuple[RawText, ...] = ()
    strokes: tuple[Stroke, ...] = ()
    taken: tuple[Stroke, ...] = ()
    told: Marks = NO_MARKS
    plan: bool = False
    linework: bool = False


Made = tuple[tuple[Section, ...], tuple[Note, ...]]


def sections_of(material: Material, mark_of: Callable[[str], str | None]) -> Made:
    """Return one section for each frame, or one for the whole drawing where none is drawn.

    Raises:
        EnclosureError: a mark that the person gave lies in no drawn frame.
    """
    words = written(material.texts, mark_of)
    frames, notes = drawn_frames(material.frames)
    if frames:
        _refuse_stray(material.told, frames)
        framed = [
            replace(f, marks=words.within(f.ring).overridden(material.told.within(f.ring)))
            for f in frames
        ]
    elif not material.pieces:
        framed = [around_all([stroke.points for stroke in material.strokes])]
    else:
        marks = words.overridden(material.told)
        lines = frozenset(k for k, product in material.products.items() if product.drawn != "area")
        frame, more = frame_around(material.pieces, lines, marks)
        framed, notes = [frame], (*notes, *more)
    titles = [text for text in material.texts if mark_of(text.text.strip()) is None]
    return _filled(material, named(framed, titles), notes)


def _filled(material: Material, frames: Sequence[Frame], notes: tuple[Note, ...]) -> Made:
    runs = [_run(piece.shape) for piece in material.pieces]
    said_breaks = _break_lines(material)
    breaks, single = find_breaks((*said_breaks, *material.found_breaks), runs)
    single = tuple(line for line in single if line in said_breaks)
    all_pieces = ended_on(material.pieces, (*said_breaks, *_paired(material, breaks)))
    runs = [_run(piece.shape) for piece in all_pieces]
    boxes = boxes_of(runs)
    sections, used, said = [], set[int](), list(notes)
    for whole_frame in frames:
        frame, more = _cut(whole_frame, single, runs)
        pieces, whole = _pieces_in(frame, all_pieces, runs, boxes)
        used |= whole
        section = _section(material, frame, pieces, breaks)
        sections.append(section)
        said += [*more, *_plan_notes(section)]
    stray = [piece for i, piece in enumerate(material.pieces) if i not in used]
    return tuple(sections), (*said, *_stray_notes(stray))


def _section(
    material: Material, frame: Frame, pieces: tuple[Piece, ...], breaks: Sequence[Break]
) -> Section:
    flat = material.plan or frame.plan
    return Section(
        name=frame.name,
        frame=frame.ring,
        pieces=pieces,
        products=material.products,
        inside=frame.marks.inside,
        outside=frame.marks.outside,
        gravity=None if flat else DOWN,
        frame_drawn=frame.drawn,
        breaks=tuple(each for each in breaks if within(each.near + each.far, frame.ring).any()),
        strokes=strokes_in(frame, material.strokes) if material.linework else (),
        taken=_taken_in(frame, material) if material.linework else (),
        texts=_texts_in(frame, material.texts) if material.linework else (),
    )


def _refuse_stray(told: Marks, frames: Sequence[Frame]) -> None:
    for word, points in (("inside", told.inside), ("outside", told.outside)):
        for point in points:
            if not any(within((point,), frame.ring)[0] for frame in frames):
                raise EnclosureError(
                    say(
                        "--{word} {point} (mm) lies in no frame of the drawing: give a point "
                        "inside one.",
                        word=word,
                        point=f"{point[0]:g},{point[1]:g}",
                    )
                )


def _run(shape: Shape) -> Points:
    if isinstance(shape, Line):
        return (*shape.points, shape.points[0]) if shape.closed else shape.points
    return (*shape.outer, shape.outer[0])


def _break_lines(material: Material) -> list[Points]:
    runs = chain([path.points for path in material.breaks if not path.closed])
    return [run.points for run in runs if not run.closed]


def _paired(material: Material, breaks: Sequence[Break]) -> list[Points]:
    ends = {end for each in breaks for end in (*each.near, *each.far)}
    return [line for line in material.found_breaks if line[0] in ends]


def _cut(
    frame: Frame, single: Sequence[Points], runs: Sequence[Points]
) -> tuple[Frame, tuple[Note, ...]]:
    notes: list[Note] = []
    for line in single:
        if within(line, frame.ring).any():
            ring, more = cut_off(frame.ring, line, runs)
            frame = replace(frame, ring=ring)
            notes += more
    return frame, tuple(notes)


def _pieces_in(
    frame: Frame, pieces: Sequence[Piece], runs: Sequence[Points], boxes: Boxes
) -> tuple[tuple[Piece, ...], set[int]]:
    """Return the pieces in a frame, cut along it, and which of `pieces` they come from."""
    near = np.flatnonzero(overlapping(boxes, frame.ring)).tolist()
    whole, partly = standing([runs[i] for i in near], frame.ring)
    found: list[Piece] = []
    used = set()
    for i, all_in, some_in in zip(near, whole.tolist(), partly.tolist(), strict=True):
        piece = pieces[i]
        parts = [piece] if all_in else []
        if not all_in and (some_in or _around(piece.shape, frame.ring)):
            parts = _clipped(piece, frame.ring)
        if parts:
            used.add(i)
            found += parts
    return tuple(found), used


def _around(shape: Shape, ring: Points) -> bool:
    return isinstance(shape, Area) and bool(within(ring[:1], shape.outer)[0])


def _clipped(piece: Piece, ring: Points) -> list[Piece]:
    shape = piece.shape
    parts: list[Shape] = []
    if isinstance(shape, Line):
        runs = clip_run(shape.points, ring, closed=shape.closed)
        parts += [Line(run, shape.width) for run in runs]
    else:
        parts += [Area(outer, holes) for outer, holes in clip_area(shape.outer, shape.holes, ring)]
    return [
        replace(piece, shape=part, name=f"{piece.name}-{n}" if n > 1 else piece.name)
        for n, part in enumerate(parts, 1)
    ]


def clipped_to(frame: Frame, pieces: Sequence[Piece]) -> list[Piece]:
    """Return the parts of pieces that lie in a frame."""
    runs = [_run(piece.shape) for piece in pieces]
    return list(_pieces_in(frame, pieces, runs, boxes_of(runs))[0])


def strokes_in(frame: Frame, strokes: tuple[Stroke, ...]) -> tuple[Stroke, ...]:
    """Return what is shown in a frame; without a drawn frame everything is."""
    if not frame.drawn:
        return strokes
    whole, partly = standing([stroke.points for stroke in strokes], frame.ring)
    found = []
    for i, stroke in enumerate(strokes):
        if whole[i]:
            found.append(stroke)
        elif partly[i]:
            parts = clip_run(stroke.points, frame.ring)
            found += [replace(stroke, points=part) for part in parts]
    return tuple(found)


def _taken_in(frame: Frame, material: Material) -> tuple[Stroke, ...]:
    """Return what is drawn in a frame and is no linework, and whole what the frame cuts."""
    if not frame.drawn:
        return material.taken
    return (*near_frame(frame, material.taken)[0], *near_frame(frame, material.strokes)[1])


def near_frame(
    frame: Frame, strokes: Sequence[Stroke]
) -> tuple[tuple[Stroke, ...], tuple[Stroke, ...]]:
    """Return the strokes that may reach into a frame, and those of them that it cuts."""
    boxes = boxes_of([stroke.points for stroke in strokes])
    near = [strokes[i] for i in np.flatnonzero(overlapping(boxes, frame.ring)).tolist()]
    whole, _ = standing([stroke.points for stroke in near], frame.ring)
    cut = (stroke for stroke, all_in in zip(near, whole, strict=True) if not all_in)
    return tuple(near), tuple(cut)


def _texts_in(frame: Frame, texts: Sequence[RawText]) -> tuple[Text, ...]:
    inside = within([text.at for text in texts], frame.ring)
    return tuple(
        Text(text.text, text.at, text.height, text.angle, text.tag.layer, text.tag.handle)
        for text, here in zip(texts, inside, strict=True)
        if here or not frame.drawn
    )


def _plan_notes(section: Section) -> tuple[Note, ...]:
    if section.gravity is not None:
        return ()
    text = say("{section} is read as a plan: nothing runs down in it.", section=section.name)
    return (Note(NoteLevel.GUESSED, text),)


def _stray_notes(stray: Sequence[Piece]) -> tuple[Note, ...]:
    if not stray:
        return ()
    layers = listed({piece.layer for piece in stray}, 6)
    text = say_count(
        len(stray),
        "1 piece lies outside every frame and is left out (on {layers}).",
        "{count} pieces lie outside every frame and are left out (on {layers}).",
        layers=layers,
    )
    return (Note(NoteLevel.IGNORED, text),)
