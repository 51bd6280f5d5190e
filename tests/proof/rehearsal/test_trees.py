"""The rehearsal of tops on point and of whatever sections hold one another."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

import pytest
from hypothesis import HealthCheck, assume, given
from hypothesis import settings as hypothesis_settings

from quarterturn.blocks import draft_blocks
from quarterturn.design import Design
from quarterturn.materials import plan_materials
from quarterturn.measure import inches
from quarterturn.pieces import bill_of_pieces
from quarterturn.pipeline import make_pattern
from quarterturn.proof import Pattern, prove
from quarterturn.setting import OnPoint, Setting, arrange
from quarterturn.steps import build_steps
from tests.samples import design_of
from tests.section_texts import plain_on_point, quilt
from tests.trees import tops


@hypothesis_settings(max_examples=35, suppress_health_check=list(HealthCheck))
@given(tops())
def test_steps_of_any_tree_make_its_picture(design: Design) -> None:
    pattern = make_pattern(design)
    assume(not any(plan.unplaced for plan in pattern.materials.cloth))
    proof = prove(pattern)
    assert proof.findings == ()
    assert proof.share < 1e-6


def on_point(rows: int, columns: int, sashed: bool) -> str:
    """Return units of all turns on point, without two alike beside one another."""
    cells = "\n".join(
        " ".join(f"{'ab'[(r + c) % 2]}{(3 * r + c) % 4}" for c in range(columns)) for r in range(rows)
    )
    sashing = 'sashing = { fabric = "C", width = \'1/2"\', cornerstone = "A" }' if sashed else ""
    between = 'between = "b1"' if min(rows, columns) > 1 else ""
    return quilt(f"""
[setting]
kind = "on point"
map = '''
{cells}
'''
{between}
triangles = "C"
corners = "B"
{sashing}
""")


@pytest.mark.parametrize("sashed", [False, True])
@pytest.mark.parametrize(
    ("rows", "columns"), [(1, 1), (1, 4), (4, 1), (2, 2), (2, 5), (5, 2), (3, 4), (6, 3)]
)
def test_units_on_point_are_sewn_as_drawn(rows: int, columns: int, sashed: bool) -> None:
    proof = prove(make_pattern(design_of(on_point(rows, columns, sashed))))
    assert proof.findings == ()
    assert proof.share < 1e-6


def test_published_sashed_quilt_is_sewn_to_its_size() -> None:
    """32 squares of 10" in four by five with 1" sashing finish 63 5/8" × 79 1/4" (Quilter's World, May 2019, p. 60)."""
    sashing = 'sashing = { fabric = "C", width = \'1"\', cornerstone = "A" }'
    proof = prove(make_pattern(design_of(plain_on_point(5, 4, '10"', sashing))))
    assert proof.findings == ()
    assert proof.rehearsal.width == pytest.approx(63.64, abs=0.005)
    assert proof.rehearsal.height == pytest.approx(79.196, abs=0.005)


def with_squares(text: str, side: Fraction | None = None, corner: Fraction | None = None) -> Pattern:
    """Return the pattern of a text, its setting triangles cut from squares of another size throughout."""
    design = design_of(text)
    blocks = draft_blocks(design)
    setting = arrange(design, blocks)
    assert isinstance(setting.top, OnPoint)
    top = replace(
        setting.top,
        side_square=side or setting.top.side_square,
        corner_square=corner or setting.top.corner_square,
    )
    changed: Setting = replace(setting, top=top)
    bill = bill_of_pieces(design, blocks, changed)
    materials = plan_materials(design, blocks, changed, bill)
    return Pattern(
        design, blocks, changed, bill, materials, build_steps(design, blocks, changed, bill, materials)
    )


WIDE = on_point(3, 2, sashed=False).replace("finished = '2\"'", "finished = '4 1/4\"'", 1)
"""Units of 4 1/4" finished."""


def test_squares_of_seven_and_a_quarter_serve_units_of_four_and_a_quarter() -> None:
    """Common practice; the exact need is 4 1/4 · √2 + 1.2071 = 7.2175 inches."""
    assert prove(with_squares(WIDE, side=inches(7, 1, 4))).findings == ()


def test_side_triangles_an_eighth_smaller_do_not() -> None:
    (finding,) = prove(with_squares(WIDE, side=inches(7, 1, 8))).findings
    assert finding.code == "rehearsal-failed"


def test_corner_triangles_must_reach_the_corner() -> None:
    """4 1/4 / √2 + 0.8536 = 3.8588 inches: 3 7/8 serve, 3 3/4 do not."""
    assert prove(with_squares(WIDE, corner=inches(3, 7, 8))).findings == ()
    (finding,) = prove(with_squares(WIDE, corner=inches(3, 3, 4))).findings
    assert finding.code == "rehearsal-failed"
