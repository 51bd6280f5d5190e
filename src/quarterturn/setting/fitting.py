"""How many repeats of a map a quilt needs to come near a wanted size, measured on laid-out quilts.

Only a map in rows and columns repeats, and only where no border is made for one size of it: every other quilt can
come nearer to a bed by its outermost border alone.
"""

from __future__ import annotations

from dataclasses import replace

from quarterturn.blocks import Blocks
from quarterturn.design import (
    BORDER_STEP,
    Border,
    Coping,
    Design,
    Fit,
    Growth,
    LineSet,
    OnPointSet,
    PanelSet,
    PiecedBorder,
    StraightSet,
    fit_over,
    nearest_fit,
)
from quarterturn.measure import Length
from quarterturn.setting.building import build_top
from quarterturn.setting.tree import Node
from quarterturn.setting.upright import laid_upright


def why_once(design: Design) -> str:
    """Return why the map of a design cannot be laid more or less often, as a sentence; nothing where it can."""
    match design.setting:
        case OnPointSet():
            return "A setting on point has no repeats."
        case LineSet(below=below):
            return f"A setting of {'rows' if below else 'columns'} has no repeats."
        case PanelSet():
            return "A panel has no repeats."
    if any(isinstance(border, PiecedBorder) for border in design.borders):
        return "The pieced border is as long as these repeats of the map and no others."
    if any(isinstance(border, Coping) for border in design.borders):
        return "The coping brings the quilt to one size, however often the map is laid."
    return ""


def repeats_of(design: Design) -> tuple[int, int] | None:
    """Return how often the map is laid across and down; None where that cannot change, as `why_once` tells."""
    if isinstance(design.setting, StraightSet) and not why_once(design):
        return design.setting.across, design.setting.down
    return None


def with_repeats(design: Design, across: int, down: int) -> Design:
    """Return a design whose map can be laid more often with its map laid so often."""
    assert isinstance(design.setting, StraightSet), "only rows and columns repeat"
    return replace(design, setting=replace(design.setting, across=across, down=down))


def growth(design: Design, blocks: Blocks) -> tuple[Growth, Growth]:
    """Return how the quilt grows across and down with the repeats of its map, from a quilt of one and one of two.

    Where nothing repeats it does not grow, whatever the number of repeats.
    """
    if repeats_of(design) is None:
        top = _top(design, blocks)
        return Growth(top.width, Length(0)), Growth(top.height, Length(0))
    once, twice = (_top(with_repeats(design, each, each), blocks) for each in (1, 2))
    return _growth(once.width, twice.width), _growth(once.height, twice.height)


def _top(design: Design, blocks: Blocks) -> Node:
    return build_top(laid_upright(design, blocks), blocks)[0]


def quilt_size(design: Design, blocks: Blocks) -> tuple[Length, Length]:
    """Return the finished width and height of the quilt, measured on the top as it is laid."""
    top = _top(design, blocks)
    return top.width, top.height


def _growth(once: Length, twice: Length) -> Growth:
    return Growth(2 * once - twice, twice - once)


def fit_to(design: Design, blocks: Blocks, wanted: tuple[Length, Length]) -> Fit:
    """Return the fit with the fewest repeats that is nowhere smaller than is wanted.

    Where nothing repeats, the outermost border alone becomes wider or narrower, and the fit may be too small.
    """
    return fit_over(wanted, *growth(design, blocks), outermost_of(design), BORDER_STEP[design.units])


def nearest_to(design: Design, blocks: Blocks, wanted: tuple[Length, Length], within: Length) -> Fit:
    """Return the fit that comes nearest to a size, larger or smaller; the border stays where it then is `within`."""
    step = BORDER_STEP[design.units]
    return nearest_fit(wanted, *growth(design, blocks), outermost_of(design), step, within)


def outermost_of(design: Design) -> Length | None:
    """Return the width of the outermost border where it is a plain one, which can have any width; else None."""
    last = design.borders[-1] if design.borders else None
    return last.width if isinstance(last, Border) else None
