"""4. Setting -> Bill.

In:  a `Design`, its `Blocks` and its `Setting`.
Out: the masters to make, the halves to rejoin, and every piece that must exist before sewing, sized and counted.
Promise: whatever is made beyond need is stated as spare or surplus.
"""

from quarterturn.pieces.bill import bill_of_pieces, blank_size
from quarterturn.pieces.model import (
    Bill,
    Blank,
    Grain,
    Join,
    MasterCount,
    Piece,
    Purpose,
    RejoinCount,
    UnitCount,
)
from quarterturn.pieces.pieced import CurveBill, CurveCount, curve_bill, pieced_masters
from quarterturn.pieces.text import bill_text

__all__ = [
    "Bill",
    "Blank",
    "CurveBill",
    "CurveCount",
    "Grain",
    "Join",
    "MasterCount",
    "Piece",
    "Purpose",
    "RejoinCount",
    "UnitCount",
    "bill_of_pieces",
    "bill_text",
    "blank_size",
    "curve_bill",
    "pieced_masters",
]
