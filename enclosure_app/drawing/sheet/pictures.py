"""Pictures that lie under a section, as marks of its sheet."""

from collections.abc import Iterator, Sequence

from enclosure_app.drawing.marks import Overlay, Picture
from enclosure_app.drawing.placement import Placement, box_around
from enclosure_app.drawing.theme import Theme
from enclosure_app.model.section import Section
from enclosure_app.model.underlay import Underlay


def picture_marks(
    underlays: Sequence[Underlay], section: Section, placement: Placement, theme: Theme
) -> Iterator[Picture]:
    """Yield what lies under a section and is shown, cut off at its frame, the lowest first."""
    if len(section.frame) < 3:
        return
    frame = box_around(section.frame)
    for underlay in underlays:
        if not underlay.shown or underlay.section not in (section.name, ""):
            continue
        there = box_around(underlay.outline)
        apart = (
            there.left >= frame.right
            or there.right <= frame.left
            or there.bottom >= frame.top
            or there.top <= frame.bottom
        )
        if not apart:
            yield Picture(
                underlay,
                placement.point(underlay.at),
                placement.length(underlay.mm_per_pixel),
                theme.underlay * underlay.strength,
                placement.points(section.frame),
                underlay.name,
                (Overlay.LINEWORK,),
            )
