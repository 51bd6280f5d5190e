"""Checks of the colours (trade check 61): what meets in the quilt must be told apart, in colour and in print."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import combinations, pairwise

from quarterturn.design import Border, Design, Severity, dotted
from quarterturn.design.colour import colour_distance, lab, value_of
from quarterturn.proof.checks.drafting import shape_key
from quarterturn.proof.checks.fault import Fault, check
from quarterturn.proof.checks.laying import CORNERSTONE
from quarterturn.proof.checks.tallying import master_codes, unit_counts
from quarterturn.proof.checks.walking import cloths_of, motifs_of
from quarterturn.proof.model import Pattern

LEAST_VALUE = 7.0
"""Difference of L* below which two greys look alike on a home printer (from memory)."""

LEAST_DISTANCE = 8.0
"""CIEDE2000 below which two fabrics look alike across a room (from memory; about 1 is just seen side by side)."""


def alike(pattern: Pattern) -> Iterator[Fault]:
    """Tell of fabrics that meet and can hardly be told apart."""
    for key, one, other in _meeting(pattern.design):
        a, b = (pattern.design.fabric(letter) for letter in (one, other))
        distance = colour_distance(lab(a.colour), lab(b.colour))
        if distance < LEAST_DISTANCE:
            sentence = (
                f"Fabrics {one}, {a.name}, and {other}, {b.name}, meet in the quilt and look alike (colour difference "
                f"{distance:.1f})."
            )
            yield Fault(key, sentence, f"Make one of them lighter or darker: {a.colour}, {b.colour}.")


def same_grey(pattern: Pattern) -> Iterator[Fault]:
    """Tell of fabrics that meet and print as one grey, though their colours differ."""
    for key, one, other in _meeting(pattern.design):
        a, b = (pattern.design.fabric(letter) for letter in (one, other))
        values = value_of(a.colour), value_of(b.colour)
        if (
            abs(values[0] - values[1])
            < LEAST_VALUE
            <= LEAST_DISTANCE
            <= colour_distance(lab(a.colour), lab(b.colour))
        ):
            sentence = (
                f"Fabrics {one}, {a.name}, and {other}, {b.name}, meet in the quilt and print as the same grey "
                f"(values {values[0]:.0f} and {values[1]:.0f} of 100)."
            )
            remedy = "Make one of them lighter or darker, or rely on the letters in the drawings."
            yield Fault(key, sentence, remedy)


def _meeting(design: Design) -> Iterator[tuple[str, str, str]]:
    """Return key and letters of fabrics that meet; each pair once.

    They are shape and ground, motif and panel, border and border, sashing or border and their cornerstones.
    """
    seen: set[frozenset[str]] = set()
    for key, one, other in (*_shapes(design), *_frames(design), *_crossings(design)):
        if one != other and frozenset((one, other)) not in seen:
            seen.add(frozenset((one, other)))
            yield key, one, other


def _shapes(design: Design) -> Iterator[tuple[str, str, str]]:
    for code in unit_counts(design):
        for master in design.masters_of(code):
            for one, other in combinations(design.colourway(master).letters, 2):
                yield dotted("colourways", code), one, other
    for panel, motif in motifs_of(design):
        yield panel.key, panel.name, motif.fabric


def _frames(design: Design) -> Iterator[tuple[str, str, str]]:
    plain = [
        (dotted("borders", number, "fabric"), border.fabric)
        for number, border in enumerate(design.borders)
        if isinstance(border, Border)
    ]
    for (_, inner), (key, outer) in pairwise(plain):
        yield key, inner, outer


def _crossings(design: Design) -> Iterator[tuple[str, str, str]]:
    stones = {leaf.key: leaf.name for leaf in cloths_of(design) if leaf.what == CORNERSTONE}
    for leaf in cloths_of(design):
        if leaf.what != CORNERSTONE and leaf.key in stones:
            yield leaf.key, leaf.name, stones[leaf.key]


def one_cloth(pattern: Pattern) -> Iterator[Fault]:
    """Tell of a shape on a ground of its own fabric: nothing would be seen."""
    design = pattern.design
    for code in master_codes(design):
        colourway = design.colourway(code)
        if len(colourway.letters) == 1:
            recipe = design.recipe(colourway.recipe)
            sentence = f"Ground and shape of colourway {code} are both fabric {colourway.ground}: the shape is unseen."
            key = dotted("colourways", code, shape_key(recipe))
            yield Fault(key, sentence, "Give the shape another fabric.")


COLOURS = (
    check("fabrics-alike", Severity.CONFUSES, (61,), "Fabrics that meet can be told apart.", alike),
    check("greys-alike", Severity.CONFUSES, (61,), "Fabrics that meet print as two greys.", same_grey),
    check("shape-unseen", Severity.CONFUSES, (61, 73), "A shape differs from its ground.", one_cloth),
)
