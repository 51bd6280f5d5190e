"""Carrying out the steps of sections on point: triangles, slanting rows, corners, squaring up."""

from __future__ import annotations

import cmath
import math
from collections import Counter
from dataclasses import replace

from quarterturn.geometry import (
    Line,
    Motion,
    Path,
    Point,
    Segment,
    StraightLine,
    line_through,
    merged,
    rectangle,
    shift,
)
from quarterturn.measure import CUT_TOLERANCE, Length
from quarterturn.proof.rehearsal.cloth import EQUAL, Patch, SpoiledError, keep, same_cloth
from quarterturn.proof.rehearsal.table import Table
from quarterturn.setting import WAYS, Side
from quarterturn.steps import (
    AddCorners,
    AddTriangles,
    CutTriangles,
    EndTriangle,
    JoinRows,
    SquareUp,
    Step,
)

EIGHTH_TURN = cmath.rect(1.0, math.pi / 4)

SIDE_TURNS = {Side.TOP: 0, Side.RIGHT: 1, Side.BOTTOM: 2, Side.LEFT: 3}
"""Quarter turns with which a triangle, its long edge at the bottom, comes to lie at each side."""


def cut_triangles(table: Table, step: Step, action: CutTriangles) -> None:
    """Cut squares corner to corner, and lay the triangles all alike."""
    (pile,), (product,) = step.uses, step.makes
    square = table.take_patch(pile).centred()
    box = square.box
    if abs(box.width - box.height) > EQUAL or action.cuts not in (1, 2):
        raise SpoiledError("Triangles are cut from squares, once or twice corner to corner.")
    pieces = [square]
    for way in (EIGHTH_TURN, 1j * EIGHTH_TURN)[: action.cuts]:
        line = StraightLine(0j, way)
        pieces = [
            part for piece in pieces for part in (keep(piece, line), keep(piece, line.reversed())) if part
        ]
    if product.count != pile.count * len(pieces):
        raise SpoiledError(
            f"{pile.count} squares give {pile.count * len(pieces)} triangles, not {product.count}."
        )
    laid = [_laid(piece, action.cuts) for piece in pieces]
    if not all(same_cloth(laid[0], each) for each in laid):
        raise SpoiledError("The triangles are not all the same.")
    table.put(product, laid[0])


def _laid(piece: Patch, cuts: int) -> Patch:
    """Return a triangle with the long edge at the bottom, or with its right angle at the top left."""
    longest = max(piece.edge.segments, key=lambda segment: segment.length())
    along = longest.tangent(0)
    wanted = -1 if cuts == 1 else EIGHTH_TURN**3
    turned = piece.moved(Motion(wanted * abs(along) / along))
    return turned.moved(shift(-complex(turned.box.left, turned.box.top)))


def add_triangles(table: Table, step: Step, action: AddTriangles) -> None:
    """Sew triangles to the ends of rows, and trim their points level with the rows."""
    (product,) = step.makes
    ends = [(side, end) for side, end in ((Side.LEFT, action.left), (Side.RIGHT, action.right)) if end]
    wanted = Counter(end.label for _, end in ends)
    if [(pile.label, pile.count) for pile in step.uses[1:]] != [
        (label, count * product.count) for label, count in wanted.items()
    ] or step.uses[0].count != product.count:
        raise SpoiledError("The triangles taken are not those to be sewn on.")
    row = table.take_patch(step.uses[0]).turned(action.turn)
    triangles = {pile.label: table.take_patch(pile) for pile in step.uses[1:]}
    work = row
    for side, end in ends:
        work = _ended(work, triangles[end.label], side, end, action.seam)
    table.put(product, work)


def _ended(row: Patch, triangle: Patch, side: Side, end: EndTriangle, seam: Length) -> Patch:
    triangle, box = triangle.turned(end.turn), row.box
    if triangle.box.height < box.height - EQUAL:
        raise SpoiledError("The triangle is shorter than the end of the row.")
    down = box.top - triangle.box.top if end.level is Side.TOP else box.bottom - triangle.box.bottom
    work = sew_at(row, triangle.moved(shift(complex(0, down))), WAYS[side], seam)
    return between(work, 1j, box.top, box.bottom)


def join_rows(table: Table, step: Step, action: JoinRows) -> None:
    """Sew rows one below another, each as far along as the step says."""
    (product,) = step.makes
    wanted = Counter(placed.label for placed in action.parts)
    if {label: n * product.count for label, n in wanted.items()} != {p.label: p.count for p in step.uses}:
        raise SpoiledError("The rows are not the pieces taken.")
    lying = {pile.label: table.take_patch(pile) for pile in step.uses}
    rows = [lying[placed.label].turned(placed.turn) for placed in action.parts]
    work, left = rows[0], rows[0].box.left
    for row, offset in zip(rows[1:], action.offsets[1:], strict=True):
        along = left + float(offset) - row.box.left
        work = sew_at(work, row.moved(shift(complex(along, 0))), WAYS[Side.BOTTOM], action.seam)
    table.put(product, work)


