"""Masters of any shapes and cuts: marked, fused in layers, stitched, cut apart, and what the seams leave."""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass

from quarterturn.blocks import GROUND, Master
from quarterturn.design.colour import text_colour_on
from quarterturn.geometry import (
    Path,
    Point,
    Region,
    StraightLine,
    keep_left,
    line_through,
    path_bounds,
    path_crossings,
    roomiest_point,
)
from quarterturn.proof import Pattern
from quarterturn.publish.figures.cells import layer_colour, seen_of
from quarterturn.publish.figures.frames import Drawing, beside
from quarterturn.publish.figures.inks import (
    ACCENT,
    CREASE,
    CUT,
    LABEL,
    OUTLINE,
    SMALL,
    STITCH,
    box,
    caption,
    cloth,
    line,
    measured,
    outline,
    seen_arrow,
)
from quarterturn.publish.sheet import Area, Ink, Mark, Scale, Sheet
from quarterturn.publish.wording import length, named
from quarterturn.publish.wording.places import NEAR, ends_on_edges, measure
from quarterturn.steps import Crease, Step, StitchEdge

LARGEST = 46.0
"""Millimetres of the longer side of a master."""
TOP = 5.0
"""Room above for a measure."""


@dataclass(frozen=True, slots=True)
class Board:
    """A master of a colourway as it is drawn: its scale, which has 0 at its middle, and its size on the sheet."""

    pattern: Pattern
    code: str
    master: Master
    scale: Scale
    width: float
    height: float

    def ground(self) -> Mark:
        """Return the ground."""
        return box(0, TOP, self.width, self.height, cloth(self.colour(GROUND), OUTLINE))

    def colour(self, part: str) -> str:
        """Return the colour of a part."""
        return layer_colour(self.pattern, self.code, part)

    def shapes(self, numbers: Sequence[int] | None = None) -> Iterator[Mark]:
        """Return shapes by their numbers, in the order of fusing; all of them if no numbers are given."""
        for number, shape in enumerate(self.master.shapes):
            if numbers is None or number in numbers:
                yield Area(self.scale.region(shape.region), cloth(self.colour(shape.part), OUTLINE))

    def ink_at(self, point: Point) -> str:
        """Return an ink that stands out on what lies at a point of the master."""
        return text_colour_on(self.colour(top_part(self.master, point)))


def top_part(master: Master, point: Point) -> str:
    """Return the part that lies on top at a point of a master."""
    return next((s.part for s in reversed(master.shapes) if _holds(s.region, point)), GROUND)


def _holds(region: Region, point: Point) -> bool:
    """Tell whether a point lies in a region: a ray to the right crosses its outlines an odd number of times."""
    level = StraightLine(point, 1 + 0j)
    crossings = (p for path in region.paths for p in path_crossings(path, level))
    return sum(p.real > point.real for p in crossings) % 2 == 1


def board_of(pattern: Pattern, code: str, longest: float = LARGEST) -> Board:
    """Return a master to draw, its longer side of a length in millimetres."""
    master = pattern.blocks.master(pattern.design.colourway(code).recipe)
    factor = longest / float(max(master.width, master.height))
    width, height = float(master.width) * factor, float(master.height) * factor
    scale = Scale(factor, complex(width / 2, TOP + height / 2))
    return Board(pattern, code, master, scale, width, height)


def marking_figure(pattern: Pattern, step: Step, code: str) -> Sheet:
    """Return the ground, creased and marked, and the master with its shapes fused, each middle measured."""
    assert isinstance(step.action, Crease)
    board = board_of(pattern, code)
    first = Drawing(board.width + 14, board.height + TOP + 6, (*_marked(board, step.action), *_sizes(board)))
    second = Drawing(board.width + 14, board.height + TOP + 6, tuple(_master_marks(board)))
    design = pattern.design
    alt = (
        f"Left, the ground of {named(design, design.cloth(code, GROUND))}, {length(design, board.master.width)} by "
        f"{length(design, board.master.height)}, with its creases, the lines drawn on it and the marks for the middles "
        f"of its shapes. Right, the master with its ({len(board.master.shapes)}) shapes in the order of fusing, and "
        "the lines along which it will be cut."
    )
    return beside((first, second), 4).sheet(f"Mark and fuse: {board.master.recipe}", alt)


def _marked(board: Board, action: Crease) -> Iterator[Mark]:
    yield board.ground()
    ink = text_colour_on(board.colour(GROUND))
    for fold in action.folds:
        yield line(*through(board, fold), CREASE)
    for number, drawn in enumerate(action.drawn, 1):
        ends = through(board, drawn)
        yield line(*ends, CUT)
        yield from _end_measures(board, drawn)
        way = (ends[1] - ends[0]) / abs(ends[1] - ends[0])
        yield caption(ends[0] + way * 6 + way * 2.2j, str(number), SMALL, colour=ACCENT, bold=True)
    for mark in action.middles:
        at = board.scale.point(mark)
        yield from (line(at - arm, at + arm, Ink(stroke=ink, width=0.3)) for arm in (1.3 + 1.3j, 1.3 - 1.3j))
    note = "crease and mark" if action.drawn or action.middles else "crease"
    yield caption(complex(board.width / 2, board.height + TOP + 3), note, SMALL)


def _sizes(board: Board) -> Iterator[Mark]:
    design, low = board.pattern.design, complex(0, TOP)
    yield from measured(low, low + board.width, length(design, board.master.width), -1.6j)
    right = complex(board.width, TOP)
    yield from measured(right, right + board.height * 1j, length(design, board.master.height), 1.6)


