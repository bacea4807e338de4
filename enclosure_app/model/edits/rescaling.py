"""Corrects the units that a drawing was read in: everything becomes larger or smaller by one factor."""

from dataclasses import replace

from enclosure_app.geometry.similarity import Similarity
from enclosure_app.model.drawing import Units
from enclosure_app.model.place import Area, Shape
from enclosure_app.model.project import Project
from enclosure_app.model.section import Break, Piece, Section, Stroke, Text
from enclosure_app.model.underlay import Underlay


def correct_units(project: Project, units: Units) -> Project:
    """Return the project as it would be, had its drawing been read in these units.

    Everything keeps its numbers and its place beside everything else: what was drawn on the
    drawing meanwhile, marks and underlays grow or shrink with it.
    """
    factor = units.in_mm / project.units.in_mm
    if factor == 1.0:
        return replace(project, units=units)
    similar = Similarity(complex(factor))
    return replace(
        project,
        units=units,
        sections=tuple(_section(section, similar) for section in project.sections),
        underlays=tuple(_underlay(underlay, similar) for underlay in project.underlays),
    )


def _section(section: Section, similar: Similarity) -> Section:
    return replace(
        section,
        frame=similar.places(section.frame),
        pieces=tuple(_piece(piece, similar) for piece in section.pieces),
        inside=similar.places(section.inside),
        outside=similar.places(section.outside),
        breaks=tuple(_break(each, similar) for each in section.breaks),
        strokes=tuple(_stroke(stroke, similar) for stroke in section.strokes),
        taken=tuple(_stroke(stroke, similar) for stroke in section.taken),
        texts=tuple(_text(text, similar) for text in section.texts),
    )


def _piece(piece: Piece, similar: Similarity) -> Piece:
    return replace(piece, shape=_shape(piece.shape, similar))


def _shape(shape: Shape, similar: Similarity) -> Shape:
    if isinstance(shape, Area):
        return Area(similar.places(shape.outer), tuple(map(similar.places, shape.holes)))
    points, width = similar.places(shape.points), shape.width * similar.factor
    return replace(shape, points=points, width=width)


def _stroke(stroke: Stroke, similar: Similarity) -> Stroke:
    points, width = similar.places(stroke.points), stroke.width * similar.factor
    return replace(stroke, points=points, width=width)


def _text(text: Text, similar: Similarity) -> Text:
    return replace(text, at=similar.place(text.at), height=text.height * similar.factor)


def _break(cut: Break, similar: Similarity) -> Break:
    near, far = similar.places(cut.near), similar.places(cut.far)
    return Break((near[0], near[1]), (far[0], far[1]))


def _underlay(underlay: Underlay, similar: Similarity) -> Underlay:
    return replace(
        underlay,
        at=similar.place(underlay.at),
        mm_per_pixel=underlay.mm_per_pixel * similar.factor,
    )
