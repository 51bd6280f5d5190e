"""Tracing on the web with rings in the centres of others."""

from __future__ import annotations

from dataclasses import dataclass

from quarterturn.geometry import Path, Region
from quarterturn.materials import TracedPlace
from quarterturn.measure import Length


@dataclass(frozen=True, slots=True)
class Tracing:
    """A shape and its ring, drawn about the middle of the shape's upright box, as in `TraceRings`."""

    recipe: str
    shape: str
    traced: Path
    hole: Path | None
    ring_out: Region
    ring_in: Region
    same_mirrored: bool


@dataclass(frozen=True, slots=True)
class TraceNested:
    """Trace all shapes on one length of web, each at its place; cut the rings out, the outermost first.

    The step makes the rings of each of the `tracings`, in their order. No two rings are nearer than `gap`. On sheets,
    `length` is that of all of them, one after another.
    """

    tracings: tuple[Tracing, ...]
    places: tuple[TracedPlace, ...]
    gap: Length
    length: Length
