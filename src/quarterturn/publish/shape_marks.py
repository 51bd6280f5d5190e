"""The marks of a traced shape at true size, about the sheet's origin: outline, web ring, cuts, cross, grain."""

from __future__ import annotations

import bisect
import cmath
import math
from collections.abc import Iterator
from dataclasses import dataclass, replace
from functools import lru_cache

from quarterturn.blocks import FusedShape
from quarterturn.geometry import (
    EPSILON,
    STAY,
    Bounds,
    Line,
    Motion,
    Path,
    Point,
    Region,
    Segment,
    StraightLine,
    is_same_mirrored,
    is_same_turned,
    mirror_across_vertical,
    path_bounds,
    path_crossings,
    region_bounds,
    shift,
)
from quarterturn.publish.clearing import are_inside, is_clear, lines_of
from quarterturn.publish.lettering import largest_size
from quarterturn.publish.paper import INK, NOTE, SMALLEST
from quarterturn.publish.pens import moved
from quarterturn.publish.sheet import MM_PER_INCH, Area, Ink, Mark, Scale, Sheet, Stroke, Text

TRACED = Ink(None, INK, 0.25)
WEB = Ink(None, INK, 0.25, (3.0, 1.5))
HOLLOW = Ink(None, INK, 0.25, (1.0, 1.0))
CUT = Ink(None, INK, 0.25, (6.0, 1.2, 0.8, 1.2))
CROSS = Ink(None, INK, 0.4)
ARROW = Ink(INK, INK, 0.25)

CUTTER_MARGIN = 5.0
"""Blank round the lines for a cutting machine, in millimetres."""
BEYOND = 2.5
"""Cut lines run on this far beyond the web, in millimetres."""
ROOMY = 15.0
"""A hollow of at least this radius has room for the lettering; else it stands outside the shape."""
DETOURS = tuple(float(sign * off) for off in range(0, 43, 3) for sign in (1, -1))
"""How far off a diagonal, in degrees, the names of the web lines may stand."""
TICK = 4.0
"""How far a mark of the cross on the web reaches inside and outside the outline, in millimetres."""
LIFTS = 40
"""Millimetres above the mark at the top of a shape among which its name finds a place clear of the web's edge."""
CROSS_ROOM = 8.0
"""Millimetres from the centre cross that the names of the web lines keep where they can."""
DIAGONALS = (-45.0, -135.0, 135.0, 45.0)

TRUE_SIZE = Scale(MM_PER_INCH)


@dataclass(frozen=True, slots=True)
class NumberedCut:
    """A cut as it lies on a template, with its number in the master."""

    number: int
    line: StraightLine


@dataclass(frozen=True, slots=True)
class Template:
    """A shape as it is to be traced: already mirrored, where its two sides differ."""

    shape: FusedShape
    cuts: tuple[NumberedCut, ...]
    mirrored: bool
    """True where the drawing is the mirror image of the sewn shape."""


def template_of(shape: FusedShape, cuts: tuple[StraightLine, ...]) -> Template:
    """Return a shape ready for tracing on the paper side: the mirror image, unless both sides are the same.

    It is laid by its vertical line, so that a shape that leans is not turned to be its mirror image. The middle of its
    upright box is at 0; cuts that miss it are left out, and keep their numbers.
    """
    mirrored = not is_same_mirrored(shape.traced, upright=True)
    centre = path_bounds(shape.traced).centre
    motion = shift(-centre) if abs(centre) > EPSILON else STAY
    if mirrored:
        motion = motion.then(mirror_across_vertical())
    moved = _moved(shape, motion)
    crossing = tuple(
        NumberedCut(number, _laid(cut, motion))
        for number, cut in enumerate(cuts, 1)
        if _crosses(moved, _laid(cut, motion))
    )
    return Template(moved, crossing, mirrored)


def _laid(cut: StraightLine, motion: Motion) -> StraightLine:
    """Return a cut as it lies on the template; lines that are only shifted keep their direction."""
    through = motion(cut.through)
    return StraightLine(through, motion(cut.through + cut.direction) - through)


def _crosses(shape: FusedShape, cut: StraightLine) -> bool:
    return bool(path_crossings(shape.traced, cut)) or any(
        abs(cut.side(p)) < EPSILON for p in shape.traced.corners()
    )


def _moved(shape: FusedShape, motion: Motion) -> FusedShape:
    return replace(
        shape,
        traced=motion.path(shape.traced),
        hole=motion.path(shape.hole) if shape.hole else None,
        ring_out=motion.region(shape.ring_out),
        ring_in=motion.region(shape.ring_in),
    )


