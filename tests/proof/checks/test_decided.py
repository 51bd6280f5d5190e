"""Strips that the designer has decided on are held, or it is said why they cannot be."""

from __future__ import annotations

import pytest

from quarterturn.proof import Pattern, prove
from quarterturn.proof.checks.decided import DECIDED
from tests.proof.checks.sound import SOUND, Spoil
from tests.samples import pattern_of


def with_strips(lines: str) -> Pattern:
    """Return the sound pattern with more lines for fabric A, of which eight squares A1 of 9 1/2" are cut."""
    return pattern_of(SOUND.replace('colour = "#efe6d8"', f'colour = "#efe6d8"\n{lines}', 1))


def strips(height: str, more: str) -> Pattern:
    """Return the sound pattern with strips of fabric A that are decided on."""
    return with_strips(f"\n[[fabrics.A.strips]]\nheight = '{height}\"'\n{more}\n")


def sentences(pattern: Pattern) -> list[str]:
    return [finding.sentence for check in DECIDED for finding in check.run(pattern)]


GROUND = "A2"


KEPT = {
    "so many strips": "count = 1",
    "so many strips for a piece": f'count = 1\npieces = ["{GROUND}"]',
    "all of a piece": f'pieces = ["{GROUND}"]',
}
BROKEN = {
    "more strips than pieces": ("11", "count = 90", '90 strips 11" high cannot be filled, only '),
    "strips too low": ("2", f'pieces = ["{GROUND}"]', f'{GROUND} cannot be cut from strips 2" high alone.'),
    "a piece that is not there": (
        "4",
        'pieces = ["A90"]',
        'There is no piece A90 to cut from strips 4" high.',
    ),
    "a piece of another fabric": ("11", 'pieces = ["B1"]', 'B1 cannot be cut from strips 11" high alone.'),
}


FIRES: dict[str, Spoil] = {"strips-not-kept": lambda: strips("4", 'pieces = ["A90"]')}


@pytest.mark.parametrize("more", KEPT.values(), ids=KEPT)
def test_strips_that_can_be_cut_are_cut_and_the_quilt_is_made(more: str) -> None:
    pattern = strips("11", more)
    assert sentences(pattern) == []
    plan = pattern.materials.plan("A")
    assert any(group.height == 11 for group in plan.strips)
    assert plan.unpinned is not None
    assert plan.unpinned <= plan.bought
    assert prove(pattern).holds


@pytest.mark.parametrize(("height", "more", "said"), BROKEN.values(), ids=BROKEN)
def test_strips_that_cannot_be_cut_are_told_and_the_quilt_is_made(height: str, more: str, said: str) -> None:
    pattern = strips(height, more)
    (sentence,) = sentences(pattern)
    assert sentence.startswith(said)
    assert prove(pattern).holds


def test_all_labels_that_are_not_there_are_told_with_those_that_are() -> None:
    pattern = strips("11", 'pieces = ["A90", "a1"]')
    (fault,) = (finding for check in DECIDED for finding in check.run(pattern))
    assert fault.sentence == 'There is no piece A90 and no piece a1 to cut from strips 11" high.'
    assert fault.remedy.startswith("Name pieces of fabric A: there are A1, A2")


def test_strips_of_a_fabric_that_is_bought_in_pieces_are_refused_with_the_reason() -> None:
    pattern = with_strips('bought_as = "fat quarter"\nstrips = [{ height = \'11"\', count = 1 }]')
    (sentence,) = sentences(pattern)
    assert sentence.endswith("is bought in pieces, and strips can be decided on only for cloth off the bolt.")


def test_only_the_heights_that_are_allowed_are_cut() -> None:
    pattern = with_strips("strip_heights = ['12\"', '3\"']")
    assert sentences(pattern) == []
    heights = {group.height for group in pattern.materials.plan("A").strips if group.pieces}
    assert heights <= {12, 3}
    assert prove(pattern).holds


def test_a_piece_that_no_allowed_strip_holds_is_told() -> None:
    (sentence,) = sentences(with_strips("strip_heights = ['3\"']"))
    assert sentence.startswith('Strips of fabric A are to be 3" high, and A')
