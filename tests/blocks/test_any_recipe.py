"""Laws of masters of any shapes and cuts."""

from __future__ import annotations

import math
from dataclasses import replace
from fractions import Fraction

import pytest
from hypothesis import HealthCheck, given, settings

from quarterturn.blocks import GROUND, FusedShape, Layer, Master, draft_master
from quarterturn.design import Curve, Cut, DrawnOutline, Recipe, ShapeOn, default_making
from quarterturn.geometry import (
    Path,
    Region,
    keep_left,
    line_through,
    quarter_turns,
    same_outline,
    same_region,
    seam_lines,
    shift,
    uncovered_area,
)
from quarterturn.measure import Length, Units, inches
from tests.strategies.recipes import SEAM, recipe_of, recipes

MAKING = default_making(Units.INCH)
ANY = settings(max_examples=40, deadline=None, suppress_health_check=list(HealthCheck))


def as_cut(master: Master, part: str | None = None) -> list[Layer]:
    """The layers of all units as trimmed, each where its piece lies in the master."""
    return [
        Layer(layer.part, piece.motion.inverse().region(layer.region), layer.shape)
        for piece in master.parts
        for layer in master.units[piece.unit].cut_layers
        if part is None or layer.part == part
    ]


@given(recipes())
@ANY
def test_units_and_trimmings_add_up_to_the_master(recipe: Recipe) -> None:
    made = draft_master(recipe, MAKING)
    whole = float(recipe.width * recipe.height)
    trimmings = whole - float((recipe.width - recipe.trim_width) * (recipe.height - recipe.trim_height))
    units = sum(layer.region.area() for layer in as_cut(made, GROUND))
    assert units + trimmings == pytest.approx(whole)
    assert sum(piece.outline.area() for piece in made.parts) == pytest.approx(whole)


@given(recipes())
@ANY
def test_pieces_laid_together_again_are_the_master(recipe: Recipe) -> None:
    """Every part comes back whole, since no shape reaches into the trimmings."""
    made = draft_master(recipe, MAKING)
    for part in recipe.parts:
        shapes = [shape.region for shape in made.shapes if shape.part == part]
        pieces = [layer.region for layer in as_cut(made, part)]
        assert sum(map(Region.area, pieces)) == pytest.approx(sum(map(Region.area, shapes)), abs=1e-9)
        assert all(uncovered_area(shape, pieces) < 1e-3 for shape in shapes)


def as_sewn(master: Master, part: str) -> list[Region]:
    """What shows of a part in all units, each brought back to where it was meant in the sewn plane."""
    seams = seam_lines(master.cuts, float(SEAM))
    found = []
    for piece in master.parts:
        middle = sum(piece.outline.corners(), 0j) / len(piece.outline.segments)
        sides = (math.copysign(1, cut.side(middle)) for cut in master.cuts)
        off = sum((each.move * side for each, side in zip(seams, sides, strict=True)), 0j)
        back = piece.motion.inverse().then(shift(-off))
        layers = master.units[piece.unit].sewn_layers
        found += [back.region(layer.region) for layer in layers if layer.part == part]
    return found


@given(recipes())
@ANY
def test_sewn_true_gives_every_wanted_outline(recipe: Recipe) -> None:
    """Cut, seamed and rejoined, what is traced is what was meant: no area differs, and no curve has a corner more."""
    made = draft_master(replace(recipe, curve=Curve.SEWN_TRUE), MAKING)
    if not within_seams(made):
        return
    for part in recipe.parts:
        wanted = [wanted_region(shape) for shape in made.shapes if shape.part == part]
        sewn = as_sewn(made, part)
        assert sum(map(Region.area, sewn)) == pytest.approx(sum(map(Region.area, wanted)), abs=1e-9)
        assert all(uncovered_area(region, sewn) < 1e-3 for region in wanted)
    assert made.facts.step == pytest.approx(0, abs=1e-7)


def wanted_region(shape: FusedShape) -> Region:
    return Region((shape.wanted, shape.wanted_hole) if shape.wanted_hole else (shape.wanted,))


def within_seams(master: Master) -> bool:
    """Whether no outer seam cuts a shape off, once spread."""
    return master.facts.clearance >= float(SEAM)


