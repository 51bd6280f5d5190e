"""Masters of any shapes cut apart under the ruler, and what the seams leave of them."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence

from quarterturn.blocks import GROUND, Part
from quarterturn.design import unit_name
from quarterturn.geometry import (
    MOST_DIRECTIONS,
    Path,
    Point,
    Region,
    StraightLine,
    directions_of,
    keep_left,
    line_through,
    polygon,
    roomiest_point,
    seam_lines,
    shift,
)
from quarterturn.proof import Pattern
from quarterturn.publish.figures.cells import seen_of
from quarterturn.publish.figures.frames import Drawing, beside
from quarterturn.publish.figures.inks import (
    CREASE,
    CUT,
    EDGE,
    LABEL,
    OUTLINE,
    QUIET,
    SMALL,
    caption,
    cloth,
    line,
)
from quarterturn.publish.figures.plans import TOP, Board, board_of, clipped, through
from quarterturn.publish.sheet import Area, Ink, Mark, Scale, Sheet
from quarterturn.publish.wording.places import NEAR
from quarterturn.steps import CutApart, Step

RULER = Ink(stroke=QUIET, width=0.3)


def cuts_figure(pattern: Pattern, step: Step) -> Sheet:
    """Return each cut under the ruler, and the units that all of them leave."""
    assert isinstance(step.action, CutApart)
    action = step.action
    board = board_of(pattern, action.code, 38.0)
    drawings = [
        _under_ruler(board, cut, action.cuts[:number], number + 1) for number, cut in enumerate(action.cuts)
    ]
    alt = (
        f"The ruler on each of the ({len(action.cuts)}) lines in turn, and the ({len(action.parts)}) units of "
        f"{action.recipe} that the cuts leave."
    )
    return beside((*drawings[:3], _parted(board)), 7).sheet(f"Cut apart: {action.recipe}", alt)


def _under_ruler(board: Board, cut: StraightLine, done: Sequence[StraightLine], number: int) -> Drawing:
    ends = through(board, cut, 2.0)
    note = f"cut {number}: do not move the parts" if number > 1 else "cut 1"
    marks = (
        board.ground(),
        *board.shapes(),
        *(line(*through(board, other), OUTLINE) for other in done),
        *_ruler(board, ends),
        line(*ends, CUT),
        caption(complex(board.width / 2, board.height + TOP + 5), note, SMALL),
    )
    return Drawing(max(board.width, 38.0) + 2, board.height + TOP + 8, marks)


def _ruler(board: Board, ends: tuple[Point, Point]) -> Iterator[Mark]:
    """Return a ruler beside a cut, on the side where less of it stands out beyond the sheet."""
    along = (ends[1] - ends[0]) / abs(ends[1] - ends[0])
    off = along * -1j if (along * -1j).real <= 0 else along * 1j
    deep = 0.24 * min(board.width, board.height)
    corners = [ends[0], ends[0] + off * deep, ends[1] + off * deep, ends[1]]
    region = Region((polygon(corners),))
    whole = (
        (0.0, TOP - 2),
        (board.width, TOP - 2),
        (board.width, TOP + board.height + 2),
        (0.0, TOP + board.height + 2),
    )
    points = [complex(x, y) for x, y in whole]
    if region.area() < 0:
        region = Region((polygon(corners[::-1]),))
    for a, b in zip(points, (*points[1:], points[0]), strict=True):
        region = keep_left(region, line_through(a, b))
    yield Area(region, RULER)


def part_name(board: Board, part: Part) -> str:
    """Return what the unit that a piece becomes is called."""
    return unit_name(board.code, board.master.units[part.unit].quarter)


def _parted(board: Board) -> Drawing:
    """Return the pieces as the cuts leave them, drawn apart and named."""
    away, master = 2.4, board.master
    marks: list[Mark] = []
    for part in master.parts:
        middle = _corner_mean(part.outline)
        by = away * middle / abs(middle) if abs(middle) > NEAR else 0j
        scale = Scale(board.scale.factor, board.scale.origin + complex(away, away) + by)
        marks += piece_marks(board, part.outline, scale)
        at = label_place(board, part)
        marks.append(caption(scale.point(at), part_name(board, part), LABEL, colour=board.ink_at(at)))
    note = f"({len(master.parts)}) units of {board.code}"
    marks.append(caption(complex(board.width / 2 + away, board.height + TOP + 2 * away + 3), note, SMALL))
    return Drawing(board.width + 2 * away, board.height + TOP + 2 * away + 6, tuple(marks))


def _corner_mean(path: Path) -> Point:
    corners = path.corners()
    return sum(corners, 0j) / len(corners)


def piece_marks(board: Board, piece: Path, scale: Scale) -> Iterator[Mark]:
    """Return a piece of a master with what lies on it."""
    yield Area(scale.region(Region((piece,))), cloth(board.colour(GROUND), OUTLINE))
    for shape in board.master.shapes:
        region = clipped(shape.region, piece)
        if not region.is_empty():
            yield Area(scale.region(region), cloth(board.colour(shape.part), EDGE))


def label_place(board: Board, part: Part) -> Point:
    """Return where in a piece one part of it has most room, in the master's frame."""
    regions = [Region((part.outline,)), *(clipped(s.region, part.outline) for s in board.master.shapes)]
    shown = (seen_of(regions, k) for k in range(len(regions)) if not regions[k].is_empty())
    rooms = [roomiest_point(region) for region in shown if region]
    return max(rooms, key=lambda room: room[1])[0]


def sewn_figure(pattern: Pattern, code: str) -> Sheet | None:
    """Return the master as traced, and its units sewn together again: what the seams leave of its shapes.

    None where its cuts run in more directions than can be sewn together again along straight seams.
    """
    board = board_of(pattern, code, 40.0)
    master = board.master
    if not master.cuts or len(directions_of(master.cuts)) > MOST_DIRECTIONS:
        return None
    first = Drawing(
        board.width,
        board.height + TOP + 6,
        (
            board.ground(),
            *board.shapes(),
            *(line(*through(board, cut), CREASE) for cut in master.cuts),
            caption(complex(board.width / 2, board.height + TOP + 3), "as fused", SMALL),
        ),
    )
    second = Drawing(board.width, board.height + TOP + 6, tuple(_rejoined(board)))
    alt = (
        f"Left, a master of {master.recipe} as it is fused. Right, its units sewn together again as they lay: each "
        "seam has taken its allowance from both sides."
    )
    return beside((first, second), 10).sheet(f"What the seams leave: {master.recipe}", alt)


def _rejoined(board: Board) -> Iterator[Mark]:
    master, seam = board.master, float(board.master.seam)
    seams = seam_lines(master.cuts, seam)
    for part in master.parts:
        unit, back = master.units[part.unit], part.motion.inverse()
        middle = _corner_mean(part.outline)
        signs = (math.copysign(1, cut.side(middle)) for cut in master.cuts)
        moved = shift(-sum((each.move * sign for each, sign in zip(seams, signs, strict=True)), 0j))
        for layer in unit.sewn_layers:
            region = moved.region(back.region(layer.region))
            yield Area(board.scale.region(region), cloth(board.colour(layer.part), EDGE))
    yield caption(complex(board.width / 2, board.height + TOP + 3), "as sewn together again", SMALL)
