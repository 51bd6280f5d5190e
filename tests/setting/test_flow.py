"""Curves followed through the top: what becomes of every piece, and what turning the whole map leaves as it is."""

from __future__ import annotations

import math
from collections import Counter
from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from quarterturn.blocks import GROUND, SHAPE, Blocks, Layer, Unit, draft_blocks
from quarterturn.design import Cell, Design, StraightSet
from quarterturn.geometry import Path, Region, disc, polygon, rectangle
from quarterturn.measure import Units
from quarterturn.setting import Flow, Meeting, Setting, Side, Stop, arrange, setting_text
from quarterturn.setting.curves import curve_pieces
from quarterturn.setting.flow import follow_curves
from quarterturn.setting.neighbours import Neighbour, grid_neighbours
from tests.conftest import Golden
from tests.samples import HEARTS, ROUNDS, Changed, design_of

FLOWING = design_of(ROUNDS)
"""The curve meets the middle of each side, so that it goes on into any neighbour that has an end there."""
SHORT = design_of(Changed(ROUNDS).with_("{ flow = true }", "{ radius = '7/8\"' }").text)
"""The curve meets the side 7/8" from the finished corner; 2" less that is 1 1/8": a step of 1/4"."""
OUTLINES = design_of(HEARTS)
KINDS = {id(FLOWING): ["a", "b"], id(SHORT): ["a", "b"]}
KINDS[id(OUTLINES)] = ["a-tl", "a-tr", "a-bl", "a-br", "c-tl", "c-tr"]
BLOCKS = {id(design): draft_blocks(design) for design in (FLOWING, SHORT, OUTLINES)}

Cells = tuple[tuple[Cell, ...], ...]


def cell(name: str, turn: int) -> Cell:
    code, _, quarter = name.partition("-")
    return Cell(code, turn, quarter)


def laid(design: Design, cells: Cells) -> Setting:
    """Arrange a design with other cells."""
    return arrange(replace(design, setting=StraightSet(cells, 1, 1)), BLOCKS[id(design)])


def of_words(words: str) -> Cells:
    return tuple(tuple(cell(word[:-1], int(word[-1])) for word in row.split()) for row in words.split("/"))


def maps(design: Design) -> st.SearchStrategy[Cells]:
    """Maps of up to six rows and six columns of the units of a design."""
    one = st.builds(cell, st.sampled_from(KINDS[id(design)]), st.integers(0, 3))
    sizes = st.tuples(st.integers(1, 6), st.integers(1, 6))
    return sizes.flatmap(
        lambda size: st.lists(
            st.lists(one, min_size=size[1], max_size=size[1]).map(tuple), min_size=size[0], max_size=size[0]
        ).map(tuple)
    )


designs = st.sampled_from([FLOWING, SHORT, OUTLINES])
designs_and_maps = designs.flatmap(lambda design: st.tuples(st.just(design), maps(design)))
circles_and_maps = st.sampled_from([FLOWING, SHORT]).flatmap(lambda d: st.tuples(st.just(d), maps(d)))


def tally(flow: Flow) -> Counter[tuple[int, float, tuple[str, ...], bool]]:
    """Count the curves of each kind, whichever way they were followed."""
    return Counter(
        (t.pieces, round(t.length, 6), tuple(sorted(stop.value for stop in t.stops)), t.circle)
        for t in (*flow.rounds, *flow.paths)
    )


@given(designs_and_maps)
def test_every_piece_belongs_to_one_round_or_path(drawn: tuple[Design, Cells]) -> None:
    design, cells = drawn
    setting = laid(design, cells)
    passed = Counter(unit for trail in (*setting.flow.rounds, *setting.flow.paths) for unit in trail.units)
    wanted = Counter(
        {
            i: len(curve_pieces(BLOCKS[id(design)].unit(design, unit.name)))
            for i, unit in enumerate(setting.units)
        }
    )
    assert passed == wanted


