"""The quilt top walked through anew: every unit and every piece of cloth, from the design alone.

What lies where is found by adding up the places of each map, section in section. Nothing is asked of the setting.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from functools import lru_cache

from quarterturn.design import (
    AnyBorder,
    ClothCell,
    Coping,
    Corner,
    Design,
    LineSet,
    MapCell,
    OnPointSet,
    PanelMotif,
    PanelSet,
    PiecedBorder,
    SectionCell,
    SectionSet,
    StraightSet,
    Strip,
    dotted,
)
from quarterturn.geometry import Motion
from quarterturn.measure import Length
from quarterturn.proof.checks.laying import (
    BORDER,
    COPING,
    CORNERSTONE,
    EIGHTH,
    PANEL,
    ROOT,
    SQUARE,
    STRIP,
    UNIT,
    Leaf,
    Leaves,
    Spot,
    cloth,
    mitred_strips,
    moved,
    sashes,
    slanting,
    slanting_sashes,
    starts_of,
    strips,
    strips_between_corners,
    triangles,
    turned_about,
    turned_further,
)
from quarterturn.proof.checks.mapping import key_of_row, map_of
from quarterturn.proof.checks.sizing import Size, Sizes, sash_width


@lru_cache(maxsize=2)
def leaves_of(design: Design) -> tuple[Leaf, ...]:
    """Return every unit and every piece of cloth of the quilt top, motifs aside."""
    walk = _Walk(design)
    return tuple(walk.framed(design.setting, design.borders, Spot(ROOT, "setting"), Motion()))


@lru_cache(maxsize=2)
def units_of(design: Design) -> tuple[Leaf, ...]:
    """Return every unit of the quilt top."""
    return tuple(leaf for leaf in leaves_of(design) if leaf.what == UNIT)


def cloths_of(design: Design) -> tuple[Leaf, ...]:
    """Return every plain piece of cloth of the quilt top."""
    return tuple(leaf for leaf in leaves_of(design) if leaf.what != UNIT)


def motifs_of(design: Design) -> Iterator[tuple[Leaf, PanelMotif]]:
    """Return each motif with the panel on which it lies."""
    for leaf in cloths_of(design):
        if leaf.what == PANEL:
            panel = panel_of(design, leaf.section)
            yield from ((leaf, motif) for motif in panel.motifs)


def settings_of(design: Design) -> Iterator[tuple[str, SectionSet]]:
    """Return the root and every section, each with its key in the file."""
    yield "setting", design.setting
    for section in design.sections:
        yield dotted("sections", section.name), section.setting


def panel_of(design: Design, section: str) -> PanelSet:
    """Return the panel that a section is."""
    settings = {ROOT: design.setting} | {each.name: each.setting for each in design.sections}
    panel = settings[section]
    assert isinstance(panel, PanelSet)
    return panel


class _Walk:
    """A walk through a design, which adds up each section's size once."""

    def __init__(self, design: Design) -> None:
        self.sizes = Sizes(design)

    def framed(self, setting: SectionSet, borders: Sequence[AnyBorder], spot: Spot, at: Motion) -> Leaves:
        """Walk through a section and the borders round it; `at` brings its outer top left corner to its place."""
        size = self.sizes.inside(setting)
        outer = self.sizes.bordered(size, borders)
        inset = (outer[0] - size[0]) / 2, (outer[1] - size[1]) / 2
        yield from self._inside(setting, spot, moved(at, *inset))
        for number, border in enumerate(borders):
            depth = self.sizes.depths(size, border)
            size = size[0] + 2 * depth[0], size[1] + 2 * depth[1]
            inset = inset[0] - depth[0], inset[1] - depth[1]
            key = "borders" if spot.section == ROOT else dotted("sections", spot.section, "borders")
            ring = Spot(spot.section, dotted(key, number), number)
            yield from self._border(border, size, depth, ring, moved(at, *inset))

    def _inside(self, setting: SectionSet, spot: Spot, at: Motion) -> Leaves:
        if isinstance(setting, PanelSet):
            yield cloth(PANEL, setting.fabric, (setting.width, setting.height), spot, at)
        elif isinstance(setting, LineSet):
            yield from self._line(setting, spot, at)
        elif isinstance(setting, OnPointSet):
            yield from self._on_point(setting, spot, at)
        else:
            yield from self._straight(setting, spot, at)

    def _cell(self, cell: MapCell, room: Size, spot: Spot, at: Motion) -> Leaves:
        """Walk through what fills a place whose top left corner `at` brings to the top."""
        if isinstance(cell, ClothCell):
            yield cloth(SQUARE, cell.fabric, room, spot, at)
            return
        laid = turned_about(self.sizes.cell(cell), cell.turn).then(at)
        if isinstance(cell, SectionCell):
            setting = self.sizes.settings[cell.section]
            inner = Spot(cell.section, dotted("sections", cell.section))
            yield from self.framed(setting, setting.borders, inner, laid)
        else:
            yield Leaf(
                UNIT, cell.name, self.sizes.cell(cell), laid, cell.turn, spot.section, spot.row, spot.column,
                spot.key,
            )  # fmt: skip

    def _straight(self, setting: StraightSet, spot: Spot, at: Motion) -> Leaves:
        rows = map_of(setting)
        widths, heights = self.sizes.places(rows)
        lefts, tops = (starts_of(sizes, setting.sashing) for sizes in (widths, heights))
        for r, row in enumerate(rows):
            key = key_of_row(setting, spot.key, r)
            for c, cell in enumerate(row):
                place = Spot(spot.section, key, r, c)
                yield from self._cell(cell, (widths[c], heights[r]), place, moved(at, lefts[c], tops[r]))
        if setting.sashing:
            yield from sashes(setting.sashing, widths, heights, Spot(spot.section, f"{spot.key}.sashing"), at)

    def _line(self, setting: LineSet, spot: Spot, at: Motion) -> Leaves:
        across, start = self.sizes.across(setting), Length(0)
        for number, (part, along) in enumerate(zip(setting.parts, self.sizes.along(setting), strict=True)):
            room = (across, along) if setting.below else (along, across)
            row, column = (number, 0) if setting.below else (0, number)
            place = Spot(spot.section, f"{spot.key}.parts.{number}", row, column)
            here = moved(at, *((0, start) if setting.below else (start, 0)))
            if isinstance(part, Strip):
                yield cloth(STRIP, part.fabric, room, place, here)
            else:
                yield from self._cell(part, room, place, here)
            start += along

    def _on_point(self, setting: OnPointSet, spot: Spot, at: Motion) -> Leaves:
        """Walk through cells, sashing and triangles; the cells are counted along the two slanting ways."""
        side, pitch = self.sizes.side(setting), self.sizes.pitch(setting)
        sash = sash_width(setting)
        places = dict(slanting(setting))
        # The slanting frame begins at the middle of the place before the first of the middle slanting row.
        start = float(setting.float) + float(sash) / math.sqrt(2)
        slanted = Motion(EIGHTH, complex(start, start)).then(at)
        for (along, down), (cell, name, row, column) in places.items():
            place = Spot(spot.section, f"{spot.key}.{name}.{row // 2}", row, column)
            corner = along * pitch - side / 2, down * pitch - side / 2
            yield from self._cell(cell, (side, side), place, moved(slanted, *corner))
        if setting.sashing:
            here = Spot(spot.section, f"{spot.key}.sashing")
            yield from slanting_sashes(setting.sashing, set(places), side, here, slanted)
        yield from triangles(setting, side, pitch, spot, at)

    def _border(self, border: AnyBorder, outer: Size, depth: Size, spot: Spot, at: Motion) -> Leaves:
        if isinstance(border, PiecedBorder):
            yield from self._pieced(border, outer, depth, spot, at)
        elif isinstance(border, Coping):
            yield from strips(COPING, border.fabric, outer, depth, border.sides_first, spot, at)
        elif border.corner is Corner.MITRED:
            yield from mitred_strips(border, outer, spot, at)
        elif border.corner is Corner.CORNERSTONES:
            yield from strips_between_corners(border, outer, spot, at)
        else:
            yield from strips(BORDER, border.fabric, outer, depth, border.sides_first, spot, at)

    def _pieced(self, border: PiecedBorder, outer: Size, depth: Size, spot: Spot, at: Motion) -> Leaves:
        (width, height), (side, end) = outer, depth
        through = border.corners is None
        # Where no corners are set in, the pair sewn second covers the ends of the first.
        top = Length(0) if through and not border.sides_first else end
        left = Length(0) if through and border.sides_first else side
        places = (
            (border.sides, Length(0), top, (side, height - 2 * top)),
            (border.sides, width - side, top, (side, height - 2 * top)),
            (border.ends, left, Length(0), (width - 2 * left, end)),
            (border.ends, left, height - end, (width - 2 * left, end)),
        )
        for number, (cell, x, y, room) in enumerate(places):
            again = SectionCell(cell.section, (cell.turn + 2 * (number % 2)) % 4)
            yield from self._cell(again, room, spot, moved(at, x, y))
        if border.corners is not None:
            corners = (
                (Length(0), Length(0)), (width - side, Length(0)), (width - side, height - end),
                (Length(0), height - end),
            )  # fmt: skip
            for turn, (x, y) in enumerate(corners):
                here = moved(at, x, y)
                if isinstance(border.corners, ClothCell):
                    yield cloth(CORNERSTONE, border.corners.fabric, depth, spot, here)
                else:
                    yield from self._cell(turned_further(border.corners, turn), depth, spot, here)
