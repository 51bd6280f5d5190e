"""What things on the sewing table are called between the steps. Pieces keep their letters."""

from __future__ import annotations

TOP = "top"
BACKING = "backing"
BINDING = "binding"
LAYERED = "layered quilt"
QUILTED = "quilted top"
QUILT = "quilt"


def ring(recipe: str) -> str:
    """Return the name of a web ring."""
    return f"{recipe} ring"


def backed(fabric: str, recipe: str) -> str:
    """Return the name of a cloth blank with its ring fused on."""
    return f"{fabric} {recipe}, backed"


def shape(fabric: str, recipe: str) -> str:
    """Return the name of a shape cut out and ready to fuse."""
    return f"{fabric} {recipe}"


def creased(ground: str) -> str:
    """Return the name of a ground square with its creases."""
    return f"{ground}, creased"


def fused(code: str) -> str:
    """Return the name of a master with its shape fused on."""
    return f"master {code}, fused"


def stitched(code: str) -> str:
    """Return the name of a master with its edge stitched."""
    return f"master {code}, stitched"


def cut_unit(name: str) -> str:
    """Return the name of a unit as the cuts leave it."""
    return f"unit {name}, as cut"


def open_unit(name: str) -> str:
    """Return the name of a unit whose ground is cut away, still to be trimmed."""
    return f"unit {name}, cut away"


def unit(name: str) -> str:
    """Return the name of a finished unit."""
    return f"unit {name}"


def panel(fabric: str) -> str:
    """Return the name of a backing panel."""
    return f"{fabric} panel"