@given(designs_and_maps)
def test_every_piece_has_two_ends_that_match_step_or_stop(drawn: tuple[Design, Cells]) -> None:
    setting = laid(*drawn)
    met = Counter(mark.meeting for join in setting.joins for mark in join.marks)
    stops = Counter(stop for trail in setting.flow.paths for stop in trail.stops)
    assert stops[Stop.STEP] == 2 * met[Meeting.STEP] == 2 * setting.flow.steps
    assert stops[Stop.SEAM] == met[Meeting.END]
    assert 2 * setting.flow.pieces == 2 * met[Meeting.MATCH] + stops.total()
    assert len(setting.flow.paths) == setting.flow.pieces - met[Meeting.MATCH]


@given(circles_and_maps)
def test_the_lengths_of_all_curves_are_those_of_their_pieces(drawn: tuple[Design, Cells]) -> None:
    """A circle of radius r as drawn keeps r·(π/2 − 2·asin(s/r)) of each quarter."""
    design, cells = drawn
    setting = laid(design, cells)
    along = 1.0 if design is FLOWING else 0.875
    radius = math.hypot(along + 0.25, 0.25)
    piece = radius * (math.pi / 2 - 2 * math.asin(0.25 / radius))
    total = sum(trail.length for trail in (*setting.flow.rounds, *setting.flow.paths))
    assert total == pytest.approx(len(setting.units) * piece)


@given(designs_and_maps)
def test_turning_the_whole_map_keeps_every_curve(drawn: tuple[Design, Cells]) -> None:
    design, cells = drawn
    turned = tuple(
        tuple(replace(row[c], turn=(row[c].turn + 1) % 4) for row in reversed(cells))
        for c in range(len(cells[0]))
    )
    assert tally(laid(design, turned).flow) == tally(laid(design, cells).flow)


@given(circles_and_maps)
def test_mirroring_the_whole_map_keeps_every_curve(drawn: tuple[Design, Cells]) -> None:
    design, cells = drawn
    mirrored = tuple(tuple(replace(unit, turn=unit.turn ^ 1) for unit in reversed(row)) for row in cells)
    assert tally(laid(design, mirrored).flow) == tally(laid(design, cells).flow)


@given(st.integers(1, 6), st.integers(1, 6), st.integers(0, 3))
def test_where_all_units_lie_alike_no_curve_goes_on(rows: int, columns: int, turn: int) -> None:
    flow = laid(FLOWING, ((cell("a", turn),) * columns,) * rows).flow
    assert flow.rounds == ()
    assert [trail.pieces for trail in flow.paths] == [1] * (rows * columns)


@pytest.mark.parametrize("design", [FLOWING, SHORT])
def test_a_lone_round_is_one_circle(design: Design) -> None:
    flow = laid(design, of_words("a2 a3/a1 a0")).flow
    (circle,) = flow.rounds
    assert circle.circle
    assert (circle.pieces, circle.units, flow.paths) == (4, (0, 1, 3, 2), ())


def test_a_heart_is_a_round_of_four_and_no_circle() -> None:
    (heart,) = laid(OUTLINES, of_words("a-tl0 a-tr0/a-bl0 a-br0")).flow.rounds
    assert (heart.pieces, heart.circle) == (4, False)


def test_a_round_of_twelve_winds_about_four_corners() -> None:
    flow = laid(FLOWING, of_words("a0 a2 a3 a1/a2 a0 a1 a3/a1 a3 a2 a0/a3 a1 a0 a2")).flow
    assert [(trail.pieces, trail.circle) for trail in flow.rounds] == [(12, False)]
    assert Counter(trail.stops for trail in flow.paths) == {(Stop.EDGE, Stop.EDGE): 4}


def test_a_path_runs_from_edge_to_edge() -> None:
    (path,) = laid(FLOWING, of_words("a1 a3 b1")).flow.paths[:1]
    assert path.stops == (Stop.EDGE, Stop.EDGE)


def test_an_end_that_finds_none_stops_at_the_seam() -> None:
    first, second = laid(FLOWING, of_words("a1 a1")).flow.paths
    assert first.stops == (Stop.SEAM, Stop.EDGE)
    assert second.stops == (Stop.EDGE, Stop.EDGE)


