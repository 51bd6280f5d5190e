"""The plain pieces of a top: strips, squares, panels, and the squares that setting triangles are cut from."""

from __future__ import annotations

from collections import Counter, defaultdict
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass

from quarterturn.design import Corner
from quarterturn.measure import INCH, MM, ROOT_TWO, Length, Units, cut_step, round_up
from quarterturn.pieces.counting import held_by, times_made
from quarterturn.pieces.model import Purpose
from quarterturn.pieces.slanting import CORNERS, side_triangles
from quarterturn.setting import ClothUse, Frame, Framed, Grid, Node, OnPoint, Panel, PlainCloth

PURPOSES = {
    ClothUse.BORDER: Purpose.BORDER,
    ClothUse.COPING: Purpose.COPING,
    ClothUse.PANEL: Purpose.PANEL,
    ClothUse.STRIP: Purpose.STRIP,
    ClothUse.SASH: Purpose.SASH,
    ClothUse.SQUARE: Purpose.SQUARE,
    ClothUse.CORNERSTONE: Purpose.CORNERSTONE,
}

QUARTERS, HALVES = 4, 2
"""Triangles from a square cut twice, and once, corner to corner."""

UPRIGHT_STRIP = "upright strip"
"""A strip between columns. A print with a direction stands upright in it, so that it is cut lengthwise."""

MEASURABLE = 100_000
"""A length whose denominator is larger comes from √2: no mark of any ruler is there."""

CENTRE, TOP = "centre", "top"
"""Names of the root, without its borders and with them."""


@dataclass(frozen=True, slots=True)
class ClothPiece:
    """A plain piece as it is cut: `length` is the longer side. Its name tells it from others of its size."""

    fabric: str
    purpose: Purpose
    name: str
    length: Length
    width: Length
    stands: bool = False
    """Whether the longer side runs down as it lies in its section."""


@dataclass(frozen=True, slots=True)
class ClothWant:
    """So many equal pieces that something takes."""

    piece: ClothPiece
    count: int
    user: str


