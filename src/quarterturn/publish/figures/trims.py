"""Units of any master: what is cut away behind their shapes, and where they are trimmed."""

from __future__ import annotations

from collections.abc import Iterator

from quarterturn.blocks import GROUND, Layer, Master, Part
from quarterturn.design import code_of_unit, quarter_of_unit
from quarterturn.geometry import (
    Line,
    Path,
    Point,
    Region,
    Segment,
    StraightLine,
    as_polygon,
    from_polygons,
    keep_left,
    line_through,
    mirror_across_vertical,
    offset_region,
    path_bounds,
    without,
)
from quarterturn.proof import Pattern
from quarterturn.publish.figures.cells import COARSE, layer_colour, layered, unit_of
from quarterturn.publish.figures.frames import Drawing, beside
from quarterturn.publish.figures.inks import (
    CREASE,
    CUT,
    EDGE,
    OFFCUT,
    OUTLINE,
    SMALL,
    STITCH,
    TRIM,
    caption,
    cloth,
    line,
    measured,
    wrong_side,
)
from quarterturn.publish.figures.plans import TOP, board_of, clipped
from quarterturn.publish.sheet import Area, Ink, Mark, Scale, Sheet, Stroke
from quarterturn.publish.wording import length
from quarterturn.publish.wording.places import NEAR, measure
from quarterturn.steps import Behind, CutAway, Reference, Step, Trim, TrimLine

LARGEST = 27.0
LEAST_WIDTH = 30.0
"""Millimetres of a drawing, so that the words below it have room."""


def finishing_figure(pattern: Pattern, name: str, away: Step | None, trim: Step | None) -> Sheet | None:
    """Return a unit from its wrong side with all that is cut away, and from its right side with its trims."""
    drawings, said = [], []
    if away:
        assert isinstance(away.action, CutAway)
        drawings.append(_from_behind(pattern, name, away.action))
        said.append(
            "from its wrong side, with the lines inside the stitching along which layers are cut away"
        )
    if trim:
        assert isinstance(trim.action, Trim)
        drawings.append(_trimmed_unit(pattern, name, trim.action))
        said.append("from its right side, with the edges that are trimmed and what they are measured from")
    if not drawings:
        return None
    alt = f"Unit {name} {'; and '.join(said)}."
    return beside(drawings, 6).sheet(f"Cutting away and trimming: unit {name}", alt)


def _part_of(pattern: Pattern, name: str) -> tuple[Master, Part]:
    master = pattern.blocks.master(pattern.design.colourway(code_of_unit(name)).recipe)
    return master, master.part(quarter_of_unit(name))


def _scaled(outline: Path, mirrored: bool = False, largest: float = LARGEST) -> tuple[Scale, float, float]:
    """Return the scale at which an outline is drawn below the room for a measure, and its size on the sheet."""
    bounds = path_bounds(outline)
    factor = largest / max(bounds.width, bounds.height)
    left = -bounds.right if mirrored else bounds.left
    scale = Scale(factor, -complex(left, bounds.top) * factor + TOP * 1j)
    return scale, bounds.width * factor, bounds.height * factor


def _from_behind(pattern: Pattern, name: str, action: CutAway) -> Drawing:
    master, part = _part_of(pattern, name)
    piece = part.motion.path(part.outline)
    scale, width, height = _scaled(piece, mirrored=True)
    flip = mirror_across_vertical()
    marks: list[Mark] = [
        _wrong(pattern, action.code, GROUND, scale.region(flip.region(Region((piece,)))), OUTLINE)
    ]
    hollows = [(each, _hollow(master, part, each)) for each in action.behind]
    for each, hollow in hollows:
        marks.append(_wrong(pattern, action.code, each.part, scale.region(flip.region(hollow)), EDGE))
    for shape in master.shapes:
        region = clipped(part.motion.region(shape.region), piece)
        marks += _inner(flip.region(region), flip.path(piece), scale, STITCH)
    for _, hollow in hollows:
        marks += _inner(flip.region(hollow), flip.path(piece), scale, CUT)
    insides = list(dict.fromkeys(length(pattern.design, each.inside) for each in action.behind))
    inside = f"{insides[0]} inside stitching" if len(insides) == 1 else f"{' or '.join(insides)} inside"
    notes = ("wrong side: cut on the", "long dashes,", inside)
    middle = max(width, LEAST_WIDTH) / 2
    marks += [caption(complex(middle, TOP + height + 3 + 3.3 * k), n, SMALL) for k, n in enumerate(notes)]
    return Drawing(max(width, LEAST_WIDTH), TOP + height + 12, tuple(marks))


def _wrong(pattern: Pattern, code: str, part: str, region: Region, edge: Ink) -> Area:
    return Area(region, cloth(wrong_side(layer_colour(pattern, code, part)), edge))


