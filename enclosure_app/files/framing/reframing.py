"""Frames and breaks of an open section, after its layers were said to be something else."""

from collections.abc import Callable, Sequence
from dataclasses import replace

from enclosure_app.errors import EnclosureError
from enclosure_app.files.dxf.raw import RawPath, RawText, Tag
from enclosure_app.files.framing.breaks import cut_off, ended_on, find_breaks
from enclosure_app.files.framing.drawn_lines import drawn_of, paths_of
from enclosure_app.files.framing.extents import around_all, frame_around
from enclosure_app.files.framing.frames import Frame, drawn_frames
from enclosure_app.files.framing.gaps import around, break_lines_at, gaps_in, meets
from enclosure_app.files.framing.marks import Marks
from enclosure_app.files.framing.sections import Material, sections_of
from enclosure_app.files.maps.guesses import mark_of
from enclosure_app.geometry.outlines.chaining import chain
from enclosure_app.language import say
from enclosure_app.model.edits.looking_up import runs_of
from enclosure_app.model.layer import Role
from enclosure_app.model.place import Points
from enclosure_app.model.section import Section, Stroke, Text

Meaning = Callable[[Stroke], str]


def reframed(
    section: Section, lines: Sequence[Stroke], was: Meaning, now: Meaning
) -> tuple[Section, ...]:
    """Return a section, or those that it comes to, with frames and breaks as its lines say now.

    Args:
        section: The section, its pieces and lines as they are now.
        lines: All that is drawn in it.
        was: What a line meant before.
        now: What it means now.

    Raises:
        EnclosureError: no outline that is to be a frame closes.
    """
    section = _with_breaks(section, *(_of(lines, m, Role.BREAK) for m in (was, now)))
    section = _with_found_breaks(section)
    old, new = (_of(lines, meaning, Role.FRAME) for meaning in (was, now))
    before = set(old)
    if added := [line for line in new if line not in before]:
        return _framed(section, paths_of(added))
    if old and not new and _is_from(section, paths_of(old)):
        section = replace(section, frame_drawn=False)
    return (section if section.frame_drawn else grown(section),)


def grown(section: Section) -> Section:
    """Return a section in which no frame is drawn with a frame about all its pieces."""
    marks = Marks(section.inside, section.outside)
    if section.pieces:
        products = section.products
        lines = frozenset(key for key, product in products.items() if product.drawn != "area")
        frame, _ = frame_around(section.pieces, lines, marks)
    elif section.strokes:
        frame = around_all([stroke.points for stroke in section.strokes])
    else:
        return section
    marks = marks.overridden(frame.marks)
    return replace(section, frame=frame.ring, inside=marks.inside, outside=marks.outside)


def _of(lines: Sequence[Stroke], meaning: Meaning, role: Role) -> list[Stroke]:
    return [line for line in lines if meaning(line) == role]


def _is_from(section: Section, paths: Sequence[RawPath]) -> bool:
    rings = [frame.ring for frame in drawn_frames(paths)[0]]
    return section.frame_drawn and any(set(section.frame) <= set(ring) for ring in rings)


def _with_breaks(section: Section, old: Sequence[Stroke], new: Sequence[Stroke]) -> Section:
    """Return a section with the breaks that some lines make in place of those that others made."""
    if old == new:
        return section
    runs = _runs(section)
    gone, _ = find_breaks(_open_runs(old), runs)
    lines = _open_runs(new)
    breaks, single = find_breaks(lines, runs)
    ring = section.frame
    for line in single:
        ring, _ = cut_off(ring, line, runs)
    kept = (each for each in section.breaks if each not in gone)
    pieces = ended_on(section.pieces, lines)
    return replace(section, frame=ring, breaks=(*kept, *breaks), pieces=pieces)


def _with_found_breaks(section: Section) -> Section:
    """Return a section with the breaks that its linework shows where runs stop and go on."""
    gaps = gaps_in(section.pieces)
    if not gaps:
        return section
    cells = {cell for gap in gaps for end in gap for cell in around(end)}
    near = [stroke for stroke in section.strokes if meets(stroke.points, cells)]
    found = break_lines_at(gaps, paths_of(near))
    breaks = [each for each in find_breaks(found, _runs(section))[0] if each not in section.breaks]
    if not breaks:
        return section
    ends = {end for each in breaks for end in (*each.near, *each.far)}
    pieces = ended_on(section.pieces, [line for line in found if line[0] in ends])
    return replace(section, breaks=(*section.breaks, *breaks), pieces=pieces)


def _runs(section: Section) -> list[Points]:
    return [run for piece in section.pieces for run in runs_of(piece.shape)[:1]]


def _open_runs(strokes: Sequence[Stroke]) -> list[Points]:
    runs = chain([path.points for path in paths_of(strokes) if not path.closed])
    return [run.points for run in runs if not run.closed]


def _framed(section: Section, paths: Sequence[RawPath]) -> tuple[Section, ...]:
    """Return the sections that a section comes to when outlines in it are frames."""
    frames, _ = drawn_frames(paths)
    if not frames:
        layer = paths[0].tag.layer
        raise EnclosureError(
            say(
                "No outline on layer “{layer}” closes, so nothing can be judged inside of it: "
                "draw the frame by hand, or say another layer.",
                layer=layer,
            )
        )
    lines = drawn_of(section)
    shown = {stroke.handle for stroke in section.strokes}
    material = Material(
        pieces=section.pieces,
        products=section.products,
        frames=tuple(paths),
        texts=tuple(map(_raw, section.texts)),
        strokes=tuple(line for line in lines if line.handle in shown),
        taken=tuple(line for line in lines if line.handle not in shown),
        linework=True,
    )
    made, _ = sections_of(material, mark_of)
    alone = len(made) == 1
    return tuple(_as_before(each, section, keeps_name=alone) for each in made)


def _as_before(made: Section, before: Section, *, keeps_name: bool) -> Section:
    """Return a new section with what the person had said in the one that it was part of."""
    told = Marks(before.inside, before.outside).within(made.frame)
    marks = Marks(made.inside, made.outside).overridden(told)
    names = {piece.name for piece in made.pieces}
    frame = Frame(made.frame)
    return replace(
        made,
        name=before.name if keeps_name else made.name,
        inside=marks.inside,
        outside=marks.outside,
        gravity=None if frame.plan else before.gravity,
        breaks=tuple(b for b in before.breaks if Marks(b.near + b.far).within(made.frame).inside),
        sealed=frozenset(pair for pair in before.sealed if names.issuperset(pair)),
    )


def _raw(text: Text) -> RawText:
    return RawText(Tag("", text.handle, text.layer), text.text, text.at, text.height, text.angle)