def template_marks(template: Template, size: str, *, everywhere: bool = False) -> tuple[Mark, ...]:
    """Return the marks of a template in millimetres about its middle.

    `size` is written on it. `everywhere` repeats the names of the web lines on all four diagonals, for
    shapes that are spread over several pages.
    """
    shape = template.shape
    marks: list[Mark] = [Area(TRUE_SIZE.region(shape.ring_out), WEB)]
    if not shape.ring_in.is_empty():
        marks.append(Area(TRUE_SIZE.region(shape.ring_in), HOLLOW))
    marks += [Stroke((line,), CUT) for line in cut_lines(template)]
    marks += (*_cross(), *(Stroke((tick,), CROSS) for tick in ticks(shape)), *_top(shape))
    marks.append(Area(TRUE_SIZE.region(shape.region), TRACED))
    inner = inner_radius(shape)
    lettering = tuple(_lettering_inside(template, inner, size)) if inner >= ROOMY else ()
    if lettering and are_inside(lettering, TRUE_SIZE.region(blank_inside(shape))):
        marks += _ring_lettering(shape, DIAGONALS if everywhere else DIAGONALS[:1])
        marks += lettering
    else:
        marks += _lettering_outside(template, size)
    return tuple(marks)


def blank_inside(shape: FusedShape) -> Region:
    """Return where no line runs inside a shape: the hollow of its web, or the hole of a ring within its web."""
    if not shape.hole:
        return shape.ring_in
    if len(shape.ring_out.paths) < 2:
        return Region(())
    inside = min(shape.ring_out.paths, key=lambda path: path_bounds(path).width)
    return Region((inside if inside.area() > 0 else inside.reversed(),))


def inner_radius(shape: FusedShape) -> float:
    """Return half the smaller extent of the blank inside in millimetres; 0 where there is none."""
    inside = blank_inside(shape)
    if inside.is_empty():
        return 0.0
    bounds = region_bounds(inside)
    return min(bounds.width, bounds.height) / 2 * MM_PER_INCH


def cut_lines(template: Template) -> Iterator[Line]:
    """Return the cuts as lines that run a little beyond the web."""
    box = region_bounds(TRUE_SIZE.region(template.shape.ring_out)).grown(BEYOND)
    for cut in template.cuts:
        if line := _within(StraightLine(TRUE_SIZE.point(cut.line.through), cut.line.direction), box):
            yield line


def _within(line: StraightLine, box: Bounds) -> Line | None:
    """Return what of an endless line lies in an upright box."""
    near, far = -math.inf, math.inf
    for at, way, low, high in (
        (line.through.real, line.direction.real, box.left, box.right),
        (line.through.imag, line.direction.imag, box.top, box.bottom),
    ):
        if abs(way) > EPSILON:
            first, last = sorted(((low - at) / way, (high - at) / way))
            near, far = max(near, first), min(far, last)
        elif not low <= at <= high:
            return None
    return Line(line.at(near), line.at(far)) if near < far else None


def _cross() -> Iterator[Mark]:
    yield Stroke((Line(-4 + 0j, 4 + 0j),), CROSS)
    yield Stroke((Line(-4j, 4j),), CROSS)


def ticks(shape: FusedShape) -> tuple[Line, ...]:
    """Return where the lines of the cross leave a shape about the origin: a mark across each edge, on web that stays.

    The cross itself is hollowed out; a shape that is folded through its marks bears the cross as two creases.
    """
    marks = []
    for way in (-1j, 1 + 0j, 1j, -1 + 0j):
        found = _met(shape.traced, way)
        if found is not None and found > 0:
            at = found * MM_PER_INCH
            marks.append(Line((at - TICK) * way, (at + TICK) * way))
    return tuple(marks)


def _met(path: Path, way: Point) -> float | None:
    """Return how far along a way from the origin a path is met last; None where it is not met at all."""
    line = StraightLine(0j, way)
    met = (*path_crossings(path, line), *(p for p in path.corners() if abs(line.side(p)) < EPSILON))
    return max((line.along(p) for p in met), default=None)


def _top(shape: FusedShape) -> Iterator[Text]:
    """Name the mark at the top, where a shape is not the same with each of its sides there."""
    if is_same_turned(shape.traced):
        return
    above = _met(shape.ring_out.paths[0], -1j)
    if above is None:
        return
    web = lines_of([TRUE_SIZE.region(shape.ring_out)])
    heights = (-above * MM_PER_INCH - 0.8 - lift for lift in range(LIFTS))
    places = (Text(complex(-1.2, y), "top", NOTE, "end") for y in heights)
    yield from next(([place] for place in places if is_clear(place, web)), [])


