"""A map laid with a symmetry is a quilt with it: the movement is made with the cloth, not with the letters."""

from __future__ import annotations

from dataclasses import replace

import pytest

from quarterturn.blocks import draft_blocks
from quarterturn.design import ClothCell, Design, Section, SectionCell, StraightSet, Symmetry
from quarterturn.geometry import STAY, Motion, mirror_across_vertical, quarter_turns
from quarterturn.proof.checks.mapping import map_of
from quarterturn.proof.rehearsal.compare import area_of_difference
from quarterturn.setting import Face, arrange, picture
from tests.samples import ROUNDS, design_of, straight

ODD = design_of(ROUNDS.replace("a2 a3 b2 b3 a2\na1 a0 b1 b0 a1\nb0 b1 a0 a2 b1", "a2 b3\na0 b2"))
"""A block without a symmetry of its own, on which sizes and colours differ."""


def faces_of(design: Design) -> tuple[Face, ...]:
    blocks = draft_blocks(design)
    return picture(design, blocks, arrange(design, blocks))


def laid_out(symmetry: Symmetry, across: int, down: int) -> Design:
    setting = StraightSet(straight(ODD).cells, across, down, symmetry)
    return replace(ODD, setting=setting, borders=())


def difference_when_moved(design: Design, motion: Motion) -> float:
    faces = faces_of(design)
    return area_of_difference([Face(face.fabric, motion.region(face.region)) for face in faces], faces)


def middle(design: Design) -> complex:
    blocks = draft_blocks(design)
    setting = arrange(design, blocks)
    return complex(float(setting.width), float(setting.height)) / 2


def upright(design: Design) -> Motion:
    return mirror_across_vertical(middle(design).real)


def level(design: Design) -> Motion:
    return upright(design).then(quarter_turns(2, middle(design)))


def test_a_mirrored_quilt_is_its_own_mirror_image_both_ways() -> None:
    design = laid_out(Symmetry.MIRROR, 2, 4)
    assert difference_when_moved(design, upright(design)) < 1e-9
    assert difference_when_moved(design, level(design)) < 1e-9


def test_a_turned_quilt_looks_alike_from_all_four_sides() -> None:
    design = laid_out(Symmetry.TURN, 2, 2)
    assert difference_when_moved(design, quarter_turns(1, middle(design))) < 1e-9


@pytest.mark.parametrize(
    ("symmetry", "across", "quarters"), [(Symmetry.TURN, 1, 1), (Symmetry.HALF_TURN, 2, 2)]
)
def test_sections_are_turned_with_the_map_that_holds_them(
    symmetry: Symmetry, across: int, quarters: int
) -> None:
    odd = Section("odd", StraightSet(straight(ODD).cells, 1, 1))
    cells = ((SectionCell("odd", 0), SectionCell("odd", 3)), (ClothCell("C"), SectionCell("odd", 1)))
    setting = StraightSet(cells, across, 1, symmetry)
    design = replace(ODD, setting=setting, sections=(odd,), borders=())
    assert difference_when_moved(design, quarter_turns(quarters, middle(design))) < 1e-9
    assert difference_when_moved(design, level(design)) > 1


def test_a_half_turned_quilt_of_one_copy_beside_another_looks_alike_upside_down() -> None:
    design = laid_out(Symmetry.HALF_TURN, 2, 1)
    assert difference_when_moved(design, quarter_turns(2, middle(design))) < 1e-9


def test_the_odd_block_has_none_of_these_when_it_is_slid() -> None:
    design = laid_out(Symmetry.SLIDE, 2, 2)
    motions = [upright(design), level(design), *(quarter_turns(n, middle(design)) for n in (1, 2))]
    assert min(difference_when_moved(design, motion) for motion in motions) > 1
    assert difference_when_moved(design, STAY) == 0


@pytest.mark.parametrize("symmetry", Symmetry)
def test_the_checks_read_the_map_as_the_setting_lays_it(symmetry: Symmetry) -> None:
    setting = straight(laid_out(symmetry, 3, 2))
    assert map_of(setting) == setting.rows()