@dataclass(frozen=True, slots=True)
class TriangleCount:
    """Squares of one size to cut into setting triangles: what the whole top needs of them."""

    piece: ClothPiece
    each: int
    """Triangles from a square."""
    needed: int
    users: tuple[str, ...]

    @property
    def squares(self) -> int:
        """Return how many squares give them all."""
        return -(-self.needed // self.each)

    @property
    def surplus(self) -> int:
        """Return how many triangles are left over."""
        return self.squares * self.each - self.needed


def to_cut(size: Length, units: Units) -> Length:
    """Return a size to cut: as it is, or where √2 is in it up to the ruler's next mark, to be trimmed later."""
    return size if is_measurable(size) else round_up(size, cut_step(units))


def is_measurable(size: Length) -> bool:
    """Tell whether a size is an honest fraction, and not one that stands for a multiple of √2."""
    return size.denominator <= MEASURABLE


def mitre_extra(seam: Length, units: Units) -> Length:
    """Return by how much a mitred strip is cut longer than its outer finished edge.

    The folded ends take 2s(1 + √2) at least, raw corner and mitre seam; 2" or 50 mm is what is given (common practice,
    no source: habits range from 1" to 6").
    """
    return max(2 * INCH if units is Units.INCH else 50 * MM, to_cut(2 * seam * (1 + ROOT_TWO), units))


def cloth_piece(
    cloth: PlainCloth, seam: Length, units: Units, name: str = "", extra: Length | int = 0
) -> ClothPiece:
    """Return the piece that a plain cloth of the tree is cut as, a seam larger all round, `extra` longer."""
    sides = sorted((cloth.width, cloth.height))
    width, length = (to_cut(side + 2 * seam, units) for side in (sides[0], sides[1] + extra))
    stands = cloth.width < cloth.height
    return ClothPiece(cloth.fabric, PURPOSES[cloth.use], name or _name(cloth), length, width, stands)


def _name(cloth: PlainCloth) -> str:
    if cloth.use is ClothUse.SQUARE and cloth.width != cloth.height:
        return "plain rectangle"
    if cloth.use is ClothUse.STRIP and cloth.height > cloth.width:
        return UPRIGHT_STRIP
    return cloth.use.value


def strip_piece(framed: Framed, ring: int, place: int, seam: Length, units: Units) -> ClothPiece | None:
    """Return the piece for the strip at a place (left, right, top, bottom) of a border; None where it is pieced."""
    frame = framed.frames[ring]
    cloth = frame.strips[place].node
    if not isinstance(cloth, PlainCloth) or not (cloth.width and cloth.height):
        return None
    pair = "side" if place < 2 else "end"
    name = f"{user_of_frame(framed, ring)}, {pair} strip"
    extra = mitre_extra(seam, units) if frame.corner is Corner.MITRED else 0
    return cloth_piece(cloth, seam, units, name, extra)


def user_of_frame(framed: Framed, ring: int) -> str:
    """Return what a border is called: `border`, `border 2`, `border of wreath`."""
    number = f" {ring + 1}" if len(framed.frames) > 1 else ""
    owner = "" if framed.name == TOP else f" of {framed.name}"
    strip = framed.frames[ring].strips[0].node
    coping = isinstance(strip, PlainCloth) and strip.use is ClothUse.COPING
    return f"{'coping' if coping else 'border'}{number}{owner}"


def user_of(node: Node) -> str:
    """Return what a section is called as the user of pieces."""
    name = getattr(node, "name", "")
    return "quilt centre" if name in (CENTRE, TOP) else name


def panel_piece(panel: Panel, seam: Length, units: Units) -> ClothPiece:
    """Return the piece that a panel is cut as."""
    return cloth_piece(PlainCloth(ClothUse.PANEL, panel.fabric, panel.width, panel.height), seam, units)


def side_square(node: OnPoint) -> ClothPiece:
    """Return the square that is cut into four side triangles."""
    side = node.side_square
    return ClothPiece(node.side_fabric, Purpose.SIDE_TRIANGLES, "square for side triangles", side, side)


def corner_square(node: OnPoint) -> ClothPiece:
    """Return the square that is cut into two corner triangles."""
    side = node.corner_square
    return ClothPiece(node.corner_fabric, Purpose.CORNER_TRIANGLES, "square for corner triangles", side, side)


def cloth_wants(top: Node, seam: Length, units: Units) -> Iterator[ClothWant]:
    """Yield the plain pieces of a top, those of the borders first, then what each section takes."""
    made = times_made(top)
    for node, times in reversed(made.items()):
        if isinstance(node, Framed):
            yield from _border_wants(node, times, seam, units)
    for node, times in made.items():
        if isinstance(node, Panel):
            yield ClothWant(panel_piece(node, seam, units), times, user_of(node))
        elif isinstance(node, PlainCloth) and node == top:
            yield ClothWant(cloth_piece(node, seam, units), times, "quilt centre")
        elif isinstance(node, Grid | OnPoint):
            for held, count in held_by(node).items():
                if isinstance(held, PlainCloth):
                    yield ClothWant(cloth_piece(held, seam, units), count * times, user_of(node))
    for triangles in triangle_counts(made):
        yield ClothWant(triangles.piece, triangles.squares, _told(triangles))


def _border_wants(framed: Framed, times: int, seam: Length, units: Units) -> Iterator[ClothWant]:
    centre = framed.centre.node
    if isinstance(centre, PlainCloth):
        yield ClothWant(cloth_piece(centre, seam, units), times, user_of(framed))
    for ring, frame in enumerate(framed.frames):
        user = user_of_frame(framed, ring)
        for place in _pairs(frame):
            if piece := strip_piece(framed, ring, place, seam, units):
                yield ClothWant(piece, 2 * times, user)
        for corner, count in Counter(child.node for child in frame.corners).items():
            if isinstance(corner, PlainCloth):
                yield ClothWant(cloth_piece(corner, seam, units), count * times, user)


def _pairs(frame: Frame) -> tuple[int, int]:
    """Return the first place of each pair of strips, the pair sewn first before the other."""
    return (0, 2) if frame.sides_first else (2, 0)


def _told(triangles: TriangleCount) -> str:
    kind = "side" if triangles.each == QUARTERS else "corner"
    over = f" ({triangles.surplus} left over)" if triangles.surplus else ""
    return f"{triangles.needed} {kind} triangles of {', '.join(triangles.users)}{over}"


def triangle_counts(made: Mapping[Node, int]) -> tuple[TriangleCount, ...]:
    """Return the squares for setting triangles of all sections on point, equal ones together."""
    needed: Counter[ClothPiece] = Counter()
    users: dict[ClothPiece, list[str]] = defaultdict(list)
    for node, piece, count in _triangles(made.items()):
        if count:
            needed[piece] += count
            users[piece].append(user_of(node))
    return tuple(
        TriangleCount(piece, each_of(piece), count, tuple(dict.fromkeys(users[piece])))
        for piece, count in needed.items()
    )


def each_of(piece: ClothPiece) -> int:
    """Return how many triangles a square gives."""
    return QUARTERS if piece.purpose is Purpose.SIDE_TRIANGLES else HALVES


def _triangles(made: Iterable[tuple[Node, int]]) -> Iterator[tuple[OnPoint, ClothPiece, int]]:
    for node, times in made:
        if isinstance(node, OnPoint):
            yield node, side_square(node), side_triangles(node) * times
            yield node, corner_square(node), CORNERS * times
