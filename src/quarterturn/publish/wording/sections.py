"""The sections of a top, and what is said of how they are set."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from quarterturn.design import Border, Corner, Design, PiecedBorder
from quarterturn.measure import show_count
from quarterturn.proof import Pattern
from quarterturn.publish.wording.names import length, listed, plural, rectangle, sized
from quarterturn.setting import Child, Framed, Grid, Node, OneUnit, OnPoint, Panel

ROOTS = ("centre", "top")
"""The names of the root: inside its borders, and with them."""


@dataclass(frozen=True, slots=True)
class Made:
    """A section that is sewn by itself: its name, what it is, and how many the quilt takes."""

    name: str
    node: Node
    count: int


def sections_of(top: Node) -> tuple[Made, ...]:
    """Return every section but the root, those that others hold before them; equal ones are made together."""
    found: dict[Node, int] = {}
    nodes: dict[str, Node] = {}

    def walk(node: Node, times: int) -> None:
        for child in held_by(node):
            if name := section_name(child.node):
                found[child.node] = found.get(child.node, 0) + times
                nodes.setdefault(name, child.node)
            walk(child.node, times)

    walk(top, 1)
    order = list(dict.fromkeys(_inside_out(top)))
    return tuple(Made(section_name(node), node, found[node]) for node in order if node in found)


def _inside_out(node: Node) -> Iterator[Node]:
    for child in held_by(node):
        yield from _inside_out(child.node)
        if section_name(child.node):
            yield child.node


def section_name(node: Node) -> str:
    """Return the name of a node that is a section; nothing for units, cloth and the root."""
    if isinstance(node, OneUnit) or not isinstance(node, Grid | OnPoint | Framed | Panel):
        return ""
    return "" if node.name in ROOTS else node.name


def held_by(node: Node) -> tuple[Child, ...]:
    """Return what a node is sewn of. A section is one with its borders: what these hold, it holds."""
    match node:
        case Grid():
            return tuple(child for row in node.rows for child in row)
        case OnPoint():
            return tuple(child for rows in (node.cells, node.between) for row in rows for child in row)
        case Framed():
            frames = (child for frame in node.frames for child in (*frame.strips, *frame.corners))
            return *held_by(node.centre.node), *frames
        case _:
            return ()


def unit_grid(node: Node) -> Grid | None:
    """Return a node that is a map of units and nothing else; None where it is another thing."""
    if not isinstance(node, Grid):
        return None
    whole = all(isinstance(child.node, OneUnit) for row in node.rows for child in row)
    return node if whole and len({len(row) for row in node.rows}) == 1 else None


def node_said(node: Node) -> str:
    """Say how something is set, in the trade's words."""
    if grid := unit_grid(node):
        return f"{show_count(len(grid.rows), 'row')} of {len(grid.rows[0])}"
    if isinstance(node, Framed):
        return f"{node_said(node.centre.node)}, with {show_count(len(node.frames), 'border')}"
    if isinstance(node, Panel):
        return f"a panel with {show_count(len(node.motifs), 'motif')}"
    if isinstance(node, OnPoint):
        return _on_point_said(node)
    assert isinstance(node, Grid)
    rows, columns = len(node.rows), len(node.rows[0])
    if rows == 1:
        return f"{show_count(columns, 'part')} side by side"
    if columns == 1:
        return f"{show_count(rows, 'part')}, one below another"
    sashed = any(_is_sash(child) for row in node.rows for child in row)
    if sashed:
        return _sashed_said(node)
    return f"{show_count(rows, 'row')} of {columns}"


def _on_point_said(node: OnPoint) -> str:
    rows, columns = len(node.cells), len(node.cells[0])
    between = len(node.between) * (columns - 1)
    said = f"on point, {show_count(rows, 'row')} of {columns}"
    said += f" and {between} between them" if between else ""
    return f"{said}, sashed" if node.sash else said


def _sashed_said(node: Grid) -> str:
    places = [[child for child in row if not _is_sash(child)] for row in node.rows]
    rows = [row for row in places if row]
    return f"{show_count(len(rows), 'row')} of {len(rows[0])}, sashed"


def _is_sash(child: Child) -> bool:
    use = getattr(child.node, "use", None)
    return use is not None and use.value in ("sashing strip", "cornerstone")


def borders_said(design: Design) -> tuple[tuple[str, str], ...]:
    """Return each border of the quilt with its width, or what it is."""
    many = len(design.borders) > 1
    return tuple(
        (f"Border {ring}" if many else "Border", _border_said(design, border))
        for ring, border in enumerate(design.borders, start=1)
    )


def _border_said(design: Design, border: object) -> str:
    if isinstance(border, Border):
        corners = {Corner.BUTTED: "", Corner.MITRED: ", mitred", Corner.CORNERSTONES: ", with cornerstones"}
        return f"{length(design, border.width)} wide{corners[border.corner]}"
    if isinstance(border, PiecedBorder):
        names = listed(list(dict.fromkeys((border.sides.section, border.ends.section))))
        return f"pieced of {names}"
    size = rectangle(design, border.width, border.height)  # type: ignore[attr-defined]
    return f"coping strips, to {size}"


def unit_sizes(pattern: Pattern) -> tuple[tuple[str, str], ...]:
    """Return the finished size of the units; where there are several, that of each."""
    units = {name: pattern.blocks.unit(pattern.design, name) for name in pattern.setting.tally}
    groups: dict[str, list[str]] = {}
    for name, unit in units.items():
        groups.setdefault(sized(pattern.design, unit.width, unit.height), []).append(name)
    if len(groups) == 1:
        return (("unit", next(iter(groups))),)
    return tuple((f"{plural(len(names), 'unit')} {listed(names)}", size) for size, names in groups.items())
