"""To where seams are pressed, in words."""

from __future__ import annotations

from quarterturn.setting import Side
from quarterturn.steps import Press, Towards

_WAYS = {
    Side.LEFT: "to the left",
    Side.RIGHT: "to the right",
    Side.TOP: "up, towards the top edge",
    Side.BOTTOM: "down, towards the bottom edge",
    Towards.SASHING: "towards the sashing",
    Towards.STRIPS: "towards the strips",
}


def pressed_to(press: Press) -> str:
    """Return where allowances go: `open`, `to the left`."""
    return "open" if press is None else _WAYS[press]
