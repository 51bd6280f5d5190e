"""The cloth: each fabric with its value in grey, where it is used, and which neighbours are too close in value."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterator, Sequence

from quarterturn.blocks import shown_areas
from quarterturn.design import Design
from quarterturn.design.colour import text_colour_on, value_of
from quarterturn.geometry import as_polygon, joined, without
from quarterturn.measure import show_area
from quarterturn.setting import PlacedCloth
from quarterturn.studio.stages import OneSize
from quarterturn.studio.views.model import FindingView, View, finding_view

CLOSE = ("fabrics-alike", "greys-alike", "shape-unseen")
"""Findings of fabrics that can hardly be told apart."""
MOTIF = "motif"
"""What a shape on a panel is called among the cloths of a setting."""


class ClothFabric(View):
    """A fabric: its value of 100, the grey of that value, the ink that is read on it, and the area that shows."""

    letter: str
    name: str
    colour: str
    grey: str
    ink: str
    value: float
    shown: str
    share: float
    """Of all cloth that shows in the top."""
    uses: tuple[str, ...]
    """Dotted keys that name it, but for maps."""


class CloseView(View):
    """Two fabrics, or a shape on its own fabric, that meet and are too close."""

    letters: tuple[str, ...]
    finding: FindingView


class ClothRoom(View):
    """The room of cloth."""

    revision: int
    fabrics: tuple[ClothFabric, ...]
    close: tuple[CloseView, ...]


def cloth_view(revision: int, size: OneSize) -> ClothRoom:
    """Return the room of cloth. Raises UnmadeError where the quilt does not fit together."""
    areas = areas_shown(size)
    total = sum(areas.values()) or 1.0
    design = size.design
    return ClothRoom(
        revision=revision,
        fabrics=tuple(
            ClothFabric(
                letter=fabric.letter,
                name=fabric.name,
                colour=fabric.colour,
                grey=grey_of(fabric.colour),
                ink=text_colour_on(fabric.colour),
                value=round(value_of(fabric.colour), 1),
                shown=show_area(areas[fabric.letter], design.units),
                share=round(areas[fabric.letter] / total, 4),
                uses=_uses(design, fabric.letter),
            )
            for fabric in design.fabrics
        ),
        close=_close(size),
    )


def areas_shown(size: OneSize) -> dict[str, float]:
    """Return the area that shows of each fabric in the sewn top, in square inches."""
    design, areas = size.laid_design, defaultdict[str, float](float)
    for name, count in size.setting.tally.items():
        for part, area in shown_areas(size.blocks.unit(design, name)).items():
            areas[design.cloth(name, part)] += area * count
    for below, motifs in _with_motifs(size.setting.cloths):
        areas[below.fabric] += below.region.area() - _laid_on(motifs, areas)
    return areas


def _with_motifs(cloths: Sequence[PlacedCloth]) -> Iterator[tuple[PlacedCloth, list[PlacedCloth]]]:
    """Yield each cloth that no unit brings, with the motifs that lie on it: they follow their panel."""
    motifs: list[PlacedCloth] = []
    for cloth in reversed(cloths):
        if cloth.what == MOTIF:
            motifs.append(cloth)
        else:
            yield cloth, motifs
            motifs = []


def _laid_on(motifs: Sequence[PlacedCloth], areas: dict[str, float]) -> float:
    """Add what shows of motifs, the uppermost first, to the areas of their fabrics; return how much they cover."""
    covered = None
    for motif in motifs:
        mine = as_polygon(motif.region)
        areas[motif.fabric] += float((mine if covered is None else without(mine, covered)).area)
        covered = mine if covered is None else joined(covered, mine)
    return 0.0 if covered is None else float(covered.area)


def _uses(design: Design, letter: str) -> tuple[str, ...]:
    from quarterturn.studio.acts.cloth import letters_named

    return tuple(key for key, each in letters_named(design) if each == letter)


def _close(size: OneSize) -> tuple[CloseView, ...]:
    letters = [fabric.letter for fabric in size.design.fabrics]
    found = []
    for finding in size.checked:
        if finding.code in CLOSE:
            words = set(finding.sentence.replace(",", " ").replace(":", " ").split())
            found.append(
                CloseView(
                    letters=tuple(letter for letter in letters if letter in words),
                    finding=finding_view(finding),
                )
            )
    return tuple(found)


def grey_of(colour: str) -> str:
    """Return the neutral grey that has the value of a colour, to the nearest of 256."""
    wanted = value_of(colour)
    level = min(range(256), key=lambda each: abs(value_of(f"#{each:02x}{each:02x}{each:02x}") - wanted))
    return f"#{level:02x}{level:02x}{level:02x}"
