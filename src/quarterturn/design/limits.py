"""How small and how large things may be, so that a slip of the pen is caught and no file can hang the program."""

from __future__ import annotations

from dataclasses import dataclass

from quarterturn.measure import Length, inches

LARGEST_FILE = 1_000_000
LONGEST_LINE = 4_000
DEEPEST = 12
"""Tables within tables."""
MOST_VALUES = 10_000
"""Keys, values, and items of lists."""
MOST_FINDINGS = 100
MOST_FABRICS = 60
MOST_ON_HAND = 20
"""Kinds of pieces of one fabric on the shelf."""
MOST_PARCELS = 100
"""Of one kind on the shelf."""
MOST_OUTLINES = 60
MOST_SEGMENTS = 500
"""Lines, arcs and cubics of one outline."""
LONGEST_PATH = 100_000
"""Characters of path data."""
LONGEST_SIDE = 50
"""How many times as long as wide, or as wide as long, an outline may be."""
LARGEST_DRAWING = 2_000_000
"""Bytes of an SVG file."""
MOST_ELEMENTS = 20_000
DEEPEST_DRAWING = 100
MOST_RECIPES = 40
MOST_COLOURWAYS = 200
MOST_BORDERS = 20
MOST_CUTS = 5
MOST_SHAPES = 40
MOST_DEGREES = 360
MOST_ROWS = 200
"""Rows, and columns, with all repeats laid out."""
MOST_PLACES = MOST_ROWS**2
"""Places of all maps, each section counted wherever it lies."""
MOST_SECTIONS = 60
DEEPEST_SECTIONS = 8
MOST_PARTS = 200
"""Of a line of sections, and motifs of a panel."""
LARGEST_QUILT = inches(400)


@dataclass(frozen=True, slots=True)
class Range:
    """The lengths from `low` to `high`, both included."""

    low: Length
    high: Length
    what: str

    def holds(self, value: Length) -> bool:
        """Tell whether a length lies in the range."""
        return self.low <= value <= self.high


_NOTHING = inches(0)
_HAIR = inches(0, 1, 100)

PARCEL = Range(inches(2), inches(150), "a side of a piece of cloth")
CLOTH_WIDTH = Range(inches(4), inches(150), "the usable width of a fabric")
PHOTO_WIDTH = Range(inches(0, 1, 4), inches(400), "what a photo shows across")
FINISHED = Range(inches(0, 1, 4), inches(60), "the finished side of a unit")
START = Range(inches(1), inches(124), "the side of a master")
TRIM = Range(_NOTHING, inches(12), "a trim allowance")
DIAMETER = Range(inches(0, 1, 8), inches(124), "the diameter of a shape")
RADIUS = Range(inches(0, 1, 16), inches(62), "the radius of a shape")
OFF_MIDDLE = Range(inches(-62), inches(62), "a distance from the middle of a master")
INNER = Range(inches(0, 1, 8), inches(124), "the hole of a ring")
UNDERLAP = Range(_NOTHING, inches(4), "what stays below a shape")
BORDER = Range(inches(0, 1, 4), inches(60), "the finished width of a border")
BINDING_FINISHED = Range(inches(0, 1, 8), inches(1), "the finished width of a binding")
PACKAGE = Range(inches(4), inches(200), "a side of a package of batting")
SASHING = Range(inches(0, 1, 4), inches(24), "the finished width of sashing")
STRIP = Range(inches(0, 1, 4), inches(120), "the finished width of a strip")
PANEL = Range(inches(1), inches(120), "a finished side of a panel")
ON_PANEL = Range(_NOTHING, inches(120), "a place on a panel")
FLOAT = Range(inches(0, 1, 16), inches(6), "how far triangles stand out")
TRIANGLE_SQUARE = Range(inches(1), inches(200), "the side of a square for setting triangles")
COPED = Range(inches(1), inches(400), "the finished size of a section with its coping")
STRIP_HEIGHT = Range(inches(0, 1, 2), inches(60), "the height of a strip")
BINDING = Range(inches(0, 3, 4), inches(6), "the width of a binding strip")

MAKING: dict[str, Range] = {
    "seam": Range(inches(0, 1, 16), inches(1), "a seam allowance"),
    "usable_width": CLOTH_WIDTH,
    "ring_out": Range(_NOTHING, inches(2), "the web outside the drawn line"),
    "ring_in": Range(_NOTHING, inches(4), "the web inside the drawn line"),
    "tracing_gap": Range(_NOTHING, inches(4), "the gap between drawn lines"),
    "cut_away": Range(_NOTHING, inches(4), "the ground left when the rest is cut away"),
    "web_width": Range(inches(4), inches(150), "the width of the web"),
    "binding_extra": Range(_NOTHING, inches(60), "the binding beyond the perimeter"),
    "overage": Range(_NOTHING, inches(24), "the overage on each side"),
    "backing_seam": Range(_NOTHING, inches(4), "a seam allowance of the backing"),
    "piece_squaring": Range(_NOTHING, inches(6), "the loss in squaring up a piece of cloth"),
    "squaring": Range(_NOTHING, inches(12), "the loss in squaring up"),
    "slack": Range(_NOTHING, inches(72), "the slack"),
}
WEB_SHEET = Range(inches(4), inches(150), "a side of a sheet of web")
STITCH: dict[str, Range] = {
    "width": Range(_NOTHING, inches(0, 1, 2), "the width of a stitch"),
    "length": Range(_HAIR, inches(0, 1, 2), "the length of a stitch"),
}
BOBBIN = Range(inches(36), inches(36_000), "the thread on a bobbin")
SPOOL = Range(inches(36), inches(100_000), "the thread on a spool")
BOLT = Range(inches(36), inches(100_000), "the cloth on a bolt")
MATTRESS = Range(inches(10), inches(120), "a side of a mattress")
DROP = Range(_NOTHING, inches(48), "a drop")
TUCK = Range(_NOTHING, inches(36), "a tuck")
WITHIN = Range(_NOTHING, inches(24), "what a quilt may differ from the wanted size")
MOST_SIZES = 8
"""With the file's own; so many columns fit on a page."""
LEAST_LOBES, MOST_LOBES = 3, 24
MOST_SPARES = 1000
LAST_DEGREE = 359
HIGHEST_PRICE = 100_000
HIGHEST_SHARE = 1000
"""Percent."""
MOST_SHRINKAGE = 30
"""Percent: cloth that loses more is felted, not washed."""
MOST_LAYERS = 12
MOST_CUT_LAYERS = 8
"""A cutter with a blade of 60 mm goes through eight layers at most (from memory)."""
MOST_PINS, MOST_STRIPS = 20, 1000
MOST_MINUTES = 1000
MOST_HOURS = 200
SLOWEST_PACE = 10
MOST_NOTIONS = 60
MOST_PACKAGES = 20
MOST_KITS = 10_000
MOST_STUDENTS = 1000
