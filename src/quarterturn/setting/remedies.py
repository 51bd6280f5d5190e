"""What would make two edges fit: another finished size, more or fewer units, or coping strips."""

from __future__ import annotations

from typing import TYPE_CHECKING

from quarterturn.design import Cell, MapCell, SectionCell, StraightSet, Symmetry
from quarterturn.measure import Length

if TYPE_CHECKING:
    from quarterturn.setting.building import Builder


def remedy_for(builder: Builder, cell: MapCell, measure: str, size: Length, wanted: Length) -> str:
    """Return what brings the smaller of two things to the width or height of the larger."""
    show = builder.notes.show
    if isinstance(cell, Cell):
        recipe = builder.design.colourway(cell.code).recipe
        return (
            f"Let the units of recipe {recipe} finish at {show(wanted)}, or put the unit into a section "
            f"with coping strips of {show((wanted - size) / 2)}."
        )
    assert isinstance(cell, SectionCell), "plain cloth fits every place"
    upright = measure if cell.turn % 2 == 0 else {"width": "height", "height": "width"}[measure]
    ways = [
        *_more_units(builder, cell.section, upright, wanted),
        f'put a border of kind "coping" round `{cell.section}`, whose strips are then {show((wanted - size) / 2)} wide',
    ]
    sentence = ", or ".join(ways)
    return f"{sentence[0].upper()}{sentence[1:]}."


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
        return [f"give `{name}` {wanted // each} {word} instead of {count}"]
    return [f"let what stands in `{name}` finish at {show(wanted / count)} instead of {show(each)}"]
