"""How fabrics, pieces, counts and sizes are named: always the same way (common practice, no source).

A count stands in brackets before its size, so that `(4) 2½" squares` cannot be read as 42½".
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from functools import partial
from itertools import groupby

from quarterturn.design import GROUND, HALF_MARK, ORIGINAL, SECOND, Design, Fabric
from quarterturn.measure import Length, Units, show_length
from quarterturn.pieces import Piece
from quarterturn.proof import Pattern
from quarterturn.steps import Product


def fabric_name(fabric: Fabric) -> str:
    """Return letter, colour word and role: never a colour or a letter alone."""
    return f"Fabric {fabric.letter} ({fabric_words(fabric)})"


def fabric_words(fabric: Fabric) -> str:
    """Return colour word and role."""
    return ", ".join(word for word in (fabric.name, fabric.role) if word)


def named(design: Design, letter: str) -> str:
    """Return the name of the fabric with a letter."""
    return fabric_name(design.fabric(letter))


def length(design: Design, value: Length | float) -> str:
    """Print a length in the units and the fineness of the house."""
    return show_length(value, design.units, sixteenths=design.house.sixteenths)


def rectangle(design: Design, width: Length | float, height: Length | float) -> str:
    """Print width × height with the unit on both numbers."""
    return f"{length(design, width)} × {length(design, height)}"


def sized(design: Design, width: Length, height: Length) -> str:
    """Print a size: `2½" square` or `2½" × 4½"`."""
    if width == height:
        return f"{length(design, width)} square"
    return rectangle(design, width, height)


def parts_of(pattern: Pattern, name: str) -> tuple[str, ...]:
    """Return the parts of a unit, shapes first, the uppermost before the others, grounds last."""
    layers = pattern.blocks.unit(pattern.design, name).sewn_layers
    parts = tuple(dict.fromkeys(layer.part for layer in reversed(layers)))
    grounds = tuple(part for part in parts if part.rpartition(HALF_MARK)[2] == GROUND)
    return (*(part for part in parts if part not in grounds), *reversed(grounds))


@dataclass(frozen=True, slots=True)
class Cloths:
    """The letters of the fabrics of a unit, or of one half of it: of its shapes, and of its ground."""

    shapes: tuple[str, ...]
    ground: str


def halves_of(pattern: Pattern, name: str) -> tuple[Cloths, ...]:
    """Return the fabrics of a unit; of one that is rejoined those of each half, the first half first."""
    design, parts = pattern.design, sorted(parts_of(pattern, name), key=lambda part: part.startswith(SECOND))
    found = []
    for _, run in groupby(parts, key=lambda part: part.rpartition(HALF_MARK)[0]):
        mine = list(run)
        shapes = (design.cloth(name, part) for part in mine if part.rpartition(HALF_MARK)[2] != GROUND)
        ground = next(design.cloth(name, part) for part in mine if part.rpartition(HALF_MARK)[2] == GROUND)
        found.append(Cloths(tuple(dict.fromkeys(shapes)), ground))
    return tuple(found)


def cloths_of(pattern: Pattern, name: str) -> str:
    """Return the fabrics of a unit: those of its shapes on that of its ground, one half joined to the other."""
    return joined_cloths(pattern, name, partial(named, pattern.design))


def joined_cloths(pattern: Pattern, name: str, say: Callable[[str], str]) -> str:
    """Return the fabrics of a unit, each called by what is `said` of its letter: `B on A joined to A on B`."""
    halves = []
    for half in halves_of(pattern, name):
        above = listed([say(letter) for letter in half.shapes]) if half.shapes else ""
        halves.append(f"{above} on {say(half.ground)}" if above else say(half.ground))
    return " joined to ".join(halves)


def machine_length(value: Length) -> str:
    """Print a stitch width or length: machines show millimetres everywhere."""
    return show_length(value, Units.METRIC)


LEAST_STRIP = 3
"""A piece at least so many times as long as it is wide is called a strip, a shorter one a rectangle."""


def counted_pieces(design: Design, product: Product) -> str:
    """Print so many pieces with size and noun: `(16) 5½" squares`, `(2) 1½" × 18½" strips`, the narrower side first."""
    narrow, long = sorted((product.width, product.height))
    if narrow == long:
        return f"({product.count}) {length(design, long)} {plural(product.count, 'square')}"
    noun = "strip" if long >= LEAST_STRIP * narrow else "rectangle"
    return f"({product.count}) {rectangle(design, narrow, long)} {plural(product.count, noun)}"


def listed(words: Sequence[str]) -> str:
    """Join words with commas and a last `and`."""
    *most, last = words
    return f"{', '.join(most)} and {last}" if most else last


def piece_of(pattern: Pattern, label: str) -> Piece | None:
    """Return the piece of the bill with a label, if it is one."""
    return next((p for p in pattern.bill.pieces if p.label == label), None)


def turned_by(degrees: float) -> str:
    """Return how something is turned, the shorter way round, from degrees clockwise; nothing where it is not."""
    turn = round(degrees, 1) % 360
    if turn == 0:
        return ""
    if turn == 180:
        return "turned upside down"
    return f"turned {turn:g}° clockwise" if turn < 180 else f"turned {round(360 - turn, 1):g}° anticlockwise"


def shape_word(recipe: str) -> str:
    """Return what a recipe's shape is called: by its own name, in quotation marks where that is several words."""
    return f"“{recipe}” shape" if " " in recipe else f"{recipe} shape"


def plural(count: int, one: str, more: str | None = None) -> str:
    """Return the noun that suits a count."""
    return one if count == 1 else more or f"{one}s"


def typeset_words(text: str) -> str:
    """Return words written on a keyboard with the apostrophe of print."""
    return text.replace("'", "’")


def size_named(pattern: Pattern) -> str:
    """Return the name of the size of a pattern; nothing where the design has one size and no name for it."""
    design = pattern.design
    return f"{design.size} size" if design.sizes or design.size != ORIGINAL else ""
