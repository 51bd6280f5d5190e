"""Whatever the recipe, the steps are those that were read over, and ground and print lie as they should."""

from __future__ import annotations

from dataclasses import replace

import pytest

from quarterturn.design import Direction
from quarterturn.geometry import Motion
from quarterturn.proof import prove, supplies_of
from quarterturn.proof.rehearsal import rehearse
from quarterturn.steps import FuseToGround, LabelStacks, TraceRings, steps_text
from tests.conftest import Golden
from tests.proof.rehearsal.faults import alter, verdict
from tests.recipe_samples import BANDS, HALVES, PONDS, RIPPLES, SAMPLES
from tests.samples import HEARTS, ROUNDS, Changed, pattern_of


@pytest.mark.parametrize("name", SAMPLES)
def test_the_steps_of_a_recipe(name: str, golden: Golden) -> None:
    pattern = pattern_of(SAMPLES[name])
    golden.check(f"{name.replace(' ', '-')}.txt", steps_text(pattern.steps, pattern.design.units))


@pytest.mark.parametrize("name", SAMPLES)
def test_the_sewn_top_is_the_picture(name: str) -> None:
    proof = prove(pattern_of(SAMPLES[name]))
    assert proof.findings == ()
    assert proof.share < 1e-6


def test_ground_cut_lying_across_its_strip_is_turned_before_it_is_creased() -> None:
    """On cloth 9" wide a rectangle of 9 1/2" × 5" must lie with its length along the cloth."""
    text = Changed(HALVES).with_('role = "background"', 'role = "background"\nwidth = \'9"\'').text
    assert prove(pattern_of(text)).findings == ()


FOUR = Changed(HEARTS).with_("a-tl0 a-tr0 c-tl0 c-tr0 a-tl0", "a-tl0 a-tr0")
"""A heart whose quarters are of four kinds."""


def found(text: str, letter: str, direction: Direction) -> list[str]:
    """Return what goes wrong where the print of a fabric must stand upright."""
    pattern = pattern_of(text)
    supplies = supplies_of(pattern)
    bolt = replace(supplies.cloth[letter], upright=direction)
    cloth = {**supplies.cloth, letter: bolt}
    return [f.sentence for f in rehearse(replace(supplies, cloth=cloth), pattern.steps).failures]


@pytest.mark.parametrize(
    ("lower", "one_way", "two_way"),
    [("a-bl0 a-br0", 0, 0), ("a-bl0 a-br2", 1, 0), ("a-bl0 a-br1", 1, 1)],
    ids=["upright", "on its head", "on its side"],
)
def test_a_print_that_must_stand_upright(lower: str, one_way: int, two_way: int) -> None:
    """Stripes may stand on their heads."""
    text = FOUR.with_("a-bl0 a-br0 c-tr2 c-tl2 a-tl1", lower).text
    assert len(found(text, "A", Direction.ONE_WAY)) == one_way
    assert len(found(text, "A", Direction.TWO_WAY)) == two_way


def test_quarters_that_differ_by_their_print_are_not_the_same_unit() -> None:
    (sentence,) = found(ROUNDS, "A", Direction.ONE_WAY)
    assert sentence == "Not every 'unit a, as cut' is the same."


def test_side_borders_of_an_upright_print_are_cut_along_the_cloth() -> None:
    head = "[fabrics.C]\n"
    text = Changed(ROUNDS).with_(head, f'{head}direction = "one-way"\nupright = true\n').text
    assert prove(pattern_of(text)).findings == ()
    assert found(ROUNDS, "C", Direction.ONE_WAY) == [
        "The print of fabric C does not stand upright everywhere."
    ]


def upright(text: str, letter: str, direction: str) -> str:
    """Give a fabric a print that must stand upright."""
    head = f"[fabrics.{letter}]\n"
    return Changed(text).with_(head, f'{head}direction = "{direction}"\nupright = true\n').text


@pytest.mark.parametrize("direction", ["one-way", "two-way"])
@pytest.mark.parametrize("letter", ["A", "B"])
@pytest.mark.parametrize("text", [ROUNDS, RIPPLES, PONDS, BANDS], ids=["rounds", "ripples", "ponds", "bands"])
def test_upright_prints_stand_upright_wherever_their_units_lie(
    text: str, letter: str, direction: str
) -> None:
    assert prove(pattern_of(upright(text, letter, direction))).findings == ()


def test_units_of_an_upright_print_are_stacked_by_the_quarter_that_they_are_cut_from() -> None:
    steps = pattern_of(upright(ROUNDS, "A", "one-way")).steps.steps
    (stacks,) = (step.action for step in steps if isinstance(step.action, LabelStacks))
    assert {pile.label for pile in stacks.stacks} == {
        f"unit {code}-{quarter}" for code in "ab" for quarter in ("tl", "tr", "br", "bl")
    }


def test_a_disc_laid_with_its_print_on_its_head_is_caught() -> None:
    """Its outline is the same, and so is the picture: only the print tells."""
    pattern = pattern_of(upright(ROUNDS, "B", "one-way"))
    on_its_head = alter(
        FuseToGround,
        lambda a: replace(a, places=(replace(a.places[0], motion=Motion(-1 + 0j)),)),
    )
    case = on_its_head((supplies_of(pattern), pattern.steps.steps))
    assert verdict(pattern, case) == "The print of fabric B does not stand upright everywhere."


def test_a_leaning_shape_is_traced_mirrored() -> None:
    """A heart that leans is its own mirror image when it is turned; its upright line and its print would turn too."""
    for text, same in ((PONDS, False), (upright(PONDS, "C", "one-way"), False)):
        steps = pattern_of(text).steps.steps
        traced = {a.shape: a.same_mirrored for a in (x.action for x in steps) if isinstance(a, TraceRings)}
        assert traced == {"pond ring": True, "pond lily": same}


def test_a_tracing_that_should_be_mirrored_and_is_not_is_caught() -> None:
    """A heart spread along cuts beside its middle has two different sides; one that leans would lean the other way."""
    as_it_comes = alter(TraceRings, lambda a: replace(a, same_mirrored=True), 1)
    spread = pattern_of(
        Changed(PONDS).with_('cuts = "both ways"', 'cuts = "both ways"\ncurve = "sewn true"').text
    )
    sentence = "Traced as it comes, and laid by its vertical line, the shape would lie mirrored."
    for pattern in (spread, pattern_of(PONDS), pattern_of(upright(PONDS, "C", "one-way"))):
        assert verdict(pattern, as_it_comes((supplies_of(pattern), pattern.steps.steps))) == sentence
