"""4. Setting -> Bill.

In:  a `Design`, its `Blocks` and its `Setting`.
Out: the masters to make, the halves to rejoin, and every piece that must exist before sewing, sized and counted.
Promise: whatever is made beyond need is stated as spare or surplus.
"""

from quarterturn.pieces.bias import bias_length, bias_rows, bias_sheet, bias_square
from quarterturn.pieces.bill import bill_of_pieces, blank_size
from quarterturn.pieces.cloths import (
    QUARTERS,
    ClothPiece,
    TriangleCount,
    cloth_piece,
    corner_square,
    is_measurable,
    mitre_extra,
    panel_piece,
    side_square,
    strip_piece,
    to_cut,
    triangle_counts,
)
from quarterturn.pieces.counting import held_by, times_made
from quarterturn.pieces.model import (
    Bill,
    Blank,
    Grain,
    Join,
    MasterCount,
    MotifCount,
    Piece,
    Purpose,
    RejoinCount,
    UnitCount,
)
from quarterturn.pieces.pieced import CurveBill, CurveCount, curve_bill, pieced_masters
from quarterturn.pieces.slanting import (
    SashRow,
    SlantRow,
    Slope,
    cornerstone,
    horizontal_sash,
    left_of,
    pitch,
    right_of,
    row_sash,
    sash_rows,
    side_triangles,
    slanting_rows,
)
from quarterturn.pieces.text import bill_text

__all__ = [
    "QUARTERS",
    "Bill",
    "Blank",
    "ClothPiece",
    "CurveBill",
    "CurveCount",
    "Grain",
    "Join",
    "MasterCount",
    "MotifCount",
    "Piece",
    "Purpose",
    "RejoinCount",
    "SashRow",
    "SlantRow",
    "Slope",
    "TriangleCount",
    "UnitCount",
    "bias_length",
    "bias_rows",
    "bias_sheet",
    "bias_square",
    "bill_of_pieces",
    "bill_text",
    "blank_size",
    "cloth_piece",
    "corner_square",
    "cornerstone",
    "curve_bill",
    "held_by",
    "horizontal_sash",
    "is_measurable",
    "left_of",
    "mitre_extra",
    "panel_piece",
    "pieced_masters",
    "pitch",
    "right_of",
    "row_sash",
    "sash_rows",
    "side_square",
    "side_triangles",
    "slanting_rows",
    "strip_piece",
    "times_made",
    "to_cut",
    "triangle_counts",
]
