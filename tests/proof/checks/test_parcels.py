"""The checks of cloth in pieces fire where a layout is spoiled or a precut is other than it is stated, and pass."""

from __future__ import annotations

from dataclasses import replace

import pytest

from quarterturn.design import Severity
from quarterturn.materials import ParcelLayout
from quarterturn.proof import Pattern, check_pattern
from tests.proof.checks.sound import SOUND, Spoil, found, making, text
from tests.samples import pattern_of

BRICK = 'colour = "#9c4a35"'
SAND = 'colour = "#efe6d8"'


def bricks(words: str) -> Spoil:
    """Add lines to the fabric of the border and the binding."""
    return text((BRICK, f"{BRICK}\n{words}"))


def with_layouts(words: str, change: str) -> Spoil:
    """Cut the brick from pieces of cloth, and change the first layout."""

    def spoiled() -> Pattern:
        pattern = pattern_of(SOUND.replace(BRICK, f"{BRICK}\n{words}"))
        plans = []
        for plan in pattern.materials.cloth:
            if not plan.parcels:
                plans.append(plan)
                continue
            first, *rest = plan.parcels.layouts
            layouts = (CHANGES[change](first), *rest)
            plans.append(replace(plan, parcels=replace(plan.parcels, layouts=layouts)))
        return replace(pattern, materials=replace(pattern.materials, cloth=tuple(plans)))

    return spoiled


def one_strip_more(layout: ParcelLayout) -> ParcelLayout:
    """Cut more strips from a piece of cloth than it holds."""
    group = layout.strips[0]
    return replace(layout, strips=(replace(group, strips=group.strips + 9), *layout.strips[1:]))


def turned(layout: ParcelLayout) -> ParcelLayout:
    """Cut strips along the cloth that should lie across it."""
    return replace(layout, upright=not layout.upright)


def taken_twice(layout: ParcelLayout) -> ParcelLayout:
    """Cut into more pieces than there are."""
    return replace(layout, count=layout.count + 20)


CHANGES = {"more": one_strip_more, "turned": turned, "twice": taken_twice}

STRIP = 'bought_as = "2 1/2 inch strip"'
SHELF = "on_hand = [{ width = '41\"', height = '31\"', count = 2 }]"
FAT = 'bought_as = "fat quarter"'
ONE_WAY = 'direction = "one-way"'

BORDER = ('[[borders]]\nfabric = "C"', '[[borders]]\nfabric = "B"')
BINDING = ('[binding]\nfabric = "C"', '[binding]\nfabric = "B"')
NARROW = "bought_as = { width = '4\"', height = '38\"' }"
"""Two border strips end to end along the cloth; across it they are joined of thirty short strips."""

FIRES: dict[str, Spoil] = {
    "layout-overfull": with_layouts(FAT, "more"),
    "layout-turned": with_layouts(f"{SHELF}\n{FAT}\n{ONE_WAY}", "turned"),
    "on-hand-overdrawn": with_layouts(f"{SHELF}\n{FAT}", "twice"),
    "on-hand-unused": bricks(f"on_hand = [{{ width = '5\"', height = '5\"' }}]\n{FAT}"),
    "precut-overstated": bricks('bought_as = { name = "fat quarter", width = \'22"\' }'),
    "precut-elsewhere": text(
        ('units = "inch"', 'units = "metric"'),
        BORDER,
        (BRICK, f"{BRICK}\n{FAT}"),
        making("binding_extra = '70 cm'"),
    ),
    "print-costs-pieces": text(BINDING, (BRICK, f"{BRICK}\n{ONE_WAY}\n{NARROW}")),
}
PASSES: dict[str, Spoil] = {
    "layout-overfull": bricks(FAT),
    "layout-turned": bricks(f"{FAT}\n{ONE_WAY}"),
    "on-hand-overdrawn": bricks(f"{SHELF}\n{FAT}"),
    "on-hand-unused": bricks(f"{SHELF}\n{FAT}"),
    "precut-overstated": bricks(FAT),
    "precut-elsewhere": bricks('bought_as = "2 1/2 inch strip"'),
    "print-costs-pieces": text(BINDING, (BRICK, f"{BRICK}\n{NARROW}")),
}


@pytest.mark.parametrize("code", FIRES)
def test_fires(code: str) -> None:
    assert found(code, FIRES[code]())


@pytest.mark.parametrize("code", PASSES)
def test_passes(code: str) -> None:
    assert found(code, PASSES[code]()) == []


UNPLACED = [
    (
        "a binding wider than the strips",
        text((BINDING[0], BINDING[0] + "\nwidth = '2 3/4\"'"), (BRICK, f"{BRICK}\n{STRIP}")),
    ),
    ("a backing from fat quarters", text((SAND, f"{SAND}\n{FAT}"))),
    (
        "squares larger than the pieces",
        text((SAND, f"{SAND}\nbought_as = {{ width = '9\"', height = '9\"' }}")),
    ),
]


@pytest.mark.parametrize("spoil", [spoil for _, spoil in UNPLACED], ids=[name for name, _ in UNPLACED])
def test_what_no_piece_holds_is_told_once_with_a_remedy_and_nothing_else_stops(spoil: Spoil) -> None:
    stops = [each for each in check_pattern(spoil()) if each.severity is Severity.STOPS]
    assert {each.code for each in stops} == {"piece-unplaced"}
    assert all("off the bolt" in each.remedy for each in stops)
