"""What the wash and the ruler take from cloth before anything is cut, and what a narrower bolt would cost.

A share p lost in the wash leaves length · (1 − p): so length / (1 − p) is bought, and not length · (1 + p), which is
short. Dimensional change is measured as 100·(B − A)/A, negative where cloth shrinks (from memory; the tests are AATCC
TM135 and ISO 5077, garmentstech.com). How much: cotton cloth 2–5 %, cotton batting 3–5 %, loose flannel up to 10 %
(wikisum.wiki, quiltingboard.com 6723231), woven wool 2–5 % (from memory); a shop's "pre-shrunk" means under 3 %.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from fractions import Fraction

from quarterturn.design import ClothKind
from quarterturn.materials.model import ClothPlan
from quarterturn.measure import Length, Units, buy_up, inches

NARROW: Length = inches(40)
"""The least usable width that is common on cloth sold as 44/45" wide; many have 42" (allpeoplequilt.com)."""

USUAL = {
    ClothKind.COTTON: (Fraction(2, 100), Fraction(5, 100)),
    ClothKind.FLANNEL: (Fraction(5, 100), Fraction(10, 100)),
    ClothKind.WOOL: (Fraction(2, 100), Fraction(5, 100)),
}
"""The least and the most that cloth of a kind usually loses each way. The least of flannel is from memory."""


def before_wash(wanted: Length, share: Fraction) -> Length:
    """Return the length that is left as `wanted` when a share of it is lost. The share is below 1."""
    return wanted / (1 - share)


def after_wash(bought: Length, share: Fraction) -> Length:
    """Return what is left of a length when a share of it is lost."""
    return bought * (1 - share)


def dimensional_change(before: Length, after: Length) -> float:
    """Return a change in percent of what it was before, negative where cloth shrinks."""
    return float(100 * (after - before) / before)


def squaring_loss(cuts: int, each: Length) -> Length:
    """Return what straightening takes from cloth bought in so many cuts: each has an end that was cut in a shop."""
    return cuts * each


@dataclass(frozen=True, slots=True)
class ToBuy:
    """What to buy of a fabric: the cuts, what straightening and the wash take, and all of it as shops cut it."""

    cut: Length
    squaring: Length
    slack: Length
    """Beyond cuts and squaring, as far as it is wished for and not there already."""
    washed: Length
    """What must be there after the wash."""
    unwashed: Length
    bought: Length

    @property
    def over(self) -> Length:
        """Return what is bought beyond what must be there."""
        return self.bought - self.unwashed


def to_buy(
    cut: Length, cuts_of_cloth: int, squaring: Length, slack: Length, share: Fraction, units: Units
) -> ToBuy:
    """Return what to buy for a length to cut, bought in so many pieces and shrinking by a share along its length.

    The slack includes the squaring, as it does in a plan; with no slack at all only the squaring is added.
    """
    loss = squaring_loss(cuts_of_cloth, squaring)
    washed = cut + max(loss, slack)
    unwashed = before_wash(washed, share)
    return ToBuy(cut, loss, washed - cut - loss, washed, unwashed, buy_up(unwashed, units))


Plan = Callable[[Length], ClothPlan]
"""Plans the pieces of one fabric on cloth of a usable width."""


@dataclass(frozen=True, slots=True)
class Narrower:
    """What becomes of a plan where the cloth turns out narrower: by how much it grows, and which pieces are lost."""

    stated: Length
    usable: Length
    longer: Length
    """What its cuts take beyond the plan for the stated width; negative in the rare case that they take less."""
    short: Length
    """What is missing of the cloth that the list says to buy; 0 where it still suffices."""
    lost: tuple[str, ...]
    """Labels of pieces that fit no strip of the narrower cloth."""


def narrower(plan: Plan, stated: Length, usable: Length = NARROW) -> Narrower | None:
    """Plan again on narrower cloth, as a shop may sell it; None where no more than that was stated."""
    if stated <= usable:
        return None
    wide, narrow = plan(stated), plan(usable)
    need = narrow.cut_length + narrow.squaring
    return Narrower(
        stated=stated,
        usable=usable,
        longer=narrow.cut_length - wide.cut_length,
        short=max(Length(0), need - wide.bought),
        lost=tuple(label for label in narrow.unplaced if label not in wide.unplaced),
    )


def washed_width(usable: Length, share: Fraction) -> Length:
    """Return the usable width that is left of cloth that loses a share of it in the wash."""
    return after_wash(usable, share)


def lost_in_wash(plan: Plan, stated: Length, share: Fraction) -> Narrower | None:
    """Plan again on cloth that the wash made narrower; None where it loses nothing."""
    return narrower(plan, stated, washed_width(stated, share)) if share else None


def cuts_needed(bought: Length, bolt_ends: Sequence[Length]) -> int | None:
    """Return from how few of the lengths there are so much cloth can be had; None where all are too short."""
    total = Length(0)
    for number, length in enumerate(sorted(bolt_ends, reverse=True), 1):
        total += length
        if total >= bought:
            return number
    return None
