"""The layers of cloth in the seam allowances of units."""

from __future__ import annotations

from collections.abc import Iterator

from quarterturn.geometry import Point, rectangle
from quarterturn.proof import Pattern, SeamLayers, cut_away_of, seam_layers
from quarterturn.publish.figures.cells import layered, unit_of
from quarterturn.publish.figures.frames import Drawing
from quarterturn.publish.figures.inks import CREASE, DARK, OUTLINE, SMALL, SMALLEST, caption, line, outline
from quarterturn.publish.sheet import Ink, Mark, Scale, Sheet
from quarterturn.publish.wording.units import general_names
from quarterturn.setting import Side

LARGEST = 34.0
ROOM = 5.0
"""Millimetres round a unit for the figures."""
SHORTEST, SHORT = 0.9, 2.4
"""Stretches shorter than the first, in millimetres, bear no figure; those shorter than the second a small one."""
BAND = Ink(stroke=DARK, width=0.3)


def bulk_figures(pattern: Pattern) -> Iterator[Sheet]:
    """Return each unit of general recipes with the layers along its sides; of a recipe those of one colourway."""
    away = cut_away_of(pattern)
    for name in general_names(pattern):
        yield _bulk(pattern, name, seam_layers(pattern, name, away))


def _bulk(pattern: Pattern, name: str, layers: SeamLayers) -> Sheet:
    unit = unit_of(pattern, name)
    seam, width, height = float(unit.seam), float(unit.width), float(unit.height)
    factor = LARGEST / (max(width, height) + 2 * seam)
    scale = Scale(factor, complex(seam, seam) * factor + complex(ROOM, ROOM))
    marks: list[Mark] = [
        *layered(pattern, name, unit.cut_layers, scale, OUTLINE),
        outline(scale.path(rectangle(0, 0, width, height)), CREASE),
    ]
    for side, counts in layers.sides.items():
        for start, end, count in counts:
            marks += _stretch(scale, side, (start, end), count, (width, height), seam)
    across, down = (width + 2 * seam) * factor + 2 * ROOM, (height + 2 * seam) * factor + 2 * ROOM
    notes = [f"unit {name}"]
    if layers.inner:
        notes.append(f"inner seam: {_range([count for _, _, count in layers.inner])} layers")
    marks += [caption(complex(across / 2, down + 2 + 3.4 * k), note, SMALL) for k, note in enumerate(notes)]
    return Drawing(max(across, 33.0), down + 4 + 3.4 * (len(notes) - 1), tuple(marks)).sheet(
        f"Layers at the seams: unit {name}", _described(name, layers)
    )


def _range(counts: list[int]) -> str:
    low, high = min(counts), max(counts)
    return str(low) if low == high else f"{low} to {high}"


def _described(name: str, layers: SeamLayers) -> str:
    said = [
        f"{side.value} {_range([count for _, _, count in counts])}"
        for side, counts in layers.sides.items()
        if counts
    ]
    inner = [count for _, _, count in layers.inner]
    more = f"; where its halves are rejoined {_range(inner)}" if inner else ""
    return f"Unit {name}: the layers of cloth in the allowance of each side: {', '.join(said)}{more}."


def _stretch(
    scale: Scale, side: Side, span: tuple[float, float], count: int, size: tuple[float, float], seam: float
) -> Iterator[Mark]:
    """Return a bracket beside a stretch of a side, and the layers there, where there is room for the figure."""
    upright = side in (Side.LEFT, Side.RIGHT)
    off = {Side.TOP: -seam, Side.LEFT: -seam, Side.RIGHT: size[0] + seam, Side.BOTTOM: size[1] + seam}[side]
    out = -1.0 if side in (Side.TOP, Side.LEFT) else 1.0

    def at(along: float, beyond: float) -> Point:
        place = complex(off, along) if upright else complex(along, off)
        return scale.point(place) + (complex(beyond, 0) if upright else complex(0, beyond))

    start, end = span
    inset = 0.25 / scale.factor
    yield line(at(start + inset, out * 1.0), at(end - inset, out * 1.0), BAND)
    long = (end - start) * scale.factor
    if long >= SHORTEST:
        letters = SMALL if long >= SHORT else SMALLEST
        yield caption(at((start + end) / 2, out * 2.9), str(count), letters, bold=count > 2)
