"""What would make two edges fit: another finished size, more or fewer units, or coping strips."""

from __future__ import annotations

from typing import TYPE_CHECKING

from quarterturn.design import Cell, MapCell, SectionCell, StraightSet, Symmetry
from quarterturn.measure import INCH, MM, Length, Units, is_on_ruler, round_up

if TYPE_CHECKING:
    from quarterturn.setting.building import Builder


NARROWEST = INCH / 4
"""No strip is sewn that finishes narrower (common practice, no source)."""

TURNED = {"width": "height", "height": "width"}


def remedy_for(builder: Builder, cell: MapCell, measure: str, size: Length, wanted: Length) -> str:
    """Return what brings the smaller of two things to the width or height of the larger."""
    show, strip = builder.notes.show, (wanted - size) / 2
    if isinstance(cell, Cell):
        ways = _other_units(builder, cell, measure, wanted)
        if strip >= NARROWEST:
            ways.append(f"put the unit into a section with coping strips of {show(strip)}")
    else:
        assert isinstance(cell, SectionCell), "plain cloth fits every place"
        upright = measure if cell.turn % 2 == 0 else TURNED[measure]
        ways = [
            *_more_units(builder, cell.section, upright, wanted),
            _coping(builder, cell, upright, size, wanted),
        ]
    sentence = ", or ".join(ways)
    return f"{sentence[0].upper()}{sentence[1:]}."


def _other_units(builder: Builder, cell: Cell, measure: str, wanted: Length) -> list[str]:
    """Return how units would fit: turned, or finished otherwise."""
    show, child = builder.notes.show, builder.sized(cell)
    assert child is not None, "a unit has a size"
    if child.width == child.height:
        recipe = builder.design.colourway(cell.code).recipe
        return [f"let the units of recipe {recipe} finish at {show(wanted)}"]
    turned = [f"turn `{cell.name}` by a quarter"] if getattr(child, TURNED[measure]) == wanted else []
    upright = measure if cell.turn % 2 == 0 else TURNED[measure]
    return [*turned, f"let `{cell.name}` finish {show(wanted)} {'wide' if upright == 'width' else 'high'}"]


def _coping(builder: Builder, cell: SectionCell, measure: str, size: Length, wanted: Length) -> str:
    """Return which coping would do: none narrower than can be sewn."""
    show, name = builder.notes.show, cell.section
    if (wanted - size) / 2 < NARROWEST:
        larger = _rounded_up(wanted + 2 * NARROWEST, builder.design.units)
        return f'bring both to {show(larger)}, each with a border of kind "coping"'
    node = builder.section(name)
    other: Length = getattr(node, TURNED[measure])
    if not is_on_ruler(other, builder.design.units):
        other = _rounded_up(other + 2 * NARROWEST, builder.design.units)
    width, height = (wanted, other) if measure == "width" else (other, wanted)
    return (
        f'put a border of kind "coping" round `{name}` that brings it to {show(width)} × {show(height)}, '
        f"in strips of {show((wanted - size) / 2)}"
    )


def _rounded_up(size: Length, units: Units) -> Length:
    return round_up(size, INCH if units is Units.INCH else 10 * MM)


def _repeats(setting: StraightSet, measure: str, wanted: Length) -> str:
    """Return the number of repeats that gives so many rows or columns, in brackets, where there is a whole one."""
    map_size = len(setting.cells) if measure == "height" else len(setting.cells[0])
    if wanted % map_size:
        return ""
    return f" ({'down' if measure == 'height' else 'across'} = {wanted // map_size})"


def shorter_ways(builder: Builder, cell: SectionCell, measure: str, wanted: Length) -> list[str]:
    """Return what would make a section as short as is wanted."""
    upright = measure if cell.turn % 2 == 0 else TURNED[measure]
    return _more_units(builder, cell.section, upright, wanted) or [f"make `{cell.section}` shorter"]


def _more_units(builder: Builder, name: str, measure: str, wanted: Length) -> list[str]:
    """Return how many rows or columns would do, or what each should finish at, where all of a section are alike."""
    setting = builder.settings[name]
    if not isinstance(setting, StraightSet) or setting.sashing or setting.borders:
        return []
    rows = setting.rows()
    children = [child for row in rows for cell in row if (child := builder.sized(cell))]
    sizes = {child.width if measure == "width" else child.height for child in children}
    if len(sizes) != 1:
        return []
    (each,), count = sizes, len(rows) if measure == "height" else len(rows[0])
    word, show = ("rows" if measure == "height" else "columns"), builder.notes.show
    if wanted % each == 0 and setting.symmetry is Symmetry.SLIDE:
        return [
            f"give `{name}` {wanted // each} {word} instead of {count}{_repeats(setting, measure, wanted / each)}"
        ]
    if not is_on_ruler(wanted / count, builder.design.units):
        return []
    return [f"let what stands in `{name}` finish at {show(wanted / count)} instead of {show(each)}"]
