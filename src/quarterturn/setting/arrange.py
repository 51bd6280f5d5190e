"""Put the units in place, and the borders round them."""

from __future__ import annotations

from collections import Counter

from quarterturn.blocks import Blocks, turned_size
from quarterturn.design import Design, unit_name
from quarterturn.measure import Length
from quarterturn.setting.flow import follow_curves
from quarterturn.setting.joins import find_joins
from quarterturn.setting.model import BorderStrip, PlacedUnit, Setting, Side


def arrange(design: Design, blocks: Blocks) -> Setting:
    """Return the quilt top of a design: units by its map, borders in order of sewing, joins of all neighbours."""
    units = _placed(design)
    rows, columns = units[-1].row + 1, units[-1].column + 1
    sizes = [turned_size(blocks.unit(design, unit.name), unit.turn) for unit in units]
    widths = tuple(width for width, _ in sizes[:columns])
    heights = tuple(height for _, height in sizes[::columns])
    width, height = sum(widths, Length(0)), sum(heights, Length(0))
    margin = sum((b.width for b in design.borders), Length(0))
    return Setting(
        rows=rows,
        columns=columns,
        widths=widths,
        heights=heights,
        units=units,
        borders=_borders(design, width, height),
        centre_width=width,
        centre_height=height,
        centre_left=margin,
        centre_top=margin,
        width=width + 2 * margin,
        height=height + 2 * margin,
        joins=find_joins(design, blocks, units, columns),
        flow=follow_curves(design, blocks, units, columns),
        tally=_tally(design, blocks, units),
    )


def _placed(design: Design) -> tuple[PlacedUnit, ...]:
    return tuple(
        PlacedUnit(row, column, cell.code, cell.turn, cell.quarter)
        for row, cells in enumerate(design.setting.rows())
        for column, cell in enumerate(cells)
    )


def _tally(design: Design, blocks: Blocks, units: tuple[PlacedUnit, ...]) -> dict[str, int]:
    counts = Counter(unit.name for unit in units)
    names = [unit_name(c.code, u.quarter) for c in design.colourways for u in blocks.units(c.recipe)]
    return {name: counts[name] for name in names if counts[name]}


def _borders(design: Design, width: Length, height: Length) -> tuple[BorderStrip, ...]:
    """Lay butted borders round a centre of this size, the innermost first, each pair in its order of sewing."""
    strips: list[BorderStrip] = []
    near = sum((b.width for b in design.borders), Length(0))
    for ring, border in enumerate(design.borders):
        depth, far_x, far_y = border.width, near + width, near + height
        outer = near - depth
        # The pair sewn first has the length of the top as it is; the other pair covers its ends.
        upright = (near, height) if border.sides_first else (outer, height + 2 * depth)
        level = (outer, width + 2 * depth) if border.sides_first else (near, width)
        sides = [
            BorderStrip(ring, Side.LEFT, border.fabric, outer, upright[0], depth, upright[1]),
            BorderStrip(ring, Side.RIGHT, border.fabric, far_x, upright[0], depth, upright[1]),
        ]
        ends = [
            BorderStrip(ring, Side.TOP, border.fabric, level[0], outer, level[1], depth),
            BorderStrip(ring, Side.BOTTOM, border.fabric, level[0], far_y, level[1], depth),
        ]
        strips += sides + ends if border.sides_first else ends + sides
        near, width, height = outer, width + 2 * depth, height + 2 * depth
    return tuple(strips)
