"""A binding on the bias or folded single goes through every stage, and its faults are caught."""

from __future__ import annotations

from dataclasses import replace

import pytest

from quarterturn.design import BindingKind, Fold, format_design
from quarterturn.measure import inches
from quarterturn.proof import CHECKS, check_pattern, prove, supplies_of
from quarterturn.publish.wording import defaults, tell
from quarterturn.steps import Bind, CutBias
from tests.proof.checks.sound import SOUND
from tests.proof.rehearsal.faults import Mutation, alter, drop, verdict
from tests.samples import Changed, design_of, pattern_of


def bound(lines: str) -> str:
    """Return the sound design with such a binding."""
    return Changed(SOUND).with_("[binding]", f"[binding]\n{lines}").text


BIAS = bound('kind = "bias"')
KINDS = {
    "bias": BIAS,
    "single": bound('fold = "single"'),
    "bias, single": bound('kind = "bias"\nfold = "single"'),
    "rectangle": Changed(BIAS).with_("[fabrics.C]", "[fabrics.C]\nwidth = '15\"'").text,
}


@pytest.mark.parametrize("text", KINDS.values(), ids=KINDS)
def test_every_binding_is_rehearsed_and_checked(text: str) -> None:
    pattern = pattern_of(text)
    assert prove(pattern).holds
    assert [finding.code for finding in check_pattern(pattern) if finding.code.startswith("binding")] == []
    assert design_of(format_design(pattern.design)) == pattern.design


def test_the_strip_of_a_single_fold_is_narrower() -> None:
    design = design_of(KINDS["single"])
    assert (design.binding_kind, design.binding_fold) == (BindingKind.STRAIGHT, Fold.SINGLE)
    assert design.binding_width == inches(1, 1, 4)
    assert design_of(bound('fold = "single"\nfinished = \'1/4"\'')).binding_width == inches(1, 1, 8)


FAULTS: dict[str, tuple[Mutation, str]] = {
    "a row too many": (alter(CutBias, lambda a: replace(a, rows=a.rows + 1)), "too narrow for 5 rows"),
    "a row too few": (alter(CutBias, lambda a: replace(a, rows=a.rows - 1)), "are promised"),
    "wider strips": (alter(CutBias, lambda a: replace(a, strip_width=inches(3))), "too narrow"),
    "deeper seams": (alter(CutBias, lambda a: replace(a, seam=inches(1))), "are promised"),
    "no strip": (drop(CutBias), "wanted"),
}


@pytest.mark.parametrize(("mutation", "said"), FAULTS.values(), ids=FAULTS)
def test_a_fault_in_the_tube_is_caught(mutation: Mutation, said: str) -> None:
    pattern = pattern_of(BIAS)
    assert said in verdict(pattern, mutation((supplies_of(pattern), pattern.steps.steps)))


def test_a_smaller_square_is_too_short_for_the_check() -> None:
    pattern = pattern_of(BIAS)
    pieces = tuple(
        replace(piece, length=inches(14), width=inches(14)) if piece.name == "bias square" else piece
        for piece in pattern.bill.pieces
    )
    spoiled = replace(pattern, bill=replace(pattern.bill, pieces=pieces))
    check = next(check for check in CHECKS if check.code == "binding-short")
    assert list(check.run(pattern)) == []
    assert len(list(check.run(spoiled))) == 1


def test_a_single_fold_needs_four_widths() -> None:
    check = next(check for check in CHECKS if check.code == "binding-narrow")
    narrow, enough = (pattern_of(bound(f'fold = "single"\nwidth = \'{w}"\'')) for w in ("1", "1 1/8"))
    assert len(list(check.run(narrow))) == 1
    assert list(check.run(enough)) == []


def test_the_words_say_how_it_is_cut_and_folded() -> None:
    pattern = pattern_of(KINDS["bias, single"])
    told = {type(step.action): tell(step, pattern) for step in pattern.steps.steps}
    assert "from corner to corner" in told[CutBias].sentences[0]
    assert told[Bind].sentences[0].startswith('Fold a ¼" edge of the 1¼" binding to its wrong side')
    assert ("Binding strip on the bias, folded single", '1¼"') in defaults(pattern)
    across = pattern_of(KINDS["rectangle"])
    [words] = [tell(step, across) for step in across.steps.steps if isinstance(step.action, CutBias)]
    assert words.sentences[0].startswith("Fold a short edge of")
