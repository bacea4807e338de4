"""A designer's whole job: open, delete and redraw a piece, see the gap go, save, reopen, issue."""

from collections.abc import Callable
from itertools import pairwise
from math import atan2, degrees
from pathlib import Path

from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from enclosure_app.model.place import Line, Points
from enclosure_app.model.product import Control
from enclosure_app.model.report import Verdict
from enclosure_app.window.main_window import MainWindow

Opened = Callable[..., MainWindow]


def verdict(window: MainWindow, qtbot: QtBot) -> Verdict:
    qtbot.waitUntil(lambda: window.checking.current, timeout=5000)
    return window.checking.results[0].layers[Control.WATER].verdict


def redraw(window: MainWindow, hand, run: Points) -> None:  # noqa: ANN001
    """Draw a run anew with typed lengths and angles."""
    window.lines.search.setText("roof underlayment fastened")
    window.lines.choose("underlayment")
    window.do("tool_sheet")
    window.canvas.catching = False
    hand.click(run[0])
    for a, b in pairwise(run):
        dx, dy = b[0] - a[0], b[1] - a[1]
        length = (dx * dx + dy * dy) ** 0.5
        hand.keys(f"{length:.3f} at {degrees(atan2(dy, dx)):.4f}")
        hand.press(Qt.Key.Key_Return)
    hand.press(Qt.Key.Key_Return)


def test_a_missing_sheet_is_drawn_and_its_gap_goes(
    opened: Opened,
    hand,  # noqa: ANN001
    qtbot: QtBot,
    tmp_path: Path,
) -> None:
    window = opened("eave-flush.dxf")
    assert verdict(window, qtbot) is Verdict.CONTINUOUS
    section = window.document.project.sections[0]
    roof = next(p for p in section.pieces if p.product == "underlayment")
    assert isinstance(roof.shape, Line)
    run = roof.shape.points

    window.place.pick((roof.name,))
    hand.press(Qt.Key.Key_Delete)
    assert verdict(window, qtbot) is Verdict.BROKEN

    redraw(window, hand, run)
    drawn = window.document.project.sections[0].pieces[-1]
    assert drawn.product == "underlayment"
    start = hand.at(run[0])
    for there, wanted in zip(drawn.shape.points, run, strict=True):
        assert abs(there[0] - start[0] - (wanted[0] - run[0][0])) < 0.1
        assert abs(there[1] - start[1] - (wanted[1] - run[0][1])) < 0.1
    assert verdict(window, qtbot) is Verdict.CONTINUOUS

    window.do("undo")
    assert verdict(window, qtbot) is Verdict.BROKEN
    window.do("redo")
    assert verdict(window, qtbot) is Verdict.CONTINUOUS

    keep_and_issue(window, qtbot, tmp_path)


def keep_and_issue(window: MainWindow, qtbot: QtBot, tmp_path: Path) -> None:
    """Save, open again, and write the sheet."""
    kept = tmp_path / "eave.enclosure.json"
    window.document.path = kept
    window.filing.save()
    window.filing.open(kept)
    assert verdict(window, qtbot) is Verdict.CONTINUOUS
    window.commands.files.write_pdf_to(tmp_path / "eave.pdf")
    assert (tmp_path / "eave.pdf").read_bytes().startswith(b"%PDF")
