"""Texts, dimensions and leaders say what the drawing says."""

from collections.abc import Callable

import ezdxf
import pytest
from ezdxf.document import Drawing
from ezdxf.enums import TextEntityAlignment
from ezdxf.math import Vec2
from ezdxf.render.mleader import ConnectionSide

from enclosure_app.files.dxf.content import Content
from enclosure_app.files.dxf.raw import RawDimension, RawLeader, RawText

Reread = Callable[..., Content]


@pytest.fixture
def drawing() -> Drawing:
    return ezdxf.new("R2010", setup=True)


def text_of(read: Content) -> RawText:
    (item,) = (item for item in read.items if isinstance(item, RawText))
    return item


def dimension_of(read: Content) -> RawDimension:
    (item,) = (item for item in read.items if isinstance(item, RawDimension))
    return item


def test_a_text_keeps_place_height_and_angle(drawing: Drawing, reread: Reread) -> None:
    drawing.modelspace().add_text("%%c12 INSIDE", height=30, rotation=15).set_placement((3, 4))
    text = text_of(reread(drawing))
    assert (text.text, text.at, text.height) == ("Ø12 INSIDE", (3.0, 4.0), 30.0)
    assert text.angle == pytest.approx(15)


def test_an_aligned_text_stands_at_its_alignment_point(drawing: Drawing, reread: Reread) -> None:
    drawing.modelspace().add_text("OUT").set_placement(
        (8, 9), align=TextEntityAlignment.MIDDLE_CENTER
    )
    assert text_of(reread(drawing)).at == (8.0, 9.0)


def test_formatting_codes_are_removed_and_lines_kept(drawing: Drawing, reread: Reread) -> None:
    drawing.modelspace().add_mtext(
        r"{\fArial|b1;\H3x;Sheet} over\PBoard \S1/2;", dxfattribs={"insert": (5, 6), "rotation": 90}
    )  # fmt: skip
    text = text_of(reread(drawing))
    assert text.text == "Sheet over\nBoard 1/2"
    assert (text.at, text.angle) == ((5.0, 6.0), 90.0)


def test_the_direction_of_a_paragraph_goes_before_its_angle(
    drawing: Drawing, reread: Reread
) -> None:
    drawing.modelspace().add_mtext("x", dxfattribs={"text_direction": (0, -1, 0), "rotation": 5})
    assert text_of(reread(drawing)).angle == pytest.approx(270)


def test_texts_in_blocks_are_turned_and_scaled(drawing: Drawing, reread: Reread) -> None:
    drawing.blocks.new("NOTE").add_text("N", height=2, dxfattribs={"insert": (1, 0)})
    drawing.modelspace().add_blockref(
        "NOTE", (10, 0), dxfattribs={"xscale": 3, "yscale": 3, "rotation": 90}
    )
    text = text_of(reread(drawing))
    assert text.at == pytest.approx((10, 3))
    assert (text.height, text.angle) == (pytest.approx(6), pytest.approx(90))


def test_a_text_seen_from_behind_runs_to_the_left(drawing: Drawing, reread: Reread) -> None:
    drawing.modelspace().add_text("T", dxfattribs={"insert": (4, 1), "extrusion": (0, 0, -1)})
    text = text_of(reread(drawing))
    assert text.at == pytest.approx((-4, 1))
    assert text.angle == pytest.approx(180)


def test_blank_texts_are_no_texts(drawing: Drawing, reread: Reread) -> None:
    drawing.modelspace().add_text("  ")
    assert reread(drawing).items == ()


def test_a_paragraph_inside_an_attribute_is_read(drawing: Drawing, reread: Reread) -> None:
    drawing.blocks.new("B")
    attribute = drawing.modelspace().add_blockref("B", (0, 0)).add_attrib("T", "short")
    attribute.set_mtext(drawing.modelspace().add_mtext("long\\Pnote"))
    assert "long\nnote" in [
        item.text for item in reread(drawing).items if isinstance(item, RawText)
    ]


def test_a_dimension_tells_length_text_and_factor(drawing: Drawing, reread: Reread) -> None:
    drawing.modelspace().add_linear_dim(
        (0, 30), (10, 0), (60, 5), override={"dimlfac": 10, "dimdec": 0}
    ).render()
    dimension = dimension_of(reread(drawing))
    assert dimension.measured == pytest.approx(50)
    assert (dimension.factor, dimension.text) == (10.0, "500")
    assert dimension.tag.kind == "DIMENSION"
    assert 10 < dimension.at[0] < 60


