"""The walk through a design comes upon the same cloth in the same places as the setting lays it."""

from __future__ import annotations

import cmath
import math
from collections.abc import Iterator

import pytest
from hypothesis import HealthCheck, given, settings

from quarterturn.blocks import draft_blocks
from quarterturn.design import Design
from quarterturn.geometry import region_bounds
from quarterturn.proof.checks.laying import BORDER, CORNER_TRIANGLE, SIDE_TRIANGLE, UNIT, Leaf
from quarterturn.proof.checks.sizing import Sizes, same
from quarterturn.proof.checks.walking import leaves_of
from quarterturn.setting import Setting, arrange
from tests.proof.checks.sound import Spoil
from tests.samples import design_of
from tests.section_texts import TEXTS
from tests.trees import tops, turned_whole

FIRES: dict[str, Spoil] = {}
"""No check is told by this module."""

TRIANGLES = (SIDE_TRIANGLE, CORNER_TRIANGLE)


def told(leaf: Leaf) -> tuple[str, str, float, float, int]:
    """Return what a leaf is, where its middle lies, and how a unit is turned."""
    turn = leaf.eighths if leaf.what == UNIT else 0
    return leaf.what, leaf.name, round(leaf.middle.real, 5) + 0.0, round(leaf.middle.imag, 5) + 0.0, turn


def placed(setting: Setting, design: Design) -> Iterator[tuple[str, str, float, float, int]]:
    """Return the same of everything that the setting lays, motifs and triangles aside."""
    blocks = draft_blocks(design)
    for unit in setting.units:
        half = float(blocks.unit(design, unit.name).side) / 2
        middle = unit.motion(complex(half, half))
        turn = round(cmath.phase(unit.motion.factor) / (math.pi / 4)) % 8
        yield UNIT, unit.name, round(middle.real, 5) + 0.0, round(middle.imag, 5) + 0.0, turn
    for cloth in setting.cloths:
        if cloth.what not in (*TRIANGLES, "motif"):
            box = region_bounds(cloth.region)
            middle = complex(box.left + box.right, box.top + box.bottom) / 2
            yield cloth.what, cloth.fabric, round(middle.real, 5) + 0.0, round(middle.imag, 5) + 0.0, 0


def agree(design: Design) -> None:
    setting = arrange(design, draft_blocks(design))
    leaves = [leaf for leaf in leaves_of(design) if leaf.area > 0]
    width, height = Sizes(design).quilt()
    assert same(width, setting.width)
    assert same(height, setting.height)
    # The ends of mitred strips are cut off, so that the box round one has another middle.
    apart = (*TRIANGLES, BORDER) if any(leaf.mitred for leaf in leaves) else TRIANGLES
    laid = [each for each in placed(setting, design) if each[0] not in apart]
    assert sorted(told(leaf) for leaf in leaves if leaf.what not in apart) == sorted(laid)
    for what in TRIANGLES:
        wanted = sum(leaf.what == what for leaf in leaves)
        assert wanted == sum(cloth.what == what for cloth in setting.cloths)


@pytest.mark.parametrize("name", TEXTS)
def test_the_walk_agrees_with_the_setting(name: str) -> None:
    agree(design_of(TEXTS[name]))


@settings(max_examples=35, suppress_health_check=list(HealthCheck))
@given(tops())
def test_the_walk_agrees_with_the_setting_whatever_holds_whatever(design: Design) -> None:
    agree(design)
    agree(turned_whole(design))


def test_the_leaves_cover_the_top_once() -> None:
    design = design_of(TEXTS["sashed on point"])
    width, height = Sizes(design).quilt()
    assert sum(leaf.area for leaf in leaves_of(design)) == pytest.approx(float(width * height))


def test_squares_on_point_have_their_triangles_by_the_rule() -> None:
    """Of m × n squares, 2(m + n − 2) side triangles and four corners (four by five: 14, a published pattern)."""
    text = (
        TEXTS["on point"]
        .replace("a0 b1\nb3 a2\na1 b0\n", "a0 b1 a0 b1 a0\n" * 4)
        .replace("A\nb2\n", "A A b2 A\n" * 3)
    )
    leaves = leaves_of(design_of(text))
    assert sum(leaf.what == SIDE_TRIANGLE for leaf in leaves) == 14
    assert sum(leaf.what == CORNER_TRIANGLE for leaf in leaves) == 4
