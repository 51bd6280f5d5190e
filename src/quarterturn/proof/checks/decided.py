"""Whether strips are cut as the designer has decided."""

from __future__ import annotations

from collections.abc import Iterator

from quarterturn.design import Fabric, PinnedStrips, Severity, dotted
from quarterturn.materials import ClothPlan, StripGroup
from quarterturn.measure import show_count
from quarterturn.proof.checks.fault import Fault, check, tell
from quarterturn.proof.model import Pattern


def strips_decided(pattern: Pattern) -> Iterator[Fault]:
    """Hold each plan against the strips and the heights that the design states."""
    for plan in pattern.materials.cloth:
        fabric = pattern.design.fabric(plan.fabric)
        if fabric.bought_as and fabric.strips:
            yield Fault(dotted("fabrics", plan.fabric, "strips"), _no_bolt(fabric), NO_BOLT)
            continue
        cut = [group for group, _ in plan.groups if group.pieces and group.height <= plan.usable_width]
        for number, pin in enumerate(fabric.strips):
            key = dotted("fabrics", plan.fabric, "strips", str(number))
            if sentence := _broken(pin, cut, pattern):
                yield Fault(key, sentence, _remedy(pin, plan.fabric, pattern))
        yield from _heights(fabric, cut, plan, pattern)


NO_BOLT = "Buy the fabric off the bolt, without `bought_as`, or leave the strips out."


def _no_bolt(fabric: Fabric) -> str:
    return f"Fabric {fabric.letter} is bought in pieces, and strips can be decided on only for cloth off the bolt."


def _broken(pin: PinnedStrips, cut: list[StripGroup], pattern: Pattern) -> str:
    """Say which strips are not as decided; nothing where they are."""
    units = pattern.design.units
    if unknown := _unknown(pin, pattern):
        return f"There is no piece {' and no piece '.join(unknown)} to cut from strips {tell(pin.height, units)} high."
    strips = [group for group in cut if group.height == pin.height]
    if pin.count is not None:
        holding = [g for g in strips if not pin.pieces or any(c.piece in pin.pieces for c in g.pieces)]
        found = sum(group.strips for group in holding)
        if found < pin.count:
            wanted = show_count(pin.count, "strip")
            for_what = f" for {' and '.join(pin.pieces)}" if pin.pieces else ""
            return f"{wanted} {tell(pin.height, units)} high{for_what} cannot be filled, only {found}."
        return ""
    for label in pin.pieces:
        homes = [group for group in cut if any(c.piece == label for c in group.pieces)]
        if not homes or any(group.height != pin.height for group in homes):
            return f"{label} cannot be cut from strips {tell(pin.height, units)} high alone."
    return ""


def _unknown(pin: PinnedStrips, pattern: Pattern) -> list[str]:
    """Return the labels that no piece bears."""
    return [label for label in pin.pieces if not any(p.label == label for p in pattern.bill.pieces)]


def _remedy(pin: PinnedStrips, fabric: str, pattern: Pattern) -> str:
    if _unknown(pin, pattern):
        there = ", ".join(piece.label for piece in pattern.bill.of_fabric(fabric))
        return f"Name pieces of fabric {fabric}: there are {there}."
    if pin.count is not None:
        return "Ask for fewer strips, name pieces that fit in them and of which there are enough, or leave them out."
    return (
        "Name pieces that lie in a strip of this height, that no other entry takes, and that are not joined or cut "
        "along the cloth; make the strips higher; or leave them out."
    )


def _heights(fabric: Fabric, cut: list[StripGroup], plan: ClothPlan, pattern: Pattern) -> Iterator[Fault]:
    units = pattern.design.units
    allowed = {*fabric.strip_heights, *(pin.height for pin in fabric.strips)}
    if not fabric.strip_heights:
        return
    for group in cut:
        if group.height not in allowed:
            heights = " and ".join(tell(height, units) for height in fabric.strip_heights)
            sentence = (
                f"Strips of fabric {plan.fabric} are to be {heights} high, and {group.pieces[0].piece} needs one "
                f"{tell(group.height, units)} high."
            )
            remedy = f"Add {tell(group.height, units)} to strip_heights, or leave strip_heights out."
            yield Fault(dotted("fabrics", plan.fabric, "strip_heights"), sentence, remedy)
            return


DECIDED = (check("strips-not-kept", Severity.STOPS, (), "Strips are cut as decided.", strips_decided),)
