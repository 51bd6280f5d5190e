"""Random jobs for the cutting table: a fabric, pieces of every purpose that is cut from it, and how it is to be cut."""

from __future__ import annotations

import random
from dataclasses import dataclass, replace
from fractions import Fraction

from quarterturn.design import ClothKind, Direction, Fabric, LongCut, Making
from quarterturn.design.defaults import default_making
from quarterturn.materials import ClothPlan
from quarterturn.materials.parcels import plan_cloth
from quarterturn.measure import Length, Units, inches
from quarterturn.pieces import Grain, Piece, Purpose

WIDTHS = (18, 20, 36, 40, 42, 44, 58, 108)
PLAIN = (Purpose.GROUND, Purpose.SHAPE, Purpose.SQUARE, Purpose.CORNERSTONE)
LONG = (Purpose.BORDER, Purpose.COPING, Purpose.STRIP, Purpose.SASH)


@dataclass(frozen=True, slots=True)
class Job:
    """What is asked of one plan."""

    fabric: Fabric
    pieces: tuple[Piece, ...]
    making: Making
    units: Units

    def plan(self) -> ClothPlan:
        """Return the plan of the job."""
        return plan_cloth(self.fabric, self.pieces, self.making, self.units)


def job(seed: int, most: int = 60) -> Job:
    """Return the job of a seed, with up to so many pieces of a kind: the same one on every run."""
    draw = random.Random(seed)
    units = draw.choice([Units.INCH, Units.INCH, Units.METRIC])
    width = inches(draw.choice(WIDTHS)) + draw.choice([Length(0), Length(0), inches(0, 3, 8)])
    direction = draw.choice([Direction.NONE, Direction.NONE, *Direction])
    shrinks = draw.choice([Fraction(0), Fraction(0), Fraction(3, 100)])
    fabric = Fabric(
        "A", "oyster", "", "#efe6d8", width, direction, ClothKind.COTTON, None, shrink_along=shrinks
    )
    pieces = [_piece(draw, number, width, most) for number in range(1, draw.randint(1, 4) + 1)]
    if draw.random() < 0.4:
        pieces.append(_made(draw, "A8", Purpose.BINDING, inches(draw.randint(80, 400)), inches(0, 5, 2)))
    if draw.random() < 0.3:
        sheet = (inches(draw.randint(20, 110)), inches(draw.randint(20, 110)))
        pieces.append(replace(_made(draw, "A9", Purpose.BACKING, *sheet), grain=Grain.LENGTHWISE))
    making = replace(
        default_making(units), borders=draw.choice(list(LongCut)), slack=inches(draw.randint(0, 4))
    )
    return Job(fabric, tuple(pieces), making, units)


def _piece(draw: random.Random, number: int, width: Length, most: int) -> Piece:
    label, count = f"A{number}", draw.randint(1, most)
    if draw.random() < 0.25:
        side = inches(draw.randint(20, 130)), inches(0, draw.randint(8, 64), 8)
        return replace(_made(draw, label, draw.choice(LONG), *side), count=min(count, 6))
    long = _side(draw, width)
    across = long if draw.random() < 0.5 else _side(draw, width)
    grain = draw.choice([Grain.ANY] * 6 + [Grain.LENGTHWISE, Grain.CROSSWISE])
    return replace(
        _made(draw, label, draw.choice(PLAIN), max(long, across), min(long, across)), count=count, grain=grain
    )


def _side(draw: random.Random, width: Length) -> Length:
    """Return a side on the ruler, now and then a whole part of the width, or as wide as it."""
    if draw.random() < 0.15:
        return width / draw.randint(1, 5)
    return inches(0, draw.randint(8, 160), 8)


def _made(draw: random.Random, label: str, purpose: Purpose, length: Length, width: Length) -> Piece:
    return Piece(label, "patch", "A", purpose, length, width, 1, 0, Grain.ANY, "")
