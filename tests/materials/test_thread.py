"""Thread for the edges: the textbook formula, the trade's ratios, and sums by colour."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest

from quarterturn.design import EdgeStitch, EdgeStitchKind
from quarterturn.materials.stitches import WASTE, thickness_of
from quarterturn.materials.thread import bobbins_to_wind, thread_ratio
from quarterturn.measure import MM, inches, mm
from tests.recipe_samples import PONDS
from tests.samples import ROUNDS, pattern_of

THICKNESS = thickness_of(2)


def stitch(kind: EdgeStitchKind, width: str, length: str) -> EdgeStitch:
    """Return a stitch of so many millimetres."""
    return EdgeStitch(kind, mm(width), mm(length), "", "")


def zigzag(width: str, length: str) -> float:
    """Return the thread for an inch of zigzag."""
    return thread_ratio(stitch(EdgeStitchKind.ZIGZAG, width, length))


def test_lockstitch_formula() -> None:
    """2 + 2·T·S: 2.2 for T = 0.01″ and S = 10 (textilecalculations.com, textileblog.com)."""
    ten_an_inch = EdgeStitch(EdgeStitchKind.STRAIGHT, inches(0), inches(0, 1, 10), "", "")
    assert thread_ratio(ten_an_inch, thickness=0.01) == pytest.approx(2.2)


def test_lockstitch_ratio_of_the_trade() -> None:
    """2.5 : 1 by a thread maker's guide and apparelscience.com."""
    ten_an_inch = EdgeStitch(EdgeStitchKind.STRAIGHT, inches(0), inches(0, 1, 10), "", "")
    assert thread_ratio(ten_an_inch) == pytest.approx(2.5, abs=0.1)


def test_a_zigzag_without_width_is_a_straight_stitch() -> None:
    assert zigzag("0", "2.5") == pytest.approx(thread_ratio(stitch(EdgeStitchKind.STRAIGHT, "0", "2.5")))


@pytest.mark.parametrize("published", [5.5, 7.0])
def test_a_zigzag_of_sensible_width_has_the_published_ratios(published: float) -> None:
    """5.5 (thread maker's guide, apparelscience.com) and 7.0 (another trade table, from memory) contradict each
    other, since the ratio hangs on the width; both lie between those of 3 mm and 5 mm wide at 1.5 mm."""
    assert zigzag("3", "1.5") < published < zigzag("5", "1.5")


def test_a_fine_zigzag_stitch_by_stitch() -> None:
    """1.5 mm wide, 1.4 mm long (common practice, no source): √(1.5² + 1.4²) mm above and below, and the lock."""
    path = math.hypot(1.5, 1.4) * float(MM)
    assert zigzag("1.5", "1.4") == pytest.approx(2 * (path + THICKNESS) / (1.4 * float(MM)))


def test_satin_is_a_zigzag_with_a_short_stitch_and_takes_much_more() -> None:
    assert thread_ratio(stitch(EdgeStitchKind.SATIN, "3", "0.4")) == zigzag("3", "0.4")
    assert zigzag("3", "0.4") > 3 * zigzag("3", "1.5")


def test_blanket_goes_along_and_in_and_back() -> None:
    path = (2.5 + 2 * 2) * float(MM)
    found = thread_ratio(stitch(EdgeStitchKind.BLANKET, "2", "2.5"))
    assert found == pytest.approx(2 * (path + 3 * THICKNESS) / (2.5 * float(MM)))


def test_waste_is_within_the_published_range() -> None:
    """10–15 % (apparelscience.com) or 15–20 % (apparel-merchandising.com)."""
    assert 0.10 <= WASTE <= 0.20


def test_edges_are_summed_by_the_colour_of_the_shape() -> None:
    pattern = pattern_of(ROUNDS)
    want: dict[str, float] = {}
    for masters in pattern.bill.masters:
        shape = pattern.design.colourway(masters.code).shape
        edge = pattern.blocks.master(masters.recipe).shape.edge
        want[shape] = want.get(shape, 0.0) + masters.count * edge
    assert {line.fabric: line.edge for line in pattern.materials.stitching} == want
    ratio = thread_ratio(pattern.design.making.stitch)
    for line in pattern.materials.stitching:
        assert line.thread == pytest.approx(line.edge * ratio * 1.15)


def test_bobbins_are_wound_for_each_colour() -> None:
    pattern = pattern_of(ROUNDS)
    stitch = pattern.design.making.stitch
    small = replace(stitch, bobbin=inches(36))
    sums = pattern.materials.stitching
    assert set(bobbins_to_wind(stitch, sums).values()) == {1}
    assert bobbins_to_wind(small, sums) == {line.fabric: math.ceil(line.thread / 72) for line in sums}


def test_each_part_is_stitched_in_its_own_colour_round_every_edge() -> None:
    """A ring of 6" about a hole of 3" has 9π inches of edge; the heart on it is of another fabric."""
    pattern = pattern_of(PONDS)
    edges = {line.fabric: line.edge for line in pattern.materials.stitching}
    heart = pattern.blocks.masters[0].shapes[1]
    assert edges == {"B": pytest.approx(9 * math.pi), "C": pytest.approx(heart.edge)}