def turned(recipe: Recipe) -> Recipe:
    """The same recipe, turned clockwise by a quarter."""

    def turn(x: Length, y: Length) -> tuple[Length, Length]:
        return -y, x

    cuts = tuple(Cut(*turn(c.start_x, c.start_y), *turn(c.end_x, c.end_y)) for c in recipe.cuts)
    shapes = tuple(
        replace(s, x=turn(s.x, s.y)[0], y=turn(s.x, s.y)[1], degrees=s.degrees + 90) for s in recipe.shapes
    )
    return replace(recipe, width=recipe.height, height=recipe.width, cuts=cuts, shapes=shapes)


@given(recipes())
@ANY
def test_turning_a_recipe_turns_its_units(recipe: Recipe) -> None:
    first, second = draft_master(recipe, MAKING), draft_master(turned(recipe), MAKING)
    quarter = quarter_turns(1)
    for piece, other in zip(first.parts, second.parts, strict=True):
        assert same_outline(quarter.path(piece.outline), other.outline)
        lies, turned_lies = (
            [part.motion.inverse().region(layer.region) for layer in master.units[part.unit].cut_layers]
            for master, part in ((first, piece), (second, other))
        )
        before, after = (sorted(map(Region.area, regions)) for regions in (lies, turned_lies))
        assert after == pytest.approx(before, abs=1e-7)
    counts = [sorted(master.per_master(k) for k in range(len(master.units))) for master in (first, second)]
    assert counts[0] == counts[1]


@given(recipes())
@ANY
def test_units_of_one_kind_are_the_same_cloth(recipe: Recipe) -> None:
    """Each piece, clipped from the master anew and moved into its unit's frame, is the unit that it is said to be."""
    made = draft_master(recipe, MAKING)
    for piece in made.parts:
        unit = made.units[piece.unit]
        layers = [
            kept_in(shape.region, piece.motion.inverse().path(unit.cut_outline)) for shape in made.shapes
        ]
        moved = [(shape.part, piece.motion.region(r)) for shape, r in zip(made.shapes, layers, strict=True)]
        for part in recipe.parts:
            own = [region for name, region in moved if name == part and not region.is_empty()]
            shown = [layer.region for layer in unit.cut_layers if layer.part == part]
            assert len(own) == len(shown)
            assert all(any(same_region(region, other) for other in shown) for region in own)


def kept_in(region: Region, outline: Path) -> Region:
    for side in outline.segments:
        region = keep_left(region, line_through(side.start, side.end))
    return region


NOTHING = Fraction(0)


def heart(width: Length, x: Length = NOTHING, y: Length = NOTHING, degrees: int = 0) -> ShapeOn:
    return ShapeOn("heart", DrawnOutline("heart", width, 0, 0), x, y, Fraction(degrees))


def kinds(master: Master) -> list[tuple[str, int, int | None]]:
    return [(unit.quarter, master.per_master(k), unit.mirror) for k, unit in enumerate(master.units)]


def test_a_heart_halved_down_its_middle_gives_a_left_and_a_right_hand() -> None:
    """5" by 4 1/2" patches, heart applied, cut down the middle, make halves of 2" by 4" finished
    (quilterscache.com, Valentine's block, 2003): the width is twice the half and 1" more."""
    recipe = recipe_of(inches(5), inches(4, 1, 2), NOTHING, "down", (heart(inches(3)),), Curve.AS_DRAWN)
    made = draft_master(recipe, MAKING)
    assert kinds(made) == [("lh", 1, 1), ("rh", 1, 0)]
    assert {(unit.width, unit.height) for unit in made.units} == {(inches(2), inches(4))}
    assert all(unit.is_rectangle for unit in made.units)
    assert (made.units[0].cut_width, made.units[0].cut_height) == (inches(2, 1, 2), inches(4, 1, 2))


def test_a_circle_quartered_and_trimmed_on_the_outer_sides() -> None:
    """Twelve-inch square with a centred 6" circle, quartered, trimmed to 5 1/2" (QUILTsocial, Fall 2014, p. 15)."""
    moon = ShapeOn("moon", DrawnOutline("circle", inches(6), 0, 0))
    made = draft_master(
        recipe_of(inches(12), inches(12), inches(1), "both ways", (moon,), Curve.AS_DRAWN), MAKING
    )
    assert kinds(made) == [("", 4, 0)]
    assert (made.units[0].side, made.units[0].cut_side) == (inches(5), inches(5, 1, 2))


