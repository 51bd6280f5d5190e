"""Plane geometry in which a curve stays a curve.

In:  points as complex numbers: x to the right, y down, as seen on the table.
Out: segments (line, circular arc, cubic), closed paths, regions with holes; the exact cut by a straight line.
Promise: nothing is flattened into chords but by `flatten`, which states its tolerance.

A path is positive when its interior lies on the left of the direction of travel in the mathematical sense,
that is: its area by Green's theorem is above zero. With y down this looks clockwise. Holes run the other way.
"""

from quarterturn.geometry.affine import Affine, Drawn, Oval
from quarterturn.geometry.compare import (
    congruence,
    is_same_mirrored,
    is_same_turned,
    merged,
    same_outline,
    same_region,
)
from quarterturn.geometry.cut import StraightLine, cut, keep_left, line_through, path_crossings
from quarterturn.geometry.flatten import flatten_path, flatten_segment
from quarterturn.geometry.motion import STAY, Motion, mirror_across_vertical, quarter_turns, shift, turn_about
from quarterturn.geometry.offset import offset_path, offset_region
from quarterturn.geometry.outlines import OUTLINES, fitted, outline_path, scaled
from quarterturn.geometry.pathdata import (
    PathDataError,
    Subpath,
    read_numbers,
    read_path_data,
    write_path_data,
)
from quarterturn.geometry.paths import Bounds, Path, Region, path_bounds, region_bounds
from quarterturn.geometry.polygons import (
    FLATTENING,
    as_polygon,
    difference_area,
    from_polygons,
    is_inside,
    joined,
    roomiest_point,
    shared_area,
    uncovered_area,
    united,
    without,
)
from quarterturn.geometry.segments import EPSILON, Arc, Cubic, Line, Point, Segment, cross, dot
from quarterturn.geometry.shapes import circle, disc, polygon, rectangle, spread_circle
from quarterturn.geometry.spread import MOST_DIRECTIONS, SeamLine, directions_of, seam_lines, spread

__all__ = [
    "EPSILON",
    "FLATTENING",
    "MOST_DIRECTIONS",
    "OUTLINES",
    "STAY",
    "Affine",
    "Arc",
    "Bounds",
    "Cubic",
    "Drawn",
    "Line",
    "Motion",
    "Oval",
    "Path",
    "PathDataError",
    "Point",
    "Region",
    "SeamLine",
    "Segment",
    "StraightLine",
    "Subpath",
    "as_polygon",
    "circle",
    "congruence",
    "cross",
    "cut",
    "difference_area",
    "directions_of",
    "disc",
    "dot",
    "fitted",
    "flatten_path",
    "flatten_segment",
    "from_polygons",
    "is_inside",
    "is_same_mirrored",
    "is_same_turned",
    "joined",
    "keep_left",
    "line_through",
    "merged",
    "mirror_across_vertical",
    "offset_path",
    "offset_region",
    "outline_path",
    "path_bounds",
    "path_crossings",
    "polygon",
    "quarter_turns",
    "read_numbers",
    "read_path_data",
    "rectangle",
    "region_bounds",
    "roomiest_point",
    "same_outline",
    "same_region",
    "scaled",
    "seam_lines",
    "shared_area",
    "shift",
    "spread",
    "spread_circle",
    "turn_about",
    "uncovered_area",
    "united",
    "without",
    "write_path_data",
]
