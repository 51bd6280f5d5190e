"""Strips across the cloth, planned as well as can be proved.

In:  kinds of pieces with their counts and positions, and the usable width of the cloth.
Out: a `StripPlan`: equal strips with what is cut from each, their length, and a length below which no plan of strips
     can stay. Where the two are equal the plan is proved to be the shortest.
Promise: the same input gives the same plan on every machine, since work is limited by counting it, never by the clock.

The method is column generation: a strip pattern is a column, found by a knapsack over the width of the cloth for all
heights in one pass (Gilmore and Gomory, *Multistage cutting stock problems of two and more dimensions*, 1965). Fixing
whole strips one after another (diving) makes a plan; listing every pattern that a shorter plan could use, and finding
that no choice of them will do, proves it. With the quick effort none of that is done: the plan is that of `shelves`.

`splitting` looks at a wider class of plans, in which low pieces lie one below the other in a higher strip.
"""

from quarterturn.materials.strips.job import Cut, Job, job_of
from quarterturn.materials.strips.patterns import Pattern
from quarterturn.materials.strips.planning import EFFORT, QUICK, Effort, StripPlan, plan_strips

__all__ = ["EFFORT", "QUICK", "Cut", "Effort", "Job", "Pattern", "StripPlan", "job_of", "plan_strips"]
