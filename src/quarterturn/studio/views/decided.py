"""The strips of a plan as a designer decides on them: each kind with its height as the file has it, and decisions."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from quarterturn.design import PinnedStrips, write_length
from quarterturn.materials import ClothPlan, StripGroup
from quarterturn.measure import show_length
from quarterturn.studio.stages import OneSize
from quarterturn.studio.views.model import View


class StripKindView(View):
    """Equal strips of a plan off the bolt. `written` is their height for the act that decides on them."""

    label: str
    count: int
    height: str
    written: str
    pieces: tuple[str, ...]
    decided: bool


class DecisionView(View):
    """Strips that the designer has decided on, at a place among those of the fabric. No count: as many as it takes."""

    place: int
    height: str
    count: int | None
    pieces: tuple[str, ...]


def strip_kinds(size: OneSize, plan: ClothPlan) -> Iterator[StripKindView]:
    """Yield the strips that can be decided on; those joined whole and lengths for the backing are as they must be."""
    fabric, units = size.laid_design.fabric(plan.fabric), size.design.units
    decided = decided_labels(plan.strips, fabric.strips)
    for group in plan.strips if not fabric.bought_as else ():
        if group.pieces:
            yield StripKindView(
                label=group.label,
                count=group.strips,
                height=show_length(group.height, units),
                written=write_length(group.height, units),
                pieces=labels_of(group),
                decided=group.label in decided,
            )


def decisions(size: OneSize, plan: ClothPlan) -> Iterator[DecisionView]:
    """Yield what is decided on for the fabric of a plan."""
    for place, pin in enumerate(size.laid_design.fabric(plan.fabric).strips):
        height = show_length(pin.height, size.design.units)
        yield DecisionView(place=place, height=height, count=pin.count, pieces=pin.pieces)


def decided_labels(groups: Sequence[StripGroup], pins: Sequence[PinnedStrips]) -> frozenset[str]:
    """Return the labels of the strips that a decision speaks of: those of its height with a piece that it names.

    Any pieces do where it names none. Where it counts them, no more groups are taken than make up its number.
    """
    found: set[str] = set()
    for pin in pins:
        left = pin.count
        for group in groups:
            fits = group.height == pin.height and (not pin.pieces or {*pin.pieces} & {*labels_of(group)})
            if group.label in found or not group.pieces or not fits or (left is not None and left <= 0):
                continue
            found.add(group.label)
            left = None if left is None else left - group.strips
    return frozenset(found)


def labels_of(group: StripGroup) -> tuple[str, ...]:
    """Return the labels of the pieces that are cut from a strip across its whole height, from the left."""
    return tuple(dict.fromkeys(cut.piece for cut in group.crosscuts))
