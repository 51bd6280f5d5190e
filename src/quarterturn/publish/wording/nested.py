"""The sentences of tracing shapes on the web with rings in the centres of others."""

from __future__ import annotations

from collections.abc import Iterator

from quarterturn.design import Design
from quarterturn.materials import NestedWeb, TracedPlace, WebCentre
from quarterturn.measure import Length, show_length
from quarterturn.proof import Pattern
from quarterturn.publish.wording.model import Wording
from quarterturn.publish.wording.names import length, rectangle
from quarterturn.publish.wording.shapes import hollow
from quarterturn.steps import Step, TraceNested


def tell_trace_nested(step: Step, action: TraceNested, pattern: Pattern) -> Wording:
    """Tell tracing, cutting out and hollowing out; a line for each shape says where its middles lie."""
    design = pattern.design
    sentences = (
        "Trace the templates on the paper side of the web, each as often as it is listed, ring lines and cross marks "
        "too. The figure numbers the tracings: small rings lie in the centres that are cut out of larger ones. "
        f"{_way(action)}",
        "The list says where the middle of each comes, the crossing of its marks: how far from the left edge of the "
        "web, then how far from its cut end. A template that is turned is turned clockwise.",
        f"Cut each ring out on its outer line, {length(design, design.making.ring_out)} outside the outline; where "
        "one lies in the centre of another, cut the centre out of the larger one first, in one piece.",
        *_hollows(design, action),
        *_saved(pattern, action),
    )
    lines = (_places(design, action, tracing.shape) for tracing in action.tracings)
    return Wording("Trace the shapes, small rings in the centres of large ones", sentences, "\n".join(lines))


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


def _saved(pattern: Pattern, action: TraceNested) -> Iterator[str]:
    """Say what the plan saves, and which centres are left over for what."""
    design, nested = pattern.design, pattern.materials.web.nested
    if nested is None:
        return
    yield (
        f"All this takes {length(design, action.length)} of web; in plain rows it would take "
        f"{length(design, nested.rows_length)}."
    )
    if left := ", ".join(_left(design, centre) for centre in _whole(nested)):
        yield f"Whole centres that are left over: {left}. Keep them for small shapes."


def _whole(nested: NestedWeb) -> Iterator[WebCentre]:
    return (centre for centre in nested.centres if not centre.holds)


def _left(design: Design, centre: WebCentre) -> str:
    fits = " or ".join(f"{most} {shape}" for shape, most in centre.fits)
    holds = f", each with room for {fits}" if fits else ""
    return (
        f"({centre.count}) of {rectangle(design, centre.width, centre.height)} from “{centre.shape}”{holds}"
    )


def _places(design: Design, action: TraceNested, shape: str) -> str:
    """Return all places of a shape: `“heart” (2): 5 at 3" and 6", 8 at 7" and 6", turned by half`."""
    found = [(number, place) for number, place in enumerate(action.places, start=1) if place.shape == shape]
    places = "; ".join(_place(design, number, place) for number, place in found)
    return f"Template “{shape}”: trace ({len(found)}): {places}."


def _place(design: Design, number: int, place: TracedPlace) -> str:
    across, along = (on_ruler(design, part) for part in (place.middle.real, place.middle.imag))
    turned = {0: "", 90: ", a quarter turned", 180: ", a half turned", 270: ", three quarters turned"}
    return f"no. {number} at {across}, {along}{turned[place.turned]}"


def on_ruler(design: Design, value: Length | float) -> str:
    """Print a place on the web: always to the step of a ruler that it was brought to."""
    return show_length(value, design.units, sixteenths=True)
