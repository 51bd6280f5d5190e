"""What things on the sewing table are called between the steps. Pieces keep their letters."""

from __future__ import annotations

TOP = "top"
BACKING = "backing"
BINDING = "binding"
LAYERED = "layered quilt"
QUILTED = "quilted top"
QUILT = "quilt"


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
