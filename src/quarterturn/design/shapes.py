"""Read what shape a recipe fuses, and how large it is."""

from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING

from quarterturn.design import limits
from quarterturn.design.habits import read_count
from quarterturn.design.notes import Notes, did_you_mean, quoted
from quarterturn.design.recipes import (
    DrawnDiameter,
    DrawnOutline,
    FinishedRadius,
    OwnOutline,
    PathsFlow,
    ShapeSize,
)
from quarterturn.geometry import OUTLINES

if TYPE_CHECKING:
    from quarterturn.design.file_recipes import ShapeTable

CIRCLE = "circle"
SCALLOP = "scallop"
USUAL_LOBES = 8


def read_shape(
    table: ShapeTable | None,
    kind: str | None,
    key: str,
    own: Mapping[str, OwnOutline | None],
    notes: Notes,
) -> ShapeSize | None:
    """Read the shape of a recipe of a kind; None where it has no one size, which is noted.

    `own` are the outlines of the file; None for those with a fault, which has been noted.
    """
    if table is None:
        notes.missing(
            key, "Write shape = { diameter = … }, shape = { radius = … } or shape = { flow = true }."
        )
        return None
    outline = table.outline or CIRCLE
    if outline not in OUTLINES and outline not in own:
        remedy = did_you_mean(outline, [*OUTLINES, *own])
        notes.add("unknown-outline", f"{key}.outline", f"There is no outline {quoted(outline)}.", remedy)
        return None
    if kind == "circle cut both ways" and outline != CIRCLE:
        sentence = f"The recipe cuts a circle, and its shape is a {outline}."
        notes.add("shape-unclear", key, sentence, 'Write kind = "shape cut both ways" in the recipe.')
    if table.lobes is not None and outline != SCALLOP:
        notes.add("shape-unclear", key, f"A {outline} has no lobes.", "Leave lobes out.")
    if outline == CIRCLE:
        return _circle(table, key, notes)
    if outline in OUTLINES:
        return _outlined(table, outline, None, key, notes)
    drawn = own[outline]
    return _outlined(table, outline, drawn, key, notes) if drawn else None


def _circle(table: ShapeTable, key: str, notes: Notes) -> ShapeSize | None:
    diameter = notes.length(table.diameter, f"{key}.diameter", limits.DIAMETER)
    width = notes.length(table.width, f"{key}.width", limits.DIAMETER)
    radius = notes.length(table.radius, f"{key}.radius", limits.RADIUS)
    if _is_spoiled(key, ("diameter", "width", "radius", "flow"), notes):
        return None
    sizes: list[ShapeSize] = [DrawnDiameter(across) for across in (diameter, width) if across is not None]
    if radius is not None:
        sizes.append(FinishedRadius(radius))
    if table.flow:
        sizes.append(PathsFlow())
    if len(sizes) == 1:
        return sizes[0]
    sentence = "The shape has more than one size." if sizes else "The shape has no size."
    notes.add("shape-unclear", key, sentence, "Give one of diameter, radius and flow = true.")
    return None


def _outlined(
    table: ShapeTable, outline: str, own: OwnOutline | None, key: str, notes: Notes
) -> ShapeSize | None:
    width = notes.length(table.width, f"{key}.width", limits.DIAMETER)
    for each in ("diameter", "radius", "flow"):
        if getattr(table, each) is not None:
            sentence = f"A {outline} has no `{each}`: only a circle has."
            notes.add("shape-unclear", key, sentence, "Give its width alone.")
    if table.width is None and own:
        width = own.width
    elif table.width is None and not _is_spoiled(key, ("width",), notes):
        notes.add("shape-unclear", key, "The shape has no size.", "Give its width.")
    turn = _turn(table.turn, f"{key}.turn", notes)
    lobes = read_count(table.lobes, f"{key}.lobes", USUAL_LOBES, limits.MOST_LOBES, notes, limits.LEAST_LOBES)
    if width is None or _is_spoiled(key, ("width", "turn", "lobes"), notes):
        return None
    return DrawnOutline(
        outline, width, turn, lobes if outline == SCALLOP else 0, own=own.path if own else None
    )


def _turn(turn: int | None, key: str, notes: Notes) -> int:
    if turn not in (None, 0, 1, 2, 3):
        remedy = "A turn is 0, 1, 2 or 3 quarter turns clockwise."
        notes.add("unknown-turn", key, f"The shape asks for a turn of {turn}.", remedy)
    return turn or 0


def _is_spoiled(key: str, inside: tuple[str, ...], notes: Notes) -> bool:
    return notes.is_spoiled(key) or any(notes.is_spoiled(f"{key}.{each}") for each in inside)
