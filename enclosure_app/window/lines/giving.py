"""Says what picked lines are made of: pieces change their product, linework becomes pieces."""

from collections.abc import Collection, Sequence
from dataclasses import replace

from enclosure_app.files.framing.chains import Drawn, pieces_from
from enclosure_app.files.framing.drawn_lines import drawn_of, paths_of
from enclosure_app.files.framing.frames import Frame
from enclosure_app.files.framing.reframing import grown
from enclosure_app.files.framing.sections import clipped_to
from enclosure_app.model.edits import index_of, replace_section, set_product
from enclosure_app.model.naming import named_apart
from enclosure_app.model.project import Project
from enclosure_app.model.section import Piece, Section, Stroke


def given_product(
    project: Project,
    which: int,
    picked: tuple[Collection[str], Collection[str]],
    product: str,
) -> Project:
    """Return the project with picked pieces and lines made of a product.

    Lines that meet end to end become one piece, on whatever layers they are; a closed outline
    becomes a board or a closed sheet, a patch an area with its holes. What a frame cuts is made
    of the whole line, and cut there.

    Args:
        project: The project.
        which: The section.
        picked: Names of pieces, and handles of lines of the office's linework.
        product: The product's key.

    Raises:
        EnclosureError: there is no such piece, or no such product in the section.
    """
    names, handles = picked
    if names:
        project = set_product(project, which, names, product)
    section = project.sections[index_of(project, which)]
    shown = {stroke.handle for stroke in section.strokes if stroke.handle in handles}
    if not shown:
        return project
    return replace_section(project, which, _with_pieces(section, shown, product))


def _with_pieces(section: Section, handles: Collection[str], product: str) -> Section:
    chosen = [stroke for stroke in drawn_of(section) if stroke.handle in handles]
    made = _pieces(section, chosen, product)
    used = {handle for piece in made for handle in piece.handles}
    there = {stroke.handle for stroke in section.taken}
    changed = replace(
        section,
        pieces=(*section.pieces, *made),
        strokes=tuple(s for s in section.strokes if s.handle not in used),
        taken=(*section.taken, *(s for s in chosen if s.handle in used - there)),
    )
    return changed if section.frame_drawn else grown(changed)


def _pieces(section: Section, chosen: Sequence[Stroke], product: str) -> tuple[Piece, ...]:
    """Return what chosen lines come to; each piece is of the layer of the line it is named after."""
    layers = {stroke.handle: stroke.layer for stroke in chosen}
    together = [replace(stroke, layer="") for stroke in chosen]
    drawn = [Drawn(path, product) for path in paths_of(together)]
    made: Sequence[Piece] = pieces_from(drawn, section.products)[0]
    if section.frame_drawn:
        made = clipped_to(Frame(section.frame), made)
    named = named_apart(made, section.by_name, "{name}-{number}")
    return tuple(replace(piece, layer=layers[piece.handles[0]]) for piece in named)