def _lettering_inside(template: Template, inner: float, size: str) -> Iterator[Mark]:
    """Return name, size, grain and the names of the cuts, each in its own part of the hollow."""
    shape = template.shape
    for cut in template.cuts:
        yield from _cut_name(cut, inner, blank_inside(shape))
    room, middle = inner * 0.62 - 3, inner * 0.36
    places = (complex(-middle, -middle), complex(middle, middle + 2), complex(-middle, middle + 1))
    if any(min(abs(c.line.direction.real), abs(c.line.direction.imag)) > EPSILON for c in template.cuts):
        places = (-1.4j * middle, 1.4j * middle + 2j, -1.5 * middle + 0j)
    fitted = tuple(_fitted(places[0], shape.name, room, bold=True))
    if fitted:
        yield from (*fitted, *_fitted(places[1], size, room, bold=False))
    else:
        yield _named_below(shape, size)
    yield from grain_arrow(places[2], min(24.0, inner * 0.5))


def _cut_name(cut: NumberedCut, inner: float, inside: Region) -> Iterator[Text]:
    """Return the name of a cut along its line, near where it leaves the hollow: at the top, or at the right."""
    foot = TRUE_SIZE.point(cut.line.at(cut.line.along(0j)))
    if abs(foot) > inner * 0.8:
        return
    along = _upwards(cut.line.direction)
    turn, reach = math.degrees(cmath.phase(along)), math.sqrt(inner**2 - abs(foot) ** 2)
    if abs(foot) < EPSILON:
        reach = min(reach, _distance(inside.paths[0], turn))
    yield Text(foot + along * (reach - 2.5) + along * -1.4j, f"cut {cut.number}", NOTE, "end", turn)


def _upwards(way: Point) -> Point:
    """Return a direction, or the opposite one, so that it leads to the right, or straight up."""
    upright = abs(way.real) < EPSILON
    return way if (way.imag < 0 if upright else way.real > 0) else -way


def _lettering_outside(template: Template, size: str) -> Iterator[Mark]:
    shape = template.shape
    box = region_bounds(TRUE_SIZE.region(shape.ring_out)).grown(BEYOND)
    for cut in template.cuts:
        line = _within(StraightLine(TRUE_SIZE.point(cut.line.through), cut.line.direction), box)
        if line:
            along = _upwards(cut.line.direction)
            end = max((line.start, line.end), key=lambda p: (p * along.conjugate()).real)
            steep = abs(along.imag) > abs(along.real) + EPSILON
            beyond = -1.5j if along.imag < 0 else 1.5j + NOTE * 1j
            at = end + (beyond if steep else 1.5 + 1j)
            yield Text(at, f"cut {cut.number}", NOTE, "middle" if steep else "start")
    yield _named_below(shape, size)
    yield from grain_arrow(complex(box.left - 10, 0), 18.0)


def _named_below(shape: FusedShape, size: str) -> Text:
    """Return name and size below the web, where they find no room inside."""
    low = region_bounds(TRUE_SIZE.region(shape.ring_out)).grown(BEYOND).bottom
    return Text(complex(0, low + 6), f"{shape.name}, {size}", NOTE + 0.4, "middle", bold=True)


def _fitted(at: Point, text: str, room: float, *, bold: bool) -> Iterator[Text]:
    """Return a text as large as the room allows; none where it would be too small to read."""
    size = largest_size(text, room, (6.0, 5.0, 4.0, 3.4, 3.0, SMALLEST), bold=bold)
    if size:
        yield Text(at, text, size, "middle", bold=bold)


def _ring_lettering(shape: FusedShape, diagonals: tuple[float, ...]) -> Iterator[Mark]:
    """Return the names of the web lines on diagonals, or as near to each as none of the lines runs through them."""
    regions = (shape.ring_out, shape.region, shape.ring_in)
    lines = lines_of((TRUE_SIZE.region(region) for region in regions), ticks(shape))
    for angle in diagonals:
        ways = [tuple(_ring_names(shape, angle + off)) for off in DETOURS]
        ways += [tuple(_ring_names(shape, angle + 90 + off)) for off in DETOURS]
        apart = (names for names in ways if all(abs(name.at) > CROSS_ROOM for name in names))
        clear = (names for names in (*apart, *ways) if all(is_clear(name, lines) for name in names))
        yield from next(clear, ())


def _ring_names(shape: FusedShape, angle: float) -> Iterator[Text]:
    """Return the names of the two web lines where a ray from the middle meets them."""
    traced, outside = _distance(shape.traced, angle), _distance(shape.ring_out.paths[0], angle)
    if outside - traced >= SMALLEST * 1.7:
        yield _along_curve("web: cut here", angle, (traced + outside) / 2, _slant(shape.traced, angle))
    if shape.ring_in.is_empty():
        return
    inside = _distance(shape.ring_in.paths[0], angle)
    yield _along_curve("hollow out", angle, inside - 3.2, _slant(shape.ring_in.paths[0], angle))


