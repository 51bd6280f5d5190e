"""The picture of the sewn top: every face of cloth that shows, in the quilt's own inches."""

from __future__ import annotations

from quarterturn.blocks import Blocks
from quarterturn.design import Design
from quarterturn.setting.model import Face, Setting


def picture(design: Design, blocks: Blocks, setting: Setting) -> tuple[Face, ...]:
    """Return the faces, the later on top where they overlap: units, then all other cloth, motifs over their panels."""
    sewn = {name: _sewn_faces(design, blocks, name) for name in setting.tally}
    units = [
        Face(face.fabric, unit.motion.region(face.region))
        for unit in setting.units
        for face in sewn[unit.name]
    ]
    return (*units, *(Face(cloth.fabric, cloth.region) for cloth in setting.cloths))


def _sewn_faces(design: Design, blocks: Blocks, name: str) -> tuple[Face, ...]:
    unit = blocks.unit(design, name)
    return tuple(Face(design.cloth(name, layer.part), layer.region) for layer in unit.sewn_layers)
