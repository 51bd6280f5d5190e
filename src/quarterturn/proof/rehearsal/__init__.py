"""The rehearsal: the quilt made on paper, from so much cloth and web, by the steps and nothing else.

In:  `Supplies` (what was bought) and `Steps`.
Out: a `Rehearsal`: the first step that cannot be done, or the top that was made and what is left over.
Promise: neither the setting nor the materials are asked. Only the comparison afterwards sees the picture.
"""

from quarterturn.proof.rehearsal.cloth import CutOff
from quarterturn.proof.rehearsal.compare import area_of_difference
from quarterturn.proof.rehearsal.rehearse import DOINGS, Failure, Rehearsal, rehearse
from quarterturn.proof.rehearsal.table import Bolt, Good, Parcels, Supplies, Table

__all__ = [
    "DOINGS",
    "Bolt",
    "CutOff",
    "Failure",
    "Good",
    "Parcels",
    "Rehearsal",
    "Supplies",
    "Table",
    "area_of_difference",
    "rehearse",
]
