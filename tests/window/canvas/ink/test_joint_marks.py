"""How joints are shown."""

from types import MappingProxyType

import pytest
from PySide6.QtCore import QPointF
from PySide6.QtGui import QColor, QImage, QPainter

from enclosure_app.files.maps.catalogue import load_products
from enclosure_app.model.place import Line
from enclosure_app.model.product import Control
from enclosure_app.model.report import Continuity, Joint, JointKind, LayerResult, SectionResult
from enclosure_app.model.section import Piece, Section
from enclosure_app.window.canvas.ink.joint_marks import joints_of, paint_joint

LINE = Line(((0.0, 0.0), (9.0, 0.0)))
SECTION = Section("s", (), tuple(Piece(n, "felt", LINE) for n in "ab"), load_products())
JOINTS = (
    Joint("b", "a", JointKind.LAP, (1.0, 1.0), sealed=False),
    Joint("a", "gone", JointKind.LAP, (2.0, 2.0), sealed=False),
)
LAYER = LayerResult(Control.AIR, Continuity.BROKEN, joints=JOINTS)
RESULT = SectionResult(SECTION, MappingProxyType({Control.AIR: LAYER}))


def test_joints_of_pieces_that_are_gone_are_left_out() -> None:
    assert joints_of(RESULT, SECTION) == {("a", "b"): [JOINTS[0]]}
    assert joints_of(None, SECTION) == {}


@pytest.mark.parametrize(
    ("sealed", "said", "marked", "free"),
    [
        (False, False, (26, 20), (20, 20)),  # a ring is open
        (True, False, (20, 20), (26, 20)),  # a dot is small and full
        (True, True, (25, 15), (21, 17)),  # a square has corners
    ],
)
def test_each_state_has_a_shape_of_its_own(
    sealed: bool, said: bool, marked: tuple[int, int], free: tuple[int, int]
) -> None:
    image = QImage(40, 40, QImage.Format.Format_RGB32)
    image.fill(QColor("white"))
    painter = QPainter(image)
    paint_joint(painter, QPointF(20, 20), sealed=sealed, said=said)
    painter.end()
    assert QColor(image.pixel(*marked)) != QColor("white")
    assert QColor(image.pixel(*free)) == QColor("white")