def _hollow(master: Master, part: Part, behind: Behind) -> Region:
    """Return where layers are cut away behind a shape, in the unit's frame; some stays round higher stitching."""
    shape, inside = master.shapes[behind.number], float(behind.inside)
    piece = part.motion.path(part.outline)
    open_ = as_polygon(clipped(part.motion.region(offset_region(shape.region, -inside)), piece), COARSE / 5)
    for upper in master.shapes[behind.number + 1 :]:
        region = part.motion.region(upper.region)
        outer, inner = (as_polygon(offset_region(region, by), COARSE / 5) for by in (inside, -inside))
        open_ = without(open_, without(outer, inner))
    return from_polygons(open_)


def _inner(region: Region, piece: Path, scale: Scale, ink: Ink) -> Iterator[Mark]:
    """Return the runs of a region's outlines that do not lie on the edges of a piece."""
    edges = [line_through(side.start, side.end) for side in piece.segments]
    for path in region.paths:
        run: list[Segment] = []
        for segment in path.segments:
            if not _on_any(segment, edges):
                run.append(scale.segment(segment))
            elif run:
                yield Stroke(tuple(run), ink)
                run = []
        if run:
            yield Stroke(tuple(run), ink)


def _on_any(segment: Segment, edges: list[StraightLine]) -> bool:
    if not isinstance(segment, Line):
        return False
    return any(max(abs(edge.side(segment.start)), abs(edge.side(segment.end))) < 1e-4 for edge in edges)


def _trimmed_unit(pattern: Pattern, name: str, action: Trim) -> Drawing:
    _, part = _part_of(pattern, name)
    piece, unit = part.motion.path(part.outline), unit_of(pattern, name)
    return _trimmed(pattern, name, piece, unit.cut_layers, action, "trim the thick edges")


def trimmed_whole_figure(pattern: Pattern, trim: Step) -> Sheet:
    """Return a whole master with its trims, each measured from a crease."""
    assert isinstance(trim.action, Trim)
    action = trim.action
    board = board_of(pattern, action.code)
    across, down = float(board.master.width) / 2, float(board.master.height) / 2
    corners = [complex(-across, -down), complex(across, -down), complex(across, down), complex(-across, down)]
    piece = Path(tuple(Line(a, b) for a, b in zip(corners, (*corners[1:], corners[0]), strict=True)))
    region = Region((piece,))
    for each in action.lines:
        region = keep_left(region, each.line)
    layers = (
        Layer(GROUND, region),
        *(Layer(s.part, clipped(s.region, region.paths[0])) for s in board.master.shapes),
    )
    drawing = _trimmed(pattern, action.code, piece, layers, action, "trim all four sides")
    alt = f"A master of {action.recipe} with the edges that are trimmed before it is cut, measured from its creases."
    return drawing.sheet(f"Trim the master: {action.recipe}", alt)


def trimmed_block_figure(pattern: Pattern, name: str, trim: Step, largest: float) -> Drawing:
    """Return a rejoined block, its longer side `largest`, with its trims measured from the middle of its seam."""
    assert isinstance(trim.action, Trim)
    rejoining = pattern.blocks.rejoining(trim.action.recipe)
    unit = unit_of(pattern, name)
    note = "trim from the seam’s middle"
    return _trimmed(pattern, name, rejoining.raw_outline, unit.cut_layers, trim.action, note, largest)


def _trimmed(
    pattern: Pattern,
    name: str,
    piece: Path,
    layers: tuple[Layer, ...],
    action: Trim,
    note: str,
    largest: float = LARGEST,
) -> Drawing:
    """Return a piece as it lies before trimming: what goes is grey, what stays in its colours."""
    scale, width, height = _scaled(piece, largest=largest)
    marks: list[Mark] = [Area(scale.region(Region((piece,))), OFFCUT)]
    marks += layered(pattern, name, layers, scale, OUTLINE)
    for trim in action.lines:
        if trim.kind is Reference.CREASE:
            marks.append(line(*_across(trim.reference, piece, scale), CREASE))
    for trim in action.lines:
        marks.append(line(*_across(trim.line, piece, scale), TRIM))
        marks += _measure(pattern, trim, scale, width)
    marks.append(caption(complex(max(width, LEAST_WIDTH) / 2, TOP + height + 3), note, SMALL))
    return Drawing(max(width, LEAST_WIDTH) + 10, TOP + height + 6, tuple(marks))


def _across(way: StraightLine, piece: Path, scale: Scale) -> tuple[Point, Point]:
    """Return where a horizontal or vertical line runs over the box of a piece."""
    box = path_bounds(piece)
    if abs(way.direction.imag) < NEAR:
        y = way.through.imag
        return scale.point(complex(box.left, y)), scale.point(complex(box.right, y))
    x = way.through.real
    return scale.point(complex(x, box.top)), scale.point(complex(x, box.bottom))


def _measure(pattern: Pattern, trim: TrimLine, scale: Scale, width: float) -> tuple[Mark, ...]:
    """Return the distance of a trim from its reference: above the piece, or at its right."""
    text = measure(pattern.design, trim.distance)
    there, here = scale.point(trim.line.through), scale.point(trim.reference.through)
    if abs(trim.line.direction.imag) < NEAR:
        return measured(complex(width, here.imag), complex(width, there.imag), text, 1.6)
    return measured(complex(here.real, TOP), complex(there.real, TOP), text, -1.6j)
