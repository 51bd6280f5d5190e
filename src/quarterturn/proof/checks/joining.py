"""How long strips are when they are sewn end to end, added up from the strips that a plan cuts."""

from __future__ import annotations

from quarterturn.materials import ClothPlan, JoinedRun
from quarterturn.measure import Length


def sewn_end_to_end(plan: ClothPlan, run: JoinedRun) -> tuple[int, Length]:
    """Return how many strips a run finds, and their length when joined: each join takes its loss.

    Strips that the plan does not cut whole are not counted.
    """
    there = {group.label: (group.strips, width) for group, width in plan.groups if not group.pieces}
    there |= _from_parcels(plan, run)
    wanted = [(run.strip, run.strips), *((end.label, end.strips) for end in run.ends)]
    found = [(min(count, there[label][0]), there[label][1]) for label, count in wanted if label in there]
    strips = sum(count for count, _ in found)
    length = sum((count * width for count, width in found), Length(0))
    return strips, length - max(0, strips - 1) * run.loss


def _from_parcels(plan: ClothPlan, run: JoinedRun) -> dict[str, tuple[int, Length]]:
    """Return how many strips of a run are cut from pieces of cloth, and how long they are, the shortest of them."""
    if plan.parcels is None:
        return {}
    found = [
        (group.strips * layout.count, layout.length)
        for layout in plan.parcels.layouts
        for group in layout.strips
        if group.label == run.strip and not group.crosscuts
    ]
    for cut, strips in plan.parcels.crosscuts:
        if cut.piece == run.strip:
            found.append((cut.count * strips, cut.along if cut.across == run.height else cut.across))
    if not found:
        return {}
    return {run.strip: (sum(count for count, _ in found), min(length for _, length in found))}
