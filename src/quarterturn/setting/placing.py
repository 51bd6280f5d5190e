"""Lay the tree out flat: every unit and every other piece of cloth where it lies in the top's frame."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable
from dataclasses import dataclass
from itertools import accumulate

from quarterturn.design import Corner, code_of_unit, quarter_of_unit
from quarterturn.geometry import STAY, Motion, Point, Region, quarter_turns, rectangle, shift
from quarterturn.measure import Length
from quarterturn.setting.lattice import corner_triangles, places_on_point, sashes, side_triangles
from quarterturn.setting.model import NodeKind, PlacedCloth, PlacedNode, PlacedUnit
from quarterturn.setting.strips import corner_places, mitred_strip, strip_places
from quarterturn.setting.tree import (
    Child,
    ClothUse,
    Frame,
    Framed,
    Grid,
    Node,
    OneUnit,
    OnPoint,
    Panel,
    PlainCloth,
)


@dataclass(frozen=True, slots=True)
class Stand:
    """Where something stands in the map of a section; what is in no map has row −1."""

    section: str
    copy: int
    row: int = -1
    column: int = -1


def place_all(top: Node) -> tuple[tuple[PlacedUnit, ...], tuple[PlacedCloth, ...]]:
    """Return the leaves of the tree: the centre before its borders, and in a grid row by row."""
    placing = _Placing()
    placing.node(top, STAY, Stand("", 0), 0)
    return tuple(placing.units), tuple(placing.cloths)


def place_nodes(top: Node) -> tuple[PlacedNode, ...]:
    """Return every other part of the tree where it lies: sections, borders and plain squares, holders first."""
    placing = _Placing()
    placing.node(top, STAY, Stand("", 0), 0)
    return tuple(placing.nodes)


def turned_in_place(width: float, height: float, turn: int) -> Motion:
    """Return the turn that leaves the top left corner of what is turned at the origin."""
    moves = (0j, complex(height, 0), complex(width, height), complex(0, width))
    return quarter_turns(turn).then(shift(moves[turn % 4]))


class _Placing:
    def __init__(self) -> None:
        self.units: list[PlacedUnit] = []
        self.cloths: list[PlacedCloth] = []
        self.nodes: list[PlacedNode] = []
        self._copies: Counter[str] = Counter()
        self._turnings: dict[int, Motion] = {}

    def child(self, child: Child, at: Point, motion: Motion, stand: Stand) -> None:
        """Place a child with its top left corner at a point of its holder's frame."""
        node, turning = child.node, self._turning(child)
        placed = Motion(turning.factor, turning.move + at)
        self.node(node, placed if motion is STAY else placed.then(motion), stand, child.turn)

    def _turning(self, child: Child) -> Motion:
        """Return the turn of a child in its place; the tree, and so every child, outlives the placing."""
        known = self._turnings.get(id(child))
        if known is None:
            known = turned_in_place(float(child.node.width), float(child.node.height), child.turn)
            self._turnings[id(child)] = known
        return known

    def node(self, node: Node, motion: Motion, stand: Stand, turn: int) -> None:
        """Place a node by the motion of its frame into the top's."""
        match node:
            case OneUnit():
                self._unit(node, motion, stand, turn)
            case PlainCloth():
                if node.use is ClothUse.SQUARE:
                    self._node(NodeKind.SQUARE, node, node.fabric, 0, motion, stand, turn)
                self._cloth(node.use.value, stand.section, node.fabric, motion, _outline(node))
            case Panel():
                self._panel(node, motion, stand, turn)
            case Grid():
                self._grid(node, motion, stand, turn)
            case OnPoint():
                self._on_point(node, motion, stand, turn)
            case Framed():
                self._framed(node, motion, stand, turn)

    def _unit(self, node: OneUnit, motion: Motion, stand: Stand, turn: int) -> None:
        code, quarter = code_of_unit(node.name), quarter_of_unit(node.name)
        self.units.append(
            PlacedUnit(stand.section, stand.copy, stand.row, stand.column, code, turn, quarter, motion)
        )

    def _cloth(self, what: str, section: str, fabric: str, motion: Motion, region: Region) -> None:
        self.cloths.append(PlacedCloth(what, section, fabric, motion.region(region)))

    def _copy(self, name: str) -> int:
        self._copies[name] += 1
        return self._copies[name] - 1

    def _node(
        self,
        kind: NodeKind,
        node: Grid | OnPoint | Framed | Panel | PlainCloth,
        name: str,
        copy: int,
        motion: Motion,
        stand: Stand,
        turn: int,
    ) -> None:
        holder = (stand.section, stand.copy, stand.row, stand.column)
        size, flat = (node.width, node.height), (Length(0), Length(0))
        self.nodes.append(PlacedNode(kind, name, copy, *holder, turn, *size, motion, *flat))

    def _panel(self, node: Panel, motion: Motion, stand: Stand, turn: int) -> None:
        self._node(NodeKind.PANEL, node, node.name, self._copy(node.name), motion, stand, turn)
        self._cloth(ClothUse.PANEL.value, node.name, node.fabric, motion, _outline(node))
        for motif in node.motifs:
            self._cloth("motif", node.name, motif.fabric, motion, Region((motif.outline,)))

    def _grid(self, node: Grid, motion: Motion, stand: Stand, turn: int) -> None:
        copy, row = self._copy(node.name), -1
        self._node(NodeKind.SECTION, node, node.name, copy, motion, stand, turn)
        widths: list[Length] = []
        for cells, top in zip(node.rows, _starts(cells[0].height for cells in node.rows), strict=False):
            if (here := [cell.width for cell in cells]) != widths:
                widths, lefts = here, _starts(here)
            inside = [not is_sashing(cell) for cell in cells]
            row += any(inside)
            columns = accumulate(inside, initial=-1)
            next(columns)
            for cell, left, column in zip(cells, lefts, columns, strict=False):
                self.child(cell, complex(left, top), motion, Stand(node.name, copy, row, column))

    def _on_point(self, node: OnPoint, motion: Motion, stand: Stand, turn: int) -> None:
        copy = self._copy(node.name)
        self._node(NodeKind.SECTION, node, node.name, copy, motion, stand, turn)
        for row, column, child, place in places_on_point(node):
            turning = turned_in_place(float(node.side), float(node.side), child.turn)
            stand = Stand(node.name, copy, row, column)
            self.node(child.node, turning.then(place).then(motion), stand, child.turn)
        for use, fabric, outline in sashes(node):
            self._cloth(use.value, node.name, fabric, motion, outline)
        for outline in side_triangles(node):
            self._cloth("side triangle", node.name, node.side_fabric, motion, outline)
        for outline in corner_triangles(node):
            self._cloth("corner triangle", node.name, node.corner_fabric, motion, outline)

    def _framed(self, node: Framed, motion: Motion, stand: Stand, turn: int) -> None:
        self._node(NodeKind.FRAMED, node, node.name, 0, motion, stand, turn)
        left = sum((frame.side_depth for frame in node.frames), Length(0))
        top = sum((frame.end_depth for frame in node.frames), Length(0))
        self.child(node.centre, complex(float(left), float(top)), motion, Stand(node.name, 0))
        width, height = node.centre.width, node.centre.height
        for number, frame in enumerate(node.frames):
            left, top = left - frame.side_depth, top - frame.end_depth
            section = f"border {number + 1} of {node.name}"
            copy = self._copy(section)
            stand = Stand(section, copy, 0, 0)
            moved = shift(complex(float(left), float(top))).then(motion)
            width, height = width + 2 * frame.side_depth, height + 2 * frame.end_depth
            self.nodes.append(
                PlacedNode(
                    NodeKind.BORDER,
                    section,
                    copy,
                    *(node.name, 0, -1, -1, 0),
                    width,
                    height,
                    moved,
                    frame.side_depth,
                    frame.end_depth,
                )
            )
            self._frame(frame, float(width), float(height), moved, stand)

    def _frame(self, frame: Frame, width: float, height: float, motion: Motion, stand: Stand) -> None:
        for side, child, place in strip_places(frame, width, height):
            if frame.corner is Corner.MITRED and isinstance(child.node, PlainCloth):
                outline = mitred_strip(side, frame, width, height)
                self._cloth(child.node.use.value, stand.section, child.node.fabric, motion, outline)
            else:
                self.child(child, place, motion, Stand(stand.section, stand.copy))
        for column, (child, place) in enumerate(corner_places(frame, width, height)):
            self.child(child, place, motion, Stand(stand.section, stand.copy, 0, column))


def _starts(lengths: Iterable[Length]) -> list[float]:
    """Return where things of these lengths begin, laid end to end from 0."""
    return [float(start) for start in accumulate(lengths, initial=Length(0))]


def is_sashing(child: Child) -> bool:
    """Tell whether a child stands between the places of a map, and in none."""
    return isinstance(child.node, PlainCloth) and child.node.use in (ClothUse.SASH, ClothUse.CORNERSTONE)


def _outline(node: PlainCloth | Panel) -> Region:
    return Region((rectangle(0.0, 0.0, float(node.width), float(node.height)),))
