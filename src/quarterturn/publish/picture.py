"""The picture of the sewn top, as a sheet: true, for it is drawn from the sewn outlines of the units.

Every kind of unit is drawn once, as a symbol about its middle, and laid down with its turn, so that the
drawing of a large quilt stays small. The binding shows outside the top, one seam allowance wide.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Mapping
from dataclasses import dataclass, replace

from quarterturn.blocks import GROUND, SHAPE, Blocks, Unit
from quarterturn.design import HALF_MARK, AnyBorder, Design, PiecedBorder, code_of_unit
from quarterturn.geometry import Motion, Region, rectangle
from quarterturn.publish.sheet import Area, Ink, Mark, Scale, Sheet, Use
from quarterturn.setting import (
    Face,
    Grid,
    OneUnit,
    OnPoint,
    Panel,
    PlacedCloth,
    PlacedUnit,
    PlainCloth,
    Setting,
)

SEAM = "#6f6f6d"
OUTLINE = "#999999"
"""Grey of 40 %, for lines that will be coloured over."""

_BORDERS = ("border strip", "coping strip")
_KINDS = {
    Grid: "sections in rows",
    OnPoint: "squares on point",
    Panel: "a panel",
    OneUnit: "",
    PlainCloth: "",
}

_CLOSING = 0.2
"""Each cloth is outlined this thinly in its own colour, lest the paper show between neighbours on a screen."""


@dataclass(frozen=True, slots=True)
class Look:
    """How the top is drawn: with its colours or not, with thin lines along the seams or not."""

    coloured: bool = True
    seams: bool = True
    line: float = 0.1
    """Width of lines in millimetres."""

    @property
    def passes(self) -> tuple[str, ...]:
        """Return the parts of units to be laid one after the other: all at once (no name), or grounds first."""
        return ("",) if self.seams else (GROUND, SHAPE)

    def ink(self, colour: str) -> Ink:
        """Return the ink of a cloth."""
        if not self.coloured:
            return Ink(None, OUTLINE, self.line)
        if self.seams:
            return Ink(colour, SEAM, self.line)
        return Ink(colour, colour, _CLOSING)


COLOURED = Look()
PLAIN = Look(seams=False)
LINES = Look(coloured=False, line=0.2)


def top_sheet(design: Design, blocks: Blocks, setting: Setting, width: float, look: Look = COLOURED) -> Sheet:
    """Return the picture of the top with its binding, `width` millimetres wide."""
    edge = float(design.making.seam)
    factor = (width - look.line) / (float(setting.width) + 2 * edge)
    corner = edge * factor + look.line / 2
    scale = Scale(factor, complex(corner, corner))
    names = dict.fromkeys(unit.name for unit in setting.units)
    colours = {fabric.letter: fabric.colour for fabric in design.fabrics}
    top = (float(setting.width), float(setting.height))
    marks: list[Mark] = [_binding(scale, top, edge, look.ink(colours[design.binding_fabric]))]
    middles = {name: _middle(blocks.unit(design, name)) for name in names}
    marks += [_laid(unit, middles[unit.name], scale, part) for part in look.passes for unit in setting.units]
    marks += [Area(scale.region(cloth.region), _ink(look, cloth, colours)) for cloth in setting.cloths]
    return Sheet(
        width=width,
        height=float(setting.height) * factor + 2 * corner,
        marks=tuple(marks),
        title=design.title,
        alt=describe_top(design, setting),
        symbols={
            name + part: _unit_marks(design, name, blocks.unit(design, name), factor, look, part)
            for name in names
            for part in look.passes
        },
    )


def faces_sheet(
    faces: Iterable[Face],
    size: tuple[float, float],
    colours: Mapping[str, str],
    width: float,
    title: str,
    look: Look = PLAIN,
) -> Sheet:
    """Return faces of cloth, later ones on top, from a quilt of this size in inches, `width` millimetres wide."""
    scale = Scale(width / size[0])
    marks = tuple(Area(scale.region(face.region), look.ink(colours[face.fabric])) for face in faces)
    return Sheet(width, size[1] * scale.factor, marks, title, f"The faces of cloth in {title}.")


def describe_top(design: Design, setting: Setting) -> str:
    """Describe the picture of the top to someone who cannot see it."""
    counts: Counter[str] = Counter()
    for name, count in setting.tally.items():
        counts[code_of_unit(name)] += count
    kinds = ", ".join(
        f"{count} with {' and '.join(_cloths(design, master) for master in design.masters_of(code))}"
        for code, count in counts.items()
    )
    borders = _described_borders(design)
    return (
        f"The sewn top of {design.title}: {_described_setting(setting)}, {kinds}.{borders}"
        f" Bound in {_name(design, design.binding_fabric)}."
    )


def _described_setting(setting: Setting) -> str:
    """Say how many rows of units there are; where there is more than units, how they are set."""
    centre = setting.centre
    if isinstance(centre, Grid) and all(isinstance(c.node, OneUnit) for row in centre.rows for c in row):
        return f"{len(centre.rows)} × {len(centre.rows[0])} units"
    cloths = Counter(cloth.what for cloth in setting.cloths if cloth.what not in _BORDERS)
    units = f"{len(setting.units)} units" if setting.units else ""
    told = (f"{count} {what}{'s' if count > 1 else ''}" for what, count in cloths.items())
    return ", ".join(part for part in (_KINDS[type(centre)], units, *told) if part)


def _described_borders(design: Design) -> str:
    if not design.borders:
        return ""
    names = ", then ".join(_border_name(design, border) for border in design.borders)
    return f" {'Border' if len(design.borders) == 1 else 'Borders'}, from the inside: {names}."


def _border_name(design: Design, border: AnyBorder) -> str:
    return "pieced strips" if isinstance(border, PiecedBorder) else _name(design, border.fabric)


def _cloths(design: Design, code: str) -> str:
    """Return the fabrics of a master: those of its shapes on that of its ground."""
    way = design.colourway(code)
    shapes = dict.fromkeys(_name(design, letter) for _, letter in way.shapes)
    return f"{', '.join(shapes)} on {_name(design, way.ground)}"


def _name(design: Design, letter: str) -> str:
    return design.fabric(letter).name


def _unit_marks(
    design: Design, name: str, unit: Unit, factor: float, look: Look, part: str
) -> tuple[Mark, ...]:
    """Return a sewn unit, or its grounds or shapes alone, at turn 0 about its middle."""
    scale = Scale(factor, -_middle(unit) * factor)
    return tuple(
        Area(scale.region(layer.region), look.ink(design.fabric(design.cloth(name, layer.part)).colour))
        for layer in unit.sewn_layers
        if not part or (part == GROUND) == (layer.part.rpartition(HALF_MARK)[2] == GROUND)
    )


def _ink(look: Look, cloth: PlacedCloth, colours: Mapping[str, str]) -> Ink:
    """Return the ink of a piece of cloth; in outlines a motif covers the lines of what it lies on."""
    ink = look.ink(colours[cloth.fabric])
    return ink if look.coloured or cloth.what != "motif" else replace(ink, fill="#ffffff")


def _middle(unit: Unit) -> complex:
    return complex(float(unit.width), float(unit.height)) / 2


def _laid(unit: PlacedUnit, middle: complex, scale: Scale, part: str) -> Use:
    return Use(unit.name + part, Motion(unit.motion.factor, scale.point(unit.motion(middle))))


def _binding(scale: Scale, top: tuple[float, float], edge: float, ink: Ink) -> Area:
    """Return the binding's band round the top."""
    outer = rectangle(-edge, -edge, top[0] + edge, top[1] + edge)
    return Area(scale.region(Region((outer, rectangle(0, 0, *top).reversed()))), ink)
