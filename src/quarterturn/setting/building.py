"""Build the tree of the top from a design: each section once, the root last, noting on the way what does not fit."""

from __future__ import annotations

import cmath
import math

from quarterturn.blocks import Blocks
from quarterturn.design import (
    ROOT,
    Cell,
    Design,
    Finding,
    LineSet,
    MapCell,
    OnPointSet,
    PanelMotif,
    PanelSet,
    SectionCell,
    SectionSet,
    section_key,
)
from quarterturn.design.limits import LARGEST_QUILT
from quarterturn.geometry import EPSILON, Motion, Region, quarter_turns, region_bounds, shift
from quarterturn.measure import Length
from quarterturn.setting.framing import framed
from quarterturn.setting.grids import line_grid, straight_grid
from quarterturn.setting.misfits import Misfits
from quarterturn.setting.on_point import on_point
from quarterturn.setting.tree import Child, Motif, Node, OneUnit, Panel


def build_top(design: Design, blocks: Blocks) -> tuple[Node, tuple[Finding, ...]]:
    """Return the tree of the whole top, and what does not fit; where something does not, its sizes are guesses.

    The maps must name units that the blocks have, and no section may hold itself.
    """
    builder = Builder(design, blocks)
    top = builder.top()
    return top, tuple(builder.notes.findings)


class Builder:
    """Makes nodes, each section's and each unit's once."""

    def __init__(self, design: Design, blocks: Blocks) -> None:
        self.design, self.blocks = design, blocks
        self.notes = Misfits(design.units)
        self.settings = {section.name: section.setting for section in design.sections}
        self._sections: dict[str, Node] = {}
        self._units: dict[str, OneUnit] = {}

    def top(self) -> Node:
        """Return the whole top."""
        for name in self.settings:
            self.section(name)
        bare = self._bare(ROOT, self.design.setting)
        top = framed(self, ROOT, bare, self.design.borders)
        longest = max(top.width, top.height)
        if longest > LARGEST_QUILT:
            sentence = f"The quilt measures {self.notes.show(longest)} along its longer side."
            self.notes.add("quilt-too-large", "setting", sentence, "Use fewer or smaller units.")
        return top

    def section(self, name: str) -> Node:
        """Return a named section with its borders."""
        if name not in self._sections:
            setting = self.settings[name]
            self._sections[name] = framed(self, name, self._bare(name, setting), setting.borders)
        return self._sections[name]

    def sized(self, cell: MapCell) -> Child | None:
        """Return what a place holds; None for plain cloth, which takes its size from its place."""
        if isinstance(cell, Cell):
            return Child(self._unit(cell), cell.turn)
        if isinstance(cell, SectionCell):
            return Child(self.section(cell.section), cell.turn)
        return None

    def _unit(self, cell: Cell) -> OneUnit:
        if cell.name not in self._units:
            unit = self.blocks.unit(self.design, cell.name)
            self._units[cell.name] = OneUnit(cell.name, unit.width, unit.height)
        return self._units[cell.name]

    def _bare(self, name: str, setting: SectionSet) -> Node:
        """Return a section without its borders."""
        if isinstance(setting, OnPointSet):
            return on_point(self, name, setting)
        if isinstance(setting, LineSet):
            return line_grid(self, name, setting)
        if isinstance(setting, PanelSet):
            return self._panel(name, setting)
        return straight_grid(self, name, setting)

    def _panel(self, name: str, setting: PanelSet) -> Panel:
        motifs = tuple(self._motif(motif) for motif in setting.motifs)
        for number, motif in enumerate(motifs):
            box = region_bounds(Region((motif.outline,)))
            right, bottom = box.right - float(setting.width), box.bottom - float(setting.height)
            over = max(-box.left, -box.top, right, bottom)
            if over > EPSILON:
                self._outside(section_key(name, "motifs", number), motif, Length(round(over * 1000), 1000))
        return Panel(name, setting.fabric, setting.width, setting.height, motifs)

    def _motif(self, motif: PanelMotif) -> Motif:
        (shape,) = self.design.recipe(motif.recipe).shapes
        centred = shift(-complex(float(shape.x), float(shape.y)))
        traced = centred.path(self.blocks.master(motif.recipe).shape.traced)
        place = turned_by(motif.degrees).then(Motion(move=complex(float(motif.x), float(motif.y))))
        return Motif(motif.recipe, motif.fabric, place.path(traced))

    def _outside(self, key: str, motif: Motif, over: Length) -> None:
        sentence = f"The {motif.recipe} reaches {self.notes.show(over)} past the edge of its panel."
        remedy = "Move it inwards, or make the panel larger."
        self.notes.add("motif-outside", key, sentence, remedy)


def turned_by(degrees: int) -> Motion:
    """Return a turn clockwise about the origin, exact for quarter turns."""
    if degrees % 90 == 0:
        return quarter_turns(degrees // 90)
    return Motion(cmath.rect(1.0, math.radians(degrees)))
