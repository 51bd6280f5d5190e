"""Which quarters of a master are equal is found by cutting it, and decides how its units are named and lie."""

from __future__ import annotations

import pytest

from quarterturn.blocks import SHAPE, Master, Unit, draft_master
from quarterturn.design import Curve, DrawnOutline, default_making, one_shape_cut_both_ways
from quarterturn.geometry import (
    OUTLINES,
    Region,
    congruence,
    difference_area,
    outline_path,
    region_bounds,
    same_region,
    shift,
)
from quarterturn.measure import Units, inches

MAKING = default_making(Units.INCH)
KINDS = {
    "rounded square": {"": 4},
    "scallop": {"": 4},
    "leaf": {"tl": 2, "tr": 2},
    "heart": {"tl": 1, "tr": 1, "br": 1, "bl": 1},
    "soft heart": {"tl": 1, "tr": 1, "br": 1, "bl": 1},
    "petal": {"tl": 1, "tr": 1, "br": 1, "bl": 1},
    "drop": {"tl": 1, "tr": 1, "br": 1, "bl": 1},
}


def master(name: str, curve: Curve = Curve.SEWN_TRUE, turn: int = 0, lobes: int = 8) -> Master:
    size = DrawnOutline(name, inches(4), turn, lobes)
    recipe = one_shape_cut_both_ways("r", inches(4), inches(9, 1, 2), inches(0, 1, 2), size, curve)
    return draft_master(recipe, MAKING)


def shown(unit: Unit) -> Region:
    return Region(tuple(p for layer in unit.sewn_layers if layer.part == SHAPE for p in layer.region.paths))


def kinds(made: Master) -> dict[str, int]:
    return {unit.quarter: made.per_master(number) for number, unit in enumerate(made.units)}


def test_every_outline_has_its_kinds() -> None:
    assert KINDS.keys() | {"circle"} == OUTLINES.keys()


@pytest.mark.parametrize("turn", range(4))
@pytest.mark.parametrize("curve", Curve)
@pytest.mark.parametrize("name", KINDS)
def test_an_outline_gives_the_kinds_of_unit_that_it_should(name: str, curve: Curve, turn: int) -> None:
    assert kinds(master(name, curve, turn)) == KINDS[name]


@pytest.mark.parametrize(("lobes", "count"), [(4, 1), (12, 1), (6, 2), (10, 2), (5, 4), (7, 4)])
def test_the_lobes_of_a_scallop_decide_its_kinds(lobes: int, count: int) -> None:
    assert len(kinds(master("scallop", lobes=lobes))) == count


@pytest.mark.parametrize("name", ["heart", "leaf", "drop"])
def test_units_of_several_kinds_lie_as_in_the_master_and_make_the_wanted_outline(name: str) -> None:
    made = master(name)
    wanted = outline_path(name, 3.5)
    whole: list[Region] = []
    for part in made.parts:
        back, unit = part.motion.inverse(), made.units[part.unit]
        centre = back(2 + 2j)
        way = complex(0.25 if centre.real > 0 else -0.25, 0.25 if centre.imag > 0 else -0.25)
        whole.append(shift(-way).region(back.region(shown(unit))))
    paths = tuple(path for region in whole for path in region.paths)
    assert difference_area(Region(paths), Region((wanted,))) == pytest.approx(0, abs=1e-3)


def test_the_first_of_a_kind_is_not_turned() -> None:
    for name in ("heart", "leaf"):
        made = master(name)
        assert all(made.part(unit.quarter).motion.factor in (1, -1) for unit in made.units)
        assert made.part("tl").motion.factor == 1


def test_the_middle_of_the_master_is_at_the_corner_that_the_quarter_tells() -> None:
    corners = {"tl": 4.25 + 4.25j, "tr": -0.25 + 4.25j, "br": -0.25 - 0.25j, "bl": 4.25 - 0.25j}
    made = master("heart")
    for quarter, corner in corners.items():
        assert made.part(quarter).motion(0j) == pytest.approx(corner)


def test_left_and_right_of_a_heart_are_mirror_images_and_no_turn_of_one_another() -> None:
    made = master("heart")
    for left, right in (("tl", "tr"), ("bl", "br")):
        (a,), (b,) = shown(made.unit(left)).paths, shown(made.unit(right)).paths
        assert congruence(a, b) == ()
        assert congruence(a, b, mirrored=True)


def test_a_unit_keeps_what_of_its_shape_lies_beyond_the_seams() -> None:
    for curve in Curve:
        for unit in master("heart", curve).units:
            bounds = region_bounds(shown(unit))
            assert min(bounds.left, bounds.top) > -1e-9
            assert max(bounds.right, bounds.bottom) < 4 + 1e-9
            assert not same_region(shown(unit), Region(()))


def test_sewn_true_no_edge_steps_or_peaks_where_quarters_are_rejoined() -> None:
    for name in KINDS:
        facts = master(name).facts
        assert facts.step == pytest.approx(0, abs=1e-9)
        assert facts.peak == pytest.approx(0, abs=1e-6)


def test_as_drawn_the_quarters_of_a_heart_step_by_what_its_slant_loses_in_two_seams() -> None:
    facts = master("leaf", Curve.AS_DRAWN).facts
    assert facts.step == pytest.approx(0, abs=1e-9)  # a leaf is the same above and below
    heart = master("heart", Curve.AS_DRAWN).facts
    assert heart.step > 0.1
    assert heart.wanted_area == pytest.approx(outline_path("heart", 4).area() / 4)
    assert heart.shape_area < heart.wanted_area


def test_a_drop_lies_so_far_from_the_outer_edge() -> None:
    facts = master("drop", Curve.AS_DRAWN).facts
    assert facts.clearance == pytest.approx(4.5 - 3)
