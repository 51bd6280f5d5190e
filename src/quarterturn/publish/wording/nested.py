"""The sentences of tracing shapes on the web with rings in the centres of others."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import groupby

from quarterturn.design import Design
from quarterturn.materials import TracedPlace
from quarterturn.proof import Pattern
from quarterturn.publish.wording.model import Wording
from quarterturn.publish.wording.names import length
from quarterturn.publish.wording.shapes import hollow
from quarterturn.publish.wording.web import on_ruler
from quarterturn.steps import Product, Step, TraceNested, Tracing


def tell_trace_nested(step: Step, action: TraceNested, pattern: Pattern) -> Wording:
    """Tell tracing, cutting out and hollowing out; a line for each shape says where its middles lie."""
    design = pattern.design
    on_sheets = pattern.materials.web.sheet is not None
    sentences = (
        *(() if on_sheets else (AS_IT_LIES,)),
        "Trace the templates on the paper side of the web, each as often as it is listed, ring lines and the "
        f"short marks across the outlines too. The figure numbers the tracings{_inside(action)}. {_way(action)}",
        "The list says where the middle of each comes, the cross of its template: how far from the left edge of the "
        f"{_from(on_sheets)}. A template that is turned is turned clockwise.",
        f"Cut each ring out on its outer line, {length(design, design.making.ring_out)} outside the outline"
        f"{_first(action)}.",
        *_hollows(design, action),
    )
    lines = (
        _places(design, action, made, on_sheets) for made in zip(action.tracings, step.makes, strict=True)
    )
    title = (
        "Trace the shapes, small rings in the centres of large ones" if _any_inside(action) else ALL_PLACED
    )
    return Wording(title, sentences, "\n".join(lines))


AS_IT_LIES = (
    "Lay the web paper side up, its cut end away from you. In the figure the cut end is at the left, and the left edge "
    "of the web below: turn the page by a quarter, clockwise, to see it as it lies."
)

ALL_PLACED = "Trace the shapes, each at its place"


def _any_inside(action: TraceNested) -> bool:
    return any(place.within is not None for place in action.places)


def _inside(action: TraceNested) -> str:
    return ": small rings lie in the centres that are cut out of larger ones" if _any_inside(action) else ""


def _first(action: TraceNested) -> str:
    if not _any_inside(action):
        return ""
    return (
        "; where one lies in the centre of another, cut the centre out of the larger one first, in one piece"
    )


def _from(on_sheets: bool) -> str:
    return "sheet, then how far from its upper edge" if on_sheets else "web, then how far from its cut end"


def _way(action: TraceNested) -> str:
    if all(tracing.same_mirrored for tracing in action.tracings):
        return "The shapes are the same both ways, so the tracings need no mirroring."
    return "Trace them mirrored, as the templates are printed: the web goes on the wrong side."


def _hollows(design: Design, action: TraceNested) -> Iterator[str]:
    """Say how the rings are hollowed out: once where it is the same for all, else for each."""
    told: dict[str, list[str]] = {}
    for tracing in action.tracings:
        told.setdefault(hollow(design, tracing), []).append(f"“{tracing.shape}”")
    for sentence, names in told.items():
        yield sentence if len(told) == 1 else f"{', '.join(names)}: {sentence[0].lower()}{sentence[1:]}"


def _places(design: Design, action: TraceNested, traced: tuple[Tracing, Product], on_sheets: bool) -> str:
    """Return all places of a shape: `“heart” (2): no. 5 at 3", 6"; no. 8 at 7", 6", a half turned`."""
    shape, made = traced[0].shape, traced[1]
    room = " × ".join(on_ruler(design, side) for side in (made.width, made.height))
    found = [(number, place) for number, place in enumerate(action.places, start=1) if place.shape == shape]
    told: list[str] = []
    for sheet, places in groupby(sorted(found, key=lambda one: one[1].sheet), key=lambda one: one[1].sheet):
        listed = "; ".join(_place(design, number, place) for number, place in places)
        told.append(f"on sheet {sheet + 1} {listed}" if on_sheets else listed)
    return f"Template “{shape}”: trace ({len(found)}), each {room} with its ring: {'; '.join(told)}."


def _place(design: Design, number: int, place: TracedPlace) -> str:
    across, along = (on_ruler(design, part) for part in (place.middle.real, place.middle.imag))
    turned = {0: "", 90: ", a quarter turned", 180: ", a half turned", 270: ", three quarters turned"}
    return f"no. {number} at {across}, {along}{turned[place.turned]}"
