"""Where ground is folded, drawn on and marked, and in which order shapes are fused."""

from __future__ import annotations

import cmath
import math

import pytest

from quarterturn.blocks import Master, draft_blocks
from quarterturn.geometry import StraightLine, path_bounds
from quarterturn.steps.ground import clear_of, crease_of, kinds_of, place_of, starts_on
from tests.recipe_samples import BANDS, GIZZARDS, HALVES, PONDS, RIPPLES, WHOLE
from tests.samples import ROUNDS, Changed, design_of

DOWN, ACROSS = StraightLine(0j, 1j), StraightLine(0j, -1 + 0j)


def master_of(text: str) -> Master:
    """Return the first master of a design."""
    return draft_blocks(design_of(text)).masters[0]


def angles(lines: tuple[StraightLine, ...]) -> list[float]:
    """Return the slants of lines in degrees."""
    return [round(math.degrees(cmath.phase(line.direction)) % 180, 6) for line in lines]


def test_a_master_cut_both_ways_is_folded_where_it_is_cut() -> None:
    crease = crease_of(master_of(ROUNDS))
    assert crease.folds == (DOWN, ACROSS)
    assert crease.drawn == crease.middles == ()


@pytest.mark.parametrize("text", [HALVES, WHOLE])
def test_ground_is_folded_both_ways_for_its_middle_however_it_is_cut(text: str) -> None:
    assert set(angles(crease_of(master_of(text)).folds)) == {0.0, 90.0}


def test_the_diagonal_of_a_square_is_a_fold() -> None:
    crease = crease_of(master_of(GIZZARDS))
    assert angles(crease.folds) == [45.0, 90.0, 0.0]
    assert crease.drawn == ()


def test_the_diagonal_of_a_rectangle_is_drawn_since_no_fold_makes_it() -> None:
    """Folded corner to corner a rectangle's edges do not meet: the crease runs square to the diagonal."""
    text = (
        Changed(HALVES).with_('cuts = "down"', 'cuts = "one diagonal"').with_("a-lh0 a-rh0 a-lh0", "a0").text
    )
    crease = crease_of(draft_blocks(design_of(text)).masters[0])
    assert angles(crease.folds) == [90.0, 0.0]
    assert len(crease.drawn) == 1


def test_cuts_beside_the_middle_are_drawn() -> None:
    crease = crease_of(master_of(BANDS))
    assert [line.side(0j) for line in crease.drawn] == [-2.25, 2.25]


def test_middles_beside_that_of_the_ground_are_marked() -> None:
    assert crease_of(master_of(HALVES)).middles == (pytest.approx(0.25j),)


def test_a_shape_is_laid_from_its_template_to_its_place() -> None:
    master = master_of(GIZZARDS)
    template = master.templates[0][0]
    middle = path_bounds(template.traced).centre
    for number, shape in enumerate(master.shapes):
        motion = place_of(master, number).motion
        assert motion(0j) == pytest.approx(path_bounds(shape.traced).centre)
        corner = template.traced.segments[0].start - middle
        assert min(abs(motion(corner) - p) for p in shape.traced.corners()) < 1e-9


def test_shapes_beside_one_another_are_fused_together_and_shapes_on_them_later() -> None:
    kinds = [(kind.level, kind.part, kind.numbers) for kind in kinds_of(master_of(WHOLE))]
    assert kinds == [(0, "leaf", (0, 1)), (1, "bloom", (2,))]


def test_a_shape_on_a_shape_waits_until_that_is_stitched() -> None:
    assert [kind.level for kind in kinds_of(master_of(RIPPLES))] == [0, 1]


def test_a_shape_within_the_hole_of_a_ring_does_not_lie_on_it() -> None:
    text = (
        Changed(PONDS)
        .with_("width = '4\"'\nat = ['-1\"', '-1\"']", "width = '1\"'\nat = ['1\"', '1/2\"']")
        .text
    )
    assert [kind.level for kind in kinds_of(master_of(text))] == [0, 0]


def test_each_edge_has_a_start_of_its_own() -> None:
    ring, heart = master_of(PONDS).shapes
    cuts = master_of(PONDS).cuts
    assert (len(starts_on(ring, cuts)), len(starts_on(heart, cuts))) == (2, 1)
    for start in (*starts_on(ring, cuts), *starts_on(heart, cuts)):
        assert min(abs(cut.side(start)) for cut in cuts) > 0.25


def test_a_disc_cut_once_is_started_farthest_from_the_cut() -> None:
    (disc,) = master_of(HALVES).shapes
    start = clear_of(disc.traced, [DOWN])
    assert abs(start.real) == pytest.approx(1.5)
