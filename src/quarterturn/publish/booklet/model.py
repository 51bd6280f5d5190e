"""The booklet before it is typeset: blocks in their order. Figures get their numbers when all is in place."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal, TypeAlias

from quarterturn.publish.sheet import Sheet

Place: TypeAlias = Literal["side", "below"]


@dataclass(frozen=True, slots=True)
class Cell:
    """A drawing of a figure, with the line that stands under or beside it."""

    sheet: Sheet
    text: str = ""


@dataclass(frozen=True, slots=True)
class Figure:
    """A numbered figure: one drawing, or several in `columns`. `number` is 0 until all is in place."""

    caption: str
    cells: tuple[Cell, ...]
    columns: int = 1
    least: float = 1.0
    """The share of its size to which it may shrink, to fill what is left of a page."""
    number: int = 0


@dataclass(frozen=True, slots=True)
class Cover:
    """The first page."""

    title: str
    maker: str
    about: str
    technique: str
    facts: tuple[tuple[str, str], ...]
    picture: Sheet
    draft: str = ""
    """What is said of a booklet that must not be sewn from."""


@dataclass(frozen=True, slots=True)
class Section:
    """The heading of a part of the booklet; `opens` starts a page."""

    title: str
    opens: bool = False


@dataclass(frozen=True, slots=True)
class Swatch:
    """A line of the fabric key."""

    letter: str
    words: str
    colour: str
    ink: str


@dataclass(frozen=True, slots=True)
class FabricKey:
    """The fabrics: letter, words, swatch, and a box to glue a snip in."""

    swatches: tuple[Swatch, ...]


@dataclass(frozen=True, slots=True)
class Table:
    """A table; `widths` are shares of the line, numbers stand to the right."""

    heads: tuple[str, ...]
    rows: tuple[tuple[str, ...], ...]
    widths: tuple[float, ...]
    title: str = ""


@dataclass(frozen=True, slots=True)
class SizeTable:
    """A table with a column for each size, its heads on each page that it runs over.

    A cell of several parts has them between semicolons.
    """

    title: str
    heads: tuple[str, ...]
    rows: tuple[tuple[str, ...], ...]


@dataclass(frozen=True, slots=True)
class Notes:
    """Sentences, each on its own line, under a small title; cautions are framed."""

    title: str
    sentences: tuple[str, ...]
    framed: bool = False
    ticked: bool = False
    columns: int = 1


@dataclass(frozen=True, slots=True)
class Pairs:
    """Names and values in two columns of text."""

    title: str
    pairs: tuple[tuple[str, str], ...]
    columns: int = 1


@dataclass(frozen=True, slots=True)
class CutLine:
    """A numbered line of the cutting list; `steps` are the numbers of the steps that it tells."""

    number: int
    steps: tuple[int, ...]
    text: str


@dataclass(frozen=True, slots=True)
class CutList:
    """All that is cut from one fabric."""

    title: str
    colour: str
    lines: tuple[CutLine, ...]
    figure: Figure
    plan: str
    below: bool = False
    """Whether the figure stands below the lines, as wide as the page, and not beside them."""


@dataclass(frozen=True, slots=True)
class Entry:
    """A numbered entry of the booklet; `steps` are the numbers of the steps that it tells."""

    number: int
    steps: tuple[int, ...]
    title: str
    sentences: tuple[str, ...]
    lines: tuple[str, ...]
    figures: tuple[Figure, ...] = ()
    place: Place = "side"


@dataclass(frozen=True, slots=True)
class Plate:
    """A figure that has the line to itself."""

    figure: Figure


@dataclass(frozen=True, slots=True)
class Remainder:
    """Ruled lines for the sewer's own notes on what is left of a page, if it is worth it."""

    title: str


@dataclass(frozen=True, slots=True)
class FullPage:
    """A sheet of a whole page, at its true size."""

    sheet: Sheet


Block: TypeAlias = (
    Cover | Section | FabricKey | Table | SizeTable | Notes | Pairs | CutList | Entry | Plate | Remainder | FullPage
)  # fmt: skip


@dataclass(frozen=True, slots=True)
class Document:
    """The whole booklet: its paper in millimetres, what stands at the foot of each page, its blocks."""

    title: str
    maker: str
    foot: str
    width: float
    height: float
    margin: float
    blocks: tuple[Block, ...]
