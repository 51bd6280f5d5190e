"""How to get the pieces: plans for cloth and web, and everything else that must be bought."""

from __future__ import annotations

import enum
from dataclasses import dataclass, replace
from fractions import Fraction

from quarterturn.materials.nested import NestedWeb, WebCentre
from quarterturn.materials.staggered import Stagger
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
    each: Length
    """Length of one strip."""
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
    """True where the panels' length runs down the quilt, so that the seams are vertical."""


@dataclass(frozen=True, slots=True)
class ParcelStock:
    """Equal pieces of cloth of a fabric: their size as they are cut, first as they are and then squared up.

    `used` of them are cut into. `there` are on hand; None where they are bought.
    """

    label: str
    """Fabric letter and how they come: `B bought`, `B on hand 1`."""
    name: str
    width: Length
    height: Length
    usable_width: Length
    usable_height: Length
    used: int
    there: int | None

    @property
    def on_hand(self) -> bool:
        """Tell whether they need not be bought."""
        return self.there is not None


@dataclass(frozen=True, slots=True)
class ParcelLayout:
    """Pieces of cloth cut alike: `count` of them, each squared up and cut into strips, one below the other.

    Strips run across the cloth, `length` long, or along it where the piece is cut `upright`; all of them together are
    no higher than `room`. `strips` tells how many of each are in one piece of cloth.
    """

    label: str
    """Fabric letter, p and a number: Bp1."""
    stock: str
    count: int
    upright: bool
    length: Length
    room: Length
    strips: tuple[StripGroup, ...]

    @property
    def cut(self) -> Length:
        """Return the height of all strips of one piece of cloth."""
        return sum((group.height * group.strips for group in self.strips), Length(0))


@dataclass(frozen=True, slots=True)
class ParcelPlan:
    """All that is cut from pieces of cloth of one fabric."""

    stocks: tuple[ParcelStock, ...]
    layouts: tuple[ParcelLayout, ...]
    bound: int
    """No plan with the same strips joined and pieces in strips buys fewer pieces (proved: see `strips.stock`)."""

    @property
    def bought(self) -> int:
        """Return how many pieces of cloth are bought."""
        return sum(stock.used for stock in self.stocks if not stock.on_hand)

    @property
    def to_buy(self) -> ParcelStock | None:
        """Return the pieces that are bought; None where the rest comes off the bolt."""
        return next((stock for stock in self.stocks if not stock.on_hand), None)

    def stock(self, label: str) -> ParcelStock:
        """Return the pieces of cloth with a label."""
        return next(stock for stock in self.stocks if stock.label == label)

    @property
    def crosscuts(self) -> tuple[tuple[Crosscut, int], ...]:
        """Return everything that is cut, each with the number of strips that it is cut from."""
        return tuple(
            (cut, group.strips * layout.count)
            for layout in self.layouts
            for group in layout.strips
            for cut in group.crosscuts
        )


@dataclass(frozen=True, slots=True)
class ClothPlan:
    """All that is cut from one fabric, in cutting order, and what must be bought for it.

    What comes from pieces of cloth stands in `parcels`; all lengths and strips are those of cloth off the bolt, and 0
    where none is bought.
    """

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
    parcels: ParcelPlan | None = None
    """What is cut from precuts and from what lies on the shelf; None where all is cut off the bolt."""
    other_join: Length | None = None
    """What would be bought if long pieces were joined the other way; None where none is joined for them."""
    unpinned: Length | None = None
    """What would be bought if no strips were decided on; None where none are."""

    @property
    def is_off_the_bolt(self) -> bool:
        """Tell whether anything is cut off the bolt."""
        return bool(self.strips or self.panels)

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
    rows_on_sheet: int = 0
    """How many rows a sheet holds, where web is sold by the sheet; each shape begins a sheet of its own."""
    stagger: Stagger | None = None
    """How the rows are shifted; None where they are plain."""
    staggered_length: Length = Fraction(0)
    """What staggered rows take along the web."""

    @property
    def length(self) -> Length:
        """Return what the rows take along the web."""
        if self.stagger:
            return self.staggered_length
        return self.rows * (self.height + self.gap) - self.gap

    @property
    def on_sheet(self) -> int:
        """Return how many tracings a full sheet holds."""
        if self.stagger:
            return (
                -(-self.rows_on_sheet // 2) * self.stagger.odd + self.rows_on_sheet // 2 * self.stagger.even
            )
        return self.rows_on_sheet * self.per_row

    @property
    def sheets(self) -> int:
        """Return how many sheets the rows take; 0 where web is sold by the length."""
        return -(-self.count // self.on_sheet) if self.on_sheet else 0


@dataclass(frozen=True, slots=True)
class WebPlan:
    """Paper-backed fusible web by the length, or by the sheet: tracings in rows across it, or nested to save web."""

    web_width: Length
    """Of the roll, or of a sheet."""
    rows: tuple[WebRows, ...]
    """How the tracings lie in rows, unless they are nested."""
    used_length: Length
    """Of sheets, all of them, one after another; so are all lengths here where there are sheets."""
    bought: Length
    unplaced: tuple[str, ...]
    """Templates whose shape is wider than the web."""
    nested: NestedWeb | None = None
    """Where every tracing lies instead."""
    sheet: Length | None = None
    """The height of a sheet, where web is sold by the sheet."""
    plain_length: Length = Fraction(0)
    """What the tracings would take in plain rows."""
    bound: Length = Fraction(0)
    """No way to lay these tracings, in centres of others or not, takes less (proved: see `nesting`)."""
    centres: tuple[WebCentre, ...] = ()
    """What rings leave inside, that which is worth keeping."""

    @property
    def saved(self) -> Length:
        """Return what is saved against plain rows."""
        return self.plain_length - self.used_length

    @property
    def sheets(self) -> int:
        """Return the number of sheets to buy; 0 where web is sold by the length."""
        return int(self.bought / self.sheet) if self.sheet else 0


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
    """Something to buy: cloth of a fabric, or a thing by its name. `length` is None for things counted.

    Cloth in pieces is counted: `count` of them, each called `piece`. Neither is there where all is on hand.
    """

    key: str
    """Fabric letter, or a word: web, batting, thread."""
    length: Length | None
    width: Length | None
    price: Fraction | None
    """What the whole costs, exactly, in the house's currency; None where the design states no price."""
    matches: str = ""
    """Letter of the fabric that a thread matches; empty for all else."""
    sheets: int = 0
    """How many sheets of web; then `length` is that of all of them, one after another, and `width` that of one."""
    count: int | None = None
    piece: str = ""


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
