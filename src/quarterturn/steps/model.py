"""The ordered operations from bolt to bound quilt.

Each step takes labelled pieces off the table and puts labelled pieces back on it. What it does is an action,
a record of everything that a sewer (or the rehearsal) must know to do it; nothing else may be looked up.
"""

from __future__ import annotations

import enum
from dataclasses import dataclass
from typing import TypeAlias

from quarterturn.design import Fold
from quarterturn.materials import Crosscut, JoinMethod
from quarterturn.measure import Length
from quarterturn.setting import Side
from quarterturn.steps.making import (
    Crease,
    CutApart,
    CutAway,
    CutOut,
    FuseRings,
    FuseToGround,
    Rejoin,
    StitchEdge,
    TraceRings,
    Trim,
)
from quarterturn.steps.nested import TraceNested
from quarterturn.steps.sections import (
    AddCorners,
    AddMitred,
    AddTriangles,
    CutAwayBehind,
    CutTriangles,
    FuseToPanel,
    JoinRows,
    SetIn,
    SquareUp,
    StitchMotifs,
    TrimToFit,
)
from quarterturn.steps.things import Pile, Placed, Press, Product


class Chapter(enum.Enum):
    """The parts of the work, in order; the booklet has a section for each."""

    CUTTING = "cutting"
    SHAPES = "preparing the shapes"
    FUSING = "fusing"
    STITCHING = "stitching"
    UNITS = "cutting apart"
    PANELS = "panels"
    ASSEMBLY = "assembly"
    BORDERS = "borders"
    FINISHING = "finishing"


@dataclass(frozen=True, slots=True)
class Straighten:
    """Straighten the cut end of a fabric; up to `loss` of its length goes."""

    fabric: str
    loss: Length


@dataclass(frozen=True, slots=True)
class CutStrips:
    """Cut strips across the usable width of a fabric."""

    fabric: str
    height: Length


@dataclass(frozen=True, slots=True)
class Subcut:
    """Cut each strip (or joined run) across into pieces, and each piece down to its width where it is less.

    Strips are stacked, up to so many `layers`, and a stack is cut at once.
    """

    crosscuts: tuple[Crosscut, ...]
    layers: int = 1


@dataclass(frozen=True, slots=True)
class CutSegments:
    """Cut each segment of a strip into pieces one below the other, and each piece shorter where it is less long.

    A segment lay `along` the strip and `across` it, and so do its pieces; it is cut in stacks as strips are.
    """

    along: Length
    across: Length
    crosscuts: tuple[Crosscut, ...]
    layers: int = 1


@dataclass(frozen=True, slots=True)
class SquareParcels:
    """Take pieces of cloth, from those of a label on hand or bought, and square each up: cut them to a size.

    Their width lies across the cloth as it came off the bolt. What is squared up loses `loss` each way.
    """

    fabric: str
    stock: str
    loss: tuple[Length, Length]


@dataclass(frozen=True, slots=True)
class CutParcels:
    """Cut each piece of cloth into strips, one below the other; `upright`: along the cloth, the piece lying turned."""

    fabric: str
    upright: bool


@dataclass(frozen=True, slots=True)
class CutRest:
    """Cut what is left of a strip or a band into strips across the cloth, one below the other."""

    fabric: str


@dataclass(frozen=True, slots=True)
class JoinEnds:
    """Sew strips end to end into one run; each join takes `loss` of the length."""

    method: JoinMethod
    loss: Length


@dataclass(frozen=True, slots=True)
class CutPanels:
    """Cut full-width lengths of a fabric for the backing."""

    fabric: str
    length: Length


@dataclass(frozen=True, slots=True)
class SetAside:
    """Declare pieces that this quilt does not use."""

    reason: str


@dataclass(frozen=True, slots=True)
class LabelStacks:
    """Stack the units by kind and label each stack. Nothing is used: the stacks only come to be counted."""

    stacks: tuple[Pile, ...]


@dataclass(frozen=True, slots=True)
class LayOut:
    """Lay out all parts of the quilt centre in rows, each with its turn; photograph them; label the rows.

    On point the rows slant: they run from the upper left to the lower right, and are listed from the upper right to
    the lower left. `later` stays in its stacks: it is for the borders.
    """

    rows: tuple[tuple[Placed, ...], ...]
    slanting: bool = False
    later: tuple[Pile, ...] = ()


@dataclass(frozen=True, slots=True)
class SewLine:
    """Sew pieces in a line: each to the right of the one before it, or below it."""

    parts: tuple[Placed, ...]
    way: Side
    seam: Length
    press: Press


@dataclass(frozen=True, slots=True)
class AddBorder:
    """Sew a border strip to one side of the top (or of each section); its allowances are pressed to the border.

    A plain strip lies along the side; a pieced one is laid with `turn` quarter turns.
    """

    side: Side
    seam: Length
    turn: int | None = None
    laid: int = 0
    """Quarter turns with which the work itself is laid: it may be a single piece."""


@dataclass(frozen=True, slots=True)
class JoinPanels:
    """Sew backing panels along their long edges and trim the sheet to its size."""

    seam: Length
    runs_down: bool


@dataclass(frozen=True, slots=True)
class LayerQuilt:
    """Layer backing, batting and top, and baste; the lower two stand out by `overage` beyond the finished edge.

    The finished edge lies `seam` inside the raw edge of the top.
    """

    overage: Length
    seam: Length


@dataclass(frozen=True, slots=True)
class QuiltLayers:
    """Quilt the layers, then trim batting and backing to the edge of the top."""


@dataclass(frozen=True, slots=True)
class CutBias:
    """Cut a sheet at 45° from a corner, sew it to a slanting piece and this to a tube, and cut that round and round.

    The rows run along the slanting edges, `strip_width` apart; what is left beyond the last of `rows` is cut off before
    the tube is sewn, with its edges shifted by one row against each other.
    """

    seam: Length
    strip_width: Length
    rows: int


@dataclass(frozen=True, slots=True)
class Bind:
    """Fold the binding, sew it on by the allowance, mitre its corners, join its ends."""

    seam: Length
    strip_width: Length
    fold: Fold = Fold.DOUBLE


Action: TypeAlias = (
    Straighten | CutStrips | Subcut | CutSegments | SquareParcels | CutParcels | CutRest | JoinEnds | CutPanels
    | TraceRings | TraceNested | FuseRings | CutOut | Crease
    | FuseToGround | StitchEdge | CutApart | CutAway | Trim | Rejoin | SetAside | LabelStacks | FuseToPanel
    | StitchMotifs | CutAwayBehind | CutTriangles | LayOut | SewLine | TrimToFit | AddTriangles | JoinRows
    | SetIn | AddCorners | SquareUp | AddBorder | AddMitred | JoinPanels | LayerQuilt | QuiltLayers | CutBias
    | Bind
)  # fmt: skip


@dataclass(frozen=True, slots=True)
class Step:
    """One step. `uses` leave the table, `makes` come onto it. A LayOut uses nothing: it only shows."""

    number: int
    chapter: Chapter
    action: Action
    uses: tuple[Pile, ...]
    makes: tuple[Product, ...]


@dataclass(frozen=True, slots=True)
class Steps:
    """All steps in order, numbered from 1."""

    steps: tuple[Step, ...]

    def of(self, chapter: Chapter) -> tuple[Step, ...]:
        """Return the steps of one chapter."""
        return tuple(s for s in self.steps if s.chapter is chapter)
