"""Each check of the web fires on its fault, and lets its near miss pass."""

from __future__ import annotations

from dataclasses import replace
from functools import cache
from typing import Any

import pytest

from quarterturn.materials import WebPlan, WebRows
from quarterturn.measure import inches
from quarterturn.proof import Pattern
from tests.proof.checks.sound import Spoil, found, making, materials, recipe, sound, text
from tests.proof.rehearsal.test_web_faults import sample

MADE = sound().materials
ROWS = MADE.web.rows[0]
SHEET = making("web_sheet = ['9\"', '12\"']")


def web(name: str, **values: Any) -> Spoil:
    """Return a sample with values of its web exchanged."""

    def spoilt() -> Pattern:
        made = sample(name)
        return replace(made, materials=replace(made.materials, web=replace(made.materials.web, **values)))

    return spoilt


def rule(**values: Any) -> Spoil:
    """Return the staggered rows with another rule."""

    def spoilt() -> Pattern:
        (rows,) = plan("staggered").rows
        assert rows.stagger is not None
        return web("staggered", rows=(replace(rows, stagger=replace(rows.stagger, **values)),))()

    return spoilt


def rows_of(name: str, **values: Any) -> Spoil:
    """Return rows with values exchanged."""

    def spoilt() -> Pattern:
        rows: tuple[WebRows, ...] = tuple(replace(each, **values) for each in plan(name).rows)
        return web(name, rows=rows)()

    return spoilt


@cache
def plan(name: str) -> WebPlan:
    return sample(name).materials.web


def places(name: str, first: int = 0, **values: Any) -> Spoil:
    """Return nested tracings from a number on, the first of them changed."""

    def spoilt() -> Pattern:
        nested = plan(name).nested
        assert nested is not None
        kept = nested.places[first:]
        return web(name, nested=replace(nested, places=(replace(kept[0], **values), *kept[1:])))()

    return spoilt


FIRES: dict[str, Spoil] = {
    "web-row-overfull": materials(web=replace(MADE.web, rows=(replace(ROWS, per_row=9),))),
    "web-staggered-wrong": rule(down=inches(2)),
    "web-room": materials(web=replace(MADE.web, rows=(replace(ROWS, width=inches(4)),))),
    "web-too-narrow": text(recipe("finished = '9\"'\nshape = { diameter = '17\"' }")),
    "web-nested-wrong": places("nested", 1),
    "web-short": materials(web=replace(MADE.web, bought=inches(1))),
}
MORE: list[tuple[str, Spoil]] = [
    ("web-row-overfull", rows_of("rows on sheets", rows_on_sheet=3)),
    ("web-row-overfull", rows_of("rows on sheets", rows_on_sheet=0)),
    ("web-staggered-wrong", rule(back=inches(2))),
    ("web-staggered-wrong", rule(pitch=inches(3))),
    ("web-staggered-wrong", rule(second=inches(9))),
    ("web-staggered-wrong", rule(top=inches(30))),
    ("web-staggered-wrong", rows_of("staggered", rows=1)),
    ("web-staggered-wrong", rows_of("staggered on sheets", rows_on_sheet=9)),
    ("web-too-narrow", text(recipe("finished = '9\"'\nshape = { diameter = '12\"' }"), SHEET)),
    ("web-nested-wrong", places("nested on sheets", sheet=99)),
    ("web-nested-wrong", places("nested on sheets", sheet=-1)),
    ("web-short", web("nested", bound=inches(999))),
    ("web-short", web("staggered", plain_length=inches(1))),
    ("web-short", web("nested on sheets", bought=inches(12))),
    ("web-short", rows_of("rows on sheets", rows_on_sheet=1)),
]
PASSES: dict[str, Spoil] = {
    "web-too-narrow": text(recipe("finished = '9\"'\nshape = { diameter = '16 1/2\"' }")),
    "web-staggered-wrong": lambda: sample("staggered on sheets"),
    "web-row-overfull": lambda: sample("rows on sheets"),
    "web-nested-wrong": lambda: sample("nested on sheets"),
    "web-short": lambda: sample("nested"),
}


@pytest.mark.parametrize("code", FIRES)
def test_fires(code: str) -> None:
    assert found(code, FIRES[code]())


@pytest.mark.parametrize(("code", "spoil"), MORE)
def test_fires_on_other_faults(code: str, spoil: Spoil) -> None:
    assert found(code, spoil())


@pytest.mark.parametrize("code", PASSES)
def test_a_near_miss_passes(code: str) -> None:
    assert found(code, PASSES[code]()) == []


def test_a_ring_higher_than_a_sheet_is_named_with_the_sheet() -> None:
    shape = recipe("finished = '9\"'\nshape = { diameter = '10\"' }")
    (sentence,) = found("web-too-narrow", text(shape, making("web_sheet = ['12\"', '9\"']"))())
    assert '10½" high, and a sheet of web 9"' in sentence
