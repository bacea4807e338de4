"""What a person is asked after a drawing was revised: is this still that finding?"""

from dataclasses import dataclass

from enclosure_app.model.place import Point
from enclosure_app.model.said.carried import Subject


@dataclass(frozen=True, slots=True)
class Question:
    """Which finding the `earlier` one is now, to be asked with both places side by side.

    `about` is its sentence as it was then; it would lie `at` this place (mm) of `section` in the
    drawing of `revision`, None and "" where the section itself was not surely known again. `asked`
    are the keys of the findings that it may be, nearest first. With `on_list` it is an item of the
    site list at which somebody looked.
    """

    earlier: Subject
    about: str = ""
    revision: str = ""
    section: str = ""
    at: Point | None = None
    asked: tuple[str, ...] = ()
    id: str = ""
    on_list: bool = False
