"""Each check of the shopping list fires on its fault, and lets a list with prices pass."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

import pytest

from quarterturn.measure import YARD
from tests.proof.checks.sound import Spoil, found, materials, sound, text

FIRST, *REST = sound().materials.shopping
PRICED = text(
    ('colour = "#22304a"', 'colour = "#22304a"\nprice = 11.25'),
    ("[binding]", '[house]\ncurrency = "USD"\n\n[binding]'),
)
FIRES: dict[str, Spoil] = {
    "shopping-differs": materials(shopping=(replace(FIRST, length=YARD / 8), *REST)),
    "price-wrong": materials(shopping=(replace(FIRST, price=Fraction(5)), *REST)),
}
PASSES: dict[str, Spoil] = {"shopping-differs": PRICED, "price-wrong": PRICED}


@pytest.mark.parametrize("code", FIRES)
def test_fires(code: str) -> None:
    assert found(code, FIRES[code]())


@pytest.mark.parametrize("code", PASSES)
def test_a_near_miss_passes(code: str) -> None:
    assert found(code, PASSES[code]()) == []


def test_a_wrong_price_is_told_with_the_right_one() -> None:
    shopping = tuple(replace(line, price=Fraction(99)) for line in PRICED().materials.shopping)
    spoilt = replace(PRICED(), materials=replace(PRICED().materials, shopping=shopping))
    ink = next(line for line in PRICED().materials.shopping if line.key == "B")
    assert ink.length is not None
    want = float(Fraction("11.25") * ink.length / YARD)
    assert f"Fabric B costs {want:.2f}, and the shopping list says 99.00." in found("price-wrong", spoilt)
