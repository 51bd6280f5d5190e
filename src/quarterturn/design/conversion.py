"""From the shape of the file to a `Design`: defaults filled in, each part held against the others."""

from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any

from quarterturn.design import limits
from quarterturn.design.cloth import check_count, read_fabrics
from quarterturn.design.colourways import known, read_colourways
from quarterturn.design.defaults import BINDING_WIDTH
from quarterturn.design.habits import read_count, read_house, read_making
from quarterturn.design.keys import dotted
from quarterturn.design.map_sizes import check_sizes
from quarterturn.design.maps import MAP, check_symmetry, read_map
from quarterturn.design.model import Border, Design, StraightSet, Symmetry
from quarterturn.design.notes import Notes
from quarterturn.design.recipe_reading import read_recipes
from quarterturn.design.upright import with_pieces_apart
from quarterturn.design.words import LONGEST_TEXT, read_name, read_text, refer
from quarterturn.measure import Length

if TYPE_CHECKING:
    from quarterturn.design.file import BorderTable, DesignFile, SettingTable

_NEEDED = {
    "units": 'Write units = "inch" or units = "metric".',
    "fabrics": "Add a table [fabrics.A] with a name and a colour.",
    "recipes": "Add a table [recipes.circle] with kind, finished and shape.",
    "colourways": "Add a table [colourways.a] with recipe, ground and shape.",
    "setting": "Add a table [setting] with kind and map.",
    "binding": "Add a table [binding] with the letter of its fabric.",
    "backing": "Add a table [backing] with the letter of its fabric.",
}


def convert(file: DesignFile, written: Mapping[str, Any], notes: Notes) -> Design | None:
    """Return the design, or None where a finding stops it.

    `written` is the data with its faults: a fabric that has a fault of its own is not unknown for that.
    """
    for key, remedy in _NEEDED.items():
        if not getattr(file, key):
            notes.missing(key, remedy)
    letters, names, codes = (_keys(written.get(each)) for each in ("fabrics", "recipes", "colourways"))
    title = read_name(file.title, "title", 'Give the quilt a name: title = "…".', notes)
    maker, number, version, date, contact = (
        read_text(_words(getattr(file, each)), each, notes)
        for each in ("maker", "number", "version", "date", "contact")
    )
    making = read_making(file.making, notes)
    fabrics = read_fabrics(file.fabrics, making.usable_width, notes)
    recipes, rejoined = read_recipes(file.recipes, making.seam, notes)
    colourways = read_colourways(file.colourways, known((letters, names, codes), recipes, rejoined), notes)
    setting = _read_setting(file.setting, codes, notes)
    borders = _read_borders(file.borders, letters, notes)
    binding, binding_width, backing = _read_finish(file, letters, notes)
    design = Design(
        title=title,
        maker=maker,
        units=notes.units,
        number=number,
        version=version,
        date=date,
        contact=contact,
        about=read_text(file.about, "about", notes, LONGEST_TEXT),
        fabrics=fabrics,
        recipes=recipes,
        colourways=colourways,
        setting=setting,
        borders=borders,
        binding_fabric=binding,
        binding_width=binding_width,
        backing_fabric=backing,
        making=making,
        house=read_house(file.house, any(fabric.price is not None for fabric in fabrics), notes),
        rejoined=rejoined,
    )
    if not notes.stops():
        _check_whole(design, notes)
    return None if notes.stops() else with_pieces_apart(design)


def _keys(table: object) -> list[str]:
    return list(table) if isinstance(table, dict) else []


def _words(value: object) -> str | None:
    return None if value is None else str(value)


def _read_setting(table: SettingTable | None, codes: list[str], notes: Notes) -> StraightSet:
    if table is None:
        return StraightSet((), 1, 1)
    if table.kind is None:
        notes.missing("setting.kind", 'Write kind = "straight".')
    if table.map is None:
        notes.missing(MAP, 'Write map = """, then a line for each row, then """.')
    setting = StraightSet(
        cells=() if table.map is None or not codes else read_map(table.map, codes, notes),
        across=read_count(table.across, "setting.across", 1, limits.MOST_ROWS, notes),
        down=read_count(table.down, "setting.down", 1, limits.MOST_ROWS, notes),
        symmetry=Symmetry(table.symmetry) if table.symmetry else Symmetry.SLIDE,
    )
    check_symmetry(setting, notes)
    return setting


def _read_borders(tables: list[BorderTable] | None, letters: list[str], notes: Notes) -> tuple[Border, ...]:
    numbered = {str(index): table for index, table in enumerate(tables or [])}
    borders = []
    for index, table in check_count(numbered, "borders", limits.MOST_BORDERS, notes):
        key = dotted("borders", index)
        fabric = refer(table.fabric, f"{key}.fabric", "fabric", letters, notes)
        width = notes.length(table.width, f"{key}.width", limits.BORDER)
        if table.width is None:
            notes.missing(f"{key}.width", "Give its finished width.")
        if width is not None:
            borders.append(Border(fabric, width, table.first != "ends"))
    return tuple(borders)


def _read_finish(file: DesignFile, letters: list[str], notes: Notes) -> tuple[str, Length, str]:
    """Return the fabric and the width of the binding, and the fabric of the backing."""
    binding = backing = ""
    width = None
    if file.binding:
        binding = refer(file.binding.fabric, "binding.fabric", "fabric", letters, notes)
        width = notes.length(file.binding.width, "binding.width", limits.BINDING)
    if file.backing:
        backing = refer(file.backing.fabric, "backing.fabric", "fabric", letters, notes)
    return binding, width or BINDING_WIDTH[notes.units], backing


def _check_whole(design: Design, notes: Notes) -> None:
    """Check what can be seen only once every part is there."""
    down, across = design.setting.size
    if max(down, across) > limits.MOST_ROWS:
        notes.add(
            "map-too-large",
            "setting",
            f"With its repeats the map has {down} rows of {across} units.",
            f"Keep to {limits.MOST_ROWS} each way.",
        )
        return
    check_sizes(design, notes)
