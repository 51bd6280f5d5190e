"""The text form of blocks of any shapes and cuts."""

from __future__ import annotations

from quarterturn.blocks import blocks_text, draft_blocks
from tests.recipe_samples import GIZZARDS, HALVES, PONDS
from tests.samples import design_of


def lines_of(text: str) -> list[str]:
    design = design_of(text)
    return [" ".join(line.split()) for line in blocks_text(draft_blocks(design), design.units).splitlines()]


def test_a_rectangle_says_both_its_sides_and_each_half_its_size() -> None:
    lines = lines_of(HALVES)
    assert 'master 9.5" × 5"; 0.5" trimmed off; 0.25" seam' in lines
    assert "cuts vertical through (0, 0)" in lines
    assert [line for line in lines if line.startswith("unit")] == [
        'unit lh: 1 from each master, 4" finished, 4½" cut',
        'unit rh: 1 from each master, 4" finished, 4½" cut',
    ]


def test_every_shape_is_told_with_its_own_name() -> None:
    shapes = [line for line in lines_of(PONDS) if line.startswith("shape")]
    assert [shape.split(",")[0] for shape in shapes] == ["shape pond ring", "shape pond lily"]


def test_rejoined_halves_say_whose_they_are() -> None:
    lines = lines_of(GIZZARDS)
    assert "halves of two masters of pair, rejoined at 45° through (0, 0)" in lines
    assert 'unit 1: 2 from every two masters, 7⅞" finished, 8⅜" cut' in lines
