"""What the wash and the ruler take from cloth before anything is cut.

A share p lost in the wash leaves length · (1 − p): so length / (1 − p) is bought, and not length · (1 + p), which is
short. How much: cotton cloth 2–5 %, cotton batting 3–5 %, loose flannel up to 10 %
(wikisum.wiki, quiltingboard.com 6723231), woven wool 2–5 % (from memory); a shop's "pre-shrunk" means under 3 %.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from quarterturn.measure import Length, Units, buy_up


def before_wash(wanted: Length, share: Fraction) -> Length:
    """Return the length that is left as `wanted` when a share of it is lost. The share is below 1."""
    return wanted / (1 - share)


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
    loss = cuts_of_cloth * squaring
    washed = cut + max(loss, slack)
    unwashed = before_wash(washed, share)
    return ToBuy(cut, loss, washed - cut - loss, washed, unwashed, buy_up(unwashed, units))
