"""Read the shapes of a recipe that cuts any number of them: outline, place, turn and part of each."""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction
from typing import TYPE_CHECKING, TypeAlias

from quarterturn.design import limits
from quarterturn.design.cuts import read_point
from quarterturn.design.habits import read_count
from quarterturn.design.keys import dotted
from quarterturn.design.notes import Notes, did_you_mean, quoted
from quarterturn.design.placing import RING
from quarterturn.design.recipes import GROUND, DrawnOutline, OwnOutline, ShapeOn
from quarterturn.design.shapes import CIRCLE, SCALLOP, USUAL_LOBES
from quarterturn.design.words import read_name
from quarterturn.geometry import OUTLINES
from quarterturn.measure import Length

if TYPE_CHECKING:
    from quarterturn.design.file_recipes import ShapeOnTable

LONGEST_PART = 30

Outlines: TypeAlias = Mapping[str, OwnOutline | None]


def read_shapes_on(
    tables: list[ShapeOnTable] | None, key: str, outlines: Outlines, notes: Notes
) -> tuple[ShapeOn, ...] | None:
    """Read the shapes in the order of fusing; None where any is not whole, which is noted.

    `outlines` are those of the file; None for those with a fault, which has been noted.
    """
    if not tables:
        notes.missing(key, f"Begin each shape with a line [[{key}]], its name and width below.")
        return None
    if len(tables) > limits.MOST_SHAPES:
        notes.add("too-many", key, f"There are {len(tables)} shapes.", f"Keep to {limits.MOST_SHAPES}.")
        return None
    shapes = [
        _read_shape(table, dotted_index(key, index), outlines, notes) for index, table in enumerate(tables)
    ]
    return None if None in shapes else tuple(shape for shape in shapes if shape)


def dotted_index(key: str, index: int) -> str:
    """Return the key of an item of a list."""
    return f"{key}.{dotted(index)}"


def _read_shape(table: ShapeOnTable, key: str, outlines: Outlines, notes: Notes) -> ShapeOn | None:
    part = _read_part(table.name, f"{key}.name", notes)
    size = _read_outline(table, key, outlines, notes)
    x, y = (Length(0), Length(0))
    if table.at is not None and (point := read_point(table.at, f"{key}.at", notes)):
        x, y = point
    degrees = _read_degrees(table.turn, f"{key}.turn", notes)
    underlap = notes.length(table.underlap, f"{key}.underlap", limits.UNDERLAP)
    spoiled = any(notes.is_spoiled(f"{key}.{name}") for name in ("name", "at", "turn", "underlap"))
    return None if size is None or spoiled else ShapeOn(part, size, x, y, degrees, underlap)


def _read_part(name: str | None, key: str, notes: Notes) -> str:
    part = read_name(
        name, key, 'Name the part that it is: name = "petal". Colourways give each part a fabric.', notes
    )
    if part == GROUND:
        notes.add("bad-text", key, "A shape cannot be called ground.", "Give it another name, such as petal.")
    elif not part.replace(" ", "").replace("-", "").isalnum() and part:
        remedy = "Use letters, digits, spaces and dashes, such as petal."
        notes.add("bad-text", key, f"{quoted(part)} cannot be the name of a part.", remedy)
    elif len(part) > LONGEST_PART:
        notes.add("bad-text", key, f"`name` has {len(part)} characters.", f"Keep it to {LONGEST_PART}.")
    return part


def _read_outline(table: ShapeOnTable, key: str, outlines: Outlines, notes: Notes) -> DrawnOutline | None:
    outline = table.outline or CIRCLE
    if outline not in (*OUTLINES, RING, *outlines):
        remedy = did_you_mean(outline, [*OUTLINES, RING, *outlines])
        notes.add("unknown-outline", f"{key}.outline", f"There is no outline {quoted(outline)}.", remedy)
        return None
    own = outlines.get(outline)
    if own is None and outline not in (*OUTLINES, RING):
        return None
    width = notes.length(table.width, f"{key}.width", limits.DIAMETER)
    if table.width is None and own:
        width = own.width
    elif table.width is None:
        notes.missing(f"{key}.width", "Give what the outline measures across, such as width = 4.")
    lobes = read_count(table.lobes, f"{key}.lobes", USUAL_LOBES, limits.MOST_LOBES, notes, limits.LEAST_LOBES)
    if table.lobes is not None and outline != SCALLOP:
        notes.add("shape-unclear", key, f"A {outline} has no lobes.", "Leave lobes out.")
    inner = _read_inner(table, outline, width, key, notes)
    spoiled = any(notes.is_spoiled(f"{key}.{each}") for each in ("width", "outline", "lobes"))
    if width is None or inner is None or spoiled:
        return None
    return DrawnOutline(
        outline, width, 0, lobes if outline == SCALLOP else 0, inner, own.path if own else None
    )


def _read_inner(
    table: ShapeOnTable, outline: str, width: Length | None, key: str, notes: Notes
) -> Length | None:
    """Return the hole of a ring, nothing for others; None where it is not as it must be, which is noted."""
    if outline != RING:
        if table.inner is not None:
            notes.add(
                "shape-unclear",
                f"{key}.inner",
                f"A {outline} has no hole.",
                'Write outline = "ring", or leave inner out.',
            )
            return None
        return Length(0)
    if table.inner is None:
        notes.missing(f"{key}.inner", "Give what the hole of the ring measures across, such as inner = 3.")
        return None
    inner = notes.length(table.inner, f"{key}.inner", limits.INNER)
    if inner is not None and width is not None and inner >= width:
        show = notes.show
        sentence = f"The hole of the ring, {show(inner)}, is as wide as the ring itself, {show(width)}."
        notes.add("shape-unclear", f"{key}.inner", sentence, f"Make inner less than {show(width)}.")
        return None
    return inner


def _read_degrees(turn: int | float | None, key: str, notes: Notes) -> Fraction:
    if turn is None:
        return Fraction(0)
    if abs(turn) > limits.MOST_DEGREES:
        remedy = f"Give degrees clockwise, from -{limits.MOST_DEGREES} to {limits.MOST_DEGREES}."
        notes.add("unknown-turn", key, f"The shape asks for a turn of {turn:.10g} degrees.", remedy)
        return Fraction(0)
    return Fraction(repr(turn))