def test_a_step_is_told_with_its_place_and_its_width() -> None:
    setting = laid(SHORT, of_words("a0 a0 a0/a0 a1 a3"))
    assert setting.flow.steps == 1
    widest = setting.flow.widest
    assert widest is not None
    unit = setting.units[widest.unit]
    assert (unit.row, unit.column, widest.side) == (1, 1, Side.RIGHT)
    assert widest.distance == pytest.approx(0.25)


def test_one_fabric_for_ground_and_shape_shows_no_curve() -> None:
    design = design_of(Changed(ROUNDS).with_('ground = "B"\nshape = "A"', 'ground = "B"\nshape = "B"').text)
    flow = arrange(design, draft_blocks(design)).flow
    units = arrange(design, draft_blocks(design)).units
    assert flow.pieces == sum(unit.code == "a" for unit in units)


def unit_with(*paths: Path) -> Unit:
    """A unit of 2" whose shape has these outlines."""
    side, seam = FLOWING.recipes[0].finished, FLOWING.making.seam
    layers = (Layer(GROUND, Region((rectangle(0, 0, 2, 2),))), Layer(SHAPE, Region(paths)))
    outline = rectangle(0, 0, 2, 2)
    return Unit(side, side, seam, outline, outline, layers, layers)


def flow_of(unit: Unit, words: str) -> Flow:
    """Follow the curves of a map whose every unit is this one."""
    (master,) = BLOCKS[id(FLOWING)].masters
    setting = laid(FLOWING, of_words(words))
    neighbours = grid_neighbours(len(setting.units), setting.units[-1].column + 1)
    return follow_curves(FLOWING, Blocks((replace(master, units=(unit,)),)), setting.units, neighbours)


def test_in_a_corner_where_four_curves_meet_none_goes_on() -> None:
    flow = flow_of(unit_with(polygon((0, 2 + 0j, 2 + 2j))), "a0 a1/a1 a0")
    assert flow.rounds == ()
    assert [trail.stops for trail in flow.paths] == [(Stop.CORNER, Stop.CORNER)] * 4


def test_what_closes_inside_a_unit_is_a_round_of_one_piece() -> None:
    flow = flow_of(unit_with(*disc(0.5, 1 + 1j).paths), "a0 a1")
    assert [(t.units, t.circle) for t in flow.rounds] == [((0,), False), ((1,), False)]
    assert flow.rounds[0].length == pytest.approx(math.pi)
    assert flow.paths == ()


def test_a_unit_may_hold_several_pieces() -> None:
    upper, lower = flow_of(unit_with(rectangle(0, 0.5, 2, 1.5)), "a0 a0 a0").paths
    for trail in (upper, lower):
        assert sorted(trail.units) == [0, 1, 2]
        assert (trail.length, trail.stops) == (6, (Stop.EDGE, Stop.EDGE))


def test_the_text_tells_the_curves_of_each_kind(golden: Golden) -> None:
    texts = [
        setting_text(laid(FLOWING, of_words("a2 a3 a2 a3/a1 a0 a1 a0/a0 b2 a1 a1")), Units.INCH),
        setting_text(laid(SHORT, of_words("a0 a0 a0/a0 a1 a3")), Units.METRIC),
    ]
    golden.check("kinds.txt", "\n".join(text[text.index("flow:") :] for text in texts))


def test_an_end_that_two_neighbours_claim_goes_on_into_one() -> None:
    """Only a setting laid wrongly has such neighbours; counts that differ then are a finding, and no fault."""
    setting, left = laid(FLOWING, of_words("a1 a1 a0")), Neighbour(2, Side.LEFT, False)
    claimed = [{Side.RIGHT: left}, {Side.RIGHT: left}, {Side.LEFT: Neighbour(1, Side.RIGHT, False)}]
    flow = follow_curves(FLOWING, BLOCKS[id(FLOWING)], setting.units, claimed)
    assert sorted(path.pieces for path in flow.paths) == [1, 2]
