"""Each layout of a piece of cloth is drawn once, to scale, its lettering legible and inside its edges."""

from __future__ import annotations

from functools import cache

import pytest

from quarterturn.design import Paper
from quarterturn.geometry import Region, region_bounds
from quarterturn.proof import Pattern
from quarterturn.publish import Sheet
from quarterturn.publish.booklet import assemble
from quarterturn.publish.booklet.model import CutList
from quarterturn.publish.figures import parcel_figure
from quarterturn.publish.sheet import Area
from tests.proof.checks.sound import SOUND
from tests.publish.figures.test_figures import POINT, ends, lettering
from tests.samples import pattern_of

BRICK = 'colour = "#9c4a35"'
WAYS = [
    'bought_as = "fat quarter"',
    'bought_as = { name = "2 1/2 inch strip", height = \'2 3/4"\' }',
    "on_hand = [{ width = '9\"', height = '17\"', count = 2 }]\nbought_as = \"fat eighth\"",
    "bought_as = { width = '60\"', height = '8\"' }",
    "on_hand = [{ width = '21\"', height = '9\"', count = 2 }]",
]


@cache
def brick(words: str, units: str) -> Pattern:
    text = SOUND.replace(BRICK, f"{BRICK}\n{words}").replace('units = "inch"', f'units = "{units}"')
    return pattern_of(text)


def cut_list(pattern: Pattern) -> CutList:
    blocks = assemble(pattern, Paper.LETTER).blocks
    return next(
        block for block in blocks if isinstance(block, CutList) and block.title.startswith("Fabric C")
    )


@pytest.mark.parametrize("units", ["inch", "metric"])
@pytest.mark.parametrize("words", WAYS)
def test_all_lettering_is_legible_and_inside(words: str, units: str) -> None:
    for cell in cut_list(brick(words, units)).figure.cells:
        assert cell.sheet.alt.endswith(".")
        for text in lettering(cell.sheet):
            left, right = ends(text)
            assert left >= -0.3, text.text
            assert right <= cell.sheet.width + 0.3, text.text
            assert 0 <= text.at.imag <= cell.sheet.height, text.text
            assert text.size >= 5 * POINT, text.text


def test_each_layout_is_drawn_once_with_its_count() -> None:
    pattern = brick(WAYS[0], "inch")
    plan = pattern.materials.plan("C")
    assert plan.parcels
    said = [cell.text for cell in cut_list(pattern).figure.cells]
    assert len(said) == len(plan.parcels.layouts) == len(set(plan.parcels.layouts))
    for layout, words in zip(plan.parcels.layouts, said, strict=True):
        assert f"cut ({layout.count}) fat quarter" in words


def pieces_of(sheet: Sheet, colour: str) -> list[Region]:
    return [mark.region for mark in sheet.marks if isinstance(mark, Area) and mark.ink.fill == colour]


def test_pieces_are_drawn_to_scale_and_share_no_cloth() -> None:
    pattern = brick(WAYS[0], "inch")
    plan = pattern.materials.plan("C")
    assert plan.parcels
    for layout in plan.parcels.layouts:
        sheet = parcel_figure(pattern, plan, layout, 100)
        boxes = [region_bounds(region) for region in pieces_of(sheet, "#9c4a35")]
        drawn = sum(box.width * box.height for box in boxes)
        cut = sum(
            float(each.along * each.across) * each.count * group.strips
            for group in layout.strips
            for each in group.crosscuts
        ) + sum(float(g.height * layout.length) * g.strips for g in layout.strips if not g.crosscuts)
        across = max(box.right for box in boxes) - min(box.left for box in boxes)
        widest = max(float(g.used or layout.length) for g in layout.strips)
        assert drawn == pytest.approx(cut * (across / widest) ** 2)
        for n, one in enumerate(boxes):
            for other in boxes[:n]:
                wide = min(one.right, other.right) - max(one.left, other.left)
                high = min(one.bottom, other.bottom) - max(one.top, other.top)
                assert min(wide, high) < 1e-6


def test_the_booklet_puts_layouts_of_one_fabric_side_by_side() -> None:
    blocks = cut_list(brick(WAYS[0], "metric"))
    assert blocks.below
    assert blocks.figure.columns == len(blocks.figure.cells) == 2
