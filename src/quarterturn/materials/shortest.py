"""The shortest plan of strips that can be found for the pieces of one fabric, and how short any plan could be."""

from __future__ import annotations

from functools import lru_cache

from quarterturn.materials import bounds
from quarterturn.materials.kinds import Kind
from quarterturn.materials.shelves import length_of, shelve
from quarterturn.materials.strips import EFFORT, Effort, StripPlan, plan_strips
from quarterturn.measure import Length

KEPT = 512
"""Plans that are remembered: sizes of one quilt, and one quilt made again and again, ask for the same ones."""


@lru_cache(maxsize=KEPT)
def shortest_strips(kinds: tuple[Kind, ...], usable: Length, effort: Effort = EFFORT) -> StripPlan:
    """Plan the strips for kinds that all have a position. The bound holds whatever the effort.

    Most quick plans are as short as the quick bound, and so proved without the solver, which is not even imported.
    """
    quick, bound = shelve(kinds, usable), bounds.lower_bound(kinds, usable)
    if length_of(quick) == bound:
        return StripPlan(quick, bound, bound)
    plan = plan_strips(kinds, usable, effort)
    return StripPlan(plan.shelves, plan.length, max(plan.bound, bound))
