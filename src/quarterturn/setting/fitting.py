"""How many repeats of a map a quilt needs to come near a wanted size, measured on laid-out quilts."""

from __future__ import annotations

from dataclasses import replace

from quarterturn.blocks import Blocks
from quarterturn.design import BORDER_STEP, Bed, Design, Fit, Growth, fit_over, nearest_fit
from quarterturn.measure import Length
from quarterturn.setting.arrange import arrange


def growth(design: Design, blocks: Blocks) -> tuple[Growth, Growth]:
    """Return how the quilt grows across and down with the repeats of its map, from a quilt of one and one of two."""
    once, twice = (
        arrange(replace(design, setting=replace(design.setting, across=copies, down=copies)), blocks)
        for copies in (1, 2)
    )
    return _growth(once.width, twice.width), _growth(once.height, twice.height)


def _growth(once: Length, twice: Length) -> Growth:
    return Growth(2 * once - twice, twice - once)


def fit_to(design: Design, blocks: Blocks, wanted: tuple[Length, Length]) -> Fit:
    """Return the fit with the fewest repeats that is nowhere smaller than is wanted."""
    return fit_over(wanted, *growth(design, blocks), _outermost(design), BORDER_STEP[design.units])


def nearest_to(design: Design, blocks: Blocks, bed: Bed) -> Fit:
    """Return the fit that comes nearest to what a bed wants, larger or smaller."""
    step = BORDER_STEP[design.units]
    return nearest_fit(bed.wanted, *growth(design, blocks), _outermost(design), step, bed.within)


def _outermost(design: Design) -> Length | None:
    return design.borders[-1].width if design.borders else None
