"""1. text -> Design.

In:  the text of a design file (TOML).
Out: a `Design`, every default filled in, and the findings made on the way, each with its line.
Promise: bad text gives findings and never an exception; writing back keeps the designer's comments.
"""

from quarterturn.design.beds import (
    BEDS,
    BORDER_STEP,
    DROP,
    WITHIN,
    Fit,
    Growth,
    fit_over,
    nearest_fit,
)
from quarterturn.design.codes import CODES
from quarterturn.design.defaults import default_making, default_trim
from quarterturn.design.edging import Fold, finished_width, package_sides, strip_width
from quarterturn.design.findings import Finding, Place, Severity
from quarterturn.design.formatting import format_design
from quarterturn.design.habits import default_house
from quarterturn.design.keys import dotted, parts_of
from quarterturn.design.locating import line_of, locate
from quarterturn.design.maps import QUARTERS
from quarterturn.design.model import (
    Bed,
    Border,
    Cell,
    ClothKind,
    Colourway,
    Curve,
    Design,
    Direction,
    DrawnDiameter,
    DrawnOutline,
    EdgeStitch,
    EdgeStitchKind,
    Fabric,
    FinishedRadius,
    House,
    Making,
    OwnOutline,
    Package,
    Paper,
    PathsFlow,
    Pressing,
    Recipe,
    ShapeSize,
    StraightSet,
    Symmetry,
    UnknownSizeError,
    code_of_unit,
    quarter_of_unit,
    unit_name,
)
from quarterturn.design.outlined import wanted_outline
from quarterturn.design.reading import Reading, read_design
from quarterturn.design.repeats import laid, mirrored, turned, upended
from quarterturn.design.schema import schema
from quarterturn.design.selling import (
    KitContent,
    Kits,
    Lesson,
    Minutes,
    Money,
    Notion,
    Selling,
    default_kits,
    default_money,
)
from quarterturn.design.sizes import ORIGINAL, told_of_size
from quarterturn.design.starting import PLACEHOLDERS, starter
from quarterturn.design.text import write_length
from quarterturn.design.writing import WriteError, write_design

__all__ = [
    "BEDS",
    "BORDER_STEP",
    "CODES",
    "DROP",
    "ORIGINAL",
    "PLACEHOLDERS",
    "QUARTERS",
    "WITHIN",
    "Bed",
    "Border",
    "Cell",
    "ClothKind",
    "Colourway",
    "Curve",
    "Design",
    "Direction",
    "DrawnDiameter",
    "DrawnOutline",
    "EdgeStitch",
    "EdgeStitchKind",
    "Fabric",
    "Finding",
    "FinishedRadius",
    "Fit",
    "Fold",
    "Growth",
    "House",
    "KitContent",
    "Kits",
    "Lesson",
    "Making",
    "Minutes",
    "Money",
    "Notion",
    "OwnOutline",
    "Package",
    "Paper",
    "PathsFlow",
    "Place",
    "Pressing",
    "Reading",
    "Recipe",
    "Selling",
    "Severity",
    "ShapeSize",
    "StraightSet",
    "Symmetry",
    "UnknownSizeError",
    "WriteError",
    "code_of_unit",
    "default_house",
    "default_kits",
    "default_making",
    "default_money",
    "default_trim",
    "dotted",
    "finished_width",
    "fit_over",
    "format_design",
    "laid",
    "line_of",
    "locate",
    "mirrored",
    "nearest_fit",
    "package_sides",
    "parts_of",
    "quarter_of_unit",
    "read_design",
    "schema",
    "starter",
    "strip_width",
    "told_of_size",
    "turned",
    "unit_name",
    "upended",
    "wanted_outline",
    "write_design",
    "write_length",
]
