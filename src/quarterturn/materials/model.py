"""How to get the pieces: plans for cloth and web, and everything else that must be bought."""

from __future__ import annotations

import enum
from dataclasses import dataclass, replace
from fractions import Fraction

from quarterturn.measure import Length


@dataclass(frozen=True, slots=True)
class Crosscut:
    """Pieces cut side by side from one strip: each takes `along` of the strip and `across` of its height."""

    piece: str
    along: Length
    across: Length
    count: int
    """Pieces of this label in one strip."""


@dataclass(frozen=True, slots=True)
class Split:
    """Segments of a strip, each cut once more across the strip's height: pieces that lie one below the other.

    A segment takes `along` of the strip and `across` of its height; there are `count` of them in one strip. The counts
    of its `crosscuts` are those of one segment; each takes `across` of the segment's height.
    """

    label: str
    """That of its strips, and a number where they have several kinds of segment: As2 segment 1."""
    along: Length
    across: Length
    count: int
    crosscuts: tuple[Crosscut, ...]


@dataclass(frozen=True, slots=True)
class StripGroup:
    """Equal strips cut across the usable width: `strips` of them, each `height` high, cut into `crosscuts`.

    `used` is the length taken by the crosscuts and `splits` of one strip; what is left of the usable width is offcut.
    A strip without any goes whole into a joined run. From what is left beside them `rest` is cut, if anything: strips
    as long as that is wide, one below the other, counted for all strips of the group together.
    """

    label: str
    """Fabric letter, s and a number in cutting order: As1."""
    height: Length
    strips: int
    crosscuts: tuple[Crosscut, ...]
    used: Length
    rest: tuple[StripGroup, ...] = ()
    splits: tuple[Split, ...] = ()

    @property
    def pieces(self) -> tuple[Crosscut, ...]:
        """Return all pieces of one strip, those of its segments included."""
        split = (replace(cut, count=cut.count * each.count) for each in self.splits for cut in each.crosscuts)
        return (*self.crosscuts, *split)


class JoinMethod(enum.Enum):
    """How strips are sewn end to end."""

    STRAIGHT = "straight"
    DIAGONAL = "diagonal"


@dataclass(frozen=True, slots=True)
class RunEnd:
    """Equal strips that are shorter than the cloth is wide, cut from what other strips have left."""

    label: str
    """Of their strip group."""
    strips: int
    length: Length


@dataclass(frozen=True, slots=True)
class JoinedRun:
    """Strips sewn end to end into one long strip, from which long pieces are cut: whole ones, then `ends` if any.

    Each join takes `loss` of length: two seam allowances when straight, a strip width when diagonal.
    """

    label: str
    """Fabric letter, r and a number: Cr1."""
    strip: str
    """Label of the strip group that it is made of."""
    strips: int
    height: Length
    method: JoinMethod
    loss: Length
    length: Length
    """Length of the run when joined."""
    crosscuts: tuple[Crosscut, ...]
    """Pieces cut from the run, with their count in the whole run."""
    ends: tuple[RunEnd, ...] = ()

    @property
    def joins(self) -> int:
        """Return how many joins it has."""
        return self.strips + sum(end.strips for end in self.ends) - 1


@dataclass(frozen=True, slots=True)
class PanelGroup:
    """Full-width lengths cut off the cloth for the backing: `panels` of them, sewn along their long edges.

    `seam` is the allowance of each edge. The sheet is trimmed to width × height of the backing piece.
    """

    piece: str
    panels: int
    cut_length: Length
    seam: Length
    runs_down: bool
    """True where the panels' length runs down the quilt, so that the seams are upright."""


@dataclass(frozen=True, slots=True)
class ClothPlan:
    """All that is cut from one fabric, in cutting order, and what must be bought for it."""

    fabric: str
    usable_width: Length
    strips: tuple[StripGroup, ...]
    runs: tuple[JoinedRun, ...]
    panels: tuple[PanelGroup, ...]
    cut_length: Length
    """Sum of all strip heights and panel lengths."""
    squaring: Length
    bought: Length
    lower_bound: Length
    """No plan with the same strips joined, the same bands and the same strips that are decided on can be shorter.

    Proved: see `strips`. Where no strip is split, for plans in which pieces lie side by side, one to the height of a
    strip; else for those that may also split segments (see `strips.splitting`).
    """
    hand_rule: Length
    """Cut length by the plain rule: each kind of piece in strips of its own."""
    unplaced: tuple[str, ...]
    """Labels of pieces that fit no strip of this cloth in any allowed position."""
    other_way: Length | None = None
    """What would be bought if the long pieces were cut the other way; None where there is no other way."""
    other_join: Length | None = None
    """What would be bought if long pieces were joined the other way; None where none is joined for them."""
    unpinned: Length | None = None
    """What would be bought if no strips were decided on; None where none are."""

    @property
    def groups(self) -> tuple[tuple[StripGroup, Length], ...]:
        """Return all groups of strips with their length, those cut from the rest of another right after it."""
        found: list[tuple[StripGroup, Length]] = []
        for group in self.strips:
            found.append((group, self.usable_width))
            found += [(each, self.usable_width - group.used) for each in group.rest]
        return tuple(found)

    @property
    def slack(self) -> Length:
        """Return what is bought beyond the cuts, squaring included."""
        return self.bought - self.cut_length


@dataclass(frozen=True, slots=True)
class WebRows:
    """Equal tracings in rows: `per_row` side by side at a pitch, `count` in all, in rows `row_height` apart."""

    shape: str
    """What the template of the shape is called."""
    recipe: str
    width: Length
    """Room for one tracing across the web, its ring included: the traced width and two ring margins, not rounded."""
    height: Length
    gap: Length
    """Between the rooms of two neighbours; 0 where the rings may touch."""
    per_row: int
    rows: int
    count: int


@dataclass(frozen=True, slots=True)
class WebPlan:
    """Paper-backed fusible web by the length, in rows across its width."""

    web_width: Length
    rows: tuple[WebRows, ...]
    used_length: Length
    bought: Length
    unplaced: tuple[str, ...]
    """Templates whose shape is wider than the web."""


@dataclass(frozen=True, slots=True)
class StitchSum:
    """Edge to stitch in one colour of thread (the fabric it matches), and the thread that takes (an estimate)."""

    fabric: str
    edge: float
    """Inches of edge."""
    thread: float
    """Inches of needle and bobbin thread together."""


@dataclass(frozen=True, slots=True)
class ShoppingLine:
    """Something to buy: cloth of a fabric, or a thing by its name. `length` is None for things counted."""

    key: str
    """Fabric letter, or a word: web, batting, thread."""
    length: Length | None
    width: Length | None
    price: Fraction | None
    """What the whole length costs, exactly, in the house's currency; None where the design states no price."""
    matches: str = ""
    """Letter of the fabric that a thread matches; empty for all else."""


@dataclass(frozen=True, slots=True)
class Materials:
    """Every plan of the quilt."""

    cloth: tuple[ClothPlan, ...]
    web: WebPlan
    batting_width: Length
    batting_height: Length
    batting_package: str
    """The smallest packaged batting that holds it: crib, twin, full, queen or king; empty where none does."""
    binding_run: Length
    """Length of binding needed: the perimeter and the extra."""
    stitching: tuple[StitchSum, ...]
    shopping: tuple[ShoppingLine, ...]

    def plan(self, letter: str) -> ClothPlan:
        """Return the plan of a fabric that some piece is cut from."""
        return next(p for p in self.cloth if p.fabric == letter)