def _end_measures(board: Board, drawn: StraightLine) -> Iterator[Mark]:
    """Return how far the ends of a drawn line lie from the nearer corner, inside the ground."""
    design, master = board.pattern.design, board.master
    across, down = float(master.width) / 2, float(master.height) / 2
    for end in ends_on_edges(master, drawn):
        on_side = abs(abs(end.real) - across) < NEAR
        corner = complex(math.copysign(across, end.real), math.copysign(down, end.imag))
        if abs(end - corner) < NEAR:
            continue
        off = (-math.copysign(1, end.real) if on_side else -1j * math.copysign(1, end.imag)) * 1.8
        start, stop = board.scale.point(corner), board.scale.point(end)
        ink = text_colour_on(board.colour(GROUND))
        yield line(start + off, stop + off, Ink(stroke=ink, width=0.15))
        middle = (start + stop) / 2 + off * (1.6 if on_side else 2.0)
        anchor = "middle" if not on_side else ("end" if off.real < 0 else "start")
        yield caption(middle, measure(design, abs(end - corner)), SMALL, anchor, colour=ink)  # type: ignore[arg-type]


def _master_marks(board: Board) -> Iterator[Mark]:
    """Return the master with all shapes, the cuts, and how far each middle lies from that of the ground."""
    yield board.ground()
    yield from board.shapes()
    for cut in board.master.cuts:
        yield line(*through(board, cut, 1.5), CUT)
    yield from _offsets(board)
    yield from _names(board)
    note = "fused; cut on the dashes" if board.master.cuts else "fused; it is not cut"
    yield caption(complex(board.width / 2, board.height + TOP + 3), note, SMALL)


def _offsets(board: Board) -> Iterator[Mark]:
    """Measure the middles of shapes from that of the ground, level above it and upright beside it; each place once."""
    design = board.pattern.design
    middles = [path_bounds(shape.traced).centre for shape in board.master.shapes]
    centre = board.scale.origin
    for x in _farthest(m.real for m in middles):
        ends = complex(centre.real, TOP), complex(board.scale.point(complex(x, 0)).real, TOP)
        yield from measured(*ends, measure(design, abs(x)), -1.6j)
    for y in _farthest(m.imag for m in middles):
        ends = complex(board.width, centre.imag), complex(board.width, board.scale.point(complex(0, y)).imag)
        yield from measured(*ends, measure(design, abs(y)), 1.6)


def _farthest(values: Iterable[float]) -> list[float]:
    """Return the farthest value on either side of 0, where there is one."""
    found = [round(value, 6) for value in values]
    ahead, behind = [v for v in found if v > NEAR], [v for v in found if v < -NEAR]
    return [*([max(ahead)] if ahead else []), *([min(behind)] if behind else [])]


def _names(board: Board) -> Iterator[Mark]:
    """Name each part once, where most of it is seen."""
    seen: set[str] = set()
    regions = [shape.region for shape in board.master.shapes]
    for number in reversed(range(len(regions))):
        part, shown = board.master.shapes[number].part, seen_of(regions, number)
        if part in seen or shown is None:
            continue
        seen.add(part)
        place, room = roomiest_point(shown)
        if room * board.scale.factor > 1.4:
            letter, ink = board.pattern.design.cloth(board.code, part), text_colour_on(board.colour(part))
            yield caption(board.scale.point(place), letter, LABEL, colour=ink, bold=True)


def through(board: Board, cut: StraightLine, beyond: float = 0.0) -> tuple[Point, Point]:
    """Return where a line runs over the edges of a drawn master, and a little beyond."""
    one, other = (board.scale.point(end) for end in ends_on_edges(board.master, cut))
    way = (other - one) / abs(other - one)
    return one - way * beyond, other + way * beyond


def layer_figure(pattern: Pattern, step: Step) -> Sheet:
    """Return a master with what has been fused so far, its lines of stitches, and where this stitching starts."""
    assert isinstance(step.action, StitchEdge)
    action = step.action
    board, top = board_of(pattern, action.code), max(action.numbers)
    marks: list[Mark] = [board.ground(), *board.shapes(range(top + 1))]
    marks += [line(*through(board, cut), CREASE) for cut in board.master.cuts]
    for number in action.numbers:
        for path in board.master.shapes[number].region.paths:
            ink = board.ink_at(_beside(path))
            marks.append(
                outline(board.scale.path(path), Ink(stroke=ink, width=STITCH.width, dash=STITCH.dash))
            )
    for start in action.starts:
        marks += _start_arrow(board, start)
    note = f"stitch round: {', '.join(dict.fromkeys(board.master.shapes[n].part for n in action.numbers))}"
    marks.append(caption(complex(board.width / 2, board.height + TOP + 3), note, SMALL))
    alt = (
        f"A master of {action.recipe} with ({len(action.numbers)}) of its shapes stitched all round; arrows show where "
        "the stitching starts, away from every cut to come."
    )
    title = f"Stitch round the edge: {action.shape}"
    return Drawing(max(board.width, 34), board.height + TOP + 6, tuple(marks)).sheet(title, alt)


def _beside(path: Path) -> Point:
    """Return a point just outside an outline, by its first segment."""
    segment = path.segments[0]
    along = segment.tangent(0.5)
    return segment.point(0.5) - 1j * along / abs(along) * 0.05


def _start_arrow(board: Board, start: Point) -> Iterator[Mark]:
    """Return an arrow from the inside of the master to where the stitching starts."""
    tip, middle = board.scale.point(start), board.scale.origin
    way = (tip - middle) / abs(tip - middle) if abs(tip - middle) > 8 else (1 + 1j) / abs(1 + 1j)
    foot = tip - way * 6
    yield from seen_arrow(foot, tip)


def clipped(region: Region, path: Path) -> Region:
    """Return what of a region lies inside a straight-sided convex outline."""
    for side in path.segments:
        region = keep_left(region, line_through(side.start, side.end))
    return region
