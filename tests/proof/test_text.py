"""Findings and the rehearsal in words."""

from __future__ import annotations

from quarterturn.design import Finding, Place, Severity
from quarterturn.proof import findings_text, prove, rehearsal_text, summary
from tests.samples import ROUNDS, pattern_of

STOP = Finding("a-code", Severity.STOPS, Place("recipes.round", line=7), "This is\nwrong.", "Do  that.")
STYLE = Finding("b-code", Severity.STYLE, Place("", "page 3"), "This is plain.", "Leave it.")


def test_a_finding_is_two_lines_whatever_its_sentences_hold() -> None:
    assert findings_text([STOP], "a.toml") == (
        "a.toml:7: stops: This is wrong. (a-code)\n    Do that.\n1 finding: 1 stops.\n"
    )


def test_without_a_line_the_place_is_the_key_or_the_detail() -> None:
    assert findings_text([STYLE], "a.toml").startswith("a.toml: page 3: style: This is plain. (b-code)\n")


def test_findings_are_summed_up_worst_first() -> None:
    assert summary([STYLE, STOP, STYLE]) == "3 findings: 1 stops, 2 style."
    assert summary([]) == "No findings."


def test_a_rehearsal_is_told_with_what_it_leaves() -> None:
    pattern = pattern_of(ROUNDS)
    proof = prove(pattern)
    first, second, third, *left = rehearsal_text(pattern, proof).splitlines()
    steps = len(pattern.steps.steps)
    assert (
        first
        == f"{steps} of {steps} single operations can be carried out as written, with the cloth and web of the list."
    )
    assert second == "The top that they make is the one in the picture, to the last seam: no area differs."
    assert third == "Left over:"
    assert len(left) == len(proof.rehearsal.cloth_left) + 1
