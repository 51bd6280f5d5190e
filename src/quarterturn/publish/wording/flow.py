"""Where the curves run: what the sewer can check the layout by."""

from __future__ import annotations

from quarterturn.measure import show_count
from quarterturn.proof import Pattern
from quarterturn.publish.wording.names import length
from quarterturn.setting import Stop, Trail

FINGER = "Follow a curve with your finger before you sew: a unit that is turned wrongly breaks it."


def flow_facts(pattern: Pattern) -> tuple[str, ...]:
    """Return how many rounds close and how many paths run on, and what to do with them.

    Nothing is said where no curve closes or runs through several units from edge to edge: there is none to follow.
    """
    flow = pattern.setting.flow
    crossing = [trail for trail in flow.paths if set(trail.stops) == {Stop.EDGE}]
    if not flow.rounds and all(trail.pieces == 1 for trail in crossing):
        return ()
    inside = [trail for trail in flow.paths if trail not in crossing]
    parts = (_rounds(flow.rounds, flow.circles), _crossing(pattern, crossing), _inside(inside))
    return f"{'; '.join(part for part in parts if part)}.", FINGER


def _rounds(rounds: tuple[Trail, ...], circles: int) -> str:
    if not rounds:
        return ""
    closing = f"{show_count(len(rounds), 'round closes', 'rounds close')}"
    if not circles:
        return closing
    if circles == len(rounds):
        return f"{closing}, {'a circle' if circles == 1 else 'all of them circles'}"
    return f"{closing}, {circles:,} of them {'a circle' if circles == 1 else 'circles'}"


def _crossing(pattern: Pattern, paths: list[Trail]) -> str:
    if not paths:
        return ""
    running = f"{show_count(len(paths), 'path runs', 'paths run')} from edge to edge"
    longest = length(pattern.design, max(trail.length for trail in paths))
    return f"{running}; {'it' if len(paths) == 1 else 'the longest'} is {longest} long"


def _inside(paths: list[Trail]) -> str:
    """Tell of the paths that come to an end within the quilt, so that nobody looks for more of them."""
    return f"{show_count(len(paths), 'path ends', 'paths end')} at a seam between units" if paths else ""
