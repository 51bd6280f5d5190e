"""Random trees of sections that fit together, for laws that hold for every quilt top."""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import replace
from fractions import Fraction

from hypothesis import strategies as st

from quarterturn.blocks import Blocks, draft_blocks
from quarterturn.design import (
    AnyBorder,
    Border,
    Cell,
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
    Sashing,
    Section,
    SectionCell,
    SectionSet,
    StraightSet,
    Strip,
    Symmetry,
    TriangleFit,
)
from quarterturn.measure import Length, inches
from quarterturn.setting.building import Builder
from quarterturn.setting.tree import Node
from tests.samples import ROUNDS, design_of

PLAIN = replace(design_of(ROUNDS), borders=())
"""Units of 2" in two colourways, fabrics A, B and C."""
BLOCKS: Blocks = draft_blocks(PLAIN)
UNIT = inches(2)


def room_for(*sizes: Length) -> Length:
    """Return whole inches to which each of these sizes can be coped: by nothing, or by strips of ¼" at least."""
    whole = math.ceil(max(sizes))
    while any(0 < whole - size < inches(0, 1, 2) for size in sizes):
        whole += 1
    return Fraction(whole)


class Growing:
    """A design to which sections are added one by one, each held only by later ones."""

    def __init__(self, draw: st.DrawFn) -> None:
        self.draw = draw
        self.sections: list[Section] = []

    def number(self, least: int, most: int) -> int:
        return self.draw(st.integers(least, most))

    def fabric(self) -> str:
        return self.draw(st.sampled_from("ABC"))

    def add(self, setting: SectionSet) -> SectionCell:
        """Add a section and return what a map calls it, unturned."""
        name = f"s{'abcdefghijklmnopqrstuvwxyz'[len(self.sections)] * 2}"
        self.sections.append(Section(name, setting))
        return SectionCell(name, 0)

    def node(self, cell: SectionCell) -> Node:
        """Return the node of a section, as the program builds it."""
        return Builder(replace(PLAIN, sections=tuple(self.sections)), BLOCKS).section(cell.section)

    def coped(self, cell: SectionCell, width: Length, height: Length) -> SectionCell:
        """Return a section with coping strips that bring it to a size; itself where it has that size."""
        node = self.node(cell)
        if (node.width, node.height) == (width, height):
            return cell
        coping = Coping(self.fabric(), width, height, self.draw(st.booleans()))
        for k, section in enumerate(self.sections):
            if section.name == cell.section:
                setting = replace(section.setting, borders=(*section.setting.borders, coping))
                self.sections[k] = Section(section.name, setting)
        return cell

    def grow(self, depth: int) -> SectionCell:
        """Add a section of any kind that holds others down to a depth, and return it."""
        kinds: list[Callable[[int], SectionSet]] = [self.units, self.panel]
        if depth:
            kinds += [self.grid, self.line, self.on_point, self.on_point]
        setting = self.draw(st.sampled_from(kinds))(depth)
        cell = self.add(setting)
        if self.draw(st.booleans()):
            borders = self.borders(cell)
            self.sections[-1] = Section(cell.section, replace(self.sections[-1].setting, borders=borders))
        return cell

    def unit(self) -> Cell:
        return Cell(self.draw(st.sampled_from("ab")), self.number(0, 3))

    def units(self, depth: int) -> StraightSet:
        rows, columns = self.number(1, 3), self.number(1, 3)
        cells: list[list[MapCell]] = [[self.unit() for _ in range(columns)] for _ in range(rows)]
        if rows > 1 and columns > 1:
            cells[0][columns - 1] = ClothCell(self.fabric())
        laid = tuple(map(tuple, cells))
        if rows == columns and self.draw(st.booleans()):
            return StraightSet(
                laid, self.number(1, 2), 1, self.draw(st.sampled_from(Symmetry)), self.sashing()
            )
        return StraightSet(laid, self.number(1, 2), self.number(1, 2), sashing=self.sashing())

    def sashing(self) -> Sashing | None:
        if self.draw(st.booleans()):
            return None
        stone = self.draw(st.sampled_from(["", "A", "C"]))
        return Sashing(self.fabric(), inches(1), stone, self.draw(st.booleans()))

    def panel(self, depth: int) -> PanelSet:
        width, height = inches(self.number(7, 9)), inches(self.number(7, 9))
        motif = PanelMotif("round", self.fabric(), width / 2, height / 2, self.number(0, 359))
        return PanelSet(self.fabric(), width, height, (motif,) * self.number(0, 1))

    def grid(self, depth: int) -> StraightSet:
        held = self.grow(depth - 1)
        node = self.node(held)
        turns = range(4) if node.width == node.height else (0, 2)
        rows, columns = self.number(1, 2), self.number(1, 2)
        cells = tuple(
            tuple(replace(held, turn=self.draw(st.sampled_from(turns))) for _ in range(columns))
            for _ in range(rows)
        )
        return StraightSet(cells, 1, self.number(1, 2), sashing=self.sashing())

    def line(self, depth: int) -> LineSet:
        held = [self.grow(depth - 1) for _ in range(self.number(1, 2))]
        below = self.draw(st.booleans())
        nodes = [self.node(cell) for cell in held]
        across = room_for(*(node.width if below else node.height for node in nodes))
        parts: list[MapCell | Strip] = [
            self.coped(cell, *(across, node.height) if below else (node.width, across))
            for cell, node in zip(held, nodes, strict=True)
        ]
        return LineSet((*parts, Strip(self.fabric(), inches(3, 1, 2))), below)

    def on_point(self, depth: int) -> OnPointSet:
        held = self.grow(depth - 1)
        node = self.node(held)
        side = room_for(node.width, node.height)
        held = self.coped(held, side, side)
        rows, columns = self.number(1, 3), self.number(1, 3)

        choices: list[MapCell] = [ClothCell("A"), *(replace(held, turn=turn) for turn in range(4))]

        def place() -> MapCell:
            return self.draw(st.sampled_from(choices))

        cells = [[place() for _ in range(columns)] for _ in range(rows)]
        cells[0][0] = held
        between = tuple(tuple(place() for _ in range(columns - 1)) for _ in range(rows - 1))
        fit = self.draw(st.sampled_from(TriangleFit))
        over = inches(0, 3, 8) if fit is TriangleFit.OVERSIZED else inches(0)
        sashing = self.sashing()
        if sashing:
            sashing = Sashing(sashing.fabric, sashing.width, sashing.cornerstone or "B", True)
        laid = tuple(map(tuple, cells))
        return OnPointSet(laid, between, self.fabric(), self.fabric(), fit, over, sashing)

    def borders(self, cell: SectionCell) -> tuple[AnyBorder, ...]:
        kind = self.draw(st.sampled_from(["plain", "mitred", "cornerstones", "coping", "pieced", "pieced"]))
        first = self.draw(st.booleans())
        if kind == "plain":
            return (Border(self.fabric(), inches(1), first),)
        if kind in ("mitred", "cornerstones"):
            stone = self.fabric() if kind == "cornerstones" else ""
            return (Border(self.fabric(), inches(1, 1, 2), first, Corner(kind), stone),)
        node = self.node(cell)
        width, height = (2 * Fraction(math.ceil(size / 2)) + 2 for size in (node.width, node.height))
        coping = Coping(self.fabric(), width, height, first)
        if kind == "coping":
            return (coping,)
        corners = self.draw(st.sampled_from([None, ClothCell("C"), Cell("b", 1)]))
        longer = Fraction(0) if corners else 2 * UNIT
        down = (height + (0 if first else longer)) / UNIT
        across = (width + (longer if first else 0)) / UNIT
        sides = self.strip(StraightSet(((self.unit(),),), 1, int(down)))
        ends = self.strip(StraightSet(((self.unit(),),), int(across), 1))
        return (coping, PiecedBorder(sides, ends, corners, first))

    def strip(self, setting: StraightSet) -> SectionCell:
        """Add the section of a pieced strip before the one that is to hold it."""
        cell = self.add(setting)
        self.sections.insert(len(self.sections) - 2, self.sections.pop())
        return cell


@st.composite
def tops(draw: st.DrawFn, depth: int = 2) -> Design:
    """Designs whose setting is a section of any kind, holding others down to a depth."""
    growing = Growing(draw)
    root = growing.grow(depth)
    *sections, whole = growing.sections
    assert whole.name == root.section
    setting = replace(whole.setting, borders=())
    return replace(PLAIN, sections=tuple(sections), setting=setting, borders=whole.setting.borders)


def turned_whole(design: Design) -> Design:
    """Return a design whose top is that of another, turned a quarter clockwise."""
    whole = Section("whole", replace(design.setting, borders=design.borders))
    setting = LineSet((SectionCell("whole", 1),), below=False)
    return replace(design, sections=(*design.sections, whole), setting=setting, borders=())
