"""Cloth on the table: exact shapes that can be cut, turned, fused and sewn, and nothing else.

A patch is whatever hangs together: a square of cloth, a unit, a row, a whole top. Its edge is the raw outline.
Its scraps are the cloth in it as seen from the right side, the later on top of the earlier.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace

from quarterturn.geometry import (
    Bounds,
    Line,
    Motion,
    Path,
    Point,
    Region,
    Segment,
    StraightLine,
    keep_left,
    merged,
    path_bounds,
    quarter_turns,
    rectangle,
    region_bounds,
    same_outline,
    same_region,
    shared_area,
    shift,
)
from quarterturn.measure import Length

EQUAL = 1e-6
"""Lengths nearer than this, in inches, are equal on the table."""


NOTHING = Region(())


class SpoiledError(Exception):
    """Something cannot be done as the step says. The message is a sentence for the person who sews."""


GROUND = -1
"""The number of a scrap that is no fused shape."""


@dataclass(frozen=True, slots=True)
class Print:
    """How a print lies that must stand upright: where its top is, and in how many ways it looks the same, 1 or 2."""

    up: Point
    ways: int

    def moved(self, motion: Motion) -> Print:
        """Return the print laid elsewhere."""
        return Print(motion(self.up) - motion(0j), self.ways)

    def looks_like(self, other: Print) -> bool:
        """Tell whether the two look the same way up."""
        return abs(self.up**self.ways - other.up**other.ways) < EQUAL


@dataclass(frozen=True, slots=True)
class Scrap:
    """One layer of cloth. `hollow` has been cut away behind another scrap and is not cloth any more.

    `number` is that of the shape which it was cut as, or GROUND. `print` is known where it must stand upright.
    """

    fabric: str
    region: Region
    box: Bounds
    hollow: Region = NOTHING
    number: int = GROUND
    print: Print | None = None

    def moved(self, motion: Motion) -> Scrap:
        """Return the scrap laid elsewhere."""
        region, hollow = motion.region(self.region), motion.region(self.hollow)
        lying = self.print.moved(motion) if self.print else None
        return replace(self, region=region, box=region_bounds(region), hollow=hollow, print=lying)


@dataclass(frozen=True, slots=True)
class CutOff:
    """Equal pieces of a fabric that were cut away behind shapes, as they lay there."""

    fabric: str
    region: Region
    count: int


@dataclass(frozen=True, slots=True)
class Ring:
    """A ring of web on its paper, as seen from the paper side, about the middle of the shape drawn on it.

    `hollow` is where the web has been cut out of its middle.
    """

    drawn: Region
    out: Region
    hollow: Region = NOTHING


@dataclass(frozen=True, slots=True)
class Fused:
    """A shape fused on, whole even after it has been cut through.

    `loose` is where no web holds it to what lies below; its stitching starts at `knots` and swings in by `swing`.
    """

    number: int
    region: Region
    loose: Region
    stitched: bool = False
    knots: tuple[Point, ...] = ()
    swing: float = 0.0

    def moved(self, motion: Motion) -> Fused:
        """Return the shape laid elsewhere."""
        knots = tuple(motion(knot) for knot in self.knots)
        region, loose = motion.region(self.region), motion.region(self.loose)
        return replace(self, region=region, loose=loose, knots=knots)


@dataclass(frozen=True, slots=True)
class Marks:
    """What shows on cloth where it can be measured from: creases, drawn lines, marked points, cut edges, a seam.

    `seam` is the one along which two halves were rejoined, from end to end.
    """

    creases: tuple[StraightLine, ...] = ()
    drawn: tuple[StraightLine, ...] = ()
    points: tuple[Point, ...] = ()
    cuts: tuple[StraightLine, ...] = ()
    seam: tuple[Point, Point] | None = None

    def moved(self, motion: Motion) -> Marks:
        """Return the marks laid elsewhere."""
        creases, drawn, cuts = (
            tuple(laid(line, motion) for line in lines) for lines in (self.creases, self.drawn, self.cuts)
        )
        points = tuple(motion(point) for point in self.points)
        seam = (motion(self.seam[0]), motion(self.seam[1])) if self.seam else None
        return Marks(creases, drawn, points, cuts, seam)


def laid(line: StraightLine, motion: Motion) -> StraightLine:
    """Return a line laid elsewhere by a motion that does not mirror."""
    return StraightLine(motion(line.through), motion.factor * line.direction)


@dataclass(frozen=True, slots=True)
class Patch:
    """Cloth that hangs together.

    `shapes` are fused on, in their order; `backing` is a ring of web fused to the wrong side. Cloth with its paper
    peeled off is `fusible`, but where it is `loose`.
    """

    edge: Path
    scraps: tuple[Scrap, ...]
    marks: Marks = Marks()
    shapes: tuple[Fused, ...] = ()
    backing: Ring | None = None
    fusible: bool = False
    loose: Region = NOTHING

    @property
    def box(self) -> Bounds:
        """Return the upright box of the raw outline."""
        return path_bounds(self.edge)

    def moved(self, motion: Motion) -> Patch:
        """Return the patch laid elsewhere."""
        return replace(
            self,
            edge=motion.path(self.edge),
            scraps=tuple(s.moved(motion) for s in self.scraps),
            marks=self.marks.moved(motion),
            shapes=tuple(shape.moved(motion) for shape in self.shapes),
        )

    def turned(self, turn: int) -> Patch:
        """Return the patch after so many quarter turns clockwise."""
        return self.moved(quarter_turns(turn)) if turn % 4 else self

    def centred(self) -> Patch:
        """Return the patch with the middle of its box at the origin."""
        return self.moved(shift(-self.box.centre))

    def lying(self, width: Length, height: Length) -> Patch:
        """Return the patch about the origin, turned by a quarter where only so it has these measures."""
        box, here = self.box, self.centred()
        fits = abs(box.width - width) < EQUAL and abs(box.height - height) < EQUAL
        turned = abs(box.height - width) < EQUAL and abs(box.width - height) < EQUAL
        return here.turned(1) if turned and not fits else here


def plain(fabric: str, width: Length | float, height: Length | float, lying: Print | None = None) -> Patch:
    """Return a rectangle of one fabric, its top left corner at the origin."""
    edge = rectangle(0.0, 0.0, float(width), float(height))
    return cut_to(fabric, Region((edge,)), lying)


def cut_to(fabric: str, region: Region, lying: Print | None = None) -> Patch:
    """Return cloth of one fabric cut out along an outline, and along that of its hole if it has one."""
    return Patch(region.paths[0], (Scrap(fabric, region, region_bounds(region), print=lying),))


def with_scrap(patch: Patch, cloth: Scrap, region: Region, number: int = GROUND) -> Patch:
    """Return a patch with one more layer on top, cut from a piece of cloth that lies as the layer does."""
    layer = replace(cloth, region=region, box=region_bounds(region), number=number)
    return replace(patch, scraps=(*patch.scraps, layer))


def with_shape(patch: Patch, cloth: Scrap, shape: Fused) -> Patch:
    """Return a patch with one more shape on top, cut from a piece of cloth that lies as the shape does."""
    return replace(with_scrap(patch, cloth, shape.region, shape.number), shapes=(*patch.shapes, shape))


def keep(patch: Patch, line: StraightLine) -> Patch | None:
    """Return the part of a patch on the positive side of a line; None where nothing is there."""
    edge = keep_left(Region((patch.edge,)), line)
    if edge.is_empty():
        return None
    if len(edge.paths) > 1:
        raise SpoiledError("One cut leaves the piece in three parts.")
    scraps = (kept_scrap(scrap, line) for scrap in patch.scraps)
    return replace(patch, edge=merged(edge.paths[0]), scraps=tuple(s for s in scraps if s))


def kept_scrap(scrap: Scrap, line: StraightLine) -> Scrap | None:
    """Cut one layer; a layer whose box lies wholly on the positive side is left as it is."""
    box, way = scrap.box, line.direction
    middle = line.side(complex(box.left + box.right, box.top + box.bottom) / 2)
    reach = (abs(way.imag) * (box.right - box.left) + abs(way.real) * (box.bottom - box.top)) / 2
    if middle >= reach:
        return scrap
    if middle <= -reach:
        return None
    region = keep_left(scrap.region, line)
    if region.is_empty():
        return None
    return replace(scrap, region=region, box=region_bounds(region), hollow=keep_left(scrap.hollow, line))


def same_cloth(a: Patch, b: Patch) -> bool:
    """Tell whether two patches are the same cloth lying in the same place.

    Which of two layers came first matters only where they lie on one another.
    """
    if not same_outline(a.edge, b.edge) or len(a.scraps) != len(b.scraps):
        return False
    left = list(b.scraps)
    for scrap in a.scraps:
        twin = next((other for other in left if _same_scrap(scrap, other)), None)
        if twin is None or any(_overlap(below, twin) for below in left[: left.index(twin)]):
            return False
        left.remove(twin)
    return True


def _same_scrap(a: Scrap, b: Scrap) -> bool:
    if a.print and b.print and not a.print.looks_like(b.print):
        return False
    return a.fabric == b.fabric and same_region(a.region, b.region)


def _overlap(a: Scrap, b: Scrap) -> bool:
    return shared_area(a.region, b.region) > EQUAL


def facing(patch: Patch, way: Point) -> Line:
    """Return the one straight raw edge whose outside lies in a direction (of length 1)."""
    found = [s for s in patch.edge.segments if isinstance(s, Line) and _faces(s, way)]
    if len(found) != 1:
        raise SpoiledError("There is no straight edge to sew along.")
    return found[0]


def _faces(edge: Line, way: Point) -> bool:
    out = -1j * (edge.end - edge.start) / edge.length()
    return abs(out - way) < 1e-7


def sew(first: Patch, second: Patch, way: Point, seam: Length | float) -> Patch:
    """Sew the second patch to the edge of the first that faces `way`.

    Raw edges lie together, end on end; the seam is sewn `seam` inside them; both allowances vanish behind the work.
    Where the first patch lies, the result stays. Raises SpoiledError where the two edges differ in length.
    """
    near, far = facing(first, way), facing(second, -way)
    if abs(near.length() - far.length()) > EQUAL:
        raise SpoiledError(
            f"The edges to be sewn together differ: one is {near.length():.4f} inches long, "
            f"the other {far.length():.4f}."
        )
    left = seamed(first, near, float(seam))
    right = seamed(second, far, float(seam))
    seams_meet = near.start - far.end - 2 * way * float(seam)
    right = right.moved(shift(seams_meet))
    return Patch(_spliced(left.edge, right.edge, way), left.scraps + right.scraps)


def seamed(patch: Patch, edge: Line, seam: float) -> Patch:
    """Return what of a patch is still seen when a seam runs inside one of its edges."""
    along = (edge.end - edge.start) / edge.length()
    kept = keep(patch, StraightLine(edge.start + 1j * along * seam, along))
    if kept is None:
        raise SpoiledError("The piece is narrower than its seam allowance.")
    return kept


def _spliced(left: Path, right: Path, way: Point) -> Path:
    """Return the outline round two patches that now touch along a seam, its ends bridged where they are apart."""
    first = _opened(left, lambda s: isinstance(s, Line) and _faces(s, way))
    second = _opened(right, lambda s: isinstance(s, Line) and _faces(s, -way))
    bridges = Line(first[-1].end, second[0].start), Line(second[-1].end, first[0].start)
    return merged(Path((*first, bridges[0], *second, bridges[1])))


def _opened(path: Path, is_gap: Callable[[Segment], bool]) -> tuple[Segment, ...]:
    """Return the segments of a path from behind one of them round to before it."""
    gap = next(i for i, s in enumerate(path.segments) if is_gap(s))
    return (*path.segments[gap + 1 :], *path.segments[:gap])
