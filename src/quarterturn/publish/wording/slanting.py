"""The sentences of settings on point: triangles, slanting rows, corners, squaring up."""

from __future__ import annotations

from itertools import groupby

from quarterturn.proof import Pattern
from quarterturn.publish.wording.model import Wording
from quarterturn.publish.wording.names import length, listed, named, plural, rectangle, sized
from quarterturn.publish.wording.owners import owner_of, titled, without_owner
from quarterturn.publish.wording.pressing import pressed_to
from quarterturn.steps import (
    AddCorners,
    AddTriangles,
    CutTriangles,
    JoinRows,
    SetIn,
    SquareUp,
    Step,
    labels,
)


def tell_cut_triangles(step: Step, action: CutTriangles, pattern: Pattern) -> Wording:
    """Tell cutting squares corner to corner."""
    (used,), (made,) = step.uses[:1], step.makes[:1]
    piece = pattern.bill.piece(used.label)
    size = length(pattern.design, piece.width)
    squares = f"the ({used.count}) {size} {plural(used.count, 'square')} {used.label}"
    if action.cuts == 2:
        how = (
            f"cut {squares} corner to corner twice, in an X, without moving the pieces between the cuts, to make "
            f"({made.count}) side triangles with short edges of {length(pattern.design, made.width)}"
        )
        grain = "the straight grain lies on the long edge"
    else:
        how = (
            f"cut {squares} corner to corner once to make ({made.count}) corner triangles with a long edge of "
            f"{length(pattern.design, made.width)}"
        )
        grain = "the straight grain lies on the two short edges"
    spare = made.count - needed_of(pattern, made.label)
    over = f"; ({spare}) {plural(spare, 'is', 'are')} left over" if spare > 0 else ""
    line = f"{how[0].upper()}{how[1:]} – {made.label}{over}; {grain}"
    return Wording(named(pattern.design, piece.fabric), (), line)


def needed_of(pattern: Pattern, label: str) -> int:
    """Return how many of a label the steps use up, those set aside aside."""
    from quarterturn.steps import SetAside

    return sum(
        pile.count
        for step in pattern.steps.steps
        if not isinstance(step.action, SetAside)
        for pile in step.uses
        if pile.label == label
    )


def tell_add_triangles(step: Step, action: AddTriangles, pattern: Pattern) -> Wording:
    """Tell sewing triangles to the ends of slanting rows."""
    sentences = (
        "Lay a triangle to the end of the row, right sides together, its right-angled corner level with the corner of "
        "the row; its other point stands out beyond the row.",
        f"Sew with a {length(pattern.design, action.seam)} seam. Triangles have bias on these edges: do not stretch "
        "them.",
        "Press it as the other seams of the row, and trim the point that stands out level with the edge of the row."
        if action.press
        else "Press it open, and trim the point that stands out level with the edge of the row.",
    )
    (made,) = step.makes
    row = without_owner(made.label).removesuffix(", with triangles")
    ends = [
        f"at the {way} end, level with the {end.level.value} edge"
        for way, end in (("left", action.left), ("right", action.right))
        if end
    ]
    many = f"{plural(len(ends), 'a triangle', 'triangles')} {listed(ends)}"
    if action.left and action.right and action.left.level is action.right.level:
        many = f"triangles at both ends, level with the {action.left.level.value} edge"
    line = f"{capital(row)}: {many}. Make ({made.count}), {over_all(step, pattern)}."
    title = titled(owner_of(step, pattern), "Sew triangles to the ends of the slanting rows")
    return Wording(title, sentences, line)


def over_all(step: Step, pattern: Pattern) -> str:
    """Return the size of slanting work as it lies on the table, its points counted."""
    (made,) = step.makes
    return f"about {rectangle(pattern.design, made.width, made.height)} over all"


def capital(text: str) -> str:
    """Return a text that begins with a capital letter."""
    return f"{text[0].upper()}{text[1:]}"


def tell_join_rows(step: Step, action: JoinRows, pattern: Pattern) -> Wording:
    """Tell sewing slanting rows together, or the sashing to a row."""
    (made,) = step.makes
    sashing = made.label.endswith("with sashing")
    seam = length(pattern.design, action.seam)
    what = "Sew sashing and row together" if sashing else "Sew the slanting rows together in their order"
    sentences = (
        f"{what}, from the top down, with {seam} seams: match the seams first, and let the ends lie as they come.",
        "Press all seams open." if action.press is None else f"Press the seams {pressed_to(action.press)}.",
    )
    names = _rows_named([without_owner(part.label) for part in action.parts])
    title = "Sew the sashing to the rows" if sashing else "Sew the slanting rows together"
    line = f"{capital(names)}. Make ({made.count}), {over_all(step, pattern)}."
    return Wording(titled(owner_of(step, pattern), title), sentences, line)


def _rows_named(names: list[str]) -> str:
    """Return rows by their numbers where they are all in order, with what is said of them once."""
    rows = [name.startswith("row ") and name.endswith("with triangles") for name in names]
    if sum(rows) < len(names) - 1 or len(names) < 4:
        return listed(names)
    told: list[str] = []
    for is_row, run in groupby(zip(names, rows, strict=True), key=lambda each: each[1]):
        numbers = [name.partition(",")[0].removeprefix("row ") for name, _ in run]
        if not is_row:
            told += numbers
        elif len(numbers) == 2:
            told.append(f"rows {numbers[0]} and {numbers[1]}")
        elif len(numbers) > 1:
            told.append(f"rows {numbers[0]} to {numbers[-1]}")
        else:
            told.append(f"row {numbers[0]}")
    return f"{listed(told)}, each row with its triangles"


def tell_set_in(step: Step, action: SetIn, pattern: Pattern) -> Wording:
    """Tell setting triangles into inner corners."""
    seam = length(pattern.design, action.seam)
    sentences = (
        f"Lay a triangle along one side of the inner corner, right sides together, and sew with a {seam} seam up to "
        f"{seam} from the corner. Leave the needle down and pivot; sew the other side.",
        "Press towards the triangle.",
    )
    count = len(action.places)
    line = f"({count}) {step.uses[-1].label}{'' if count == 1 else 's'}; {over_all(step, pattern)}."
    return Wording(titled(owner_of(step, pattern), "Set the side triangles in"), sentences, line)


def tell_corners(step: Step, action: AddCorners, pattern: Pattern) -> Wording:
    """Tell sewing on the corner triangles."""
    (made,) = step.makes
    sentences = (
        "Fold each corner triangle in half to find the middle of its long edge, and lay it on the middle of the bare "
        "edge at the corner.",
        f"Sew with a {length(pattern.design, action.seam)} seam, press towards the triangle, and trim its points "
        "level.",
    )
    label = step.uses[-1].label
    line = f"({len(action.corners)}) {label}s. Make ({made.count}), {over_all(step, pattern)}."
    return Wording(titled(owner_of(step, pattern), "Sew on the corner triangles"), sentences, line)


def tell_square_up(step: Step, action: SquareUp, pattern: Pattern) -> Wording:
    """Tell trimming work on point to its size."""
    (made,) = step.makes
    beyond = length(pattern.design, action.beyond)
    sentences = (
        "Turn it so that the squares stand on their corners.",
        f"Trim each edge {beyond} outside the outermost points, and keep the corners square.",
    )
    size = sized(pattern.design, made.width, made.height)
    what = "The quilt centre" if made.label == labels.TOP else capital(made.label)
    line = f"{what} should measure {size}, unfinished. Make ({made.count})."
    return Wording(titled(owner_of(step, pattern), "Square it up"), sentences, line)
