"""How often every part of the top is made, and the masters and halves that its units need."""

from __future__ import annotations

import math
from collections import Counter
from collections.abc import Iterator, Sequence

from quarterturn.blocks import Blocks
from quarterturn.design import Colourway, Design, unit_name
from quarterturn.pieces.model import Blank, Join, MasterCount, RejoinCount, UnitCount
from quarterturn.pieces.slanting import sashing_of
from quarterturn.setting import Framed, Grid, Node, OnPoint, Setting


def times_made(top: Node) -> dict[Node, int]:
    """Return every distinct node of a tree and how many of it the top takes, inside out: the top is the last.

    Equal nodes are one. The strips and cornerstones round the squares of a section on point are nodes as well.
    """
    order = tuple(_inside_out(top))
    counts = Counter({order[-1]: 1})
    for node in reversed(order):
        for held, times in held_by(node).items():
            counts[held] += counts[node] * times
    return {node: counts[node] for node in order}


def held_by(node: Node) -> Counter[Node]:
    """Return the nodes that one node holds itself, and how many of each."""
    held: dict[int, tuple[Node, int]] = {}
    for each in _held(node):  # most are the same object, which is told apart without a look inside
        held[id(each)] = each, held.get(id(each), (each, 0))[1] + 1
    counts = Counter[Node]()
    for each, count in held.values():
        counts[each] += count
    return counts


def _held(node: Node) -> Iterator[Node]:
    if isinstance(node, Grid):
        yield from (child.node for row in node.rows for child in row)
    elif isinstance(node, OnPoint):
        yield from (child.node for row in (*node.cells, *node.between) for child in row)
        yield from sashing_of(node).elements()
    elif isinstance(node, Framed):
        yield node.centre.node
        for frame in node.frames:
            yield from (
                child.node for child in (*frame.strips, *frame.corners) if child.width and child.height
            )


def _inside_out(top: Node) -> Iterator[Node]:
    """Yield each distinct node after all that it holds."""
    seen: set[Node] = set()

    def visit(node: Node) -> Iterator[Node]:
        if node in seen:
            return
        seen.add(node)
        for held in held_by(node):
            yield from visit(held)
        yield node

    yield from visit(top)


def count_rejoined(design: Design, blocks: Blocks, setting: Setting) -> tuple[RejoinCount, ...]:
    """Count the blocks that are rejoined from halves, by colourway in the order in which the map names them."""
    ways = (design.colourway(code) for code in setting.codes)
    return tuple(_rejoined(blocks, setting, way) for way in ways if way.is_rejoined)


def _rejoined(blocks: Blocks, setting: Setting, way: Colourway) -> RejoinCount:
    rejoining, masters = blocks.rejoining(way.recipe), (way.first, way.second)
    kinds = blocks.master(rejoining.of).units
    joins = []
    for unit in rejoining.units:
        name = unit_name(way.code, unit.quarter)
        first, second = (
            unit_name(code, kinds[half.unit].quarter) for code, half in zip(masters, unit.halves, strict=True)
        )
        if needed := setting.tally.get(name, 0):
            joins.append(Join(name, (first, second), needed))
    return RejoinCount(way.code, way.recipe, masters, tuple(joins))


def codes_of_masters(design: Design, setting: Setting) -> tuple[str, ...]:
    """Return the colourways of which masters are made, in the order in which the map first needs them."""
    return tuple(dict.fromkeys(code for used in setting.codes for code in design.masters_of(used)))


def count_masters(
    design: Design, blocks: Blocks, setting: Setting, rejoined: Sequence[RejoinCount], code: str
) -> MasterCount:
    """Count the masters for the kind that needs most; the other kinds leave a surplus (trade check 17).

    Pieces still have no labels.
    """
    recipe, spare = design.colourway(code).recipe, design.making.spare_masters
    master = blocks.master(recipe)
    halves: Counter[str] = Counter()
    for join in (join for each in rejoined for join in each.joins):
        halves.update({name: join.count * join.halves.count(name) for name in set(join.halves)})
    names = [unit_name(code, unit.quarter) for unit in master.units]
    needs = [setting.tally.get(name, 0) + halves[name] for name in names]
    each = [master.per_master(kind) for kind in range(len(names))]
    needed = max(math.ceil(need / per) for need, per in zip(needs, each, strict=True))
    count = needed + spare
    units = tuple(
        UnitCount(name, need, per, count * per - need, halves[name])
        for name, need, per in zip(names, needs, each, strict=True)
    )
    return MasterCount(code, recipe, "", _blanks(blocks, recipe), units, needed, spare, count)


def _blanks(blocks: Blocks, recipe: str) -> tuple[Blank, ...]:
    """Return the shapes that a master takes, equal ones of one part together, without labels."""
    counts = Counter((shape.name, shape.part) for shape in blocks.master(recipe).shapes)
    return tuple(Blank(shape, part, "", each) for (shape, part), each in counts.items())