def test_an_overridden_dimension_says_what_is_shown(drawing: Drawing, reread: Reread) -> None:
    drawing.modelspace().add_linear_dim((0, 3), (0, 0), (7, 0), text="<> min").render()
    dimension = dimension_of(reread(drawing))
    assert dimension.measured == pytest.approx(7)
    assert dimension.text.endswith(" min")
    assert dimension.text != "<> min"


def test_a_dimension_without_a_picture_is_written_out(drawing: Drawing, reread: Reread) -> None:
    """The number is what is measured, 7, times the factor of the dimension's style."""
    drawing.dimstyles.get("EZDXF").dxf.dimlfac = 2
    drawing.modelspace().add_linear_dim((0, 3), (0, 0), (7, 0), text="c. <>")
    assert dimension_of(reread(drawing)).text == "c. 14"


def test_a_negative_factor_counts_in_paper_space_only(drawing: Drawing, reread: Reread) -> None:
    drawing.modelspace().add_linear_dim((0, 3), (0, 0), (7, 0), override={"dimlfac": -5}).render()
    assert dimension_of(reread(drawing)).factor == 1.0


def test_an_angle_is_no_length(drawing: Drawing, reread: Reread) -> None:
    drawing.modelspace().add_angular_dim_3p((5, 5), (0, 0), (5, 0), (0, 5)).render()
    dimension = dimension_of(reread(drawing))
    assert (dimension.tag.kind, dimension.factor) == ("ANGULAR_DIMENSION", 1.0)
    assert dimension.measured == pytest.approx(90)


def test_an_ordinate_is_measured_along_its_axis(drawing: Drawing, reread: Reread) -> None:
    drawing.modelspace().add_ordinate_y_dim((3, 4), (1, 1)).render()
    dimension = dimension_of(reread(drawing))
    assert dimension.tag.kind == "ORDINATE_DIMENSION"
    assert dimension.measured == pytest.approx(4)


def test_the_picture_of_a_dimension_is_no_linework(drawing: Drawing, reread: Reread) -> None:
    drawing.modelspace().add_linear_dim((0, 3), (0, 0), (7, 0)).render()
    assert [item.tag.kind for item in reread(drawing).items] == ["DIMENSION"]


def test_a_dimension_in_a_scaled_block_measures_what_is_seen(
    drawing: Drawing, reread: Reread
) -> None:
    block = drawing.blocks.new("B")
    block.add_linear_dim((0, 3), (0, 0), (7, 0)).render()
    drawing.modelspace().add_blockref("B", (100, 0), dxfattribs={"xscale": 2, "yscale": 2})
    dimension = dimension_of(reread(drawing))
    assert dimension.measured == pytest.approx(14)
    assert dimension.at[0] == pytest.approx(107)


def test_a_leader_starts_at_its_arrow_and_knows_its_text(drawing: Drawing, reread: Reread) -> None:
    note = drawing.modelspace().add_mtext("Air barrier")
    leader = drawing.modelspace().add_leader([(1, 1), (5, 5), (9, 5)])
    leader.dxf.annotation_handle = note.dxf.handle
    (read,) = (item for item in reread(drawing).items if isinstance(item, RawLeader))
    assert read.points == ((1.0, 1.0), (5.0, 5.0), (9.0, 5.0))
    assert read.text == "Air barrier"


def test_each_arrow_of_a_multileader_is_a_leader(drawing: Drawing, reread: Reread) -> None:
    builder = drawing.modelspace().add_multileader_mtext("Standard")
    builder.set_content("Tape\\Pboth ways")
    builder.add_leader_line(ConnectionSide.left, [Vec2(0, 0)])
    builder.add_leader_line(ConnectionSide.left, [Vec2(-5, 20)])
    builder.build(insert=Vec2(40, 10))
    read = [item for item in reread(drawing).items if isinstance(item, RawLeader)]
    assert [leader.points[0] for leader in read] == [(0.0, 0.0), (-5.0, 20.0)]
    assert read[0].points[-1] == read[1].points[-1]
    assert {leader.text for leader in read} == {"Tape\nboth ways"}


def test_a_multileader_without_arrows_is_a_text(drawing: Drawing, reread: Reread) -> None:
    builder = drawing.modelspace().add_multileader_mtext("Standard")
    builder.set_content("see detail")
    builder.build(insert=Vec2(40, 10))
    assert text_of(reread(drawing)).text == "see detail"
