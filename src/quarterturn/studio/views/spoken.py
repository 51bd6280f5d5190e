"""What a unit is called for someone who hears the page: its shapes and its cloth, in words."""

from __future__ import annotations

from quarterturn.blocks import Blocks
from quarterturn.design import GROUND, HALF_MARK, Design, code_of_unit, quarter_of_unit

_PIECES = {
    "tl": "top left quarter",
    "tr": "top right quarter",
    "br": "bottom right quarter",
    "bl": "bottom left quarter",
    "lh": "left half",
    "rh": "right half",
    "th": "top half",
    "bh": "bottom half",
    "tt": "top triangle",
    "rt": "right triangle",
    "bt": "bottom triangle",
    "lt": "left triangle",
}


def spoken_unit(design: Design, blocks: Blocks, name: str, called: str | None = None) -> str:
    """Return what a unit looks like: `lantern of lamplight on oyster, top left quarter`.

    `called` is the quarter by which a map calls it, where that is another than its own.
    """
    code, quarter = code_of_unit(name), quarter_of_unit(name) if called is None else called
    unit = blocks.unit(design, name)
    parts = tuple(dict.fromkeys(layer.part for layer in reversed(unit.sewn_layers)))
    grounds = [part for part in parts if part.rpartition(HALF_MARK)[2] == GROUND]
    above = [part for part in parts if part not in grounds]
    on, over = (_cloths(design, name, some) for some in (grounds, above))
    recipe = design.colourway(code).recipe
    said = f"{recipe} of {over} on {on}" if above else f"{recipe}, {on}"
    return f"{said}, {_PIECES.get(quarter, f'piece {quarter}')}" if quarter else said


def _cloths(design: Design, name: str, parts: list[str]) -> str:
    letters = dict.fromkeys(design.cloth(name, part) for part in parts)
    names = [design.fabric(letter).name for letter in letters]
    return " and ".join((", ".join(names[:-1]), names[-1])) if len(names) > 1 else "".join(names)
