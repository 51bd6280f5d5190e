"""Maps that are laid once are stretched by the lines in them that repeat; what is round them stays."""

from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from quarterturn.blocks import draft_blocks
from quarterturn.design import Border, StraightSet, rounds_map
from quarterturn.measure import inches
from quarterturn.setting import arrange, stretched_to
from quarterturn.setting.stretching import Stretch, stretch_of
from tests.samples import ROUNDS, design_of

RING = ROUNDS.replace(ROUNDS.split("'''")[1], "\n" + rounds_map(6, 6))


def test_a_ring_stays_and_what_is_inside_repeats() -> None:
    assert stretch_of("xababy") == Stretch(1, 2, 2)
    assert "".join(Stretch(1, 2, 2).of("xababy", 4)) == "xababababy"
    assert "".join(Stretch(1, 2, 2).of("xababy", 1)) == "xaby"
    assert stretch_of("abcd") is None


@given(
    st.text("ab", max_size=3),
    st.text("abc", min_size=1, max_size=4),
    st.integers(2, 6),
    st.text("ab", max_size=3),
)
def test_stretching_by_nothing_is_the_identity(head: str, group: str, times: int, tail: str) -> None:
    lines = head + group * times + tail
    found = stretch_of(lines)
    assert found is not None
    assert "".join(found.of(lines, found.times)) == lines
    assert found.times * found.period >= 2


@pytest.mark.parametrize("wanted", [(40, 60), (92, 104), (30, 30)])
def test_a_stretched_map_is_as_large_as_was_said_and_no_group_larger(wanted: tuple[int, int]) -> None:
    design = design_of(RING)
    blocks = draft_blocks(design)
    found = stretched_to(design, blocks, (inches(wanted[0]), inches(wanted[1])))
    assert found is not None
    assert isinstance(design.setting, StraightSet)
    grown = replace(design, setting=replace(design.setting, cells=found.cells))
    if found.fit.border is not None:
        (last,) = grown.borders
        assert isinstance(last, Border)
        grown = replace(grown, borders=(replace(last, width=found.fit.border),))
    top = arrange(grown, draft_blocks(grown)).top
    assert (top.width, top.height) == (found.fit.width, found.fit.height)
    assert inches(wanted[0]) <= top.width < inches(wanted[0]) + 4 * design.recipes[0].finished
    corners = [(row[0], row[-1]) for row in (found.cells[0], found.cells[-1])]
    assert corners == [(row[0], row[-1]) for row in (design.setting.cells[0], design.setting.cells[-1])]


def test_a_map_that_is_laid_more_than_once_is_not_stretched() -> None:
    design = design_of(RING.replace("[setting]", "[setting]\nacross = 2", 1))
    assert stretched_to(design, draft_blocks(design), (inches(60), inches(60))) is None
