"""The text form of the tree: what each section is, how large, what it holds, and its borders in order of sewing."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator

from quarterturn.design import ROOT, Corner
from quarterturn.measure import Length, Units, aligned, show_count, show_length, show_plain, show_rectangle
from quarterturn.setting.model import Setting
from quarterturn.setting.placing import is_sashing
from quarterturn.setting.strips import corner_places, strip_places
from quarterturn.setting.tree import Child, Framed, Grid, Node, OneUnit, OnPoint, Panel, PlainCloth


def sections_text(setting: Setting, units: Units) -> Iterator[str]:
    """Return a paragraph for the root and for each other section, the outer before the inner."""
    yield from _root(setting, units)
    counts = _counts(setting.top)
    for node, count in counts.items():
        if not isinstance(node, Framed) and node.name != ROOT:
            size = show_rectangle(node.width, node.height, units)
            yield f"{node.name}: {_kind(node, units)}; {size}, made {show_count(count, 'time')}"
            yield from _map(node)
        if isinstance(node, Framed) and node is not setting.top:
            yield f"borders of {node.name}, in order of sewing"
            yield from _borders(node, units)


def _root(setting: Setting, units: Units) -> Iterator[str]:
    centre = setting.centre
    yield _kind(centre, units)
    frames = setting.top.frames if isinstance(setting.top, Framed) else ()
    left = show_plain(sum((frame.side_depth for frame in frames), Length(0)), units)
    top = show_plain(sum((frame.end_depth for frame in frames), Length(0)), units)
    size = show_rectangle(centre.width, centre.height, units)
    yield from aligned(
        [
            ("centre", f"{size}, {left} from the left, {top} from the top"),
            ("top", show_rectangle(setting.width, setting.height, units)),
            ("tally", ", ".join(f"{code} {count}" for code, count in setting.tally.items())),
        ]
    )
    yield from _map(centre)
    if isinstance(setting.top, Framed):
        yield "borders, in order of sewing"
        yield from _borders(setting.top, units)


def _counts(top: Node) -> dict[Grid | OnPoint | Panel | Framed, int]:
    """Return how often each section is made, the outer before the inner."""
    order: dict[Grid | OnPoint | Panel | Framed, int] = {}
    level: Counter[Node] = Counter({top: 1})
    while level:
        inner: Counter[Node] = Counter()
        for node, count in level.items():
            if isinstance(node, OneUnit | PlainCloth):
                continue
            order[node] = order.pop(node, 0) + count
            for child in children_of(node):
                inner[child.node] += count
        level = inner
    return order


def children_of(node: Node) -> Iterator[Child]:
    """Return what a node holds."""
    match node:
        case Grid():
            yield from (child for row in node.rows for child in row)
        case OnPoint():
            yield from (child for row in (*node.cells, *node.between) for child in row)
        case Framed():
            yield node.centre
            for frame in node.frames:
                yield from (*frame.strips, *frame.corners)


def _kind(node: Node, units: Units) -> str:
    """Tell how a section is laid: `3 rows of 5 units, each 4" finished`."""
    if isinstance(node, OnPoint):
        between = (
            f" and {len(node.between)} rows of {len(node.between[0])}"
            if node.between and node.between[0]
            else ""
        )
        squares = f"{show_count(len(node.cells), 'row')} of {len(node.cells[0])}{between}"
        cut = f"side triangles from {show_length(node.side_square, units)} squares, corners from"
        return (
            f"on point: {squares} squares, each {show_length(node.side, units)} finished; "
            f"{cut} {show_length(node.corner_square, units)}"
        )
    if isinstance(node, Grid):
        rows = [[child for child in row if not is_sashing(child)] for row in node.rows]
        held = [row for row in rows if row]
        if not all(isinstance(child.node, OneUnit) for row in held for child in row):
            return f"{show_count(len(held), 'row')} of {show_count(len(held[0]), 'place')}"
        return f"{show_count(len(held), 'row')} of {show_count(len(held[0]), 'unit')}, {_each(held, units)}"
    return "a panel" if isinstance(node, Panel) else ""


def _each(rows: list[list[Child]], units: Units) -> str:
    """Return what the units of a grid finish as, or where they differ what its columns and rows do."""
    widths, heights = [child.width for child in rows[0]], [row[0].height for row in rows]
    if len({*widths}) == len({*heights}) == 1:
        square, each = widths[0] == heights[0], show_length(widths[0], units)
        return f"each {each if square else show_rectangle(widths[0], heights[0], units)} finished"
    across, down = (", ".join(show_length(side, units) for side in sides) for sides in (widths, heights))
    return f"columns {across} wide, rows {down} high"


def _map(node: Node) -> Iterator[str]:
    if isinstance(node, Grid):
        yield "map"
        words = ([_word(child) for child in row if not is_sashing(child)] for row in node.rows)
        yield from aligned([[" ".join(row)] for row in words if row])
    if isinstance(node, OnPoint):
        for name, cells in (("map", node.cells), ("between", node.between)):
            if cells and cells[0]:
                yield name
                yield from aligned([[" ".join(map(_word, row))] for row in cells])
    if isinstance(node, Panel):
        counts = Counter((motif.recipe, motif.fabric) for motif in node.motifs)
        told = (f"{count} × {recipe} in fabric {fabric}" for (recipe, fabric), count in counts.items())
        yield from aligned([[each] for each in told])


def _word(child: Child) -> str:
    if isinstance(child.node, PlainCloth):
        return child.node.fabric
    return f"{child.node.name}{child.turn}"


def _borders(node: Framed, units: Units) -> Iterator[str]:
    rows: list[tuple[str, ...]] = []
    width, height = node.centre.width, node.centre.height
    left, top = (node.width - width) / 2, (node.height - height) / 2
    for ring, frame in enumerate(node.frames, 1):
        width, height = width + 2 * frame.side_depth, height + 2 * frame.end_depth
        left, top = left - frame.side_depth, top - frame.end_depth
        for side, child, at in strip_places(frame, float(width), float(height)):
            narrow, long = sorted((child.width, child.height))
            mitred = ", mitred" if frame.corner is Corner.MITRED else ""
            size = f"{show_rectangle(narrow, long, units)}{mitred}"
            place = f"at {_plain(left, at.real, units)}, {_plain(top, at.imag, units)}"
            rows.append((str(len(rows) + 1), f"border {ring}", side.value, _cloth(child), size, place))
        for child, at in corner_places(frame, float(width), float(height)):
            place = f"at {_plain(left, at.real, units)}, {_plain(top, at.imag, units)}"
            size = show_rectangle(child.width, child.height, units)
            rows.append((str(len(rows) + 1), f"border {ring}", "corner", _cloth(child), size, place))
    yield from aligned(rows, right=[0])


def _plain(origin: Length, off: float, units: Units) -> str:
    return show_plain(round(float(origin) + off, 9), units)


def _cloth(child: Child) -> str:
    return f"fabric {child.node.fabric}" if isinstance(child.node, PlainCloth) else _word(child)
