"""How often every part of the top is made."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator

from quarterturn.pieces.slanting import sashing_of
from quarterturn.setting import Framed, Grid, Node, OnPoint


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
    return Counter(_held(node))


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
