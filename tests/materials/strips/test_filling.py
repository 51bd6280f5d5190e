"""Fill one piece of cloth: the published optima of the two-stage constrained knapsack."""

from __future__ import annotations

import csv
from collections import Counter
from fractions import Fraction
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from quarterturn.materials.strips import Cut, Job
from quarterturn.materials.strips.filling import fill

DATA = Path(__file__).parents[2] / "data" / "two_stage_knapsack"
SLOW = {("cung2000/CHL1", "Horizontal"), ("cung2000/CHL6", "Horizontal")}
"""More than a second each; the timings run them too."""


def published() -> list[tuple[str, str, int]]:
    """Return instance, first cut and published optimum of all that are carried here but the slow ones."""
    with (DATA / "PUBLISHED_best_known.csv").open() as file:
        rows = [(r["Path"], r["Options"], int(r["Best known solution value"])) for r in csv.DictReader(file)]
    carried = {path.name.removesuffix("_items.csv").replace("_", "/", 1) for path in DATA.glob("*_items.csv")}
    return [row for row in rows if row[0] in carried and row[:2] not in SLOW]


def instance(name: str, first_cut: str) -> tuple[Job, int, list[int]]:
    """Return the job, the height of the cloth and the worths of an instance; a vertical first cut is turned."""
    stem = name.replace("/", "_")
    with (DATA / f"{stem}_items.csv").open() as file:
        items = list(csv.DictReader(file))
    with (DATA / f"{stem}_bins.csv").open() as file:
        cloth = next(csv.DictReader(file))
    width, height = int(cloth["WIDTH"]), int(cloth["HEIGHT"])
    sides = [(int(item["WIDTH"]), int(item["HEIGHT"])) for item in items]
    worths = [int(item.get("PROFIT") or x * y) for item, (x, y) in zip(items, sides, strict=True)]
    if first_cut == "Vertical":
        width, height, sides = height, width, [(y, x) for x, y in sides]
    return job(width, [int(item["COPIES"]) for item in items], sides), height, worths


def job(width: int, demand: list[int], sides: list[tuple[int, int]]) -> Job:
    """Return a job of pieces that may not be turned, in steps of 1."""
    cuts = sorted((Cut(k, x, y) for k, (x, y) in enumerate(sides)), key=lambda c: (c.across, c.along, c.kind))
    return Job(width, tuple(demand), tuple(cuts), Fraction(1), Fraction(1))


@pytest.mark.parametrize(("name", "first_cut", "optimum"), published())
def test_the_worth_is_the_published_optimum(name: str, first_cut: str, optimum: int) -> None:
    """Hifi and Roucairol 2001, Lodi and Monaci 2003, see tests/data/two_stage_knapsack/SOURCES.md."""
    filling = fill(*instance(name, first_cut))
    assert (filling.worth, filling.proved) == (optimum, True)


def test_all_but_two_of_the_carried_optima_are_checked() -> None:
    assert len(published()) == 38


SIDES = st.lists(st.tuples(st.integers(2, 12), st.integers(2, 12)), min_size=1, max_size=4)


@given(SIDES, st.integers(6, 20), st.integers(6, 20), st.data())
@settings(max_examples=60, deadline=None)
def test_what_is_cut_fits_and_is_wanted(
    sides: list[tuple[int, int]], width: int, height: int, data: st.DataObject
) -> None:
    demand = [data.draw(st.integers(1, 5)) for _ in sides]
    filling = fill(job(width, demand, sides), height, [x * y for x, y in sides])
    assert sum(pattern.height * strips for pattern, strips in filling.strips) <= height
    cut: Counter[int] = Counter()
    for pattern, strips in filling.strips:
        assert pattern.used <= width
        assert all(c.across <= pattern.height for c, _ in pattern.cuts)
        cut.update({c.kind: n * strips for c, n in pattern.cuts})
    assert all(cut[kind] <= wanted for kind, wanted in enumerate(demand))
    assert filling.worth == sum(sides[k][0] * sides[k][1] * n for k, n in cut.items()) <= filling.bound


def test_cloth_too_small_for_any_piece_stays_uncut() -> None:
    assert fill(job(5, [3], [(6, 6)]), 5, [36]).strips == ()