def _along_curve(text: str, angle: float, radius: float, slant: float) -> Text:
    """Return a text on a ray from the middle, at a distance from there, along a line that runs at a slant."""
    upper = angle < 0
    drop = -0.34 * NOTE if upper else 0.34 * NOTE
    at = cmath.rect(radius + drop, math.radians(angle))
    return Text(at, text, NOTE, "middle", slant if upper else slant - 180)


def _nearest(path: Path, angle: float) -> tuple[Segment, float]:
    """Return where a ray from the middle meets an outline: a segment and a parameter, near enough for a label."""
    angles, marks = _by_angle(path)
    wanted = cmath.phase(cmath.rect(1, math.radians(angle)))
    index = bisect.bisect(angles, wanted)
    near = (index - 1, index % len(angles))
    return marks[min(near, key=lambda k: abs(math.remainder(angles[k] - wanted, math.tau)))]


@lru_cache(maxsize=16)
def _by_angle(path: Path) -> tuple[list[float], list[tuple[Segment, float]]]:
    """Return marks along an outline with the angles at which they are seen from the middle, in their order."""
    steps = 64 if len(path.segments) < 100 else 4
    marks = [(segment, k / steps) for segment in path.segments for k in range(steps + 1)]
    seen = sorted(((cmath.phase(s.point(t)), index) for index, (s, t) in enumerate(marks)))
    return [angle for angle, _ in seen], [marks[index] for _, index in seen]


def _distance(path: Path, angle: float) -> float:
    """Return how far from the middle a ray meets an outline, in millimetres."""
    segment, t = _nearest(path, angle)
    return MM_PER_INCH * abs(segment.point(t))


def _slant(path: Path, angle: float) -> float:
    """Return the angle in degrees at which an outline runs where a ray meets it; across the ray, on a circle."""
    segment, t = _nearest(path, angle)
    off = math.degrees(cmath.phase(segment.tangent(t) / cmath.rect(1, math.radians(angle + 90))))
    return angle + 90 + (off if abs(off) > 1 else 0.0)


def grain_arrow(middle: Point, length: float) -> Iterator[Mark]:
    """Return an upright double arrow with its name beside it."""
    top, bottom = middle - length / 2 * 1j, middle + length / 2 * 1j
    yield Stroke((Line(top, bottom),), Ink(None, INK, 0.3))
    for tip, way in ((top, 1j), (bottom, -1j)):
        corners = (tip, tip + 2.6 * way + 0.9, tip + 2.6 * way - 0.9)
        sides = zip(corners, (*corners[1:], corners[0]), strict=True)
        path = Path(tuple(Line(a, b) for a, b in sides))
        yield Area(Region((path if path.area() > 0 else path.reversed(),)), ARROW)
    yield Text(middle - 1.6, "grain", NOTE, "middle", -90.0)


def extent(template: Template) -> tuple[float, float]:
    """Return width and height of the web line, the outermost of the template, in millimetres."""
    box = region_bounds(TRUE_SIZE.region(template.shape.ring_out))
    return box.width, box.height


def traced_extent(template: Template) -> tuple[float, float]:
    """Return width and height of the traced line in millimetres."""
    box = path_bounds(TRUE_SIZE.path(template.shape.traced))
    return box.width, box.height


def line_points(template: Template) -> list[Point]:
    """Return points along all curves of a template, 2 mm apart or less."""
    shape = template.shape
    paths = (*shape.region.paths, *shape.ring_out.paths, *shape.ring_in.paths)
    found: list[Point] = []
    for segment in (TRUE_SIZE.segment(s) for path in paths for s in path.segments):
        steps = math.ceil(segment.length() / 2)
        found += [segment.point(k / steps) for k in range(steps)]
    return found


def cutter_sheet(template: Template) -> Sheet:
    """Return a template's lines alone, at true size and without lettering, for a cutting machine."""
    width, height = (side + 2 * CUTTER_MARGIN for side in extent(template))
    shape = template.shape
    scale = Scale(MM_PER_INCH, complex(width, height) / 2)
    marks: list[Mark] = [Area(scale.region(ring), WEB) for ring in (shape.ring_out, shape.ring_in)]
    marks.append(Area(scale.region(shape.region), TRACED))
    marks += [moved(mark, shift(scale.origin)) for mark in _cross()]
    alt = f"The lines of the shape {shape.name} at true size: traced line, web ring and centre cross."
    return Sheet(width, height, tuple(marks), shape.name, alt)