def sew_at(first: Patch, second: Patch, way: Point, seam: Length) -> Patch:
    """Sew the second patch to the outermost edge of the first that faces `way`, where along it the second lies.

    Raw edges lie together, and may stand out beyond one another at their ends.
    """
    near, far = outermost(first, way), outermost(second, -way)
    left, right = _seamed(first, near, seam), _seamed(second, far, seam)
    seam_left, seam_right = outermost(left, way), outermost(right, -way)
    across = _part(seam_left.start - seam_right.start, way)
    right = right.moved(shift(across * way))
    seam_right = outermost(right, -way)
    if _overlap(seam_left, seam_right) < EQUAL:
        raise SpoiledError("The edges to be sewn together do not meet.")
    return Patch(_outline(left.edge, seam_left, right.edge, seam_right), left.scraps + right.scraps)


def outermost(patch: Patch, way: Point) -> Line:
    """Return the straight edge that faces a direction and lies farthest out in it."""
    facing = [s for s in patch.edge.segments if isinstance(s, Line) and _faces(s, way)]
    if not facing:
        raise SpoiledError("There is no straight edge to sew along.")
    edge = max(facing, key=lambda s: _part(s.start, way))
    if any(_part(segment.start, way) > _part(edge.start, way) + EQUAL for segment in patch.edge.segments):
        raise SpoiledError("A point stands out beyond the edge to be sewn along.")
    return edge


def _faces(edge: Line, way: Point) -> bool:
    out = -1j * (edge.end - edge.start) / edge.length()
    return abs(out - way) < 1e-7


def _part(point: Point, way: Point) -> float:
    return (point * way.conjugate()).real


def _seamed(patch: Patch, edge: Line, seam: Length) -> Patch:
    line = line_through(edge.start, edge.end)
    kept = keep(patch, line.moved_left(float(seam)))
    if kept is None:
        raise SpoiledError("The piece is narrower than its seam allowance.")
    return kept


def _overlap(a: Line, b: Line) -> float:
    along = (a.end - a.start) / a.length()
    ends = sorted(_part(point - a.start, along) for point in (b.start, b.end))
    return min(a.length(), ends[1]) - max(0.0, ends[0])


def _outline(left: Path, seam_left: Line, right: Path, seam_right: Line) -> Path:
    """Return the outline round two patches that touch along a line, where either may reach farther."""
    first, second = _opened(left, seam_left), _opened(right, seam_right)
    bridges = (Line(seam_left.start, seam_right.end), Line(seam_right.start, seam_left.end))
    return merged(Path((*first, bridges[0], *second, bridges[1])))


def _opened(path: Path, gap: Line) -> tuple[Segment, ...]:
    place = path.segments.index(gap)
    return (*path.segments[place + 1 :], *path.segments[:place])


def between(patch: Patch, way: Point, low: float, high: float) -> Patch:
    """Cut off what of a patch lies beyond two lines across a direction."""
    kept: Patch | None = patch
    for line in (StraightLine(way * low, way * -1j), StraightLine(way * high, way * 1j)):
        kept = keep(kept, line) if kept else None
    if kept is None:
        raise SpoiledError("Nothing is left after trimming.")
    return kept


def add_corners(table: Table, step: Step, action: AddCorners) -> None:
    """Trim all points level with the bare ends, and sew corner triangles on."""
    (product,) = step.makes
    works, corners = step.uses
    if works.count != product.count or corners.count != len(action.corners) * product.count:
        raise SpoiledError("The triangles taken are not those to be sewn on.")
    work, triangle = table.take_patch(works).turned(action.turn), table.take_patch(corners)
    left = work.box.left + float(action.level)
    right = left + float(action.across)
    if action.level < -EQUAL or right > work.box.right + EQUAL:
        raise SpoiledError("The rows do not reach as far as they are to be trimmed.")
    start = complex(left, work.box.top)
    work = between(work, 1, left, right)
    for place in action.corners:
        upright = place.side in (Side.LEFT, Side.RIGHT)
        middle = start + (1j if upright else 1) * float(place.middle)
        work = _cornered(work, triangle.turned(SIDE_TURNS[place.side]), WAYS[place.side], middle, action.seam)
        work = work if upright else between(work, 1, left, right)
    table.put(product, work)


def _cornered(work: Patch, triangle: Patch, way: Point, middle: Point, seam: Length) -> Patch:
    edge, long = outermost(work, way), outermost(triangle, -way)
    if long.length() < edge.length() - EQUAL:
        raise SpoiledError("The corner triangle is shorter than the edge that it is sewn to.")
    along = way * 1j
    move = _part(middle - triangle.box.centre, along)
    return sew_at(work, triangle.moved(shift(move * along)), way, seam)


def square_up(table: Table, step: Step, action: SquareUp) -> None:
    """Turn slanting work upright and trim it to a rectangle, as much at each side as at the one opposite."""
    (pile,), (product,) = step.uses, step.makes
    if pile.count != product.count:
        raise SpoiledError(f"{pile.count} pieces go in and {product.count} come out.")
    work = table.take_patch(pile).moved(Motion(EIGHTH_TURN)).centred()
    width, height = float(product.width), float(product.height)
    short = max(width - work.box.width, height - work.box.height)
    if short > CUT_TOLERANCE:
        raise SpoiledError(f"The work is {short:.4f} inches smaller than it is to be trimmed to.")
    trimmed = between(between(work, 1, -width / 2, width / 2), 1j, -height / 2, height / 2)
    outline = rectangle(-width / 2, -height / 2, width / 2, height / 2)
    if outline.area() - trimmed.edge.area() > float(CUT_TOLERANCE) * (width + height):
        raise SpoiledError("A setting triangle does not reach the edge.")
    table.put(product, replace(trimmed, edge=outline))
