"""The picture of the sewn top: every face of cloth that shows, in the quilt's own inches."""

from __future__ import annotations

from quarterturn.blocks import Blocks, turned_about_centre
from quarterturn.design import Design
from quarterturn.geometry import Region, rectangle, shift
from quarterturn.setting.model import BorderStrip, Face, PlacedUnit, Setting


def picture(design: Design, blocks: Blocks, setting: Setting) -> tuple[Face, ...]:
    """Return the faces, the later on top where they overlap: units row by row, then borders."""
    sewn = {kind: _sewn_faces(design, blocks, *kind) for kind in {(u.name, u.turn) for u in setting.units}}
    units = [
        Face(face.fabric, shift(_place(setting, unit)).region(face.region))
        for unit in setting.units
        for face in sewn[unit.name, unit.turn]
    ]
    return (*units, *(Face(strip.fabric, _strip_region(strip)) for strip in setting.borders))


def _sewn_faces(design: Design, blocks: Blocks, name: str, turn: int) -> tuple[Face, ...]:
    unit = blocks.unit(design, name)
    motion = turned_about_centre(unit, turn)
    return tuple(
        Face(design.cloth(name, layer.part), motion.region(layer.region)) for layer in unit.sewn_layers
    )


def _place(setting: Setting, unit: PlacedUnit) -> complex:
    right, below = setting.corner(unit.row, unit.column)
    return complex(float(setting.centre_left + right), float(setting.centre_top + below))


def _strip_region(strip: BorderStrip) -> Region:
    left, top = float(strip.left), float(strip.top)
    right, bottom = float(strip.left + strip.width), float(strip.top + strip.height)
    return Region((rectangle(left, top, right, bottom),))
