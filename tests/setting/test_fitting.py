"""Which quilts grow by repeats of their map, how, and by what the others come nearer to a size."""

from __future__ import annotations

from dataclasses import replace

import pytest

from quarterturn.blocks import draft_blocks
from quarterturn.design import Border, Coping, Design, Growth, PiecedBorder
from quarterturn.measure import Length, inches
from quarterturn.setting import (
    arrange,
    fit_to,
    frames_of,
    growth,
    outermost_of,
    repeats_of,
    why_once,
    with_repeats,
)
from tests.samples import ROUNDS, design_of
from tests.section_texts import MITRED, NESTED, ON_POINT, PANELS, PIECED, SASHED

SASHED_ROWS = ROUNDS.replace(
    'kind = "straight"', 'kind = "straight"\nsashing = { fabric = "C", width = \'1/2"\', outer = true }'
)
COPED = f"""{ROUNDS}
[[borders]]
kind = "coping"
fabric = "A"
to = ['16"', '12"']

[[borders]]
fabric = "C"
width = '1"'
"""
FREE = {"plain": ROUNDS, "mitred": MITRED, "sashed": SASHED_ROWS, "of panels": PANELS}
BOUND = {
    "on point": (ON_POINT, "A setting on point has no repeats."),
    "sashed on point": (SASHED, "A setting on point has no repeats."),
    "columns": (NESTED, "A setting of columns has no repeats."),
    "pieced": (PIECED, "The pieced border is as long as these repeats of the map and no others."),
    "coped": (COPED, "The coping brings the quilt to one size, however often the map is laid."),
}


def size_of(design: Design) -> tuple[Length, Length]:
    setting = arrange(design, draft_blocks(design))
    return setting.width, setting.height


@pytest.mark.parametrize("text", FREE.values(), ids=FREE)
def test_rows_and_columns_in_plain_borders_grow_as_they_are_laid(text: str) -> None:
    design = design_of(text)
    assert why_once(design) == ""
    across, down = growth(design, draft_blocks(design))
    for copies in (1, 3, 4):
        assert size_of(with_repeats(design, copies, 2)) == (across.at(copies), down.at(2))
    assert repeats_of(with_repeats(design, 3, 2)) == (3, 2)


@pytest.mark.parametrize(("text", "why"), BOUND.values(), ids=BOUND)
def test_every_other_quilt_keeps_its_size_and_says_why(text: str, why: str) -> None:
    design = design_of(text)
    assert why_once(design) == why
    assert repeats_of(design) is None
    width, height = size_of(design)
    assert growth(design, draft_blocks(design)) == (Growth(width, Length(0)), Growth(height, Length(0)))


def test_a_quilt_that_keeps_its_size_comes_nearer_by_its_border() -> None:
    design = design_of(ON_POINT)
    blocks = draft_blocks(design)
    width, height = size_of(design)
    fit = fit_to(design, blocks, (inches(12), inches(14)))
    assert fit.border == inches(3, 1, 4)
    wider = replace(design, borders=(Border("C", fit.border),))
    assert size_of(wider) == (fit.width, fit.height) == (width + inches(3, 1, 2), height + inches(3, 1, 2))
    assert fit_to(design, blocks, (inches(50), inches(50))).border == inches(12)


def test_only_a_plain_border_can_have_another_width() -> None:
    assert [outermost_of(design_of(text)) for text in (ON_POINT, SASHED, PIECED, COPED)] == [
        inches(1, 1, 2),
        None,
        None,
        1,
    ]


def test_each_border_has_its_frame_but_a_coping_that_has_nothing_to_bring() -> None:
    idle = COPED.replace("['16\"', '12\"']", "['13\"', '9\"']")
    for text, kinds in ((COPED, (True, True, True)), (idle, (True, False, True))):
        design = design_of(text)
        frames = frames_of(arrange(design, draft_blocks(design)).top, design.borders)
        assert tuple(frame is not None for frame in frames) == kinds
        last = frames[-1]
        assert last is not None
        assert last.side_depth == 1
    pieced = design_of(PIECED)
    (frame,) = frames_of(arrange(pieced, draft_blocks(pieced)).top, pieced.borders)
    assert isinstance(pieced.borders[0], PiecedBorder)
    assert frame is not None
    assert (frame.side_depth, frame.end_depth) == (2, 2)
    assert [isinstance(border, Coping) for border in design_of(COPED).borders] == [False, True, False]
