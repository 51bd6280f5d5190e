"""Fabrics and pieces for the tests of the materials, with as few words as a worked example needs."""

from __future__ import annotations

from fractions import Fraction

from hypothesis import strategies as st

from quarterturn.design import ClothKind, Direction, Fabric
from quarterturn.design.defaults import default_making
from quarterturn.materials import ClothPlan
from quarterturn.materials.kinds import Kind, Position
from quarterturn.materials.parcels import plan_cloth
from quarterturn.measure import Length, Units, inches
from quarterturn.pieces import Grain, Piece, Purpose

MAKING = default_making(Units.INCH)


def size(text: str | int) -> Length:
    """Read a size such as 9, 9.5 or ``3 7/8`` in inches."""
    return sum((Fraction(part) for part in str(text).split()), Fraction(0))


def fabric(width: str | int = 42, direction: Direction = Direction.NONE) -> Fabric:
    """Return fabric A."""
    return Fabric("A", "oyster", "", "#efe6d8", size(width), direction, ClothKind.COTTON, None)


def piece(
    count: int,
    length: str | int | Length,
    width: str | int | Length | None = None,
    purpose: Purpose = Purpose.GROUND,
    label: str = "A1",
    grain: Grain = Grain.ANY,
) -> Piece:
    """Return so many equal pieces, squares where there is no width."""
    long = length if isinstance(length, Fraction) else size(length)
    across = long if width is None else width if isinstance(width, Fraction) else size(width)
    return Piece(label, "patch", label[0], purpose, long, across, count, 0, grain, "")


def plan(*pieces: Piece, width: str | int = 42, direction: Direction = Direction.NONE) -> ClothPlan:
    """Plan pieces of fabric A with the defaults of an inch pattern."""
    return plan_cloth(fabric(width, direction), pieces, MAKING, Units.INCH)


def squares(*wanted: tuple[int, str | int], width: str | int = 42) -> Length:
    """Return the length of cloth that is cut for so many squares of so much."""
    return plan(
        *(piece(n, side, label=f"A{i}") for i, (n, side) in enumerate(wanted, 1)), width=width
    ).cut_length


def kind(label: str, count: int, *positions: tuple[int, int]) -> Kind:
    """Return a kind of piece with positions along × across in eighths of an inch."""
    return Kind(label, count, tuple(Position(inches(0, a, 8), inches(0, b, 8)) for a, b in positions))


EIGHTHS = st.integers(8, 160)


@st.composite
def kinds(draw: st.DrawFn, most: int = 4, count: int = 60) -> list[Kind]:
    """Return a few kinds of piece, none longer than 20 inches, squares and rectangles, some of which may turn."""
    found: list[Kind] = []
    for number in range(draw(st.integers(1, most))):
        a, b = draw(EIGHTHS), draw(EIGHTHS)
        positions = draw(st.sampled_from([[(a, a)], [(a, b)], [(a, b), (b, a)] if a != b else [(a, a)]]))
        found.append(kind(f"A{number + 1}", draw(st.integers(1, count)), *positions))
    return found
