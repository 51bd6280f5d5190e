"""The check on narrow cloth fires where pieces are lost, and passes where they find room."""

from __future__ import annotations

from dataclasses import replace

import pytest

from quarterturn.materials import ClothPlan
from quarterturn.measure import inches
from tests.proof.checks.sound import Spoil, found, making, plan, text


def on_wide_cloth(along: int, offcuts: int) -> Spoil:
    """Cut two pieces side by side from cloth 44" wide, and one of them from each of some strips more."""

    def changed(whole: ClothPlan) -> ClothPlan:
        group = next(group for group in whole.strips if group.crosscuts)
        pair = replace(group.crosscuts[0], along=inches(along), count=2)
        full = replace(group, strips=3, crosscuts=(pair,))
        rest = replace(full, strips=offcuts, crosscuts=(replace(pair, along=inches(18), count=1),))
        return replace(whole, usable_width=inches(44), strips=(full, rest), runs=(), panels=())

    return plan("A", changed)


TWELVE = ('kind = "straight"', 'kind = "straight"\nacross = 3\ndown = 3')


def wide(colour: str, width: int) -> tuple[str, str]:
    """Return the change that states the width of the fabric of a colour."""
    return f'colour = "{colour}"', f'colour = "{colour}"\nwidth = \'{width}"\''


FIRES: dict[str, Spoil] = {
    "narrow-cloth": on_wide_cloth(21, 0),
    "narrow-web": text(making("web_width = '22\"'"), TWELVE),
}
PASSES: dict[str, Spoil] = {
    "narrow-cloth": text(wide("#efe6d8", 42)),
    "narrow-web": text(making("web_width = '18\"'")),
}


@pytest.mark.parametrize("code", FIRES)
def test_fires(code: str) -> None:
    assert found(code, FIRES[code]())


@pytest.mark.parametrize("code", PASSES)
def test_a_near_miss_passes(code: str) -> None:
    assert found(code, PASSES[code]()) == []


def test_the_pieces_that_narrow_cloth_loses_are_counted_and_named() -> None:
    (sentence,) = found("narrow-cloth", on_wide_cloth(21, 0)())
    assert sentence.startswith(
        'The cutting counts on 44" of fabric A. On cloth 40" wide, the same cuts lose 3 of A'
    )


def test_a_piece_that_finds_room_in_another_strip_is_not_lost() -> None:
    (sentence,) = found("narrow-cloth", on_wide_cloth(21, 2)())
    assert "lose 1 of A" in sentence
    assert found("narrow-cloth", on_wide_cloth(21, 3)()) == []


def test_what_narrow_cloth_and_narrow_web_take_is_told() -> None:
    (sentence,) = found("narrow-cloth", text(wide("#9c4a35", 58))())
    assert sentence.endswith("Cut anew for it, ½ yard must be bought: ⅛ yard more.")
    (sentence,) = found("narrow-web", FIRES["narrow-web"]())
    assert sentence.endswith("1¾ yards must be bought instead of 1⅜ yards: ⅜ yard more.")


def test_joined_strips_that_come_short_are_told() -> None:
    (sentence,) = found("narrow-cloth", text(wide("#9c4a35", 58))())
    assert 'lose 14½" of the joined strips Cr1' in sentence


def test_a_backing_that_no_longer_reaches_across_is_told() -> None:
    twice = ('kind = "straight"', 'kind = "straight"\nacross = 2\ndown = 2')
    (sentence,) = found("narrow-cloth", text(wide("#efe6d8", 44), twice)())
    assert 'lose 4" of the width of the backing A' in sentence
