"""1. text -> Design.

In:  the text of a design file (TOML).
Out: a `Design`, every default filled in, and the findings made on the way, each with its line.
Promise: bad text gives findings and never an exception; writing back keeps the designer's comments.
"""

from quarterturn.design.codes import CODES
from quarterturn.design.defaults import default_making, default_trim
from quarterturn.design.findings import Finding, Place, Severity
from quarterturn.design.formatting import format_design
from quarterturn.design.habits import default_house
from quarterturn.design.keys import dotted, parts_of
from quarterturn.design.locating import line_of, locate
from quarterturn.design.map_sizes import Misfit, misfit, told_misfit
from quarterturn.design.maps import HALVES, QUARTERS, TRIANGLES
from quarterturn.design.model import (
    FIRST,
    HALF_MARK,
    SECOND,
    Border,
    Cell,
    ClothKind,
    Colourway,
    Design,
    Direction,
    EdgeStitch,
    EdgeStitchKind,
    Fabric,
    House,
    Making,
    Paper,
    Pressing,
    StraightSet,
    Symmetry,
    code_of_unit,
    quarter_of_unit,
    unit_name,
)
from quarterturn.design.outlined import wanted_outline
from quarterturn.design.placing import RING, cut_lines, meant_paths, traced_path
from quarterturn.design.reading import Reading, read_design
from quarterturn.design.recipes import (
    GROUND,
    SHAPE,
    Curve,
    Cut,
    DrawnDiameter,
    DrawnOutline,
    FinishedRadius,
    PathsFlow,
    Recipe,
    RecipeKind,
    Rejoined,
    ShapeOn,
    ShapeSize,
    one_shape_cut_both_ways,
)
from quarterturn.design.repeats import laid, mirrored, turned, upended
from quarterturn.design.schema import schema
from quarterturn.design.starting import PLACEHOLDERS, starter
from quarterturn.design.upright import allowed_turns, upright_letters
from quarterturn.design.writing import WriteError, write_design

__all__ = [
    "CODES",
    "FIRST",
    "GROUND",
    "HALF_MARK",
    "HALVES",
    "PLACEHOLDERS",
    "QUARTERS",
    "RING",
    "SECOND",
    "SHAPE",
    "TRIANGLES",
    "Border",
    "Cell",
    "ClothKind",
    "Colourway",
    "Curve",
    "Cut",
    "Design",
    "Direction",
    "DrawnDiameter",
    "DrawnOutline",
    "EdgeStitch",
    "EdgeStitchKind",
    "Fabric",
    "Finding",
    "FinishedRadius",
    "House",
    "Making",
    "Misfit",
    "Paper",
    "PathsFlow",
    "Place",
    "Pressing",
    "Reading",
    "Recipe",
    "RecipeKind",
    "Rejoined",
    "Severity",
    "ShapeOn",
    "ShapeSize",
    "StraightSet",
    "Symmetry",
    "WriteError",
    "allowed_turns",
    "code_of_unit",
    "cut_lines",
    "default_house",
    "default_making",
    "default_trim",
    "dotted",
    "format_design",
    "laid",
    "line_of",
    "locate",
    "meant_paths",
    "mirrored",
    "misfit",
    "one_shape_cut_both_ways",
    "parts_of",
    "quarter_of_unit",
    "read_design",
    "schema",
    "starter",
    "told_misfit",
    "traced_path",
    "turned",
    "unit_name",
    "upended",
    "upright_letters",
    "wanted_outline",
    "write_design",
]
