"""How the drawing looks by day and by night."""

from enclosure_app.drawing.marks import Stroke
from enclosure_app.drawing.section.flags import Site, flag_at
from enclosure_app.drawing.theme import Pen
from enclosure_app.model.finding import Severity
from enclosure_app.model.product import Control
from enclosure_app.model.said.decision import State
from enclosure_app.window.canvas.ink.look import Look, legible, screen_theme


def light(colour: str) -> float:
    return sum(int(colour[i : i + 2], 16) for i in (1, 3, 5)) / 765


def test_the_paper_is_light_by_day_and_dark_by_night() -> None:
    assert light(Look().theme.paper) > 0.9
    assert light(Look(dark=True).theme.paper) < 0.25
    assert Look().theme is screen_theme(dark=False)


def test_controls_keep_their_patterns_by_night_and_stand_out_from_the_ground() -> None:
    day, night = Look().theme, Look(dark=True).theme
    for control in Control:
        assert day.control(control).dash == night.control(control).dash
        assert abs(light(night.control(control).colour) - light(night.paper)) > 0.25


def test_a_flag_is_dark_on_light_by_night_too_with_its_badge() -> None:
    theme = screen_theme(dark=True)
    flag = flag_at(Site(3, (0, 0), Severity.FAULT, state=State.MENDED), (0, 0), theme)
    seen = legible(flag, dark=True)
    assert light(seen.ground) > 0.8
    assert light(seen.label.colour) < 0.2
    assert light(seen.edge.colour) < 0.2
    assert seen.state is State.MENDED
    assert legible(flag, dark=False) is flag


def test_other_marks_stay_as_they_are() -> None:
    line = Stroke(((0, 0), (1, 1)), Pen("#123456", 0.5))
    assert legible(line, dark=True) is line
