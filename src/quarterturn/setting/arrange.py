"""Put everything in place: the tree of what is sewn, its leaves, what meets at the seams, where the curves run."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence

from quarterturn.blocks import Blocks
from quarterturn.design import Design, unit_name
from quarterturn.setting.building import build_top
from quarterturn.setting.flow import follow_curves
from quarterturn.setting.joins import Seams, find_joins
from quarterturn.setting.model import Flow, PlacedUnit, Setting
from quarterturn.setting.neighbours import Neighbours, find_neighbours
from quarterturn.setting.placing import place_all


def arrange(design: Design, blocks: Blocks) -> Setting:
    """Return the quilt top of a design of which `map_findings` finds nothing."""
    top, _ = build_top(design, blocks)
    units, cloths = place_all(top)
    neighbours = _neighbours(design, blocks, units)
    return Setting(
        top=top,
        width=top.width,
        height=top.height,
        units=units,
        cloths=cloths,
        joins=find_joins(Seams(design, blocks), units, neighbours),
        flow=follow_curves(design, blocks, units, neighbours),
        tally=_tally(design, blocks, units),
    )


def lay_out(design: Design, blocks: Blocks) -> Setting:
    """Return the quilt top as `arrange` does, but for what meets at the seams and where the curves run: none is told.

    It is enough for the pieces and the plans, and takes a fraction of the time.
    """
    top, _ = build_top(design, blocks)
    units, cloths = place_all(top)
    nothing, tally = Flow((), (), 0, None), _tally(design, blocks, units)
    return Setting(top, top.width, top.height, units, cloths, joins=(), flow=nothing, tally=tally)


def neighbours_of(design: Design, blocks: Blocks, setting: Setting) -> Neighbours:
    """Return which units of a top share a whole side."""
    return _neighbours(design, blocks, setting.units)


def _neighbours(design: Design, blocks: Blocks, units: Sequence[PlacedUnit]) -> Neighbours:
    names = [unit.name for unit in units]
    kinds = {name: blocks.unit(design, name) for name in dict.fromkeys(names)}
    sizes = {name: (float(kind.width), float(kind.height)) for name, kind in kinds.items()}
    return find_neighbours(units, [sizes[name] for name in names])


def _tally(design: Design, blocks: Blocks, units: Sequence[PlacedUnit]) -> dict[str, int]:
    counts = Counter(unit.name for unit in units)
    names = [unit_name(c.code, u.quarter) for c in design.colourways for u in blocks.units(c.recipe)]
    return {name: counts[name] for name in names if counts[name]}
