"""What things on the sewing table are called between the steps. Pieces keep their letters."""

from __future__ import annotations

TOP = "top"
BACKING = "backing"
BINDING = "binding"
LAYERED = "layered quilt"
QUILTED = "quilted top"
QUILT = "quilt"
FIXED = (TOP, BACKING, BINDING, LAYERED, QUILTED, QUILT)
"""What a quilt has one of, whatever its sections are called."""


def rest(band: str) -> str:
    """Return the name of what is left of a band beside the long pieces."""
    return f"{band} rest"


def ring(shape: str) -> str:
    """Return the name of a web ring for a shape, which is called by its template."""
    return f"{shape} ring"


def backed(fabric: str, shape: str) -> str:
    """Return the name of a cloth blank with its ring fused on."""
    return f"{fabric} {shape}, backed"


def cut_out(fabric: str, shape: str) -> str:
    """Return the name of a shape cut out and ready to fuse."""
    return f"{fabric} {shape}"


def creased(ground: str, recipe: str = "") -> str:
    """Return the name of a piece of ground with its creases, which may be those of one recipe."""
    return f"{ground}, creased for {recipe}" if recipe else f"{ground}, creased"


def master(code: str, fused: int, stitched: int, kinds: int) -> str:
    """Return the name of a master when so many of its kinds of shape are fused on, and so many stitched."""
    if stitched == kinds:
        return all_stitched(code)
    if kinds == 1:
        return f"master {code}, fused"
    return f"master {code}, {fused} fused" + (f", {stitched} stitched" if stitched else "")


def all_stitched(code: str) -> str:
    """Return the name of a master with every edge stitched."""
    return f"master {code}, stitched"


def trimmed(code: str) -> str:
    """Return the name of a stitched master that is trimmed before it is cut."""
    return f"master {code}, trimmed"


def cut_unit(name: str) -> str:
    """Return the name of a unit as the cuts leave it."""
    return f"unit {name}, as cut"


def open_unit(name: str) -> str:
    """Return the name of a unit whose ground is cut away, still to be trimmed."""
    return f"unit {name}, cut away"


def rejoined(name: str) -> str:
    """Return the name of two halves rejoined, still to be trimmed."""
    return f"unit {name}, rejoined"


def unit(name: str) -> str:
    """Return the name of a finished unit."""
    return f"unit {name}"


def panel(fabric: str) -> str:
    """Return the name of a backing panel."""
    return f"{fabric} panel"


def node(name: str) -> str:
    """Return the name of a section, with its borders or still without."""
    return name


def row(name: str, number: int) -> str:
    """Return the name of a row of a section."""
    return f"row {number}{_of(name)}"


def sashing(name: str, number: int) -> str:
    """Return the name of a row of sashing strips and cornerstones of a section on point."""
    return f"sashing {number}{_of(name)}"


def ended_row(name: str, number: int) -> str:
    """Return the name of a slanting row with its side triangles."""
    return f"{row(name, number)}, with triangles"


def sashed_row(name: str, number: int) -> str:
    """Return the name of a slanting row with the sashing above or below it."""
    return f"{row(name, number)}, with sashing"


def joined_rows(name: str) -> str:
    """Return the name of the slanting rows of a section sewn together."""
    return f"rows{_of(name)}, joined"


def set_in(name: str) -> str:
    """Return the name of joined rows with triangles set in."""
    return f"rows{_of(name)}, triangles set in"


def cornered(name: str) -> str:
    """Return the name of joined rows with their corner triangles."""
    return f"rows{_of(name)}, with corners"


def triangle(piece: str) -> str:
    """Return the name of the triangles that squares of a label give."""
    return f"{piece} triangle"


def fitted(piece: str, fits: str) -> str:
    """Return the name of a plain piece trimmed to what it is sewn to."""
    return f"{piece}, trimmed for {fits}"


def border_line(name: str, ring: int, side: str) -> str:
    """Return the name of a border strip with its corners."""
    return f"{side} border {ring}{_of(name)}, with corners"


def fused_panel(name: str) -> str:
    """Return the name of a panel with its motifs fused on."""
    return f"{name}, fused"


def stitched_panel(name: str) -> str:
    """Return the name of a panel with its motifs stitched."""
    return f"{name}, stitched"


def _of(name: str) -> str:
    return "" if name in ("centre", TOP) else f" of {name}"
