"""How a line of parts is written, and where its seams are pressed to."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from itertools import groupby

from quarterturn.measure import Length
from quarterturn.steps.things import Placed, Press

Plain = Callable[[Length | float], str]
"""Prints a length in the units of the pattern."""


def line_of_parts(parts: Iterable[Placed]) -> str:
    """Write parts in their order; neighbours of one kind share its name: `pair 1 2 2 1, unit a3`.

    Units have their turn behind their code, as in the map; other parts lie as they were sewn.
    """
    words = [_name_and_rest(part) for part in parts]
    groups = groupby(words, key=lambda word: word[0])
    return ", ".join(" ".join((name, *(rest for _, rest in group if rest))) for name, group in groups)


def _name_and_rest(part: Placed) -> tuple[str, str]:
    name, _, rest = part.label.partition(" ")
    turned = f"@{part.turn}" if part.turn else ""
    if name not in ("unit", "pair") and not rest.startswith("kind "):
        return f"{part.label}{turned}", ""
    return name, f"{rest}{part.turn}" if name == "unit" else f"{rest}{turned}"


def pressed(press: Press) -> str:
    """Say where allowances are pressed to."""
    return "press open" if press is None else f"press to the {press.value}"
