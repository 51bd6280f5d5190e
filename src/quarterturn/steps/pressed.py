"""Where every seam of the top lies, and to where its allowances are pressed: read off the sewing steps alone.

Whatever is sewn has its seams in the frame of its raw box as it lies on the table; a step lays these boxes beside one
another. Seams inside units belong to the blocks and are not told. Where slanting rows meet, a seam is told as long as
both rows are there, give or take an allowance at points of triangles.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from itertools import pairwise

from quarterturn.geometry import EPSILON, Motion, Point, shift
from quarterturn.pieces import Piece, Purpose
from quarterturn.setting import EIGHTH, WAYS, Side
from quarterturn.steps.labels import TOP
from quarterturn.steps.model import AddBorder, SewLine, Step, Steps
from quarterturn.steps.sections import (
    AddCorners,
    AddMitred,
    AddTriangles,
    EndTriangle,
    JoinRows,
    SetIn,
    SquareUp,
)
from quarterturn.steps.things import Press, Product, Towards

ROUND = tuple(Side)
"""Clockwise: a quarter turn brings each to the next."""
TAKERS = (Purpose.SASH, Purpose.STRIP)
"""Cloth to which a step has allowances pressed when it names the sashing or the strips."""

Stretch = tuple[float, float]


@dataclass(frozen=True, slots=True)
class PressedSeam:
    """A seam of the finished top: inches from its top left corner, x to the right, y down."""

    start: Point
    end: Point
    towards: Point | None
    """A way of length 1; None where the allowances are opened."""

    def moved(self, motion: Motion) -> PressedSeam:
        """Return it as it lies after a motion."""
        towards = None if self.towards is None else self.towards * motion.factor
        return PressedSeam(motion(self.start), motion(self.end), towards)


@dataclass(frozen=True, slots=True)
class Work:
    """Something that lies on the table: its raw box from 0, its seams, and what its edges are."""

    width: float
    height: float
    seams: tuple[PressedSeam, ...] = ()
    takes: frozenset[Side] = frozenset()
    """Sides along which sashing or a strip lies, which takes the allowances."""
    post: bool = False
    """Whether it is a cornerstone: it goes with the sashing in whose line it stands."""
    top: Stretch | None = None
    """From where to where the raw top edge reaches, where that is not all along the box."""
    bottom: Stretch | None = None
    points: tuple[int, int] = (0, 0)
    """How many points of triangles stand out at the left and right: an allowance of them goes when it is joined."""

    @property
    def upper(self) -> Stretch:
        """Return from where to where the raw top edge reaches."""
        return self.top or (0.0, self.width)

    @property
    def lower(self) -> Stretch:
        """Return from where to where the raw bottom edge reaches."""
        return self.bottom or (0.0, self.width)

    def at(self, x: float, y: float) -> tuple[PressedSeam, ...]:
        """Return its seams where its box begins at x, y."""
        return tuple(seam.moved(shift(complex(x, y))) for seam in self.seams)

    def turned(self, turn: int) -> Work:
        """Return it after clockwise quarter turns."""
        if not turn % 4:
            return self
        wide, high = (self.height, self.width) if turn % 2 else (self.width, self.height)
        corner = (0j, complex(wide, 0), complex(wide, high), complex(0, high))[turn % 4]
        motion = Motion(1j ** (turn % 4), corner)
        takes = frozenset(ROUND[(ROUND.index(side) + turn) % 4] for side in self.takes)
        return Work(wide, high, tuple(seam.moved(motion) for seam in self.seams), takes, self.post)


def pressed_seams(steps: Steps, pieces: Sequence[Piece], seam: float) -> tuple[PressedSeam, ...]:
    """Return all seams of the top, whose allowance is `seam`. A piece that no step can cut lies there all the same."""
    table = {piece.label: _piece(piece) for piece in pieces}
    purposes = {piece.label: piece.purpose for piece in pieces}
    for step in steps.steps:
        works = [_made(step, product, table, purposes, seam) for product in step.makes]
        for product, work in zip(step.makes, works, strict=True):
            sides = float(product.width), float(product.height)
            if product.label in purposes:  # cut however it may be, it is laid down with its longer side level
                sides = max(sides), min(sides)
            table[product.label] = replace(work, width=sides[0], height=sides[1])
    return table[TOP].at(-seam, -seam) if TOP in table else ()


def _piece(piece: Piece) -> Work:
    sides = float(piece.length), float(piece.width)
    return replace(_cloth((), piece.purpose), width=max(sides), height=min(sides))


def _made(
    step: Step, product: Product, table: Mapping[str, Work], purposes: Mapping[str, Purpose], seam: float
) -> Work:
    """Return what a step makes of what lies there, its box aside."""
    lying = [table[pile.label] for pile in step.uses if pile.label in table]
    match step.action:
        case SewLine(parts, way, _, press):
            turn = 0 if way is Side.BOTTOM else 1
            works = [table[part.label].turned(part.turn + turn) for part in parts]
            pressed = ROUND[(ROUND.index(press) + turn) % 4] if isinstance(press, Side) else press
            return _joined(works, [0.0] * len(works), pressed, seam).turned(-turn)
        case JoinRows(parts, offsets, _, press):
            works = [table[part.label].turned(part.turn) for part in parts]
            return _joined(works, [float(offset) for offset in offsets], press, seam)
        case AddTriangles():
            return _ended(step.action, lying[0].turned(step.action.turn), float(product.width))
        case SetIn():
            return _set_in(step.action, lying[0], lying[1])
        case AddCorners():
            return _cornered(step.action, lying[0].turned(step.action.turn), float(product.width))
        case SquareUp():
            return _squared(lying[0], complex(float(product.width), float(product.height)), seam)
        case AddBorder():
            return _bordered(step.action, *lying)
        case AddMitred():
            return _mitred(step.action, lying[0])
    return _cloth(lying, purposes.get(product.label))


def _cloth(lying: Sequence[Work], purpose: Purpose | None) -> Work:
    """Return cloth or a unit. What is only trimmed, or has shapes fused on it, goes on being what it was."""
    if purpose is None and len(lying) == 1:
        return Work(0, 0, takes=lying[0].takes, post=lying[0].post)
    return Work(
        0, 0, takes=frozenset(ROUND if purpose in TAKERS else ()), post=purpose is Purpose.CORNERSTONE
    )


def _joined(parts: Sequence[Work], offsets: Sequence[float], press: Press, seam: float) -> Work:
    """Return parts sewn one below another, each with the left end of its box so far to the right of the first."""
    left = min(x + seam * part.points[0] for x, part in zip(offsets, parts, strict=True))
    right = max(x + part.width - seam * part.points[1] for x, part in zip(offsets, parts, strict=True))
    places = [x - left for x in offsets]
    seams, y = [*parts[0].at(places[0], 0)], 0.0
    for number, (above, below) in enumerate(pairwise(parts), start=1):
        y += above.height - 2 * seam
        upper, lower = _along(above.lower, places[number - 1]), _along(below.upper, places[number])
        start, end = max(upper[0], lower[0]) + seam, min(upper[1], lower[1]) - seam
        way = _way(press, above, below, is_odd=bool(number % 2))
        seams.append(PressedSeam(complex(start, y + seam), complex(end, y + seam), way))
        seams += below.at(places[number], y)
    ends = {(Side.TOP, parts[0]), (Side.BOTTOM, parts[-1])}
    takes = {side for side, part in ends if side in part.takes}
    takes |= {side for side in (Side.LEFT, Side.RIGHT) if _is_sashing(parts, side)}
    top, bottom = _along(parts[0].upper, places[0]), _along(parts[-1].lower, places[-1])
    return Work(right - left, y + parts[-1].height, tuple(seams), frozenset(takes), top=top, bottom=bottom)


def _along(stretch: Stretch, x: float) -> Stretch:
    return stretch[0] + x, stretch[1] + x


def _is_sashing(parts: Sequence[Work], side: Side) -> bool:
    """Tell whether nothing but sashing and cornerstones lies along a side."""
    return all(side in part.takes or part.post for part in parts) and any(
        side in part.takes for part in parts
    )


def _way(press: Press, above: Work, below: Work, *, is_odd: bool) -> Point | None:
    """Return to where a seam is pressed. Without sashing, strips stand between corners: second, fourth and so on."""
    if press is None or isinstance(press, Side):
        return None if press is None else WAYS[press]
    takes_above, takes_below = Side.BOTTOM in above.takes, Side.TOP in below.takes
    if takes_above != takes_below:
        return WAYS[Side.BOTTOM if takes_below else Side.TOP]
    assert press is Towards.STRIPS, "of two parts, one is sashing"
    return WAYS[Side.BOTTOM if is_odd else Side.TOP]


def _ended(action: AddTriangles, row: Work, width: float) -> Work:
    """Return a row with triangles at its ends, whose long edges reach out on the side with which they are level."""
    ends = (action.left, action.right)
    reach = (width - row.width) / sum(end is not None for end in ends)
    x, seam = reach if action.left else 0.0, float(action.seam)
    top, bottom = (
        (
            0.0 if _reaches(action.left, side) else x,
            width if _reaches(action.right, side) else x + row.width,
        )
        for side in (Side.TOP, Side.BOTTOM)
    )
    seams = [*row.at(x, 0)]
    for end, side, at in ((ends[0], Side.LEFT, x + seam), (ends[1], Side.RIGHT, x + row.width - seam)):
        if end:
            way = _end_way(action.press, side)
            seams.append(PressedSeam(complex(at, seam), complex(at, row.height - seam), way))
    points = (int(action.left is not None), int(action.right is not None))
    takes = row.takes & {Side.TOP, Side.BOTTOM}
    return Work(width, row.height, tuple(seams), takes, top=top, bottom=bottom, points=points)


def _reaches(end: EndTriangle | None, side: Side) -> bool:
    return end is not None and end.level is side


def _end_way(press: Press, side: Side) -> Point | None:
    """Return to where the seam of a triangle is pressed: to the sashing inwards, where that is pressed to."""
    if isinstance(press, Towards):
        return -WAYS[side]
    return None if press is None else WAYS[press]


def _set_in(action: SetIn, work: Work, triangle: Work) -> Work:
    """Return work with triangles in its inner corners: their right angle is at the top, and seams go to them."""
    seam = float(action.seam)
    left = min([0.0, *(float(place.x) + seam for place in action.places)])
    seams = [*work.at(-left, 0)]
    for place in action.places:
        x, y = float(place.x) - left, float(place.y) + seam
        upright = x + seam if place.turn == 0 else x + triangle.width - seam
        low, level = y + triangle.height - 2 * seam, (x + seam, x + triangle.width - seam)
        out = WAYS[Side.RIGHT if place.turn == 0 else Side.LEFT]
        seams.append(PressedSeam(complex(level[0], y), complex(level[1], y), WAYS[Side.BOTTOM]))
        seams.append(PressedSeam(complex(upright, y), complex(upright, low), out))
    top, bottom = _along(work.upper, -left), _along(work.lower, -left)
    return replace(work, seams=tuple(seams), top=top, bottom=bottom)


def _cornered(action: AddCorners, work: Work, size: float) -> Work:
    """Return work levelled at its sides, with a triangle on each bare edge, to which the seam is pressed."""
    inset, seam, across = (size - float(action.across)) / 2, float(action.seam), float(action.across)
    seams = [*work.at(inset - float(action.level), inset)]
    half = (work.upper[1] - work.upper[0]) / 2 - seam
    for corner in action.corners:
        out = WAYS[corner.side]
        near = inset + seam if corner.side in (Side.TOP, Side.LEFT) else inset + across - seam
        along = inset + float(corner.middle)
        level = corner.side in (Side.TOP, Side.BOTTOM)
        middle, way = (complex(along, near), 1 + 0j) if level else (complex(near, along), 1j)
        seams.append(PressedSeam(middle - half * way, middle + half * way, out))
    return Work(size, size, tuple(seams))


def _squared(work: Work, size: Point, inset: float) -> Work:
    """Return slanting work turned upright, its middle in the middle of its size, and trimmed to that."""
    centre = complex(work.width, work.height) / 2
    motion = Motion(EIGHTH, size / 2 - EIGHTH * centre)
    seams = (_within(seam.moved(motion), size, inset) for seam in work.seams)
    return Work(size.real, size.imag, tuple(seam for seam in seams if seam))


def _within(seam: PressedSeam, size: Point, inset: float) -> PressedSeam | None:
    """Return what is seen of a seam in a finished size."""
    low, high, way = 0.0, 1.0, seam.end - seam.start
    for start, along, far in ((seam.start.real, way.real, size.real), (seam.start.imag, way.imag, size.imag)):
        if abs(along) > EPSILON:
            ends = sorted(((inset - start) / along, (far - inset - start) / along))
            low, high = max(low, ends[0]), min(high, ends[1])
    if low >= high:
        return None
    return replace(seam, start=seam.start + low * way, end=seam.start + high * way)


def _bordered(action: AddBorder, work: Work, strip: Work) -> Work:
    """Return work with a strip on one side; a plain one has no seams that a plan could place."""
    work, seam = work.turned(action.laid), float(action.seam)
    strip = _along_side(action, work, strip)
    turn = ROUND.index(action.side)
    lying, laid = work.turned(-turn), strip.turned(-turn)  # so that the strip lies above
    return _joined([laid, lying], [0.0, 0.0], Side.TOP, seam).turned(turn)


def _along_side(action: AddBorder, work: Work, strip: Work) -> Work:
    if action.turn is not None:
        return strip.turned(action.turn)
    upright = action.side in (Side.LEFT, Side.RIGHT)
    edge = work.height if upright else work.width
    return strip.turned(int(upright != (abs(strip.height - edge) < abs(strip.width - edge))))


def _mitred(action: AddMitred, work: Work) -> Work:
    """Return work with a border whose seams are pressed to it, and whose mitres are opened."""
    work, depth, seam = work.turned(action.laid), float(action.depth), float(action.seam)
    inner = depth + seam
    near, far = complex(inner, inner), complex(work.width, work.height) + complex(depth - seam, depth - seam)
    corners = (near, complex(far.real, near.imag), far, complex(near.real, far.imag))
    diagonals = (-1 - 1j, 1 - 1j, 1 + 1j, -1 + 1j)
    seams = [*work.at(depth, depth)]
    for number, side in enumerate(ROUND):
        seams.append(PressedSeam(corners[number], corners[(number + 1) % 4], WAYS[side]))
        seams.append(PressedSeam(corners[number], corners[number] + depth * diagonals[number], None))
    return Work(work.width + 2 * depth, work.height + 2 * depth, tuple(seams))