@pytest.mark.parametrize(("radius", "crossing"), [("3", 2.7396), ("23/8", 2.6141)])
def test_where_the_arc_meets_the_seam(radius: str, crossing: float) -> None:
    """√(r² − 1/16) − 1/4 along the finished edge (derived; no source states it)."""
    moon = ShapeOn("moon", DrawnOutline("circle", 2 * Fraction(radius), 0, 0))
    made = draft_master(
        recipe_of(inches(12), inches(12), NOTHING, "both ways", (moon,), Curve.AS_DRAWN), MAKING
    )
    assert made.facts.crossing == pytest.approx(crossing, abs=5e-5)


def test_two_discs_in_one_square_give_four_equal_units_of_two_arcs() -> None:
    """Check value 14.1 (common practice, no source) with a second disc fused on the first."""
    discs = tuple(
        ShapeOn(n, DrawnOutline("circle", inches(w), 0, 0)) for n, w in (("outer", 7), ("inner", 4))
    )
    made = draft_master(
        recipe_of(inches(9, 1, 2), inches(9, 1, 2), NOTHING, "both ways", discs, Curve.AS_DRAWN), MAKING
    )
    assert kinds(made) == [("", 4, 0)]
    assert made.units[0].side == inches(4, 1, 4)
    assert [layer.part for layer in made.units[0].sewn_layers] == [GROUND, "outer", "inner"]
    assert made.facts.clearance == pytest.approx(1.25)


def test_the_names_of_pieces_tell_where_they_lie() -> None:
    spot = (
        ShapeOn("petal", DrawnOutline("petal", inches(1), 0, 0), inches(1), inches(1, 1, 2), Fraction(20)),
    )

    def names(cuts: str | tuple[Cut, ...]) -> list[str]:
        made = draft_master(recipe_of(inches(8), inches(8), NOTHING, cuts, spot, Curve.AS_DRAWN), MAKING)
        assert {piece.name for piece in made.parts} >= {u.quarter for u in made.units} - {""}
        return sorted(piece.name for piece in made.parts)

    assert names("none") == [""]
    assert names("down") == ["lh", "rh"]
    assert names("across") == ["bh", "th"]
    assert names("one diagonal") == ["lh", "rh"]
    assert names("both ways") == ["bl", "br", "tl", "tr"]
    assert names("both diagonals") == ["bt", "lt", "rt", "tt"]
    two = tuple(Cut(inches(x), inches(-4), inches(x), inches(4)) for x in (-1, 2))
    assert names(two) == ["pa", "pb", "pc"]


def test_equal_shapes_share_a_template_and_others_are_numbered() -> None:
    hearts = (heart(inches(2), inches(-2), NOTHING, 30), heart(inches(2), inches(2), NOTHING, -45))
    recipe = recipe_of(inches(9), inches(9), NOTHING, "none", (*hearts, heart(inches(1))), Curve.AS_DRAWN)
    made = draft_master(recipe, MAKING)
    assert [shape.name for shape in made.shapes] == ["any heart", "any heart", "any heart 2"]
    assert [count for _, count in made.templates] == [2, 1]
    first, second = made.shapes[:2]
    assert same_region(second.motion.region(first.region), second.region)
    assert second.edge == pytest.approx(first.edge)


def test_both_edges_of_a_ring_are_stitched_and_web_holds_both() -> None:
    ring = ShapeOn("ring", DrawnOutline("ring", inches(7), 0, 0, inches(4)))
    made = draft_master(
        recipe_of(inches(9), inches(9), NOTHING, "both ways", (ring,), Curve.AS_DRAWN), MAKING
    )
    assert made.shape.edge == pytest.approx(math.pi * 11)
    assert made.shape.region.area() == pytest.approx(math.pi * (3.5**2 - 2**2))
    assert made.shape.ring_out.area() == pytest.approx(math.pi * (3.75**2 - 1.75**2))
    assert made.shape.ring_in.area() == pytest.approx(math.pi * (3.25**2 - 2.25**2))


def test_the_gap_of_a_narrow_ring_is_not_hollowed_out() -> None:
    ring = ShapeOn("ring", DrawnOutline("ring", inches(7), 0, 0, inches(5, 1, 4)))
    made = draft_master(
        recipe_of(inches(9), inches(9), NOTHING, "both ways", (ring,), Curve.AS_DRAWN), MAKING
    )
    assert made.shape.ring_in.is_empty()
