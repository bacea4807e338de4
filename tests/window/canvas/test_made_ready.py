"""What is made of the office's lines is made once."""

from dataclasses import replace

from enclosure_app.model.drawing import Units
from enclosure_app.model.project import Project
from enclosure_app.model.section import Section, Stroke
from enclosure_app.window.canvas.made_ready import Strokes, made_of, make_ready

FRAME = ((0.0, 0.0), (9.0, 0.0), (9.0, 9.0), (0.0, 9.0))


def section(x: float) -> Section:
    return Section("one", FRAME, (), {}, strokes=(Stroke(((x, 0.0), (x, 5.0))),))


class Counted:
    """Counts how often something is made."""

    def __init__(self) -> None:
        self.times = 0

    def __call__(self, strokes: Strokes) -> float:
        self.times += 1
        return strokes[0].points[0][0]


def test_the_same_lines_are_worked_on_once_and_others_anew() -> None:
    make, one = Counted(), section(1.0)
    renamed = replace(one, name="another name")
    assert made_of(one.strokes, make) == made_of(renamed.strokes, make) == 1.0
    assert make.times == 1
    assert made_of(section(2.0).strokes, make) == 2.0


def test_a_project_is_made_ready_and_the_one_before_is_forgotten() -> None:
    make, old = Counted(), section(1.0)
    new = [section(2.0), section(3.0)]
    made_of(old.strokes, make)
    make_ready(Project("p", Units.MM, tuple(new)), make)
    assert make.times == 3
    assert [made_of(each.strokes, make) for each in new] == [2.0, 3.0]
    assert make.times == 3
    made_of(old.strokes, make)
    assert make.times == 4
