"""Can a recipe of any shapes and cuts be made? Held on the exact outlines of its master."""

from __future__ import annotations

from collections.abc import Sequence

from quarterturn.design.keys import dotted
from quarterturn.design.notes import Notes
from quarterturn.design.placing import cut_lines, meant_paths, traced_path
from quarterturn.design.recipes import Curve, Recipe, ShapeOn
from quarterturn.geometry import (
    MOST_DIRECTIONS,
    Path,
    Region,
    StraightLine,
    as_polygon,
    cut,
    directions_of,
    keep_left,
    line_through,
    offset_path,
    path_bounds,
    rectangle,
    without,
)
from quarterturn.measure import Length, inches

LEAST_PIECE = inches(0, 1, 4)
"""A piece must be as wide as this inside its seams to be sewn at all (as the least finished side of a unit)."""

LEAST_SHOWN = 0.01
"""Less of a shape than this, in square inches, does not show."""


def check_fit(recipe: Recipe, seam: Length, notes: Notes) -> None:
    """Note cuts that miss the master, pieces too small to sew, and shapes that stick out or that nobody would see."""
    key = dotted("recipes", recipe.name)
    cuts = cut_lines(recipe)
    raw = _box(recipe.width, recipe.height)
    trimmed = _box(recipe.width - recipe.trim_width, recipe.height - recipe.trim_height)
    if not _cuts_hit(recipe, raw, trimmed, cuts, key, notes):
        return
    if recipe.curve is Curve.SEWN_TRUE and len(directions_of(cuts)) > MOST_DIRECTIONS:
        notes.add(
            "cut-unclear",
            f"{key}.cuts",
            "The cuts run in three directions, and no shape can be spread along them so as to be true when sewn.",
            'Write curve = "as drawn", or cut in two directions at most.',
        )
        return
    pieces = _pieces(trimmed, cuts)
    if _are_wide_enough(pieces, seam, key, notes):
        _check_shapes(recipe, cuts, trimmed, [_sewn(piece, seam) for piece in pieces], seam, notes)


def _box(width: Length, height: Length) -> Path:
    across, down = float(width / 2), float(height / 2)
    return rectangle(-across, -down, across, down)


def _cuts_hit(
    recipe: Recipe, raw: Path, trimmed: Path, cuts: Sequence[StraightLine], key: str, notes: Notes
) -> bool:
    for number, line in enumerate(cuts):
        place = f"{key}.cuts.{number}"
        if _misses(line, raw):
            size = f"{notes.show(recipe.width)} by {notes.show(recipe.height)}"
            notes.add(
                "cut-misses",
                place,
                f"Cut {number + 1} does not cross the master, which is {size}.",
                "Points are measured from the middle of the master, to the right and down; "
                "to the left and up they are negative.",
            )
            return False
        if _misses(line, trimmed):
            sentence = f"Cut {number + 1} takes off nothing but what is trimmed off the master anyway."
            notes.add("cut-misses", place, sentence, "Move it farther in, or trim less.")
            return False
    return True


def _misses(line: StraightLine, outline: Path) -> bool:
    return any(part.is_empty() for part in cut(Region((outline,)), line))


def _pieces(trimmed: Path, cuts: Sequence[StraightLine]) -> list[Path]:
    pieces = [Region((trimmed,))]
    for line in cuts:
        pieces = [half for piece in pieces for half in cut(piece, line) if not half.is_empty()]
    return [piece.paths[0] for piece in pieces]


def _are_wide_enough(pieces: Sequence[Path], seam: Length, key: str, notes: Notes) -> bool:
    for piece in pieces:
        if offset_path(piece, -float(seam + LEAST_PIECE / 2)).is_empty():
            box = path_bounds(piece)
            size = f"{notes.show(rounded(box.width))} by {notes.show(rounded(box.height))}"
            notes.add(
                "piece-too-small",
                f"{key}.cuts",
                f"The cuts leave a piece {size} that is too narrow to sew: "
                f"its seams take {notes.show(2 * seam)} of it.",
                "Move the cuts farther apart or away from the edge, or start with a larger master.",
            )
            return False
    return True


def _sewn(piece: Path, seam: Length) -> Path:
    return offset_path(piece, -float(seam)).paths[0]


def _check_shapes(
    recipe: Recipe,
    cuts: Sequence[StraightLine],
    trimmed: Path,
    sewn: Sequence[Path],
    seam: Length,
    notes: Notes,
) -> None:
    key = dotted("recipes", recipe.name, "shapes")
    regions = [_traced(recipe, shape, cuts, seam) for shape in recipe.shapes]
    inside = _sewn(trimmed, seam)
    for number, (shape, region) in enumerate(zip(recipe.shapes, regions, strict=True)):
        place = f"{key}.{number}"
        if _reaches_out(shape, region, inside, place, notes):
            continue
        seen = [part for outline in sewn if not (part := _within(region, outline)).is_empty()]
        if sum(part.area() for part in seen) < LEAST_SHOWN:
            notes.add(
                "shape-vanishes",
                place,
                f"The {shape.part} disappears in the seams: nothing of it shows once the pieces are sewn.",
                "Make it larger, or move it away from the cuts.",
            )
        elif _is_hidden(seen, regions[number + 1 :]):
            notes.add(
                "shape-hidden",
                place,
                f"The {shape.part} lies wholly under shapes that are fused after it, so that nobody would see it.",
                "Write it below them in the file, since the later lie on top, or leave it out.",
            )


def _traced(recipe: Recipe, shape: ShapeOn, cuts: Sequence[StraightLine], seam: Length) -> Region:
    outline, hole = meant_paths(shape)
    paths = [path for path in (outline, hole) if path]
    return Region(tuple(traced_path(path, recipe.curve, cuts, seam) for path in paths))


def _reaches_out(shape: ShapeOn, region: Region, inside: Path, place: str, notes: Notes) -> bool:
    box, room = path_bounds(region.paths[0]), path_bounds(inside)
    over = {
        "left": room.left - box.left,
        "right": box.right - room.right,
        "top": room.top - box.top,
        "bottom": box.bottom - room.bottom,
    }
    side = max(over, key=lambda name: over[name])
    if over[side] <= 1e-9:
        return False
    width, height = (notes.show(rounded(each)) for each in (room.width, room.height))
    notes.add(
        "shape-outside",
        place,
        f"The {shape.part} reaches {notes.show(rounded(over[side]))} past the outer seam at the {side}, "
        "which would cut it off.",
        f"Move it or make it smaller: the seams leave {width} by {height} of the master for shapes.",
    )
    return True


def _within(region: Region, outline: Path) -> Region:
    for side in outline.segments:
        region = keep_left(region, line_through(side.start, side.end))
    return region


def _is_hidden(seen: Sequence[Region], later: Sequence[Region]) -> bool:
    return bool(later) and sum(_left_over(part, later) for part in seen) < LEAST_SHOWN


def _left_over(region: Region, covers: Sequence[Region]) -> float:
    rest = as_polygon(region, 1e-3)
    for cover in covers:
        rest = without(rest, as_polygon(cover, 1e-3))
    return float(rest.area)


def rounded(value: float) -> Length:
    """Return a measure of an outline as a length to be told."""
    return Length(round(value * 10**6), 10**6)
