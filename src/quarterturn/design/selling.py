"""What the designer sells: a quilt on commission, kits, and classes. Prices are in the house's currency.

Every number has a default, which is an assumption and is printed as one. The minutes of the fusing and stitching are
the trade's for a home sewer (common practice, no source); all others are from memory.
"""

from __future__ import annotations

import enum
from dataclasses import dataclass, replace
from fractions import Fraction

from quarterturn.measure import YARD, Length, Units, mm


@dataclass(frozen=True, slots=True)
class Minutes:
    """How long each kind of work takes a practised home sewer: minutes for each, or for an inch or a square yard."""

    strip: Fraction = Fraction("1.5")
    """Straightening included, to cut one strip across the cloth."""
    cut: Fraction = Fraction("0.25")
    """To cut one piece from a strip."""
    ring: Fraction = Fraction(3)
    """To trace a ring of web and hollow it out."""
    shape: Fraction = Fraction(3)
    """To fuse a ring to cloth and cut the shape out."""
    placing: Fraction = Fraction(2)
    """To crease a square, centre a shape on it and fuse it down."""
    stitching: Fraction = Fraction("0.2")
    """For an inch of edge: four minutes for a circle of 6" across."""
    apart: Fraction = Fraction("0.5")
    """To cut one master once."""
    cut_away: Fraction = Fraction("0.5")
    """To cut the ground away behind one piece."""
    trim: Fraction = Fraction("0.25")
    """To trim one piece."""
    seam: Fraction = Fraction(1)
    """To pin and press one seam."""
    seam_inch: Fraction = Fraction("0.05")
    """For an inch of seam."""
    border: Fraction = Fraction(12)
    """To measure, cut, pin, sew and press one strip of a border."""
    layering: Fraction = Fraction(20)
    """For a square yard of quilt, to layer and baste it."""
    quilting: Fraction = Fraction(60)
    """For a square yard of quilt, by machine at home."""
    binding: Fraction = Fraction("0.5")
    """For an inch of edge: sewn on by machine, turned and sewn down by hand."""
    other: Fraction = Fraction("0.25")
    """To lay, label or set aside one thing, and for anything else."""


@dataclass(frozen=True, slots=True)
class Notion:
    """Something that a sewer needs besides cloth: how many, and what one costs; None where that is not stated."""

    name: str
    count: int = 1
    price: Fraction | None = None


@dataclass(frozen=True, slots=True)
class Money:
    """What a quilt on commission must bring in at least."""

    rate: Fraction | None = None
    """For an hour of work; None where no price is asked for."""
    share: Fraction = Fraction(0)
    """Added to materials and work, of their sum: for the room, the machine, the tax, and the profit."""
    web: Fraction | None = None
    """Price of a yard (metre) of web."""
    batting: Fraction | None = None
    """Price of the whole batting."""
    thread: Fraction | None = None
    """Price of one spool."""
    spool: Length = 200 * YARD
    """Thread on a spool; 200 yards is the ordinary one (W. H. Dooley, *Textiles*, 1914)."""
    minutes: Minutes = Minutes()


class KitContent(enum.Enum):
    """What is in a kit: its pieces ready cut, or its cloth by the length."""

    PIECES = "pieces"
    CLOTH = "cloth"


@dataclass(frozen=True, slots=True)
class Kits:
    """How many kits are packed, and of what."""

    count: int
    content: KitContent = KitContent.CLOTH
    spare: Fraction = Fraction(5, 100)
    """Share of each kind of piece cut beyond need, one at least: a miscut piece cannot be replaced at home."""
    bolt: Length = 15 * YARD
    """Cloth on a full bolt: many hold 8 to 15 yards (from memory)."""
    web: bool = True
    """Whether a kit holds its web."""
    backing: bool = False
    """Whether a kit holds its backing. Most hold neither backing nor batting (common practice, no source)."""
    label: str = ""
    """A line of the designer's own on the kit's label."""
    size: str = ""
    """The size that is packed; a file that names none means its own."""


@dataclass(frozen=True, slots=True)
class Lesson:
    """A class: who comes, for how long, with what, and what is done at home."""

    students: int
    hours: Fraction
    masters: int = 0
    """Masters that each student makes in class; 0 for those of the whole quilt."""
    pace: Fraction = Fraction(2)
    """How many times as long as a practised sewer a student takes (common practice, no source: double)."""
    irons: int = 0
    """0 for one to four students, the least that does not make a queue (common practice, no source: 1 to 3 or 4)."""
    cutters: int = 0
    """Places to cut at; 0 for one to two students (from memory)."""
    showing: Fraction = Fraction(10)
    """Minutes in which the teacher shows each stage (from memory)."""
    homework: tuple[str, ...] | None = None
    """Chapters done at home; None lets the program suggest them."""
    size: str = ""
    """The size that is made in class; a file that names none means its own."""


@dataclass(frozen=True, slots=True)
class Selling:
    """Money, notions, kits and the class; the last two only where they are stated."""

    money: Money = Money()
    notions: tuple[Notion, ...] = ()
    kits: Kits | None = None
    lesson: Lesson | None = None

    def for_sizes(self, own: str) -> Selling:
        """Return the same with the name of the file's own size where none is named."""
        kits = self.kits and replace(self.kits, size=self.kits.size or own)
        return replace(
            self, kits=kits, lesson=self.lesson and replace(self.lesson, size=self.lesson.size or own)
        )


NOTHING_SOLD = Selling()
"""Of a design that says nothing of selling."""


def default_money(units: Units) -> Money:
    """Return the money of a file that says nothing about it."""
    return replace(Money(), spool=mm(180_000)) if units is Units.METRIC else Money()


def default_kits(units: Units) -> Kits:
    """Return one kit as the file has it that says no more than how many."""
    return Kits(1, bolt=mm(14_000)) if units is Units.METRIC else Kits(1)
