"""The method as the trade practises it: fuse, stitch, cut (common practice, no source, unless one is named)."""

from __future__ import annotations

import itertools
import math
from fractions import Fraction

import pytest

from quarterturn import steps as s
from quarterturn.geometry import path_bounds, region_bounds
from quarterturn.measure import MM
from quarterturn.proof import Pattern
from tests.samples import ROUNDS, pattern_of


@pytest.fixture(scope="module")
def pattern() -> Pattern:
    """The sample quilt."""
    return pattern_of(ROUNDS)


def places(pattern: Pattern, kind: type) -> list[int]:
    """Return the numbers of the steps of a kind."""
    return [step.number for step in pattern.steps.steps if isinstance(step.action, kind)]


def test_the_order_of_the_method(pattern: Pattern) -> None:
    """Trace, ring, fuse to the cloth, cut out, crease, fuse down, stitch, cut apart, cut away, trim, sew."""
    kinds = [s.TraceRings, s.FuseRings, s.CutOut, s.Crease, s.FuseToGround, s.StitchEdge, s.CutApart]
    kinds += [s.LabelStacks, s.LayOut, s.SewLine]
    for before, after in itertools.pairwise(kinds):
        assert max(places(pattern, before)) < min(places(pattern, after))


def test_web_is_left_a_quarter_inch_outside_and_inside_the_line(pattern: Pattern) -> None:
    """Rough-cut about 1/4" outside, hollowed about 1/4" inside ("Spin", free pattern of allpeoplequilt.com)."""
    trace = next(step.action for step in pattern.steps.steps if isinstance(step.action, s.TraceRings))
    drawn = path_bounds(trace.traced).width
    assert region_bounds(trace.ring_out).width == pytest.approx(drawn + 0.5)
    assert region_bounds(trace.ring_in).width == pytest.approx(drawn - 0.5)


def test_lines_are_drawn_half_an_inch_apart(pattern: Pattern) -> None:
    """1/2" between tracings ("Spin", "Sweet Tweet", "Hearts & Flowers", free patterns of allpeoplequilt.com)."""
    trace = next(step.action for step in pattern.steps.steps if isinstance(step.action, s.TraceRings))
    pitch = float(trace.room_width + trace.gap)
    assert pitch - path_bounds(trace.traced).width == pytest.approx(0.5, abs=1e-6)


def test_a_fine_zigzag_is_the_first_setting_to_try(pattern: Pattern) -> None:
    """Check value 14.6: 1.5 mm wide, 1.4 mm long; needle to needle √(1.5² + 1.4²) mm."""
    stitch = next(step.action for step in pattern.steps.steps if isinstance(step.action, s.StitchEdge)).stitch
    assert (stitch.width / MM, stitch.length / MM) == (Fraction(3, 2), Fraction(7, 5))
    assert math.hypot(stitch.width / MM, stitch.length / MM) == pytest.approx(2.0518, abs=1e-4)


def test_creases_cross_in_the_middle_and_are_where_the_cuts_go(pattern: Pattern) -> None:
    """Check value 14.7: creased in quarters, crease on crease."""
    for step in pattern.steps.steps:
        if isinstance(step.action, s.Crease):
            assert [line.side(0j) for line in step.action.folds] == [0.0, 0.0]
            ways = [line.direction for line in step.action.folds]
            assert (ways[0] * ways[1].conjugate()).real == 0


def test_stitching_starts_on_the_edge_between_the_cuts(pattern: Pattern) -> None:
    """Check value 14.7 lets it start at a quarter mark; a start on a cut would be cut through, so it lies between."""
    for step in pattern.steps.steps:
        if isinstance(step.action, s.StitchEdge):
            radius = step.action.edge / math.tau
            (start,) = step.action.starts
            assert abs(start) == pytest.approx(radius)
            assert abs(start.real) == pytest.approx(abs(start.imag))


def test_the_ground_is_cut_away_before_the_units_are_joined(pattern: Pattern) -> None:
    """Check value 14.8."""
    assert max(places(pattern, s.CutAway)) < min(places(pattern, s.SewLine))
